import type { Procedure } from '../model/procedure.ts';
import { blank } from './blank.ts';

export interface JobDraft {
  readonly name: string;
  readonly title: string;
  readonly customer: string | null;
  /** ISO date. */
  readonly received: string;
  readonly number: string | null;
  /** As marked on the bodies, in their order; what is missing is a blank. */
  readonly serials: readonly string[];
  readonly units: number;
  /** The shop's own, one for each unit; none: it gives out none. */
  readonly ownSerials: readonly string[];
}

/** The text of a job that has come in, with a blank for each thing that nobody has said yet. */
export function draftJob({ name: procedure, revision, shop, numbers }: Procedure, draft: JobDraft): string {
  const number = draft.number ?? (numbers.length === 1 ? numbers[0]!.name : null);
  const units = Array.from({ length: draft.units }, (_, index) => {
    const serial = draft.serials[index];
    const own = draft.ownSerials[index];
    const lines = own === undefined ? '' : `  shop-serial "${own}"`;
    return `  unit ${index + 1} number ${number === null ? blank : label(number)} serial ${serial === undefined ? blank : label(serial)}${lines}\n`;
  });
  const head = `job ${label(draft.name)} "${draft.title}" of ${procedure}${revision === null ? '' : ` revision ${label(revision)}`} at ${shop.name}`;
  return `${head}
  customer "${draft.customer ?? blank}"   received ${draft.received}
{
  intake {
    complaint "${blank}"
  }
${units.join('')}}
`;
}

/** As a label is written; `quoted`: always in quotes. */
export function label(text: string, quoted = false): string {
  return !quoted && /^\d+(?:\.\d+)?$|^\p{L}[\p{L}\d_]*(?:-[\p{L}\d_]+)*$/u.test(text) ? text : `"${text}"`;
}

/** The next own serials of a shop after those that it has given out: `S-0412` after `S-0411`. */
export function nextSerials(given: readonly string[], count: number): string[] {
  const counted = given.flatMap((text) => {
    const [, before, digits] = /^(.*?)(\d+)$/u.exec(text) ?? [];
    return before === undefined || digits === undefined ? [] : [{ before, digits, value: Number(digits) }];
  });
  const last = counted.sort((a, b) => a.value - b.value).at(-1) ?? { before: 'S-', digits: '0000', value: 0 };
  return Array.from(
    { length: count },
    (_, index) => `${last.before}${String(last.value + 1 + index).padStart(last.digits.length, '0')}`,
  );
}

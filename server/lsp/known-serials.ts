/** Whether the units of a job were here before, beside their serials. */
import { markdownText } from '../../language/ide/hover/markdown.ts';
import type { WrittenSerial } from '../../language/ide/serials.ts';
import type { KnownVisit } from '../host/host.ts';
import type { Session } from './feature.ts';

interface KnownSerial extends WrittenSerial {
  readonly visit: KnownVisit;
}

/** Those that were here for another job. */
export async function knownSerials(session: Session, uri: string, serials: readonly WrittenSerial[]) {
  const folder = session.store.folderOf(uri);
  const visits = folder === null ? null : session.visits(folder);
  if (visits === null || serials.length === 0) return [];
  const known = await visits.of(serials.map(({ serial }) => serial));
  return serials.flatMap((one): KnownSerial[] => {
    const visit = known.get(one.serial);
    return visit === undefined || visit.job === one.job ? [] : [{ ...one, visit }];
  });
}

/** `here before: job 2107, 2026-03-02, wear`. */
export function visitWords({ job, closed, cause }: KnownVisit): string {
  return `here before: ${[`job ${job}`, closed, ...(cause === null ? [] : [cause])].join(', ')}`;
}

export function visitMarkdown(serial: string, { job, closed, customer, cause, lines }: KnownVisit): string {
  const head = [
    `Serial ${serial} was here before: job ${job}, closed ${closed}`,
    ...(customer === null ? [] : [`for ${customer}`]),
    ...(cause === null ? [] : [`a comeback then, ${cause}`]),
  ].join(', ');
  return [`${markdownText(head)}.`, ...lines.map((line) => `- ${markdownText(line)}`)].join('\n');
}

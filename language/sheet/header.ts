import type { Fact, SheetHeader } from './model.ts';
import { qrOf } from './qr.ts';
import type { Setting } from './setting.ts';

/** Digits of the hash that a person compares. */
const shownHash = 12;

export function shortHash(hash: string): string {
  return hash.slice(0, shownHash);
}

/** Who made and released the procedure, for what and for whom: stands on every page. */
export function headerOf(setting: Setting): SheetHeader {
  const { procedure, options, numbers, words } = setting;
  const { job } = options;
  const label = words.header;
  const approved = procedure.approvedBy !== null;
  const facts: (Fact | null)[] = [
    { label: label.family, text: procedure.family.title },
    { label: label.procedure, text: procedure.name },
    { label: label.revision, text: procedure.revision ?? label.noRevision },
    procedure.like === null ? null : { label: label.like, text: procedure.like },
    procedure.writtenBy === null ? null : { label: label.written, text: procedure.writtenBy },
    approved
      ? {
          label: label.approved,
          text: [procedure.approvedBy, procedure.approvedOn].filter((word) => word !== null).join(', '),
        }
      : null,
    numbers.length === 0
      ? null
      : {
          label: label.numbers,
          // Their titles stand at the table of units: this head is on every page.
          text: numbers.map(({ name }) => name).join(', '),
        },
    { label: label.shop, text: procedure.shop.title },
    // Without a job the order is written in by hand.
    {
      label: label.order,
      text: job === null ? '' : orderWords(job.name, job.title),
    },
    job === null || job.customer !== null ? { label: label.customer, text: job?.customer ?? '' } : null,
    job === null || job.received !== null ? { label: label.received, text: job?.received ?? '' } : null,
  ];
  const shown = facts
    .filter((fact) => fact !== null)
    .map(({ label: name, text }) => ({ label: name, text: brief(text) }));
  const code = [
    'handtight',
    `procedure=${procedure.name}`,
    `revision=${procedure.revision ?? ''}`,
    `hash=${options.hash}`,
    `job=${job?.name ?? ''}`,
  ].join(' ');
  return {
    title: brief(procedure.title),
    subtitle: words.sheet,
    alarm: approved ? null : words.notApproved,
    facts: shown,
    qr: qrOf(code, words.code({ code })),
  };
}

/** Most characters of one entry: the head stands on every page, and must leave room for the work. */
const longestEntry = 140;

export function brief(text: string): string {
  const letters = [...text];
  return letters.length <= longestEntry ? text : `${letters.slice(0, longestEntry - 1).join('')}…`;
}

export function orderWords(name: string, title: string): string {
  return title === name ? name : `${name}, ${title}`;
}

/** Title of the document for reader programs and file lists. */
export function documentTitle(setting: Setting): string {
  const { procedure, options, words } = setting;
  const { revision } = procedure;
  return [
    words.document({ sheet: words.sheet, title: procedure.title }),
    revision === null ? '' : words.documentRevision({ revision }),
    options.job === null ? '' : words.documentOrder({ order: options.job.name }),
  ].join('');
}

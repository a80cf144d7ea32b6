import { factText, factTitle } from '../i18n/fact-words.ts';
import { capital } from '../model/titles.ts';
import type { Fact, FactsBlock, SheetHeader } from './model.ts';
import type { PrintContext } from './print-context.ts';
import { buildQr } from './qr.ts';

/** Digits of the hash that a person compares. */
const shownHash = 12;

export function shortHash(hash: string): string {
  return hash.slice(0, shownHash);
}

/** Tells the sheet from every other, on each page: a page that lies alone on a bench must say what it is of. */
export function buildHeader(setting: PrintContext): SheetHeader {
  const { procedure, words } = setting;
  const { job } = setting.options;
  const label = words.header;
  const code = codeOf(setting);
  return {
    title: brief(procedure.title),
    subtitle: sheetWord(setting),
    alarm: procedure.approvedBy === null ? words.notApproved : null,
    facts: [
      // The number of the order is behind the word for the sheet; without a job it is written in by hand.
      ...(isForWall(setting) ? [] : [{ label: job === null ? label.order : '', text: brief(job?.name ?? '') }]),
      { label: '', text: brief(procedure.name) },
      { label: label.revision, text: brief(procedure.revision ?? label.noRevision) },
    ],
    qr: buildQr(code, words.code({ code })),
  };
}

/** It says nothing about a job. */
function isForWall({ options: { form, part, job } }: PrintContext): boolean {
  return form === 'instruction' || (part != null && job === null);
}

/** What the paper is called; a workspace has its own word for the card. */
function sheetWord({ words, options: { form, part } }: PrintContext): string {
  if (part != null || form === undefined || form === 'card') return words.sheet;
  return words.forms[form];
}

/** What the code on each page says: a link that opens, in the editor, what the sheet was printed from. */
function codeOf({ procedure, options: { job, hash } }: PrintContext): string {
  const said = {
    procedure: procedure.name,
    revision: procedure.revision ?? '',
    job: job?.name ?? '',
    hash: shortHash(hash),
  };
  const query = Object.entries(said).map(([key, value]) => `${key}=${encodeURIComponent(value)}`);
  return `vscode://handtight.handtight/sheet?${query.join('&')}`;
}

/** For what, by whom and for whom: once, on the first page. */
export function factsOf(setting: PrintContext): FactsBlock {
  const { procedure, numbers, words } = setting;
  const { job } = setting.options;
  const wall = isForWall(setting);
  const label = words.header;
  const approval = [procedure.approvedBy, procedure.approvedOn].filter((word) => word !== null).join(', ');
  const said = (name: string, text: string | null): Fact[] => (text === null ? [] : [{ label: name, text }]);
  // What a job does not say, or there is no job for, is written in by hand.
  const asked = (name: string, text: string | null | undefined): Fact[] =>
    (job === null && !wall) || text != null ? [{ label: name, text: text ?? '' }] : [];
  return {
    kind: 'facts',
    facts: [
      ...(wall ? [] : [{ label: label.order, text: job === null ? '' : named(job.name, job.title) }]),
      ...asked(label.customer, job?.customer),
      ...asked(label.received, job?.received),
      ...said(label.partOf, job?.order ?? null),
      ...(job?.intake ?? []).map((fact) => ({
        label: capital(factTitle(words, fact)),
        text: factText(words, fact, (name) => name),
      })),
      { label: label.family, text: procedure.family.title },
      ...(numbers.length === 0 ? [] : [{ label: label.numbers, text: numbers.map(({ name }) => name).join(', ') }]),
      // The page head is no place for a link: readers for the blind pass it over.
      {
        label: label.procedure,
        // A title that the page head has no room for is said whole here.
        text: brief(procedure.title) === procedure.title ? procedure.name : named(procedure.name, procedure.title),
        href: codeOf(setting),
      },
      { label: label.revision, text: procedure.revision ?? label.noRevision },
      ...said(label.like, procedure.like),
      ...said(label.written, procedure.writtenBy),
      ...said(label.approved, procedure.approvedBy === null ? null : approval),
      { label: label.shop, text: procedure.shop.title },
    ],
  };
}

/** Most characters of one entry: the head is on every page, and must leave room for the work. */
const longestEntry = 60;

export function brief(text: string, most = longestEntry): string {
  const letters = [...text];
  return letters.length <= most ? text : `${letters.slice(0, most - 1).join('')}…`;
}

export function named(name: string, title: string): string {
  return title === name ? name : `${name}, ${title}`;
}

/** Title of the document for reader programs and file lists. */
export function documentTitle(setting: PrintContext): string {
  const { procedure, options, words } = setting;
  const { revision } = procedure;
  return [
    words.document({ sheet: sheetWord(setting), title: procedure.title }),
    revision === null ? '' : words.documentRevision({ revision }),
    options.job === null ? '' : words.documentOrder({ order: options.job.name }),
  ].join('');
}

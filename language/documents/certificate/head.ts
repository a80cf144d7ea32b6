import type { Job } from '../../model/job.ts';
import { brief, named, shortHash } from '../header.ts';
import type { Fact, FactsBlock, SheetHeader } from '../model.ts';
import type { PrintContext } from '../print-context.ts';
import { buildQr } from '../qr.ts';
import type { CertificateOptions } from './certificate.ts';

/** Most letters of one entry of the head. */
const longestEntry = 140;

/** `2198-1`: the work order, and which issue of its certificate; null: a draft has none. */
export function certificateNumber(job: Job, { issue }: CertificateOptions, draft: boolean): string | null {
  return draft ? null : `${job.name}-${issue?.number ?? 1}`;
}

/** On each page: whose paper it is, and which. */
export function headOf(setting: PrintContext, job: Job, number: string | null): SheetHeader {
  const { procedure, words } = setting;
  const { address, telephone } = procedure.shop.about;
  const code = codeWords(setting, job, number);
  return {
    title: brief(procedure.shop.title),
    subtitle: brief([address, telephone].filter((word) => word !== null).join(', '), longestEntry),
    alarm: procedure.approvedBy === null ? words.notApproved : null,
    // The number begins with that of the order.
    facts: [
      number === null
        ? { label: words.header.order, text: brief(job.name) }
        : { label: words.certificate.number, text: brief(number) },
    ],
    qr: buildQr(code, words.code({ code: words.certificate.title })),
  };
}

/** The code says what the words say, so that any scanner reads it: which paper, whose units, and the hash. */
function codeWords({ procedure, words, options }: PrintContext, job: Job, number: string | null): string {
  const { header, certificate, units, labels } = words;
  const facts = [
    [certificate.number, number],
    [header.order, job.name],
    [labels.from, shortHash(options.hash)],
    [header.shop, procedure.shop.title],
    [header.customer, job.customer],
    [units.serial, job.units.map(({ place, serial }) => `${place}: ${serial ?? '–'}`).join(', ')],
  ] as const;
  return [
    certificate.title,
    ...facts.flatMap(([label, text]) => (text === null || text === '' ? [] : [`${label}: ${text}`])),
  ].join('\n');
}

/** Whose work it is, for whom, by which procedure, and when it was issued. */
export function factsOf(
  { procedure, words }: PrintContext,
  job: Job,
  options: CertificateOptions,
  number: string | null,
): FactsBlock {
  const { header: label, certificate } = words;
  const { title, name, revision, approvedBy, approvedOn, shop } = procedure;
  const said = (of: string, text: string | null): Fact[] =>
    text === null ? [] : [{ label: of, text: brief(text, longestEntry) }];
  const approval = [approvedBy, approvedOn].filter((word) => word !== null).join(', ');
  return {
    kind: 'facts',
    facts: [
      ...said(certificate.number, number),
      // Where nobody knows the day it is written in by hand.
      ...(number === null ? [] : [{ label: certificate.issuedOn, text: options.today ?? '' }]),
      ...said(certificate.issue, issueWords(words, options.issue)),
      ...said(label.order, named(job.name, job.title)),
      ...said(label.partOf, job.order),
      ...said(label.customer, job.customer),
      ...said(label.received, job.received),
      ...said(label.family, procedure.family.title),
      ...said(label.procedure, title === name ? name : `${title} (${name})`),
      ...said(label.revision, revision ?? label.noRevision),
      // Of the procedure: what is approved here is not the work.
      ...said(certificate.procedureApproved, approvedBy === null ? null : approval),
      ...said(certificate.workedAt, [shop.title, shop.about.address].filter((word) => word !== null).join(', ')),
      ...said(certificate.telephone, shop.about.telephone),
      ...said(certificate.accreditation, shop.about.accreditation),
      ...said(words.labels.from, grouped(shortHash(options.hash))),
    ],
  };
}

/** Digits that a person compares, in fours. */
function grouped(digits: string): string {
  return digits.replaceAll(/.{4}(?=.)/gu, '$& ');
}

/** `2, replaces 1: serial misread`. The first issue has no such words. */
function issueWords({ certificate }: PrintContext['words'], issue: CertificateOptions['issue']): string | null {
  if (issue === undefined || issue.reason === null) return null;
  const { number, reason } = issue;
  return certificate.reissue({ issue: String(number), before: String(number - 1), reason });
}

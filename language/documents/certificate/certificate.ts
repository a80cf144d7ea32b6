import { judgeJob } from '../../judgment/judge.ts';
import type { JudgedJob, Missing } from '../../judgment/judged.ts';
import { unitsWords } from '../../judgment/say.ts';
import type { Job } from '../../model/job.ts';
import type { Procedure } from '../../model/procedure.ts';
import { capital } from '../../model/titles.ts';
import { concessionsTable } from '../concessions.ts';
import { brief, codeOf, named, shortHash } from '../header.ts';
import type { Block, Fact, Sheet, SheetHeader } from '../model.ts';
import { ownLanguage } from '../own-language.ts';
import { buildPrintContext, type PrintContext, type SheetOptions } from '../print-context.ts';
import { buildQr } from '../qr.ts';
import {
  alwaysText,
  checksTexts,
  conditionsText,
  factsTable,
  missingTable,
  notCertifiedTable,
  releaseTable,
  resultTables,
  ruleText,
  sourcesText,
  spreadTexts,
  toolsTable,
  unitsTable,
} from './tables.ts';

export interface CertificateOptions
  extends Pick<SheetOptions, 'paper' | 'draft' | 'diagnostics' | 'language' | 'hash'> {
  /** ISO date of the day: what is dated later cannot have been done. Null: nobody knows it, and the future is not judged. */
  readonly today: string | null;
  /** Of a closed job: which issue of its certificate this is, and why there is another. */
  readonly issue?: { readonly number: number; readonly reason: string | null };
}

/** Why a job cannot be certified, unit by unit; none: it can. */
export function findMissing(
  procedure: Procedure,
  job: Job,
  { diagnostics, today }: Pick<CertificateOptions, 'diagnostics' | 'today'>,
): readonly Missing[] {
  return missingIn(judgeJob(procedure, job, today), diagnostics);
}

function missingIn({ missing }: JudgedJob, diagnostics: CertificateOptions['diagnostics']): readonly Missing[] {
  const count = diagnostics.filter(({ severity }) => severity === 'error').length;
  if (count === 0) return missing;
  return [
    {
      unit: null,
      of: 'job',
      problem: null,
      say: ({ certificate }) => certificate.missing.hasErrors({ errors: certificate.missing.errors({ count }) }),
    },
    ...missing,
  ];
}

/**
 * The customer's certificate of a job, as a sheet: what was found, renewed, set and read, and what it was held to. Where
 * anything is missing it is a draft, whatever is requested, and lists what. Pure, like `buildSheet`.
 */
export function buildCertificate(procedure: Procedure, job: Job, options: CertificateOptions): Sheet {
  const judged = judgeJob(procedure, job, options.today);
  const missing = missingIn(judged, options.diagnostics);
  const draft = options.draft || missing.length > 0;
  // Concessions and part numbers are those of the units that are certified.
  const certified = { ...job, units: judged.units.map(({ unit }) => unit) };
  const setting = buildPrintContext(procedure, { ...options, job: certified, number: null, word: null });
  const { words } = setting;
  const { certificate } = words;
  const order = named(job.name, job.title);
  const blocks: (Block | null)[] = [
    draft ? { kind: 'text', text: certificate.draftLine, strong: true } : certifiedText(setting, judged),
    missingTable(setting, missing),
    unitsTable(setting, judged.units),
    factsTable(setting, job, judged.units),
    alwaysText(setting),
    notCertifiedTable(setting, judged.onHold),
    ...resultTables(setting, judged),
    ...spreadTexts(setting, judged),
    conditionsText(setting, judged),
    ...checksTexts(setting, judged),
    ruleText(setting, judged),
    sourcesText(setting, judged),
    toolsTable(setting, judged),
    concessionsTable(setting),
    releaseTable(setting),
  ];
  return {
    form: 'certificate',
    language: words.language,
    own: ownLanguage(procedure, job, words.language),
    paper: options.paper,
    title: certificate.document({ title: certificate.title, order }),
    watermark: draft ? words.draft : null,
    header: headerOf(setting, job, options.issue),
    columns: [],
    pressed: null,
    foot: certificate.foot({ order: brief(order), hash: shortHash(options.hash) }),
    pageWords: { page: words.page, of: words.of },
    blocks: blocks.filter((block) => block !== null),
  };
}

function certifiedText({ words }: PrintContext, { units }: JudgedJob): Block {
  const places = unitsWords(
    words,
    units.map(({ unit }) => unit),
  );
  const isConceded = units.some(({ facts }) => facts.some(({ word }) => word === 'concession'));
  return {
    kind: 'text',
    text: capital(words.certificate[isConceded ? 'certifiedWith' : 'certified']({ units: places })),
    strong: true,
  };
}

/** Most letters of one entry of the head. */
const longestEntry = 140;

/** Whose work it is, for whom, and by which procedure: in the head, which takes less room than a table of its own. */
function headerOf(setting: PrintContext, job: Job, issue: CertificateOptions['issue']): SheetHeader {
  const { procedure, words } = setting;
  const label = words.header;
  const { title, name, revision, approvedBy, approvedOn } = procedure;
  const said = (of: string, text: string | null): Fact[] =>
    text === null ? [] : [{ label: of, text: brief(text, longestEntry) }];
  const approval = [approvedBy, approvedOn].filter((word) => word !== null).join(', ');
  const code = codeOf(setting);
  return {
    title: words.certificate.title,
    subtitle: brief(procedure.shop.title),
    alarm: approvedBy === null ? words.notApproved : null,
    facts: [
      ...said(label.order, named(job.name, job.title)),
      ...said(label.customer, job.customer),
      ...said(label.received, job.received),
      ...said(label.partOf, job.order),
      ...said(label.family, procedure.family.title),
      ...said(label.procedure, title === name ? name : `${title} (${name})`),
      ...said(label.revision, revision ?? label.noRevision),
      // Of the procedure: what is approved here is not the work.
      ...said(words.certificate.procedureApproved, approvedBy === null ? null : approval),
      ...said(words.certificate.issue, issueWords(setting, issue)),
    ],
    qr: buildQr(code, words.code({ code })),
  };
}

/** `2, replaces 1: serial misread`. The first issue has no such words. */
function issueWords({ words }: PrintContext, issue: CertificateOptions['issue']): string | null {
  if (issue === undefined || issue.reason === null) return null;
  const { number, reason } = issue;
  return words.certificate.reissue({ issue: String(number), before: String(number - 1), reason });
}

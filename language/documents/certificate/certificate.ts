import { judgeJob } from '../../judgment/judge.ts';
import type { JudgedJob, Missing } from '../../judgment/judged.ts';
import { unitsWords } from '../../judgment/say.ts';
import type { Job } from '../../model/job.ts';
import type { Procedure } from '../../model/procedure.ts';
import { capital } from '../../model/titles.ts';
import { concessionsTable } from '../concessions.ts';
import { brief, named, shortHash } from '../header.ts';
import type { Block, Sheet } from '../model.ts';
import { ownLanguage } from '../own-language.ts';
import { buildPrintContext, type PrintContext, type SheetOptions } from '../print-context.ts';
import { certificateNumber, factsOf, headOf } from './head.ts';
import {
  checksTexts,
  conditionsTable,
  factsTable,
  missingTable,
  notCertifiedTable,
  releaseTable,
  resultTables,
  ruleText,
  sourcesText,
  spreadTexts,
  termsText,
  toolsTable,
  unitsTable,
} from './tables.ts';
import { correctedTable, inspected, newParts } from './work.ts';

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
  const number = certificateNumber(job, options, draft);
  const blocks: (Block | null)[] = [
    { kind: 'heading', text: certificate.title },
    draft ? { kind: 'text', text: certificate.draftLine, strong: true } : certifiedText(setting, judged),
    factsOf(setting, job, options, number),
    missingTable(setting, missing),
    unitsTable(setting, judged.units),
    factsTable(setting, job, judged.units),
    notCertifiedTable(setting, judged.onHold),
    ...resultTables(setting, judged),
    ...spreadTexts(setting, judged),
    correctedTable(setting, judged),
    newParts(setting, judged),
    inspected(setting, judged),
    concessionsTable(setting),
    // What a customer reads ends here; behind it is what an auditor asks for.
    releaseTable(setting, judged),
    conditionsTable(setting, judged),
    toolsTable(setting, judged),
    ...checksTexts(setting, judged),
    ruleText(setting, judged),
    sourcesText(setting, judged),
    termsText(setting),
  ];
  return {
    form: 'certificate',
    language: words.language,
    own: ownLanguage(procedure, job, words.language),
    paper: options.paper,
    title: certificate.document({ title: certificate.title, order }),
    watermark: draft ? words.draft : null,
    header: headOf(setting, job, number),
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

import { join } from 'node:path';
import pc from 'picocolors';
import { printedAs } from '../../language/config/config.ts';
import { findMissing, placeWords } from '../../language/documents/certificate/index.ts';
import { buildLabels, type LabelKind } from '../../language/documents/labels/index.ts';
import { type Language, wordsIn } from '../../language/i18n/index.ts';
import { contentHash } from '../host/files/content-hash.ts';
import { fileName } from '../host/print/file-name.ts';
import { labelsPdf } from '../host/print/pdf.ts';
import { WriteError, writeWhole } from '../host/print/write.ts';
import { findingsOn } from './bearing.ts';
import { openJobIn } from './job.ts';
import { messageLanguage, worded, words } from './messages.ts';
import { note, say, tell } from './say.ts';
import { UsageError } from './usage-error.ts';

export interface LabelCommandOptions {
  readonly kind: LabelKind;
  readonly size: { readonly width: number; readonly height: number };
  readonly unit?: string | undefined;
  readonly language?: Language | undefined;
  readonly to: string;
  readonly workspace: string;
  /** ISO date that stands for today. */
  readonly today: string;
}

/** Prints labels of a job. Exit code: 0 they are printed, 1 what they would say is not so: the job cannot be certified. */
export async function labelCommand(name: string, options: LabelCommandOptions): Promise<number> {
  const { kind, size, unit, to, today } = options;
  const workspace = await openJobIn(name, options.workspace);
  const { result, job } = workspace;
  const { procedure } = job;
  if (unit !== undefined && !job.units.some(({ place }) => place === unit))
    throw new UsageError(
      worded`Job ${job.name} has no unit ${unit}. Its units: ${job.units.map(({ place }) => place).join(', ')}.`,
    );
  if (kind === 'certificate') {
    const words = wordsIn(messageLanguage());
    const missing = findMissing(procedure, job, { diagnostics: findingsOn({ procedure, job }, result), today });
    for (const one of missing) tell(`  ${placeWords(words, one)}: ${one.say(words)}\n`);
    if (missing.length > 0) {
      tell(
        `${pc.red(worded`Job ${job.name} is not certified, so it has no such label.`)} ${worded`Add what is missing to the job.`}\n`,
      );
      return 1;
    }
  }
  const { language, kinds } = printedAs(result.sheet, { language: options.language });
  const hash = contentHash({ procedure, job }, workspace);
  const sheet = buildLabels(procedure, job, { kind, size, unit: unit ?? null, language, kinds, hash });
  if (sheet.labels.length === 0)
    throw new UsageError(worded`No unit of job ${job.name} has a label: every one is on hold.`);
  const pdf = labelsPdf(sheet);
  if (pdf === null)
    throw new UsageError(
      worded`${size.width} by ${size.height} mm is too small for these words in type that can be read. Take larger labels with --size.`,
    );
  const piece = unit === undefined ? '' : `-unit-${unit}`;
  const file = join(to, `${fileName(`label-${kind}-${job.name}${piece}`)}.pdf`);
  try {
    writeWhole(file, pdf.bytes);
  } catch (error) {
    throw error instanceof WriteError ? new UsageError(words(error.said)) : error;
  }
  if (pdf.missing.length > 0) note(worded`${file}: no font has ${pdf.missing.join(' ')}, which print as empty boxes.`);
  say(`${pdf.pages === 1 ? worded`${file}: 1 label` : worded`${file}: ${pdf.pages} labels`}\n`);
  return 0;
}

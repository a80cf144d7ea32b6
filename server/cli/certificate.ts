import pc from 'picocolors';
import { recordEnding } from '../../language/archive/record.ts';
import { printedAs } from '../../language/config/config.ts';
import { sheetSettings } from '../../language/db/issued/draft.ts';
import { buildCertificate, findMissing, placeWords } from '../../language/documents/certificate/index.ts';
import { wordsIn } from '../../language/i18n/index.ts';
import { contentHash } from '../host/files/content-hash.ts';
import { printSheet, WriteError } from '../host/print/index.ts';
import { certificateName } from '../host/print/sheet-name.ts';
import { findingsOn } from './bearing.ts';
import { certificateOfRecord } from './certificate-of-record.ts';
import { openJobIn } from './job.ts';
import { messageLanguage, worded, words } from './messages.ts';
import { type PrintCommandOptions, report } from './print.ts';
import { tell } from './say.ts';
import { UsageError } from './usage-error.ts';

/** Prints the certificate of a job. Exit code: 0 it is printed, 1 something is missing and no draft was requested. */
export async function certificateCommand(name: string, options: PrintCommandOptions): Promise<number> {
  if (name.endsWith(recordEnding)) return certificateOfRecord(name, options);
  const workspace = await openJobIn(name, options.workspace);
  const { result, job } = workspace;
  const { procedure } = job;
  const { today } = options;
  const diagnostics = findingsOn({ procedure, job }, result);
  const missing = findMissing(procedure, job, { diagnostics, today });
  if (missing.length > 0 && !options.draft) {
    const words = wordsIn(messageLanguage());
    const lines = missing.map((one) => `  ${placeWords(words, one)}: ${one.say(words)}\n`);
    tell(
      `${pc.red(worded`Job ${job.name} is not certified. What is missing:`)}\n${lines.join('')}${worded`Add it to the job, put a unit on hold, or print with --draft, which marks every page and lists what is missing.`}\n`,
    );
    return 1;
  }
  const sheet = buildCertificate(procedure, job, {
    ...printedAs(sheetSettings(job, result), options),
    draft: options.draft,
    diagnostics,
    today,
    hash: contentHash({ procedure, job }, workspace),
  });
  const { formats, to } = options;
  try {
    report(printSheet(sheet, { formats, to, name: certificateName(job, options.draft, result.declared.jobs) }));
  } catch (error) {
    throw error instanceof WriteError ? new UsageError(words(error.said)) : error;
  }
  return 0;
}

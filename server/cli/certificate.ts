import pc from 'picocolors';
import { certificateOf, missingOf, placeWords } from '../../language/certificate/index.ts';
import { printedAs } from '../../language/settings/settings.ts';
import { wordsIn } from '../../language/words/index.ts';
import { certificateName } from '../print/sheet-name.ts';
import { contentHash } from '../workspace/content-hash.ts';
import { named } from './named.ts';
import { findingsOf, type PrintCommandOptions, writeSheet } from './print.ts';
import { openWorkspace } from './workspace.ts';

/** Prints the certificate of a job. Exit code: 0 it is printed, 1 something is missing and no draft was asked for. */
export async function certificateCommand(name: string, options: PrintCommandOptions): Promise<number> {
  const paths = name.endsWith('.rebuild') ? [name] : [];
  const workspace = await openWorkspace([options.workspace, ...paths], undefined);
  const { files, result } = workspace;
  const job = named('job', name, result.jobs, (one) => one);
  const { procedure } = job;
  const findings = findingsOf({ procedure, job }, workspace);
  const missing = missingOf(procedure, job, { findings });
  if (missing.length > 0 && !options.draft) {
    const words = wordsIn('en');
    const lines = missing.map((one) => `  ${placeWords(words, one)}: ${one.say(words)}\n`);
    process.stderr.write(
      `${pc.red(`Job ${job.name} is not certified. What is missing:`)}\n${lines.join('')}Write it into the job, put a unit on hold, or print with --draft, which marks every page and lists this.\n`,
    );
    return 1;
  }
  const sheet = certificateOf(procedure, job, {
    ...printedAs(result.sheet, options),
    draft: options.draft,
    findings,
    hash: contentHash({ procedure, job }, files),
  });
  writeSheet(sheet, certificateName(job, options.draft), options);
  return 0;
}

import { readFileSync } from 'node:fs';
import { readRecord } from '../../language/archive/record.ts';
import { whyUnread } from '../host/files/read-text.ts';
import { printSheet, WriteError } from '../host/print/index.ts';
import { certificateName } from '../host/print/sheet-name.ts';
import { worded, words } from './messages.ts';
import { type PrintCommandOptions, report } from './print.ts';
import { UsageError } from './usage-error.ts';

/** Prints the certificate of a closed job from its record alone: the same bytes as on the day, whatever became of the sources. */
export function certificateOfRecord(path: string, { formats, to }: PrintCommandOptions): number {
  let text: string;
  try {
    text = readFileSync(path, 'utf8');
  } catch (error) {
    throw new UsageError(worded`${path} cannot be read: ${whyUnread(error)}`);
  }
  const record = readRecord(text);
  if (record === null)
    throw new UsageError(
      worded`${path} is not as it was written, so no certificate is printed from it. Take it back from a backup.`,
    );
  const { answers, content } = record;
  const name = certificateName({ name: answers.job }, false, []);
  try {
    const issue = answers.issue === 1 ? name : `${name}-issue-${answers.issue}`;
    report(printSheet(content.certificate, { formats, to, name: issue }));
  } catch (error) {
    throw error instanceof WriteError ? new UsageError(words(error.said)) : error;
  }
  return 0;
}

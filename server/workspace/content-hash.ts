/** Names the content that a sheet was printed from. */
import { createHash } from 'node:crypto';
import type { SourceFile } from '../../language/check.ts';
import type { Job } from '../../language/model/job.ts';
import type { Procedure } from '../../language/model/procedure.ts';

/** SHA-256, hex, over the texts that the sheet is made of: its procedure's, family's, shop's and job's files. */
export function contentHash(
  { procedure, job }: { readonly procedure: Procedure; readonly job: Job | null },
  files: readonly SourceFile[],
): string {
  const used = new Set(
    [procedure, procedure.family, procedure.shop, job].flatMap((named) => (named === null ? [] : [named.source.file])),
  );
  const hash = createHash('sha256');
  for (const { uri, text } of files) {
    // The place of a file is no content: the same text from another folder is the same sheet.
    if (used.has(uri)) hash.update(text.replaceAll('\r\n', '\n')).update('\0');
  }
  return hash.digest('hex');
}

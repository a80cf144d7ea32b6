import { createHash } from 'node:crypto';
import { type CheckedFiles, type Printed, printedContent } from '../../../language/db/printed-content.ts';

/** Names the content that a sheet was printed from. The command, the editor and the link on the sheet have the same. */
export function contentHash(printed: Printed, checked: CheckedFiles): string {
  return sha256(printedContent(printed, checked));
}

/** SHA-256 of a text in UTF-8, hex. */
export function sha256(text: string): string {
  return createHash('sha256').update(text).digest('hex');
}

/**
 * Text as a drawing can set it: what would hide or turn letters goes, line ends become blanks, halves of characters become
 * the sign for it. The same as on the sheet (a test holds both together); the drawing stands on its own.
 */
export function settable(text: string): string {
  return text
    .replaceAll('\u00b5', '\u03bc')
    .replaceAll('\u202f', '\u00a0')
    .replace(/[\t\n\r\u2028\u2029]+/gu, ' ')
    .replace(/[\u0000-\u001f\u007f-\u009f\u200b\u200e\u200f\u202a-\u202e\u2060-\u2069\ufeff\ufff9-\ufffb]/gu, '')
    .replace(/[\ud800-\udfff\ufffe\uffff]/gu, '\ufffd');
}

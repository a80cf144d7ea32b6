/**
 * Text as it can be set. The micro sign becomes the Greek letter that fonts draw, a narrow space becomes one that they
 * have; control characters, direction overrides and halves of characters, which would hide or turn what follows, go.
 */
export function printable(text: string): string {
  return text
    .replaceAll('\u00b5', '\u03bc')
    .replaceAll('\u202f', '\u00a0')
    .replace(/[\t\n\r\u2028\u2029]+/gu, ' ')
    .replace(/[\u0000-\u001f\u007f-\u009f\u200b\u200e\u200f\u202a-\u202e\u2060-\u2069\ufeff\ufff9-\ufffb]/gu, '')
    .replace(/[\ud800-\udfff\ufffe\uffff]/gu, '\ufffd');
}

/** Characters between the places where a very long word may break: what the narrowest column of a table holds. */
const piece = 8;

/** Gives words of more than twenty characters places to break, so that none runs out of its box. */
export function breakable(text: string): string {
  return text.replace(/[^\s\u200b-]{21,}/gu, (word) => {
    const letters = [...word];
    const pieces: string[] = [];
    for (let at = 0; at < letters.length; at += piece) pieces.push(letters.slice(at, at + piece).join(''));
    return pieces.join('\u200b');
  });
}

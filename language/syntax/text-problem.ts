import type { Position } from '../model/source.ts';
import { say } from '../say/say.ts';
import type { SyntaxProblem } from './parse.ts';

/** Says why something is no text to be read: binary data, UTF-16, wrong bytes. Null where it is text. */
export function textProblem(text: string): SyntaxProblem | null {
  // The first line may be empty.
  const start = { line: 0, character: 0 };
  const whole = { start, end: { line: 0, character: /^[^\n\r]/u.test(text) ? 1 : 0 } };
  const zeros = text.split('\u0000').length - 1;
  if (zeros > 0) {
    // Neither byte of a UTF-16 byte order mark is UTF-8.
    const wide = zeros > text.length / 4 || text.startsWith('\uFFFD\uFFFD');
    return {
      code: 'not-text',
      message: wide
        ? say`This file is in UTF-16. Save it as UTF-8: in the editor, click the encoding at the bottom of the window and choose Save with Encoding, UTF-8.`
        : say`This file is not text: it holds binary data. Move it out of the folder, or give it a different extension than .rebuild.`,
      range: whole,
    };
  }
  const broken = text.indexOf('\uFFFD');
  if (broken >= 0) {
    return {
      code: 'not-text',
      message: say`This character was not written in UTF-8, so the file is not read. Save it as UTF-8: then ° ± · µ and accents come out right.`,
      range: signAt(placeOf(text, broken)),
    };
  }
  return null;
}

const kinds = [
  {
    signs: /[\u0001-\u0008\u000B\u000C\u000E-\u001F\u007F-\u009F\u2028\u2029]/u,
    why: say`This is a control character. It cannot be seen, and on a screen or a printer it can hide or change the text around it`,
  },
  {
    // The Bidi_Control characters of Unicode (UAX 9). That they can make a text read differently is CVE-2021-42574.
    signs: /[\u061C\u200E\u200F\u202A-\u202E\u2066-\u2069]/u,
    why: say`This character changes the direction of the text. It cannot be seen, and what is shown can differ from what is read and printed`,
  },
  {
    signs: /[\u200B\u2060-\u2064\uFEFF]/u,
    why: say`This character has no width. It cannot be seen, and a name or a number with it is not the same as one without`,
  },
] as const;

const anyHidden = new RegExp(kinds.map(({ signs }) => signs.source).join('|'), 'gu');

/** A file that is full of them is reported often enough. */
const mostReported = 20;

/** Characters that cannot be seen, each at its place; they come in when text is pasted from elsewhere, or are meant to deceive. */
export function hiddenSigns(text: string): SyntaxProblem[] {
  const found = [...text.matchAll(anyHidden)].filter(({ 0: sign, index }) => index > 0 || sign !== '\uFEFF');
  return found.slice(0, mostReported).map(({ 0: sign, index }) => ({
    code: 'hidden-character',
    message: say`${kinds.find(({ signs }) => signs.test(sign))!.why} (${codeOf(sign)}). Delete it; if that does not work, retype the line.`,
    range: signAt(placeOf(text, index)),
  }));
}

/** U+202E, as the tables of Unicode write it. */
export function codeOf(sign: string): string {
  return `U+${sign.codePointAt(0)!.toString(16).toUpperCase().padStart(4, '0')}`;
}

function placeOf(text: string, offset: number): Position {
  const before = text.slice(0, offset).split(/\r\n|\n|\r/u);
  return { line: before.length - 1, character: before.at(-1)!.length };
}

function signAt(start: Position): SyntaxProblem['range'] {
  return { start, end: { line: start.line, character: start.character + 1 } };
}

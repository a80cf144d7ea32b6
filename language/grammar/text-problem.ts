import type { SyntaxProblem } from './parse.ts';

/** Says why something is no text to be read: binary data, UTF-16, wrong bytes. Null where it is text. */
export function textProblem(text: string): SyntaxProblem | null {
  const start = { line: 0, character: 0 };
  const whole = { start, end: { line: 0, character: 1 } };
  const sample = text.slice(0, 4000);
  const zeros = sample.split('\u0000').length - 1;
  if (zeros > 0) {
    const wide = zeros > sample.length / 4;
    return {
      message: wide
        ? 'This file is in UTF-16. Save it as UTF-8: in the editor, choose the encoding at the foot of the window and save with UTF-8.'
        : 'This file is not text: it holds binary data. Take it out of the folder, or give it another ending than .rebuild.',
      range: whole,
    };
  }
  const broken = text.indexOf('\uFFFD');
  if (broken >= 0) {
    const before = text.slice(0, broken).split('\n');
    const place = { line: before.length - 1, character: before.at(-1)!.length };
    return {
      message:
        'This sign was not written in UTF-8, so the file is not read. Save it as UTF-8: then ° ± · µ and accents are what they were.',
      range: { start: place, end: { line: place.line, character: place.character + 1 } },
    };
  }
  return null;
}

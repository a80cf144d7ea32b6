/** Blanks between the words of a line. */
import { stepWords } from '../../syntax/keywords.ts';
import { scan } from '../../syntax/scan.ts';
import type { Line, Token } from '../../syntax/token.ts';

/** What sets off a step from another on its line, and what belongs together from what does not. */
const wide = '   ';

/** The words of a line with the blanks that belong between them; as they are where they would be read as others. */
export function spaced({ tokens }: Line, text: string): string {
  const code = joined(tokens, (one, other) => text.slice(one.endColumn, other.column), text);
  const [line] = scan(code).lines;
  const isSame =
    line!.tokens.length === tokens.length &&
    line!.tokens.every(({ name, image }, index) => name === tokens[index]!.name && image === tokens[index]!.image);
  const last = tokens.at(-1);
  return isSame || last === undefined ? code : text.slice(tokens[0]!.column, last.endColumn);
}

/** The words of a line as `text` spells them. */
export function joined(tokens: readonly Token[], gapOf: (one: Token, other: Token) => string, text: string): string {
  return tokens
    .map((token, index) => {
      const before = tokens[index - 1];
      const word = text.slice(token.column, token.endColumn);
      if (before === undefined) return word;
      // The first word says what the line is: what it is about follows it, unless it is a step by itself.
      const isHead = index === 1 && !stepWords.includes(token.image);
      return `${gapBetween(before, token, isHead ? '' : gapOf(before, token))}${word}`;
    })
    .join('');
}

const signs = /^(?:±|\+\/-|\+|-|−)$/u;

function gapBetween({ image: one }: Token, { image: other }: Token, written: string): string {
  if (/^[,;)]$/u.test(other) || one === '(') return '';
  if (one === '.' || other === '.' || one === '..' || other === '..') return '';
  if (one === '/' || other === '/') return written === '' ? '' : ' ';
  // A sign belongs to its figure.
  if (signs.test(one)) return '';
  if (one === ',' || one === ';' || one === '{' || other === '}' || other === '{' || other === '(') return ' ';
  return isWide(written) ? wide.slice(0, written.length) : ' ';
}

/** Set off on purpose. */
export function isWide(gap: string): boolean {
  return gap.length > 1;
}

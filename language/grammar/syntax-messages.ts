import type { IRecognitionException, IToken } from 'chevrotain';
import { reserved } from './words.ts';

/** The parser's error; it knows the last token that it took. */
export type ParserError = IRecognitionException & { readonly previousToken?: IToken };

/** What a kind of token is called at the bench. */
const called: Readonly<Record<string, string>> = {
  ID: 'a name',
  STRING: 'words in "…"',
  QUANTITY: 'a number with its unit',
  NUMBER: 'a number',
  DATE: 'a date such as 2026-10-05',
  EOL: 'the end of the line',
  '{': '{',
  '}': '}',
};

/** What the parser's error says, in the words of the trade. */
export function syntaxMessage(error: ParserError, next: IToken | undefined): string {
  const token = error.token;
  const before = error.previousToken;
  const after = before === undefined || before.image === '' ? '' : ` after ${shown(before)}`;
  const wanted = wantedToken(error);
  const ends = ['EOL', 'EOF', '}'];
  if (
    next !== undefined &&
    ends.includes(next.tokenType.name) &&
    token.tokenType.name === token.image &&
    /^(\p{L}.*|,|\.\.|±|\()$/u.test(token.image)
  ) {
    return `This line breaks off after ${shown(token)}: something is missing. Finish the line or take that out.`;
  }
  const atEnd = ends.includes(token.tokenType.name);
  if (atEnd)
    return `This line breaks off${after}: ${wanted === null ? 'something is missing' : `${wanted} is missing`}. Finish the line or take it out.`;
  if (reserved.includes(token.image) && wanted === 'a name') {
    return `${shown(token)} is a word of the language and cannot be a name. Choose another name.`;
  }
  // A date as half the world writes it: which of its numbers is the month nobody can tell.
  if (token.tokenType.name === 'NUMBER' && /^(?:on|received|due|calibrated)$/u.test(before?.image ?? '')) {
    return `${shown(token)} begins no date that can be read. Write year-month-day, such as 2026-10-05.`;
  }
  // Where a word is missing (`solid 8.8`), no unit mends the number.
  if (token.tokenType.name === 'NUMBER' && wanted !== 'a number' && wanted?.startsWith('“') !== true) {
    return `${shown(token)} has no unit here${after}. Write the number with its unit, such as 250 bar or 3 times.`;
  }
  return `${shown(token)} cannot stand here${after}${wanted === null || wanted === 'the end of the line' ? '' : `: ${wanted} should follow`}. Mend the line or take that out.`;
}

/** The one kind of token that the parser wanted, where it wanted one. */
function wantedToken(error: ParserError): string | null {
  const quoted =
    /Expecting token of type '([^']+)'/u.exec(error.message) ??
    /Expecting: .*?one of these possible Token sequences:\s+1\. \[([^\]]+)\]\s*but/su.exec(error.message);
  if (quoted === null) return null;
  return called[quoted[1]!] ?? `“${quoted[1]}”`;
}

function shown(token: IToken): string {
  const text = token.image.length > 30 ? `${token.image.slice(0, 29)}…` : token.image;
  return `“${text}”`;
}

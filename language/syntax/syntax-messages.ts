import { type Said, say } from '../say/say.ts';
import { reserved } from './keywords.ts';
import type { ProblemCode } from './problem-code.ts';
import type { ParserError } from './rules.ts';
import type { Token } from './token.ts';

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

interface Told {
  readonly code: ProblemCode;
  readonly message: Said;
}

/** What the parser's error says, in the words of the trade, and what kind of slip it is. */
export function syntaxMessage(error: ParserError, next: Token | undefined): Told {
  const token = error.token;
  const before = error.previous;
  const after = before === undefined || before.image === '' ? '' : say` after ${shown(before)}`;
  const wanted = wantedToken(error);
  const ends = ['EOL', 'EOF', '}'];
  if (
    next !== undefined &&
    ends.includes(next.name) &&
    token.name === token.image &&
    /^(\p{L}.*|,|\.\.|±|\()$/u.test(token.image)
  ) {
    return {
      code: 'line-breaks-off',
      message: say`This line breaks off after ${shown(token)}: something is missing. Finish the line, or delete ${shown(token)}.`,
    };
  }
  const slip = beginnersSlip(error);
  if (slip !== null) return slip;
  const atEnd = ends.includes(token.name);
  if (atEnd)
    return {
      code: 'line-breaks-off',
      message: say`This line breaks off${after}: ${wanted === null ? say`something is missing` : say`${wanted} is missing`}. Finish the line, or delete it.`,
    };
  if (reserved.includes(token.image) && wanted === 'a name') {
    return {
      code: 'not-a-name',
      message: say`${shown(token)} is a word of the language and cannot be a name. Choose another name.`,
    };
  }
  if (token.name === 'NUMBER' && before?.name === 'NUMBER' && /^\d{3}(?!\d)/u.test(token.image))
    return {
      code: 'number-unreadable',
      message: say`“${before.image} ${token.image}” is read as two numbers: thousands have no space. Write ${before.image}${token.image}, or delete one of them.`,
    };
  // Where a word is missing (`solid 8.8`), no unit would correct the number.
  if (token.name === 'NUMBER' && wanted !== 'a number' && wanted?.startsWith('“') !== true) {
    return {
      code: 'unit-unreadable',
      message: say`${shown(token)} has no unit here${after}. Write the number with its unit, such as 250 bar or 3 times.`,
    };
  }
  return {
    code: 'out-of-place',
    message: say`${shown(token)} is out of place here${after}${wanted === null || wanted === 'the end of the line' ? '' : say`: ${wanted} should follow`}. Correct the line, or delete ${shown(token)}.`,
  };
}

/** What is often written so by those who are new to the language; null: nothing of these. */
function beginnersSlip({ token, previous: before }: ParserError): Told | null {
  const kind = token.name;
  if (token.image === 'and')
    return { code: 'out-of-place', message: say`A list has commas, and no “and”: write a comma here.` };
  if (before?.name === 'NUMBER' && ['±', '+/-', '+', '-', '−'].includes(token.image))
    return {
      code: 'unit-unreadable',
      message: say`${shown(before)} has no unit. Write the number with its unit, then the tolerance, such as 20 bar ±2.`,
    };
  if (kind === 'NUMBER' && before !== undefined && ['on', 'due', 'received'].includes(before.image))
    return { code: 'wrong-date', message: say`A date is written year-month-day, such as 2026-09-01.` };
  const isBare = before !== undefined && ['ID', before.image].includes(before.name);
  if (kind === 'ID' && isBare && /^\p{Lu}\p{Ll}/u.test(token.image))
    return {
      code: 'quote-missing',
      message: say`${shown(token)} is out of place here after ${shown(before)}. If it begins a title, put the whole title in quotes: "${token.image} …".`,
    };
  const isName = /^"[\p{L}_][\p{L}\d_-]*"$/u.test(token.image);
  if (kind === 'STRING' && isName && before !== undefined && before.name !== 'STRING')
    return {
      code: 'out-of-place',
      message: say`${shown(token)} is out of place here after ${shown(before)}. Quotes are for your own words; a name is written without them: ${token.image.slice(1, -1)}.`,
    };
  return null;
}

/** What a rule of the grammar is called that begins in several ways. */
const calledByRule: Readonly<Record<string, string>> = {
  Name: 'a name',
  Label: 'a name or a number',
  Limit: 'a figure with its unit',
  SpecKind: 'what it is of, such as pressure or torque,',
};

/** The one kind of token that the parser wanted, where it wanted one. */
function wantedToken({ rule, wanted }: ParserError): string | null {
  if (Object.hasOwn(calledByRule, rule)) return calledByRule[rule]!;
  return wanted === null ? null : (called[wanted] ?? `“${wanted}”`);
}

function shown(token: Token): string {
  const text = token.image.length > 30 ? `${token.image.slice(0, 29)}…` : token.image;
  return `“${text}”`;
}

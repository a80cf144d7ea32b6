import { callable, itemHeads, reserved, stepBlocks, stepWords, writtenBlocks } from './keywords.ts';
import { Statement } from './statement.ts';
import { keyword, madeToken, Token, typeOf } from './token.ts';

/**
 * Statements that the parser could not read, by the offset of their first token: `keep` is the number of their
 * tokens that it read, `resume` that of the token at which a head can be read again. A head keeps these and its block; any
 * other statement becomes UNREAD.
 */
export interface Harm {
  readonly keep: number;
  readonly resume?: number;
}

export type Damage = ReadonlyMap<number, Harm>;

/** Replaces what cannot be read by UNREAD tokens. Of a statement only the last token before its EOL can be `{`. */
export function markUnread(statements: readonly Statement[], damage: Damage): Statement[] {
  const out: Statement[] = [];
  const open: string[] = [];
  /** The tokens of a block that goes with its unread head, and how many blocks are open in it. */
  let skipped: Token[] = [];
  let depth = 0;
  for (const statement of statements) {
    const { tokens, brace, closes } = statement;
    const harm = damage.size === 0 ? undefined : damage.get(tokens[0]!.offset);
    if (depth > 0 || losesBlock(tokens, brace, harm, open.length)) {
      if (closes) depth--;
      if (brace >= 0) depth++;
      for (const token of tokens) skipped.push(token);
      if (depth === 0) {
        out.push(new Statement([unread(skipped.slice(0, -1)), skipped.at(-1)!]));
        skipped = [];
      }
      continue;
    }
    if (closes) {
      open.pop();
      out.push(statement);
      continue;
    }
    const read = harm === undefined ? unknownWord(statement, open.at(-1)) : repaired(tokens, brace, harm);
    out.push(read === tokens ? statement : new Statement(read));
    if (brace >= 0) open.push(keyword(tokens[0]) ?? '');
  }
  return out;
}

/** A head that is no head, or could not be read at all: its block goes with it. */
function losesBlock(statement: readonly Token[], brace: number, harm: Harm | undefined, depth: number): boolean {
  if (brace < 0) return false;
  return harm?.keep === 0 || (depth <= 1 && keyword(statement[0]) === null);
}

/** A damaged statement: UNREAD, or for a head what was read of it and its `{`. */
function repaired(statement: readonly Token[], brace: number, { keep, resume }: Harm): Token[] {
  if (brace < 0) return [unread(statement.slice(0, -1)), statement.at(-1)!];
  const kept = statement.slice(0, Math.min(keep, brace));
  while (kept.length > 1 && (reserved.includes(kept.at(-1)!.image) || kept.at(-1)!.image === ',')) kept.pop();
  if (kept.length <= 1) kept.splice(0, kept.length, statement[0]!, madeToken('ID', statement[0]!));
  return [...kept, ...statement.slice(Math.min(resume ?? brace, brace))];
}

/**
 * A statement that begins with a word which opens nothing here becomes UNREAD from that word on. In a block of
 * steps an unknown word may be the call of a sequence, alone or with others on its line.
 */
function unknownWord(statement: Statement, block: string | undefined): readonly Token[] {
  const { tokens, brace } = statement;
  if (brace >= 0 || block === 'number' || (block !== undefined && writtenBlocks.includes(block))) return tokens;
  const isStep = block !== undefined && stepBlocks.includes(block);
  const at = isStep ? statement.startOfUnread : keyword(tokens[0]) === null ? 0 : -1;
  return at < 0 ? tokens : [...tokens.slice(0, at), unread(tokens.slice(at, -1)), tokens.at(-1)!];
}

/** The first word of a statement, or one after calls, that can be neither a step nor a call; -1: there is none. */
export function startOfUnread(statement: readonly Token[]): number {
  for (let index = 0; ; index++) {
    const token = statement[index]!;
    if (startsUnread(statement, token, index)) return index;
    if (!mayBeCall(token)) return -1;
  }
}

function startsUnread(statement: readonly Token[], token: Token, index: number): boolean {
  const word = keyword(token);
  if (word !== null && !callable.includes(word)) return index === 0 && !opens.has(word);
  if (!mayBeCall(token)) return index === 0;
  const next = statement[index + 1]!;
  const after = statement[index + 2];
  if (['EOL', 'with', 'allow', 'note'].includes(next.name) || mayBeCall(next)) return false;
  return !(stepWords.includes(next.image) && after !== undefined && after.name !== ',');
}

/** What may begin a line of a block. */
const opens = new Set([...stepWords, ...itemHeads]);

/**
 * What is written there, with blanks for what is between the tokens: its length is that of the text. A token that
 * was put in, or was read as another word, has no text of its own.
 */
function spelt(tokens: readonly Token[]): string {
  const { offset: start, line } = tokens[0]!;
  return tokens.reduce(
    (text, { offset, end }) =>
      offset < start + text.length ? text : text.padEnd(offset - start) + line.source.text.slice(offset, end),
    '',
  );
}

/** A word that can stand for a sequence. */
function mayBeCall(token: Token): boolean {
  return token.name === 'ID' || callable.includes(token.name);
}

/** One token for all of them, at their place. */
function unread(tokens: readonly Token[]): Token {
  const [first, last] = [tokens[0]!, tokens.at(-1)!];
  return new Token(
    'UNREAD',
    typeOf.get('UNREAD')!,
    spelt(tokens),
    first.line,
    first.column,
    last.endLine,
    last.endColumn,
  );
}

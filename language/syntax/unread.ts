import type { IToken, TokenType } from 'chevrotain';
import { callable, itemHeads, reserved, stepBlocks, stepWords } from './keywords.ts';
import { keyword, madeToken } from './layout.ts';

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

type Types = Readonly<Record<string, TokenType>>;

/** Statements between two EOL. The EOL stays with the statement that it ends. */
export function statements(tokens: readonly IToken[]): IToken[][] {
  const all: IToken[][] = [[]];
  for (const token of tokens) {
    all.at(-1)!.push(token);
    if (token.tokenType.name === 'EOL') all.push([]);
  }
  if (all.at(-1)!.length === 0) all.pop();
  return all;
}

/** Replaces what cannot be read by UNREAD tokens. */
export function markUnread(tokens: readonly IToken[], types: Types, damage: Damage): IToken[] {
  const out: IToken[] = [];
  const open: string[] = [];
  /** The statements of a block that goes with its unread head, and how many blocks are open in it. */
  let skipped: IToken[] = [];
  let depth = 0;
  for (const statement of statements(tokens)) {
    const first = statement[0]!;
    const brace = statement.findIndex((token) => token.tokenType.name === '{');
    const harm = damage.get(first.startOffset);
    if (depth > 0 || losesBlock(statement, brace, harm, open.length)) {
      if (first.tokenType.name === '}') depth--;
      if (brace >= 0) depth++;
      skipped.push(...statement);
      if (depth === 0) {
        out.push(unread(skipped.slice(0, -1), types), skipped.at(-1)!);
        skipped = [];
      }
      continue;
    }
    if (first.tokenType.name === '}') open.pop();
    if (harm !== undefined && first.tokenType.name !== '}') out.push(...repaired(statement, brace, harm, types));
    else out.push(...unknownWord(statement, brace, open, types));
    if (brace >= 0) open.push(keyword(first) ?? '');
  }
  return out;
}

/** A head that is no head, or could not be read at all: its block goes with it. */
function losesBlock(statement: readonly IToken[], brace: number, harm: Harm | undefined, depth: number): boolean {
  if (brace < 0) return false;
  return harm?.keep === 0 || (depth <= 1 && keyword(statement[0]) === null);
}

/** A damaged statement: UNREAD, or for a head what was read of it and its `{`. */
function repaired(statement: readonly IToken[], brace: number, { keep, resume }: Harm, types: Types): IToken[] {
  if (brace < 0) return [unread(statement.slice(0, -1), types), statement.at(-1)!];
  const kept = statement.slice(0, Math.min(keep, brace));
  while (kept.length > 1 && (reserved.includes(kept.at(-1)!.image) || kept.at(-1)!.image === ',')) kept.pop();
  if (kept.length <= 1) kept.splice(0, kept.length, statement[0]!, madeToken(types, 'ID', statement[0]!));
  return [...kept, ...statement.slice(Math.min(resume ?? brace, brace))];
}

/**
 * A statement that begins with a word which opens nothing here becomes UNREAD from that word on. In a block of
 * steps an unknown word may be the call of a sequence, alone or with others on its line.
 */
function unknownWord(statement: readonly IToken[], brace: number, open: readonly string[], types: Types): IToken[] {
  const block = open.at(-1);
  const first = statement[0]!;
  if (block === 'number' || block === 'unit' || first.tokenType.name === 'EOL' || first.tokenType.name === '}')
    return [...statement];
  if (block !== undefined && stepBlocks.includes(block)) {
    const at = statement.findIndex((token, index) => startsUnread(statement, token, index));
    if (at < 0 || brace >= 0) return [...statement];
    return [...statement.slice(0, at), unread(statement.slice(at, -1), types), statement.at(-1)!];
  }
  if (keyword(first) !== null || brace >= 0) return [...statement];
  return [unread(statement.slice(0, -1), types), statement.at(-1)!];
}

/** The first word of a statement, or one after calls, that can be neither a step nor a call. */
function startsUnread(statement: readonly IToken[], token: IToken, index: number): boolean {
  const callsOnly = statement.slice(0, index).every(mayBeCall);
  if (!callsOnly) return false;
  const word = keyword(token);
  if (word !== null && !callable.includes(word))
    return index === 0 && !stepWords.includes(word) && !itemHeads.includes(word);
  if (!mayBeCall(token)) return index === 0;
  const next = statement[index + 1]!;
  const after = statement[index + 2];
  if (['EOL', 'with', 'allow', 'note'].includes(next.tokenType.name) || mayBeCall(next)) return false;
  return !(stepWords.includes(next.image) && after !== undefined && after.tokenType.name !== ',');
}

/** The tokens' own text, with blanks for what was between them: its length is that of the text. */
function spelt(tokens: readonly IToken[]): string {
  return tokens.reduce((text, token) => text.padEnd(token.startOffset - tokens[0]!.startOffset) + token.image, '');
}

/** A word that can stand for a sequence. */
function mayBeCall(token: IToken): boolean {
  return token.tokenType.name === 'ID' || callable.includes(token.tokenType.name);
}

/** One token for all of them, at their place. */
function unread(tokens: readonly IToken[], types: Types): IToken {
  const first = tokens[0]!;
  const last = tokens.at(-1)!;
  const type = types.UNREAD!;
  return {
    ...last,
    image: spelt(tokens),
    tokenType: type,
    tokenTypeIdx: type.tokenTypeIdx!,
    startOffset: first.startOffset,
    startLine: first.startLine,
    startColumn: first.startColumn,
  } as IToken;
}

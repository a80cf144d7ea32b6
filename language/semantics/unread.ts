import type { Source } from '../model/source.ts';
import { joined, say } from '../say/say.ts';
import type * as ast from '../syntax/generated/ast.ts';
import { continuing } from '../syntax/keywords.ts';
import { nearest } from '../syntax/nearest.ts';
import type { Context } from './context.ts';
import type { Sequences } from './scope.ts';
import { synonymMessage, synonyms } from './synonyms.ts';

/**
 * Reports a line that begins with no word of the language, with the nearest ones. A line that the parser broke
 * off in begins with one: its error is reported already.
 *
 * @param sequences those that could be called there
 */
export function unreadLine(
  context: Context,
  node: ast.Unread,
  words: readonly string[],
  sequences: Sequences | null = null,
) {
  const whole = context.source(node);
  const word = /^[^\s,{}]+/u.exec(node.text)?.[0] ?? node.text;
  if (words.includes(word)) return;
  const { start } = whole.range;
  const source: Source = {
    file: whole.file,
    range: { start, end: { line: start.line, character: start.character + word.length } },
  };
  if (sequences?.get(word) !== undefined) {
    context.syntax(
      'not-a-name',
      say`${word} is a word of the language: a sequence of that name cannot be called. Give the sequence another name.`,
      source,
    );
    return;
  }
  const meant = synonyms.get(word);
  if (meant !== undefined && (words.includes(meant) || sequences?.get(meant) !== undefined)) {
    context.syntax('unknown-word', synonymMessage(word), source, meant);
    return;
  }
  if (continuing.includes(word)) {
    context.syntax(
      'out-of-place',
      say`${word} continues a statement, and there is none before it. Write that statement above, or delete this.`,
      source,
    );
    return;
  }
  const near = sequences?.nearest(word, words) ?? nearest(word, words);
  const what =
    near.length === 0
      ? say`Delete the line, or begin it with a word of the language.`
      : say`Did you mean ${joined(near, say` or `)}?`;
  context.syntax(
    'unknown-word',
    say`No such step or word: ${word.length > 30 ? say`${word.slice(0, 29)}…` : word}. ${what}`,
    source,
    near.length === 1 ? near[0] : undefined,
    word,
  );
}

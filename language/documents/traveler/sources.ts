import type { Words } from '../../i18n/index.ts';
import { letterAt } from '../letters.ts';
import type { Block, TextBlock } from '../model.ts';

/** Where the list of sources goes: it is made when all are known. */
export const sourcesHere: TextBlock = { kind: 'text', text: '', strong: false };

/** Gives each source its letter, in the order in which they are read, and puts the list in its place. */
export function letterSources(blocks: readonly Block[], words: Words): Block[] {
  const letters = new Map<string, string>();
  const letterOf = (text: string) => {
    const known = letters.get(text) ?? letterAt(letters.size);
    letters.set(text, known);
    return known;
  };
  const lettered = blocks.map((block) => (block === sourcesHere ? block : replaced(block)));
  const list = [...letters].map(([text, letter]) => `[${letter}] ${text}`).join('; ');
  return lettered.flatMap((block): Block[] =>
    block !== sourcesHere
      ? [block]
      : list === ''
        ? []
        : [{ ...sourcesHere, text: `${words.limits.sources}: ${list}.` }],
  );

  function replaced<T>(value: T): T {
    if (Array.isArray(value)) return value.map(replaced) as T;
    if (value === null || typeof value !== 'object') return value;
    return Object.fromEntries(
      Object.entries(value).map(([key, inner]) => [
        key,
        key === 'sources' ? [...new Set((inner as readonly string[]).map(letterOf))] : replaced(inner),
      ]),
    ) as T;
  }
}

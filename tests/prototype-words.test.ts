/** Property names that every object has are not words of the language: they are as unknown as any other word. */
import { describe, expect, it } from 'vitest';
import { checkFiles } from '../language/db/workspace.ts';
import { fullMessage } from '../language/model/diagnostic.ts';
import { isProblemCode } from '../language/syntax/problem-code.ts';
import { libraryFiles } from './library.ts';

const words = Object.getOwnPropertyNames(Object.prototype);
const [first] = libraryFiles().filter(({ uri }) => uri.endsWith('first.rebuild'));
/** Without the names that a word of the prototype comes near to: nearness is not what is tried here. */
const text = first!.text.replaceAll(/spring(?!-loaded)/gu, 'coil').replaceAll('valve', 'relief');

const found = (source: string, word: string) =>
  checkFiles([{ uri: 'a.rebuild', text: source }]).diagnostics.map(
    ({ rule, source: { range }, ...said }) =>
      `${range.start.line}:${range.start.character} ${rule} ${fullMessage(said)
        .replaceAll(word, 'WORD')
        .replace(/ (?:Did you mean|Declare it|Take the line) .*/u, '')}`,
  );

/** A place of each kind: the first word behind each other word, and the first of a line. */
const places = new Map(
  [...text.matchAll(/"[^"\n]*"?|\/\/[^\n]*|\p{L}[\p{L}\d_-]*/gu)].flatMap(({ 0: word, index }) =>
    /^\p{L}/u.test(word)
      ? [[/(?:\S+|\n)[^\S\n]*$/u.exec(text.slice(0, index))?.[0].trim() ?? '', { word, index }] as const]
      : [],
  ),
);

const madeUp = new Map<string, readonly string[]>();

describe.each(words.filter((word) => /^\p{L}/u.test(word)))('%s', (word) => {
  it('is as unknown as an invented word, wherever it is', () => {
    expect(places.size).toBeGreaterThan(40);
    const known: string[] = [];
    for (const { word: old, index } of places.values()) {
      const put = (other: string) => text.slice(0, index) + other + text.slice(index + old.length);
      const made = 'zq'.repeat(20).slice(0, word.length);
      const key = `${made}@${index}`;
      const like = madeUp.get(key) ?? found(put(made), made);
      madeUp.set(key, like);
      const of = found(put(word), word);
      if (of.join() !== like.join()) known.push(`${old} at ${index}: ${of.join(' | ')} / ${like.join(' | ')}`);
    }
    expect(known).toEqual([]);
  });
});

describe.each(words)('%s', (word) => {
  it('is no unit, no key of the settings and no rule, and a label like any other', () => {
    const quantity = checkFiles([{ uri: 'a.rebuild', text: text.replace('20 bar ±2', `20 ${word} ±2`) }]).diagnostics;
    expect(quantity.some(({ rule }) => isProblemCode(rule))).toBe(true);
    for (const json of [
      `{"${word}": {}}`,
      `{"severities": {"${word}": "off"}}`,
      `{"sheet": {"${word}": "a4"}}`,
      `{"sheet": {"paper": "${word}"}}`,
    ]) {
      const { diagnostics } = checkFiles([{ uri: 'a.rebuild', text }], { uri: 'handtight.json', text: json });
      expect(
        diagnostics.map(({ source }) => source.file),
        json,
      ).toEqual(['handtight.json']);
    }
    const labelled = checkFiles([{ uri: 'a.rebuild', text: text.replace('revision A', `revision "${word}"`) }]);
    expect(labelled.diagnostics).toEqual([]);
    expect(labelled.procedures[0]!.procedure.revision).toBe(word);
  });
});

import { describe, expect, it } from 'vitest';
import { edited, start } from '../../tests/fixtures/workspace-edits.ts';
import { Random } from '../../tests/fuzz/random.ts';
import { libraryFiles } from '../../tests/library.ts';
import { declarationOf } from './declarations.ts';
import { plainHeads } from './plain-heads.ts';
import { Trees } from './trees.ts';

const parsed = (uri: string, text: string) => [...new Trees().nodes(uri, text).values()].map(declarationOf);

describe('what a file declares', () => {
  const files = libraryFiles(true).filter(({ uri }) => !uri.includes('/jobs/'));

  it.each(files.map(({ uri, text }) => [uri, text]))('is seen without parsing it: %s', (uri, text) => {
    expect(plainHeads(uri, text)).toEqual(parsed(uri, text));
  });

  it.each([
    ['several, with the same name twice', 'sequence s {\n}\nsequence s "S" with a; b {\n  wait 5 min\n}\n'],
    [
      'heads over lines, remarks, numbers in quotes',
      'procedure p "P {" // for f\n  for f at s\n  like q revision "B 2"\n{ // {\n  number "0 433" "x"\n  number A-250 {\n    opening 2 bar\n  }\n}\r\n',
    ],
  ])('is seen: %s', (_, text) => {
    expect(plainHeads('a', text)).toEqual(parsed('a', text));
  });

  it.each([
    ['a job', 'job 1 of p {\n}\n'],
    ['a block that does not end', 'sequence s {\n  only A {\n}\n'],
    ['a brace too many', 'sequence s {\n}\n}\n'],
    ['a head that has no name', 'family "x" {\n}\n'],
    ['a misspelt head', 'famly x {\n}\n'],
    ['a word that is no name', 'family with {\n}\n'],
    ['a declaration in another', 'family f {\n  procedure p for f {\n  }\n}\n'],
    ['a number on a line with something else', 'procedure p for f {\n  number A  number B\n}\n'],
    ['a text of another kind', 'shop s {\n\u0000}\n'],
  ])('is left to the parser: %s', (_, text) => {
    expect(plainHeads('a', text)).toBeNull();
  });

  it.each([1, 2, 3, 4, 5, 6, 7, 8])('is what the parser finds, or left to it, after random edits, seed %i', (seed) => {
    const random = new Random(seed);
    let [seen, left] = [0, 0];
    for (const { uri, text } of [...start, ...files.filter((file) => file.text.length < 9000)]) {
      let now = text;
      for (let count = 0; count < 12; count++) {
        now = edited(random, count % 4 === 0 ? text : now);
        const heads = plainHeads(uri, now);
        if (heads === null) left++;
        else {
          seen++;
          expect({ now, heads }).toEqual({ now, heads: parsed(uri, now) });
        }
      }
    }
    expect(Math.min(seen, left)).toBeGreaterThan(10);
  });
});

import { describe, expect, it } from 'vitest';
import { libraryFiles } from '../../tests/library.ts';
import { unquoted } from '../semantics/lower-steps.ts';
import { parse } from '../syntax/parse.ts';
import { jobHeads } from './job-heads.ts';

/** What the parser says: names of jobs, or null where anything else is declared. */
function parsed(text: string): string[] | null {
  const { declarations } = parse(text).ast;
  return declarations.every(({ $type }) => $type === 'Job')
    ? declarations.map((node) => unquoted(String('name' in node ? node.name : '')))
    : null;
}

describe('the heads of jobs', () => {
  it.each(libraryFiles(true).map(({ uri, text }) => [uri, text]))(
    'of %s are those that the parser finds',
    (_, text) => {
      expect(jobHeads(text)).toEqual(parsed(text));
    },
  );

  it.each([
    ['two jobs', 'job 1 of p {\n}\njob B-2 of p {\n  unit 1\n}\n', ['1', 'B-2']],
    ['a quoted number, and one with a point', 'job "22/07 B" of p {\n}\njob 7.5 of p {\n}\n', ['22/07 B', '7.5']],
    ['a head over several lines', 'job 7 "Title {"\n  of p revision A\n  customer "A }"\n{\n}\n', ['7']],
    ['remarks and blank lines', '// job 9 of p {\n\n  job 1 of p { // }\n}\r\n// shop\n', ['1']],
    ['nothing declared', '// nothing\n', []],
  ])('are found: %s', (_, text, names) => {
    expect(jobHeads(text)).toEqual(names);
    if (names.length > 0) expect(parsed(text)).toEqual(names);
  });

  it.each([
    ['something else', 'job 1 of p {\n}\nsequence s {\n  wait 5 min\n}\n'],
    ['a line that is none', 'wait what\njob 1 of p {\n}\n'],
    ['a misspelt head', 'jbo 1 of p {\n}\n'],
    ['a brace that is missing', 'job 1 of p {\n  unit 1 {\n}\njob 2 of p {\n}\n'],
    ['a brace too many', 'job 1 of p {\n}\n}\n'],
    ['a head without its block', 'job 1 of p\n'],
    ['a head with no name', 'job of p {\n}\n'],
  ])('are left to the parser: %s', (_, text) => {
    expect(jobHeads(text)).toBeNull();
  });
});

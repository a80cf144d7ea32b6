/** The shape of texts, and what names are in them. */
import { expect, test } from 'vitest';
import { askedAt, edited, procedureText } from '../../tests/holder.ts';
import type { Range } from '../model/source.ts';
import { callablesAt, callersOf, callsFrom } from './call-hierarchy.ts';
import { codeLensesOf, usesAt } from './code-lenses.ts';
import { documentLinksOf } from './document-links.ts';
import { linkedPlaces } from './linked-editing.ts';
import { coloredNames } from './semantic-tokens.ts';
import { foldsOf, rangesAround } from './structure.ts';
import { workspaceSymbols } from './workspace-symbols.ts';

const cut = (text: string, { start, end }: Range) => {
  const lines = text.split('\n').slice(start.line, end.line + 1);
  lines[lines.length - 1] = lines.at(-1)!.slice(0, end.character);
  lines[0] = lines[0]!.slice(start.character);
  return lines.join('\n');
};

test('blocks fold to the line before their end, and remarks of several lines', () => {
  const text = '// One.\n// Two.\nshop s "S" {\n  station a "A"\n  station b "B"\n}\n';
  expect(foldsOf(text)).toEqual([
    { start: 0, end: 1, isRemark: true },
    { start: 2, end: 4, isRemark: false },
  ]);
});

test('a selection grows from the word to the list, the statement, the block, the declaration', () => {
  const at = procedureText.split('\n').findIndex((line) => line.includes('remove cap, nut'));
  const grown = rangesAround(procedureText, { line: at, character: 17 }).map((range) => cut(procedureText, range));
  expect(grown.slice(0, 3)).toEqual(['nut', 'cap, nut, nozzle', 'remove cap, nut, nozzle']);
  expect(grown[3]).toMatch(/^\n {4}clamp body[^{}]*\n {2}$/u);
  expect(grown[4]).toMatch(/^stage teardown at strip \{[^{}]*\}$/u);
  expect(grown.at(-1)).toBe(procedureText.trimEnd());
});

test('what is declared anywhere is found by letters of its name or title', () => {
  const { snapshot } = askedAt(procedureText);
  expect(workspaceSymbols(snapshot, 'nozzle nut').map(({ name, kind }) => `${kind} ${name}`)).toEqual([
    'part nut Nozzle nut',
  ]);
  expect(workspaceSymbols(snapshot, 'teard')).toMatchObject([
    { kind: 'stage', name: 'teardown', container: 'rebuild', source: { file: 'procedure.rebuild' } },
  ]);
  expect(workspaceSymbols(snapshot, '').length).toBeGreaterThan(10);
});

const sequences = `${edited('    slacken nut\n', '    loosen with nut\n    loosen with nut\n')}
sequence loosen with fastener {
  oil fastener
  slacken fastener
}
procedure sister "Sister" for holder at bench like rebuild {
}
`;

test('a sequence is colored where it is called, and its parameters where they are used', () => {
  const { snapshot, file } = askedAt(sequences);
  expect(coloredNames(snapshot, file).map(({ range, color }) => `${color} ${cut(sequences, range)}`)).toEqual([
    'function loosen',
    'function loosen',
    'variable cap',
    'parameter fastener',
    'parameter fastener',
    'parameter fastener',
    // A name that is a word of the language too.
    'variable rebuild',
  ]);
});

test('a part that has the name of a verb is colored as a name', () => {
  const text = `family f "F" {\n  part body "Body"\n  part seal "Seal" on body\n}\nprocedure p "P" for f at bench {\n  stage s at strip { remove seal }\n}\n`;
  const { snapshot, file } = askedAt(text);
  expect(coloredNames(snapshot, file).map(({ range, color }) => `${color} ${range.start.line}`)).toEqual([
    'variable 5',
  ]);
});

test('lenses: print a procedure, and count the calls of a sequence', () => {
  const { snapshot, file } = askedAt(sequences);
  const lenses = codeLensesOf(snapshot, file);
  expect(lenses.map(({ kind, range }) => `${kind} ${cut(sequences, range)}`)).toEqual([
    'print rebuild',
    'uses loosen',
    'print sister',
  ]);
  expect(usesAt(snapshot, file, lenses[1]!.range).map(({ range }) => range.start.line)).toEqual([9, 10]);
});

test('callers and calls of a sequence, and of procedures that are like each other', () => {
  const { snapshot, file, position } = askedAt(sequences.replace('sequence loosen', 'sequence loos<|>en'));
  const [loosen] = callablesAt(snapshot, file, position);
  expect(callersOf(snapshot, loosen!)).toMatchObject([{ callable: { name: 'rebuild' }, places: [{}, {}] }]);
  const [rebuild] = callersOf(snapshot, loosen!);
  expect(callsFrom(snapshot, rebuild!.callable).map(({ callable }) => callable.name)).toEqual(['loosen']);
  expect(callersOf(snapshot, rebuild!.callable).map(({ callable }) => callable.name)).toEqual(['sister']);
  expect(callsFrom(snapshot, loosen!)).toEqual([]);
});

test('a rule behind allow leads to its page', () => {
  const text = edited('slacken nut\n', 'slacken nut allow not-clamped because "…"\n');
  const { snapshot, file } = askedAt(text);
  expect(documentLinksOf(snapshot, file).map(({ range, rule }) => [cut(text, range), rule])).toEqual([
    ['not-clamped', 'not-clamped'],
  ]);
});

test('places of a name that is in one file alone are edited together', () => {
  const own = askedAt(sequences.replace('oil fastener', 'oil faste<|>ner'));
  expect(linkedPlaces(own.snapshot, own.file, own.position).length).toBe(3);
  const shared = askedAt(edited('slacken nut', 'slacken n<|>ut'));
  expect(linkedPlaces(shared.snapshot, shared.file, shared.position)).toEqual([]);
});

import { expect, test } from 'vitest';
import { askedAt, edited, procedureText, shopText } from '../../tests/holder.ts';
import { definitionsAt } from './definition.ts';
import { typeDefinitionsAt } from './type-definition.ts';

/** The lines that the name at the marker leads to. */
function leads(marked: string): string[] {
  const { snapshot, file, position } = askedAt(marked);
  return definitionsAt(snapshot, file, position).map(
    ({ file: to, range }) => `${to}: ${snapshot.textOf(to)!.split('\n')[range.start.line]!.trim()}`,
  );
}

test('a name leads to its declaration, in another file too', () => {
  expect(leads(edited('slacken nut', 'slacken n<|>ut'))).toEqual([
    'shop.rebuild: part nut "Nozzle nut" on body holds nozzle',
  ]);
  expect(leads(edited('at bench', 'at ben<|>ch'))).toEqual(['shop.rebuild: shop bench "Bench" {']);
});

test('the name of a declaration leads to itself', () => {
  expect(leads(edited('spec nut-fit', 'spec nut<|>-fit'))).toEqual([
    'procedure.rebuild: spec nut-fit torque 60 N·m ±5 source "Test sheet, page 2"',
  ]);
});

test('what is no name leads nowhere', () => {
  expect(leads(edited('slacken nut', 'slack<|>en nut'))).toEqual([]);
  expect(leads(edited('slacken nut', 'slacken n<|>ix'))).toEqual([]);
  expect(shopText).not.toContain('nix');
});

const sister = (more: string) =>
  `procedure sister "Sister" for holder at bench like rebuild {\n  spec nut-fit torque 50 N·m ±5 source "Sheet"\n  ${more}\n}\n`;

function leadsIn(marked: string): string[] {
  const { snapshot, file, position } = askedAt(`${procedureText}${marked}`);
  return definitionsAt(snapshot, file, position).map(({ file: to, range }) =>
    snapshot.textOf(to)!.split('\n')[range.start.line]!.trim(),
  );
}

test('what a patch names leads to what it changes', () => {
  expect(leadsIn(sister('without stage tear<|>down'))).toEqual(['stage teardown at strip {']);
  expect(leadsIn(sister('after slacken n<|>ut in teardown { tag }'))).toEqual(['slacken nut']);
  expect(leadsIn(sister('after slacken nut in tear<|>down { tag }'))).toEqual(['stage teardown at strip {']);
});

test('a parameter leads to the head of its sequence, and what a hazard names to what it is', () => {
  expect(leadsIn('sequence shut with openings {\n  cap open<|>ings\n}\n')).toEqual(['sequence shut with openings {']);
  expect(leads(edited('    slacken nut', '    hazard "Hot." for slacken n<|>ut\n    slacken nut'))).toEqual([
    'shop.rebuild: part nut "Nozzle nut" on body holds nozzle',
  ]);
});

test('every name on a line of several leads to itself', () => {
  const { snapshot } = askedAt(procedureText);
  const line = shopText.split('\n').findIndex((text) => text.includes('port inlet, return'));
  const character = shopText.split('\n')[line]!.indexOf('return');
  expect(definitionsAt(snapshot, 'shop.rebuild', { line, character })).toEqual([
    { file: 'shop.rebuild', range: { start: { line, character }, end: { line, character: character + 6 } } },
  ]);
});

test('the type of a name is what it belongs to', () => {
  const typed = (marked: string) => {
    const { snapshot, file, position } = askedAt(marked);
    return typeDefinitionsAt(snapshot, file, position).map(
      ({ file: to, range }) => `${to}: ${snapshot.textOf(to)!.split('\n')[range.start.line]!.trim()}`,
    );
  };
  expect(typed(edited('slacken nut', 'slacken n<|>ut'))).toEqual(['shop.rebuild: family holder "Nozzle holder" {']);
  expect(typed(edited('procedure rebuild', 'procedure re<|>build'))).toEqual([
    'shop.rebuild: family holder "Nozzle holder" {',
  ]);
  expect(typed(edited('spec nut-fit', 'spec nut<|>-fit'))).toEqual([
    'procedure.rebuild: procedure rebuild "Rebuild and set" for holder at bench',
  ]);
});

import { expect, test } from 'vitest';
import { askedAt, edited, shopText } from '../../tests/holder.ts';
import { definitionsAt } from './definition.ts';

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

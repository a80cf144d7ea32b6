import { expect, test } from 'vitest';
import { type Place, placeAt } from './place.ts';

/** The place of the marker `<|>`. */
function at(marked: string): Place {
  return placeAt(marked.replace('<|>', ''), marked.indexOf('<|>'));
}

const blocks = (place: Place) => place.blocks.map(({ word }) => word);

test('a word that is being typed is no word of the statement yet', () => {
  expect(at('stage s at b {\n  torque nut to nu<|>')).toMatchObject({
    before: ['torque', 'nut', 'to'],
    partial: 'nu',
    quoted: false,
  });
});

test('the blocks around it, with their heads', () => {
  const place = at('procedure p "P" for f at s\n  revision A\n{\n  stage t at b {\n    <|>\n  }\n}\n');
  expect(blocks(place)).toEqual(['procedure', 'stage']);
  expect(place.blocks[0]!.head).toEqual(['procedure', 'p', '"', 'for', 'f', 'at', 's', 'revision', 'A']);
  expect(place.before).toEqual([]);
});

test('a block that is closed is left', () => {
  expect(blocks(at('shop s {\n}\nfamily f {\n  part <|>'))).toEqual(['family']);
});

test('a statement ends with its line, or goes on after a comma and before a word that goes on', () => {
  expect(at('stage s {\n  remove nut\n  <|>').before).toEqual([]);
  expect(at('stage s {\n  remove nut,\n    <|>').before).toEqual(['remove', 'nut', ',']);
  expect(at('stage s {\n  test opening\n    on fail <|>').before).toEqual(['test', 'opening', 'on', 'fail']);
});

test('nothing is completed in strings and comments, and braces in them do not count', () => {
  expect(at('stage s {\n  do "fit the <|>').quoted).toBe(true);
  expect(at('stage s {\n  fit nut // and <|>').quoted).toBe(true);
  expect(at('stage s {\n  do "fit" <|>').quoted).toBe(false);
  expect(blocks(at('stage s {\n  do "a } b" // }\n  <|>'))).toEqual(['stage']);
});

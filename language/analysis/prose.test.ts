import { expect, it } from 'vitest';
import { checkExample } from '../../tests/fixtures/example-pages.ts';
import { partsWords, partsWritten } from './prose.ts';

const family = `family line "In-line pump" {
  part body    "Body"                    held in "cradle"
  part holder  "Delivery valve holder"   on body   for each cylinder 1..6
  part bushing "Bushing"                 in body   for each cylinder 1..2
  part gallery "Gallery"                 in body   for each cylinder 1..2
  port inlet on body
  joint holder to body
}
stage build at build {
  clamp body
  unclamp body
}
`;
const procedure = checkExample(family).procedures[0]?.procedure;
const holders = [1, 2, 3, 4, 5, 6].map((at) => `holder-${at}`);

it('copies of a part are said and written as a person would', () => {
  expect(partsWords(procedure!, holders)).toBe('six delivery valve holders');
  expect(partsWords(procedure!, ['holder-1', 'holder-3', 'holder-4'])).toBe(
    'delivery valve holders of cylinders 1, 3 and 4',
  );
  expect(partsWords(procedure!, ['body', 'holder-2'])).toBe('body and delivery valve holder, cylinder 2');
  expect(partsWords(procedure!, ['gallery-1', 'gallery-2', 'bushing-1', 'bushing-2'])).toBe(
    'two galleries and two bushings',
  );
  expect(partsWritten(procedure!, [...holders, 'body'])).toBe('holder, body');
  expect(partsWritten(procedure!, ['holder-1', 'holder-3'])).toBe('holder 1, holder 3');
});

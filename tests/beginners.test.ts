/** Slips of the first days: each is answered with what to write, and nothing that merely follows from it is reported. */
import { expect, it } from 'vitest';
import { fullMessage } from '../language/model/diagnostic.ts';
import { check, checkExample } from './fixtures/example-pages.ts';

const unreadable = (text: string, read = checkExample) =>
  read(text)
    .diagnostics.filter(({ rule }) =>
      [
        'out-of-place',
        'unknown-word',
        'unknown-name',
        'quote-missing',
        'head-incomplete',
        'line-breaks-off',
        'blank-left',
      ].includes(rule),
    )
    .map((one) => `${one.rule}: ${fullMessage(one)}`);
const step = (text: string) => unreadable(`stage build at build {\n  ${text}\n}\n`);

it.each([
  [
    'clamp "body"',
    'out-of-place: “"body"” is out of place here after “clamp”. Quotes are for your own words; a name is written without them: body.',
  ],
  [
    'torque nut nut-fit',
    'unknown-word: nut-fit is not a step: it is a spec: write “to nut-fit” behind a torque, “within nut-fit” behind what is read.',
  ],
  ['rinse nozzle cal-oil', 'unknown-word: cal-oil is not a step: it is a fluid of the shop: write “in cal-oil”.'],
  ['torque nut to nut-fit TW-80', 'unknown-word: TW-80 is not a step: it is a tool of the shop: write “with TW-80”.'],
  ['keep shim tank', 'unknown-word: tank is not a step: it is a station of the shop: write “at tank”.'],
  [
    'photo note ""',
    'blank-left: These quotes are empty, and whatever needs their words would take them as given. Write the words, or delete the quotes and what introduces them.',
  ],
])('%s', (text, message) => expect(step(text)).toEqual([message]));

const around = (head: string, station = 'station build "Clean room"  clean') => `shop own "Own" {
  ${station}
}
family unit "Unit" {
  part body "Body"  held in "vice"
}
procedure p ${head} {
  stage build at build {
    photo
  }
}
`;

it('a title without quotes is one finding, and not a head that lacks its family too', () => {
  expect(unreadable(around('Rebuild for unit at own revision A'), check).map((one) => one.split(':')[0])).toEqual([
    'quote-missing',
  ]);
  expect(unreadable(around('"Rebuild" revision A'), check).map((one) => one.split(':')[0])).toEqual([
    'head-incomplete',
  ]);
});

it('what a station is may be written before what is worn there, or after', () => {
  for (const station of ['clean wear "Gloves"', 'wear "Gloves" clean', 'clean wear "Gloves" hot'])
    expect(
      unreadable(around('"Rebuild" for unit at own revision A', `station build "Clean room"  ${station}`), check),
    ).toEqual([]);
});

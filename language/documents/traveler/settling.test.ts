import { describe, expect, it } from 'vitest';
import { instead, procedureWith } from '../../../tests/fixtures/sound-procedure.ts';
import { checkFiles } from '../../db/workspace.ts';
import { isProblemCode } from '../../syntax/problem-code.ts';
import { settlingFigures } from '../figures/settling.ts';
import { buildPrintContext } from '../print-context.ts';
import { settlingFacts } from './steps.ts';

/** Facts of the repair's `choose`, with a spec line and a line before it. */
function facts(spec: string, before: string, change: { family?: (text: string) => string; own?: string } = {}) {
  const choose = '      choose shim to bring';
  const text = procedureWith({
    specs: (whole) =>
      instead(
        '220 bar +8 -0',
        `220 bar +8 -0${change.own ?? ''}`,
      )(instead('250 bar +8 -0', `250 bar +8 -0${spec}`)(whole)),
    repairs: instead(choose, `${before}${choose}`),
    ...(change.family === undefined ? {} : { family: change.family }),
  });
  const { diagnostics, procedures } = checkFiles([{ uri: 'x', text }]);
  expect(diagnostics.filter(({ rule }) => isProblemCode(rule) || rule === 'unknown-name')).toEqual([]);
  const { procedure } = procedures[0]!;
  const place = procedure.repairs.find(({ name }) => name === 'reshim')!;
  const step = place.steps.find((one) => one.verb === 'choose')!;
  const setting = buildPrintContext(procedure, {
    job: null,
    number: null,
    paper: 'a4',
    draft: false,
    diagnostics: [],
    hash: '',
  });
  return settlingFacts(setting, settlingFigures(setting, step, place)).map(({ label, text: of }) =>
    `${label}: ${of}`.replaceAll('\u00a0', ' '),
  );
}

const settling = ', settling 4 bar';
const renew = '      renew spring\n';

describe('a new spring settles', () => {
  it('where it is renewed before its shim is chosen', () => {
    expect(facts(settling, renew)).toEqual(['New pressure spring: set 4 bar higher, it settles']);
    expect(facts(settling, '')).toEqual([]);
    expect(facts('', renew)).toEqual([]);
    expect(facts(', settling 0 bar', renew)).toEqual([]);
  });

  it('a part number by its own figure', () => {
    expect(facts(settling, renew, { own: ', settling 3 bar' })).toEqual([
      'New pressure spring: A-250: set 4 bar higher, it settles',
      'New pressure spring: A-220: set 3 bar higher, it settles',
    ]);
    expect(facts(settling, renew, { own: ', settling 0 bar' })).toEqual([
      'New pressure spring: A-250: set 4 bar higher, it settles',
    ]);
    expect(facts(settling, `      only A-220 {\n  ${renew}      }\n`)).toEqual([
      'New pressure spring: A-220: set 4 bar higher, it settles',
    ]);
  });

  it('no other part does, nor what the shim lies in', () => {
    expect(facts(settling, '      renew seat, body\n')).toEqual([]);
    const over = (text: string) =>
      text
        .replace('"Setting shim"     in body', '"Setting shim"     on spring')
        .replace('"Pressure spring"  on shim', '"Pressure spring"  in body  binds over 2.20 mm')
        .replace('"Spring seat"      on spring', '"Spring seat"      on shim');
    expect(facts(settling, '      renew seat\n', { family: over })).toEqual([]);
    expect(facts(settling, renew, { family: over })).toEqual(['New pressure spring: set 4 bar higher, it settles']);
  });
});

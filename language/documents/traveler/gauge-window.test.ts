import { describe, expect, it } from 'vitest';
import { instead, procedureWith } from '../../../tests/fixtures/sound-procedure.ts';
import { checkFiles } from '../../db/workspace.ts';
import { isTestOf } from '../../model/steps.ts';
import { isProblemCode } from '../../syntax/problem-code.ts';
import { acceptanceText } from '../acceptance.ts';
import { stepFigures } from '../figures/step-figures.ts';
import { buildPrintContext } from '../print-context.ts';
import { gaugeWindows } from './gauge-window.ts';

/** The test of the opening, with another gauge, shop line and spec line. */
function made(gauge: string, shop = '', spec = '', range = 'range 0..400 bar') {
  const text = procedureWith({
    shop: (whole) =>
      instead(
        'range 0..400 bar  class 0.25  graduated 1 bar',
        `${range}  ${gauge}`,
      )(whole).replace(/\}\n*$/u, `  ${shop}\n}\n`),
    specs: instead('250 bar +8 -0', `250 bar +8 -0${spec}`),
  });
  const { diagnostics, procedures } = checkFiles([{ uri: 'x', text }]);
  const { procedure } = procedures[0]!;
  const setting = buildPrintContext(procedure, {
    job: null,
    number: null,
    paper: 'a4',
    draft: false,
    diagnostics: [],
    hash: '',
  });
  const step = procedure.stages.flatMap(({ steps }) => steps).find(({ verb }) => verb === 'test')!;
  const plain = (words: string) => words.replaceAll('\u00a0', ' ');
  return {
    windows: gaugeWindows(setting, stepFigures(setting, step, tester)).map(({ label, text: of }) =>
      plain(`${label} ${of}`),
    ),
    rule: acceptanceText(setting).text,
    syntax: diagnostics.filter(({ rule }) => isProblemCode(rule)).map(({ message }) => message),
  };
}

const tester = { station: 'tester', steps: [] };

describe('what the gauge may show', () => {
  it('is not said where acceptance is simple, and the sheet names that rule', () => {
    expect(made('class 0.6  graduated 1 bar')).toEqual({
      windows: [],
      rule: 'Acceptance: simple (a reading within its limit passes)',
      syntax: [],
    });
  });

  it('of 250 bar +8 -0 and 220 +8 -0, guarded on 0 to 400 bar of class 0.6: 252 to 256, and 222 to 226', () => {
    const guarded = made('class 0.6  graduated 1 bar', 'acceptance guarded  source "ISO 14253-1"');
    expect(guarded.syntax).toEqual([]);
    expect(guarded.windows).toEqual([
      'Passes if PG-400 shows A-250: 252 bar to 256 bar',
      'Passes if PG-400 shows A-220: 222 bar to 226 bar',
    ]);
    expect(guarded.rule).toBe(
      'Acceptance: guarded (limits drawn in by 0.83 of the error of the tool) (Source: ISO 14253-1)',
    );
  });

  it('with a new part is that of the limit for it: an old window would pass what does not', () => {
    const { windows } = made('class 0.25  graduated 1 bar', 'acceptance guarded', ', new spring 258 bar +8 -0');
    expect(windows).toEqual([
      'Passes if PG-400 shows A-250: 251 bar to 257 bar',
      'Passes if PG-400 shows A-220: 221 bar to 227 bar',
      'With new pressure spring: Passes if PG-400 shows 259 bar to 265 bar',
    ]);
  });

  it('is guarded for one spec alone, and in full', () => {
    // ±2.4 bar of class 0.6: 252.4 to 255.6, on whole marks 253 to 255.
    expect(made('class 0.6  graduated 1 bar', '', ', acceptance fully guarded').windows).toEqual([
      'Passes if PG-400 shows A-250: 253 bar to 255 bar',
      'Passes if PG-400 shows A-220: 223 bar to 225 bar',
    ]);
  });

  it('of a temperature: the limit is converted as a value, the error as a difference', () => {
    // 68 to 86 °F are 20 to 30 °C; ±1.8 °F are ±1 °C. As differences the ends would be 38 and 53 °C.
    const text = procedureWith({
      shop: (whole) =>
        whole.replace(
          /\}\n*$/u,
          '  tool TH-1 range 0..60 °C within 1.8 °F graduated 0.5 °C at tester\n  acceptance fully guarded\n}\n',
        ),
      prove: instead(
        'test opening ',
        'test warm  read temperature within 68..86 °F  on fail reshim (3 times)\n      test opening ',
      ),
    });
    const { diagnostics, procedures } = checkFiles([{ uri: 'x', text }]);
    expect(diagnostics.filter(({ rule }) => isProblemCode(rule))).toEqual([]);
    const procedure = procedures[0]!.procedure;
    const setting = buildPrintContext(procedure, {
      job: null,
      number: null,
      paper: 'a4',
      draft: false,
      diagnostics: [],
      hash: '',
    });
    const step = procedure.stages.flatMap(({ steps }) => steps).find((one) => isTestOf(one, 'warm'))!;
    expect(
      gaugeWindows(setting, stepFigures(setting, step, tester)).map((fact) => fact.text.replaceAll('\u00a0', ' ')),
    ).toEqual(['21 °C to 29 °C']);
  });

  it('of class 1.6 is nothing, and that is said', () => {
    expect(made('class 1.6  graduated 1 bar', 'acceptance guarded').windows).toEqual([
      'Passes if PG-400 shows no graduation is safely inside the limit: use a finer tool',
    ]);
  });

  it('is not given for a gauge whose error the shop does not state', () => {
    expect(made('graduated 1 bar', 'acceptance guarded').windows).toEqual([]);
  });

  it('has no more digits than can be read, and is never looser: without marks it is drawn in to a few', () => {
    // ±0.83 · 2.4 bar: exactly 251.992 to 256.008 bar.
    expect(made('class 0.6', 'acceptance guarded').windows[0]).toBe('Passes if PG-400 shows A-250: 252 bar to 256 bar');
    // 250 to 258 bar are 3625.94 to 3741.97 psi, and 0.83 % of 5800 psi is 28.884: 3654.8 to 3713.1 psi.
    const inPsi = made('class 0.6', 'acceptance guarded', '', 'range 0..5800 psi').windows[0];
    expect(inPsi).toBe('Passes if PG-400 shows A-250: 3660 psi to 3710 psi');
  });

  it('refuses a second rule of the shop', () => {
    expect(made('class 0.6', 'acceptance guarded\n  acceptance simple').syntax).toEqual([
      'The shop says twice how readings are accepted. Delete one.',
    ]);
  });
});

import { describe, expect, it } from 'vitest';
import { check } from '../../../../tests/fixtures/example-pages.ts';
import { instead, procedureWith } from '../../../../tests/fixtures/sound-procedure.ts';
import { fullMessage } from '../../../model/diagnostic.ts';
import { rulesByArea } from '../../index.ts';

const own = new Set(rulesByArea.hazards.map((rule) => rule.code));

/** What the rules of this area find in a text. */
function diagnostics(text: string) {
  return check(text).diagnostics.filter(({ rule }) => own.has(rule));
}

/** Each finding as `step rule`. */
function found(text: string): string[] {
  return diagnostics(text).map(({ rule, step }) => `${step ?? '–'} ${rule}`);
}

describe('signal-word-too-weak', () => {
  const noticed = (text: string, word = 'NOTICE') =>
    procedureWith({ build: instead('      clamp body\n', `      hazard ${word} "${text}"\n      clamp body\n`) });

  it.each([
    'Solvent harms eyes and skin',
    'The spring can fly into the eyes',
    'Hot from the oven: burns',
    'The fumes are poisonous',
    'The ram crushes fingers',
    'A burr cuts the hand that feels for it',
    'Spray goes through skin and gloves',
    'Wear eye protection',
    'The spring can hurt you',
    'Chips blown into eyes blind',
  ])('finds an injury: %s', (text) => {
    expect(found(noticed(text))).toEqual(['– signal-word-too-weak']);
  });

  it.each([
    'Finger marks rust a lapped face',
    'Do not touch the lapped faces with bare hands',
    'Sweat from the skin rusts the bore within the hour',
    'Compound left behind cuts the pair that it was to mend',
    'A burnt tip is scrap; heat burns the temper out',
    'Run it down by hand: a spanner damages by hand what it cannot feel',
    'Look at the seat by eye',
    'Put the eye of the lifting hook through the ring',
    'The face is damaged by one knock',
    'Wear lint-free gloves: fibres block the holes',
    'Keep hand tools off the plate; never hit the nozzle',
    'Left hand thread',
    'The needle drops out and breaks: hold it with two fingers',
  ])('leaves alone what harms things: %s', (text) => {
    expect(found(noticed(text))).toEqual([]);
  });

  it.each(['CAUTION', 'WARNING', 'DANGER'])('leaves %s alone, whoever or whatever it is for', (word) => {
    expect(found(noticed('The ram crushes fingers', word))).toEqual([]);
    expect(found(noticed('One knock spoils the face', word))).toEqual([]);
  });

  it('is one finding for a hazard before several steps, and in the head', () => {
    const text = procedureWith({
      specs: (specs) => `${specs}\n    hazard NOTICE "Air drives chips into eyes" for blow-dry`,
    });
    expect(found(text)).toEqual(['– signal-word-too-weak']);
  });
});

describe('air-pressure-too-high. Not:', () => {
  const dried = (air: string) => procedureWith({ clean: instead('with air at most 1.5 bar', air) });

  it('closed cabinets, relieving nozzles', () => {
    expect(found(dried('with air at most 6 bar "In the closed cabinet"'))).toEqual([]);
    expect(found(dried('with air at most 6 bar with "relieving nozzle"'))).toEqual([]);
    expect(found(dried('with air at most 6 bar'))).toEqual(['5.6 air-pressure-too-high']);
  });

  it.each([
    '8 bar',
    '100 psi',
    'at least 6 bar',
    'at least 1 bar',
    '2..8 bar',
    '1..2.1 bar',
    '5 bar ±1',
    '2 bar ±0.1',
    '30 psi',
    'at most 30 psi',
  ])('but every end of what is written: %s', (air) => {
    expect(found(dried(`with air ${air}`))).toEqual(['5.6 air-pressure-too-high']);
  });

  it.each(['1.5 bar', '29.9 psi', 'at most 2 bar', '1..2 bar', '1.9 bar ±0.1'])('what is under it: %s', (air) => {
    expect(found(dried(`with air ${air}`))).toEqual([]);
  });

  it('air at other cleaning; a part that is moved by air is not cleaned', () => {
    const step = (text: string) => procedureWith({ clean: instead('clean holes of nozzle', text) });
    expect(found(step('clean holes of nozzle with air 7 bar'))).toHaveLength(1);
    expect(found(step('clean holes of nozzle with air'))).toHaveLength(1);
    expect(found(step('clean holes of nozzle with air at most 1.5 bar'))).toEqual([]);
  });

  describe('a shop of its own limit', () => {
    const own = (limit: string, air: string) =>
      procedureWith({
        shop: (shop) => shop.replace(/\}\n$/u, `  air below ${limit}\n}\n`),
        clean: instead('with air at most 1.5 bar', `with air ${air}`),
      });

    it('lower: the procedure is held to it', () => {
      expect(found(own('1 bar', 'at most 1.5 bar'))).toEqual(['5.6 air-pressure-too-high']);
      expect(found(own('30 psi', 'at most 1.5 bar'))).toEqual([]);
    });

    it('higher: reported in the shop, and does not lift the public one', () => {
      expect(found(own('8 bar', 'at most 1.5 bar'))).toEqual(['– air-pressure-too-high']);
      expect(found(own('8 bar', 'at most 6 bar'))).toEqual(['– air-pressure-too-high', '5.6 air-pressure-too-high']);
      expect(fullMessage(diagnostics(own('8 bar', 'at most 6 bar'))[0]!).replaceAll('\u00a0', ' ')).toContain(
        'The shop allows air up to 8 bar for blowing by hand, and 29 CFR 1910.242(b) requires less than 30 psi',
      );
    });

    it('higher with a reason: it counts', () => {
      const conceded = '8 bar  allow air-pressure-too-high because "All blowing is done in the closed cabinet"';
      expect(found(own(conceded, 'at most 6 bar'))).toEqual([]);
      expect(found(own(conceded, 'at most 8 bar'))).toEqual(['5.6 air-pressure-too-high']);
    });
  });

  it('leak and actuator tests', () => {
    const leak =
      '      test lid-leak  hold 6 bar for 10 s  accept "no bubble"  on fail reshim (3 times)\n      relieve    disconnect inlet\n';
    expect(found(procedureWith({ prove: instead('      relieve    disconnect inlet\n', leak) }))).toEqual([]);
  });
});

describe('bath-over-flash-point. Not:', () => {
  const bath = (at: string, fluid: string) =>
    procedureWith({
      shop: instead('fluid  solvent "Cleaning solvent"  solvent', `fluid  solvent "Cleaning solvent"  solvent${fluid}`),
      clean: instead('wash nozzle, needle in solvent', `wash nozzle, needle in solvent${at}`),
    });

  it.each([
    [' at 40 °C', ', flammable 62 °C'],
    [' at 50..61 °C', ', flammable 62 °C'],
    [' at 100 °F', ', flammable 62 °C'],
    [' at 80 °C', ''],
    ['', ', flammable 62 °C'],
  ])('%s of a fluid%s', (at, fluid) => expect(found(bath(at, fluid))).toEqual([]));

  it.each([
    [' at 80 °C', ', flammable 62 °C'],
    [' at 62 °C', ', flammable 62 °C'],
    [' at 50..70 °C', ', flammable 62 °C'],
    [' at 60 °C ±5', ', flammable 62 °C'],
    [' at 150 °F', ', flammable 62 °C'],
    [' at 20 °C', ', flammable -10 °C'],
  ])('but %s of a fluid%s', (at, fluid) =>
    expect(found(bath(at, fluid)).map((line) => line.replace(/^\S+ /u, ''))).toEqual(['bath-over-flash-point']),
  );
});

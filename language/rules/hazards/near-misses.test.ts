import { describe, expect, it } from 'vitest';
import { check } from '../example-pages.ts';
import { rulesByArea } from '../index.ts';
import { instead, procedureWith } from '../sound-procedure.ts';

const own = new Set(rulesByArea.hazards.map((rule) => rule.code));

/** What the rules of this area find in a text. */
function findings(text: string) {
  return check(text).findings.filter(({ rule }) => own.has(rule));
}

/** Each finding as `step rule`. */
function found(text: string): string[] {
  return findings(text).map(({ rule, step }) => `${step ?? '–'} ${rule}`);
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

  it('is one finding for a hazard that stands before several steps, and in the head', () => {
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

  it('leak and actuator tests', () => {
    const leak =
      '      test lid-leak  hold 6 bar for 10 s  accept "no bubble"  on fail reshim (3 times)\n      relieve    disconnect inlet\n';
    expect(found(procedureWith({ prove: instead('      relieve    disconnect inlet\n', leak) }))).toEqual([]);
  });
});

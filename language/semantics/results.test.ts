import { describe, expect, it } from 'vitest';
import { procedureWith } from '../../tests/fixtures/sound-procedure.ts';
import { checkFiles } from '../db/workspace.ts';
import { fullMessage } from '../model/diagnostic.ts';
import { isProblemCode } from '../syntax/problem-code.ts';

/** A job of one unit with such lines, of the sound procedure or of one with some texts changed. */
function unit(lines: string, change: Parameters<typeof procedureWith>[0] = {}) {
  const text = `${procedureWith(change)}\njob 7 of example at bench {\n  unit 1 number A-250 serial 0411 {\n${lines}\n  }\n}\n`;
  const { jobs, diagnostics } = checkFiles([{ uri: 'x', text }]);
  const { results, note, onHold } = jobs[0]!.units[0]!;
  const plain = results.map(({ source: _, ...result }) => result);
  return {
    results: plain,
    note,
    onHold,
    // What is judged of them is another matter.
    messages: diagnostics
      .filter(({ rule }) => isProblemCode(rule) || rule === 'unknown-name')
      .map((one) => fullMessage(one).replaceAll('\u00a0', ' ')),
  };
}

const reading = (name: string, number: string, unitOf: string, more = {}) => ({
  form: 'reading',
  name,
  asFound: false,
  value: { number, unit: unitOf },
  tool: null,
  watched: null,
  text: null,
  ...more,
});

describe('the results of a unit', () => {
  it('are what was found, fitted, read, judged and done, in order', () => {
    const { results, messages } = unit(`
      as found opening 214 bar, "light rust, tip sound"
      shim out 1.30 mm   opening 231 bar
      shim in  1.45 mm   opening 253 bar on PG-400
      opening pass   nozzle fail "scored"
      torque nut 60 N·m with TW-80
      done by "A. N. Other" on 2026-11-05`);
    expect(messages).toEqual([]);
    expect(results).toEqual([
      reading('opening', '214', 'bar', { asFound: true, text: 'light rust, tip sound' }),
      { form: 'shim', part: 'shim', fitted: false, size: { number: '1.30', unit: 'mm' }, tool: null },
      reading('opening', '231', 'bar'),
      { form: 'shim', part: 'shim', fitted: true, size: { number: '1.45', unit: 'mm' }, tool: null },
      reading('opening', '253', 'bar', { tool: 'PG-400' }),
      { form: 'verdict', name: 'opening', asFound: false, passed: true, watched: null, text: null },
      { form: 'verdict', name: 'nozzle', asFound: false, passed: false, watched: null, text: 'scored' },
      { form: 'torque', part: 'nut', value: { number: '60', unit: 'N·m' }, tool: 'TW-80' },
      { form: 'done', by: 'A. N. Other', on: '2026-11-05' },
    ]);
  });

  it('are beside notes and what is on hold; each line alone, but for a comma at its end', () => {
    const { results, note, onHold, messages } = unit(`
      note "Tip blued"
      opening 231 bar
      on hold "Ask the customer"
      as found "seized"
      as found opening 100 bar,
        "runs dry"
      note "Thread burred"`);
    expect(messages).toEqual([]);
    expect(note).toBe('Tip blued Thread burred');
    expect(onHold).toBe('Ask the customer');
    expect(results.map(({ form }) => form)).toEqual(['reading', 'remark', 'reading']);
    expect(results[2]).toMatchObject({ asFound: true, text: 'runs dry' });
  });

  it('say what went in new', () => {
    const of = (text: string) => {
      const { results, messages } = unit(`      ${text}`);
      expect(messages).toEqual([]);
      return results.map(
        (result) => `${result.form} ${'part' in result ? result.part : 'name' in result ? result.name : ''}`,
      );
    };
    expect(of('renewed spring, nozzle, washer')).toEqual(['renewed spring', 'renewed nozzle', 'renewed washer']);
    expect(of('renewed spring nozzle "of the kit"')).toEqual(['renewed spring', 'renewed nozzle', 'remark ']);
    expect(of('renewed spring  shim out 1.30 mm')).toEqual(['renewed spring', 'shim shim']);
    expect(of('renewed spring  shim in 1.30 mm')).toEqual(['renewed spring', 'shim shim']);
    expect(of('renewed spring  nozzle pass')).toEqual(['renewed spring', 'verdict nozzle']);
    expect(of('renewed spring  opening 231 bar  renewed nozzle')).toEqual([
      'renewed spring',
      'reading opening',
      'renewed nozzle',
    ]);
    expect(unit('      renewed sprng').messages).toEqual([expect.stringContaining('Did you mean spring?')]);
    expect(unit('      renewed').messages).toEqual(['Write what went in new: renewed spring, washer.']);
  });

  it.each([
    ['openig 231 bar', /^No test is called openig\. Did you mean opening\?/u],
    ['opening 1.45 mm', /^1\.45 mm is a length, and a pressure is read here\. Check the unit\.$/u],
    ['shim in 253 bar', /^253 bar is a pressure, and a length is read here/u],
    ['shim out', /^Write the size: shim out 1\.30 mm\.$/u],
    ['opening', /^Write what was read, or pass or fail\.$/u],
    ['opening closing 231 bar', /^“closing” is not a result here\.$/u],
    ['torque nut', /^Write the torque that was set/u],
    ['torque shim 3 N·m', /^Nothing is tightened at shim: it is not a joint of the family/u],
    ['done on 2026-11-05', /^Write done by and a name in quotes\.$/u],
    ['done by "A" on 2026-13-05', /^2026-13-05 is not in the calendar/u],
    ['opening 254 bar 231 bar', /^“231 bar” belongs to no result here, and would be lost/u],
    ['shim in 1.50 mm 1.45 mm', /^“1\.45 mm” belongs to no result here/u],
    ['shim in 1.50 mm "own"', /belongs to no result here/u],
    ['opening pass 254 bar', /^“254 bar” belongs to no result here/u],
    ['done by "A" on 2026-11-05 with PG-400', /^“with PG-400” belongs to no result here/u],
    ['torque nut 60 N·m with TW-80 with PG-400', /^“with PG-400” belongs to no result here/u],
    ['opening 231 bar on PG-40', /^No tool is called PG-40\. Did you mean PG-400\?/u],
    ['as found', /^Write what was found/u],
    ['9 s back-leak', /out of place here|No result/u],
  ])('%s: a slip costs its own line and says what to do', (line, message) => {
    const { results, messages } = unit(`      ${line}\n      opening 253 bar`);
    expect(messages).toEqual([expect.any(String)]);
    expect(messages[0]).toMatch(message);
    expect(results.at(-1)).toEqual(reading('opening', '253', 'bar'));
  });
});

describe('a reading', () => {
  const delivery = (limit: string, kind = 'volume') => ({
    specs: (specs: string) => `${specs}\n    spec delivery  ${kind}  ${limit}  source "Example sheet"`,
  });

  // That no step reads it is not what is asked here.
  const told = (messages: readonly string[]) => messages.filter((message) => !message.startsWith('No step uses'));

  it.each([
    ['volume 25 mm³/stroke ±2', '24.5 mm³/stroke'],
    ['volume 24..26 mL/1000 strokes', '24.5 mL/1000 strokes'],
    ['volume 24..26 mL/1000 strokes', '24.5 mm³/stroke'],
    ['speed 60..100 strokes/min', '80 strokes/min'],
    ['angle 12 cam ° ±1', '12.5 cam °'],
    ['flow 20..30 mL/min', '25 mL/min'],
    ['temperature 40 °C ±2', '104 °F'],
    ['temperature -10..-5 °C', '-7 °C'],
    ['count at most 3 drops', '0 drops'],
    ['length 25 thou ±1', '0.64 mm'],
  ])('takes every unit that its limit takes: %s, read %s', (written, read) => {
    const [kind, ...limit] = written.split(' ');
    const { results, messages } = unit(`      delivery ${read}`, delivery(limit.join(' '), kind));
    expect(told(messages)).toEqual([]);
    const [number, ...of] = read.split(' ');
    expect(results).toEqual([reading('delivery', number!, of.join(' '))]);
  });

  it('takes no unit that its limit does not, though the word would', () => {
    const { messages } = unit('      delivery 24.5 mL', delivery('25 mm³/stroke ±2'));
    expect(told(messages)).toEqual(['24.5 mL is a volume, and a volume per strokes is read here. Check the unit.']);
  });

  const timed = {
    prove: (text: string) =>
      text.replace(/( *)relieve/u, '$1test back-leak from 150 bar to 100 bar in 6..20 s\n$1relieve'),
    shop: (text: string) => text.replace('tool   MIC-1', 'tool   SW-1   range 0..60 s  within 0.2 s\n  tool   MIC-1'),
  };
  it.each([
    ['9 s', { tool: null }],
    ['9 s on PG-400', { tool: null, watched: 'PG-400' }],
    ['9 s with SW-1', { tool: 'SW-1' }],
    ['9 s on PG-400 with SW-1', { tool: 'SW-1', watched: 'PG-400' }],
    ['9 s with SW-1 on PG-400', { tool: 'SW-1', watched: 'PG-400' }],
  ])('of a leak-down, back-leak %s, tells the watch from the gauge that was watched', (words, wanted) => {
    expect(unit(`      back-leak ${words}`, timed).results).toEqual([reading('back-leak', '9', 's', wanted)]);
  });
});

describe('a verdict', () => {
  it('may say on which gauge it was watched', () => {
    expect(unit('      opening pass on PG-400').results).toEqual([
      { form: 'verdict', name: 'opening', asFound: false, passed: true, watched: 'PG-400', text: null },
    ]);
  });
});

describe('a shim', () => {
  it('may say what it was measured with', () => {
    expect(unit('      shim out 1.30 mm with MIC-1').results).toEqual([
      { form: 'shim', part: 'shim', fitted: false, size: { number: '1.30', unit: 'mm' }, tool: 'MIC-1' },
    ]);
  });
});

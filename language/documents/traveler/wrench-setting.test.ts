import { describe, expect, it } from 'vitest';
import { instead, procedureWith } from '../../../tests/fixtures/sound-procedure.ts';
import { checkFiles } from '../../db/workspace.ts';
import { stepFigures } from '../figures/step-figures.ts';
import { buildPrintContext } from '../print-context.ts';
import { passFacts, wrenchSettings } from './wrench-setting.ts';

type Facts = typeof wrenchSettings;

/** What is set for the repair's torque, with the wrench and the torque of TM 9-254: 12 in, and 6 in of adapter. */
function settings(torque: string, wrench: string, adapter = 'adapter 6 in at 0°', facts: Facts = wrenchSettings) {
  const text = procedureWith({
    shop: instead('range 16..80 N·m  within 4 %', wrench),
    specs: instead('60 N·m ±5', torque),
    repairs: instead('with TW-80', `with TW-80${adapter.startsWith('adapter') ? ' and ' : ' '}${adapter}`),
  });
  const { procedure } = checkFiles([{ uri: 'x', text }]).procedures[0]!;
  const place = procedure.repairs.find(({ steps }) => steps.some(({ verb }) => verb === 'torque'))!;
  const step = place.steps.find(({ verb }) => verb === 'torque')!;
  const setting = buildPrintContext(procedure, {
    job: null,
    number: null,
    paper: 'a4',
    draft: false,
    diagnostics: [],
    hash: '',
  });
  return facts(setting, stepFigures(setting, step, place)).map(
    ({ label, text: value }) => `${label}: ${value.replaceAll('\u00a0', ' ')}`,
  );
}

const wrench = 'range 10..100 lbf·ft  within 4 %  length 12 in';

describe('what to set on a wrench, on the sheet', () => {
  it('is 20 lbf·ft where 30 are wanted (TM 9-254), and 30 at 90°, where nothing is said', () => {
    expect(settings('30 lbf·ft ±2', wrench)).toEqual(['Set on TW-80, for the adapter: 20.0 lbf·ft']);
    expect(settings('30 lbf·ft ±2', wrench, 'adapter 6 in at 90°')).toEqual([]);
  });

  it('is in the unit and on the marks of the wrench, and on finer ones where none lies inside the limit', () => {
    // 30 lbf·ft are 40.6745 N·m; two thirds of it 27.1163.
    const metric = 'range 16..80 N·m  within 4 %  length 12 in  graduated';
    expect(settings('30 lbf·ft ±2', `${metric} 0.5 N·m`)).toEqual(['Set on TW-80, for the adapter: 27.0 N·m']);
    expect(settings('30 lbf·ft +0.02 -0', `${metric} 1 N·m`)).toEqual(['Set on TW-80, for the adapter: 27.12 N·m']);
  });

  it('of a range rounds inwards, and of one end says so', () => {
    expect(settings('28..32 lbf·ft', wrench)).toEqual(['Set on TW-80, for the adapter: 18.7 lbf·ft to 21.3 lbf·ft']);
    expect(settings('at least 28 lbf·ft', wrench)).toEqual(['Set on TW-80, for the adapter: at least 18.7 lbf·ft']);
  });

  it('is not said where the shop does not know the length of the wrench: the rule asks for it', () => {
    expect(settings('30 lbf·ft ±2', 'range 10..100 lbf·ft  within 4 %')).toEqual([]);
  });
});

describe('the torques of the passes, on the sheet', () => {
  const passes = (adapter: string, of = wrench) => settings('30 lbf·ft ±2', of, adapter, passFacts);
  const written = 'Passes: 15 lbf·ft, 24 lbf·ft';

  it('are as written, and as set through an adapter or on a wrench of another unit', () => {
    expect(passes('passes 15 lbf·ft, 24 lbf·ft')).toEqual([written]);
    expect(passes('adapter 6 in at 0°')).toEqual([]);
    // Two thirds of each (TM 9-254).
    expect(passes('adapter 6 in at 0° passes 15 lbf·ft, 24 lbf·ft')).toEqual([
      written,
      'Passes as set on TW-80: 10.0 lbf·ft, 16.0 lbf·ft',
    ]);
    // 15 and 24 lbf·ft are 20.337 and 32.540 N·m (NIST SP 811).
    expect(passes('passes 15 lbf·ft, 24 lbf·ft', 'range 16..80 N·m  within 4 %')).toEqual([
      written,
      'Passes as set on TW-80: 20.3 N·m, 32.5 N·m',
    ]);
  });
});

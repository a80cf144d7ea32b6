import { expect, it } from 'vitest';
import { libraryFiles } from '../../tests/library.ts';
import { resolve } from '../db/resolve.ts';
import type { Procedure } from '../model/procedure.ts';
import { say } from '../say/say.ts';
import { parse } from '../syntax/parse.ts';
import { ProcedureMemory, procedureFindings } from './engine.ts';
import type { AnyRule, Report } from './rule.ts';

const base = { code: 'probe', severity: 'warning', since: '0.1.0', title: 'A probe.' } as const;
const procedure = resolve(libraryFiles().map(({ uri, text }) => ({ uri, ast: parse(text).ast }))).procedures.find(
  ({ name }) => name === 'rebuild-one-spring',
)!;
const torques = [...procedure.stages, ...procedure.repairs].flatMap(({ steps }) =>
  steps.filter(({ verb }) => verb === 'torque').map(({ number }) => number),
);

/** Which torques a rule is shown, in each of several checks one after the other. */
function shown(procedures: readonly Procedure[], said: (number: string, report: (one: Report) => void) => void) {
  const memory = new ProcedureMemory();
  return procedures.map((one) => {
    const numbers: string[] = [];
    const rule: AnyRule = {
      ...base,
      eachStep(step, _, report) {
        if (step.verb !== 'torque') return;
        numbers.push(step.number);
        said(step.number, (what) => report({ ...what, at: step }));
      },
    };
    procedureFindings(one, { concessionsIn: () => [], unread: [] }, [rule], memory);
    return numbers;
  });
}

const again = { ...procedure };
const [first] = torques;
const message = { at: procedure.source, message: say`Found.` };

it('shows a step by itself once, as long as nothing is reported at it', () => {
  expect(torques.length).toBeGreaterThan(2);
  expect(shown([procedure, again], () => {})).toEqual([torques, []]);
  expect(shown([procedure, again], (number, report) => number === first && report(message))).toEqual([
    torques,
    [first],
  ]);
});

it('shows all again where a rule has thrown', () => {
  const thrown = shown([procedure, again], (number) => {
    if (number === torques[1]) throw new Error('a defect');
  });
  expect(thrown).toEqual([torques.slice(0, 2), torques.slice(0, 2)]);
});

it('shows a step again where it may be done elsewhere, or its specs are others', () => {
  const moved = { ...procedure, stages: procedure.stages.map((stage) => ({ ...stage, station: null })) };
  expect(shown([procedure, moved], () => {})[1]).not.toEqual([]);
  const others = { ...procedure, specs: procedure.specs.map((spec) => ({ ...spec, title: 'Another' })) };
  expect(shown([procedure, others], () => {})).toEqual([torques, torques]);
});

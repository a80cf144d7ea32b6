import { askedOf, torqueLimits } from '../analysis/held.ts';
import { shimChoices } from '../analysis/shims.ts';
import { findGauge } from '../analysis/tools.ts';
import type { Unit } from '../model/job.ts';
import type { Procedure, Step } from '../model/procedure.ts';
import { window } from '../quantities/index.ts';
import type { Limit } from '../quantities/types.ts';

/**
 * What is written down of a unit, in the order of the card: as found, what came out, what went in, torques, tests, who.
 * @param gap what stands for a figure or words that only the bench knows
 */
export function unitLines(procedure: Procedure, gap: (like: string) => string): string[] {
  const chosen = new Set(shimChoices(procedure).flatMap(({ parts }) => parts.map(({ name }) => name)));
  const steps = procedure.stages.flatMap((stage) => stage.steps);
  const lines = steps.flatMap((step) => lineOf(procedure, step, chosen, gap));
  return [
    ...new Map(lines.map((line) => [line.key, line.text])).values(),
    `done by "${gap('name')}" on ${gap('date')}`,
  ];
}

/** No part number is known yet: what each of them has. */
const anyUnit: Unit = {
  place: '1',
  number: null,
  numberText: 'unknown',
  serial: null,
  noSerial: null,
  onHold: null,
  note: null,
  results: [],
  source: { file: '', range: { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } } },
};

function lineOf(procedure: Procedure, step: Step, chosen: ReadonlySet<string>, gap: (like: string) => string) {
  const named = step.tools.find((tool) => tool.form === 'asset')?.name ?? null;
  const gauge = (test: string, limit: Limit | undefined) =>
    named ?? (limit === undefined ? null : (findGauge(procedure, test, limit)?.name ?? null));
  const unit = { ...anyUnit, number: step.only?.[0] ?? procedure.numbers[0]?.name ?? null };
  const figure = (limit: Limit) => `${gap('figure')} ${unitOf(limit)}`;
  const line = (key: string, text: string) => [{ key, text }];
  switch (step.verb) {
    case 'read': {
      if (!step.asFound) return [];
      const [held] = askedOf(procedure, step.reading, unit).limits;
      return line(
        `found ${step.reading}`,
        `as found ${step.reading} ${held === undefined ? gap('pass') : figure(held.limit)}${on(gauge(step.reading, held?.limit))}`,
      );
    }
    case 'measure':
      return step.objects
        .filter(({ name }) => chosen.has(name))
        .map(({ name }) => ({
          key: `out ${name}`,
          text: `${name} out ${gap('figure')} mm${named === null ? '' : ` with ${named}`}`,
        }));
    case 'fit':
      return step.objects
        .filter(({ name }) => chosen.has(name))
        .map(({ name }) => ({ key: `in ${name}`, text: `${name} in ${gap('figure')} mm` }));
    case 'torque':
      return step.objects.flatMap(({ name }) => {
        const [held] = torqueLimits(procedure, unit, name);
        if (held === undefined) return [];
        return line(`torque ${name}`, `torque ${name} ${figure(held.limit)}${named === null ? '' : ` with ${named}`}`);
      });
    case 'test': {
      const { test } = step.gate;
      const { limits, verdict } = askedOf(procedure, test, unit);
      const [held] = limits;
      return [
        ...(held === undefined
          ? []
          : line(`${test} figure`, `${test} ${figure(held.limit)}${on(gauge(test, held.limit))}`)),
        ...(verdict ? line(`${test} verdict`, `${test} ${gap('pass')}`) : []),
      ];
    }
    default:
      return [];
  }
}

function on(gauge: string | null): string {
  return gauge === null ? '' : ` on ${gauge}`;
}

function unitOf(limit: Limit): string {
  const { low, high } = window(limit);
  return (low ?? high)?.unit ?? '';
}

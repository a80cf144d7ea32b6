import { askedOf, testsFor, torqueLimits } from '../analysis/held.ts';
import { shimChoices } from '../analysis/shims.ts';
import { findGauge } from '../analysis/tools.ts';
import type { Unit } from '../model/job.ts';
import { type Plan, readingsOf } from '../model/plan.ts';
import type { Procedure, Step } from '../model/procedure.ts';
import { type ReadingAt, readingId } from '../model/reading-id.ts';
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
  const figure = (limit: Limit, count = 1) => `${gap(count === 1 ? 'figure' : 'figures')} ${unitOf(limit)}`;
  const line = (key: string, text: string) => [{ key, text }];
  /** A line for each point; places are written in a row. Of what is worked out, what it is worked out of. */
  const read = (test: string, plan: Plan | null, before: string) => {
    const all = readingsOf(procedure.family.places, test, plan);
    const points = [...new Set(all.map(({ point }) => point))];
    const called = plan?.workedOut == null ? [test] : [plan.workedOut.first.name, plan.workedOut.second.name];
    const wanted = points.flatMap((point) => called.map((word) => ({ point, word })));
    return wanted.map(({ point, word }) => {
      const at = all.filter((one) => one.point === point);
      const [held] = askedOf(procedure, readingId(at[0]!), unit).limits;
      // What two readings differ by says nothing about the gauge that shows them.
      const shown = plan?.workedOut == null ? gauge(test, held?.limit) : named;
      const name = `${before}${word}${point === null ? '' : ` ${point}`}`;
      return {
        key: `${name} figure`,
        name,
        figure: held === undefined ? null : `${figure(held.limit, at.length)}${on(shown)}`,
      };
    });
  };
  switch (step.verb) {
    case 'read': {
      if (!step.asFound) return [];
      const plan = testsFor(procedure, unit.number).findLast(({ gate }) => gate.test === step.reading)?.plan ?? null;
      return read(step.reading, plan, 'as found ').map(({ key, name, figure: said }) => ({
        key,
        text: `${name} ${said ?? `${gap('pass')}${on(named)}`}`,
      }));
    }
    case 'record':
      return readingsOf(procedure.family.places, step.reading, step.plan).flatMap((at) =>
        line(
          readingId(at),
          `${at.test}${at.point === null ? '' : ` ${at.point}`} "${gap('words')}"${atPlace(at, step.plan)}`,
        ),
      );
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
      const verdict = readingsOf(procedure.family.places, test, step.plan).some(
        (at) => askedOf(procedure, readingId(at), unit).verdict,
      );
      return [
        ...read(test, step.plan, '').flatMap(({ key, name, figure: said }) =>
          said === null ? [] : line(key, `${name} ${said}`),
        ),
        ...(verdict ? line(`${test} verdict`, `${test} ${gap('pass')}`) : []),
      ];
    }
    default:
      return [];
  }
}

/** Behind what was read: ` at cylinder 3`, ` at turbine`. */
function atPlace({ place }: ReadingAt, plan: Plan | null): string {
  if (place === null) return '';
  return /^\d/u.test(place) ? ` at ${plan?.places ?? ''} ${place}` : ` at ${place}`;
}

function on(gauge: string | null): string {
  return gauge === null ? '' : ` on ${gauge}`;
}

function unitOf(limit: Limit): string {
  const { low, high } = window(limit);
  return (low ?? high)?.unit ?? '';
}

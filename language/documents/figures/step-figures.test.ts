import { describe, expect, it } from 'vitest';
import { libraryFiles } from '../../../tests/library.ts';
import { checkFiles } from '../../db/workspace.ts';
import type { Procedure, Spec } from '../../model/procedure.ts';
import { isTestOf, own } from '../../model/steps.ts';
import { buildPrintContext } from '../print-context.ts';
import { buildSpecs } from '../specs/index.ts';
import { buildSheet } from '../traveler/index.ts';
import { shimTables } from './shim-table.ts';
import { deriveFigures } from './step-figures.ts';

const { jobs } = checkFiles(libraryFiles());
const job = jobs.find(({ name }) => name === '2207')!;
const blank = { job: null, number: null, paper: 'a4', draft: false, diagnostics: [], hash: '' } as const;

/** How often the limit of a spec is looked up in a print for so many part numbers. */
function lookedUp(procedure: Procedure, count: number, print: (procedure: Procedure) => unknown): number {
  let looked = 0;
  const specs = procedure.specs.map((spec): Spec => {
    const { rebuilt } = spec;
    const get = () => {
      looked++;
      return rebuilt;
    };
    return Object.defineProperty({ ...spec }, 'rebuilt', { enumerable: true, get });
  });
  const numbers = Array.from({ length: count }, (_, index) => {
    const name = `N-${index}`;
    return { ...procedure.numbers[0]!, name, title: name, values: [] };
  });
  print({ ...procedure, specs, numbers });
  return looked;
}

describe('the figures of a step', () => {
  const setting = buildPrintContext(job.procedure, blank);
  const figures = deriveFigures(setting);
  const steps = [...job.procedure.stages, ...job.procedure.repairs].flatMap((place) => place.steps);

  it('are there for every step, as plain data', () => {
    expect([...figures.keys()]).toEqual(steps);
    const all = [...figures.values()];
    expect(structuredClone(all)).toEqual(all);
  });

  it('say what each part number is held to, on which tool, and what it may show there', () => {
    const step = steps.find((one) => isTestOf(one, 'opening'))!;
    const { held, unitRead } = figures.get(step)!;
    expect(unitRead).toBe('bar');
    const said = held.map(({ which, number, figure }) => [
      number,
      which,
      figure?.value.replaceAll(/\s/gu, ' ') ?? null,
    ]);
    expect(said).toEqual([
      ['A-250', 'rebuilt', '250 to 258 bar'],
      ['A-250', 'inService', 'at least 200 bar'],
      ['A-250', 'whenNew', null],
      ['A-235', 'rebuilt', '235 to 243 bar'],
      ['A-235', 'inService', 'at least 188 bar'],
      ['A-235', 'whenNew', null],
      ['A-220', 'rebuilt', '220 to 228 bar'],
      ['A-220', 'inService', 'at least 176 bar'],
      ['A-220', 'whenNew', null],
    ]);
    expect(new Set(held.flatMap(({ figure }) => figure?.scale?.name ?? []))).toEqual(new Set(['PG-400']));
  });

  it('are looked up once for each step, however much is printed of them', () => {
    const uses = steps.filter(
      (step) => figures.get(step)!.use?.form === 'spec' || own(step, 'choose')?.target?.form === 'spec',
    ).length;
    for (const print of [(one: Procedure) => buildSheet(one, blank), buildSpecs]) {
      const [few, many] = [10, 20].map((numbers) => lookedUp(job.procedure, numbers, print)) as [number, number];
      expect(few).toBeGreaterThan(uses);
      // For each number more, once; and besides once for a rate, the source of an aim, a table to hold or to shim by.
      expect((many - few) / 10).toBeLessThanOrEqual(2 * uses);
    }
  });

  it('of a shim are one table wherever it is chosen, on one sheet and the next', () => {
    const chosen = steps.filter((step) => own(step, 'choose') != null);
    expect(chosen.length).toBeGreaterThan(0);
    for (const step of chosen) {
      const [first, again] = [shimTables(setting, step), shimTables(buildPrintContext(job.procedure, blank), step)];
      expect(first.length).toBeGreaterThan(0);
      for (const [index, { made }] of first.entries()) expect(again[index]!.made).toBe(made);
    }
  });
});

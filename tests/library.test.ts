/** The library as a whole: it checks clean, and its demonstrations say what they are there to say. */
import { describe, expect, it } from 'vitest';
import { checkFiles } from '../language/db/workspace.ts';
import { renderText } from '../language/documents/renderers/index.ts';
import { buildSheet } from '../language/documents/traveler/index.ts';
import { type Diagnostic, fullMessage } from '../language/model/diagnostic.ts';
import { libraryFiles } from './library.ts';

const checked = checkFiles(libraryFiles());

const sheetText = (name: string) => {
  const { procedure, diagnostics } = checked.procedures.find((one) => one.procedure.name === name)!;
  return renderText(
    buildSheet(procedure, { job: null, number: null, paper: 'a4', draft: false, diagnostics, hash: '0' }),
  )
    .join('\n')
    .replaceAll(/[\u00a0\u202f]/gu, ' ');
};

const placeOf = ({ source, rule }: Diagnostic) => `${source.file}:${source.range.start.line + 1} ${rule}`;

/** What the job that is in work has still to come. */
const inWork = ['result-fails', 'spread-too-wide'].flatMap((rule) =>
  [8, 12].map((line) => `procedures/jobs/job-2207.rebuild:${line} ${rule}`),
);

describe('the library', () => {
  it('checks clean', () => {
    expect(
      checked.diagnostics
        .filter((one) => !inWork.includes(placeOf(one)))
        .map((one) => `${placeOf(one)} ${fullMessage(one)}`),
    ).toEqual([]);
  });

  it('has three families written out with two part numbers or more, and a job of six with another number among them', () => {
    const written = checked.procedures.filter(
      ({ procedure }) => procedure.numbers.length > 1 && procedure.stages.length > 5,
    );
    expect(written.length).toBeGreaterThanOrEqual(3);
    const job = checked.jobs.find(({ name }) => name === '2207');
    expect(job!.units).toHaveLength(6);
    expect(new Set(job!.units.map(({ number }) => number)).size).toBeGreaterThan(1);
  });

  it('prints every procedure and job', () => {
    for (const { procedure } of checked.procedures)
      expect(sheetText(procedure.name)).toContain(procedure.stages[0]!.title);
  });

  // TM 5-3820-256-24-5, figures as the project's job text gives them.
  it('prints the pairs of the manual side by side', () => {
    const { procedure } = checked.procedures.find(({ procedure: one }) => one.source.file.includes('manual'))!;
    const text = sheetText(procedure.name);
    for (const pair of [
      '45 N·m',
      '33 lbf·ft',
      '25 855 kPa',
      '3750 psi',
      '20 000 kPa',
      '2900 psi',
      '500 psi',
      '5 s',
      'no drop',
    ]) {
      expect(text).toContain(pair);
    }
    expect(text).toMatch(/45 N·m[^\n]*\(33 lbf·ft/u);
    expect(text).toMatch(/25 855 kPa[^\n]*\(3750 psi/u);
    expect(text).toMatch(/20 000 kPa[^\n]*\(2900 psi/u);
    // The shop's +3 % −0 on the gauge's marks of 10 psi, rounded inward: 25 855 kPa is 3749.95 psi, +3 % is 3862.4.
    expect(text).toContain('3750 to 3860 psi');
  });
});

describe('the flawed procedure', () => {
  it('shows eight mistakes or more, each of another rule', () => {
    const { diagnostics } = checkFiles(libraryFiles(true));
    const flawed = diagnostics.filter(({ source }) => source.file.includes('flawed'));
    expect(new Set(flawed.map(({ rule }) => rule)).size).toBeGreaterThanOrEqual(8);
    const others = diagnostics.filter((one) => !flawed.includes(one) && !inWork.includes(placeOf(one)));
    expect(others).toEqual([]);
  });
});

/** A pump of six cylinders: copies, points and part numbers in a whole procedure and its job. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { checkFiles } from '../language/db/workspace.ts';
import { findMissing } from '../language/documents/certificate/index.ts';
import { fullMessage } from '../language/model/diagnostic.ts';
import { libraryFiles } from './library.ts';

const own = (name: string) => readFileSync(new URL(`fixtures/in-line-pump/${name}.rebuild`, import.meta.url), 'utf8');

/** The pump, and what it needs of the library. */
const files = [
  ...libraryFiles().filter(({ uri }) => /shared|shops/u.test(uri)),
  ...['family', 'procedure'].map((name) => ({ uri: `in-line-pump/${name}.rebuild`, text: own(name) })),
];

/** Two pumps of one order, done and written down. */
const job = own('job-2310');

function checked(change: readonly [string, string] | null, inJob = job) {
  const texts = files.map((file) => ({ ...file, text: change === null ? file.text : file.text.replace(...change) }));
  const result = checkFiles([...texts, { uri: 'job.rebuild', text: inJob }]);
  return { ...result, said: result.diagnostics.map((one) => `${one.rule}: ${fullMessage(one)}`) };
}
const rulesOf = (change: readonly [string, string], text?: string) =>
  [...new Set(checked(change, text).diagnostics.map(({ rule }) => rule))].sort();

describe('the job of two pumps', () => {
  it('is clean, and nothing is missing for its certificate', () => {
    const { said, jobs, procedures, diagnostics } = checked(null);
    expect(said).toEqual([]);
    const { procedure } = procedures.find((one) => one.procedure.name === 'rebuild-in-line-pump')!;
    expect(findMissing(procedure, jobs[0]!, { diagnostics, today: '2026-10-25' })).toEqual([]);
  });

  const again = '    torque sleeve-screw 3.5 N·m with TW-10 at cylinder 4\n';
  it('a screw of one cylinder that is tightened again leaves the deliveries of the others as they are', () => {
    expect(job).toContain(again);
    const all = checked(null, job.replace(again, '    torque sleeve-screw 3.5 N·m with TW-10\n'));
    expect(all.said.map((one) => one.slice(0, 60))).toEqual([
      'result-from-before: Delivery, Full load, cylinder 1: the las',
    ]);
  });

  it('a cylinder that there is not is reported where it is written', () => {
    const { said } = checked(null, job.replace(again, again.replace('cylinder 4', 'cylinder 9')));
    expect(said[0]).toContain('unknown-name: No part is called sleeve-screw-9.');
  });

  it('what is renewed at one cylinder makes its results old, and no others', () => {
    const { said } = checked(
      null,
      job.replace('    governor begins 771', '    renewed valve at cylinder 2   governor begins 771'),
    );
    expect(said.every((one) => one.includes('cylinder 2'))).toBe(true);
    expect(said.length).toBeGreaterThan(0);
  });
});

describe('the procedure', () => {
  it('a point is held to the other points of its own part number', () => {
    expect(rulesOf(['high-idle    810 rpm ±12', 'high-idle    740 rpm ±12'])).toContain('plan-contradicts-itself');
  });
  it('a screw of each cylinder has a lock of its own', () => {
    expect(rulesOf(['    lock tappet-nut to tappet-fit with TW-80\n', ''])).toContain('reading-before-lock');
  });
  it('a seal that was thrown away is not in the bath, and one that was not is', () => {
    expect(rulesOf(['    discard shaft-seal\n', ''])).toContain('spoilt-by-the-bath');
  });
  it('an end play is cured by the shim under what holds the shaft, and by nothing that is not there', () => {
    const repair = /repair other-end-shim[\s\S]*?\n {2}\}/u;
    const text = own('procedure');
    const whole = repair.exec(text)![0];
    expect(rulesOf([whole, 'repair other-end-shim "Another" {\n    wipe rack\n  }'])).toContain('repair-cannot-cure');
  });
});

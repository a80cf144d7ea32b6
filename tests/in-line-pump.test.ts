/** A pump of six cylinders: what the library's own in-line pump says of copies, points and part numbers, in procedure and job. */
import { describe, expect, it } from 'vitest';
import { checkFiles } from '../language/db/workspace.ts';
import { findMissing } from '../language/documents/certificate/index.ts';
import { fullMessage } from '../language/model/diagnostic.ts';
import { libraryFiles } from './library.ts';

const library = libraryFiles().filter(({ uri }) => /in-line-pump|shared|shops/u.test(uri));

/** Two pumps of one order, done and written down. Customer, names, serials, readings and dates are invented. */
const job = `job 2310 "Two in-line pumps, standby generators" of rebuild-in-line-pump revision A at fuel-works
  customer "Water works (invented), pumping station east"   received 2026-10-19
{
  unit 1 number P-606 serial "48-1120" {
    damage "Stop seal broken"
    as found delivery full 88.4, 90.1, 89.2, 84.0, 89.8, 88.9 mL on GC-150
    as found delivery torque 92.0, 93.6, 93.1, 87.5, 93.9, 92.2 mL on GC-150
    as found delivery idle 12.2, 13.0, 12.8, 10.4, 13.1, 12.6 mL on GC-150
    as found delivery starting 23.9, 24.4, 24.2, 22.0, 24.6, 24.1 mL on GC-150
    as found governor begins 764 rpm on TM-1   as found governor ends 826 rpm on TM-1
    end-shim in 0.28 mm
    torque plate-screw 20 N·m with TW-25   torque holder 45 N·m with TW-80   torque carrier-nut 56 N·m with TW-80
    torque gov-screw 9 N·m with TW-10   torque tappet-nut 32 N·m with TW-80   torque stop-nut 14 N·m with TW-25
    torque sleeve-screw 3.5 N·m with TW-10
    valve-tight 48, 52, 45, 39, 50, 47 s with SW-1
    port-closing 3.01 mm on DI-10
    phasing 240.2, 119.8, 300.1, 59.9, 180.2 cam ° on DD-360
    full-rack 9.0 mm on RM-25
    delivery full 92.1, 91.6, 92.4, 90.6, 92.0, 91.8 mL on GC-150
    torque sleeve-screw 3.5 N·m with TW-10 at cylinder 4
    delivery full 91.8 mL at cylinder 4 on GC-150
    delivery torque 96.2, 95.8, 96.5, 95.9, 96.1, 96.0 mL on GC-150
    delivery idle 14.1, 13.8, 14.4, 13.6, 14.0, 14.2 mL on GC-150
    delivery starting 26.0, 25.6, 26.2, 25.4, 25.8, 26.1 mL on GC-150
    governor begins 771 rpm on TM-1   governor ends 812 rpm on TM-1
    done by "N. Okoro" on 2026-10-22
  }
  unit 2 number P-606 serial "48-1121" {
    damage "None seen"
    as found delivery full 88.4, 90.1, 89.2, 87.9, 89.8, 88.9 mL on GC-150
    as found delivery torque 92.0, 93.6, 93.1, 91.6, 93.9, 92.2 mL on GC-150
    as found delivery idle 12.2, 13.0, 12.8, 12.4, 13.1, 12.6 mL on GC-150
    as found delivery starting 23.9, 24.4, 24.2, 23.8, 24.6, 24.1 mL on GC-150
    as found governor begins 764 rpm on TM-1   as found governor ends 826 rpm on TM-1
    end-shim in 0.28 mm
    torque plate-screw 20 N·m with TW-25   torque holder 45 N·m with TW-80   torque carrier-nut 56 N·m with TW-80
    torque gov-screw 9 N·m with TW-10   torque tappet-nut 32 N·m with TW-80   torque stop-nut 14 N·m with TW-25
    torque sleeve-screw 3.5 N·m with TW-10
    valve-tight 48, 52, 45, 39, 50, 47 s with SW-1
    port-closing 3.01 mm on DI-10
    phasing 240.2, 119.8, 300.1, 59.9, 180.2 cam ° on DD-360
    full-rack 9.0 mm on RM-25
    delivery full 92.1, 91.6, 92.4, 91.9, 92.0, 91.8 mL on GC-150
    delivery torque 96.2, 95.8, 96.5, 95.9, 96.1, 96.0 mL on GC-150
    delivery idle 14.1, 13.8, 14.4, 13.6, 14.0, 14.2 mL on GC-150
    delivery starting 26.0, 25.6, 26.2, 25.4, 25.8, 26.1 mL on GC-150
    governor begins 771 rpm on TM-1   governor ends 812 rpm on TM-1
    done by "N. Okoro" on 2026-10-22
  }
}
`;

function checked(change: readonly [string, string] | null, inJob = job) {
  const texts = library.map((file) => ({ ...file, text: change === null ? file.text : file.text.replace(...change) }));
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
    const text = library.find(({ uri }) => uri.endsWith('in-line-pump/procedure.rebuild'))!.text;
    const whole = repair.exec(text)![0];
    expect(rulesOf([whole, 'repair other-end-shim "Another" {\n    wipe rack\n  }'])).toContain('repair-cannot-cure');
  });
});

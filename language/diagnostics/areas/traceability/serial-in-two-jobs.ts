import type { UnitInWork } from '../../../model/unit-in-work.ts';
import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** A unit is in work in two jobs at once: one of the two serials was read wrong, or the first job was never finished. */
export const serialInTwoJobs: Rule = {
  code: 'serial-in-two-jobs',
  severity: 'warning',
  since: '0.2.0',
  title: 'A serial is that of a unit in another job that is still in work.',
  units(units, elsewhere, report) {
    for (const unit of units) {
      const other = [...units, ...elsewhere].find((one) => isSame(unit, one) && !isBefore(unit, one));
      if (other === undefined) continue;
      report({
        at: unit.source,
        message: say`Serial ${unit.serial} is in work in job ${other.job} too, as unit ${other.place} there.`,
        why: say`of one body there would be two papers, and nobody could say later which readings are its own.`,
        help: say`Read the serial again from the body. If it is the same unit, finish it in one of the two jobs, or put it on hold there. If two makers gave the same serial, write the part number of each.`,
        related: [{ message: say`Unit ${other.place} of job ${other.job}.`, source: other.source }],
      });
    }
  },
};

/** Two makers may give the same serial. Of a job that is declared twice, that is reported. */
function isSame(one: UnitInWork, other: UnitInWork): boolean {
  const isOther = one.number !== null && other.number !== null && one.number !== other.number;
  return one.serial === other.serial && one.job !== other.job && !isOther && areAtOnce(one, other);
}

/** What has no end is in work now; what has an end and no beginning is not known to have been when the other was. */
function areAtOnce(one: UnitInWork, other: UnitInWork): boolean {
  if (one.until === null && other.until === null) return true;
  return beginsWithin(one, other) && beginsWithin(other, one);
}

function beginsWithin({ from }: UnitInWork, { until }: UnitInWork): boolean {
  return until === null || (from !== null && from < until);
}

/** It is reported where it came in later. */
function isBefore({ from }: UnitInWork, other: UnitInWork): boolean {
  return from !== null && other.from !== null && from < other.from;
}

import { findDoubts } from '../analysis/doubts.ts';
import { findProofs, proofsFor } from '../analysis/held.ts';
import { doubtWords } from '../i18n/doubt-words.ts';
import type { Words } from '../i18n/index.ts';
import type { Job, ShimResult, Unit } from '../model/job.ts';
import type { Procedure } from '../model/procedure.ts';
import { screwReadings } from '../recommendations/unit-screws.ts';
import { unitReadings } from '../recommendations/unit-shims.ts';
import type { JudgedJob, Known, LimitVerdict, Missing } from './judged.ts';
import { masterChecks } from './master-checks.ts';
import { calibrationOn, dayOf, isDated, misdated, uncalibrated } from './on-the-day.ts';
import { judgePlans, missingWords } from './plan-judge.ts';
import { type Problem, problem } from './problem.ts';
import { spreadsOf } from './set-spread.ts';
import { isFound, names, UnitJudge } from './unit-judge.ts';

/** Holds the results of a job against its procedure. `today`: null where nobody knows it. */
export function judgeJob(procedure: Procedure, job: Job, today: string | null): JudgedJob {
  const known: Known = {
    procedure,
    job,
    today,
    doubts: findDoubts(job).map(({ unit, result, why }) => ({
      unit,
      result,
      problem: problem('implausible-result', result.source, (w: Words) => doubtWords(w, why)),
    })),
    stands: [...unitReadings(job), ...screwReadings(job)],
  };
  const units = job.units.filter(({ onHold }) => onHold === null).map((unit) => judgedUnit(known, unit));
  const { received } = job;
  const ofJob: Problem[] = [
    ...(units.length === 0 ? [problem('not-proven', job.source, (w) => w.certificate.missing.empty)] : []),
    ...(findProofs(procedure.family).length === 0
      ? [problem('not-proven', job.source, (w) => w.certificate.missing.noProof)]
      : []),
    ...(received !== null && today !== null && received > today
      ? [problem('done-on-wrong-day', job.source, (w) => w.certificate.missing.receivedInFuture({ received, today }))]
      : []),
  ];
  const { spreads, problems } = spreadsOf(procedure, units, known.stands);
  const ofMasters = masterChecks(procedure, job, units);
  return {
    units,
    onHold: job.units.filter(({ onHold }) => onHold !== null),
    spreads,
    checks: ofMasters.checks,
    missing: [
      ...[...ofJob, ...ofMasters.problems].map(
        (one): Missing => ({ unit: null, of: 'job', say: one.say, problem: one }),
      ),
      ...units.flatMap(({ unit, problems: own }) =>
        own.map((one): Missing => ({ unit, of: 'unit', say: one.say, problem: one })),
      ),
      ...problems.map((one): Missing => ({ unit: null, of: 'set', say: one.say, problem: one })),
    ],
  };
}

function judgedUnit(known: Known, unit: Unit): LimitVerdict {
  const { procedure, job, today } = known;
  const { results } = unit;
  const proofs = proofsFor(procedure, unit);
  const judge = new UnitJudge(known, unit);
  const others = names(results, (result) => !isFound(result)).filter((name) => !proofs.includes(name));
  const outcomes = [
    ...proofs.map((name) => judge.proof(name)),
    ...others.flatMap((name) => judge.other(name) ?? []),
  ].filter((one) => one !== null);
  const plans = judgePlans(procedure, unit, outcomes);
  const found = names(results, isFound).map((name) => judge.found(name));
  const torqued = [...new Set(results.flatMap((one) => (one.form === 'torque' ? [one.part] : [])))];
  const torques = torqued.map((part) => judge.torque(part));
  const done = results.filter((result) => result.form === 'done');
  const shims = results.filter((result) => result.form === 'shim');
  const lastOf = (all: readonly ShimResult[]) =>
    all.filter((one, index) => all.findLastIndex(({ part }) => part === one.part) === index);
  const firstOf = (all: readonly ShimResult[]) =>
    all.filter((one, index) => all.findIndex(({ part }) => part === one.part) === index);
  const shimsOut = firstOf(shims.filter(({ fitted }) => !fitted));
  const shimsIn = lastOf(shims.filter(({ fitted }) => fitted));
  const used = [
    ...found.flatMap(({ reading }) => reading ?? []),
    ...outcomes.flatMap(({ reading }) => reading ?? []),
    ...torques.map(({ torque }) => torque),
    ...shimsOut,
    ...shimsIn,
    ...results.filter((result) => result.form === 'verdict'),
  ];
  const tools = used.flatMap((result) =>
    judge.toolsOf(result).map((asset) => ({ asset, on: dayOf(unit, result), at: result.source })),
  );
  const unknown = unit.number === null && procedure.numbers.length > 0;
  const problems: Problem[] = [
    ...judge.serial(),
    ...(results.length === 0
      ? [problem('not-proven', unit.source, (w) => w.certificate.missing.nothing)]
      : [
          ...(unknown
            ? [
                problem(unit.numberText === 'unknown' ? 'not-proven' : null, unit.source, (w) =>
                  w.certificate.missing.number({ number: unit.numberText }),
                ),
              ]
            : // Of a number that nobody knows no limit would tell anything.
              [...found, ...outcomes, ...torques].flatMap((one) => one.problems)),
          ...shimsOut.flatMap((one) => judge.measured(one)),
          ...(unknown ? [] : plans.problems),
          ...missingWords(procedure, unit),
          ...judge.doubts(),
          ...judge.unexplained(),
          ...once(tools, ({ asset, on }) => `${asset.name} ${on}`).flatMap(({ asset, on, at }) =>
            uncalibrated(asset, on).map((say) =>
              problem(isDated(asset) ? 'tool-not-in-date' : 'calibration-not-dated', at, say),
            ),
          ),
          ...misdated(unit, job, today),
          ...judge.unfinished(),
          ...judge.unsigned(used),
        ]),
  ];
  return {
    unit,
    found,
    remarks: results.flatMap((result) => {
      if (result.form === 'remark') return [result.text];
      return result.form === 'reading' && result.asFound && result.text !== null ? [result.text] : [];
    }),
    renewed: once(
      results.filter((result) => result.form === 'renewed'),
      ({ part }) => part,
    ),
    facts: results.filter((result) => result.form === 'fact'),
    shimsOut,
    shimsIn,
    torques,
    outcomes,
    placeSpreads: plans.spreads,
    done,
    tools: procedure.shop.assets.flatMap((asset) => {
      const days = tools.filter((tool) => tool.asset === asset);
      return [...new Set(days.map(({ on }) => calibrationOn(asset, on)))].map((calibration) => ({
        asset,
        calibration,
      }));
    }),
    // A doubt that a test has reported is not reported again.
    problems: [...new Set(problems)],
  };
}

function once<T>(all: readonly T[], key: (one: T) => string): T[] {
  return [...new Map(all.map((one) => [key(one), one])).values()];
}

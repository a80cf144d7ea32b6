import type { DoneResult, Job, Result, Unit } from '../model/job.ts';
import type { Procedure } from '../model/procedure.ts';
import type { Asset, Calibration } from '../model/shop.ts';
import { type Problem, problem } from './problem.ts';
import type { Say } from './say.ts';

/**
 * Why a tool proves nothing of what was read on a day: it needs a calibration that was in force then. `due` alone would
 * do today and, moved on after the next calibration, cover the weeks in which the tool was overdue: so both dates are
 * required. Dates are compared as they are written, year first.
 */
export function uncalibrated({ name: tool, calibrations, outOfUse }: Asset, on: string | null): Say[] {
  const whole = calibrations.filter(isWhole);
  const [first] = whole;
  if (first === undefined) return [(w) => w.certificate.missing.noCalibration({ tool })];
  if (on === null) return [];
  if (outOfUse !== null && on >= outOfUse)
    return [(w) => w.certificate.missing.outOfUse({ tool, since: outOfUse, on })];
  if (whole.some((one) => isInForce(one, on))) return [];
  const before = whole.findLast(({ calibrated }) => calibrated <= on);
  if (before !== undefined) return [(w) => w.certificate.missing.overdue({ tool, due: before.due, on })];
  return [(w) => w.certificate.missing.notYetCalibrated({ tool, calibrated: first.calibrated, on })];
}

/** Whether the shop says from when to when its calibration holds. */
export function isDated({ calibrations }: Asset): boolean {
  return calibrations.some(isWhole);
}

type Whole = Calibration & { readonly calibrated: string; readonly due: string };

function isWhole(calibration: Calibration): calibration is Whole {
  return calibration.calibrated !== null && calibration.due !== null;
}

function isInForce({ calibrated, due }: Whole, on: string): boolean {
  return calibrated <= on && on <= due;
}

/** The calibration that was in force on a day, the last of several; without one, the last that is written down. */
export function calibrationOn({ calibrations }: Asset, on: string | null): Calibration | null {
  const inForce = on === null ? undefined : calibrations.filter(isWhole).findLast((one) => isInForce(one, on));
  return inForce ?? calibrations.at(-1) ?? null;
}

/** What is wrong with the days on which a unit was done. `today`: null where nobody knows it. */
export function misdated(
  { results, source }: Unit,
  { received, intake, procedure: { approvedOn } }: Job & { readonly procedure: Pick<Procedure, 'approvedOn'> },
  today: string | null,
): Problem[] {
  // What was done before the job was moved to this revision was done by another, which was approved then.
  const moved = intake.findLast(({ word }) => word === 'moved')?.on ?? null;
  const ofLines = results.flatMap((one) => misdatedLine(one, received, today));
  const done = results.filter((one): one is DoneResult => one.form === 'done');
  if (done.length === 0) return [...ofLines, problem('nobody-answers', source, (w) => w.certificate.missing.noDone)];
  const ofDone = done.flatMap(({ by, on, source: at }, index): Problem[] => {
    const wrong = (say: Say) => problem('done-on-wrong-day', at, say);
    if (on === null) return [wrong((w) => w.certificate.missing.noDate({ by }))];
    const before = done.slice(0, index).findLast((one) => one.on !== null)?.on ?? null;
    return [
      ...(received !== null && on < received
        ? // Reported where it is read.
          [problem(null, at, (w) => w.certificate.missing.doneBeforeReceived({ on, received }))]
        : []),
      ...(today !== null && on > today ? [wrong((w) => w.certificate.missing.doneInFuture({ on, today }))] : []),
      ...(approvedOn !== null && on < approvedOn && (moved === null || on > moved)
        ? [wrong((w) => w.certificate.missing.doneUnapproved({ on, approved: approvedOn }))]
        : []),
      ...(before !== null && on < before ? [wrong((w) => w.certificate.missing.doneOutOfOrder({ on, before }))] : []),
    ];
  });
  return [...ofLines, ...ofDone];
}

/** A line with a day of its own: a result by somebody else, or what was sent out and came back. */
function misdatedLine(result: Result, received: string | null, today: string | null): Problem[] {
  const own = 'done' in result ? result.done?.on : result.form === 'fact' ? result.on : undefined;
  if (own == null || (result.form === 'fact' && result.word === 'promised')) return [];
  const wrong = (say: Say) => [problem('done-on-wrong-day', result.source, say)];
  if (received !== null && own < received)
    return wrong((w) => w.certificate.missing.doneBeforeReceived({ on: own, received }));
  return today !== null && own > today ? wrong((w) => w.certificate.missing.doneInFuture({ on: own, today })) : [];
}

/** The day on which a result was had: that of the next `done by`. */
export function dayOf({ results }: Unit, result: Unit['results'][number]): string | null {
  const own = 'done' in result ? result.done?.on : undefined;
  if (own != null) return own;
  const at = results.indexOf(result);
  const done = results.filter((one): one is DoneResult => one.form === 'done');
  return (done.find((one) => results.indexOf(one) > at) ?? done.at(-1))?.on ?? null;
}

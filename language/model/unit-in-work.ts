import type { Job, Unit } from './job.ts';
import type { Source } from './source.ts';

/** A unit that has a serial, and from when to when it was in work by the text of its job. */
export interface UnitInWork {
  readonly job: string;
  /** Place in the set, as written. */
  readonly place: string;
  readonly serial: string;
  /** The part number as marked; null: unknown. */
  readonly number: string | null;
  /** ISO date on which its job was received; null: not written down. */
  readonly from: string | null;
  /** ISO date on which it was finished; null: it is in work. */
  readonly until: string | null;
  readonly source: Source;
}

/** The units of a job that are known by a serial. One that is on hold is not worked on, and may be in another job. */
export function unitsInWork({ name, received, units }: Pick<Job, 'name' | 'received' | 'units'>): UnitInWork[] {
  return units.flatMap((unit): UnitInWork[] => {
    const { serial, onHold, place, numberText, source } = unit;
    if (serial === null || onHold !== null) return [];
    const number = numberText === 'unknown' ? null : numberText;
    return [{ job: name, place, serial: serial.trim(), number, from: received, until: finishedOn(unit), source }];
  });
}

/** A unit that was only taken apart is signed on that day too. */
function finishedOn({ results }: Unit): string | null {
  const last = results.at(-1);
  const isRead = results.some((one) => (one.form === 'reading' || one.form === 'verdict') && !one.asFound);
  return last?.form === 'done' && isRead ? last.on : null;
}

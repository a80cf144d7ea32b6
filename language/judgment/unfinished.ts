import type { FactResult, Unit } from '../model/job.ts';

/** What a unit waits for, or where it is: what was begun and is not over. */
export interface Unfinished {
  readonly how: 'waiting' | 'sent out';
  readonly fact: FactResult;
}

/** Waiting for a part that was not renewed since, or sent out and not booked in. */
export function unfinishedOf({ results }: Pick<Unit, 'results'>): Unfinished[] {
  return results.flatMap((one, index): Unfinished[] => {
    if (one.form !== 'fact') return [];
    const later = results.slice(index + 1);
    if (one.word === 'waiting') {
      const isOver = later.some((other) => other.form === 'renewed' && other.part === one.name);
      return isOver || one.name === null ? [] : [{ how: 'waiting', fact: one }];
    }
    if (one.word !== 'sent-out') return [];
    const isBack = later.some((other) => other.form === 'fact' && other.word === 'booked-in');
    return isBack ? [] : [{ how: 'sent out', fact: one }];
  });
}

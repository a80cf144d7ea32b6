import type { Result, Unit } from '../../model/job.ts';

/** What a job has written down of its units, and which of it is printed in a box: the rest goes to the front. */
export class Recorded {
  readonly #units: readonly Unit[];
  readonly #printed = new Set<Result>();

  constructor(units: readonly Unit[]) {
    this.#units = units;
  }

  /** For each unit the first result that fits, as words; empty where there is none. No result is taken twice. */
  cells(size: number, fits: (result: Result) => boolean, say: (result: Result) => string): string[] {
    return Array.from({ length: size }, (_, index) => {
      const found = this.#units[index]?.results.find((result) => !this.#printed.has(result) && fits(result));
      if (found === undefined) return '';
      this.#printed.add(found);
      return say(found);
    });
  }

  /** A result that is in a box of the log. */
  take(result: Result): void {
    this.#printed.add(result);
  }

  /** What no box of the sheet is for. */
  left(unit: Unit): Result[] {
    return unit.results.filter((result) => !this.#printed.has(result));
  }
}

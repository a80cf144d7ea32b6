import type { Measured } from '../bench.ts';
import { spreadOf } from './spread.ts';

/** One of several kinds of work that are measured in turn: does it once, and says what it took. */
export interface Contestant {
  readonly name: string;
  measure(): number | Promise<number>;
}

export interface Rounds {
  /** At least three, unless one round takes longer than all of them may. */
  readonly most: number;
  /** No further round begins after so many seconds. */
  readonly seconds: number;
  /** Rounds that are not counted: compilers and caches settle in them. */
  readonly warm?: number;
}

/** Measures in rounds, each contestant once a round and each round from another one on, so that noise meets all alike. */
export async function sideBySide(
  contestants: readonly Contestant[],
  { most, seconds, warm = 0 }: Rounds,
): Promise<Measured[]> {
  const values = contestants.map((): number[] => []);
  const end = performance.now() + seconds * 1000;
  const late = () => performance.now() > end;
  for (let round = -warm; round < most; round++) {
    // A round that is late already has to count.
    const counts = round >= 0 || late();
    for (let turn = 0; turn < contestants.length; turn++) {
      const index = (turn + round + warm) % contestants.length;
      const value = await contestants[index]!.measure();
      if (counts) values[index]!.push(value);
    }
    if (late() && values[0]!.length > 0) break;
  }
  return contestants.map(({ name }, index) => ({ name, spread: spreadOf(values[index]!) }));
}

/** Processor time of this process while it does something, ms. What else runs on the machine does not count. */
export function processorTime(work: () => unknown): number {
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

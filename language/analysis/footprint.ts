import type { AbstractState } from './state.ts';

/**
 * What was read of a state while something was worked out: cells with their values, and cells with the step since which
 * they have them. Where another state is the same in all of that, the same comes out, and nothing is worked out again.
 */
export class Footprint {
  /** A cell and its value, and so on. */
  readonly values: readonly number[];
  /** A cell and the step since which it has its value, and so on; null: that was not read of any. */
  readonly provenance: readonly number[] | null;

  constructor(values: readonly number[], provenance: readonly number[]) {
    this.values = values.slice();
    this.provenance = provenance.length === 0 ? null : provenance.slice();
  }

  fits(state: AbstractState): boolean {
    return isAsIn(this.values, state.values) && (this.provenance === null || isAsIn(this.provenance, state.provenance));
  }
}

function isAsIn(pairs: readonly number[], cells: Int32Array): boolean {
  for (let index = 0; index < pairs.length; index += 2) if (cells[pairs[index]!] !== pairs[index + 1]) return false;
  return true;
}

/** Takes down what is read of a state and what is written to it, between `start` and `stop`. */
export class Recorder {
  /** Cells and the values that they were set to, in order. */
  writes: number[] = [];
  private values: number[] = [];
  private provenance: number[] = [];
  private state: AbstractState | null = null;
  private round = 0;
  /** By cell, the round in which it was last read, or written. */
  private readonly readIn: Int32Array;
  private readonly sinceReadIn: Int32Array;
  private readonly writtenIn: Int32Array;

  /** @param size of the states: how many cells they have */
  constructor(size: number) {
    this.readIn = new Int32Array(size);
    this.sinceReadIn = new Int32Array(size);
    this.writtenIn = new Int32Array(size);
  }

  start(state: AbstractState) {
    this.state = state;
    state.recorder = this;
    this.round++;
    this.values.length = 0;
    this.provenance.length = 0;
    this.writes = [];
  }

  stop() {
    if (this.state !== null) this.state.recorder = null;
    this.state = null;
  }

  footprint(): Footprint {
    return new Footprint(this.values, this.provenance);
  }

  /** What was written before it is read is no matter of the state that there was at the start. */
  read(cell: number) {
    if (this.readIn[cell] === this.round || this.writtenIn[cell] === this.round) return;
    this.readIn[cell] = this.round;
    this.values.push(cell, this.state!.values[cell]!);
  }

  readSince(cell: number) {
    if (this.sinceReadIn[cell] === this.round) return;
    this.sinceReadIn[cell] = this.round;
    this.provenance.push(cell, this.state!.provenance[cell]!);
  }

  write(cell: number, value: number) {
    this.writtenIn[cell] = this.round;
    this.writes.push(cell, value);
  }
}

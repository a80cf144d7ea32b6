import type { AbstractState } from './state.ts';

/**
 * What was read of a state while something was worked out: cells with their values, and cells with the step since which
 * they have them. Where another state is the same in all of that, the same comes out, and nothing is worked out again.
 */
export class Footprint {
  private readonly cells: number[] = [];
  private readonly values: number[] = [];
  private readonly sinceCells: number[] = [];
  private readonly sinces: number[] = [];

  fits({ values, provenance }: AbstractState): boolean {
    const { cells, sinceCells } = this;
    for (let index = 0; index < cells.length; index++) if (values[cells[index]!] !== this.values[index]) return false;
    for (let index = 0; index < sinceCells.length; index++)
      if (provenance[sinceCells[index]!] !== this.sinces[index]) return false;
    return true;
  }

  addValue(cell: number, value: number) {
    this.cells.push(cell);
    this.values.push(value);
  }

  addSince(cell: number, since: number) {
    this.sinceCells.push(cell);
    this.sinces.push(since);
  }
}

/** Takes down what is read of a state and what is written to it, between `start` and `stop`. */
export class Recorder {
  footprint = new Footprint();
  /** Cells and the values that they were set to, in order. */
  writes: number[] = [];
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
    this.footprint = new Footprint();
    this.writes = [];
  }

  stop() {
    if (this.state !== null) this.state.recorder = null;
    this.state = null;
  }

  /** What was written before it is read is no matter of the state that there was at the start. */
  read(cell: number) {
    if (this.readIn[cell] === this.round || this.writtenIn[cell] === this.round) return;
    this.readIn[cell] = this.round;
    this.footprint.addValue(cell, this.state!.values[cell]!);
  }

  readSince(cell: number) {
    if (this.sinceReadIn[cell] === this.round) return;
    this.sinceReadIn[cell] = this.round;
    this.footprint.addSince(cell, this.state!.provenance[cell]!);
  }

  write(cell: number, value: number) {
    this.writtenIn[cell] = this.round;
    this.writes.push(cell, value);
  }
}

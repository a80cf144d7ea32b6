import type { Recorder } from './footprint.ts';
import type { LocationLayout, PartLocations } from './locations.ts';
import * as bits from './locations.ts';

/**
 * What may be true at a point: a set of values for each cell, and the step since which it may be so. Merging is
 * union; `since` is kept beside it and does not count when states are compared.
 */
export class AbstractState {
  readonly layout: LocationLayout;
  readonly values: Int32Array;
  readonly provenance: Int32Array;
  /** Takes down what is read and written; null: nobody asks. */
  recorder: Recorder | null = null;

  constructor(layout: LocationLayout, values: Int32Array, provenance: Int32Array) {
    this.layout = layout;
    this.values = values;
    this.provenance = provenance;
  }

  /** A unit as it is received: assembled, dirty, its ports open, nothing known. */
  receive(loose: readonly string[], station: string | null) {
    this.values.fill(1);
    this.provenance.fill(-1);
    for (const [name, cells] of this.layout.parts) {
      this.values[cells.place] = loose.includes(name) ? bits.place.off : bits.place.in;
      this.values[cells.kept] = bits.kept.kept;
    }
    this.values[this.layout.unit.station] = this.layout.stationBit(station);
  }

  /** Makes it the same as another. */
  assign(other: AbstractState) {
    this.values.set(other.values);
    this.provenance.set(other.provenance);
  }

  /** A state of its own, to be kept: those of a pool are used again. */
  copy(): AbstractState {
    return new AbstractState(this.layout, this.values.slice(), this.provenance.slice());
  }

  /** Puts another way's values in. True where something became possible that was not. */
  join(other: AbstractState): boolean {
    const { values } = this;
    const others = other.values;
    let grown = false;
    for (let cell = 0; cell < values.length; cell++) {
      const value = values[cell]!;
      const union = value | others[cell]!;
      if (union === value) continue;
      values[cell] = union;
      this.provenance[cell] = other.provenance[cell]!;
      grown = true;
    }
    return grown;
  }

  /** Sets a cell at a step. */
  set(cell: number, value: number, step: number) {
    this.recorder?.write(cell, value);
    if (this.values[cell] === value) return;
    this.values[cell] = value;
    this.provenance[cell] = step;
  }

  get(cell: number): number {
    this.recorder?.read(cell);
    return this.values[cell]!;
  }

  /** Whether any of the bits is possible. */
  may(cell: number, mask: number): boolean {
    return (this.get(cell) & mask) !== 0;
  }

  /** Whether nothing but the bits is possible. */
  must(cell: number, mask: number): boolean {
    return (this.get(cell) & ~mask) === 0;
  }

  /** The node that a cell has its value since; negative: as received. */
  since(cell: number): number {
    this.recorder?.readSince(cell);
    return this.provenance[cell]!;
  }

  part(name: string): PartLocations {
    return this.layout.parts.get(name)!;
  }

  /** A part may be in its place (a trial fit counts). */
  mayBeIn(part: string): boolean {
    return this.may(this.part(part).place, bits.place.in | bits.place.trial);
  }

  mustBeIn(part: string): boolean {
    return this.must(this.part(part).place, bits.place.in | bits.place.trial);
  }
}

/** How many states are made at once: an array of numbers is cheap to cut up, and costly to make. */
const block = 64;

/** Most that wait to be used again: more than a procedure of a usual size has join points on all its paths. */
const mostSpare = 4_096;

/** States of one layout, used again when they are given back. */
export class StatePool {
  readonly layout: LocationLayout;
  private readonly spare: AbstractState[] = [];

  constructor(layout: LocationLayout) {
    this.layout = layout;
  }

  /** A state that is the same as another. */
  copy(of: AbstractState): AbstractState {
    const copy = this.take();
    copy.assign(of);
    return copy;
  }

  /** A state with nothing in it. */
  take(): AbstractState {
    if (this.spare.length === 0) this.make();
    return this.spare.pop()!;
  }

  giveBack(state: AbstractState) {
    if (this.spare.length < mostSpare) this.spare.push(state);
  }

  private make() {
    const size = this.layout.locations.length;
    const numbers = new Int32Array(2 * size * block);
    for (let at = 0; at < numbers.length; at += 2 * size) {
      const [values, provenance] = [numbers.subarray(at, at + size), numbers.subarray(at + size, at + 2 * size)];
      this.spare.push(new AbstractState(this.layout, values, provenance));
    }
  }
}

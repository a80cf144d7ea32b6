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

  constructor(layout: LocationLayout) {
    this.layout = layout;
    this.values = new Int32Array(layout.locations.length).fill(1);
    this.provenance = new Int32Array(layout.locations.length).fill(-1);
  }

  /** A unit as it is received: assembled, dirty, its ports open, nothing known. */
  static received(layout: LocationLayout, loose: readonly string[], station: string | null): AbstractState {
    const state = new AbstractState(layout);
    for (const [name, cells] of layout.parts) {
      state.values[cells.place] = loose.includes(name) ? bits.place.off : bits.place.in;
      state.values[cells.kept] = bits.kept.kept;
    }
    state.values[layout.unit.station] = layout.stationBit(station);
    return state;
  }

  /** Makes it the same as another. */
  assign(other: AbstractState) {
    this.values.set(other.values);
    this.provenance.set(other.provenance);
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

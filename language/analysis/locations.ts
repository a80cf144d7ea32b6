import type { Procedure, Step } from '../model/procedure.ts';
import { isGate, readingOf } from '../model/steps.ts';
import { oncePer } from '../quantities/memo.ts';
import { either, type Filling, stateTerm } from '../say/say.ts';

/*
 * A cell holds the set of values that are possible, as bits. Merging two ways is union. The words are what
 * `handtight replay` prints.
 */

export const place = { in: 1, off: 2, gone: 4, guard: 8, trial: 16, sub: 32 } as const;
/** `used`: fitted new, pulled tight, and released again: what seals or stretches once has done so. */
export const age = { found: 1, new: 2, lapped: 4, used: 8 } as const;
export const dirt = { dirty: 1, washed: 2, rinsed: 4, preserved: 8, loosened: 16, paste: 32 } as const;
/** Must be washed off before the part is fitted. */
export const unclean = dirt.dirty | dirt.loosened | dirt.paste;
/** `bare`: dry, and it was water that dried off: steel with no film on it. `oil` is test oil. */
export const wet = { dry: 1, solvent: 2, water: 4, oil: 8, bare: 16, assembly: 32, preserving: 64 } as const;
/** Nothing is on it. */
export const noFilm = wet.dry | wet.bare;
export const kept = { loose: 1, kept: 2 } as const;
export const guard = { off: 1, on: 2 } as const;
export const looked = { no: 1, yes: 2 } as const;
export const joint = { found: 1, apart: 2, run: 4, torqued: 8, slack: 16, locked: 32 } as const;
export const adjuster = { found: 1, backed: 2, set: 4, locked: 8, disturbed: 16 } as const;
export const port = { open: 1, capped: 2, connected: 4 } as const;
export const gate = { notYet: 1, passed: 2, stale: 4, failed: 8 } as const;
export const reading = { none: 1, taken: 2, old: 4 } as const;
export const flag = { no: 1, yes: 2 } as const;

/** The words of each kind of cell, by bit. */
const words = {
  place: ['in place', 'off', 'discarded', 'on as a guard', 'in place for trial', 'out with its sub-assembly'],
  age: ['as found', 'new', 'lapped', 'new, then tightened and released'],
  dirt: ['dirty', 'washed', 'rinsed', 'in preservative', 'dirt loosened', 'with lapping paste on it'],
  wet: [
    'dry',
    'wet with solvent',
    'wet with water',
    'wet with test oil',
    'dried bare after water',
    'wet with assembly oil',
    'wet with preserving oil',
  ],
  kept: ['loose', 'kept'],
  guard: ['no guard', 'guarded'],
  looked: ['not looked at', 'looked at'],
  joint: ['tight as found', 'apart', 'hand-tight', 'torqued', 'slackened', 'locked'],
  adjuster: ['as found', 'backed off', 'set', 'locked', 'disturbed'],
  port: ['open', 'capped', 'connected'],
  gate: ['not yet', 'passed', 'stale', 'failed'],
  reading: ['not taken', 'taken', 'taken before it was opened'],
  flag: ['no', 'yes'],
} as const;

/** All of them, and what a part is with where it is at no station of its own. */
export const stateWords: readonly string[] = ['the unit', ...new Set(Object.values(words).flat())];

export type LocationKind = keyof typeof words | 'where';

export interface Location {
  readonly kind: LocationKind;
  /** What it is of: `part shim`, `unit`. */
  readonly of: string;
  /** The property: `place`, `clamped`. */
  readonly property: string;
}

export interface PartLocations {
  readonly place: number;
  readonly age: number;
  readonly where: number;
  readonly kept: number;
  readonly dirt: number;
  readonly wet: number;
}

/** Which index each cell of a procedure's state has. */
export class LocationLayout {
  readonly locations: Location[] = [];
  readonly parts = new Map<string, PartLocations>();
  readonly faces = new Map<string, { guard: number; looked: number }>();
  readonly joints = new Map<string, number>();
  readonly adjusters = new Map<string, number>();
  readonly ports = new Map<string, number>();
  /** By the name of the test, setting or reading. */
  readonly readings = new Map<string, number>();
  /** Parts that must be felt to move: whether they have been since they were last shut in or tightened. */
  readonly moved = new Map<string, number>();
  /** Springs that a step compresses or lets go, or that are declared as loaded: whether they are held together. */
  readonly compressed = new Map<string, number>();
  /** By the gate's id. */
  readonly gates = new Map<string, number>();
  readonly unit;
  /** Names of stations by bit; bit 0 of a part's place of stay means: with the unit. */
  readonly stations: readonly string[];

  constructor(procedure: Procedure) {
    const { family } = procedure;
    this.stations = ['the unit', ...procedure.shop.stations.map((station) => station.name)].slice(0, 31);
    for (const part of family.parts) {
      const of = `part ${part.name}`;
      this.parts.set(part.name, {
        place: this.cell('place', of, 'place'),
        age: this.cell('age', of, 'age'),
        where: this.cell('where', of, 'stays with'),
        kept: this.cell('kept', of, 'kept'),
        dirt: this.cell('dirt', of, 'surface'),
        wet: this.cell('wet', of, 'wet'),
      });
    }
    for (const face of family.faces) {
      this.faces.set(face.id, {
        guard: this.cell('guard', `face ${face.id}`, 'guard'),
        looked: this.cell('looked', `face ${face.id}`, 'looked at'),
      });
    }
    for (const one of family.joints) this.joints.set(one.part, this.cell('joint', `joint ${one.part}`, 'is'));
    for (const one of family.adjusters)
      this.adjusters.set(one.part, this.cell('adjuster', `adjuster ${one.part}`, 'setting'));
    for (const one of family.ports) this.ports.set(one.name, this.cell('port', `port ${one.name}`, 'is'));
    for (const step of allSteps(procedure)) {
      if (isGate(step) && !this.gates.has(step.gate.id))
        this.gates.set(step.gate.id, this.cell('gate', `gate ${step.gate.id}`, 'is'));
    }
    for (const name of readingsOf(procedure)) this.readings.set(name, this.cell('reading', `reading ${name}`, 'is'));
    for (const part of family.parts)
      if (part.moves !== null) this.moved.set(part.name, this.cell('flag', `part ${part.name}`, 'felt to move'));
    const pressed = new Set(
      allSteps(procedure).flatMap((step) =>
        step.verb === 'compress' || step.verb === 'release' ? step.objects.map(({ name }) => name) : [],
      ),
    );
    for (const { name, dangers } of family.parts)
      if (pressed.has(name) || dangers.some(({ danger, denied }) => danger === 'spring-loaded' && !denied))
        this.compressed.set(name, this.cell('flag', `part ${name}`, 'held compressed'));
    this.unit = {
      station: this.cell('where', 'unit', 'station'),
      clamped: this.cell('flag', 'unit', 'clamped'),
      pressure: this.cell('flag', 'unit', 'under pressure'),
      primed: this.cell('flag', 'unit', 'primed'),
      tagged: this.cell('flag', 'unit', 'tagged'),
      marked: this.cell('flag', 'unit', 'marked'),
      signed: this.cell('flag', 'unit', 'signed off'),
      outside: this.cell('flag', 'unit', 'clean outside'),
    };
  }

  /** Whether its cells are the same, in the same order. */
  isLike(other: LocationLayout): boolean {
    return (
      this.locations.length === other.locations.length &&
      this.stations.length === other.stations.length &&
      this.stations.every((station, index) => station === other.stations[index]) &&
      this.locations.every(({ of, property }, index) => {
        const cell = other.locations[index]!;
        return of === cell.of && property === cell.property;
      })
    );
  }

  private cell(kind: LocationKind, of: string, property: string): number {
    return this.locations.push({ kind, of, property }) - 1;
  }

  stationBit(name: string | null): number {
    const index = name === null ? -1 : this.stations.indexOf(name);
    return index < 1 ? 1 : 1 << index;
  }

  /** A cell's possible values in words. */
  wordsOf(index: number, value: number): string[] {
    const cell = this.locations[index]!;
    const all = cell.kind === 'where' ? this.stations : words[cell.kind];
    return all.filter((_, bit) => (value & (1 << bit)) !== 0);
  }

  /** The same for a reader; a station is called by its name. */
  saidOf(index: number, value: number): Filling {
    const isPlace = this.locations[index]!.kind === 'where';
    const said = this.wordsOf(index, value).map((word) =>
      isPlace && word !== this.stations[0] ? word : stateTerm(word),
    );
    return said.length === 1 ? said[0]! : either(said);
  }
}

/** Names of all readings that are taken in a procedure. */
function readingsOf(procedure: Procedure): Set<string> {
  return new Set(allSteps(procedure).flatMap((step) => readingOf(step) ?? []));
}

/** Steps of stages, then of repairs. */
export const allSteps = oncePer((procedure: Procedure): readonly Step[] =>
  [...procedure.stages, ...procedure.repairs].flatMap((block) => block.steps),
);

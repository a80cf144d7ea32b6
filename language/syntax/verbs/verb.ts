import type { PhraseName } from './phrases.ts';

/** What a step acts on. */
export type ObjectKind = 'part' | 'face' | 'port' | 'adjuster';

/** What a step names first; `reading`: a test, spec or master that is read; `gate`: the test of that name. */
export type VerbObject = ObjectKind | 'reading' | 'gate';

/** What verbs have in common that more than one place of the program asks for. */
export type Trait =
  /** It judges or reads: it has `TestFigures`, and the gauge of its station is looked at. */
  | 'reads'
  /** It takes a part up: that must be put down again before the unit goes on. */
  | 'takes in hand'
  /** It lets go of a part, or puts load on it. */
  | 'frees'
  /** It opens what may hold pressure. */
  | 'opens'
  /** It tightens or closes what may hold pressure. */
  | 'tightens'
  /** It turns a fastener: `held by` and a wrench belong to it. */
  | 'turns'
  /** Dirt is cleaned away. */
  | 'cleans'
  /** What is driven electrically may be driven at it. */
  | 'drives'
  /** A part that can turn may turn at it. */
  | 'spins'
  /** It may be done to an assembly, with all that is in it. */
  | 'as one'
  /** It takes the whole unit up, whatever part it names. */
  | 'whole unit'
  /** What is heavy is taken up or set down. */
  | 'lifts'
  /** A test may come out differently after it. */
  | 'changes'
  /** It may follow the last signature. */
  | 'after sign-off';

/** Usual cautions that a verb needs by itself, whatever it is done to; `disposal` where it is done with a fluid. */
export type VerbCaution =
  | 'let-down'
  | 'wheel'
  | 'blasting'
  | 'spring'
  | 'press'
  | 'noise'
  | 'rags'
  | 'oil-on-skin'
  | 'alone'
  | 'lapping'
  | 'disposal';

/** One verb: the only place that says what it is called, what it takes and what it is. */
export interface VerbRecord {
  /** As it is written, where that is not its name. */
  readonly spelling?: string;
  /** What it acts on, in the order in which names are looked up. */
  readonly objects: readonly VerbObject[];
  /** `all` may be said: of every part, or every port. */
  readonly all?: 'parts' | 'ports';
  /** How it may go on, besides what every step may say. What is not here is refused. */
  readonly takes: readonly PhraseName[];
  /** What it does, for hover, completion and the README. */
  readonly does: string;
  readonly is?: readonly Trait[];
  readonly cautions?: readonly VerbCaution[];
}

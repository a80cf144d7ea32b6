import type { Language, Span } from '../i18n/index.ts';
import type { Paper } from '../model/paper.ts';
import type { SignalWord } from '../model/procedure.ts';
import type { Verb } from '../model/verbs.ts';

export type { Span } from '../i18n/index.ts';
export type { Paper } from '../model/paper.ts';

/** A traveler, ready to be set: every word that is printed, in order. HTML and PDF are made from it and add none. */
export interface Sheet {
  /** BCP 47 tag of the fixed words. */
  readonly language: Language;
  readonly paper: Paper;
  /** Title of the document, as a reader program shows it. */
  readonly title: string;
  /** Printed across each page; null: a released sheet. */
  readonly watermark: string | null;
  readonly header: SheetHeader;
  /** Printed at the foot of each page with work under test pressure. */
  readonly firstAid: string | null;
  /** Printed at the foot of each page. */
  readonly foot: string;
  readonly pageWords: { readonly page: string; readonly of: string };
  readonly blocks: readonly Block[];
}

/** The head of each page. */
export interface SheetHeader {
  readonly title: string;
  readonly subtitle: string;
  /** Shown large: `NOT APPROVED`; null: approved. */
  readonly alarm: string | null;
  readonly facts: readonly Fact[];
  readonly qr: QrCode;
}

/** A QR code as vector: `path` draws the dark squares in a `size` × `size` field, quiet zone included. */
export interface QrCode {
  /** What a scanner reads. */
  readonly text: string;
  /** Description for those who cannot see it. */
  readonly alt: string;
  readonly size: number;
  readonly path: string;
}

/** A label and what it says. */
export interface Fact {
  readonly label: string;
  readonly text: string;
  /** What it leads to, on a screen. */
  readonly href?: string;
}

export type Block =
  | HeadingBlock
  | TextBlock
  | FactsBlock
  | RouteBlock
  | DrawingBlock
  | TableBlock
  | PlaceBlock
  | CautionBlock
  | StepBlock
  | GridBlock;

export interface HeadingBlock {
  readonly kind: 'heading';
  readonly text: string;
}

export interface TextBlock {
  readonly kind: 'text';
  readonly text: string;
  readonly strong: boolean;
}

/** For what, for whom and by whom: once, at the beginning. */
export interface FactsBlock {
  readonly kind: 'facts';
  readonly facts: readonly Fact[];
}

/** Where the unit goes: one stop for each run of stages that are done at one station. */
export interface RouteBlock {
  readonly kind: 'route';
  readonly title: string;
  readonly stops: readonly {
    readonly station: string;
    readonly stages: readonly { readonly number: string; readonly title: string }[];
  }[];
}

/** A vector picture with its description for those who cannot see it. */
export interface Drawing {
  /** Sound SVG with no style sheet in it; texts are in the font of the sheet. */
  readonly svg: string;
  readonly alt: string;
  /** As printed, in millimeters. */
  readonly width: number;
  readonly height: number;
}

export interface DrawingBlock extends Drawing {
  readonly kind: 'drawing';
  readonly title: string;
}

export interface TableBlock {
  readonly kind: 'table';
  /** It begins on a page of its own. */
  readonly ownPage?: boolean;
  readonly title: string;
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly Cell[])[];
}

export interface Column {
  readonly head: string;
  /** Share of the width. */
  readonly share: number;
}

export interface Cell {
  readonly text: string;
  /** To be filled in with a pen. */
  readonly fill?: boolean;
  readonly strong?: boolean;
}

/** Head of a stage or of a repair. */
export interface PlaceBlock {
  readonly kind: 'place';
  readonly form: 'stage' | 'repair';
  readonly id: string;
  /** `3`, `R1`. */
  readonly number: string;
  readonly title: string;
  readonly facts: readonly Fact[];
  readonly line: SourceLine;
}

/** A caution comes before what it belongs to and has no number. */
export interface CautionBlock {
  readonly kind: 'caution';
  readonly word: SignalWord;
  /** The signal word as it is printed. */
  readonly label: string;
  readonly text: string;
  /** A line at a later step; else the whole text. */
  readonly short: boolean;
  /** Work under test pressure goes on here: the first-aid line belongs on the page. */
  readonly pressure: boolean;
}

/** Zero-based line of the text that a thing was written on. */
export interface SourceLine {
  readonly file: string;
  readonly line: number;
}

export interface StepBlock {
  readonly kind: 'step';
  readonly id: string;
  readonly number: string;
  readonly verb: Verb;
  readonly key: string;
  readonly line: SourceLine;
  /** A test, check or hold: set apart. */
  readonly gate: boolean;
  /** Under test pressure. */
  readonly pressure: boolean;
  readonly cautions: readonly CautionBlock[];
  /** `Only A-220`. */
  readonly only: string | null;
  readonly sentence: readonly Span[];
  readonly limits: readonly LimitLine[];
  /** A small table worked out beforehand: reading → hold pressure. */
  readonly lookups: readonly Lookup[];
  readonly facts: readonly Fact[];
  readonly grids: readonly Grid[];
  /** Lines to write on: name, date. */
  readonly lines: readonly string[];
  /** Shaped like the lookups: a picture of the same. */
  readonly drawings: readonly Drawing[];
  readonly fail: FailPath | null;
  readonly notes: readonly Fact[];
}

/** Where a unit goes that fails, in order. */
export interface FailPath {
  /** What to do with the boxes: `If it fails, write the unit in`. */
  readonly lead: string;
  /** One way; of a check with verdicts one for each. */
  readonly ways: readonly FailWay[];
  /** Units that may have to be written into one box. */
  readonly units: number;
  /** `If it fails, stop testing this unit.`; empty: the other tests are run first. */
  readonly stop: string;
}

export interface FailWay {
  /** `Lap`, `Reject`; empty where there is one way only. */
  readonly verdict: string;
  readonly stops: readonly FailStop[];
  /** What is left when all is used up; empty: there is no limit. */
  readonly end: string;
}

/** A repair that is tried: a box for each try. */
export interface FailStop {
  /** `R4`. */
  readonly number: string;
  /** Id of its head; empty where it is not on this sheet. */
  readonly target: string;
  readonly title: string;
  /** `3 tries`. */
  readonly tries: string;
  /** Boxes to write in, one for each try: `1`, `2`, `3`. */
  readonly boxes: readonly string[];
}

/** A limit, large, in the unit of the tool. */
export interface LimitLine {
  /** `In service`, at the first line of its column; empty: it goes on from the one above, or there is one kind only. */
  readonly head: string;
  /** `A-250`; empty where it is for all. */
  readonly label: string;
  readonly value: string;
  /** Beside it, small: as written, or in the other unit. */
  readonly also: string;
  readonly source: string;
}

/** Two rows, read from the first to the second. */
export interface Lookup {
  /** Empty: it goes on from the one above. */
  readonly title: string;
  readonly from: string;
  readonly to: string;
  readonly pairs: readonly { readonly from: string; readonly to: string }[];
}

/** Boxes to write in: a column per unit, a row per thing recorded. */
export interface Grid {
  readonly title: string;
  /** Columns of the widest of the grids that belong together: boxes are under each other. */
  readonly across: number;
  /** `1`, and under it the part number where the set is mixed. */
  readonly columns: readonly {
    readonly place: string;
    readonly detail: string;
  }[];
  readonly rows: readonly { readonly label: string; readonly unit: string }[];
}

export interface GridBlock {
  readonly kind: 'grid';
  readonly title: string;
  readonly grids: readonly Grid[];
}

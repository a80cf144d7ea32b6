import type { Language, Span } from '../i18n/index.ts';
import type { Paper } from '../model/paper.ts';
import type { SignalWord } from '../model/procedure.ts';
import type { SheetForm } from '../model/sheet-form.ts';
import type { Verb } from '../model/verbs.ts';
import type { OwnLanguage } from './own-language.ts';

export type { Span } from '../i18n/index.ts';
export type { Paper } from '../model/paper.ts';
export type { SheetForm } from '../model/sheet-form.ts';

/** A sheet, ready to be set: every word that is printed, in order. HTML and PDF are made from it and add none. */
export interface Sheet {
  readonly form: SheetForm | 'part' | 'certificate';
  /** BCP 47 tag of the fixed words. */
  readonly language: Language;
  /** Words of an author's in another language; null: there are none, or the author does not say. */
  readonly own: OwnLanguage | null;
  readonly paper: Paper;
  /** Title of the document, as a reader program shows it. */
  readonly title: string;
  /** Printed across each page; null: a released sheet. */
  readonly watermark: string | null;
  readonly header: SheetHeader;
  /** The units that boxes in the row of a step are for: over them, once a page. */
  readonly columns: readonly UnitHead[];
  /** What can hurt most, and first aid: at the foot of each page with work under test pressure, besides where it is said. */
  readonly pressed: { readonly alert: CautionBlock; readonly firstAid: string } | null;
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

/** The head of a column of boxes. */
export interface UnitHead {
  /** `1` */
  readonly place: string;
  /** Part number where the set is mixed, or `on hold`. */
  readonly detail: string;
  /** It is of another part number than most: set apart. */
  readonly odd: boolean;
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

/** Has sources: their texts while the sheet is made, then the letters under which they are listed: `a`, `b`. */
export interface Sourced {
  readonly sources?: readonly string[];
}

/** A label and what it says. */
export interface Fact extends Sourced {
  readonly label: string;
  readonly text: string;
  /** What it leads to, on a screen. */
  readonly href?: string;
}

export type Block =
  | HeadingBlock
  | TextBlock
  | FactsBlock
  | DrawingBlock
  | TableBlock
  | TablesBlock
  | SafetyBlock
  | PageBlock
  | PlaceBlock
  | StepBlock
  | CloseBlock
  | RepairsBlock
  | LogBlock;

export interface HeadingBlock {
  readonly kind: 'heading';
  readonly text: string;
}

export interface TextBlock {
  readonly kind: 'text';
  readonly text: string;
  readonly strong: boolean;
}

/** What follows begins on a new page: any, or the left one of two that lie open together. */
export interface PageBlock {
  readonly kind: 'page';
  readonly side: 'any' | 'left';
}

/** For what, for whom and by whom: once, at the beginning. */
export interface FactsBlock {
  readonly kind: 'facts';
  readonly facts: readonly Fact[];
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
  readonly title: string;
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly Cell[])[];
}

/** Small tables beside each other: the first at the left, the others under one another at the right. */
export interface TablesBlock {
  readonly kind: 'tables';
  readonly tables: readonly TableBlock[];
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

/** What can hurt, said once in full: grouped messages of ANSI Z535.6. */
export interface SafetyBlock {
  readonly kind: 'safety';
  readonly title: string;
  readonly lead: string;
  /** Label of the box for the initials of who has read it. */
  readonly read: string;
  readonly firstAid: string | null;
  readonly where: string;
  readonly rows: readonly {
    readonly word: SignalWord;
    readonly label: string;
    readonly text: string;
    /** `2.2–2.5, R1` */
    readonly steps: string;
  }[];
  /** Rules of the shop, which warn of nothing. */
  readonly rules: readonly Fact[];
}

/** A message before a part of the work: a line, or the whole text where the worst can happen. */
export interface CautionBlock {
  readonly word: SignalWord;
  /** The signal word as it is printed. */
  readonly label: string;
  readonly text: string;
}

/** Head of a stage. */
export interface PlaceBlock {
  readonly kind: 'place';
  readonly id: string;
  /** `3`, `R1`. */
  readonly number: string;
  readonly title: string;
  readonly facts: readonly Fact[];
  /** In full: what may cost a hand or a life here. */
  readonly danger: CautionBlock | null;
  /** A line for each other hazard of this place; empty label: the alert triangle alone. */
  readonly warnings: readonly { readonly label: string; readonly text: string }[];
  /** What to do where tests fail, and concessions. */
  readonly texts: readonly string[];
  readonly pressure: boolean;
  readonly line: SourceLine;
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
  /** Something of the safety page holds here: an alert triangle; its name for those who cannot see it, else empty. */
  readonly alert: string;
  /** The author's own warnings. */
  readonly cautions: readonly CautionBlock[];
  /** `Only A-220`. */
  readonly only: string | null;
  readonly sentence: readonly Span[];
  readonly limits: readonly LimitLine[];
  /** A small table worked out beforehand: reading → hold pressure. */
  readonly lookups: readonly Lookup[];
  /** Boxes of what is read at points and places. */
  readonly tables: readonly TableBlock[];
  readonly facts: readonly Fact[];
  readonly notes: readonly Fact[];
  /** Boxes in the row of the step, a column per unit. */
  readonly rows: readonly BoxRow[];
  /** Boxes for the set, where units are compared. */
  readonly set: SetBoxes | null;
  /** It is recorded in the log. */
  readonly logged: boolean;
  readonly fail: FailPath | null;
  readonly sign: SignBoxes | null;
  /** At the last step of a stage: who has done it. */
  readonly close: BoxRow | null;
}

/** Who has done a stage, where no step of it is beside it. */
export interface CloseBlock {
  readonly kind: 'close';
  readonly row: BoxRow;
}

/** A row of boxes: what is already known is in them, and an empty one is to be filled. */
export interface BoxRow {
  readonly label: string;
  readonly unit: string;
  /** One for each unit, or a single one for the set. */
  readonly boxes: readonly string[];
  /** Spoken name of the row, since a box alone says nothing: `2.3 As found, bar`. */
  readonly name: string;
}

/** Boxes under heads of their own: `first`, `after 1`. */
export interface SetBoxes {
  readonly heads: readonly string[];
  readonly rows: readonly BoxRow[];
}

/** What is signed: a statement, and labeled boxes. */
export interface SignBoxes {
  readonly statement: string;
  readonly boxes: readonly { readonly label: string; readonly share: number }[];
}

/** Where a unit goes that fails, in order. */
export interface FailPath {
  /** One way; of a check with verdicts one for each. */
  readonly ways: readonly FailWay[];
  /** `If it fails, stop testing this unit.`; empty: the other tests are run first. */
  readonly stop: string;
}

export interface FailWay {
  /** What is written into the box that sends it there: `✗`, `L`. */
  readonly mark: string;
  /** `lap if stained or hazed`; empty: it fails. */
  readonly when: string;
  readonly stops: readonly FailStop[];
  /** What is left when all is used up; empty: there is no limit. */
  readonly end: string;
}

/** A repair that is tried. */
export interface FailStop {
  /** `R4`. */
  readonly number: string;
  /** Id of its head; empty where it is not on this sheet. */
  readonly target: string;
  /** Empty where it is under the test: the number leads there. */
  readonly title: string;
  /** `3 attempts max.`. */
  readonly tries: string;
  /** Where it is in the step that asks for it: what is done. */
  readonly steps: readonly StepBlock[];
  /** `then retest from 6.1`; empty where it is said with the repair. */
  readonly back: string;
  readonly line: SourceLine | null;
}

/** A limit, large, in the unit of the tool. */
export interface LimitLine extends Sourced {
  /** `In service`, at the first line of its column; empty: it goes on from the one above, or there is one kind only. */
  readonly head: string;
  /** `A-250`; empty where it is for all. */
  readonly label: string;
  readonly value: string;
  /** Beside it, small: as written, or in the other unit. */
  readonly also: string;
}

/** Two rows, read from the first to the second; or several, one for each part number, to the last. */
export interface Lookup {
  /** Empty: it goes on from the one above. */
  readonly title: string;
  readonly from: string;
  readonly to: string;
  readonly pairs: readonly { readonly from: string; readonly to: string }[];
  /** Rows under the first that lead to the same, column by column; empty: it has none there. */
  readonly besides?: readonly { readonly from: string; readonly reads: readonly string[] }[];
}

/** Repairs that begin and end alike, beside each other. */
export interface RepairsBlock {
  readonly kind: 'repairs';
  readonly repairs: readonly RepairHead[];
  /** Where a unit goes on after each of them; empty: it is said with each. */
  readonly back: string;
  readonly facts: readonly Fact[];
  readonly warnings: readonly { readonly label: string; readonly text: string }[];
  /** Columns from left to right: what they begin with, what each does, what they end with. */
  readonly columns: readonly RepairColumn[];
  /** Tables of the steps, below. */
  readonly lookups: readonly Lookup[];
  /** What to fit in which unit, by its readings. */
  readonly advice: readonly Fact[];
  readonly pressure: boolean;
}

export interface RepairHead {
  readonly id: string;
  readonly number: string;
  readonly title: string;
  readonly tries: string;
  readonly back: string;
  readonly texts: readonly string[];
  readonly line: SourceLine;
}

export interface RepairColumn {
  /** Of the width. */
  readonly share: number;
  readonly parts: readonly {
    /** `First, R1.1 R2.1 R3.1`; of one repair its number and title. */
    readonly title: string;
    readonly steps: readonly { readonly label: string; readonly step: StepBlock }[];
  }[];
}

/** A line for each time on the tester. */
export interface LogBlock {
  readonly kind: 'log';
  readonly title: string;
  readonly lead: string;
  readonly unit: string;
  readonly columns: readonly { readonly step: string; readonly name: string; readonly unit: string }[];
  readonly units: readonly LogUnit[];
  readonly foot: string;
  /** Lines that a unit can take at most. */
  readonly needed: number;
  /** It fills a page of its own; else it stays whole where there is room. */
  readonly large: boolean;
  /** Where a unit goes that fails, where the tests are on another sheet: `9.3`, `R1, 3 attempts max. → HOLD`. */
  readonly fails: readonly Fact[];
  /** What to fit in which unit, by its readings. */
  readonly advice: readonly Fact[];
  readonly pressure: boolean;
}

export interface LogUnit extends Pick<UnitHead, 'place' | 'odd'> {
  readonly lines: readonly LogLine[];
}

export interface LogLine {
  /** What is said about the unit, over its lines: place, part number, serial, and what its first figure is judged by. */
  readonly head: readonly string[];
  /** What is known, column by column; empty: to be filled. */
  readonly cells: readonly string[];
}

/** A point in millimeters from the top left corner; y grows downwards. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** An upright box in millimeters. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export type MarkRole =
  | 'axis'
  | 'bracket'
  | 'dimension'
  | 'dot'
  | 'duct'
  | 'step'
  | 'outline'
  | 'hatch'
  | 'thread'
  | 'spring'
  | 'ghost'
  | 'face'
  | 'dowel'
  | 'port'
  | 'cap'
  | 'leader'
  | 'tie'
  | 'rule'
  | 'cell';

/** Lines of one weight. Black on white: color means nothing. */
export interface Mark {
  readonly role: MarkRole;
  /** Each a run of points that are joined by straight lines. */
  readonly runs: readonly (readonly Point[])[];
  readonly closed: boolean;
  readonly fill: 'none' | 'white' | 'black';
  /** Points of 1/72 inch; 0: no line. */
  readonly weight: number;
  /** Millimeters of line and gap in turn; empty: unbroken. */
  readonly dash: readonly number[];
}

export type LabelRole =
  | 'part'
  | 'foot'
  | 'step'
  | 'note'
  | 'face'
  | 'port'
  | 'tie'
  | 'column'
  | 'row'
  | 'legend'
  | 'onward';

/** A block of text. */
export interface Label {
  readonly role: LabelRole;
  /** Ids of the parts, faces, ports or stages that it refers to. */
  readonly of: readonly string[];
  readonly lines: readonly TextLine[];
  /** The room that the text takes as it is printed, a turned one too. */
  readonly box: Box;
  /** Which edge the lines begin or end at. */
  readonly align: 'left' | 'right';
  /** Read from below upwards. */
  readonly turned: boolean;
}

export interface TextLine {
  readonly text: string;
  readonly bold: boolean;
}

/** A picture, laid out: all that is drawn, and the same in words. */
export interface Drawing {
  readonly title: string;
  /** The whole content in words, unabridged, for those who cannot see it. */
  readonly alt: string;
  /** Millimeters. */
  readonly width: number;
  readonly height: number;
  /** In the order in which they are painted; labels come after them. */
  readonly marks: readonly Mark[];
  readonly labels: readonly Label[];
  /** Texts that are cut in the picture for want of room; whole in `alt`. */
  readonly shortened: readonly string[];
}

/** Line weights in points. */
export const weights = { hair: 0.5, thin: 0.6, outline: 1.2, duct: 1.6, thick: 2.4 } as const;

/** Size of all text in points; the advance of one line in millimeters. */
export const textSize = 10;
export const lineHeight = 4.5;
/** From the top of a line to its baseline, and to the middle of its small letters. */
export const baseline = 3.45;
export const midline = 2.35;

export const millimetresPerPoint = 25.4 / 72;

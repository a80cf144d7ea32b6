import type { Quantity } from '../../quantities/types.ts';

/** The specifications of a procedure, laid out: part numbers across, what has a figure down. Plain data. */
export interface Specs {
  readonly procedure: string;
  readonly title: string;
  readonly revision: string | null;
  readonly family: string;
  readonly shop: string;
  /** One for each part number; a single one with no number where the procedure has none. */
  readonly columns: readonly SpecColumn[];
  /** Those that have something, in the order of `GroupKind`. */
  readonly groups: readonly SpecGroup[];
  /** What is below: how the ratio is reckoned, how readings near a limit are judged. */
  readonly remarks: readonly string[];
}

export interface SpecColumn {
  readonly number: string | null;
  /** The author's words for it; empty if there are none. */
  readonly title: string;
}

export type GroupKind = 'joints' | 'adjusters' | 'tests' | 'measurements' | 'others';

export interface SpecGroup {
  readonly kind: GroupKind;
  readonly title: string;
  readonly items: readonly SpecItem[];
}

/** A joint, an adjuster, a test, a part that is measured. */
export interface SpecItem {
  readonly title: string;
  /** What is the same for every number: thread, `LEFT-HAND THREAD`, what is accepted. */
  readonly facts: readonly string[];
  readonly line: SpecLine;
  readonly figures: readonly SpecFigure[];
}

/** One figure of an item, over all part numbers. */
export interface SpecFigure {
  /** `Torque`, `In service`, `Hold`. */
  readonly what: string;
  /** Printed numbers of the steps that use it. */
  readonly steps: readonly string[];
  readonly line: SpecLine;
  /** One for each column; null: the figure is not for this number. */
  readonly cells: readonly (SpecCell | null)[];
}

export interface SpecCell {
  /** As the sheet prints it, large; empty where none is given. */
  readonly value: string;
  /** As the sheet prints it beside: the window, and what the author wrote. */
  readonly also: string;
  /** The shop's tolerance, filled in where the author wrote none, with its source. */
  readonly standing: string | null;
  readonly source: string | null;
  /** Ends of what it lets through, exact, in the author's unit; null: open on that side, or no limit. */
  readonly low: Quantity | null;
  readonly high: Quantity | null;
  readonly tool: SpecTool | null;
  /** Half the window over the tool's permissible error, rounded down: `4.0:1`. Null: one end, or no error known. */
  readonly ratio: string | null;
  readonly missing: readonly SpecMissing[];
  readonly line: SpecLine;
}

export interface SpecTool {
  /** `TW-80`; null for a kind of tool, whose number the job gives, or for the author's words. */
  readonly number: string | null;
  readonly words: string;
  /** Its permissible error where it reads this limit: `±1 bar`. */
  readonly error: string | null;
}

export type MissingKind = 'value' | 'source' | 'tolerance' | 'tool' | 'accuracy';

export interface SpecMissing {
  readonly kind: MissingKind;
  readonly words: string;
}

/** Where it is written: zero-based lines, the last one included. */
export interface SpecLine {
  readonly file: string;
  readonly line: number;
  readonly last: number;
}

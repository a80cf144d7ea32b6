import type { KindWord } from '../quantities/kinds.ts';
import type { Quantity } from '../quantities/types.ts';
import type { Filling, Said } from '../say/say.ts';

/** One figure that a calculation asks for. */
export interface Input {
  readonly name: string;
  /** What it measures; `number`: it has no unit; `same`: whatever is judged, the same for all such figures. */
  readonly kind: KindWord | 'number' | 'same';
  /** What it is, as the lead would say it. */
  readonly words: Said;
  readonly optional?: true;
  /** Several, with commas between. */
  readonly many?: true;
  /** What makes sense; over nothing where nothing is said. */
  readonly from?: 'nothing' | 'anywhere';
  /** More than this is a slip of the keyboard: a quantity, or a number. */
  readonly most?: string;
}

/** What was given, read and of the right kind. */
export interface Given {
  has(name: string): boolean;
  quantity(name: string): Quantity;
  quantities(name: string): readonly Quantity[];
  number(name: string): number;
  numbers(name: string): readonly number[];
}

/** Lines of the way to the answer, and the answer; or why there is none, and what to do. */
export type Answer =
  | { readonly steps: readonly Filling[]; readonly answer: readonly Filling[] }
  | { readonly problem: Said };

/** A calculation that the lead can check by hand. */
export interface Calculation {
  readonly name: string;
  readonly title: Said;
  /** With the names of the figures, as they are typed. */
  readonly formula: readonly Filling[];
  readonly source: Said;
  readonly inputs: readonly Input[];
  /** As it is typed, with figures that give an answer. */
  readonly example: readonly string[];
  readonly work: (given: Given) => Answer;
}

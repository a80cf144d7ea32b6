import type { SourceFile } from '../../language/db/workspace.ts';
import type { Random } from './random.ts';

/** One input: the states of a workspace after each of a few edits. Most have one state. */
export interface FuzzCase {
  readonly kind: string;
  readonly versions: readonly (readonly SourceFile[])[];
}

/** What an oracle found wrong. `at` tells one defect from another: the frame of a throw, or the oracle’s own word. */
export interface Failure {
  readonly target: string;
  readonly at: string;
  readonly what: string;
}

export type Generator = (random: Random) => FuzzCase;

/** What two inputs have in common that show one defect. */
export function keyOf({ target, at }: Pick<Failure, 'target' | 'at'>): string {
  return `${target}: ${at}`;
}

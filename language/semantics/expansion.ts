import type * as ast from '../syntax/generated/ast.ts';
import type { Sequences } from './scope.ts';

/** Most steps that a procedure may have with its sequences written out. */
export const mostSteps = 20_000;
/** The deepest nesting of sequences. */
const deepest = 50;

/** How many steps lines have with all calls written out; infinite where calls go too deep. Counted, not written out. */
export class ExpansionSize {
  private readonly known = new Map<ast.Sequence, number>();
  private readonly sequences: Sequences;

  constructor(sequences: Sequences) {
    this.sequences = sequences;
  }

  /** @param depth how many sequences these lines are nested in */
  count(lines: readonly ast.StepLine[], depth = 0): number {
    return lines.reduce((sum, line) => line.steps.reduce((all, step) => all + this.ofStep(step, depth), sum), 0);
  }

  /** The first call that alone is too many. */
  culprit(lines: readonly ast.StepLine[]): ast.Call | null {
    for (const step of lines.flatMap(({ steps }) => steps)) {
      const found =
        step.$type === 'OnlySteps'
          ? this.culprit(step.lines)
          : step.$type === 'Call' && this.ofStep(step, 0) > mostSteps
            ? step
            : null;
      if (found !== null) return found;
    }
    return null;
  }

  private ofStep(step: ast.Step, depth: number): number {
    if (step.$type === 'OnlySteps') return this.count(step.lines, depth);
    const sequence = step.$type === 'Call' ? this.sequences.get(step.name.name) : undefined;
    if (sequence === undefined) return 1;
    if (depth >= deepest) return Number.POSITIVE_INFINITY;
    let count = this.known.get(sequence);
    if (count === undefined) {
      // One that calls itself is counted once; it is reported where it is written out.
      this.known.set(sequence, 0);
      count = 1 + this.count(sequence.lines, depth + 1);
      this.known.set(sequence, count);
    }
    return count;
  }
}

import type * as ast from '../syntax/generated/ast.ts';
import type { Sequences } from './scope.ts';

/** Most steps that a procedure may have with its sequences written out. */
export const mostSteps = 20_000;
/** The deepest nesting of sequences. */
const deepest = 50;

/** What lines have, with those inside `only`. */
interface LinesOutline {
  /** Statements that are no call. */
  readonly plain: number;
  readonly calls: readonly ast.Call[];
  readonly tests: readonly ast.TestStep[];
}

/** Lines do not change: an edit makes others of them. */
const outlines = new WeakMap<readonly ast.StepLine[], LinesOutline>();

export function outlineOf(lines: readonly ast.StepLine[]): LinesOutline {
  const known = outlines.get(lines);
  if (known !== undefined) return known;
  const calls: ast.Call[] = [];
  const tests: ast.TestStep[] = [];
  let plain = 0;
  const read = (some: readonly ast.StepLine[]) => {
    for (const { steps } of some)
      for (const step of steps) {
        if (step.$type === 'OnlySteps') read(step.lines);
        else if (step.$type === 'Call') calls.push(step);
        else {
          plain++;
          if (step.$type === 'TestStep') tests.push(step);
        }
      }
  };
  read(lines);
  const outline = { plain, calls, tests };
  outlines.set(lines, outline);
  return outline;
}

/** How many steps lines have with all calls written out; infinite where calls go too deep. Counted, not written out. */
export class ExpansionSize {
  private readonly known = new Map<ast.Sequence, number>();
  private readonly sequences: Sequences;

  constructor(sequences: Sequences) {
    this.sequences = sequences;
  }

  /** @param depth how many sequences these lines are nested in */
  count(lines: readonly ast.StepLine[], depth = 0): number {
    const { plain, calls } = outlineOf(lines);
    return calls.reduce((sum, call) => sum + this.ofCall(call, depth), plain);
  }

  /** The first call that alone is too many. */
  culprit(lines: readonly ast.StepLine[]): ast.Call | null {
    return outlineOf(lines).calls.find((call) => this.ofCall(call, 0) > mostSteps) ?? null;
  }

  private ofCall(call: ast.Call, depth: number): number {
    const sequence = this.sequences.get(call.name.name);
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

/** Fixes of one step: another before or after it, or a clause at its end. */

import type { Fix } from '../model/diagnostic.ts';
import type { Step } from '../model/procedure.ts';
import type { Shop } from '../model/shop.ts';
import type { Source } from '../model/source.ts';
import { type Said, say } from '../say/say.ts';
import { behind, blank, stepAfter, stepBefore } from './edits.ts';

/** What is to be written, and where. */
export interface StepFix {
  readonly source: Source;
  readonly text: string;
  readonly where: 'before' | 'after' | 'at its end';
  /** It is the only way, with nothing that the author has not said. */
  readonly safe?: true;
}

/** A step that is missing before another. None where that is written in a sequence: other calls would get it too. */
export function missingBefore(step: Step, text: string): StepFix | undefined {
  return step.call === null ? { source: step.source, text, where: 'before' } : undefined;
}

/** A step that is missing after another. */
export function missingAfter(step: Step, text: string): StepFix | undefined {
  return step.call === null ? { source: step.source, text, where: 'after' } : undefined;
}

/** A clause that a step lacks. */
export function missingClause(step: Step, text: string): StepFix | undefined {
  return step.call === null ? { source: step.source, text, where: 'at its end' } : undefined;
}

export function fixStep({ source, text, where, safe }: StepFix): Fix<Said> {
  const shown = text.replaceAll(blank, '"…"');
  switch (where) {
    case 'before':
      return { title: say`Write “${shown}” before it`, safe: safe ?? false, edits: [stepBefore(source, text)] };
    case 'after':
      return { title: say`Write “${shown}” after it`, safe: safe ?? false, edits: [stepAfter(source, text)] };
    case 'at its end':
      return {
        title: text === blank ? say`Write it in quotes` : say`Write “${shown}”`,
        safe: safe ?? false,
        edits: [behind(source, ` ${text}`)],
      };
  }
}

/** Several that belong together; null: none can be written. */
export function fixSteps(steps: readonly StepFix[]): Fix<Said> | null {
  const [first, ...others] = steps.map(fixStep);
  return first === undefined ? null : { ...first, edits: [first, ...others].flatMap(({ edits }) => edits) };
}

/** The test oil of a shop that has one. */
export function onlyTestOil({ fluids }: Shop): string | null {
  const oils = fluids.filter(({ kind }) => kind === 'test-oil');
  return oils.length === 1 ? oils[0]!.name : null;
}

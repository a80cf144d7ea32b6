/** Fixes of one step, or of one declaration: another before or after it, a clause at its end, or words in its place. */

import type { FlowAnalysis } from '../analysis/flow-analysis.ts';
import { usualTorques } from '../analysis/usual-torques.ts';
import type { Fix } from '../model/diagnostic.ts';
import type { Procedure, Step } from '../model/procedure.ts';
import type { Shop } from '../model/shop.ts';
import type { Source } from '../model/source.ts';
import { type Said, say } from '../say/say.ts';
import { behind, blank, stepAfter, stepBefore } from './edits.ts';

/** What is to be written, and where. */
export interface StepFix {
  readonly source: Source;
  readonly text: string;
  /** A declaration is known by its name: what is at its end goes behind all that follows the name. */
  readonly where: 'before' | 'after' | 'at its end' | 'in its declaration' | 'after its declaration' | 'instead';
  /** Number of the step that it goes before or after, where that is not the one that is reported. */
  readonly step?: string;
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

/** Blanks that words go into: names and figures have no quotes. */
const words = new RegExp(`(?<!(?:\\b(?:to|fail|hold|most|on|holds|meets|connect|by) |[±(]))${blank}`, 'gu');

export function fixStep({ source, text, where, step, safe }: StepFix): Fix<Said> {
  const it = step === undefined ? say`it` : say`step ${step}`;
  const shown = text.replace(words, '"…"');
  switch (where) {
    case 'before':
      return { title: say`Write “${shown}” before ${it}`, safe: safe ?? false, edits: [stepBefore(source, text)] };
    case 'after':
      return { title: say`Write “${shown}” after ${it}`, safe: safe ?? false, edits: [stepAfter(source, text)] };
    case 'at its end':
      return {
        title: text === blank ? say`Write it in quotes` : say`Write “${shown}”`,
        safe: safe ?? false,
        edits: [behind(source, ` ${text}`)],
      };
    case 'in its declaration':
      return {
        title: say`Write “${shown}” where it is declared`,
        safe: safe ?? false,
        edits: [{ source, text: ` ${text}`, endsStatement: true }],
      };
    case 'after its declaration':
      return {
        title: say`Write “${shown}” where it is declared`,
        safe: safe ?? false,
        edits: [{ source, text: `\n${text}`, endsStatement: true }],
      };
    case 'instead':
      return {
        title: text === '' ? say`Delete it` : say`Write “${shown}” instead`,
        safe: safe ?? false,
        edits: [{ source, text }],
      };
  }
}

/** A step that is missing before another than the one that is reported. */
export function missingBeforeStep(step: Step, text: string): StepFix | undefined {
  const fix = missingBefore(step, text);
  return fix && { ...fix, step: step.number };
}

/** The same, after it. */
export function missingAfterStep(step: Step, text: string): StepFix | undefined {
  const fix = missingAfter(step, text);
  return fix && { ...fix, step: step.number };
}

/** The torque that a joint lacks, after the step that ran it down; in a sequence for all that call it. */
export function missingTorque({ graph }: FlowAnalysis, since: number, joint: string): StepFix | undefined {
  const ran = graph.nodes[since];
  if (ran?.kind !== 'step' || ran.step.verb !== 'run-down') return undefined;
  const { number, call, source } = ran.step;
  return { source: call?.source ?? source, text: torqueStep(graph.procedure, joint), where: 'after', step: number };
}

/** As the joint is torqued elsewhere. */
function torqueStep(procedure: Procedure, joint: string): string {
  const torques = [...procedure.stages, ...procedure.repairs].flatMap(({ steps }) =>
    steps.flatMap((step) =>
      step.verb === 'torque' && step.objects.some(({ name }) => name === joint) ? step.tools : [],
    ),
  );
  const named = torques.find((tool) => tool.form === 'asset');
  return `torque ${joint} to ${usualTorques(procedure, [joint])[0] ?? blank} with ${named?.name ?? blank}`;
}

/** A clause that a declaration lacks. @param source its name */
export function declared(source: Source, text: string): StepFix {
  return { source, text, where: 'in its declaration' };
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

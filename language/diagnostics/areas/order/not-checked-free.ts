import { variantParts } from '../../../analysis/assembly.ts';
import type { PathContext } from '../../../analysis/flow-analysis.ts';
import { flag } from '../../../analysis/locations.ts';
import { partWords } from '../../../analysis/prose.ts';
import { writtenAt } from '../../../analysis/written-at.ts';
import type { Step } from '../../../model/procedure.ts';
import { own } from '../../../model/steps.ts';
import { say } from '../../../say/say.ts';
import { blank } from '../../edits.ts';
import type { Rule } from '../../rule.ts';
import { fixStep, missingAfter, type StepFix } from '../../step-fixes.ts';

/** A part that must move freely is not checked for that after the last joint over it was tightened. */
export const notCheckedFree: Rule<StepFix> = {
  code: 'not-checked-free',
  severity: 'error',
  since: '0.2.0',
  title: 'A part that must move freely is not checked for that after the last joint over it was tightened.',
  flow: (flow, report) => {
    const { graph, layout, relations } = flow;
    const { procedure } = graph;
    const mine = variantParts(flow);
    const felt = procedure.stages.flatMap((stage) => stage.steps).filter((step) => own(step, 'moves') != null);
    /** A check holds until what it proves through is changed: after a repair it must be made again. */
    const help = (name: string, shut: Step | null, path: PathContext) => {
      const { base, moves } = relations.part(name);
      const check = felt.find((step) => step.objects.some((object) => object.name === name));
      const joint = shut?.objects[0]?.name;
      return path.repair === null || check === undefined || joint === undefined
        ? say`After this, write “check ${base} ${moves!} "…"” with how it should feel.`
        : say`Write “proves through ${joint}” in the check at ${check.number}, so that the unit goes back to it, or check the part here.`;
    };
    return {
      looksAround: true,
      end({ state, path, last, block }) {
        for (const [name, cell] of layout.moved) {
          if (!mine(name) || !state.may(cell, flag.no) || !state.mayBeIn(name)) continue;
          const over = [name, ...relations.closedBy(name).map((joint) => joint.part)];
          // Parts that a partial job does not touch move as they did when the unit came in.
          const since = Math.max(
            state.since(state.part(name).place),
            ...over.flatMap((joint) => layout.joints.get(joint) ?? []).map((joint) => state.since(joint)),
          );
          if (since < 0) continue;
          const shut = graph.nodes[since];
          const at = shut?.kind === 'step' ? shut.step : (last ?? block.source);
          const part = relations.part(name);
          report({
            at,
            path,
            allow: part.allow,
            rootCause: `moves:${name}:${'verb' in at ? writtenAt(at) : since}`,
            message: say`The ${partWords(procedure, name)} must move freely, but no step after this checks whether it does.`,
            why: say`a tightened joint can bind it, and then it sticks on the engine.`,
            data:
              'verb' in at && path.repair === null
                ? missingAfter(at, `check ${part.base} ${part.moves} ${blank}`)
                : undefined,
            help: help(name, shut?.kind === 'step' ? shut.step : null, path),
          });
        }
      },
    };
  },
  fix: fixStep,
};

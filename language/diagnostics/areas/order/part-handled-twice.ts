import { inPlaceCause } from '../../../analysis/assembly.ts';
import { joint, place } from '../../../analysis/locations.ts';
import { bareFaces } from '../../../analysis/openings.ts';
import { partsWords } from '../../../analysis/prose.ts';
import { namedIn } from '../../../model/steps.ts';
import { say } from '../../../say/say.ts';
import { on, type Rule } from '../../rule.ts';

/** Taken off while it is off, fitted while it is in place, or run down while it is torqued. */
export const partHandledTwice: Rule = {
  code: 'part-handled-twice',
  severity: 'error',
  since: '0.1.0',
  title: 'A part is taken off or fitted a second time with nothing in between.',
  flow: (flow, report) => ({
    step: on(['slacken', 'remove', 'discard', 'fit', 'run-down'], ({ step, before, path, at }) => {
      const { graph, layout, relations } = flow;
      const off = step.verb === 'remove' || step.verb === 'discard';
      const objects = namedIn(step);
      const twice = objects.filter((object) => {
        const cells = before.part(object.name);
        const cell = layout.joints.get(object.name);
        if (step.verb === 'slacken') return !before.mustBeIn(object.name);
        if (step.verb === 'run-down')
          return (
            cell !== undefined &&
            before.may(cell, joint.torqued | joint.locked | joint.run) &&
            before.mayBeIn(object.name)
          );
        if (!off) return before.may(cells.place, place.in);
        return (
          before.may(cells.place, place.gone | (step.verb === 'remove' ? place.off : 0)) ||
          (before.may(cells.place, place.sub) && carrierGoes(object.name))
        );
      });
      const [first] = twice;
      if (first === undefined) return;
      const since = before.since(
        step.verb === 'run-down' ? layout.joints.get(first.name)! : before.part(first.name).place,
      );
      const already =
        step.verb === 'run-down' ? say`tight or run down` : off || step.verb === 'slacken' ? say`off` : say`in place`;
      report({
        at: step,
        source: first.source,
        path,
        since,
        // A guard that was never put on is reported where its face is bare.
        rootCause:
          bareFaces(flow, before).find(({ face }) => off && face.guardedBy === first.name)?.cause ??
          // Fitted while it is on: the mistake is the step that should have taken it off.
          (step.verb === 'fit' ? inPlaceCause(relations, before, first.name) : null) ??
          // Run down while it is tight: what is loose afterwards is the same mistake.
          (step.verb === 'run-down' ? `loose:${first.name}:${at}` : `twice:${step.number}`),
        message: say`The ${partsWords(
          graph.procedure,
          twice.map((object) => object.name),
        )} ${twice.length > 1 ? say`are` : say`is`} already ${already}.`,
        why: say`the bench hand looks for what is not there, and wonders which step was left out.`,
        help: say`${step.verb === 'run-down' ? say`Slacken it first` : say`Delete this`}, or add the missing step in between.`,
      });

      /** A part in its sub-assembly is taken out of it by name, unless the whole sub-assembly is taken off again. */
      function carrierGoes(name: string): boolean {
        return step.objects.some((other) => other.name !== name && relations.part(name).in.includes(other.name));
      }
    }),
  }),
};

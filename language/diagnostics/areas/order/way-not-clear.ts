import { builtUpsideDown } from '../../../analysis/assembly.ts';
import { guard, place } from '../../../analysis/locations.ts';
import { saidBetween } from '../../../analysis/order.ts';
import { capital, faceWords, partsWords, partWords } from '../../../analysis/prose.ts';
import { restsOn } from '../../../analysis/relations.ts';
import { namedIn } from '../../../model/steps.ts';
import { say } from '../../../say/say.ts';
import { blank } from '../../edits.ts';
import { on, type Rule } from '../../rule.ts';
import { saidLine } from '../../said-line.ts';
import { fixStep, missingBefore, type StepFix } from '../../step-fixes.ts';

/** Fitted under something that is already on: a closed joint, the part that its stack presses on, a guard. */
export const wayNotClear: Rule<StepFix> = {
  code: 'way-not-clear',
  severity: 'error',
  since: '0.1.0',
  title: 'A part is fitted where something that is already on is in the way.',
  flow: ({ graph, layout, relations }, report) => ({
    step: on(['fit', 'run-down'], ({ step, block, before, path }) => {
      /** A needle in a nozzle that is off blocks nothing: both are in the hand. */
      const isHeldUp = (part: string) => restsOn(relations.part(part)).every((under) => before.mayBeIn(under));
      if (builtUpsideDown(block, step, relations)) return;
      const { procedure } = graph;
      const objects = namedIn(step);
      const together = objects.map((object) => object.name);
      for (const object of objects) {
        if (before.mustBeIn(object.name)) continue;
        const over = [
          ...new Set([...relations.bornBy(object.name), ...relations.closedBy(object.name).map((joint) => joint.part)]),
        ];
        const barring = over.filter(
          (other) => !together.includes(other) && before.may(before.part(other).place, place.in) && isHeldUp(other),
        );
        if (barring.length > 0) {
          const since = before.since(before.part(barring[0]!).place);
          report({
            at: step,
            source: object.source,
            path,
            since,
            rootCause: `barred:${barring[0]}:${since}`,
            related: saidLine(saidBetween(relations, barring[0]!, object.name)),
            message: say`The ${partWords(procedure, object.name)} goes under the ${partsWords(procedure, barring)}, which ${barring.length > 1 ? say`are` : say`is`} already on.`,
            why: say`it cannot get past ${barring.length > 1 ? say`them` : say`it`}, and a hand that forces it scores both parts.`,
            help: say`Fit it earlier, or take ${barring.length > 1 ? say`those` : say`that`} off first.`,
          });
        }
        // A guard covers its face and the bore behind it: what its joint closes over does not get past it either.
        const behind = procedure.family.faces.filter(
          (face) => face.guardedBy !== null && relations.closure(face.guardedBy).has(object.name),
        );
        const guarded = new Set([
          ...relations.faces(object.name).flatMap((face) => face.meets ?? []),
          ...behind.map((face) => face.id),
        ]);
        for (const met of guarded) {
          // A part in its own tray is assembled in the hand.
          if (!before.mayBeIn(relations.face(met).part) || !before.may(layout.faces.get(met)!.guard, guard.on))
            continue;
          const since = before.since(layout.faces.get(met)!.guard);
          report({
            at: step,
            source: object.source,
            path,
            since,
            rootCause: `guard-on:${met}:${since}`,
            message: say`${capital(faceWords(procedure, met))} still has its guard on when the ${partWords(procedure, object.name)} goes in.`,
            why: say`the guard is in the way, or is built in.`,
            help: say`Remove the ${partWords(procedure, relations.face(met).guardedBy ?? '')} first.`,
            data: missingBefore(step, `remove ${relations.face(met).guardedBy ?? blank}`),
          });
        }
      }
    }),
  }),
  fix: fixStep,
};

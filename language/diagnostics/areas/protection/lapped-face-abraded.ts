import { guard } from '../../../analysis/locations.ts';
import { partWords } from '../../../analysis/prose.ts';
import type { Step } from '../../../model/procedure.ts';
import { say } from '../../../say/say.ts';
import { on, type Rule } from '../../rule.ts';

/** A lapped, ground or matched part in the hand is itself buffed, blasted or rubbed with grit. Lapping does not count. */
export const lappedFaceAbraded: Rule = {
  code: 'lapped-face-abraded',
  severity: 'error',
  since: '0.2.0',
  title: 'A lapped, ground or matched part is itself buffed, blasted or rubbed with an abrasive.',
  flow: ({ graph, layout, relations }, report) => ({
    step: on(['buff', 'blast', 'wipe'], ({ step, before, path }) => {
      if (!abrades(step)) return;
      for (const object of step.objects) {
        const name = object.kind === 'face' ? relations.face(object.name).part : object.name;
        // Faces of parts that are in place are reported as bare.
        if (!relations.isFine(name) || before.mayBeIn(name)) continue;
        const faces = relations.faces(name).filter((face) => face.finish !== null);
        const covered = faces.every((face) => before.must(layout.faces.get(face.id)!.guard, guard.on));
        if (relations.matches(name).length === 0 && covered) continue;
        report({
          at: step,
          source: object.source,
          path,
          message: say`The ${partWords(graph.procedure, name)} is lapped or matched and is ${step.verb === 'buff' ? say`buffed` : step.verb === 'blast' ? say`blasted` : say`rubbed with grit`}.`,
          why: say`abrasion rounds its edges and ruins the fit, and it leaks.`,
          help: say`Wash and wipe it, or lap it. Or use another part.`,
        });
        return;
      }
    }),
  }),
};

/** Wiping tools that cut. */
const cutting = /emery|abrasive|sand ?paper|steel wool|scotch|grinding|wet-and-dry/iu;

function abrades(step: Step): boolean {
  if (step.verb === 'buff' || step.verb === 'blast') return true;
  return step.verb === 'wipe' && step.tools.some((tool) => tool.form === 'words' && cutting.test(tool.text));
}

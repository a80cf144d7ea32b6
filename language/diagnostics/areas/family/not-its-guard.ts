import { allSteps } from '../../../analysis/locations.ts';
import { capital, faceWords, partsWords, partWords } from '../../../analysis/prose.ts';
import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';
import { declared, fixStep, type StepFix } from '../../step-fixes.ts';

/** A face is guarded with a part that the family does not name as its guard. */
export const notItsGuard: Rule<StepFix> = {
  code: 'not-its-guard',
  severity: 'warning',
  since: '0.2.0',
  title: 'A face is guarded with a part that is not its guard.',
  procedure(procedure, report) {
    for (const step of allSteps(procedure)) {
      if (step.verb !== 'guard' || step.withObjects.length === 0) continue;
      const guards = step.withObjects.map((object) => object.name);
      for (const object of step.objects) {
        const face = procedure.family.faces.find((other) => other.id === object.name);
        if (face === undefined || (face.guardedBy !== null && guards.includes(face.guardedBy))) continue;
        const words = capital(faceWords(procedure, face.id));
        report({
          at: step,
          source: object.source,
          rootCause: `not-its-guard:${face.id}`,
          related: [{ message: say`The face is declared here.`, source: face.source }],
          ...(face.guardedBy === null
            ? {
                message: say`${words} is guarded here, but the family names no guard for it.`,
                why: say`a step that forgets the guard goes unnoticed.`,
                help: say`Write “guarded by ${baseOf(guards[0]!)}” at the face in the family.`,
                data: declared(face.source, `guarded by ${baseOf(guards[0]!)}`),
              }
            : {
                message: say`The guard of ${faceWords(procedure, face.id)} is the ${partWords(procedure, face.guardedBy)}, but this step uses the ${partsWords(procedure, guards)}.`,
                why: say`a part that does not fit the face does not cover it.`,
                help: say`Write “guard ${face.id} with ${baseOf(face.guardedBy)}”, or correct the face in the family.`,
                data:
                  step.call === null && step.withObjects.length === 1
                    ? { source: step.withObjects[0]!.source, text: baseOf(face.guardedBy), where: 'instead' }
                    : undefined,
              }),
        });
      }
    }

    function baseOf(name: string): string {
      return procedure.family.parts.find((part) => part.name === name)?.base ?? name;
    }
  },
  fix: fixStep,
};

import { allSteps } from '../../../analysis/locations.ts';
import { partsWords } from '../../../analysis/prose.ts';
import { Relations, restsOn } from '../../../analysis/relations.ts';
import type { Procedure, Repair, Step } from '../../../model/procedure.ts';
import { type GateStep, isGate, namedIn } from '../../../model/steps.ts';
import { say } from '../../../say/say.ts';

import { type Verb, verbs, verbsThat } from '../../../syntax/verbs/index.ts';
import type { Rule } from '../../rule.ts';

/** Verbs that make something else of a part, or of a joint over it. */
const curing: ReadonlySet<Verb> = new Set<Verb>([
  ...verbsThat('changes'),
  'renew',
  'choose',
  'lap',
  'rinse',
  'oil',
  'set',
  'slacken',
  'discard',
]);

/** A gate sends to a repair that touches nothing of what failed, or a repair does not do what its name says. */
export const repairCannotCure: Rule = {
  code: 'repair-cannot-cure',
  severity: 'error',
  since: '0.2.0',
  title: 'A check sends to a repair that touches nothing of what failed, or a repair does not do what its name says.',
  procedure(procedure, report) {
    const repairs = new Map(procedure.repairs.map((repair) => [repair.name, repair]));
    for (const step of allSteps(procedure)) {
      if (!isGate(step)) continue;
      for (const entry of step.gate.onFail) {
        const repair = repairs.get(entry.repair);
        if (repair === undefined || repair.inline) continue;
        const judged = judgedParts(procedure, step);
        if (judged === null || repair.steps.some((one) => touches(one, judged))) continue;
        report({
          at: step,
          source: entry.source,
          rootCause: `cure:${repair.name}:${step.number}`,
          message: say`This judges the ${partsWords(procedure, objectsOf(step))}, and ${repair.name} touches nothing of ${objectsOf(step).length > 1 ? say`them` : say`it`}.`,
          why: say`the same part comes back to the same check, until the tries are used up.`,
          help: say`Name a repair that renews, laps, cleans or resets ${objectsOf(step).length > 1 ? say`one of them` : say`it`}.`,
          related: [{ message: say`The repair is here.`, source: repair.source }],
        });
      }
    }
    for (const repair of procedure.repairs) {
      const promised = promiseOf(procedure, repair);
      if (promised === null) continue;
      const { verb, names } = promised;
      report({
        at: repair.source,
        allow: repair.allow,
        rootCause: `promise:${repair.name}`,
        message: say`Repair ${repair.name} does not ${verb} the ${partsWords(procedure, names)}.`,
        why: say`whoever is sent here trusts the name, and the unit goes back as it came.`,
        help: say`Write “${verb} ${names.join(', ')}” in it, or give it another name.`,
      });
    }
  },
};

function objectsOf(step: GateStep): string[] {
  return step.objects.filter(({ kind }) => kind === 'part').map(({ name }) => name);
}

/**
 * The parts that a check or a measurement judges, with what is matched to them, balanced with them, in them or around them. Null:
 * a test of the unit, to which anything may be of help, or one of faces or ports.
 */
function judgedParts({ family }: Procedure, step: GateStep): ReadonlySet<string> | null {
  if (step.verb !== 'check' && step.verb !== 'measure') return null;
  const named = objectsOf(step);
  // How freely a part moves, or what is seen under all of it, may depend on any part around it.
  if (
    named.length === 0 ||
    (step.verb === 'check' && (step.moves !== null || step.all)) ||
    step.gate.provesThrough !== null
  )
    return null;
  const relations = Relations.of(family);
  return new Set(
    named.flatMap((name) => [
      name,
      ...relations.matches(name),
      ...relations.part(name).balancedWith,
      ...relations.inside(name).map((one) => one.name),
      ...relations.part(name).in,
      // A shim under what holds it sets its play.
      ...relations.family.parts.filter(({ holds }) => holds.includes(name)).flatMap(restsOn),
    ]),
  );
}

function touches(step: Step, judged: ReadonlySet<string>): boolean {
  // What is done elsewhere, or by somebody else, may be just that.
  if (step.verb === 'send-out' || step.verb === 'hold-for') return true;
  if (isGate(step) && step.gate.onFail.length > 0) return true;
  if (!curing.has(step.verb)) return false;
  return namedIn(step).some(({ kind, name }) => judged.has(kind === 'face' ? name.split('.')[0]! : name));
}

/** `renew-nozzle`, `lap-body`: a verb of the language and a part, where no step does that. Null: nothing is promised, or it is kept. */
function promiseOf({ family }: Procedure, repair: Repair): { verb: Verb; names: readonly string[] } | null {
  if (repair.inline) return null;
  const verb = verbs.find((one) => repair.name.startsWith(`${one}-`));
  if (verb === undefined) return null;
  const rest = repair.name.slice(verb.length + 1);
  const parts = family.parts.filter(
    ({ name, base }) => base === rest || name === rest || base === rest.replace(/s$/u, ''),
  );
  if (parts.length === 0) return null;
  const names = parts.map(({ name }) => name);
  const kept = repair.steps.some(
    (step) =>
      (step.verb === verb || (verb === 'renew' && (step.verb === 'discard' || step.verb === 'choose'))) &&
      namedIn(step).some(({ kind, name }) => names.includes(kind === 'face' ? name.split('.')[0]! : name)),
  );
  return kept ? null : { verb, names: [...new Set(parts.map(({ base }) => base))] };
}

import { allSteps, adjuster as setting } from '../../../analysis/locations.ts';
import { partsWords, partWords } from '../../../analysis/prose.ts';
import { type Relations, restsOn } from '../../../analysis/relations.ts';
import { writtenAt } from '../../../analysis/written-at.ts';
import type { Source } from '../../../model/source.ts';
import { say } from '../../../say/say.ts';
import { stepBefore } from '../../edits.ts';
import { on, type Rule } from '../../rule.ts';

/**
 * A joint is slackened or torqued while an adjuster still loads, through its spring, what the joint closes over. An
 * adjuster that is only fitted, and not set, has no load yet.
 */
export const springNotBackedOff: Rule<{ backOff: string; source: Source }> = {
  code: 'spring-not-backed-off',
  severity: 'error',
  since: '0.2.0',
  title: 'A joint is slackened or torqued against a spring that its adjuster still loads.',
  flow: ({ graph, layout, relations }, report) => {
    const { procedure } = graph;
    const springs = procedure.family.adjusters.map((one) => springOf(one.part, relations));
    /** Loads that were reported when the joint was slackened: torquing it again under them is the same mistake. */
    const told = new Set<string>();
    /** Once backed off, it has to be set again: where no step does that, it has to be written too. */
    const isSet = (adjuster: string) =>
      allSteps(procedure).some(({ verb, objects }) => verb === 'set' && objects.some(({ name }) => name === adjuster));
    return {
      looksAround: true,
      step: on(['slacken', 'torque'], ({ step, before, path }) => {
        for (const object of step.objects) {
          const closure = relations.closure(object.name);
          for (const { adjuster, chain, loads } of springs) {
            const cell = layout.adjusters.get(adjuster)!;
            const pressed = loads.filter((part) => closure.has(part));
            if (pressed.length === 0 || closure.has(adjuster) || chain.has(object.name)) continue;
            if (!before.may(cell, setting.found | setting.set | setting.locked)) continue;
            if (![...chain, object.name].every((part) => before.mayBeIn(part))) continue;
            const since = before.since(cell);
            const load = `${adjuster}:${since}`;
            if (step.verb === 'slacken') told.add(load);
            else if (told.has(load)) continue;
            report({
              at: step,
              source: object.source,
              path,
              since,
              rootCause: `load:${adjuster}:${writtenAt(step)}`,
              message: say`The ${partWords(procedure, adjuster)} still loads the ${partsWords(procedure, pressed)} when the ${partWords(procedure, object.name)} is ${step.verb === 'slacken' ? say`slackened` : say`torqued`}.`,
              why: say`${step.verb === 'slacken' ? say`the spring pushes it aside down to the last thread` : say`it cannot sit square under that load while the joint is tightened`}, and it bends.`,
              help: say`Write “back-off ${relations.part(adjuster).base}” before this step.`,
              data:
                step.call === null && isSet(adjuster)
                  ? { backOff: `back-off ${relations.part(adjuster).base}`, source: step.source }
                  : undefined,
            });
          }
        }
      }),
    };
  },
  fix({ backOff, source }) {
    return { title: say`Back the adjuster off first`, safe: true, edits: [stepBefore(source, backOff)] };
  },
};

/** What depends on an adjuster: its spring, what that rests on and what rests on it, and the parts that these load. */
function springOf(adjuster: string, relations: Relations) {
  const chain = new Set<string>();
  const down = (name: string) => {
    const part = relations.part(name);
    // The body carries the spring; it is not part of the chain.
    if (chain.has(name) || (restsOn(part).length === 0 && name !== adjuster)) return;
    chain.add(name);
    for (const under of [...restsOn(part), ...part.holds]) down(under);
  };
  const up = (name: string) => {
    for (const other of relations.onIt(name)) {
      if (chain.has(other.name) || relations.joint(other.name) !== undefined) continue;
      chain.add(other.name);
      up(other.name);
    }
  };
  down(adjuster);
  up(adjuster);
  return { adjuster, chain, loads: [...chain].flatMap((name) => relations.part(name).bearsOn) };
}

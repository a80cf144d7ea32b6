import { reading } from '../../../analysis/locations.ts';
import { either } from '../../../analysis/prose.ts';
import { stageSteps } from '../../../analysis/stages.ts';
import type { AbstractState } from '../../../analysis/state.ts';
import type { Step } from '../../../model/procedure.ts';
import { isTestOf, testGateId } from '../../../model/steps.ts';
import { type Said, say, term } from '../../../say/say.ts';
import { nearest } from '../../../syntax/nearest.ts';
import { on, type Rule } from '../../rule.ts';

/** A step uses a reading that no step before it has taken on this build. */
export const readingNotTakenYet: Rule = {
  code: 'reading-not-taken-yet',
  severity: 'error',
  since: '0.2.0',
  title: 'A step uses a reading that was not taken before it.',
  flow: ({ graph, layout }, report) => {
    const { procedure } = graph;
    const steps = stageSteps(graph);
    /** gate-missing reports it. */
    const missing = (name: string) =>
      [...procedure.family.provenBy, ...procedure.family.provenAcrossSet].some((proof) => proof.name === name) &&
      !steps.some(({ step }) => isTestOf(step, name));
    const asFound = (name: string, at: number) =>
      steps.some((one) => one.step.verb === 'read' && one.step.asFound && one.step.reading === name && one.at < at);
    /** A reading that is no gate's. A test that is no longer proven is reported as stale, with what used its reading. */
    const old = (state: AbstractState, name: string) =>
      state.may(layout.readings.get(name)!, reading.old) &&
      !layout.gates.has(testGateId('test', name)) &&
      !layout.gates.has(testGateId('set', name));
    /** On the path of a repair it may be another mistake at the same place. */
    const told = new Set<Step>();
    return {
      looksAround: true,
      step: on(['test', 'choose', 'across'], ({ step, before, path, at }) => {
        const use = useOf(step);
        if (use === null || missing(use.name) || told.has(step)) return;
        const { name, what } = use;
        const cell = layout.readings.get(name);
        if (cell === undefined) {
          // `below reading` is the last reading; a spec's own figure is known from the start.
          if (name === 'reading' || procedure.specs.some((spec) => spec.name === name)) return;
          const near = nearest(name, [...layout.readings.keys()]);
          report({
            at: step,
            message: say`${what} ${name}, but no step takes a reading of that name.`,
            why: say`the bench hand has no figure to use.`,
            help: near.length > 0 ? say`Did you mean ${either(near)}?` : say`Name the test that takes the reading.`,
          });
          return;
        }
        if (before.may(cell, reading.none) && !(step.verb === 'choose' && asFound(name, at))) {
          told.add(step);
          report({
            at: step,
            path,
            rootCause: `reading:${name}`,
            message: say`${what} ${name}, but ${name} has not been read by then.`,
            why: say`the bench hand has no figure to use, or uses an old one.`,
            help: say`Read or test ${name} first.`,
          });
        } else if (step.verb !== 'choose' && old(before, name)) {
          const since = before.since(cell);
          told.add(step);
          report({
            at: step,
            path,
            since,
            rootCause: `stale:${since}`,
            message: say`${what} ${name}, but the unit was opened after ${name} was read.`,
            why: say`the figure belongs to an earlier build.`,
            help: say`Read or test ${name} again first.`,
          });
        }
      }),
    };
  },
};

/** The reading that a step uses, and the words for it. After a fail `choose` uses the reading that failed: an old one. */
function useOf(step: Step): { name: string; what: Said } | null {
  switch (step.verb) {
    case 'test': {
      const { hold } = step.test;
      return hold?.of == null ? null : { name: hold.of, what: say`The pressure is held ${term(hold.relation)}` };
    }
    case 'choose':
      return step.choose === null ? null : { name: step.choose.test, what: say`The part is chosen by` };
    case 'across':
      return step.spread === null ? null : { name: step.gate.test, what: say`The spread is that of` };
    default:
      return null;
  }
}

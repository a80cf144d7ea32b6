import { partsWords, partsWritten } from '../../../analysis/prose.ts';
import { say } from '../../../say/say.ts';
import { on, type Rule } from '../../rule.ts';

/** The unit is clamped by one part and unclamped by another. */
export const unclampedAnother: Rule = {
  code: 'unclamped-another',
  severity: 'warning',
  since: '0.2.0',
  title: 'The unit is clamped by one part and unclamped by another.',
  flow: ({ graph, layout }, report) => ({
    looksAround: true,
    step: on(['unclamp'], ({ step, before, path }) => {
      const since = before.since(layout.unit.clamped);
      const clamped = graph.nodes[since];
      if (clamped?.kind !== 'step' || clamped.step.verb !== 'clamp') return;
      const held = clamped.step.objects.map(({ name }) => name);
      const other = step.objects.filter(({ name }) => !held.includes(name));
      const [first] = other;
      if (first === undefined) return;
      const words = (names: readonly string[]) => partsWords(graph.procedure, names);
      report({
        at: step,
        source: first.source,
        path,
        since,
        rootCause: `unclamped:${step.number}`,
        message: say`The ${words(held)} ${held.length > 1 ? say`were` : say`was`} clamped at ${clamped.step.number}, and the ${words(other.map(({ name }) => name))} ${other.length > 1 ? say`are` : say`is`} unclamped here.`,
        why: say`the hand looks for a second vise, and what is really clamped goes on in it.`,
        help: say`Write “unclamp ${partsWritten(graph.procedure, held)}”, or clamp what is to be held.`,
      });
    }),
  }),
};

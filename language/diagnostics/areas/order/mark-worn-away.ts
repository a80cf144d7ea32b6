import { allSteps, flag } from '../../../analysis/locations.ts';
import { partWords } from '../../../analysis/prose.ts';
import { say } from '../../../say/say.ts';
import { on, type Rule } from '../../rule.ts';

/** A part is blasted or buffed after it was marked. */
export const markWornAway: Rule = {
  code: 'mark-worn-away',
  severity: 'warning',
  since: '0.2.0',
  title: 'A part is blasted or buffed after it was marked.',
  flow: ({ graph, layout }, report) => {
    const marked = new Set(
      allSteps(graph.procedure).flatMap((step) => (step.verb === 'mark' ? step.objects.map(({ name }) => name) : [])),
    );
    return {
      looksAround: true,
      step: on(['blast', 'buff'], ({ step, before, path }) => {
        const { marked: cell } = layout.unit;
        if (!before.may(cell, flag.yes)) return;
        const object = step.objects.find(({ name }) => marked.has(name));
        if (object === undefined) return;
        report({
          at: step,
          source: object.source,
          path,
          since: before.since(cell),
          rootCause: `worn:${object.name}:${step.number}`,
          message: say`The ${partWords(graph.procedure, object.name)} is ${step.verb === 'buff' ? say`buffed` : say`blasted`} after it was marked.`,
          why: say`the wheel takes the mark off or makes it unreadable, and the unit cannot be led back to its job.`,
          help: say`Mark it after this step.`,
        });
      }),
    };
  },
};

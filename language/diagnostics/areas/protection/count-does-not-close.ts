import { place, port } from '../../../analysis/locations.ts';
import { listed, partsWords, partWords } from '../../../analysis/prose.ts';
import { closesUp, namedIn } from '../../../model/steps.ts';
import { say } from '../../../say/say.ts';
import { on, type Rule } from '../../rule.ts';
import { fixStep, missingBefore, type StepFix } from '../../step-fixes.ts';

/** A cap is still in when the part that covers its port goes on, or a joint is torqued over parts put in for trial. */
export const countDoesNotClose: Rule<StepFix> = {
  code: 'count-does-not-close',
  severity: 'error',
  since: '0.2.0',
  title: 'A cap, or a part that was put in for trial only, is closed up in the unit.',
  flow: ({ graph, layout, relations }, report) => {
    /** Caps that a wash went over, by port and since when: they are reported there. */
    const washedOver = new Set<string>();
    return {
      looksAround: true,
      step: on(['wash', 'soak', 'fit', 'run-down', 'torque', 'lock'], ({ step, before, path }) => {
        const { procedure } = graph;
        const cap = (name: string) => `${name}:${before.since(layout.ports.get(name)!)}`;
        if (step.verb === 'wash' || step.verb === 'soak')
          for (const one of step.objects.flatMap(({ name }) => relations.ports(name)))
            if (before.may(layout.ports.get(one.name)!, port.capped)) washedOver.add(cap(one.name));
        if (closesUp(step)) {
          const objects = namedIn(step);
          const isIn = (part: string) => before.mayBeIn(part) || objects.some(({ name }) => name === part);
          for (const object of objects) {
            const shut = procedure.family.ports.filter(
              (one) =>
                one.under === object.name &&
                isIn(one.part) &&
                !before.mustBeIn(object.name) &&
                before.may(layout.ports.get(one.name)!, port.capped) &&
                !washedOver.has(cap(one.name)),
            );
            if (shut.length === 0) continue;
            const names = shut.map((one) => one.name);
            const since = before.since(layout.ports.get(names[0]!)!);
            report({
              at: step,
              source: object.source,
              path,
              since,
              rootCause: `capped:${since}`,
              message: say`The cap is still in ${names.length > 1 ? say`ports` : say`port`} ${listed(names)} when the ${partWords(procedure, object.name)} goes over ${names.length > 1 ? say`them` : say`it`}.`,
              why: say`it stays in the unit and blocks the passage.`,
              help: say`Write “uncap ${names.join(', ')}” before this step, and count the caps.`,
              data: missingBefore(step, `uncap ${names.join(', ')}`),
            });
          }
        }
        if (step.verb !== 'torque' && step.verb !== 'lock') return;
        for (const object of step.objects) {
          const tried = [...relations.closure(object.name)].filter((part) =>
            before.may(before.part(part).place, place.trial),
          );
          const [first] = tried;
          if (first === undefined) continue;
          const since = before.since(before.part(first).place);
          report({
            at: step,
            source: object.source,
            path,
            since,
            rootCause: `missing:${first}:${since}`,
            message: say`The ${partsWords(procedure, tried)} inside ${tried.length > 1 ? say`are` : say`is`} in place for trial only when the joint over it (${partWords(procedure, object.name)}) is tightened.`,
            why: say`a part that was only put in to try would be shipped.`,
            help: say`Remove ${tried.length > 1 ? say`them` : say`it`} and fit ${tried.length > 1 ? say`them` : say`it`} for good first.`,
          });
        }
      }),
    };
  },
  fix: fixStep,
};

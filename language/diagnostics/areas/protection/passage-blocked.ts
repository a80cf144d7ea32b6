import { isHydraulic, isPneumatic } from '../../../analysis/hydraulic.ts';
import { port } from '../../../analysis/locations.ts';
import { portExposed } from '../../../analysis/openings.ts';
import { listed, partsWords } from '../../../analysis/prose.ts';
import { type Said, say } from '../../../say/say.ts';
import { on, type Rule } from '../../rule.ts';
import { fixStep, missingBefore, type StepFix } from '../../step-fixes.ts';

/** Washed, primed, tested or connected with a port capped. */
export const passageBlocked: Rule<StepFix> = {
  code: 'passage-blocked',
  severity: 'error',
  since: '0.1.0',
  title: 'A part is washed, or the unit is primed, tested or connected, while one of its ports is capped.',
  flow: ({ graph, layout, relations }, report) => {
    /** Reported caps, by port and since when; and ports reported on the first path, which no later path reports again. */
    const told = new Set<string>();
    return {
      looksAround: true,
      step: on(['connect', 'prime', 'test', 'read', 'set', 'wash', 'soak'], ({ step, before, path }) => {
        const { procedure } = graph;
        const cap = (name: string) => `${name}:${before.since(layout.ports.get(name)!)}`;
        const capped = (names: readonly string[]) =>
          names.filter(
            (name) =>
              before.may(layout.ports.get(name)!, port.capped) &&
              !told.has(cap(name)) &&
              !(path.repair !== null && told.has(name)),
          );
        const tell = (names: readonly string[], doing: Said, why: Said) => {
          if (names.length === 0) return;
          for (const name of names) told.add(cap(name)).add(path.repair === null ? name : cap(name));
          const since = before.since(layout.ports.get(names[0]!)!);
          report({
            at: step,
            path,
            since,
            rootCause: `capped:${since}`,
            message: say`${names.length > 1 ? say`Ports` : say`Port`} ${listed(names)} ${names.length > 1 ? say`are` : say`is`} still capped when ${doing}.`,
            why: say`${why}.`,
            help: say`Write “uncap ${names.join(', ')}” before this step.`,
            data: missingBefore(step, `uncap ${names.join(', ')}`),
          });
        };
        if (step.verb === 'connect')
          tell(
            capped(step.objects.map((object) => object.name)),
            say`it is connected`,
            say`the line cannot go on over a cap`,
          );
        // For a test with air, as under water, the other ports must be shut.
        if (isHydraulic(step, procedure) && !isPneumatic(step)) {
          const exposed = procedure.family.ports.filter((one) => portExposed(before, one)).map((one) => one.name);
          tell(
            capped(exposed),
            say`the unit works under pressure`,
            say`the fluid cannot get out, and the reading does not show what the unit does`,
          );
        }
        if (step.verb === 'wash' || step.verb === 'soak') {
          const owners = step.objects.filter(
            ({ name }) => capped(relations.ports(name).map((one) => one.name)).length > 0,
          );
          tell(
            capped(owners.flatMap(({ name }) => relations.ports(name).map((one) => one.name))),
            say`the ${partsWords(
              procedure,
              owners.map(({ name }) => name),
            )} ${owners.length > 1 ? say`are` : say`is`} washed`,
            say`the dirt stays in the passage`,
          );
        }
      }),
    };
  },
  fix: fixStep,
};

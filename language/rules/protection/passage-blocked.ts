import { port } from '../../replay/cells.ts';
import { isHydraulic } from '../../replay/hydraulic.ts';
import { portExposed } from '../port-exposed.ts';
import type { Rule } from '../rule.ts';
import { listed, partWords } from '../words.ts';

/** Washed, primed, tested or connected with a port capped. */
export const passageBlocked: Rule = {
  code: 'passage-blocked',
  severity: 'error',
  title: 'A part is washed, or the unit is primed, tested or connected, with a passage of it capped.',
  replay: ({ program, layout, relations }, report) => ({
    step({ step, before, way }) {
      const { procedure } = program;
      const capped = (names: readonly string[]) =>
        names.filter((name) => before.may(layout.ports.get(name)!, port.capped));
      const tell = (names: readonly string[], doing: string, why: string) => {
        if (names.length === 0) return;
        const since = before.since[layout.ports.get(names[0]!)!];
        report({
          at: step,
          way,
          since,
          cause: `capped:${since}`,
          message: `${names.length > 1 ? 'Ports' : 'Port'} ${listed(names)} ${names.length > 1 ? 'are' : 'is'} still capped when ${doing}: ${why}. Write “uncap ${names.join(', ')}” before.`,
        });
      };
      if (step.verb === 'connect')
        tell(
          capped(step.objects.map((object) => object.name)),
          'it is connected',
          'the line does not go on over a cap',
        );
      if (step.verb === 'prime' || isHydraulic(step, procedure)) {
        const exposed = procedure.family.ports.filter((one) => portExposed(before, one)).map((one) => one.name);
        tell(
          capped(exposed),
          'the unit works under pressure',
          'the fluid cannot get out, and what is read is not what the unit does',
        );
      }
      if (step.verb === 'wash' || step.verb === 'soak') {
        for (const object of step.objects) {
          tell(
            capped(relations.ports(object.name).map((one) => one.name)),
            `the ${partWords(procedure, object.name)} is washed`,
            'the dirt stays in the passage',
          );
        }
      }
    },
  }),
};

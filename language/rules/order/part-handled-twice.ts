import { joint, place } from '../../replay/cells.ts';
import type { Rule } from '../rule.ts';
import { partWords } from '../words.ts';

/** Taken off when it is off, fitted when it is in place, or run down when it is torqued. */
export const partHandledTwice: Rule = {
  code: 'part-handled-twice',
  severity: 'error',
  title: 'A part is taken off or fitted a second time with nothing in between.',
  replay: ({ program, layout, relations }, report) => ({
    step({ step, before, way }) {
      if (!['remove', 'discard', 'fit', 'run-down'].includes(step.verb)) return;
      const off = step.verb === 'remove' || step.verb === 'discard';
      for (const object of [...step.objects, ...step.withObjects]) {
        const cells = before.part(object.name);
        const jointCell = layout.joints.get(object.name);
        const twice =
          step.verb === 'run-down'
            ? jointCell !== undefined && before.may(jointCell, joint.torqued | joint.locked | joint.run) && before.mayBeIn(object.name)
            : off
              ? before.may(cells.place, place.gone | (step.verb === 'remove' ? place.off : 0)) || (before.may(cells.place, place.sub) && carrierGoes(object.name))
              : before.may(cells.place, place.in);
        if (!twice) continue;
        const since = step.verb === 'run-down' ? before.since[jointCell!] : before.since[cells.place];
        const already = step.verb === 'run-down' ? 'run down' : off ? 'off' : 'in place';
        report({
          at: step,
          source: object.source,
          way,
          since,
          cause: `twice:${object.name}:${since}:${step.number}`,
          message: `The ${partWords(program.procedure, object.name)} is ${already} already. Take this out, or put in the step that is missing between.`,
        });
      }

      /** A part in its sub-assembly is taken out of it by name, unless the whole is taken off again. */
      function carrierGoes(name: string): boolean {
        return step.objects.some((other) => other.name !== name && relations.part(name).in.includes(other.name));
      }
    },
  }),
};

import { isSpoiltBy } from '../../../analysis/films.ts';
import { place } from '../../../analysis/locations.ts';
import { partsWords } from '../../../analysis/prose.ts';
import { writtenAt } from '../../../analysis/written-at.ts';
import { isDissolvedByCaustic } from '../../../model/material.ts';
import { own } from '../../../model/steps.ts';
import { say, term } from '../../../say/say.ts';
import { on, type Rule } from '../../rule.ts';

/** Steps by which a part gets into a fluid. */
const wetting = ['wash', 'soak', 'rinse', 'wipe', 'oil', 'keep', 'remove', 'fit', 'blast'] as const;

/** A part gets into a fluid that the family says it is never to be in. */
export const spoiltByTheBath: Rule = {
  code: 'spoilt-by-the-bath',
  severity: 'error',
  since: '0.2.0',
  unsafe: true,
  title: 'A part gets into a fluid that spoils it.',
  flow: (flow, report) => {
    const { family, shop } = flow.graph.procedure;
    return {
      step: on(wetting, ({ step, before, path }) => {
        const fluid = shop.fluids.find(({ name }) => name === own(step, 'fluid'));
        if (fluid === undefined) return;
        const isAll = own(step, 'all') === true;
        const spoilt = step.objects.filter(({ kind, name }) => {
          const part = kind === 'part' ? family.parts.find((one) => one.name === name) : undefined;
          if (part === undefined || !isSpoiltBy(part, fluid.kind)) return false;
          // What was thrown away is not among all parts.
          return !isAll || before.may(before.part(name).place, ~place.gone);
        });
        const [first] = spoilt;
        if (first === undefined) return;
        const names = spoilt.map(({ name }) => name);
        const bases = [...new Set(family.parts.filter(({ name }) => names.includes(name)).map(({ base }) => base))];
        const dissolved = family.parts.find(
          ({ name, material }) => names.includes(name) && fluid.kind === 'caustic' && isDissolvedByCaustic(material),
        );
        report({
          at: step,
          path,
          source: isAll ? undefined : first.source,
          rootCause: `spoilt:${writtenAt(step)}`,
          message: say`The ${partsWords({ family }, names)} must never get into ${fluid.name} (${term(fluid.kind)}), as the family says.`,
          why:
            dissolved === undefined
              ? say`it swells, corrodes or loses its grease there, and looks no different until it fails.`
              : say`caustic dissolves ${dissolved.material!} and makes hydrogen of it, which a spark explodes.`,
          help: isAll
            ? say`Write “except ${bases.join(', ')}”, and clean ${names.length > 1 ? say`them` : say`it`} another way.`
            : say`Take ${bases.join(', ')} out of this step, and clean ${names.length > 1 ? say`them` : say`it`} another way.`,
        });
      }),
    };
  },
};

import { isSpoiltBy } from '../../../analysis/films.ts';
import { partsWords } from '../../../analysis/prose.ts';
import { writtenAt } from '../../../analysis/written-at.ts';
import { isDissolvedByCaustic } from '../../../model/material.ts';
import { own } from '../../../model/steps.ts';
import { say, term } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** A part gets into a fluid that the family says it is never to be in. */
export const spoiltByTheBath: Rule = {
  code: 'spoilt-by-the-bath',
  severity: 'error',
  since: '0.2.0',
  unsafe: true,
  title: 'A part gets into a fluid that spoils it.',
  eachStep(step, { family, shop }, report) {
    const fluid = shop.fluids.find(({ name }) => name === own(step, 'fluid'));
    if (fluid === undefined) return;
    const spoilt = step.objects.filter(({ kind, name }) => {
      const part = kind === 'part' ? family.parts.find((one) => one.name === name) : undefined;
      return part !== undefined && isSpoiltBy(part, fluid.kind);
    });
    const [first] = spoilt;
    if (first === undefined) return;
    const names = spoilt.map(({ name }) => name);
    const bases = [...new Set(family.parts.filter(({ name }) => names.includes(name)).map(({ base }) => base))];
    const isAll = own(step, 'all') === true;
    const dissolved = family.parts.find(
      ({ name, material }) => names.includes(name) && fluid.kind === 'caustic' && isDissolvedByCaustic(material),
    );
    report({
      at: step,
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
  },
};

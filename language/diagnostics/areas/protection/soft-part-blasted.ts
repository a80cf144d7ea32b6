import { partsWords, partsWritten } from '../../../analysis/prose.ts';
import { isCutByGrit } from '../../../model/material.ts';
import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** A part of rubber, plastic, paper or carbon goes into the blasting cabinet. */
export const softPartBlasted: Rule = {
  code: 'soft-part-blasted',
  severity: 'error',
  since: '0.2.0',
  title: 'A part is blasted that grit cuts away.',
  eachStep(step, { family }, report) {
    if (step.verb !== 'blast') return;
    const soft = family.parts.filter(
      ({ name, material }) => isCutByGrit(material) && step.objects.some((object) => object.name === name),
    );
    if (soft.length === 0) return;
    const names = soft.map(({ name }) => name);
    report({
      at: step,
      source: step.objects.find(({ name }) => names.includes(name))?.source,
      message: say`The ${partsWords({ family }, names)} ${names.length > 1 ? say`are` : say`is`} blasted, and grit cuts ${names.length > 1 ? say`them` : say`it`} away.`,
      why: say`it stays in what is soft, comes out in the running unit and wears it.`,
      help: say`Take ${partsWritten({ family }, names)} out of this step, and clean ${names.length > 1 ? say`them` : say`it`} another way.`,
    });
  },
};

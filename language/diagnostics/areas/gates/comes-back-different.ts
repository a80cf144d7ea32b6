import { gateWords, partsWords } from '../../../analysis/prose.ts';
import { writtenAt } from '../../../analysis/written-at.ts';
import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** A repair ends with something off that was on when the unit was at the test that it goes back to. */
export const comesBackDifferent: Rule = {
  code: 'comes-back-different',
  severity: 'error',
  since: '0.2.0',
  title: 'A repair ends with parts off that were on at the test that the unit goes back to.',
  flow: ({ graph }, report) => ({
    comeBack({ last, block, to, off, path }) {
      const many = off.length > 1;
      report({
        at: last ?? block.source,
        path,
        allow: block.allow,
        rootCause: `comes-back:${last === null ? block.name : writtenAt(last)}`,
        message: say`Repair ${block.name} ends with the ${partsWords(graph.procedure, off)} off, but the unit goes back to ${gateWords(to)} (${to.number}), where ${many ? say`they were` : say`it was`} on.`,
        why: say`the unit cannot be tested like that.`,
        help: say`At the end of the repair, close the unit the way it was closed before the test.`,
      });
    },
  }),
};

/** Random families and random legal procedures: whole they check clean, broken once they are reported. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkFiles } from '../../language/db/workspace.ts';
import { fullMessage } from '../../language/model/diagnostic.ts';
import { Judge } from '../mutate/judge.ts';
import { mutantsOf } from '../mutate/mutations.ts';
import { reasonFor } from '../mutate/reasons.ts';
import { shopText } from './family.ts';
import { numbersFrom, tastes, walk } from './walk.ts';

const file = 'walk.rebuild';
/** A walk that reaches a dead end gives no procedure. */
const walks = fc.tuple(tastes, fc.nat()).map(([taste, seed]) => walk(taste, numbersFrom(seed)));

const found = (text: string) =>
  checkFiles([{ uri: file, text }]).diagnostics.map((one) => `${one.step ?? '–'} ${one.rule}: ${fullMessage(one)}`);

describe('a random legal procedure', () => {
  it('checks clean, and broken once in any way it is reported', () => {
    fc.assert(
      fc.property(walks, fc.nat(), (text, seed) => {
        fc.pre(text !== null);
        expect(found(text)).toEqual([]);
        const random = numbersFrom(seed);
        const judge = new Judge([{ uri: file, text }]);
        const mutants = mutantsOf(file, text).filter(({ line }) => line > shopText.split('\n').length);
        const survived = mutants
          .filter(() => random() < 0.15)
          .map((mutant) => judge.judge(mutant))
          .filter(({ verdict, mutant }) => verdict === 'survived' && reasonFor(mutant) === null)
          .map(({ mutant }) => `${mutant.kind}: ${mutant.label}\n${text}`);
        expect(survived).toEqual([]);
      }),
      { numRuns: 6, seed: 20260 },
    );
  });
});

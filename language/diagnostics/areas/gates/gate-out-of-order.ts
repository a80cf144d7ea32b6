import { capital, listed } from '../../../analysis/prose.ts';
import { stageSteps } from '../../../analysis/stages.ts';
import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** The tests are in another order than the family's. A test that is run again later may count at either place. */
export const gateOutOfOrder: Rule = {
  code: 'gate-out-of-order',
  severity: 'error',
  since: '0.2.0',
  title: 'Tests are run in a different order from the one that proves the family.',
  flow({ graph }, report) {
    const { provenBy } = graph.procedure.family;
    const tests = stageSteps(graph).flatMap(({ step }) => {
      if (step.verb !== 'test') return [];
      const rank = provenBy.findIndex((proof) => proof.name === step.gate.test);
      return rank < 0 ? [] : [{ step, rank, name: step.gate.test }];
    });
    const inOrder = new Set(longestInOrder(tests.map(({ rank }) => rank)));
    const firstOf = new Map([...tests.entries()].reverse().map(([index, { name }]) => [name, index]));
    const strays = tests.filter(({ rank, name }, index) => !inOrder.has(rank) && firstOf.get(name) === index);
    return {
      looksAround: true,
      end() {
        for (const { step, rank, name } of strays) {
          const place = tests.findIndex((other) => other.step === step);
          const before = tests.slice(0, place).find((other) => other.rank > rank);
          const after = tests.slice(place).find((other) => other.rank < rank);
          const other = before ?? after;
          if (other === undefined) continue;
          const order = provenBy.filter((proof) => tests.some((test) => test.name === proof.name));
          // The same swap leaves a limit without its reading: reading-not-taken-yet reports that.
          const reading = [name, other.name].find((one) =>
            tests.some((test, at) => test.step.test.hold?.of === one && tests.findIndex((t) => t.name === one) > at),
          );
          report({
            at: step,
            ...(reading === undefined ? {} : { rootCause: `reading:${reading}` }),
            related: [{ message: say`The family gives the order here.`, source: provenBy[rank]!.source }],
            message: say`${capital(name)} is tested ${before === undefined ? say`before` : say`after`} ${other.name}, but the family is proven by ${listed(order.map((proof) => proof.name))}, in that order.`,
            why: say`each test relies on what the tests before it proved.`,
            help: say`Move this test to its place, or change the order in the family.`,
          });
        }
      },
    };
  },
};

/** The longest increasing subsequence of a list of ranks; of several the one whose end is first, and so on back. */
function longestInOrder(ranks: readonly number[]): readonly number[] {
  /** By the rank that a sequence ends with, the longest of those, the first if there are several. */
  const ends = new Map<number, { readonly length: number; readonly at: number; readonly before: readonly number[] }>();
  const longestBelow = (rank: number) =>
    [...ends]
      .filter(([end]) => end < rank)
      .reduce<{ length: number; at: number; sequence: readonly number[] }>(
        (most, [end, { length, at, before }]) =>
          length > most.length || (length === most.length && at < most.at)
            ? { length, at, sequence: [...before, end] }
            : most,
        { length: 0, at: -1, sequence: [] },
      );
  for (const [at, rank] of ranks.entries()) {
    const { length, sequence } = longestBelow(rank);
    if (length + 1 > (ends.get(rank)?.length ?? 0)) ends.set(rank, { length: length + 1, at, before: sequence });
  }
  return longestBelow(Number.POSITIVE_INFINITY).sequence;
}

import { capital, listed } from '../../../analysis/prose.ts';
import { stageSteps } from '../../../analysis/stages.ts';
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
    const strays = tests.filter(
      ({ rank, name }, index) => !inOrder.has(rank) && tests.findIndex((other) => other.name === name) === index,
    );
    return {
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
            related: [{ message: 'The family gives the order here.', source: provenBy[rank]!.source }],
            message: `${capital(name)} is tested ${before === undefined ? 'before' : 'after'} ${other.name}, but the family is proven by ${listed(order.map((proof) => proof.name))}, in that order.`,
            why: 'each test relies on what the tests before it proved.',
            help: 'Move this test to its place, or change the order in the family.',
          });
        }
      },
    };
  },
};

/** The longest increasing subsequence of a list of ranks. */
function longestInOrder(ranks: readonly number[]): readonly number[] {
  const best: (readonly number[])[] = [];
  for (const [index, rank] of ranks.entries()) {
    const before = best.slice(0, index).filter((sequence) => sequence.at(-1)! < rank);
    best.push([...longest(before), rank]);
  }
  return longest(best);
}

function longest(sequences: readonly (readonly number[])[]): readonly number[] {
  return sequences.reduce((most, sequence) => (sequence.length > most.length ? sequence : most), []);
}

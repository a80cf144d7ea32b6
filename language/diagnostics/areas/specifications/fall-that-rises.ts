import { compare, formatLimit, window } from '../../../quantities/index.ts';
import type { Limit, Quantity } from '../../../quantities/types.ts';
import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** A test times a fall from one pressure to another, and the second is not below the first. */
export const fallThatRises: Rule = {
  code: 'fall-that-rises',
  severity: 'error',
  since: '0.2.0',
  title: 'The pressure that a fall is timed to is not below that from which it falls.',
  eachStep(step, _, report) {
    if (step.verb !== 'test') return;
    const { from, to, inTime } = step.test;
    // A pump that turns builds its pressure up, and a vacuum is drawn.
    if (from === null || to === null || inTime === null || step.at !== null || step.gas === 'vacuum') return;
    const [start, end] = [middle(from), middle(to)];
    if (start === null || end === null || (compare(end, start) ?? -1) < 0) return;
    report({
      at: step,
      message: say`This times the pressure from ${formatLimit(from)} to ${formatLimit(to)}.`,
      why: say`a unit that leaks only ever falls, so nothing can be timed.`,
      help: say`Write the higher pressure first, or the speed at which it is built up.`,
    });
  },
};

function middle(limit: Limit): Quantity | null {
  const { low, high, nominal } = window(limit);
  return nominal ?? low ?? high;
}

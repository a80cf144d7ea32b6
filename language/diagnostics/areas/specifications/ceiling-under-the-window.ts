import { judgedLimits } from '../../../analysis/limits.ts';
import { limitWords } from '../../../analysis/tool-words.ts';
import { compare, formatQuantity, window } from '../../../quantities/index.ts';
import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** A test may never go above a figure that its own limit, or the pressure that it holds, reaches. */
export const ceilingUnderTheWindow: Rule = {
  code: 'ceiling-under-the-window',
  severity: 'error',
  since: '0.2.0',
  title: 'A test may never go as high as what it reads or holds.',
  eachStep(step, setting, report) {
    if (step.verb !== 'test' || step.test.neverAbove === null) return;
    const { neverAbove, hold, from } = step.test;
    const held = [hold?.relation === 'at' ? hold.amount : null, from, step.at].flatMap((limit) =>
      limit === null ? [] : [{ limit, number: null, acceptance: 'simple' as const }],
    );
    const read = step.limit === null ? [] : judgedLimits(setting, step, step.limit);
    const over = [...read, ...held].find(({ limit }) => {
      const { low, high, nominal } = window(limit);
      const top = high ?? nominal ?? low;
      // Null: of another kind, as a travel that is read under a pressure.
      return top !== null && compare(top, neverAbove) === 1;
    });
    if (over === undefined) return;
    report({
      at: step,
      message: say`This test is never to go above ${formatQuantity(neverAbove)}, and goes to ${limitWords(over)}.`,
      why: say`a good unit cannot be brought there, or the ceiling is broken every time and means nothing.`,
      help: say`Correct the ceiling, or the limit.`,
    });
  },
};

import { judgedLimits } from '../../../analysis/limits.ts';
import { limitOfReading } from '../../../analysis/readings.ts';
import { aimOf, findGauge } from '../../../analysis/tools.ts';
import { permissibleError } from '../../../engineering/tool-error.ts';
import { asDifference, compareDifferences, formatQuantity, window } from '../../../quantities/index.ts';
import { say, term } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** A pressure is held below, or above, a reading by no more than the error of the gauge. */
export const holdWithinGaugeError: Rule = {
  code: 'hold-within-gauge-error',
  severity: 'error',
  since: '0.2.0',
  title: 'A pressure is held below a reading by no more than what the gauge may be wrong by.',
  procedure(procedure, report) {
    for (const step of procedure.stages.flatMap(({ steps }) => steps)) {
      if (step.verb !== 'test' || step.test.hold === null || step.test.hold.of === null) continue;
      const { amount, of, relation } = step.test.hold;
      const ends = window(amount);
      const margin = ends.low ?? ends.nominal ?? ends.high;
      const use = limitOfReading(procedure, of);
      if (margin === null || use === null) continue;
      for (const { limit } of judgedLimits(procedure, step, use)) {
        const gauge = findGauge(procedure, of, limit);
        const read = aimOf(limit);
        const error = gauge === null || read === null ? null : permissibleError(gauge, read);
        if (gauge === null || error === null || compareDifferences(asDifference(margin), error) === 1) continue;
        if (compareDifferences(asDifference(margin), error) === null) continue;
        report({
          at: step,
          rootCause: `margin:${step.gate.test}`,
          message: say`${step.gate.test} is held ${formatQuantity(margin)} ${term(relation)} ${of}, and ${gauge.name} is accurate to ±${formatQuantity(error)}.`,
          why: say`the pressure that is held may really be at the opening, and a good seat is taken for a leaking one.`,
          help: say`Hold it further off, or read it on a finer gauge.`,
        });
        break;
      }
    }
  },
};

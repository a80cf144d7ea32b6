import type { StepOf } from '../../../model/procedure.ts';
import type { Source } from '../../../model/source.ts';
import { kindOfLimit } from '../../../quantities/index.ts';
import { say } from '../../../say/say.ts';
import { behind } from '../../edits.ts';
import { on, type Rule } from '../../rule.ts';

/** The lever is worked fast while an undamped gauge is open. */
export const gaugeOpenWhilePulsing: Rule<{ source: Source }> = {
  code: 'gauge-open-while-pulsing',
  severity: 'error',
  since: '0.2.0',
  title: 'The gauge is not shut while the unit is primed, or made to chatter or spray.',
  flow: ({ graph, layout }, report) => {
    const delicate = graph.procedure.shop.assets
      .filter(({ kind, at, damped, digital }) => kind === 'gauge' && at !== null && !damped && !digital)
      .reduce((all, { at }) => all | layout.stationBit(at), 0);
    return {
      step: on(['prime', 'test'], ({ step, before, path }) => {
        if (!pulses(step) || step.gauge === 'shut') return;
        if (!before.may(layout.unit.station, delicate)) return;
        report({
          at: step,
          path,
          message: say`The gauge is open while ${step.verb === 'prime' ? say`the unit is primed` : say`${step.gate.test} is tested`}.`,
          why: say`the pulses knock its movement out of adjustment, and every reading after that is wrong.`,
          help: say`Write “with gauge shut”, or declare in the shop that the gauge is damped.`,
          data:
            step.verb === 'prime' && step.gauge === null && step.call === null ? { source: step.source } : undefined,
        });
      }),
    };
  },
  fix({ source }) {
    return { title: say`Shut the gauge`, safe: false, edits: [behind(source, ' with gauge shut')] };
  },
};

/** Quick strokes: priming, and tests judged by eye and ear. A figure is read at slow strokes. */
function pulses(step: StepOf<'prime' | 'test'>): boolean {
  if (step.verb === 'prime') return true;
  const { test, limit, at, gate } = step;
  if (test.reads !== null || limit !== null || test.hold !== null || test.from !== null) return false;
  return /^(chatter|spray)\b/iu.test(gate.test) || (at !== null && kindOfLimit(at) === 'stroke rate');
}

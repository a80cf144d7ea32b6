import type { Step } from '../../../model/procedure.ts';
import type { Source } from '../../../model/source.ts';
import { kindOfLimit } from '../../../quantities/index.ts';
import { behind } from '../../edits.ts';
import type { Rule } from '../../rule.ts';

/** The lever is worked fast while an undamped gauge is open. */
export const gaugeOpenWhilePulsing: Rule<{ source: Source }> = {
  code: 'gauge-open-while-pulsing',
  severity: 'error',
  since: '0.2.0',
  title: 'The gauge is not shut while the unit is primed, or made to chatter or spray.',
  replay: ({ program, layout }, report) => {
    const delicate = program.procedure.shop.assets
      .filter(({ kind, at, damped, digital }) => kind === 'gauge' && at !== null && !damped && !digital)
      .reduce((all, { at }) => all | layout.stationBit(at), 0);
    return {
      step({ step, before, way }) {
        if (!pulses(step) || step.test?.gauge === 'shut' || step.gauge === 'shut') return;
        if (!before.may(layout.unit.station, delicate)) return;
        const priming = step.verb === 'prime';
        report({
          at: step,
          way,
          message: `The gauge is open while ${priming ? 'the unit is primed' : `${step.gate!.name} is tested`}.`,
          why: 'the pulses knock its movement out of adjustment, and every reading after that is wrong.',
          help: 'Write “with gauge shut”, or declare in the shop that the gauge is damped.',
          data: priming && step.gauge === null && step.call === null ? { source: step.source } : undefined,
        });
      },
    };
  },
  fix({ source }) {
    return { title: 'Shut the gauge', safe: false, edits: [behind(source, ' with gauge shut')] };
  },
};

/** Quick strokes: priming, and tests judged by eye and ear. A figure is read at slow strokes. */
function pulses({ verb, test, gate }: Step): boolean {
  if (verb === 'prime') return true;
  if (verb !== 'test' || test === null || test.reads !== null || test.within !== null) return false;
  if (test.hold !== null || test.from !== null) return false;
  return /^(chatter|spray)\b/iu.test(gate!.name) || (test.at !== null && kindOfLimit(test.at) === 'stroke rate');
}

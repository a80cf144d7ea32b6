import { gate } from '../../../analysis/locations.ts';
import { capital, gateWords, listed } from '../../../analysis/prose.ts';
import type { GateStep } from '../../../model/steps.ts';
import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** At the end, gates are not passed on this build: what they prove through was changed after them. */
export const gateStale: Rule = {
  code: 'gate-stale',
  severity: 'error',
  since: '0.1.0',
  title: 'The unit is changed after a test, and the test is not run again.',
  flow: ({ graph, layout }, report) => ({
    looksAround: true,
    end({ state, path, last, block }) {
      const bySlip = new Map<number, GateStep[]>();
      for (const { step } of graph.gates) {
        const cell = layout.gates.get(step.gate.id)!;
        if (!state.may(cell, gate.stale)) continue;
        const since = state.since(cell);
        const tests = bySlip.get(since) ?? [];
        if (!tests.some(({ gate }) => gate.id === step.gate.id)) bySlip.set(since, [...tests, step]);
      }
      for (const [since, tests] of bySlip) {
        const touched = graph.nodes[since];
        const by =
          touched?.kind === 'step'
            ? say`step ${touched.step.number} (${[touched.step.verb, touched.step.objects[0]?.name].filter(Boolean).join(' ')}) changed what was tested`
            : say`what was tested was changed`;
        const many = tests.length > 1;
        report({
          at: touched?.kind === 'step' ? touched.step : (last ?? block.source),
          path,
          rootCause: `stale:${since}`,
          related: tests.map((step) => ({ message: say`The test is step ${step.number}.`, source: step.source })),
          message: say`${capital(listed(tests.map(gateWords)))} ${many ? say`are` : say`is`} no longer proven at the end.`,
          why: say`${by}.`,
          help: say`Test ${many ? say`them` : gateWords(tests[0]!)} again after that, or make the change before the ${many ? say`tests` : say`test`}.`,
        });
      }
    },
  }),
};

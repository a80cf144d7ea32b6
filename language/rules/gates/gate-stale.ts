import { gate } from '../../replay/cells.ts';
import type { Rule } from '../rule.ts';

/** At the end a gate is not passed on this build: what it proves through was touched after it. */
export const gateStale: Rule = {
  code: 'gate-stale',
  severity: 'error',
  unsafe: true,
  title: 'What was tested is changed after the test, and the test is not run again.',
  replay: ({ program, layout }, report) => ({
    end({ state, way, last, block }) {
      for (const { point, name } of program.gates) {
        const cell = layout.gates.get(name)!;
        if (!state.may(cell, gate.stale)) continue;
        const since = state.since[cell]!;
        const touched = program.points[since];
        const by =
          touched?.kind === 'step'
            ? `step ${touched.step.number} (${touched.step.verb} ${touched.step.objects[0]?.name ?? ''}) changed what was tested`
            : 'what was tested was changed';
        const tested = program.points[point];
        report({
          at: touched?.kind === 'step' ? touched.step : (last ?? block.source),
          way,
          cause: `stale:${name}:${since}`,
          related:
            tested?.kind === 'step'
              ? [{ message: `The test is step ${tested.step.number}.`, source: tested.step.source }]
              : [],
          message: `${name.charAt(0).toUpperCase()}${name.slice(1)} is no longer proven at the end: ${by}. Test ${name} again after it, or do it before the test.`,
        });
      }
    },
  }),
};

import { specLimits, type WrittenLimit } from '../../../analysis/limits.ts';
import { limitUses } from '../../../model/steps.ts';
import { formatLimit, kindOfLimit } from '../../../quantities/index.ts';
import type { Kind, Limit } from '../../../quantities/types.ts';
import { capital, say } from '../../../say/say.ts';
import { blank } from '../../edits.ts';
import type { Rule } from '../../rule.ts';
import { fixStep, type StepFix } from '../../step-fixes.ts';

const judged: readonly Kind[] = ['pressure', 'torque', 'length', 'force', 'angle'];

/** A nominal with no tolerance, where the shop gives none either. Only what a step sets or a test reads counts. */
export const noTolerance: Rule<StepFix> = {
  code: 'no-tolerance',
  severity: 'error',
  since: '0.1.0',
  ofAbsence: true,
  title: 'A value that is set or read has no tolerance, and the shop states none.',
  procedure(procedure, report) {
    const steps = [...procedure.stages, ...procedure.repairs].flatMap((block) => block.steps);
    const uses = steps.flatMap((step) => {
      return limitUses(step).map((use) => ({ step, use }));
    });
    const used = new Set(uses.flatMap(({ use }) => (use.form === 'spec' ? [use.spec] : [])));
    const specs = specLimits(procedure).filter(({ spec }) => used.has(spec!.name) && spec!.per === null);
    const written: WrittenLimit[] = uses.flatMap(({ step, use }) =>
      use.form === 'limit'
        ? [
            {
              limit: use.limit,
              words: step.verb === 'torque' ? say`the torque` : say`the limit`,
              source: use.source,
              step,
              spec: null,
              kinds: null,
            },
          ]
        : [],
    );
    for (const { limit, words, source, step, spec } of [...specs, ...written]) {
      const bare = bareNominal(limit);
      if (bare === null || !judged.includes(kindOfLimit(bare))) continue;
      const kind = kindOfLimit(bare);
      // A torque in bar is reported by wrong-kind-of-unit.
      if (spec !== null && spec.kind !== null && spec.kind !== kind) continue;
      if (procedure.shop.unlessStated.some((standing) => standing.kind === kind)) continue;
      report({
        at: step ?? source,
        source,
        allow: spec?.allow,
        message: say`${capital(words)} is ${formatLimit(bare)} with no tolerance.`,
        why: say`nobody can say whether a reading is good.`,
        data: step?.call === null ? { source, text: `±${blank}`, where: 'at its end' } : undefined,
        help: say`Write the tolerance from the maker's data, or “unless stated ${kind} ±…” in the shop.`,
      });
    }
  },
  fix: fixStep,
};

/** The part of a limit that is a value with no written tolerance. */
function bareNominal(limit: Limit): Limit | null {
  if (limit.form === 'then') return bareNominal(limit.first) ?? bareNominal(limit.angle);
  return limit.form === 'nominal' && limit.plus === null && limit.minus === null ? limit : null;
}

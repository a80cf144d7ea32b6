import type { FailEntry } from '../../../model/procedure.ts';
import { failEntries } from '../../../model/steps.ts';
import { say } from '../../../say/say.ts';
import { byDegrees } from '../../../semantics/procedure.ts';
import { counted } from '../../edits.ts';
import type { Rule } from '../../rule.ts';

/** A repair that brings a reading closer each time has no limit on tries. Turning an adjuster ends by itself. */
export const repairUnbounded: Rule<FailEntry> = {
  code: 'repair-unbounded',
  severity: 'error',
  since: '0.1.0',
  title: 'A repair may be tried any number of times.',
  ofAbsence: true,
  procedure(procedure, report) {
    for (const repair of procedure.repairs) {
      if (repair.tries !== null || repair.steps.some((step) => step.verb === 'set')) continue;
      // Lapping until a face is good ends when the face is worn out: then the check rejects it.
      if (repair.inline && repair.steps[0]?.verb === 'lap') continue;
      for (const block of [...procedure.stages, ...procedure.repairs]) {
        for (const step of block.steps) {
          for (const entry of failEntries(step)) {
            if (entry.repair !== repair.name || (entry.tries !== null && Number.isFinite(entry.tries))) continue;
            report({
              at: step,
              source: entry.source,
              rootCause: `unbounded:${repair.name}`,
              allow: repair.allow,
              message: say`Nothing says how often ${repair.name} may be tried.`,
              why: byDegrees(repair)
                ? say`a unit that cannot be brought into its limit would go around forever.`
                : say`a unit that keeps failing would go around forever.`,
              help: say`Write ${repair.name} (3 times), or as often as the shop allows.`,
              data: step.call === null ? entry : undefined,
            });
          }
        }
      }
    }
  },
  fix(entry) {
    const edit = counted(entry);
    return edit === null ? null : { title: say`Say how often it may be tried`, safe: false, edits: [edit] };
  },
};

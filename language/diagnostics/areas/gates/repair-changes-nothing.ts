import { writtenAt } from '../../../analysis/written-at.ts';
import type { Procedure, Step } from '../../../model/procedure.ts';
import type { Verb } from '../../../model/verbs.ts';
import { say } from '../../../say/say.ts';
import { verbsThat } from '../../../syntax/verbs/index.ts';
import type { Rule } from '../../rule.ts';

/** Verbs after which a test can give another result than before. */
const changing: readonly Verb[] = verbsThat('changes');

/** The author's own work changes what it says that it changes; a unit that waits for somebody is theirs to decide on. */
const changes = (step: Step): boolean =>
  step.verb === 'do' ? step.objects.length > 0 : step.verb === 'hold-for' || changing.includes(step.verb);

/** A repair opens the unit and closes it again, and does nothing in between. */
export const repairChangesNothing: Rule = {
  code: 'repair-changes-nothing',
  severity: 'error',
  since: '0.1.0',
  title: 'A repair changes nothing: the same unit goes back to the same test.',
  procedure(procedure, report) {
    const shared = sharedSteps(procedure);
    for (const repair of procedure.repairs) {
      const retightens =
        repair.steps.some((step) => step.verb === 'torque') &&
        !repair.steps.some((step) => step.verb === 'remove' || step.verb === 'slacken');
      if (retightens || repair.steps.some(changes)) continue;
      // Seals that are renewed on the way in and out, which several repairs share, are not what this one repairs.
      const between = repair.steps.filter((step) => step.call === null || !shared.has(writtenAt(step)));
      const own = between.length === 0 ? repair.steps : between;
      const fresh = own.some((step) => step.verb === 'discard') && own.some((step) => step.verb === 'fit');
      if (fresh) continue;
      report({
        at: repair.source,
        allow: repair.allow,
        message: say`Repair ${repair.name} changes nothing.`,
        why: say`the unit would fail the same test again.`,
        help: repair.steps.some(({ verb }) => verb === 'do')
          ? say`Say what the work in your own words changes: do "…" to PARTS. If somebody else decides, write hold-for.`
          : say`Add the step that cleans, laps, sets or renews something.`,
      });
    }
  },
};

/** Places of the steps of sequences that more than one repair calls. */
function sharedSteps({ repairs }: Procedure): ReadonlySet<string> {
  const callers = new Map<string, Set<string>>();
  for (const repair of repairs)
    for (const step of repair.steps)
      if (step.call !== null)
        callers.set(writtenAt(step), (callers.get(writtenAt(step)) ?? new Set()).add(repair.name));
  return new Set([...callers].flatMap(([place, names]) => (names.size > 1 ? [place] : [])));
}

import { listed } from '../../../analysis/prose.ts';
import type { FailEntry, Procedure, Repair } from '../../../model/procedure.ts';
import { failEntries } from '../../../model/steps.ts';
import { say } from '../../../say/say.ts';
import { counted } from '../../edits.ts';
import type { Rule } from '../../rule.ts';

/** A repair from which the unit never returns to its test: a cycle with no limit on tries, or sent out for good. */
export const repairNeverReturns: Rule<FailEntry> = {
  code: 'repair-never-returns',
  severity: 'error',
  since: '0.2.0',
  title: 'A unit never comes back from a repair to its test.',
  procedure(procedure, report) {
    const told = new Set<string>();
    for (const repair of procedure.repairs) {
      const away = repair.steps.findLast((step) => step.verb === 'send-out' || step.verb === 'book-in');
      if (away?.verb === 'send-out')
        report({
          at: away,
          allow: repair.allow,
          message: say`Repair ${repair.name} sends the unit out but does not book it in again.`,
          why: say`the sheet goes on to the test while the unit is at another shop.`,
          help: say`Write “book-in” where it comes back.`,
        });
      const ring = ringFrom(procedure, repair);
      if (ring === null || ring.some((entry) => told.has(entry.repair))) continue;
      for (const entry of ring) told.add(entry.repair);
      const names = ring.map((entry) => entry.repair);
      report({
        at: ring[0]!.source,
        rootCause: `unbounded:${names[0]}`,
        allow: repair.allow,
        message: say`${names.length === 1 ? say`Repair ${repair.name} sends the unit to itself again` : say`Repairs ${listed([repair.name, ...names.slice(0, -1)])} send the unit to each other`}, and nothing limits how often.`,
        why: say`the unit may go around in circles and never return to its test.`,
        help: say`Write ${names[0]!} (3 times), or as often as the shop allows.`,
        data: repair.steps.some((step) => step.call !== null && failEntries(step).includes(ring[0]!))
          ? undefined
          : ring[0],
      });
    }
  },
  fix(entry) {
    const edit = counted(entry);
    return edit === null ? null : { title: say`Say how often it may be tried`, safe: false, edits: [edit] };
  },
};

/** The entries through which a repair with no limit on tries reaches itself again through others with none. */
function ringFrom(procedure: Procedure, start: Repair): readonly FailEntry[] | null {
  const seen = new Set<Repair>();
  const walk = (repair: Repair): readonly FailEntry[] | null => {
    if (repair.tries !== null || seen.has(repair)) return null;
    seen.add(repair);
    for (const entry of repair.steps.flatMap((step) => failEntries(step))) {
      const next = procedure.repairs.find((other) => other.name === entry.repair);
      if (next === undefined) continue;
      if (next === start) return [entry];
      const rest = walk(next);
      if (rest !== null) return [entry, ...rest];
    }
    return null;
  };
  return walk(start);
}

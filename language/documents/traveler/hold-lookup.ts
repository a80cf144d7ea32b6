import type { SpecValue, Step, StepOf } from '../../model/procedure.ts';
import { specFor } from '../../model/spec-for.ts';
import { own } from '../../model/steps.ts';
import type { Difference, Limit, Quantity, UnitName } from '../../quantities/index.ts';
import {
  add,
  asDifference,
  compare,
  convert,
  lastPlace,
  roundTo,
  sizesOf,
  sub,
  window,
  windowInSteps,
} from '../../quantities/index.ts';
import { unitOfLimit, withStanding } from './figures.ts';
import { standingOf } from './limits.ts';
import { lookupsOf } from './lookups.ts';
import type { Lookup } from './model.ts';
import { specTitle } from './names.ts';
import { type Setting, stageSteps } from './print-context.ts';
import { markAt, toolUnit, type Where } from './units.ts';

/** Most columns of the table: more cannot be read at arm's length. */
const mostPairs = 9;

/**
 * `hold 20 bar below opening` worked out for every reading that may come, one table for each part number that differs:
 * nobody subtracts at the bench. None where the limit has no lower end.
 */
export function holdLookup(setting: Setting, step: Step, where: Where): Lookup[] {
  const hold = own(step, 'test')?.hold ?? null;
  if (hold === null || hold.relation === 'at') return [];
  const amount = window(hold.amount).nominal;
  const spec = specOfReading(setting, step, hold.of);
  if (amount === null || spec === null) return [];
  const { procedure, numbers, words } = setting;
  const limits =
    numbers.length === 0
      ? [
          {
            number: '',
            ...limitsIn(specFor(procedure, spec, null)),
          },
        ]
      : numbers.map(({ name }) => ({
          number: name,
          ...limitsIn(specFor(procedure, spec, name)),
        }));
  const cases = limits.map(({ number, limit, forNew }) => {
    const rebuilt = limit === null ? null : withStanding(limit, { standing: standingOf(setting) }).limit;
    const judged = rebuilt === null || forNew === null ? rebuilt : bothOf(rebuilt, forNew);
    const change = hold.relation === 'below' ? sub : add;
    return {
      number,
      made: judged === null ? null : pairsOf(setting, step, where, judged, asDifference(amount), change),
    };
  });
  return lookupsOf(cases, ({ unit }) => ({
    title: words.lookup.title({ name: words.inSentence(specTitle(procedure, spec)) }),
    from: `${words.lookup.from}, ${words.wording.unit(unit, false)}`,
    to: `${words.lookup.to}, ${words.wording.unit(unit, false)}`,
  }));
}

function limitsIn(value: SpecValue | null) {
  return { limit: value?.rebuilt ?? null, forNew: value?.whenNew ?? null };
}

/** From the lower of two low ends to the higher of two high ones: every reading that may pass, with new parts or without. */
function bothOf(limit: Limit, forNew: Limit): Limit {
  const [one, two] = [window(limit), window(forNew)];
  if (one.low === null || one.high === null || two.low === null || two.high === null) return limit;
  return {
    form: 'range',
    low: compare(two.low, one.low) === -1 ? two.low : one.low,
    high: compare(two.high, one.high) === 1 ? two.high : one.high,
  };
}

/** The spec of the reading that is spoken of; `reading` is the last pressure read before this step. */
function specOfReading(setting: Setting, step: Step, of: string | null): string | null {
  if (of !== null && setting.procedure.specs.some(({ name }) => name === of)) return of;
  const steps = stageSteps(setting).map((each) => each.step);
  const before = steps.slice(0, steps.indexOf(step)).reverse();
  const read = before.find(
    (other): other is StepOf<'test'> =>
      other.verb === 'test' &&
      (of === null || of === 'reading' || other.gate.test === of) &&
      other.limit?.form === 'spec',
  );
  return read?.limit?.form === 'spec' ? read.limit.spec : null;
}

function pairsOf(
  setting: Setting,
  step: Step,
  where: Where,
  limit: Limit,
  amount: Difference,
  change: typeof sub,
): { pairs: Lookup['pairs']; unit: UnitName } | null {
  if (unitOfLimit(limit) === null) return null;
  const unit = toolUnit(setting, step, where, 'pressure', limit) ?? amount.unit;
  const grades = gradesOf(markAt(setting, step, where, limit), limit, unit);
  // Both ends stand on the finest marks, however far apart the readings between them are.
  const { low, high: top } = windowInSteps(limit, grades[0]!) ?? { low: null, high: null };
  if (low === null) return null;
  for (const grade of grades) {
    // With no upper end the table begins at the limit and goes as far as it is wide.
    let high: Quantity = top ?? low;
    for (let more = 1; top === null && more < mostPairs; more++) high = add(high, grade) ?? high;
    const readings = sizesOf(low, high, grade);
    if (readings === null) return null;
    if (compare(readings.at(-1)!, high) !== 0) readings.push(high);
    if (readings.length > mostPairs) continue;
    const decimals = grade.number.split('.')[1]?.length ?? 0;
    const pairs = readings.flatMap((reading) => {
      const held = change(reading, amount);
      const shown = held === null ? null : roundTo(held, unit, decimals, 'nearest');
      return shown === null
        ? []
        : [
            {
              from: setting.words.number(reading.number),
              to: setting.words.number(shown.number),
            },
          ];
    });
    return pairs.length > 1 ? { pairs, unit } : null;
  }
  return null;
}

/** The gauge's marks, then coarser ones, until the table fits. */
function gradesOf(marks: Difference | null, limit: Limit, unit: UnitName): Difference[] {
  const { low } = window(limit);
  const digits = low === null ? 0 : lastPlace(convert(low, unit) === null || low.unit !== unit ? '1' : low.number);
  const first: Difference =
    marks?.unit === unit
      ? marks
      : {
          number: digits >= 0 ? `1${'0'.repeat(digits)}` : `0.${'0'.repeat(-digits - 1)}1`,
          unit,
        };
  const grades: Difference[] = [];
  for (let ten = first, times = 0; times < 4; times++) {
    const two = add(ten, ten) ?? ten;
    const five = add(add(two, two) ?? two, ten) ?? two;
    grades.push(ten, two, five);
    ten = add(five, five) ?? five;
  }
  return grades;
}

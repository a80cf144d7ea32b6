import { withStanding } from '../../analysis/limits.ts';
import type { Step, StepOf } from '../../model/procedure.ts';
import { specFor } from '../../model/spec-for.ts';
import { own } from '../../model/steps.ts';
import {
  add,
  asDifference,
  compare,
  convert,
  type Difference,
  kindOfUnit,
  type Limit,
  lastPlace,
  type Quantity,
  roundTo,
  sizesOf,
  sub,
  type UnitName,
  unitOfLimit,
  window,
  windowInSteps,
} from '../../quantities/index.ts';
import { numbersOf, type PrintContext, stageSteps } from '../print-context.ts';
import { type ForNumbers, forNumbers } from './by-number.ts';
import { scaleFor, unitOfScale, type Where } from './scales.ts';

/** Most columns of the table: more cannot be read at arm's length. */
const mostPairs = 9;

/**
 * `hold 20 bar below opening` worked out for every reading that may come, one table for each part number that differs:
 * nobody subtracts at the bench. None where the limit has no lower end.
 */
export function holdTables(setting: PrintContext, step: Step, where: Where): ForNumbers<HoldTable>[] {
  const hold = own(step, 'test')?.hold ?? null;
  if (hold === null || hold.relation === 'at') return [];
  const amount = window(hold.amount).nominal;
  const spec = specOfReading(setting, step, hold.of);
  if (amount === null || spec === null) return [];
  const { procedure } = setting;
  const change = hold.relation === 'below' ? sub : add;
  const made = new Map<string, HoldTable | null>();
  return forNumbers(numbersOf(setting), (number) => {
    const value = specFor(procedure, spec, number);
    if (value?.rebuilt == null) return null;
    const rebuilt = withStanding(procedure.shop, value.rebuilt).limit;
    const judged = value.whenNew === null ? rebuilt : bothOf(rebuilt, value.whenNew);
    const key = JSON.stringify(judged);
    const known = made.get(key) ?? tableFor(setting, step, where, judged, asDifference(amount), change, spec);
    made.set(key, known);
    return known;
  });
}

/** What is held for each reading. */
export interface HoldTable {
  /** Of the reading. */
  readonly spec: string;
  readonly unit: UnitName;
  readonly pairs: readonly { readonly read: Quantity; readonly hold: Quantity }[];
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

/** The spec of the reading that is mentioned; `reading` is the last pressure read before this step. */
function specOfReading(setting: PrintContext, step: Step, of: string | null): string | null {
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

function tableFor(
  { procedure }: PrintContext,
  step: Step,
  where: Where,
  limit: Limit,
  amount: Difference,
  change: typeof sub,
  spec: string,
): HoldTable | null {
  const ofLimit = unitOfLimit(limit);
  if (ofLimit === null) return null;
  const unit = unitOfScale(scaleFor(procedure, step, where, 'pressure', limit)) ?? amount.unit;
  const marks = scaleFor(procedure, step, where, kindOfUnit(ofLimit), limit)?.graduated ?? null;
  const grades = gradesOf(marks, limit, unit);
  // Both ends are on the finest marks, however far apart the readings between them are.
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
    const pairs = readings.flatMap((read) => {
      const held = change(read, amount);
      const hold = held === null ? null : roundTo(held, unit, decimals, 'nearest');
      return hold === null ? [] : [{ read, hold }];
    });
    return pairs.length > 1 ? { spec, unit, pairs } : null;
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

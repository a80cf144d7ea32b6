import type Fraction from 'fraction.js';
import type { Spec, SpecValue } from '../../../model/procedure.ts';
import type { Source } from '../../../model/source.ts';
import { amount, compare, formatLimit, kindOfLimit, window } from '../../../quantities/index.ts';
import type { Kind, Limit, Quantity } from '../../../quantities/types.ts';
import { type Filling, type Said, say } from '../../../say/say.ts';
import type { Report, Rule } from '../../rule.ts';

/**
 * How many times over another a figure is taken for a slip of the point or of the unit. Common practice, no source: a
 * unit in service is off by a half, sisters by two or three times, and a point that slips is ten times, a psi for a bar
 * fourteen and a half.
 */
const far = { inService: 3, sister: 6 };

/** Kinds that are set to a figure: what is far from it is a slip. A play or a time may well be several times another. */
const settable: ReadonlySet<Kind> = new Set([
  'pressure',
  'torque',
  'force',
  'stiffness',
  'voltage',
  'resistance',
  'speed',
]);

interface Value {
  readonly value: SpecValue;
  /** Null: of all part numbers that have none of their own. */
  readonly number: string | null;
  readonly source: Source;
}

/** Figures of one spec that belong together and cannot both be right. */
export const figuresFarApart: Rule = {
  code: 'figures-far-apart',
  severity: 'error',
  since: '0.2.0',
  title: 'Two figures of one spec are so far apart that one of them is a slip.',
  procedure({ specs, numbers }, report) {
    for (const spec of specs) {
      const own: Value[] = numbers.flatMap(({ name, values }) =>
        values
          .filter((value) => value.spec === spec.name)
          .map((value) => ({ value, number: name, source: value.source })),
      );
      const values = [{ value: spec, number: null, source: spec.source }, ...own];
      for (const one of values) withinOne(spec, one, report);
      const given = values.filter(({ value }) => value.rebuilt !== null);
      for (const one of given.slice(1)) if (besideSisters(spec, given[0]!, one, report)) break;
    }
  },
};

/** In service and with new parts beside as rebuilt. */
function withinOne(spec: Spec, { value, number, source }: Value, report: (one: Report<never>) => void) {
  const { rebuilt } = value;
  if (rebuilt === null) return;
  const tell = (words: Said, other: Limit, why: Said) =>
    report({
      at: source,
      allow: spec.allow,
      rootCause: `apart:${spec.name}:${number}:${words[0]}`,
      message: say`Spec ${spec.name}${of(number)} is ${formatLimit(rebuilt)} as rebuilt and ${formatLimit(other)} ${words}.`,
      why,
      help: say`Compare both with the maker’s data, the point and the unit too.`,
    });
  for (const [words, other] of [
    [say`in service`, value.inService],
    [say`with a new part`, value.whenNew],
  ] as const) {
    if (other === null || kindOfLimit(other) !== kindOfLimit(rebuilt)) continue;
    const [first, second] = sameEnd(rebuilt, other);
    if (settable.has(kindOfLimit(rebuilt)) && timesApart(first, second, far.inService))
      tell(words, other, say`one of the two is a slip, and units are judged by it.`);
    else if (other === value.inService && isTighter(other, rebuilt))
      tell(words, other, say`a unit that has just been rebuilt to the one would be rejected by the other.`);
  }
}

/** True where it is reported: one slip is one finding, not one for each sister. */
function besideSisters(spec: Spec, first: Value, one: Value, report: (one: Report<never>) => void): boolean {
  const [a, b] = [first.value.rebuilt!, one.value.rebuilt!];
  if (kindOfLimit(a) !== kindOfLimit(b)) return false;
  const isOdd = (a.form === 'then') !== (b.form === 'then');
  const isFar = settable.has(kindOfLimit(a)) && timesApart(...sameEnd(a, b), far.sister);
  if (!isOdd && !isFar) return false;
  report({
    at: one.source,
    allow: spec.allow,
    rootCause: `apart:${spec.name}:sisters`,
    message: say`Spec ${spec.name} is ${formatLimit(b)}${of(one.number)}, and ${formatLimit(a)}${first.number === null ? say` for the others` : of(first.number)}.`,
    why: isOdd
      ? say`a joint that is turned by an angle after its torque is far looser without it.`
      : say`sister numbers differ by a few tenths, not by so many times: a point or a unit has slipped.`,
    help: isOdd
      ? say`Write “then” and the angle with both, or with neither.`
      : say`Compare both with the maker’s data, the point and the unit too.`,
    related: [{ message: say`The other figure is here.`, source: first.source }],
  });
  return true;
}

function of(number: string | null): Filling {
  return number === null ? '' : say` of ${number}`;
}

/** The ends of two limits that can be compared: both low ones, both high ones, or the figures in the middle. */
function sameEnd(a: Limit, b: Limit): [Quantity | null, Quantity | null] {
  const [one, other] = [window(a), window(b)];
  if (one.low !== null && other.low !== null) return [one.low, other.low];
  if (one.high !== null && other.high !== null) return [one.high, other.high];
  return [one.nominal ?? one.low ?? one.high, other.nominal ?? other.low ?? other.high];
}

function timesApart(a: Quantity | null, b: Quantity | null, times: number): boolean {
  if (a === null || b === null) return false;
  const sizes: [Fraction, Fraction] = [amount(a), amount(b)];
  const [low, high] = sizes[0].compare(sizes[1]) > 0 ? [sizes[1], sizes[0]] : sizes;
  return low.compare(0) > 0 && high.compare(low.mul(times)) > 0;
}

/** What passes as rebuilt does not pass in service. */
function isTighter(inService: Limit, rebuilt: Limit): boolean {
  const [served, built] = [window(inService), window(rebuilt)];
  const [low, high] = [built.low ?? built.nominal, built.high ?? built.nominal];
  return (
    (served.low !== null && low !== null && compare(served.low, low) === 1) ||
    (served.high !== null && high !== null && compare(served.high, high) === -1)
  );
}

import { type Plan, readingsOf } from '../model/plan.ts';
import type { ReadingAt } from '../model/reading-id.ts';
import { capital, type Said, say } from '../say/say.ts';
import type * as ast from '../syntax/generated/ast.ts';
import type { Signature } from './signature.ts';

/** Where a test was read, by the words behind its name. */
type Address =
  | { readonly readings: readonly ReadingAt[]; readonly places: string }
  /** A sentence. */
  | { readonly wrong: Said; readonly at: ast.NameRef | null };

/** The plan of a test; with different ones for different part numbers, all of them. */
export function planFor({ tests, records }: Signature, test: string): Plan | null {
  const plans = [...tests, ...records].flatMap(({ name, plan }) => (name === test && plan !== null ? [plan] : []));
  const [first] = plans;
  if (first === undefined) return null;
  const points = plans.flatMap((plan) => plan.points);
  return { ...first, points: points.filter(({ name }, at) => points.findIndex((one) => one.name === name) === at) };
}

/**
 * `full` and `at cylinder 3`, `full`, `turbine`: all readings that are meant; where no place is named, one for each. A verdict may be
 * on all points too.
 */
export function addressIn(
  procedure: Signature,
  test: string,
  words: readonly ast.NameRef[],
  number: string | null,
  isVerdict = false,
): Address {
  const plan = planFor(procedure, test);
  if (plan === null)
    return words.length > 0 || number !== null
      ? { wrong: say`${test} is read once, and at no place.`, at: words[0] ?? null }
      : { readings: [{ test, point: null, place: null }], places: '' };
  if (isVerdict && words.length === 0 && number === null)
    return { readings: readingsOf(procedure.family.places, test, plan), places: plan.places ?? '' };
  const left = [...words];
  const places = plan.places ?? '';
  const point = plan.points.find(({ name }) => name === left[0]?.name)?.name ?? null;
  if (point !== null) left.shift();
  const points = plan.points.map(({ name }) => name);
  if (points.length > 0 && point === null)
    return {
      wrong: say`${test} is read at ${points.join(', ')}: write at which, behind its name.`,
      at: left[0] ?? null,
    };
  const known = readingsOf(procedure.family.places, test, plan).filter((one) => one.point === point);
  const named = places !== '' && left[0]?.name === places;
  if (named) left.shift();
  const place = number ?? left.shift()?.name ?? null;
  if (left[0] !== undefined)
    return {
      wrong: say`“${left[0].name}” is no part of this result.${places === '' ? '' : say` Behind the figure goes at ${places}, and which.`}`,
      at: left[0],
    };
  if (place === null)
    return named
      ? { wrong: say`Write which ${places}: ${known.map((one) => one.place).join(', ')}.`, at: null }
      : { readings: known, places };
  const readings = known.filter((one) => one.place === place);
  if (readings.length > 0) return { readings, places };
  const whole = place === plan.from ? say`the others are read from ${places} ${place}, so it has no reading` : null;
  const none = places === '' ? say`${test} is read at no place, and ${place} is none` : null;
  return {
    wrong: say`${capital(whole ?? none ?? say`There is no ${places} ${place}: they are ${known.map((one) => one.place).join(', ')}`)}.`,
    at: null,
  };
}

import type { Procedure, Step } from '../../model/procedure.ts';
import { figuresAt, limitUses, own, readingOf } from '../../model/steps.ts';
import { amount, compare, formatQuantity, kindOfUnit, window } from '../../quantities/index.ts';
import type { Kind, Limit, Quantity } from '../../quantities/types.ts';

/**
 * Every figure that a step is done at, done with or judged by: its own, those of its points, and those of the spec for any
 * part number.
 */
export function figuresOf(procedure: Procedure, step: Step): Quantity[] {
  const test = own(step, 'test');
  const uses = limitUses(step);
  const written: (Limit | null)[] = [
    own(step, 'bath') ?? null,
    test?.from ?? null,
    test?.to ?? null,
    own(step, 'at') ?? null,
    ...figuresAt(step).map(({ limit }) => limit),
    // What is so much below a reading is no pressure of its own.
    test?.hold?.relation === 'at' ? test.hold.amount : null,
    ...uses.flatMap((use) => (use.form === 'limit' ? [use.limit] : [])),
  ];
  const named = [...uses.flatMap((use) => (use.form === 'spec' ? [use.spec] : [])), readingOf(step)];
  return [
    ...written.flatMap((one) => (one === null ? [] : valuesOf(one))),
    ...(test?.neverAbove == null ? [] : [test.neverAbove]),
    ...named.flatMap((name) => (name === null ? [] : limitsOfSpec(procedure, name).flatMap(valuesOf))),
  ];
}

/** The values that a limit names: ends and nominal, not how far each may be off. */
function valuesOf(limit: Limit): Quantity[] {
  const { low, high, nominal } = window(limit);
  return [low, high, nominal].filter((value) => value !== null);
}

function limitsOfSpec(procedure: Procedure, name: string): Limit[] {
  return [
    ...procedure.specs.filter((spec) => spec.name === name),
    ...procedure.numbers.flatMap(({ values }) => values.filter(({ spec }) => spec === name)),
  ].flatMap(({ rebuilt, inService, whenNew }) =>
    [rebuilt, inService, whenNew].flatMap((limit) => (limit === null || limit.form === 'tolerance' ? [] : [limit])),
  );
}

/** The highest of these of a kind; null: there is none. */
export function highest(figures: readonly Quantity[], kind: Kind): Quantity | null {
  let found: Quantity | null = null;
  for (const figure of figures)
    if (kindOfUnit(figure.unit) === kind && (found === null || compare(figure, found) === 1)) found = figure;
  return found;
}

/** The first of these that is at or over a limit of its kind, in words; null: none is. */
export function atLeast(figures: readonly Quantity[], limit: Quantity): string | null {
  const over = figures.find((figure) => (compare(figure, limit) ?? -1) >= 0);
  return over === undefined ? null : formatQuantity(over);
}

/** The first of these of a kind, in words. */
export function ofKind(figures: readonly Quantity[], ...kinds: readonly Kind[]): string | null {
  const found = figures.find(({ unit }) => kinds.includes(kindOfUnit(unit)));
  return found === undefined ? null : formatQuantity(found);
}

/** The first of these that is under a limit of its kind, in words. */
export function below(figures: readonly Quantity[], limit: Quantity): string | null {
  const under = figures.find(
    ({ unit, ...rest }) =>
      kindOfUnit(unit) === kindOfUnit(limit.unit) && amount({ unit, ...rest }).compare(amount(limit)) < 0,
  );
  return under === undefined ? null : formatQuantity(under);
}

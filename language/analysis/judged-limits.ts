import type { LimitUse, Procedure, Spec, Step } from '../model/procedure.ts';
import type { DecisionRule, Shop } from '../model/shop.ts';
import { kindAdmits, kindOfUnit, quantitiesOf } from '../quantities/index.ts';
import type { Limit } from '../quantities/types.ts';

/** A limit that units are held to, with the shop's tolerance if the author wrote none. */
export interface Judged {
  readonly limit: Limit;
  /** The part number that it is for; null for all that have none of their own. */
  readonly number: string | null;
  /** How a reading near it is judged. */
  readonly acceptance: DecisionRule;
}

export type Which = 'rebuilt' | 'inService' | 'whenNew';

/** The limits that a use of a limit refers to at a step: the one written, or those of its spec and its part numbers. */
export function judgedLimits(
  procedure: Procedure,
  step: Pick<Step, 'only'>,
  use: LimitUse,
  which: readonly Which[] = ['rebuilt'],
): Judged[] {
  const judged = (limit: Limit, number: string | null, acceptance: DecisionRule) => ({
    limit: withStanding(procedure.shop, limit),
    number,
    acceptance,
  });
  const ofShop = procedure.shop.acceptance.rule;
  if (use.form === 'limit') return [judged(use.limit, null, ofShop)];
  const spec = procedure.specs.find((other) => other.name === use.spec);
  if (spec === undefined) return [];
  const ofSpec = spec.acceptance ?? ofShop;
  const numbers = procedure.numbers.filter(({ name }) => step.only === null || step.only.includes(name));
  return which.flatMap((one) => {
    const own = numbers.flatMap(({ name, values }) => {
      const value = values.find((other) => other.spec === spec.name);
      return value === undefined || (value[one] === null && !value.notRequired)
        ? []
        : [{ name, limit: value[one], acceptance: value.acceptance ?? ofSpec }];
    });
    // If every number has a value of its own, that of the spec applies to none.
    const common = own.length > 0 && own.length === numbers.length ? null : spec[one];
    return [{ name: null, limit: common, acceptance: ofSpec }, ...own].flatMap(({ name, limit, acceptance }) =>
      limit === null || !isOfItsKind(spec, limit) ? [] : [judged(limit, name, acceptance)],
    );
  });
}

/** A unit of the wrong kind is another rule's finding. A rate of two quantities is not of the kind of the first. */
function isOfItsKind({ kind, per }: Spec, limit: Limit): boolean {
  return kind === null || per !== null || kindAdmits(kind, quantitiesOf(limit)[0]!.unit);
}

/** A nominal with no tolerance takes the shop's. */
function withStanding(shop: Shop, limit: Limit): Limit {
  if (limit.form === 'then') {
    const first = withStanding(shop, limit.first);
    return first.form === 'nominal' ? { ...limit, first } : limit;
  }
  if (limit.form !== 'nominal' || limit.plus !== null || limit.minus !== null) return limit;
  const kind = kindOfUnit(limit.nominal.unit);
  const standing = shop.unlessStated.find((one) => one.kind === kind);
  return standing === undefined ? limit : { ...limit, plus: standing.limit.plus, minus: standing.limit.minus };
}

import type { LimitUse, Procedure, Spec, Step, StepFacts } from '../model/procedure.ts';
import type { DecisionRule, Shop, StandingTolerance } from '../model/shop.ts';
import type { Source } from '../model/source.ts';
import { figuresAt, isTestOf, own, spreadsAt } from '../model/steps.ts';
import { kindAdmits, kindOfUnit, quantitiesOf } from '../quantities/index.ts';
import { oncePer } from '../quantities/memo.ts';
import type { Kind, Limit, NominalLimit } from '../quantities/types.ts';
import { type Said, say } from '../say/say.ts';
import { allSteps } from './locations.ts';

/** One limit as it is written somewhere, with the words for it. */
export interface WrittenLimit {
  readonly limit: Limit;
  readonly words: Said;
  readonly source: Source;
  readonly step: Step | null;
  readonly spec: Spec | null;
  /** The kinds that its unit may have; null for any. */
  readonly kinds: readonly Kind[] | null;
}

/** Every limit of a procedure that is written in a spec or a part number. */
export const specLimits = oncePer((procedure: Procedure): readonly WrittenLimit[] => {
  const of = (
    spec: Spec,
    value: Pick<Spec, 'rebuilt' | 'inService' | 'whenNew'>,
    source: Source,
    words: Said,
  ): WrittenLimit[] =>
    (
      [
        [words, value.rebuilt],
        [say`${words} in service`, value.inService],
        [say`${words} with new parts`, value.whenNew],
      ] as const
    ).flatMap(([which, limit]) =>
      limit === null
        ? []
        : [
            {
              limit,
              words: which,
              source,
              step: null,
              spec,
              kinds: spec.kind === null ? null : [spec.kind],
            },
          ],
    );
  return [
    ...procedure.specs.flatMap((spec) => of(spec, spec, spec.source, say`spec ${spec.name}`)),
    ...procedure.numbers.flatMap((number) =>
      number.values.flatMap((value) => {
        const spec = procedure.specs.find((other) => other.name === value.spec)!;
        return of(spec, value, value.source, say`spec ${value.spec} of ${number.name}`);
      }),
    ),
  ];
});

/** Every limit that is written in a step, with the kinds that its unit may have. */
export const stepLimits = oncePer((procedure: Procedure): readonly WrittenLimit[] =>
  allSteps(procedure).flatMap((step) =>
    step.verb === 'across' || own(step, 'choose') != null
      ? limitsOfStep(step, (test) => kindsOfTest(procedure, test))
      : limitsIn(step),
  ),
);

/** Every limit that is written in a step, without the kinds that follow from the test of another step. */
export const limitsIn = oncePer((step: Step): readonly WrittenLimit[] => limitsOfStep(step, () => null));

function limitsOfStep(step: Step, kindsOf: (test: string) => readonly Kind[] | null): WrittenLimit[] {
  const made = (limit: Limit | null | undefined, words: Said, kinds: readonly Kind[] | null): WrittenLimit[] =>
    limit == null ? [] : [{ limit, words, source: step.source, step, spec: null, kinds }];
  const test = own(step, 'test');
  const use = own(step, 'limit');
  const choose = own(step, 'choose');
  return [
    ...made(
      use?.form === 'limit' ? use.limit : null,
      step.verb === 'torque' || step.verb === 'lock' ? say`the torque` : say`the limit`,
      step.verb === 'torque' || step.verb === 'lock' ? ['torque'] : test?.reads != null ? [test.reads] : null,
    ),
    ...(own(step, 'plan')?.points ?? []).flatMap(({ name, limit, amount }) => [
      ...made(
        limit?.form === 'limit' ? limit.limit : null,
        say`point ${name}`,
        test?.reads != null ? [test.reads] : null,
      ),
      ...made(amount, say`the time or count of point ${name}`, ['time', 'strokes', 'turns']),
    ]),
    ...figuresAt(step).flatMap(({ name, limit }) =>
      made(limit, name === null ? say`the figure that it is done at` : say`the ${name}`, null),
    ),
    ...spreadsAt(step).flatMap((limit) => made(limit, say`the spread`, test?.reads != null ? [test.reads] : null)),
    ...made(own(step, 'stretch'), say`the stretch`, ['length']),
    ...made(step.air, say`the air`, ['pressure']),
    ...made(own(step, 'bath'), say`the bath`, ['temperature']),
    ...made(test?.hold?.amount, say`the pressure held`, ['pressure']),
    ...made(test?.from, say`the pressure at the start`, ['pressure']),
    ...made(test?.to, say`the pressure at the end`, ['pressure']),
    ...made(test?.forTime, say`the time`, ['time', 'strokes']),
    ...made(test?.inTime, say`the time`, ['time']),
    // With the gauge shut nothing is done at a pressure.
    ...made(own(step, 'at'), say`the speed`, [
      'stroke rate',
      'speed',
      ...(own(step, 'gauge') === 'shut' ? [] : (['pressure'] as const)),
      'temperature',
      'angle',
      'cam angle',
    ]),
    ...(step.verb === 'across' ? made(step.spread, say`the spread`, kindsOf(step.gate.test)) : []),
    ...(choose?.target?.form === 'limit' ? made(choose.target.limit, say`the target`, kindsOf(choose.test)) : []),
  ];
}

/** The limits that a use of a limit refers to: the one written, or those of its spec and its part numbers. */
export function limitsOfUse(procedure: StepFacts, use: LimitUse): { limit: Limit; spec: Spec | null }[] {
  if (use.form === 'limit') return [{ limit: use.limit, spec: null }];
  const spec = procedure.specs.find((other) => other.name === use.spec);
  if (spec === undefined) return [];
  const values = [
    spec.rebuilt,
    ...procedure.numbers.flatMap((number) =>
      number.values.filter((value) => value.spec === spec.name).map((value) => value.rebuilt),
    ),
  ];
  return values.flatMap((limit) => (limit === null ? [] : [{ limit, spec }]));
}

/** The kind that the test of a name reads, by its spec or by what it reads; null if none is stated. */
function kindsOfTest(procedure: Procedure, name: string): readonly Kind[] | null {
  const reads = allSteps(procedure).find((step) => isTestOf(step, name) && step.test.reads !== null);
  const kind =
    (reads === undefined ? null : own(reads, 'test')?.reads) ??
    procedure.specs.find((spec) => spec.name === name)?.kind ??
    null;
  return kind === null ? null : [kind];
}

/** A limit that units are held to, with the shop's tolerance where the author wrote none. */
export interface JudgedLimit {
  readonly limit: Limit;
  /** The part number that it is for; null: all that have none of their own. */
  readonly number: string | null;
  /** How a reading near it is judged. */
  readonly acceptance: DecisionRule;
}

export type Which = 'rebuilt' | 'inService' | 'whenNew';

/** The limits that a use of a limit stands for at a step: the one written, or those of its spec and its part numbers. */
export function judgedLimits(
  procedure: StepFacts,
  step: Pick<Step, 'only'>,
  use: LimitUse,
  which: readonly Which[] = ['rebuilt'],
): JudgedLimit[] {
  const judged = (limit: Limit, number: string | null, acceptance: DecisionRule) => ({
    limit: withStanding(procedure.shop, limit).limit,
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
    // Where every number has a value of its own, that of the spec is nobody's.
    const common = own.length > 0 && own.length === numbers.length ? null : spec[one];
    return [{ name: null, limit: common, acceptance: ofSpec }, ...own].flatMap(({ name, limit, acceptance }) =>
      limit === null || !isOfItsKind(spec, limit) ? [] : [judged(limit, name, acceptance)],
    );
  });
}

/** The limit of one part number: its own, or that of all. Null: none is given, or none is required. */
export function judgedLimit(
  procedure: StepFacts,
  use: LimitUse,
  number: string | null,
  which: Which,
): JudgedLimit | null {
  const limits = judgedLimits(procedure, { only: number === null ? null : [number] }, use, [which]);
  return limits.find((one) => one.number === number) ?? limits.find((one) => one.number === null) ?? null;
}

/** A unit of the wrong kind is another rule's finding. A rate in two quantities is not of the kind of its first. */
function isOfItsKind({ kind, per }: Spec, limit: Limit): boolean {
  return kind === null || per !== null || kindAdmits(kind, quantitiesOf(limit)[0]!.unit);
}

/** A limit with the shop's tolerance put to a nominal that has none, and that tolerance; null: it is not needed, or there is none. */
export function withStanding(shop: Shop, limit: Limit): { limit: Limit; standing: StandingTolerance | null } {
  if (limit.form === 'then') {
    const [first, angle] = [withStanding(shop, limit.first), withStanding(shop, limit.angle)];
    return {
      limit: { ...limit, first: first.limit as NominalLimit, angle: angle.limit as NominalLimit },
      standing: first.standing ?? angle.standing,
    };
  }
  if (limit.form !== 'nominal' || limit.plus !== null || limit.minus !== null) return { limit, standing: null };
  const kind = kindOfUnit(limit.nominal.unit);
  const standing = shop.unlessStated.find((one) => one.kind === kind) ?? null;
  if (standing === null) return { limit, standing };
  return { limit: { ...limit, plus: standing.limit.plus, minus: standing.limit.minus }, standing };
}

import type { LimitUse, Procedure, Spec, Step } from '../model/procedure.ts';
import type { Source } from '../model/source.ts';
import { isTestOf, own } from '../model/steps.ts';
import type { Kind, Limit } from '../quantities/types.ts';

/** One limit as it is written somewhere, with the words for it. */
export interface Written {
  readonly limit: Limit;
  readonly words: string;
  readonly source: Source;
  readonly step: Step | null;
  readonly spec: Spec | null;
  /** What it must be of; null: anything. */
  readonly kinds: readonly Kind[] | null;
}

/** Every limit of a procedure that is written in a spec or a part number. */
export function specLimits(procedure: Procedure): Written[] {
  const of = (
    spec: Spec,
    value: Pick<Spec, 'rebuilt' | 'inService' | 'whenNew'>,
    source: Source,
    words: string,
  ): Written[] =>
    (
      [
        ['', value.rebuilt],
        [' in service', value.inService],
        [' with new parts', value.whenNew],
      ] as const
    ).flatMap(([which, limit]) =>
      limit === null
        ? []
        : [
            {
              limit,
              words: `${words}${which}`,
              source,
              step: null,
              spec,
              kinds: spec.kind === null ? null : [spec.kind],
            },
          ],
    );
  return [
    ...procedure.specs.flatMap((spec) => of(spec, spec, spec.source, `spec ${spec.name}`)),
    ...procedure.numbers.flatMap((number) =>
      number.values.flatMap((value) => {
        const spec = procedure.specs.find((other) => other.name === value.spec)!;
        return of(spec, value, value.source, `spec ${value.spec} of ${number.name}`);
      }),
    ),
  ];
}

/** Every limit that is written in a step, with what it must be of. */
export function stepLimits(procedure: Procedure): Written[] {
  return [...procedure.stages, ...procedure.repairs].flatMap((block) =>
    block.steps.flatMap((step) => limitsOfStep(step, procedure)),
  );
}

function limitsOfStep(step: Step, procedure: Procedure): Written[] {
  const made = (limit: Limit | null | undefined, words: string, kinds: readonly Kind[] | null): Written[] =>
    limit == null ? [] : [{ limit, words, source: step.source, step, spec: null, kinds }];
  const test = own(step, 'test');
  const use = own(step, 'limit');
  const choose = own(step, 'choose');
  return [
    ...made(
      use?.form === 'limit' ? use.limit : null,
      step.verb === 'torque' || step.verb === 'lock' ? 'the torque' : 'the limit',
      step.verb === 'torque' || step.verb === 'lock' ? ['torque'] : test?.reads != null ? [test.reads] : null,
    ),
    ...made(own(step, 'stretch'), 'the stretch', ['length']),
    ...made(step.air, 'the air', ['pressure']),
    ...made(own(step, 'bath'), 'the bath', ['temperature']),
    ...made(test?.hold?.amount, 'the pressure held', ['pressure']),
    ...made(test?.from, 'the pressure at the start', ['pressure']),
    ...made(test?.to, 'the pressure at the end', ['pressure']),
    ...made(test?.forTime, 'the time', ['time']),
    ...made(test?.inTime, 'the time', ['time']),
    // With the gauge shut nothing is worked at a pressure.
    ...made(own(step, 'at'), 'the speed', [
      'stroke rate',
      'speed',
      ...(own(step, 'gauge') === 'shut' ? [] : (['pressure'] as const)),
      'temperature',
      'angle',
      'cam angle',
    ]),
    ...(step.verb === 'across' ? made(step.spread, 'the spread', kindsOfTest(procedure, step.gate.test)) : []),
    ...(choose?.target?.form === 'limit'
      ? made(choose.target.limit, 'the target', kindsOfTest(procedure, choose.test))
      : []),
  ];
}

/** The limits that a use of a limit stands for: the one written, or those of its spec and its part numbers. */
export function limitsOfUse(procedure: Procedure, use: LimitUse): { limit: Limit; spec: Spec | null }[] {
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

/** What the test of a name is of, by its spec or by what it reads; null: nobody says. */
function kindsOfTest(procedure: Procedure, name: string): readonly Kind[] | null {
  const steps = [...procedure.stages, ...procedure.repairs].flatMap((block) => block.steps);
  const reads = steps.flatMap((step) => (isTestOf(step, name) ? (step.test.reads ?? []) : []));
  const kind = reads[0] ?? procedure.specs.find((spec) => spec.name === name)?.kind ?? null;
  return kind === null ? null : [kind];
}

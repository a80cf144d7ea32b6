import type { Procedure, Step, StepFacts, StepOf, TestFigures } from '../model/procedure.ts';
import { figuresAt, limitUses, own } from '../model/steps.ts';
import { kindOfLimit, window } from '../quantities/index.ts';
import { oncePer } from '../quantities/memo.ts';
import type { Kind, Limit } from '../quantities/types.ts';
import { type Said, say, term } from '../say/say.ts';
import { type JudgedLimit, judgedLimits, type Which } from './limits.ts';
import { type StepSetting, settingsIn } from './stages.ts';

/** One thing that a tool must do in a step, at one of the stations where the step may be done. */
export interface ToolWork {
  readonly step: Step;
  readonly station: string | null;
  /** A torque is set; a value is read; a difference is read (a stretch), wherever on the scale. */
  readonly does: 'set' | 'read' | 'difference';
  /** Null if it is measured, and nothing says what. */
  readonly kind: Kind | null;
  readonly limits: readonly JudgedLimit[];
}

/**
 * The kinds that a tool of the shop is for. The rest is read by eye and watch (drops, turns, seconds) or on the test
 * bench itself (speed, delivery, temperature).
 */
const byTool: ReadonlySet<Kind> = new Set<Kind>(['pressure', 'torque', 'length', 'force', 'resistance']);

/** Everything in a procedure that is set or read with a tool. */
export const toolWork = oncePer((procedure: Procedure): readonly ToolWork[] => {
  const work: ToolWork[] = [];
  for (const setting of settingsIn(procedure)) for (const step of setting.steps) work.push(...workAt(setting, step));
  return work;
});

/** The same for a step, which several rules judge one after the other. */
export function workAt(setting: StepSetting, step: Step): readonly ToolWork[] {
  const known = worksIn(setting);
  const work =
    known.get(step) ??
    workOf(setting, step).flatMap((each) =>
      each.kind === null || byTool.has(each.kind)
        ? [...setting.stations].map((station) => ({ ...each, step, station }))
        : [],
    );
  known.set(step, work);
  return work;
}

const worksIn = oncePer((_: StepSetting) => new Map<Step, readonly ToolWork[]>());

/** A figure at which a step is done, which some tool must be able to show. */
export interface ConditionWork extends ToolWork {
  /** What the figure is, up to the verb: `This step is done at`. */
  readonly words: Said;
}

/**
 * The figures that a step is done at, and the readings of a test bench: a tool that the shop has for them must reach
 * them; without one, the bench itself shows them.
 */
export function conditionWork(setting: StepSetting, step: Step): ConditionWork[] {
  const work: ConditionWork[] = [];
  for (const { words, limits } of conditions(setting, step))
    for (const kind of new Set(limits.map(({ limit }) => kindOfLimit(limit))))
      for (const station of setting.stations) work.push({ does: 'read', kind, limits, words, step, station });
  return work;
}

function conditions(procedure: StepFacts, step: Step): Pick<ConditionWork, 'words' | 'limits'>[] {
  const at = own(step, 'at');
  const neverAbove = own(step, 'test')?.neverAbove;
  const of = (words: Said, limit: Limit | null | undefined) =>
    limit == null ? [] : [{ words, limits: written(limit) }];
  const read =
    step.verb === 'test' || step.verb === 'read' || step.verb === 'set'
      ? reading(procedure, step)
      : step.verb === 'measure' || step.verb === 'check'
        ? held('read', limitsOf(procedure, step))
        : [];
  return [
    ...read.flatMap(({ kind, limits }) =>
      kind === null || byTool.has(kind) ? [] : [{ words: say`The ${term(kind)} to be read is`, limits }],
    ),
    // With the gauge shut no pressure is seen, and none hurts the gauge.
    ...(own(step, 'gauge') === 'shut' && at != null && isPressure(at) ? [] : of(say`This step is done at`, at)),
    ...figuresAt(step).flatMap(({ name, limit }) =>
      of(name === null ? say`This step is done at` : say`This step is done with the ${name} at`, limit),
    ),
    ...of(say`This step allows`, neverAbove == null ? null : { form: 'at most', most: neverAbove }),
    ...(byAir.has(step.verb) ? of(say`The air is`, step.air) : []),
    ...of(say`The bath is at`, own(step, 'bath')),
  ];
}

/** Verbs whose air a gauge shows. */
const byAir: ReadonlySet<string> = new Set(['test', 'read', 'set', 'check', 'measure']);

type Work = Pick<ToolWork, 'does' | 'kind' | 'limits'>;

function workOf(procedure: StepFacts, step: Step): Work[] {
  switch (step.verb) {
    case 'torque':
    case 'lock':
      return [
        ...held('set', limitsOf(procedure, step)).filter(({ kind }) => kind === 'torque'),
        ...(step.verb === 'lock' || step.stretch === null ? [] : held('difference', written(step.stretch))),
      ];
    case 'check':
      return held('read', limitsOf(procedure, step));
    case 'measure':
      return step.limit === null ? [sizeOf(procedure, step)] : held('read', limitsOf(procedure, step));
    case 'read':
    case 'set':
      return reading(procedure, step);
    case 'test':
      return [...reading(procedure, step), ...pressures(step.test)];
    default:
      return [];
  }
}

/** Work of the kind that its limits have. */
function held(does: ToolWork['does'], limits: readonly JudgedLimit[]): Work[] {
  const [first] = limits;
  return first === undefined ? [] : [{ does, kind: kindOfLimit(first.limit), limits }];
}

/** A figure that no reading is judged by. */
function written(limit: Limit): JudgedLimit[] {
  return [{ limit, number: null, acceptance: 'simple' }];
}

function limitsOf(procedure: StepFacts, step: Step, which?: readonly Which[]): JudgedLimit[] {
  return limitUses(step).flatMap((use) => judgedLimits(procedure, step, use, which));
}

/** A part that is measured with no limit: a shim within the range of its stock; for others nothing is known. */
function sizeOf({ family, shop }: StepFacts, step: Step): Work {
  const parts = step.objects.flatMap(({ name }) => family.parts.find((part) => part.name === name) ?? []);
  const limits = parts.flatMap((part) => {
    const sizes = shop.stocks.find(({ name }) => name === part.chosenFrom)?.sizes ?? [];
    const [low, high] = [sizes[0], sizes.at(-1)];
    return low === undefined || high === undefined ? [] : written({ form: 'range', low, high });
  });
  // The ends of a stock are what may be between the jaws, not a limit that the shim is held to.
  return { does: 'read', kind: limits[0] === undefined ? null : kindOfLimit(limits[0].limit), limits: ends(limits) };
}

/** What must be on the tool's scale but is not a limit: its ends one by one, so that they have no width. */
function ends(limits: readonly JudgedLimit[]): JudgedLimit[] {
  return limits.flatMap(({ limit, number }) => {
    const { low, high, nominal } = window(limit);
    const least = low ?? nominal;
    return [
      ...(least === null
        ? []
        : [{ limit: { form: 'at least', least } as const, number, acceptance: 'simple' as const }]),
      ...(high === null
        ? []
        : [{ limit: { form: 'at most', most: high } as const, number, acceptance: 'simple' as const }]),
    ];
  });
}

/** What a test, a setting or a reading states about its value. */
function reading(procedure: StepFacts, step: StepOf<'test' | 'read' | 'set'>): Work[] {
  const { specs, shop } = procedure;
  // A master's value is not declared.
  if (step.verb === 'read' && shop.masters.some(({ name }) => name === step.reading)) return [];
  const spec = step.verb === 'test' ? undefined : specs.find(({ name }) => name === step.reading);
  const limits = (which: readonly Which[]) => {
    const own = limitsOf(procedure, step, which);
    return own.length > 0 || spec === undefined
      ? own
      : judgedLimits(procedure, step, { form: 'spec', spec: spec.name, source: step.source }, which);
  };
  const asFound = step.verb === 'read' && step.asFound;
  const served = asFound ? limits(['inService']) : [];
  // With no limit in service, a reading as found is held to none: the tool must only reach it.
  const judged = served.length > 0 ? served : asFound ? ends(limits(['rebuilt'])) : limits(['rebuilt', 'whenNew']);
  const reads = step.verb === 'test' ? step.test.reads : null;
  const kind = reads ?? (judged[0] === undefined ? (spec?.kind ?? null) : kindOfLimit(judged[0].limit));
  return kind === null
    ? []
    : [{ does: 'read', kind, limits: judged.filter(({ limit }) => kindOfLimit(limit) === kind) }];
}

/** The pressures that a test holds or starts from. A pressure held below or above a reading is not known beforehand. */
function pressures(test: TestFigures): Work[] {
  if (test.hold === null && test.from === null) return [];
  const known = [test.hold?.relation === 'at' ? test.hold.amount : null, test.from, test.to];
  const limits = known.flatMap((limit) => (limit !== null && isPressure(limit) ? written(limit) : []));
  return [{ does: 'read', kind: 'pressure', limits }];
}

function isPressure(limit: Limit): boolean {
  return kindOfLimit(limit) === 'pressure';
}

import type { Plan, Wording } from '../model/plan.ts';
import type { Block, LimitUse, Procedure, TestFigures } from '../model/procedure.ts';
import type { NameUse, Source } from '../model/source.ts';
import { own, readingOf } from '../model/steps.ts';

/**
 * What a job may say of a procedure: all that others know of it, and nothing of how its steps are done or where they
 * are, so that a job is lowered again for none of that.
 */
export interface Signature
  extends Pick<Procedure, 'name' | 'source' | 'family' | 'shop' | 'revision' | 'numbers' | 'specs'> {
  /** What can be read of a unit: specs, tests, and what is read or set by a name of its own. */
  readonly readable: readonly NameUse[];
  /** Parts that a step tightens or locks. */
  readonly tightened: readonly string[];
  readonly tests: readonly TestSignature[];
  readonly records: readonly RecordSignature[];
}

/** What is written down in words. */
export interface RecordSignature {
  readonly name: string;
  readonly wording: Wording;
  readonly plan: Plan | null;
}

export interface TestSignature extends Pick<TestFigures, 'inTime' | 'reads'> {
  readonly name: string;
  readonly limit: LimitUse | null;
  readonly plan: Plan | null;
}

export function buildSignature(procedure: Procedure): Signature {
  const { name, source, family, shop, revision, numbers, specs, stages, repairs } = procedure;
  const steps = [...stages, ...repairs].flatMap((block) => block.steps);
  const tightening = steps.filter(({ verb }) => verb === 'torque' || verb === 'lock');
  return {
    name,
    source,
    family,
    shop,
    revision,
    numbers,
    specs,
    readable: withoutPlaces(readableNames(procedure), somewhere(source)),
    tightened: [...new Set(tightening.flatMap(({ objects }) => objects.map((object) => object.name)))],
    records: [...stages, ...repairs].flatMap(({ steps: all }) =>
      all.flatMap((step) =>
        step.verb === 'record'
          ? [withoutPlaces({ name: step.reading, wording: step.wording, plan: step.plan }, somewhere(source))]
          : [],
      ),
    ),
    tests: stages.flatMap((stage) =>
      stage.steps.flatMap((step) => {
        if (step.verb !== 'test') return [];
        const { inTime, reads } = step.test;
        const own = { name: step.gate.test, limit: step.limit, inTime, reads, plan: step.plan };
        return withoutPlaces([own, ...partsWorkedOut(own)], somewhere(source));
      }),
    ),
  };
}

/** What a reading is worked out of is read where it is, and held to nothing. */
function partsWorkedOut({ plan, reads }: TestSignature): TestSignature[] {
  if (plan?.workedOut == null) return [];
  const isOne = plan.points.length === 0 && plan.places === null;
  const bare = plan.points.map((point) => ({ ...point, limit: null, spread: null, beyond: null }));
  const own = isOne ? null : { ...plan, workedOut: null, spread: null, points: bare };
  return [plan.workedOut.first, plan.workedOut.second].map(({ name }) => ({
    name,
    limit: null,
    inTime: null,
    reads,
    plan: own,
  }));
}

/** Where in its declaration something is has to be asked when it matters, by its name. */
function somewhere({ file }: Source): Source {
  return { file, range: { start: { line: -1, character: 0 }, end: { line: -1, character: 0 } } };
}

/** A source in a signature that says only which declaration it is in. */
export function isSomewhere({ range }: Source): boolean {
  return range.start.line < 0;
}

/** What is read in a procedure: specs, tests, and what is read or set by a name of its own; where it is read first. */
export function readableNames({ specs, stages, repairs }: Procedure): NameUse[] {
  const steps = [...stages, ...repairs].flatMap((block) => block.steps);
  const named = steps.flatMap((step): NameUse[] => {
    const name = readingOf(step);
    const worked = own(step, 'plan')?.workedOut;
    return [
      ...(name === null ? [] : [{ name, source: step.source }]),
      ...(worked == null ? [] : [worked.first, worked.second].map((one) => ({ name: one.name, source: one.source }))),
    ];
  });
  const all = [...specs.map(({ name, source }) => ({ name, source })), ...named];
  const names = new Set<string>();
  return all.filter(({ name }) => !names.has(name) && names.add(name));
}

/** A procedure as far as the figures of its jobs depend on it: without the places of its steps, and without their words. */
export function selectFacts(procedure: Procedure): Procedure {
  const place = somewhere(procedure.source);
  const { family, shop, stages, repairs, ...rest } = procedure;
  const facts = withoutPlaces({ ...rest, hazards: [], allow: [] }, place);
  const bare = <T extends Block>(block: T) => bareBlock(block, place);
  return { ...facts, stages: stages.map(bare), repairs: repairs.map(bare), family, shop };
}

/** The facts of blocks: one that is the same is not copied again. */
const bareBlocks = new WeakMap<Block, Block>();

function bareBlock<T extends Block>(block: T, place: Source): T {
  const known = bareBlocks.get(block);
  if (known?.source.file === place.file) return known as T;
  const steps = block.steps.map((step) => ({ ...step, hazards: [], dangers: [], allow: [], note: null }));
  const made = withoutPlaces({ ...block, allow: [], steps }, place);
  bareBlocks.set(block, made);
  return made;
}

function withoutPlaces<T>(value: T, place: Source): T {
  if (typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) return value.map((one) => withoutPlaces(one, place)) as T;
  if ('file' in value && 'range' in value) return place as T;
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, withoutPlaces(one, place)])) as T;
}

import type { Procedure, TestFigures } from '../model/procedure.ts';
import type { Named, NameUse } from '../model/source.ts';

/** What a job may say of a procedure: all that others know of it, and nothing of how its steps are done. */
export interface Signature
  extends Pick<Procedure, 'name' | 'source' | 'family' | 'shop' | 'revision' | 'numbers' | 'specs'> {
  /** What can be read of a unit: specs, tests, and what is read or set by a name of its own. */
  readonly readable: readonly NameUse[];
  /** Parts that a step tightens or locks. */
  readonly tightened: readonly string[];
  readonly tests: readonly TestSignature[];
}

export interface TestSignature extends Pick<TestFigures, 'within' | 'inTime' | 'reads'> {
  readonly name: string;
}

export function signatureOf(procedure: Procedure): Signature {
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
    readable: readableNames(procedure),
    tightened: [...new Set(tightening.flatMap(({ objects }) => objects.map((object) => object.name)))],
    tests: stages.flatMap((stage) =>
      stage.steps.flatMap((step) => {
        if (step.verb !== 'test') return [];
        const { within, inTime, reads } = step.test!;
        return [{ name: step.gate!.name, within, inTime, reads }];
      }),
    ),
  };
}

function readableNames({ specs, stages, repairs }: Procedure): NameUse[] {
  const steps = [...stages, ...repairs].flatMap((block) => block.steps);
  const named = steps.flatMap((step): NameUse[] => {
    if (step.verb === 'test') return [{ name: step.gate!.name, source: step.source }];
    return step.reading !== null ? [{ name: step.reading, source: step.source }] : [];
  });
  const all: readonly (Named | NameUse)[] = [...specs, ...named];
  return all.filter(({ name }, index) => all.findIndex((other) => other.name === name) === index);
}

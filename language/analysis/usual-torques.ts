import type { Procedure } from '../model/procedure.ts';

/** Specs that joints are torqued to elsewhere in a procedure, or that have their names. */
export function usualTorques({ stages, repairs, specs }: Procedure, joints: readonly string[]): string[] {
  const used = [...stages, ...repairs].flatMap(({ steps }) =>
    steps.flatMap((step) =>
      (step.verb === 'torque' || step.verb === 'lock') &&
      step.limit?.form === 'spec' &&
      step.objects.some(({ name }) => joints.includes(name))
        ? [step.limit.spec]
        : [],
    ),
  );
  const named = specs.flatMap(({ name, kind }) =>
    kind === 'torque' && joints.some((joint) => name.startsWith(`${joint}-`)) ? [name] : [],
  );
  return [...new Set([...used, ...named])];
}

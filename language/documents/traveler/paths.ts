import { analyzeFlow } from '../../analysis/flow-analysis.ts';
import { place } from '../../analysis/locations.ts';
import type { Procedure, Step } from '../../model/procedure.ts';
import { isOfAll } from '../../model/steps.ts';

/** What the sheet has to know of the ways that a unit may take. */
export interface Paths {
  /** Parts that are thrown away by then, on every way on which the step is reached. */
  readonly gone: ReadonlyMap<Step, ReadonlySet<string>>;
  /** By repair: where a unit may go on after it, in the order of the stages; `null`: where it was sent from. */
  readonly resumes: ReadonlyMap<string, readonly (Step | null)[]>;
}

const known = new WeakMap<Procedure, Paths>();

/** The same object at each call: a sheet asks for it at each of its steps. */
export function findPaths(procedure: Procedure): Paths {
  const found = known.get(procedure) ?? walked(procedure);
  known.set(procedure, found);
  return found;
}

function walked(procedure: Procedure): Paths {
  const gone = new Map<Step, Set<string>>();
  const resumes = new Map<string, Set<Step | null>>();
  for (const made of analyzeFlow(procedure)) {
    made.visit({
      step({ step, before }) {
        // Only `all` leaves it to the sheet which parts there are.
        if (!isOfAll(step)) return;
        const away = new Set(
          [...made.layout.parts].filter(([, cells]) => before.must(cells.place, place.gone)).map(([name]) => name),
        );
        const earlier = gone.get(step);
        gone.set(step, earlier === undefined ? away : new Set([...earlier].filter((name) => away.has(name))));
      },
      resume(repair, to) {
        resumes.set(repair.name, (resumes.get(repair.name) ?? new Set()).add(to));
      },
    });
  }
  const order = [...procedure.stages, ...procedure.repairs].flatMap(({ steps }) => steps);
  const inOrder = (steps: ReadonlySet<Step | null>) =>
    [...steps].sort((a, b) => (a === null ? 1 : b === null ? -1 : order.indexOf(a) - order.indexOf(b)));
  return { gone, resumes: new Map([...resumes].map(([name, steps]) => [name, inOrder(steps)])) };
}

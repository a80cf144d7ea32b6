import type { Procedure, Repair, Stage, Step } from '../model/index.ts';
import type { Caution, Topic } from './caution.ts';
import { underPressure } from './scene.ts';
import { usualHazards } from './usual-hazards.ts';

/** The usual cautions of one step: `full` where the whole text stands again, `short` where a line is enough. */
export interface StepCautions {
  readonly full: readonly Caution[];
  readonly short: readonly Caution[];
  /** The unit is under test pressure: the first-aid line belongs on the page. */
  readonly pressure: boolean;
}

export interface UsualCautions {
  /** By stage name: the full texts at its head. */
  readonly stages: ReadonlyMap<string, readonly Caution[]>;
  /** By repair name. */
  readonly repairs: ReadonlyMap<string, readonly Caution[]>;
  /** By step. A step with none is not in it. */
  readonly steps: ReadonlyMap<Step, StepCautions>;
  /** Something in the procedure is under test pressure: the sheet says what to do for a spray wound. */
  readonly pressure: boolean;
}

/** Hazards of pressure are told in full again before the unit is connected or primed. */
const toldAgain: readonly Topic[] = ['injection', 'mist', 'rail'];

/**
 * The usual cautions of a procedure: in full at the head of each stage and repair that calls for them and before
 * `connect` and `prime`, a short line at later steps. Pure; depends on verbs, fluids, stations and the author's words.
 */
export function usualCautions(procedure: Procedure): UsualCautions {
  const stages = new Map<string, readonly Caution[]>();
  const repairs = new Map<string, readonly Caution[]>();
  const steps = new Map<Step, StepCautions>();

  const go = (place: Stage | Repair): readonly Caution[] => {
    const station = procedure.shop.stations.find(({ name }) => name === place.station) ?? null;
    const called = place.steps.map((step) => usualHazards.filter((text) => text.when({ procedure, step, station })));
    const head = usualHazards.filter((text) => called.some((list) => list.includes(text)));
    // What the reader has just read in full is not told in full again.
    let fresh: readonly Caution[] = head;
    place.steps.forEach((step, index) => {
      const cautions = called[index]!;
      const again = step.verb === 'connect' || step.verb === 'prime';
      const full = again ? cautions.filter((text) => toldAgain.includes(text.topic) && !fresh.includes(text)) : [];
      const told = index === 0 ? head : full;
      const short = cautions.filter((text) => text.repeats && !told.includes(text) && !full.includes(text));
      const pressure = underPressure({ procedure, step, station });
      if (full.length > 0 || short.length > 0 || pressure) steps.set(step, { full, short, pressure });
      fresh = full;
    });
    return head;
  };

  for (const stage of procedure.stages) stages.set(stage.name, go(stage));
  for (const repair of procedure.repairs) repairs.set(repair.name, go(repair));
  const pressed = [...steps.values()].some(({ pressure }) => pressure);
  return {
    stages,
    repairs,
    steps,
    pressure: pressed,
  };
}

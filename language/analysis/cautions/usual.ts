import type { Procedure, Repair, Stage, Step } from '../../model/index.ts';
import { formatQuantity } from '../../quantities/index.ts';
import { oncePer } from '../../quantities/memo.ts';
import type { Call, Caution, Scene, Topic, UsualText } from './caution.ts';
import { atLeast, figuresOf, highest } from './figures.ts';
import { isHarmlessGas, isPressed, stores, underPressure } from './pressure.ts';
import { usualHazards } from './usual-hazards.ts';

/** The usual cautions of one step: `full` where the whole text is printed again, `short` where a line is enough. */
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

/** Hazards of pressure are printed in full again before the unit is connected or primed. */
const toldAgain: readonly Topic[] = ['injection', 'mist', 'rail'];

/** A caution that a step calls for, and whether its head alone warns of it. */
export type Called = Caution & Pick<Call, 'headOnly'>;

/**
 * The usual cautions of a procedure: in full at the head of each stage and repair that calls for them and before
 * `connect` and `prime`, a short line at later steps. Pure. They follow from verbs, fluids, stations, figures and what
 * the author declared, and from no title and no other words of a text.
 */
export const usualCautions = oncePer((procedure: Procedure): UsualCautions => {
  const stages = new Map<string, readonly Caution[]>();
  const repairs = new Map<string, readonly Caution[]>();
  const steps = new Map<Step, StepCautions>();
  const { sceneAt, calledFor } = calledIn(procedure);

  const go = (place: Stage | Repair): readonly Caution[] => {
    const called = place.steps.map((step) => calledFor(place, step));
    const head = usualHazards.flatMap(({ topic }) => called.flat().find((one) => one.topic === topic) ?? []);
    // What the reader has just read in full is not printed in full again.
    let fresh: readonly Caution[] = head;
    place.steps.forEach((step, index) => {
      const cautions = called[index]!.filter(({ headOnly }) => headOnly !== true);
      const again = step.verb === 'connect' || step.verb === 'prime';
      const full = again ? cautions.filter((one) => toldAgain.includes(one.topic) && !has(fresh, one)) : [];
      const told = index === 0 ? head : full;
      const short = cautions.filter((one) => one.repeats && !has(told, one));
      const pressure = underPressure(sceneAt(place, step)) !== null;
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
});

/** All cautions that a step calls for, wherever the sheet prints them, each with what it follows from. */
export function cautionsByStep(procedure: Procedure): (step: Step) => readonly Called[] {
  const { calledFor } = calledIn(procedure);
  const places = new Map(
    [...procedure.stages, ...procedure.repairs].flatMap((place) => place.steps.map((step) => [step, place])),
  );
  return (step) => {
    const place = places.get(step);
    return place === undefined ? [] : calledFor(place, step);
  };
}

/** What each step of a procedure calls for: a sheet needs it in several places, and it takes most of the time of one. */
const calledIn = oncePer((procedure: Procedure) => {
  const sceneAt = scenesOf(procedure);
  const known = new Map<Step, { readonly place: Stage | Repair; readonly called: readonly Called[] }>();
  return {
    sceneAt,
    calledFor(place: Stage | Repair, step: Step): readonly Called[] {
      const found = known.get(step);
      if (found?.place === place) return found.called;
      const called = calledAt(sceneAt(place, step));
      known.set(step, { place, called });
      return called;
    },
  };
});

/** Lays out what is around each step, with what is worked out for the whole procedure once. */
function scenesOf(procedure: Procedure): (place: Stage | Repair, step: Step) => Scene {
  const storedFigure = highPressure(procedure);
  const gasOnly = gasStations(procedure);
  return (place, step) => ({
    procedure,
    step,
    station: procedure.shop.stations.find(({ name }) => name === place.station) ?? null,
    gasOnly: gasOnly(place.station),
    storedFigure,
  });
}

function calledAt(scene: Scene): Called[] {
  return usualHazards.flatMap(({ when, ...text }) => {
    const call = when(scene);
    return call === null ? [] : [{ ...text, ...call }];
  });
}

const has = (among: readonly UsualText[], { topic }: UsualText) => among.some((other) => other.topic === topic);

/** The highest pressure of a procedure, as written, if pipes and rails store it. */
function highPressure(procedure: Procedure): string | null {
  const steps = [...procedure.stages, ...procedure.repairs].flatMap((place) => place.steps);
  const top = highest(
    steps.flatMap((step) => figuresOf(procedure, step)),
    'pressure',
  );
  return top === null || atLeast([top], stores) === null ? null : formatQuantity(top);
}

/**
 * Whether all that is pressed at a station is pressed with air or vacuum. A repair without a station is done where the
 * unit came from, so it is asked of all.
 */
function gasStations(procedure: Procedure): (station: string | null) => boolean {
  const { stages, repairs, shop } = procedure;
  const pressed = [...stages, ...repairs].flatMap((place) => {
    const station = shop.stations.find(({ name }) => name === place.station) ?? null;
    return place.steps
      .filter((step) => isPressed({ step, station }))
      .map((step) => ({ station: place.station, gas: isHarmlessGas({ procedure, step }) }));
  });
  return (station) => {
    const here = pressed.filter((one) => station === null || one.station === null || one.station === station);
    return here.length > 0 && here.every(({ gas }) => gas);
  };
}

/** Whole steps that can come next, by what is known of the unit: written with one key. */
import { flag, port as opening, place, gate as proof, joint as tightness } from '../../analysis/locations.ts';
import { orderOff, orderOn } from '../../analysis/order.ts';
import { isTest } from '../../model/steps.ts';
import { type Said, say } from '../../say/say.ts';
import type { StateAt } from '../state-at.ts';
import { torqueOf } from './by-state.ts';

/** A step, and what it is good for. */
export interface WholeStep {
  readonly text: string;
  readonly why: Said;
}

/** Steps that can come next, the likeliest first. */
export function wholeSteps(at: StateAt): WholeStep[] {
  const { procedure, state, states, last } = at;
  const { layout, relations } = states;
  const { family, shop } = procedure;
  const parts = family.parts.map(({ name }) => name);
  const ports = (bits: number) =>
    [...layout.ports].flatMap(([name, location]) => (state.must(location, bits) ? [name] : []));
  const joints = (bits: number) =>
    [...layout.joints].flatMap(([name, location]) => (state.must(location, bits) ? [name] : []));
  const isCopy = (name: string) => family.parts.some((part) => part.name === name && part.position !== null);
  const list = (names: readonly string[]) => names.filter((name) => !isCopy(name));
  const steps: WholeStep[] = [];
  const add = (verb: string, names: readonly string[], why: Said, written = (name: string) => name) => {
    const named = list(names);
    if (named.length > 0) steps.push({ text: `${verb} ${named.map(written).join(', ')}`, why });
  };
  const located = (name: string) => (relations.part(name).locatedBy === null ? name : `${name} located`);
  const run = joints(tightness.run);
  for (const joint of list(run)) {
    const spec = torqueOf(procedure, joint);
    const kind = family.joints.find(({ part }) => part === joint);
    if (kind?.handTightIsFinal === true || spec === null) continue;
    steps.push({ text: `torque ${joint} to ${spec}`, why: say`it is run down, and not tight` });
  }
  add(
    'slacken',
    joints(tightness.torqued | tightness.found).filter((name) =>
      relations.onIt(name).every((over) => !state.mustBeIn(over.name)),
    ),
    say`they are tight`,
  );
  const loose = parts.filter((name) => state.mustBeIn(name) && !isTight(name) && !isCarrier(name));
  const off = parts.filter((name) => state.must(layout.parts.get(name)!.place, place.off | place.sub));
  if (last === null || ['slacken', 'remove', 'discard', 'clamp', 'compress'].includes(last.verb))
    add('remove', orderOff(relations, state, loose), say`in the order in which they come off`);
  else
    add(
      'fit',
      orderOn(
        relations,
        state,
        off.filter((name) => !layout.joints.has(name)),
      ),
      say`in the order in which they go on`,
      located,
    );
  add(
    'run-down',
    joints(tightness.apart).filter(
      (name) =>
        state.mustBeIn(relations.joint(name)!.to) && relations.part(name).holds.every((held) => state.mustBeIn(held)),
    ),
    say`what they hold is in place`,
  );
  const station = shop.stations.find(({ name }) =>
    state.layout.stations.some((one, bit) => one === name && state.get(layout.unit.station) === 1 << bit),
  );
  add('uncap', station?.pressure === true ? ports(opening.capped) : [], say`they are capped`);
  add('cap', station?.pressure === true ? [] : ports(opening.open), say`they are open`);
  add('connect', station?.pressure === true ? ports(opening.open).slice(0, 1) : [], say`it is open`);
  if (state.must(layout.unit.pressure, flag.yes)) steps.push({ text: 'relieve', why: say`the unit is under pressure` });
  else add('disconnect', ports(opening.connected), say`no pressure is on them`);
  const carrier = family.parts.find(({ heldIn }) => heldIn !== null);
  if (carrier !== undefined && station?.pressure !== true)
    steps.push(
      state.must(layout.unit.clamped, flag.yes)
        ? { text: `unclamp ${carrier.name}`, why: say`it is clamped` }
        : { text: `clamp ${carrier.name}`, why: say`nothing holds it` },
    );
  for (const { name } of family.provenBy) {
    const location = layout.gates.get(name);
    const isWritten = procedure.stages.some((stage) =>
      stage.steps.some((step) => isTest(step) && step.gate.test === name),
    );
    if (isWritten || (location !== undefined && state.must(location, proof.passed)) || station?.pressure !== true)
      continue;
    const spec = procedure.specs.find((one) => one.name === name);
    steps.push({
      text: spec === undefined ? `test ${name}` : `test ${name} read ${spec.kind ?? 'pressure'} within ${name}`,
      why: say`still owed: the family is proven by it`,
    });
  }
  return steps;

  function isTight(name: string): boolean {
    const location = layout.joints.get(name);
    return location !== undefined && state.may(location, tightness.found | tightness.torqued | tightness.locked);
  }

  /** The unit's body stays. */
  function isCarrier(name: string): boolean {
    const part = relations.part(name);
    return part.on.length + part.in.length + part.through.length === 0;
  }
}

import type { Part } from '../model/family.ts';
import type { Gate, Procedure, Step, StepObject, StepOf } from '../model/procedure.ts';
import type { FluidKind } from '../model/shop.ts';
import { type GateStep, isGate, own, readingOf, testGateId } from '../model/steps.ts';
import type { Verb } from '../model/verbs.ts';
import { kindOfLimit } from '../quantities/index.ts';
import { verbsThat } from '../syntax/verbs/index.ts';
import { isHydraulic } from './hydraulic.ts';
import { limitsOfUse } from './limits.ts';
import type { LocationLayout } from './locations.ts';
import * as bits from './locations.ts';
import { balancedParts, provesThrough, reachOf } from './reach.ts';
import { Relations, restsOn } from './relations.ts';
import type { AbstractState } from './state.ts';

/**
 * What a step does to the state. It goes on as if the step's conditions had held (a dirty part is taken as
 * washed): the rules report a broken condition once, and what comes after it is not reported again.
 */
export class Effects {
  private readonly procedure: Procedure;
  private readonly relations: Relations;
  private readonly absent: ReadonlySet<string>;

  constructor(procedure: Procedure, absent: ReadonlySet<string>) {
    this.procedure = procedure;
    this.relations = Relations.of(procedure.family);
    this.absent = absent;
  }

  of(procedure: Procedure): Effects {
    return new Effects(procedure, this.absent);
  }

  /** All of a step that `apply` looks at: steps with the same key do the same to the same state. */
  keyOf(step: Step): string {
    const names = (objects: readonly StepObject[]) =>
      objects
        .map(({ kind, name, assembly }) => `${kind} ${name}${assembly === undefined ? '' : ` of ${assembly.name}`}`)
        .join();
    const flags = [
      own(step, 'asFound'),
      own(step, 'moves') != null,
      own(step, 'forTrial'),
      own(step, 'readyToFit'),
      step.verb === 'check' && ofFaces(step),
      isHydraulic(step, this.procedure),
    ];
    const said = [step.verb, names(step.objects), names(own(step, 'withObjects') ?? []), own(step, 'station')];
    const more = [own(step, 'fluid'), readingOf(step), step.verb === 'set' ? step.gate.id : ''];
    return `${said.join(';')};${more.join(';')};${flags.map((flag) => (flag === true ? '1' : '0')).join('')}`;
  }

  /** Applies a step in place. `at` is the step's index, for `since`. */
  apply(step: Step, state: AbstractState, at: number) {
    const { layout } = state;
    const { unit } = layout;
    const set = (cell: number, value: number) => state.set(cell, value, at);
    const parts = partNames(step);
    for (const name of [...parts, ...(own(step, 'withObjects') ?? []).map((object) => object.name)]) {
      // A step that names a part has it in hand, where the unit is.
      if (!state.layout.parts.has(name)) continue;
      set(state.part(name).where, 1);
      // Taken out of its basket: it must be put down again before the unit goes on.
      if (
        inHand.has(step.verb) &&
        !this.notOnIt(name) &&
        state.may(state.part(name).place, bits.place.off | bits.place.sub)
      )
        set(state.part(name).kept, bits.kept.loose);
    }
    for (const name of alongWith(step)) set(state.part(name).where, 1);
    const taken = readingOf(step);
    // What is read as found is of the unit as it came, not of this build.
    if (taken !== null && own(step, 'asFound') !== true) set(layout.readings.get(taken)!, bits.reading.taken);
    switch (step.verb) {
      case 'receive':
      case 'photo':
      case 'measure':
      case 'seal':
      case 'pack':
      case 'hold-for':
      case 'wait':
      case 'send-out':
      case 'book-in':
      case 'read':
      case 'line-up':
        if (step.verb === 'read' && isHydraulic(step, this.procedure)) set(unit.pressure, bits.flag.yes);
        return;
      case 'press':
        for (const name of parts) this.bind(name, state, at);
        return;
      case 'compress':
      case 'release':
        for (const name of parts)
          if (layout.compressed.has(name))
            set(layout.compressed.get(name)!, step.verb === 'compress' ? bits.flag.yes : bits.flag.no);
        return;
      case 'choose':
        // Another one out of the drawer, as it lies there.
        for (const name of parts)
          if (!this.relations.part(name).readyToFit) set(state.part(name).dirt, bits.dirt.preserved);
        return;
      case 'tag':
        return set(unit.tagged, bits.flag.yes);
      case 'clamp':
        return set(unit.clamped, bits.flag.yes);
      case 'unclamp':
        return set(unit.clamped, bits.flag.no);
      case 'slacken':
        for (const name of parts) this.slacken(name, state, at);
        return;
      case 'back-off':
        for (const object of step.objects) {
          set(layout.adjusters.get(object.name)!, bits.adjuster.backed);
          this.invalidate(object.name, state, at);
        }
        return;
      case 'remove':
        for (const { name, assembly } of step.objects) this.takeOff(name, state, at, bits.place.off, assembly?.others);
        for (const object of step.withObjects) this.takeOff(object.name, state, at, bits.place.sub);
        return;
      case 'discard':
        for (const name of [...alongWith(step), ...parts]) this.takeOff(name, state, at, bits.place.gone);
        return;
      case 'keep':
        for (const name of this.withInside([...parts, ...step.withObjects.map((object) => object.name)], state)) {
          const cells = state.part(name);
          if (step.fluid !== null) set(cells.wet, this.wetWith(step));
          set(cells.kept, bits.kept.kept);
          set(cells.where, step.station === null ? 1 : layout.stationBit(step.station));
        }
        for (const name of alongWith(step))
          set(state.part(name).where, step.station === null ? 1 : layout.stationBit(step.station));
        return;
      case 'send':
        for (const name of this.withInside(parts, state)) {
          set(state.part(name).where, layout.stationBit(step.station));
          set(state.part(name).kept, bits.kept.kept);
        }
        for (const name of alongWith(step)) set(state.part(name).where, layout.stationBit(step.station));
        return;
      case 'guard':
        for (const object of step.objects) set(layout.faces.get(object.name)!.guard, bits.guard.on);
        for (const object of step.withObjects) {
          set(state.part(object.name).place, bits.place.guard);
          set(state.part(object.name).kept, bits.kept.kept);
        }
        return;
      case 'cap':
        for (const object of step.objects) set(layout.ports.get(object.name)!, bits.port.capped);
        return;
      case 'uncap':
        for (const object of step.objects) set(layout.ports.get(object.name)!, bits.port.open);
        return;
      case 'connect':
        for (const object of step.objects) set(layout.ports.get(object.name)!, bits.port.connected);
        return;
      case 'disconnect':
        for (const object of step.objects) set(layout.ports.get(object.name)!, bits.port.open);
        set(unit.pressure, bits.flag.no);
        set(unit.primed, bits.flag.no);
        return;
      case 'wash':
      case 'soak':
        for (const name of this.notGone(parts, state))
          this.cleaned(name, bits.dirt.washed, this.wetWith(step), state, at);
        return;
      case 'rinse':
        for (const name of this.notGone(parts, state)) this.rinsed(name, this.wetWith(step), state, at);
        return;
      case 'clean-holes':
        for (const name of parts)
          set(state.part(name).dirt, (state.get(state.part(name).dirt) & bits.dirt.dirty) | bits.dirt.loosened);
        return;
      case 'wipe':
        for (const name of parts)
          if (step.fluid === null) this.wipedDry(name, state, at);
          else this.cleaned(name, bits.dirt.washed, this.wetWith(step), state, at);
        return;
      case 'blow-dry':
        for (const name of this.notGone(parts, state)) set(state.part(name).wet, dried(name, state));
        return;
      case 'oil':
        for (const name of parts)
          set(state.part(name).wet, step.fluid === null ? bits.wet.assembly : this.wetWith(step));
        return;
      case 'blast':
      case 'buff':
        for (const name of parts) {
          this.dirtied(name, state, at);
          this.unmeasured(name, 'ground', state, at);
        }
        return;
      case 'lap':
        this.lapped(step, state, at);
        return;
      case 'do':
        for (const { kind, name } of step.objects) this.worked(kind, name, state, at);
        return;
      case 'clean-outside':
        return set(unit.outside, bits.flag.yes);
      case 'check':
        this.look(step, state, at);
        if (step.moves !== null)
          for (const name of parts) if (layout.moved.has(name)) set(layout.moved.get(name)!, bits.flag.yes);
        return;
      case 'renew':
        for (const name of parts) {
          this.renew(name, step, state, at);
          this.unmeasured(name, 'renewed', state, at);
        }
        for (const { name, assembly } of step.objects)
          if (assembly !== undefined) {
            this.cleaned(name, bits.dirt.rinsed, bits.wet.oil, state, at);
            for (const other of assembly.others) this.renewBuilt(other, state, at);
          }
        return;
      case 'fit':
        for (const name of [...parts, ...step.withObjects.map((object) => object.name)]) {
          this.putIn(name, step.forTrial, state, at);
          if (!step.forTrial) this.bind(name, state, at);
          if (!step.forTrial && this.isUnmarked(name)) this.unmeasured(name, 'turned', state, at);
        }
        return;
      case 'run-down':
        for (const name of parts) {
          this.close(name, state, at);
          this.setJoint(name, bits.joint.run, state, at);
        }
        return;
      case 'torque':
        for (const name of parts) {
          this.close(name, state, at);
          this.setJoint(name, bits.joint.torqued, state, at);
        }
        return;
      case 'lock':
        for (const name of parts) this.lock(name, state, at);
        return;
      case 'prime':
        set(unit.primed, bits.flag.yes);
        return set(unit.pressure, bits.flag.yes);
      case 'relieve':
        return set(unit.pressure, bits.flag.no);
      case 'test':
        if (isHydraulic(step, this.procedure)) set(unit.pressure, bits.flag.yes);
        return;
      case 'set':
        for (const object of step.objects) {
          this.invalidate(object.name, state, at, { setting: step });
          set(layout.adjusters.get(object.name)!, bits.adjuster.set);
        }
        // Turning made every reading old; this one is taken at the end of it.
        if (taken !== null) set(layout.readings.get(taken)!, bits.reading.taken);
        if (isHydraulic(step, this.procedure)) set(unit.pressure, bits.flag.yes);
        return;
      case 'across':
      case 'record':
        return;
      case 'mark':
        return set(unit.marked, bits.flag.yes);
      case 'sign-off':
        return set(unit.signed, bits.flag.yes);
      default:
        step satisfies never;
    }
  }

  /** Not on the unit at all: of another part number, or in a bag beside it. */
  private notOnIt(name: string): boolean {
    return this.absent.has(name) || this.relations.part(name).suppliedLoose;
  }

  private notGone(parts: readonly string[], state: AbstractState): string[] {
    return parts.filter((name) => !state.must(state.part(name).place, bits.place.gone));
  }

  private wetWith(step: Step): number {
    const kind = this.procedure.shop.fluids.find((fluid) => fluid.name === own(step, 'fluid'))?.kind;
    if (kind !== undefined) return wetBit[kind];
    // Nothing says in what, and that is reported: the usual fluid for the step is assumed.
    return step.verb === 'rinse' ? bits.wet.oil : bits.wet.solvent;
  }

  private cleaned(name: string, how: number, wetness: number, state: AbstractState, at: number) {
    const cells = state.part(name);
    state.set(cells.dirt, how, at);
    state.set(cells.wet, wetness, at);
  }

  /** A dry cloth takes dirt off, and spreads lapping paste. */
  private wipedDry(name: string, state: AbstractState, at: number) {
    const { dirt } = state.part(name);
    const paste = state.get(dirt) & bits.dirt.paste;
    const others = state.may(dirt, ~bits.dirt.paste) ? bits.dirt.washed : 0;
    this.cleaned(name, paste | others, dried(name, state), state, at);
  }

  /** A rinse takes off preservative and what was loosened; dirt as it came in and lapping paste want a wash. */
  private rinsed(name: string, wetness: number, state: AbstractState, at: number) {
    const cells = state.part(name);
    const value = state.get(cells.dirt);
    const dirty = value & (bits.dirt.dirty | bits.dirt.paste);
    state.set(cells.dirt, dirty | (value === dirty ? 0 : bits.dirt.rinsed), at);
    state.set(cells.wet, wetness, at);
  }

  /** Parts, and those that came out with them and still lie in them. */
  private withInside(parts: readonly string[], state: AbstractState): string[] {
    return parts.flatMap((name) => [
      name,
      ...this.relations
        .inside(name)
        .map((inner) => inner.name)
        .filter((inner) => !parts.includes(inner) && state.may(state.part(inner).place, bits.place.sub)),
    ]);
  }

  private dirtied(name: string, state: AbstractState, at: number) {
    state.set(state.part(name).dirt, bits.dirt.dirty, at);
  }

  private slacken(name: string, state: AbstractState, at: number) {
    if (!state.may(state.part(name).place, bits.place.in | bits.place.trial)) return;
    this.release(name, state, at);
    this.setJoint(name, bits.joint.slack, state, at);
    if (this.relations.loaded(name)) this.open(name, state, at, state.mustBeIn(name));
    else this.touchNamed(name, state, at);
  }

  /**
   * A loaded joint gives: the prime is lost and what was proven through it is stale. Not for certain where the part may
   * have been off already.
   */
  private open(joint: string, state: AbstractState, at: number, sure: boolean) {
    const { primed, pressure } = state.layout.unit;
    for (const cell of [primed, pressure]) state.set(cell, bits.flag.no | (sure ? 0 : state.get(cell)), at);
    this.invalidate(joint, state, at, { sure });
  }

  /** What a tight joint squeezed has taken its set: it does not seal, or stretch, a second time. */
  private release(joint: string, state: AbstractState, at: number) {
    const cell = state.layout.joints.get(joint);
    const tight = bits.joint.torqued | bits.joint.locked;
    if (cell === undefined || !state.may(cell, tight)) return;
    const sure = state.must(cell, tight) && state.mustBeIn(joint);
    for (const name of this.relations.squeezedBy(joint)) this.wornOut(name, sure, state, at);
  }

  private wornOut(name: string, sure: boolean, state: AbstractState, at: number) {
    const { age } = state.part(name);
    if (state.may(age, bits.age.new))
      state.set(age, (state.get(age) & (sure ? ~bits.age.new : ~0)) | bits.age.used, at);
  }

  private setJoint(name: string, value: number, state: AbstractState, at: number) {
    const cell = state.layout.joints.get(name);
    if (cell === undefined) return;
    // As if what it pulls tight again had been renewed: if it was not, that is reported where it is pulled tight.
    if (value !== bits.joint.slack && state.may(cell, bits.joint.slack | bits.joint.apart))
      for (const part of this.relations.squeezedBy(name)) state.set(state.part(part).age, bits.age.new, at);
    // What is shut in or pulled up may bind: what was felt before says nothing now.
    for (const [part, felt] of state.layout.moved)
      if (this.relations.closure(name).has(part) || name === part) state.set(felt, bits.flag.no, at);
    // A joint that is pulled up again is another joint, tight before or not.
    const turned = state.get(cell) !== value || value === bits.joint.torqued;
    if (turned && value !== bits.joint.slack) {
      if (this.relations.loaded(name)) this.invalidate(name, state, at);
      else this.touchNamed(name, state, at);
    }
    state.set(cell, value, at);
  }

  /** @param along what stays in its place on it, and comes off with it: the rest of its assembly */
  private takeOff(name: string, state: AbstractState, at: number, to: number, along: readonly string[] = []) {
    const { layout } = state;
    const cells = state.part(name);
    const wasGuard = state.must(cells.place, bits.place.guard);
    if (layout.joints.has(name) && state.may(cells.place, bits.place.in)) this.release(name, state, at);
    // A seal that was pressed in has been stretched by coming out.
    if (
      to === bits.place.off &&
      this.relations.part(name).usedOnce &&
      !this.relations.isSqueezed(name) &&
      state.may(cells.place, bits.place.in)
    )
      this.wornOut(name, state.must(cells.place, bits.place.in), state, at);
    const opens = this.relations.closedBy(name).map((joint) => joint.part);
    if (state.may(cells.place, bits.place.in)) {
      const sure = state.mustBeIn(name);
      if (this.relations.loaded(name)) this.open(name, state, at, sure);
      else if (layout.joints.has(name)) this.touchNamed(name, state, at, sure);
      for (const joint of opens) this.open(joint, state, at, sure);
    }
    if (layout.joints.has(name)) state.set(layout.joints.get(name)!, bits.joint.apart, at);
    if (layout.adjusters.has(name)) {
      state.set(layout.adjusters.get(name)!, bits.adjuster.disturbed, at);
      this.invalidate(name, state, at);
    }
    if (wasGuard || state.may(cells.place, bits.place.guard)) this.unguard(name, state, at);
    state.set(cells.place, to, at);
    state.set(cells.kept, to === bits.place.gone || wasGuard ? bits.kept.kept : bits.kept.loose, at);
    if (to !== bits.place.off && to !== bits.place.gone) return;
    const on = bits.place.in | bits.place.trial;
    for (const inner of this.relations.inside(name)) {
      if (along.includes(inner.name)) continue;
      const cell = state.part(inner.name).place;
      // What may have been out already stays so.
      const out = state.get(cell) & ~on;
      if (!state.may(cell, on)) continue;
      this.takeOff(inner.name, state, at, bits.place.sub);
      state.set(cell, bits.place.sub | out, at);
    }
  }

  private unguard(part: string, state: AbstractState, at: number) {
    for (const face of this.relations.family.faces) {
      if (face.guardedBy === part || face.guardedBy === null)
        state.set(state.layout.faces.get(face.id)!.guard, bits.guard.off, at);
    }
  }

  /** A joint that closes has its own part, what that goes on and all inside it in place. */
  private close(name: string, state: AbstractState, at: number) {
    for (const part of [...this.relations.closure(name), ...restsOn(this.relations.part(name)), name]) {
      if (!this.absent.has(part) && !state.mustBeIn(part)) this.putIn(part, false, state, at);
    }
  }

  private putIn(name: string, trial: boolean, state: AbstractState, at: number) {
    const cells = state.part(name);
    const isNew = state.must(cells.place, bits.place.gone);
    if (state.may(cells.place, bits.place.guard)) this.unguard(name, state, at);
    state.set(cells.place, trial ? bits.place.trial : bits.place.in, at);
    state.set(cells.kept, bits.kept.kept, at);
    if (isNew || this.relations.part(name).renewed) state.set(cells.age, bits.age.new, at);
    state.set(cells.dirt, bits.dirt.rinsed, at);
    // As if it had been dry or oiled: if it was not, that is reported where it is fitted.
    if (!trial) state.set(cells.wet, fitted(state.get(cells.wet)), at);
    for (const inner of this.relations.inside(name)) {
      const cell = state.part(inner.name).place;
      if (state.must(cell, bits.place.sub)) this.putIn(inner.name, trial, state, at);
      // It may lie in it: then it goes in with it.
      else if (state.may(cell, bits.place.sub))
        state.set(cell, (state.get(cell) & ~bits.place.sub) | (trial ? bits.place.trial : bits.place.in), at);
    }
    for (const face of this.relations.faces(name))
      state.set(state.layout.faces.get(face.id)!.guard, bits.guard.off, at);
  }

  private renew(name: string, step: StepOf<'renew'>, state: AbstractState, at: number) {
    const cells = state.part(name);
    if (state.may(cells.place, bits.place.in)) this.takeOff(name, state, at, bits.place.off);
    // A new body is the unit from here on: nobody fits it.
    const isBody = restsOn(this.relations.part(name)).length === 0;
    state.set(cells.place, isBody ? bits.place.in : bits.place.off, at);
    state.set(cells.age, bits.age.new, at);
    state.set(cells.kept, bits.kept.kept, at);
    for (const port of this.relations.ports(name)) state.set(state.layout.ports.get(port.name)!, bits.port.open, at);
    const ready = step.readyToFit || this.relations.part(name).readyToFit;
    state.set(cells.dirt, ready ? bits.dirt.rinsed : bits.dirt.preserved, at);
    state.set(cells.wet, ready ? bits.wet.oil : bits.wet.preserving, at);
    for (const face of this.relations.faces(name))
      state.set(state.layout.faces.get(face.id)!.looked, bits.looked.yes, at);
  }

  /** A part of a new assembly: it comes in its place, clean, its joint tight. */
  private renewBuilt(name: string, state: AbstractState, at: number) {
    const cells = state.part(name);
    this.unmeasured(name, 'renewed', state, at);
    state.set(cells.place, bits.place.in, at);
    state.set(cells.age, bits.age.new, at);
    state.set(cells.kept, bits.kept.kept, at);
    state.set(cells.dirt, bits.dirt.rinsed, at);
    state.set(cells.wet, bits.wet.oil, at);
    if (state.layout.joints.has(name)) state.set(state.layout.joints.get(name)!, bits.joint.torqued, at);
    for (const port of this.relations.ports(name)) state.set(state.layout.ports.get(port.name)!, bits.port.open, at);
    for (const face of this.relations.faces(name))
      state.set(state.layout.faces.get(face.id)!.looked, bits.looked.yes, at);
  }

  private lapped(step: StepOf<'lap'>, state: AbstractState, at: number) {
    for (const object of step.objects) {
      const part = object.kind === 'face' ? this.relations.face(object.name).part : object.name;
      state.set(state.part(part).age, bits.age.lapped, at);
      state.set(state.part(part).dirt, bits.dirt.paste, at);
      if (object.kind === 'face') this.invalidate(object.name, state, at);
      this.touchPart(part, state, at);
      this.unmeasured(part, 'ground', state, at);
    }
  }

  /** The author's own work at something: what was measured, balanced or proven of it before says nothing anymore. */
  private worked(kind: StepObject['kind'], name: string, state: AbstractState, at: number) {
    if (kind !== 'part') return this.invalidate(name, state, at);
    this.touchPart(name, state, at);
    this.unmeasured(name, 'ground', state, at);
  }

  private look(step: StepOf<'check'>, state: AbstractState, at: number) {
    const faces = step.objects.flatMap((object) =>
      object.kind === 'face'
        ? [object.name]
        : object.kind === 'part' && ofFaces(step)
          ? this.relations.faces(object.name).map((face) => face.id)
          : [],
    );
    for (const face of faces) state.set(state.layout.faces.get(face)!.looked, bits.looked.yes, at);
  }

  /** Locks an adjuster's lock part, or the adjuster itself. */
  private lock(name: string, state: AbstractState, at: number) {
    const { layout } = state;
    if (layout.joints.has(name)) state.set(layout.joints.get(name)!, bits.joint.locked, at);
    for (const adjuster of this.relations.family.adjusters) {
      if (adjuster.part === name || adjuster.lockedBy === name)
        state.set(layout.adjusters.get(adjuster.part)!, bits.adjuster.locked, at);
    }
  }

  /**
   * What was measured on a part that is then ground or lapped says nothing, nor does the balance of parts when one is ground,
   * renewed, or put on with no mark that says how it was turned. A new part needs no other measurement again.
   */
  private unmeasured(part: string, how: 'ground' | 'renewed' | 'turned', state: AbstractState, at: number) {
    for (const { gate, measures, balances } of this.gates())
      if (balances.includes(part) || (how === 'ground' && measures.includes(part)))
        this.makeStale(gate.id, state, at, true);
  }

  /** Neither it nor what it is balanced with has a mark that says how they are turned to each other. */
  private isUnmarked(name: string): boolean {
    const isOf = (part: Part) => part.name === name || part.balancedWith.includes(name);
    const pair = this.relations.family.parts.filter(
      (part) => isOf(part) || this.relations.part(name).balancedWith.includes(part.name),
    );
    return pair.length > 1 && pair.every(({ marks }) => marks === null);
  }

  /** What is pressed on, or hung on with no joint, may bind what was felt to move. */
  private bind(name: string, state: AbstractState, at: number) {
    const { on, holds, bearsOn } = this.relations.part(name);
    for (const [part, felt] of state.layout.moved)
      if ([...on, ...holds, ...bearsOn].includes(part)) state.set(felt, bits.flag.no, at);
  }

  private touchPart(part: string, state: AbstractState, at: number) {
    for (const joint of this.relations.closedBy(part)) if (state.mustBeIn(part)) this.invalidate(joint.part, state, at);
  }

  /** Something that only a gate which names it proves through: a face, or a joint that closes over nothing. */
  private touchNamed(what: string, state: AbstractState, at: number, sure = true) {
    for (const { gate } of this.gatesNaming(what)) this.makeStale(gate.id, state, at, sure);
  }

  /**
   * Results of gates that prove through a joint, adjuster or face no longer hold, nor those that used their reading.
   * `sure`: it was touched in every case that is possible.
   */
  private invalidate(
    what: string,
    state: AbstractState,
    at: number,
    how: { setting?: StepOf<'set'>; sure?: boolean } = {},
  ) {
    const { setting, sure = true } = how;
    for (const cell of state.layout.readings.values())
      if (state.may(cell, bits.reading.taken))
        state.set(cell, (state.get(cell) & ~bits.reading.taken) | bits.reading.old, at);
    for (const { gate, sets } of this.gatesThrough(what, state.layout)) {
      // Setting it again supersedes its own.
      if (setting !== undefined && (gate.id === setting.gate.id || sets.includes(what))) continue;
      this.makeStale(gate.id, state, at, sure);
    }
  }

  private readonly through = new Map<string, readonly GateUse[]>();

  /** Gates whose result no longer holds when something is touched. */
  private gatesThrough(what: string, { adjusters }: LocationLayout): readonly GateUse[] {
    const known = this.through.get(what);
    if (known !== undefined) return known;
    const gates = this.gates().filter(({ gate, sets, isFirst }) => {
      // Turning one adjuster says nothing against the setting of another.
      const another = sets.length > 0 && adjusters.has(what) && !sets.includes(what);
      return !another && !isFirst && provesThrough(this.procedure, gate, what);
    });
    this.through.set(what, gates);
    return gates;
  }

  /** What passed is stale, and so is what used its reading. Not yet run, or failed, stays so. */
  private makeStale(id: string, state: AbstractState, at: number, sure: boolean) {
    const cell = state.layout.gates.get(id)!;
    if (!state.may(cell, bits.gate.passed)) return;
    state.set(cell, (state.get(cell) & (sure ? ~bits.gate.passed : ~0)) | bits.gate.stale, at);
    for (const other of this.usersOf(id)) this.makeStale(other, state, at, sure);
  }

  private users: ReadonlyMap<string, readonly string[]> | null = null;

  /** Gates that use the reading of a gate. */
  private usersOf(id: string): readonly string[] {
    if (this.users === null) {
      const users = new Map<string, string[]>();
      for (const { gate, uses } of this.gates())
        for (const used of uses) users.set(used, [...(users.get(used) ?? []), gate.id]);
      this.users = users;
    }
    return this.users.get(id) ?? [];
  }

  private readonly naming = new Map<string, readonly GateUse[]>();

  /** Gates that say that they prove through something. */
  private gatesNaming(what: string): readonly GateUse[] {
    const known = this.naming.get(what) ?? this.gates().filter(({ gate }) => gate.provesThrough?.includes(what));
    this.naming.set(what, known);
    return known;
  }

  private gateList: readonly GateUse[] | null = null;
  private gates(): readonly GateUse[] {
    this.gateList ??= gatesOf(this.procedure);
    return this.gateList;
  }
}

/** The gates of a procedure; of those with one name the last counts. */
export function gatesOf(procedure: Procedure): readonly GateUse[] {
  const gates = new Map<string, GateUse>();
  const balanced = [...balancedParts(procedure)];
  const setLater = firstSettings(procedure);
  for (const step of bits.allSteps(procedure)) {
    if (!isGate(step)) continue;
    const { gate } = step;
    const sets = step.verb === 'set' ? step.objects.map((object) => object.name) : [];
    const read = step.verb === 'test' ? step.test.hold?.of : step.verb === 'across' ? step.gate.test : null;
    const uses = read == null ? [] : [testGateId('test', read)];
    const balances = isBalance(step, procedure) ? balanced : [];
    const measures = step.verb === 'measure' ? step.objects.map(({ name }) => name) : [];
    gates.set(gate.id, {
      gate,
      sets,
      uses,
      isFirst: setLater.has(step),
      reach: reachOf(procedure).get(gate.id) ?? null,
      measures,
      balances,
    });
  }
  return [...gates.values()];
}

/** Whether a gate reads what is left of an unbalance. */
function isBalance(step: GateStep, procedure: Procedure): boolean {
  if (step.verb !== 'test' && step.verb !== 'measure') return false;
  const limit = step.limit === null ? undefined : limitsOfUse(procedure, step.limit)[0]?.limit;
  return limit !== undefined && kindOfLimit(limit) === 'unbalance';
}

/** Settings of adjusters that a later step of the stages sets by another reading; of those in repairs, any step of them. */
function firstSettings({ stages, repairs }: Procedure): ReadonlySet<Step> {
  /** By adjuster, the gates that set it. */
  const later = new Map<string, Set<string>>();
  const first = new Set<Step>();
  const look = (step: Step, isInStage: boolean) => {
    if (step.verb !== 'set') return;
    const { id } = step.gate;
    for (const { name } of step.objects) {
      const gates = later.get(name) ?? new Set();
      if (gates.size > Number(gates.has(id))) first.add(step);
      if (isInStage) later.set(name, gates.add(id));
    }
  };
  for (const step of stages.flatMap((stage) => stage.steps).reverse()) look(step, true);
  for (const step of repairs.flatMap((repair) => repair.steps)) look(step, false);
  return first;
}

/** A check of a part also looks at its faces if it sorts parts, or mentions faces. */
function ofFaces(step: StepOf<'check'>): boolean {
  const speaks = /\bfaces?\b|\bsurfaces?\b|\blapped\b|\bground\b|\blands?\b/iu;
  return step.all || step.verdicts.length > 0 || speaks.test(step.text ?? '');
}

interface GateUse {
  /** A first setting, as one that is made dry: a later step sets the same adjuster by another reading. */
  readonly isFirst: boolean;
  readonly gate: Gate;
  /** Adjusters that it sets. */
  readonly sets: readonly string[];
  /** Parts that it measures, and parts whose balance it reads. */
  readonly measures: readonly string[];
  readonly balances: readonly string[];
  /** What it proves through, as `reachOf`. */
  readonly reach: readonly string[] | null;
  /** Gates whose reading it uses. */
  readonly uses: readonly string[];
}

/** Verbs for which a part is taken out of the place where it is kept. */
const inHand: ReadonlySet<Verb> = new Set(verbsThat('takes in hand'));

/** Names of the parts that a step acts on: a face's or a port's part is not taken in hand. */
function partNames(step: Step): string[] {
  return step.objects.filter((object) => object.kind === 'part').map((object) => object.name);
}

/** The rest of the assemblies that a step acts on. */
function alongWith(step: Step): readonly string[] {
  return step.objects.flatMap(({ assembly }) => assembly?.others ?? []);
}

/** What is on a part that goes in: solvent, water and preserving oil are taken as rinsed off in oil. */
function fitted(value: number): number {
  const { dry, bare, solvent, water, preserving, oil } = bits.wet;
  const rinsed = solvent | water | preserving;
  const film = value & ~(bare | rinsed);
  return film | ((value & bare) !== 0 ? dry : 0) | ((value & rinsed) !== 0 ? oil : 0);
}

/** What is on a part that is dried: nothing, and after water no film of oil either. */
function dried(name: string, state: AbstractState): number {
  const value = state.get(state.part(name).wet);
  const wasWater = bits.wet.water | bits.wet.bare;
  return ((value & wasWater) !== 0 ? bits.wet.bare : 0) | ((value & ~wasWater) !== 0 ? bits.wet.dry : 0);
}

const wetBit: Readonly<Record<FluidKind, number>> = {
  solvent: bits.wet.solvent,
  detergent: bits.wet.water,
  caustic: bits.wet.water,
  water: bits.wet.water,
  'test-oil': bits.wet.oil,
  oil: bits.wet.assembly,
  preservative: bits.wet.preserving,
};

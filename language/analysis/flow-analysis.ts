import type { Procedure, Repair, Stage, Step } from '../model/procedure.ts';
import { type GateStep, isGate, isTest } from '../model/steps.ts';
import { type Group, nextEntries, type Point, type Program, programOf, variants } from './control-flow-graph.ts';
import { Transfer } from './effects.ts';
import {
  flag,
  gate as gateBits,
  joint as jointBits,
  Layout,
  place as placeBits,
  port as portBits,
  wet,
} from './locations.ts';
import { Relations } from './relations.ts';
import { isLeftToSoak } from './soaking.ts';
import { State } from './state.ts';

/** The path context of a point: the last repair, and the one-try repairs that are used up. */
export interface Way {
  readonly id: number;
  readonly repair: Repair | null;
  readonly spent: number;
  /** The way before the last repair, and the gate that sent the unit to it; null for the first way. */
  /** `by`: the check in a repair that sent it on, where it was not the gate itself. */
  readonly from: { readonly way: Way; readonly gate: GateStep; readonly by: GateStep } | null;
}

/** One passing of a step: the states around it, valid only while it is visited. */
export interface Visit {
  readonly step: Step;
  readonly block: Stage | Repair;
  readonly before: State;
  readonly way: Way;
  /** Index of the point, for `since`. */
  readonly at: number;
}

/** The unit leaves a block, for another station or for good. */
export interface Departure {
  /** The step that it leaves from, where there is one. */
  readonly last: Step | null;
  readonly block: Stage | Repair;
  readonly state: State;
  readonly way: Way;
  readonly at: number;
}

export interface Visitor {
  /** Before the step is applied. */
  step?(visit: Visit): void;
  /** After it; `before` is gone. */
  after?(visit: Visit, state: State): void;
  /** The unit goes from one station to another. */
  leave?(leaving: Departure & { readonly to: Stage | Repair }): void;
  end?(ending: Departure): void;
  /** A repair is done, and the unit goes back to a test with parts off that were on when it was there first. */
  comeBack?(
    coming: Departure & { readonly block: Repair; readonly to: GateStep; readonly off: readonly string[] },
  ): void;
  /** A repair is done, and the unit goes on at a gate; null at the end of its tests, if none has to be done again. */
  resume?(repair: Repair, to: Step | null): void;
}

/**
 * Most one-try repairs that are distinguished; any beyond that count as if they could be tried again. So do repairs
 * that are written inside an `on fail`: they come back to their own check, and telling them apart multiplied the ways
 * of a procedure with twelve repairs by fifteen without finding more.
 */
const mostSpent = 6;

/**
 * Most steps that a replay visits and units that it sends to repairs, over all paths, until the fixpoint. Anything
 * longer is not followed to its end. The two-spring procedure of the library takes 20,000 with its 150 points.
 */
export function mostPassed({ points }: Program): number {
  return 200_000 + 20 * points.length;
}

/** A replay of one set of part numbers: every way through the procedure, to the fixed point. */
export class Replay {
  readonly layout: Layout;
  readonly relations: Relations;
  private readonly transfer: Transfer;
  private readonly oneTry: readonly string[];
  private readonly ways = new Map<string, Way>();
  /** States at heads (join points): points that more than one path may reach. By path, then point. */
  private readonly heads = new Map<number, Map<number, State>>();
  private readonly headPoints = new Set<number>();
  private readonly work: { way: Way; point: number }[] = [];
  private readonly waiting = new Set<string>();

  readonly program: Program;
  private readonly repairs: ReadonlyMap<string, Repair>;
  private readonly gatePoints = new Map<Step, { readonly judged: number | string; readonly inRepair: number }>();
  private passed = 0;

  /** Every way was followed to its end. */
  get isWhole(): boolean {
    return this.work.length === 0;
  }

  constructor(program: Program) {
    this.program = program;
    const { procedure } = program;
    this.repairs = new Map(procedure.repairs.map((repair) => [repair.name, repair] as const));
    this.layout = new Layout(procedure);
    this.relations = new Relations(procedure.family);
    this.transfer = new Transfer(procedure, this.relations, program.absent);
    this.oneTry = procedure.repairs
      .filter((repair) => repair.tries === 1 && !repair.inline)
      .map((repair) => repair.name)
      .slice(0, mostSpent);
    this.headPoints.add(0);
    for (const { point } of program.gates) this.headPoints.add(point);
    program.points.forEach((point, index) => {
      if (point.kind === 'decide') this.headPoints.add(index);
    });
    for (const point of program.repairs.values()) this.headPoints.add(point);
    program.points.forEach((point, index) => {
      if (point.kind === 'step' && 'tries' in point.block && isGate(point.step)) this.headPoints.add(index);
    });
    this.run();
  }

  private run() {
    const { procedure, points } = this.program;
    if (points.length === 0) return;
    const loose = procedure.family.parts
      .filter((part) => part.suppliedLoose || this.program.absent.has(part.name))
      .map((part) => part.name);
    const first = this.way(null, 0, null);
    this.flow(first, 0, State.received(this.layout, loose, procedure.stages[0]?.station ?? null));
    while (this.work.length > 0 && this.passed < mostPassed(this.program)) {
      const { way, point } = this.work.shift()!;
      this.waiting.delete(`${way.id}:${point}`);
      this.walkFrom(way, point, this.head(way, point)!.copy(), null, (nextWay, nextPoint, state) =>
        this.flow(nextWay, nextPoint, state),
      );
    }
  }

  /** Passes every step on every way once, at the fixed point; the first way first. */
  visit(visitor: Visitor) {
    const ways = [...this.ways.values()];
    for (const [id, points] of [...this.heads.entries()].sort(([a], [b]) => a - b)) {
      // A way's id is its place in the order in which they were found.
      const way = ways[id]!;
      for (const [point, state] of [...points.entries()].sort(([a], [b]) => a - b)) {
        this.walkFrom(way, point, state.copy(), visitor, () => {});
      }
    }
  }

  private way(repair: Repair | null, spent: number, from: Way['from']): Way {
    // Senders that are judged at one point send back to the same gates.
    const key = `${repair?.name ?? ''}|${spent}|${from === null ? '' : this.judgedAt(from.gate)}|${from === null || from.by === from.gate ? '' : from.by.number}`;
    let way = this.ways.get(key);
    if (way === undefined) {
      way = { id: this.ways.size, repair, spent, from };
      this.ways.set(key, way);
    }
    return way;
  }

  /** The point at which a gate sends the unit to a repair; its number if it is in a repair itself. */
  private judgedAt(gate: Step): number | string {
    return this.placeOf(gate).judged;
  }

  private placeOf(gate: Step) {
    let place = this.gatePoints.get(gate);
    if (place === undefined) {
      const { gates, points, decisions } = this.program;
      const at = gates.find(({ step }) => step === gate)?.point;
      const inRepair = points.findIndex(
        (point) => point.kind === 'step' && point.step === gate && 'tries' in point.block,
      );
      place = { judged: at === undefined ? gate.number : (decisions.get(at) ?? at), inRepair };
      this.gatePoints.set(gate, place);
    }
    return place;
  }

  private head(way: Way, point: number): State | undefined {
    return this.heads.get(way.id)?.get(point);
  }

  private flow(way: Way, point: number, state: State) {
    let points = this.heads.get(way.id);
    if (points === undefined) {
      points = new Map();
      this.heads.set(way.id, points);
    }
    const known = points.get(point);
    // One state may be sent several ways: what is kept is its own.
    if (known === undefined) points.set(point, state.copy());
    else if (!known.join(state)) return;
    const key = `${way.id}:${point}`;
    if (!this.waiting.has(key)) {
      this.waiting.add(key);
      this.work.push({ way, point });
    }
  }

  /** Walks from a head to the next ones, applying steps in place. */
  private walkFrom(
    way: Way,
    start: number,
    state: State,
    visitor: Visitor | null,
    flow: (way: Way, point: number, state: State) => void,
  ) {
    const { points } = this.program;
    for (let index = start; index < points.length; index++) {
      if (index !== start && this.headPoints.has(index)) return flow(way, index, state);
      const point = points[index]!;
      switch (point.kind) {
        case 'enter':
          this.enter(point.block, index, state, way, visitor);
          break;
        case 'step':
          if (this.passStep(point, index, state, way, visitor, flow) === 'stop') return;
          break;
        case 'skip':
          break;
        case 'back':
          this.carryBack(point.block, index, state, way, visitor);
          break;
        case 'decide':
          this.sendFailed(point.group, index, state, way, flow);
          for (const test of point.group.tests)
            this.refine(state, test.gate.id, gateBits.failed | gateBits.notYet, index);
          break;
        case 'resume':
          return this.resume(point.block, index, state, way, visitor, flow);
        case 'end':
          visitor?.end?.({ state, way, at: index, block: point.block, last: this.lastStepBefore(index) });
          return;
      }
    }
  }

  private passStep(
    point: Extract<Point, { kind: 'step' }>,
    index: number,
    state: State,
    way: Way,
    visitor: Visitor | null,
    flow: (way: Way, point: number, state: State) => void,
  ): 'on' | 'stop' {
    const { step, block } = point;
    this.passed++;
    const visit: Visit = { step, block, before: state, way, at: index };
    visitor?.step?.(visit);
    this.transfer.apply(step, state, index);
    visitor?.after?.(visit, state);
    if (!isGate(step)) return 'on';
    const cell = this.layout.gates.get(step.gate.id)!;
    if (point.group !== null) {
      // With a list of repairs a fail goes on to the stage's last test; without one the unit waits for the lead.
      state.set(cell, step.gate.onFail.length > 0 ? gateBits.passed | gateBits.failed : gateBits.passed, index);
      return 'on';
    }
    if (step.gate.onFail.length > 0) {
      const failed = state.copy();
      failed.set(cell, gateBits.failed, index);
      for (const entry of this.next(step, way)) this.sendTo(entry.repair, step, failed, way, flow);
    }
    state.set(cell, gateBits.passed, index);
    return 'on';
  }

  /** Any of the tests may have failed; the unit goes to one of the repairs that those ask for. */
  private sendFailed(
    group: Group,
    index: number,
    state: State,
    way: Way,
    flow: (way: Way, point: number, state: State) => void,
  ) {
    for (const test of group.tests) {
      const cell = this.layout.gates.get(test.gate.id)!;
      if (!state.may(cell, gateBits.failed)) continue;
      const sent = state.copy();
      sent.set(cell, gateBits.failed, index);
      for (const entry of this.next(test, way)) this.sendTo(entry.repair, test, sent, way, flow);
    }
  }

  private next(test: GateStep, way: Way) {
    const tries = (name: string) => this.repairs.get(name)?.tries ?? null;
    return nextEntries(
      test.gate.onFail,
      (name) => (this.oneTry.includes(name) ? 1 : tries(name) === 1 ? 2 : tries(name)),
      (name) => (way.spent & this.bit(name)) !== 0,
    );
  }

  private bit(repair: string): number {
    const index = this.oneTry.indexOf(repair);
    return index < 0 ? 0 : 1 << index;
  }

  private sendTo(
    name: string,
    gate: GateStep,
    state: State,
    way: Way,
    flow: (way: Way, point: number, state: State) => void,
  ) {
    const point = this.program.repairs.get(name);
    const repair = this.repairs.get(name);
    if (point === undefined || repair === undefined) return;
    this.passed++;
    // A check in a repair that sends on to another: the unit goes back to where the first was sent from.
    const sender = repair.inline || way.from === null || this.checkInRepair(gate) < 0 ? gate : way.from.gate;
    const next = this.way(repair, way.spent | this.bit(name), { way, gate: sender, by: gate });
    flow(next, point, state);
  }

  private enter(block: Stage | Repair, index: number, state: State, way: Way, visitor: Visitor | null) {
    const bit = this.layout.stationBit(block.station);
    if (block.station === null) return;
    const cell = this.layout.unit.station;
    if (index > 0 && !state.must(cell, bit)) {
      visitor?.leave?.({
        last: this.lastStepOf(index, block, way),
        block: this.blockBefore(index, block, way),
        to: block,
        state,
        way,
        at: index,
      });
      this.goes(state, bit, index);
    }
    state.set(cell, bit, index);
  }

  /** The unit goes to a station; where it may be there already it stays as it is. */
  private goes(state: State, bit: number, index: number) {
    const staying = state.may(this.layout.unit.station, bit) ? state.copy() : null;
    this.left(state, index);
    if (staying !== null) state.join(staying);
  }

  /** Conditions of leaving are taken as met once they are reported. */
  private left(state: State, index: number) {
    const station = state.get(this.layout.unit.station);
    const fromWet = this.program.procedure.shop.stations.some(
      (one) => one.wet && (station & this.layout.stationBit(one.name)) !== 0,
    );
    for (const [name, cells] of this.layout.parts) {
      state.set(cells.kept, 2, index);
      const isWet = fromWet && state.may(cells.wet, wet.solvent | wet.water);
      if (isWet && !isLeftToSoak(this.program, state, name)) state.set(cells.wet, wet.dry, index);
    }
    state.set(this.layout.unit.clamped, flag.no, index);
    state.set(this.layout.unit.pressure, flag.no, index);
    // A line that comes off takes the prime with it.
    const lines = [...this.layout.ports.values()].filter((cell) => state.may(cell, portBits.connected));
    if (lines.length > 0) state.set(this.layout.unit.primed, flag.no, index);
    for (const cell of lines) state.set(cell, state.get(cell) & ~portBits.connected || portBits.open, index);
  }

  private lastStepBefore(index: number): Step | null {
    for (let at = index - 1; at >= 0; at--) {
      const point = this.program.points[at]!;
      if (point.kind === 'step') return point.step;
    }
    return null;
  }

  /** The step that the unit leaves from: the one before, or for a repair the gate that sent it there. */
  private lastStepOf(index: number, block: Stage | Repair, way: Way): Step | null {
    const isSent = 'tries' in block && this.program.points[index - 1]?.block !== block;
    if (!isSent || way.from === null) return this.lastStepBefore(index);
    // Tests that wait for each other are all run: it leaves from the last of them.
    const { gate, by } = way.from;
    if (by !== gate) return by;
    const at = this.program.gates.find(({ step }) => step === gate)?.point;
    const judged = at === undefined ? undefined : this.program.decisions.get(at);
    return judged === undefined || judged === at ? gate : this.lastStepBefore(judged);
  }

  /** The block that the unit comes from; a repair's first steps may be done where it was sent from. */
  private blockBefore(index: number, block: Stage | Repair, way: Way): Stage | Repair {
    const before = this.program.points[index - 1]?.block ?? block;
    return before === block ? (this.sentFrom(way) ?? block) : before;
  }

  /** The stage whose gate sent the unit to its last repair. */
  private sentFrom(way: Way): Stage | null {
    const gate = way.from?.gate;
    return this.program.procedure.stages.find((stage) => gate !== undefined && stage.steps.includes(gate)) ?? null;
  }

  private carryBack(repair: Repair, index: number, state: State, way: Way, visitor: Visitor | null) {
    const to = this.sentFrom(way);
    if (to === null || to.station === null) return;
    const bit = this.layout.stationBit(to.station);
    if (state.must(this.layout.unit.station, bit)) return;
    visitor?.leave?.({ last: this.lastStepBefore(index), block: repair, to, state, way, at: index });
    this.goes(state, bit, index);
    state.set(this.layout.unit.station, bit, index);
  }

  /** After a repair: to each gate that may be the earliest not passed on this build. */
  private resume(
    repair: Repair,
    index: number,
    state: State,
    way: Way,
    visitor: Visitor | null,
    flow: (way: Way, point: number, state: State) => void,
  ) {
    const sender = way.from?.gate ?? null;
    const inRepair = sender === null ? -1 : this.checkInRepair(sender);
    // A check inside a repair that renews a part on the spot goes on in that repair.
    if (repair.inline && inRepair >= 0) {
      visitor?.resume?.(repair, sender);
      return flow(way.from!.way, inRepair, state);
    }
    const senderPoint = this.program.gates.find(({ step }) => step === sender)?.point;
    const upTo =
      senderPoint === undefined
        ? Number.POSITIVE_INFINITY
        : Math.max(senderPoint, this.program.decisions.get(senderPoint) ?? senderPoint);
    const going = state;
    for (const { point, step } of this.program.gates) {
      if (point > upTo) break;
      const { gate } = step;
      const cell = this.layout.gates.get(gate.id)!;
      if (going.may(cell, gateBits.notYet | gateBits.stale | gateBits.failed)) {
        const back = going.copy();
        this.refine(back, gate.id, gateBits.passed, index);
        this.goTo(point, repair, back, index, way, visitor, flow);
        if (!going.may(cell, gateBits.passed)) return;
      }
      this.refine(going, gate.id, gateBits.notYet | gateBits.stale | gateBits.failed, index);
    }
    if (senderPoint !== undefined)
      this.goTo(this.program.decisions.get(senderPoint) ?? senderPoint, repair, going, index, way, visitor, flow);
  }

  private goTo(
    point: number,
    repair: Repair,
    state: State,
    index: number,
    way: Way,
    visitor: Visitor | null,
    flow: (way: Way, point: number, state: State) => void,
  ) {
    const to = this.program.points[point]!;
    visitor?.resume?.(repair, to.kind === 'step' ? to.step : null);
    this.comeBack(point, repair, state, index, way, visitor);
    const { block } = to;
    const bit = this.layout.stationBit(block.station);
    if (block.station !== null && !state.must(this.layout.unit.station, bit)) {
      visitor?.leave?.({ last: repair.steps.at(-1) ?? null, block: repair, to: block, state, way, at: index });
      this.goes(state, bit, index);
      state.set(this.layout.unit.station, bit, index);
    }
    flow(way, point, state);
  }

  /** The point of a gate that is in a repair; -1 for one of a stage. */
  private checkInRepair(gate: Step): number {
    return this.placeOf(gate).inRepair;
  }

  /** What a repair left off is reported once; then the unit counts as it was at the test on the first path. */
  private comeBack(point: number, repair: Repair, state: State, index: number, way: Way, visitor: Visitor | null) {
    const target = this.program.points[point]!;
    const stood = this.heads.get(0)?.get(point);
    if (target.kind !== 'step' || stood === undefined) return;
    const { step } = target;
    if (!isTest(step) && step.verb !== 'set') return;
    const off = this.leftOff(state, stood, step.verb === 'set');
    if (off.length === 0) return;
    visitor?.comeBack?.({ last: repair.steps.at(-1) ?? null, block: repair, to: step, off, state, way, at: index });
    for (const [cell, { kind }] of this.layout.cells.entries())
      if (!['gate', 'reading', 'age'].includes(kind)) state.set(cell, stood.get(cell), index);
  }

  /** Parts that surely were on and may be off, or their joint apart. What closes over an adjuster is off while it is set. */
  private leftOff(state: State, stood: State, loadedOnly: boolean): string[] {
    const on = placeBits.in | placeBits.trial;
    return [...this.layout.parts]
      .filter(([name, { place }]) => {
        if (loadedOnly && !this.relations.loaded(name) && this.relations.closedBy(name).length === 0) return false;
        const joint = this.layout.joints.get(name);
        return (
          (stood.must(place, on) && !state.must(place, on)) ||
          (joint !== undefined && !stood.may(joint, jointBits.apart) && state.may(joint, jointBits.apart))
        );
      })
      .map(([name]) => name);
  }

  /** Takes values out of a gate's cell, where others remain. */
  private refine(state: State, name: string, out: number, at: number) {
    const cell = this.layout.gates.get(name)!;
    const left = state.get(cell) & ~out;
    state.set(cell, left === 0 ? gateBits.passed : left, at);
  }
}

/** The replays of a procedure: one for each set of part numbers whose steps differ. Pure. */
export function replay(procedure: Procedure): Replay[] {
  return variants(procedure).map((numbers) => new Replay(programOf(procedure, numbers)));
}

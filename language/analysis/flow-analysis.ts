import type { Procedure, Repair, Stage, Step } from '../model/procedure.ts';
import { type GateStep, isGate, isTest } from '../model/steps.ts';
import {
  buildControlFlowGraph,
  type ControlFlowGraph,
  type FlowNode,
  nextEntries,
  type TestGroup,
  variants,
} from './control-flow-graph.ts';
import { Effects } from './effects.ts';
import {
  flag,
  gate as gateBits,
  joint as jointBits,
  LocationLayout,
  place as placeBits,
  port as portBits,
  wet,
} from './locations.ts';
import { Relations } from './relations.ts';
import { isLeftToSoak } from './soaking.ts';
import { AbstractState } from './state.ts';

/** The path context of a node: the last repair, and the one-try repairs that are used up. */
export interface PathContext {
  readonly id: number;
  readonly repair: Repair | null;
  readonly exhausted: number;
  /** The way before the last repair, and the gate that sent the unit to it; null for the first way. */
  /** `by`: the check in a repair that sent it on, where it was not the gate itself. */
  readonly from: { readonly path: PathContext; readonly gate: GateStep; readonly by: GateStep } | null;
}

/** One passing of a step: the states around it, valid only while it is visited. */
export interface Visit {
  readonly step: Step;
  readonly block: Stage | Repair;
  readonly before: AbstractState;
  readonly path: PathContext;
  /** Index of the node, for `since`. */
  readonly at: number;
}

/** The unit leaves a block, for another station or for good. */
export interface Departure {
  /** The step that it leaves from, where there is one. */
  readonly last: Step | null;
  readonly block: Stage | Repair;
  readonly state: AbstractState;
  readonly path: PathContext;
  readonly at: number;
}

export interface Visitor {
  /** Before the step is applied. */
  step?(visit: Visit): void;
  /** After it; `before` is gone. */
  after?(visit: Visit, state: AbstractState): void;
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
const mostTracked = 6;

/**
 * Most steps that a flow analysis visits and units that it sends to repairs, over all paths, until the fixpoint. Anything
 * longer is not followed to its end. The two-spring procedure of the library takes 20,000 with its 150 nodes.
 */
export function mostTransfers({ nodes }: ControlFlowGraph): number {
  return 200_000 + 20 * nodes.length;
}

/** A flow analysis of one set of part numbers: every way through the procedure, to the fixed node. */
export class FlowAnalysis {
  readonly layout: LocationLayout;
  readonly relations: Relations;
  private readonly transfer: Effects;
  private readonly oneTry: readonly string[];
  private readonly contexts = new Map<string, PathContext>();
  /** States at join nodes (join nodes): nodes that more than one path may reach. By path, then node. */
  private readonly joinStates = new Map<number, Map<number, AbstractState>>();
  private readonly joinPoints = new Set<number>();
  private readonly worklist: { path: PathContext; node: number }[] = [];
  private readonly queued = new Set<string>();

  readonly graph: ControlFlowGraph;
  private readonly repairs: ReadonlyMap<string, Repair>;
  private readonly gateNodes = new Map<Step, { readonly judged: number | string; readonly inRepair: number }>();
  private transfers = 0;

  /** Every way was followed to its end. */
  get isComplete(): boolean {
    return this.worklist.length === 0;
  }

  constructor(graph: ControlFlowGraph) {
    this.graph = graph;
    const { procedure } = graph;
    this.repairs = new Map(procedure.repairs.map((repair) => [repair.name, repair] as const));
    this.layout = new LocationLayout(procedure);
    this.relations = new Relations(procedure.family);
    this.transfer = new Effects(procedure, this.relations, graph.absent);
    this.oneTry = procedure.repairs
      .filter((repair) => repair.tries === 1 && !repair.inline)
      .map((repair) => repair.name)
      .slice(0, mostTracked);
    this.joinPoints.add(0);
    for (const { node } of graph.gates) this.joinPoints.add(node);
    graph.nodes.forEach((node, index) => {
      if (node.kind === 'branch') this.joinPoints.add(index);
    });
    for (const node of graph.repairs.values()) this.joinPoints.add(node);
    graph.nodes.forEach((node, index) => {
      if (node.kind === 'step' && 'tries' in node.block && isGate(node.step)) this.joinPoints.add(index);
    });
    this.run();
  }

  private run() {
    const { procedure, nodes } = this.graph;
    if (nodes.length === 0) return;
    const loose = procedure.family.parts
      .filter((part) => part.suppliedLoose || this.graph.absent.has(part.name))
      .map((part) => part.name);
    const first = this.path(null, 0, null);
    this.propagate(first, 0, AbstractState.received(this.layout, loose, procedure.stages[0]?.station ?? null));
    while (this.worklist.length > 0 && this.transfers < mostTransfers(this.graph)) {
      const { path, node } = this.worklist.shift()!;
      this.queued.delete(`${path.id}:${node}`);
      this.walkFrom(path, node, this.joinState(path, node)!.copy(), null, (nextWay, nextNode, state) =>
        this.propagate(nextWay, nextNode, state),
      );
    }
  }

  /** Passes every step on every way once, at the fixed node; the first way first. */
  visit(visitor: Visitor) {
    const ways = [...this.contexts.values()];
    for (const [id, nodes] of [...this.joinStates.entries()].sort(([a], [b]) => a - b)) {
      // A way's id is its place in the order in which they were found.
      const path = ways[id]!;
      for (const [node, state] of [...nodes.entries()].sort(([a], [b]) => a - b)) {
        this.walkFrom(path, node, state.copy(), visitor, () => {});
      }
    }
  }

  private path(repair: Repair | null, spent: number, from: PathContext['from']): PathContext {
    // Senders that are judged at one node send back to the same gates.
    const key = `${repair?.name ?? ''}|${spent}|${from === null ? '' : this.judgedAt(from.gate)}|${from === null || from.by === from.gate ? '' : from.by.number}`;
    let path = this.contexts.get(key);
    if (path === undefined) {
      path = { id: this.contexts.size, repair, exhausted: spent, from };
      this.contexts.set(key, path);
    }
    return path;
  }

  /** The node at which a gate sends the unit to a repair; its number if it is in a repair itself. */
  private judgedAt(gate: Step): number | string {
    return this.placeOf(gate).judged;
  }

  private placeOf(gate: Step) {
    let place = this.gateNodes.get(gate);
    if (place === undefined) {
      const { gates, nodes, decisions } = this.graph;
      const at = gates.find(({ step }) => step === gate)?.node;
      const inRepair = nodes.findIndex((node) => node.kind === 'step' && node.step === gate && 'tries' in node.block);
      place = { judged: at === undefined ? gate.number : (decisions.get(at) ?? at), inRepair };
      this.gateNodes.set(gate, place);
    }
    return place;
  }

  private joinState(path: PathContext, node: number): AbstractState | undefined {
    return this.joinStates.get(path.id)?.get(node);
  }

  private propagate(path: PathContext, node: number, state: AbstractState) {
    let nodes = this.joinStates.get(path.id);
    if (nodes === undefined) {
      nodes = new Map();
      this.joinStates.set(path.id, nodes);
    }
    const known = nodes.get(node);
    // One state may be sent several ways: what is kept is its own.
    if (known === undefined) nodes.set(node, state.copy());
    else if (!known.join(state)) return;
    const key = `${path.id}:${node}`;
    if (!this.queued.has(key)) {
      this.queued.add(key);
      this.worklist.push({ path, node });
    }
  }

  /** Walks from a head to the next ones, applying steps in place. */
  private walkFrom(
    path: PathContext,
    start: number,
    state: AbstractState,
    visitor: Visitor | null,
    flow: (path: PathContext, node: number, state: AbstractState) => void,
  ) {
    const { nodes } = this.graph;
    for (let index = start; index < nodes.length; index++) {
      if (index !== start && this.joinPoints.has(index)) return flow(path, index, state);
      const node = nodes[index]!;
      switch (node.kind) {
        case 'enter':
          this.enter(node.block, index, state, path, visitor);
          break;
        case 'step':
          if (this.passStep(node, index, state, path, visitor, flow) === 'stop') return;
          break;
        case 'nop':
          break;
        case 'carryBack':
          this.carryBack(node.block, index, state, path, visitor);
          break;
        case 'branch':
          this.sendFailed(node.group, index, state, path, flow);
          for (const test of node.group.tests)
            this.refine(state, test.gate.id, gateBits.failed | gateBits.notYet, index);
          break;
        case 'return':
          return this.resume(node.block, index, state, path, visitor, flow);
        case 'end':
          visitor?.end?.({ state, path, at: index, block: node.block, last: this.lastStepBefore(index) });
          return;
      }
    }
  }

  private passStep(
    node: Extract<FlowNode, { kind: 'step' }>,
    index: number,
    state: AbstractState,
    path: PathContext,
    visitor: Visitor | null,
    flow: (path: PathContext, node: number, state: AbstractState) => void,
  ): 'on' | 'stop' {
    const { step, block } = node;
    this.transfers++;
    const visit: Visit = { step, block, before: state, path, at: index };
    visitor?.step?.(visit);
    this.transfer.apply(step, state, index);
    visitor?.after?.(visit, state);
    if (!isGate(step)) return 'on';
    const cell = this.layout.gates.get(step.gate.id)!;
    if (node.group !== null) {
      // With a list of repairs a fail goes on to the stage's last test; without one the unit waits for the lead.
      state.set(cell, step.gate.onFail.length > 0 ? gateBits.passed | gateBits.failed : gateBits.passed, index);
      return 'on';
    }
    if (step.gate.onFail.length > 0) {
      const failed = state.copy();
      failed.set(cell, gateBits.failed, index);
      for (const entry of this.next(step, path)) this.sendTo(entry.repair, step, failed, path, flow);
    }
    state.set(cell, gateBits.passed, index);
    return 'on';
  }

  /** Any of the tests may have failed; the unit goes to one of the repairs that those ask for. */
  private sendFailed(
    group: TestGroup,
    index: number,
    state: AbstractState,
    path: PathContext,
    flow: (path: PathContext, node: number, state: AbstractState) => void,
  ) {
    for (const test of group.tests) {
      const cell = this.layout.gates.get(test.gate.id)!;
      if (!state.may(cell, gateBits.failed)) continue;
      const sent = state.copy();
      sent.set(cell, gateBits.failed, index);
      for (const entry of this.next(test, path)) this.sendTo(entry.repair, test, sent, path, flow);
    }
  }

  private next(test: GateStep, path: PathContext) {
    const tries = (name: string) => this.repairs.get(name)?.tries ?? null;
    return nextEntries(
      test.gate.onFail,
      (name) => (this.oneTry.includes(name) ? 1 : tries(name) === 1 ? 2 : tries(name)),
      (name) => (path.exhausted & this.bit(name)) !== 0,
    );
  }

  private bit(repair: string): number {
    const index = this.oneTry.indexOf(repair);
    return index < 0 ? 0 : 1 << index;
  }

  private sendTo(
    name: string,
    gate: GateStep,
    state: AbstractState,
    path: PathContext,
    flow: (path: PathContext, node: number, state: AbstractState) => void,
  ) {
    const node = this.graph.repairs.get(name);
    const repair = this.repairs.get(name);
    if (node === undefined || repair === undefined) return;
    this.transfers++;
    // A check in a repair that sends on to another: the unit goes back to where the first was sent from.
    const sender = repair.inline || path.from === null || this.checkInRepair(gate) < 0 ? gate : path.from.gate;
    const next = this.path(repair, path.exhausted | this.bit(name), { path, gate: sender, by: gate });
    flow(next, node, state);
  }

  private enter(
    block: Stage | Repair,
    index: number,
    state: AbstractState,
    path: PathContext,
    visitor: Visitor | null,
  ) {
    const bit = this.layout.stationBit(block.station);
    if (block.station === null) return;
    const cell = this.layout.unit.station;
    if (index > 0 && !state.must(cell, bit)) {
      visitor?.leave?.({
        last: this.lastStepOf(index, block, path),
        block: this.blockBefore(index, block, path),
        to: block,
        state,
        path,
        at: index,
      });
      this.goes(state, bit, index);
    }
    state.set(cell, bit, index);
  }

  /** The unit goes to a station; where it may be there already it stays as it is. */
  private goes(state: AbstractState, bit: number, index: number) {
    const staying = state.may(this.layout.unit.station, bit) ? state.copy() : null;
    this.left(state, index);
    if (staying !== null) state.join(staying);
  }

  /** Conditions of leaving are taken as met once they are reported. */
  private left(state: AbstractState, index: number) {
    const station = state.get(this.layout.unit.station);
    const fromWet = this.graph.procedure.shop.stations.some(
      (one) => one.wet && (station & this.layout.stationBit(one.name)) !== 0,
    );
    for (const [name, cells] of this.layout.parts) {
      state.set(cells.kept, 2, index);
      const isWet = fromWet && state.may(cells.wet, wet.solvent | wet.water);
      if (isWet && !isLeftToSoak(this.graph, state, name)) state.set(cells.wet, wet.dry, index);
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
      const node = this.graph.nodes[at]!;
      if (node.kind === 'step') return node.step;
    }
    return null;
  }

  /** The step that the unit leaves from: the one before, or for a repair the gate that sent it there. */
  private lastStepOf(index: number, block: Stage | Repair, path: PathContext): Step | null {
    const isSent = 'tries' in block && this.graph.nodes[index - 1]?.block !== block;
    if (!isSent || path.from === null) return this.lastStepBefore(index);
    // Tests that wait for each other are all run: it leaves from the last of them.
    const { gate, by } = path.from;
    if (by !== gate) return by;
    const at = this.graph.gates.find(({ step }) => step === gate)?.node;
    const judged = at === undefined ? undefined : this.graph.decisions.get(at);
    return judged === undefined || judged === at ? gate : this.lastStepBefore(judged);
  }

  /** The block that the unit comes from; a repair's first steps may be done where it was sent from. */
  private blockBefore(index: number, block: Stage | Repair, path: PathContext): Stage | Repair {
    const before = this.graph.nodes[index - 1]?.block ?? block;
    return before === block ? (this.sentFrom(path) ?? block) : before;
  }

  /** The stage whose gate sent the unit to its last repair. */
  private sentFrom(path: PathContext): Stage | null {
    const gate = path.from?.gate;
    return this.graph.procedure.stages.find((stage) => gate !== undefined && stage.steps.includes(gate)) ?? null;
  }

  private carryBack(repair: Repair, index: number, state: AbstractState, path: PathContext, visitor: Visitor | null) {
    const to = this.sentFrom(path);
    if (to === null || to.station === null) return;
    const bit = this.layout.stationBit(to.station);
    if (state.must(this.layout.unit.station, bit)) return;
    visitor?.leave?.({ last: this.lastStepBefore(index), block: repair, to, state, path, at: index });
    this.goes(state, bit, index);
    state.set(this.layout.unit.station, bit, index);
  }

  /** After a repair: to each gate that may be the earliest not passed on this build. */
  private resume(
    repair: Repair,
    index: number,
    state: AbstractState,
    path: PathContext,
    visitor: Visitor | null,
    flow: (path: PathContext, node: number, state: AbstractState) => void,
  ) {
    const sender = path.from?.gate ?? null;
    const inRepair = sender === null ? -1 : this.checkInRepair(sender);
    // A check inside a repair that renews a part on the spot goes on in that repair.
    if (repair.inline && inRepair >= 0) {
      visitor?.resume?.(repair, sender);
      return flow(path.from!.path, inRepair, state);
    }
    const senderPoint = this.graph.gates.find(({ step }) => step === sender)?.node;
    const upTo =
      senderPoint === undefined
        ? Number.POSITIVE_INFINITY
        : Math.max(senderPoint, this.graph.decisions.get(senderPoint) ?? senderPoint);
    const going = state;
    for (const { node, step } of this.graph.gates) {
      if (node > upTo) break;
      const { gate } = step;
      const cell = this.layout.gates.get(gate.id)!;
      if (going.may(cell, gateBits.notYet | gateBits.stale | gateBits.failed)) {
        const back = going.copy();
        this.refine(back, gate.id, gateBits.passed, index);
        this.goTo(node, repair, back, index, path, visitor, flow);
        if (!going.may(cell, gateBits.passed)) return;
      }
      this.refine(going, gate.id, gateBits.notYet | gateBits.stale | gateBits.failed, index);
    }
    if (senderPoint !== undefined)
      this.goTo(this.graph.decisions.get(senderPoint) ?? senderPoint, repair, going, index, path, visitor, flow);
  }

  private goTo(
    node: number,
    repair: Repair,
    state: AbstractState,
    index: number,
    path: PathContext,
    visitor: Visitor | null,
    flow: (path: PathContext, node: number, state: AbstractState) => void,
  ) {
    const to = this.graph.nodes[node]!;
    visitor?.resume?.(repair, to.kind === 'step' ? to.step : null);
    this.comeBack(node, repair, state, index, path, visitor);
    const { block } = to;
    const bit = this.layout.stationBit(block.station);
    if (block.station !== null && !state.must(this.layout.unit.station, bit)) {
      visitor?.leave?.({ last: repair.steps.at(-1) ?? null, block: repair, to: block, state, path, at: index });
      this.goes(state, bit, index);
      state.set(this.layout.unit.station, bit, index);
    }
    flow(path, node, state);
  }

  /** The node of a gate that is in a repair; -1 for one of a stage. */
  private checkInRepair(gate: Step): number {
    return this.placeOf(gate).inRepair;
  }

  /** What a repair left off is reported once; then the unit counts as it was at the test on the first path. */
  private comeBack(
    node: number,
    repair: Repair,
    state: AbstractState,
    index: number,
    path: PathContext,
    visitor: Visitor | null,
  ) {
    const target = this.graph.nodes[node]!;
    const stood = this.joinStates.get(0)?.get(node);
    if (target.kind !== 'step' || stood === undefined) return;
    const { step } = target;
    if (!isTest(step) && step.verb !== 'set') return;
    const off = this.leftOff(state, stood, step.verb === 'set');
    if (off.length === 0) return;
    visitor?.comeBack?.({ last: repair.steps.at(-1) ?? null, block: repair, to: step, off, state, path, at: index });
    for (const [cell, { kind }] of this.layout.locations.entries())
      if (!['gate', 'reading', 'age'].includes(kind)) state.set(cell, stood.get(cell), index);
  }

  /** Parts that surely were on and may be off, or their joint apart. What closes over an adjuster is off while it is set. */
  private leftOff(state: AbstractState, stood: AbstractState, loadedOnly: boolean): string[] {
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
  private refine(state: AbstractState, name: string, out: number, at: number) {
    const cell = this.layout.gates.get(name)!;
    const left = state.get(cell) & ~out;
    state.set(cell, left === 0 ? gateBits.passed : left, at);
  }
}

/** The flow analysis of a procedure: one for each set of part numbers whose steps differ. Pure. */
export function analyzeFlow(procedure: Procedure): FlowAnalysis[] {
  return variants(procedure).map((numbers) => new FlowAnalysis(buildControlFlowGraph(procedure, numbers)));
}

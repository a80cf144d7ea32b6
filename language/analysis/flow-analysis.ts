import equal from 'fast-deep-equal';
import type { Procedure, Repair, Stage, Step, StepOf } from '../model/procedure.ts';
import { type GateStep, isGate, isTest } from '../model/steps.ts';
import type { Verb } from '../model/verbs.ts';
import {
  buildControlFlowGraph,
  type ControlFlowGraph,
  type FlowNode,
  nextEntries,
  type TestGroup,
  variants,
} from './control-flow-graph.ts';
import { type Facts, FlowMemory } from './flow-memory.ts';
import {
  flag,
  gate as gateBits,
  joint as jointBits,
  kept as keptBits,
  type LocationLayout,
  type PartLocations,
  place as placeBits,
  port as portBits,
  wet,
} from './locations.ts';
import { Relations } from './relations.ts';
import { isLeftToSoak } from './soaking.ts';
import type { AbstractState, StatePool } from './state.ts';
import type { Transfers } from './transfers.ts';

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
export interface Visit<V extends Verb = Verb> {
  readonly step: StepOf<V>;
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

/** A path context, with what is kept for it. */
interface Way extends PathContext {
  repair: Repair | null;
  readonly from: { readonly path: Way; readonly gate: GateStep; readonly by: GateStep } | null;
  /** The states at join points (nodes that more than one path may reach), by node. */
  readonly joins: Map<number, JoinState>;
  /** Where each gate sends a unit on this path. */
  readonly targets: Map<GateStep, readonly Target[]>;
}

interface JoinState {
  readonly path: Way;
  readonly node: number;
  readonly state: AbstractState;
  isQueued: boolean;
}

interface Target {
  readonly path: Way;
  readonly node: number;
}

interface PartLook {
  readonly name: string;
  readonly cells: PartLocations;
  readonly joint: number | undefined;
  /** It is a joint that closes over something, or in what one closes over. */
  readonly isLoaded: boolean;
}

/** Walks from one join point to the next, and nodes on one of these, after which others may have their turn: a tenth of a millisecond. */
const walksInPiece = 64;
const nodesInPiece = 200;

/** A flow analysis of one set of part numbers: every way through the procedure, to the fixed node. */
export class FlowAnalysis {
  readonly layout: LocationLayout;
  readonly relations: Relations;
  private readonly transfers: Transfers;
  private readonly oneTry: readonly string[];
  /** In the order in which they were found: a context's id is its place. */
  private readonly paths: Way[] = [];
  private readonly pathsByKey = new Map<string, Way>();
  private readonly isJoinPoint: Uint8Array;
  /** The location of the gate at each node; -1: there is none. */
  private readonly gateCells: Int32Array;
  private readonly worklist: JoinState[] = [];
  private next = 0;
  private readonly states: StatePool;

  graph: ControlFlowGraph;
  private repairs: ReadonlyMap<string, Repair>;
  private readonly gateNodes = new Map<Step, number>();
  private readonly gateNodesInRepairs = new Map<Step, number>();
  private passed = 0;
  /** Null while the states are sought: what leaves a block is propagated. Else nothing is, and the visitor is shown it all. */
  private visitor: Visitor | null = null;
  /** The state of each part, with what else decides whether a repair has left it off. */
  private readonly parts: readonly PartLook[];

  /** Every way was followed to its end. */
  get isComplete(): boolean {
    return this.next === this.worklist.length;
  }

  constructor(graph: ControlFlowGraph, states: StatePool, transfers: Transfers) {
    this.graph = graph;
    this.layout = states.layout;
    this.states = states;
    this.transfers = transfers;
    const { procedure, nodes } = graph;
    this.repairs = repairsIn(graph);
    this.relations = Relations.of(procedure.family);
    this.oneTry = procedure.repairs
      .filter((repair) => repair.tries === 1 && !repair.inline)
      .map((repair) => repair.name)
      .slice(0, mostTracked);
    this.isJoinPoint = new Uint8Array(nodes.length);
    this.isJoinPoint[0] = 1;
    for (const { node, step } of graph.gates) {
      this.isJoinPoint[node] = 1;
      this.gateNodes.set(step, node);
    }
    for (const node of graph.repairs.values()) this.isJoinPoint[node] = 1;
    this.gateCells = new Int32Array(nodes.length).fill(-1);
    for (let index = 0; index < nodes.length; index++) {
      const node = nodes[index]!;
      if (node.kind === 'branch') this.isJoinPoint[index] = 1;
      if (node.kind !== 'step' || !isGate(node.step)) continue;
      this.gateCells[index] = this.layout.gates.get(node.step.gate.id)!;
      if (!('tries' in node.block)) continue;
      this.isJoinPoint[index] = 1;
      this.gateNodesInRepairs.set(node.step, index);
    }
    this.parts = [...this.layout.parts].map(([name, cells]) => ({
      name,
      cells,
      joint: this.layout.joints.get(name),
      isLoaded: this.relations.loaded(name) || this.relations.closedBy(name).length > 0,
    }));
  }

  /** Seeks the fixpoint. May be left where it yields. */
  *seek(): Generator<undefined, void> {
    const { procedure, nodes } = this.graph;
    if (nodes.length === 0) return;
    const loose = procedure.family.parts
      .filter((part) => part.suppliedLoose || this.graph.absent.has(part.name))
      .map((part) => part.name);
    const first = this.path(null, 0, null);
    const received = this.states.take();
    received.receive(loose, procedure.stages[0]?.station ?? null);
    this.propagate(first, 0, received);
    const most = mostTransfers(this.graph);
    while (!this.isComplete && this.passed < most) {
      const join = this.worklist[this.next++]!;
      join.isQueued = false;
      const walked = this.states.copy(join.state);
      for (let at = this.walk(join.path, join.node, walked); at !== null; at = this.walk(join.path, at, walked)) yield;
      this.states.giveBack(walked);
      if (this.next % walksInPiece === 0) yield;
    }
  }

  /** Passes every step on every way once, at the fixed node; the first way first. */
  visit(visitor: Visitor) {
    finish(this.visitInPieces(visitor));
  }

  /** The same; may be left where it yields. Nothing else may be visited meanwhile. */
  *visitInPieces(visitor: Visitor): Generator<undefined, void> {
    this.visitor = visitor;
    let walks = 0;
    try {
      for (const path of this.paths)
        for (const { node, state } of inOrder(path.joins)) {
          const walked = this.states.copy(state);
          for (let at = this.walk(path, node, walked); at !== null; at = this.walk(path, at, walked)) yield;
          this.states.giveBack(walked);
          if (++walks % walksInPiece === 0) yield;
        }
    } finally {
      this.visitor = null;
    }
  }

  /**
   * Goes on with another graph that differs in words and figures only: where a unit can go, and what is done to it, is the same.
   * False: it is not; then nothing is changed.
   */
  goOn(graph: ControlFlowGraph): boolean {
    if (!this.isComplete || !isAlike(this.graph, graph, this.transfers)) return false;
    this.graph = graph;
    this.repairs = repairsIn(graph);
    for (const path of this.paths) path.repair = path.repair && this.repairs.get(path.repair.name)!;
    return true;
  }

  /** Gives its states back for the next analysis: nothing can be visited anymore. */
  release() {
    for (const { joins } of this.paths) {
      for (const { state } of joins.values()) this.states.giveBack(state);
      joins.clear();
    }
  }

  private path(repair: Repair | null, exhausted: number, from: Way['from']): Way {
    // Senders that are judged at one node send back to the same gates.
    const key = `${repair?.name ?? ''}|${exhausted}|${from === null ? '' : this.judgedAt(from.gate)}|${from === null || from.by === from.gate ? '' : from.by.number}`;
    let path = this.pathsByKey.get(key);
    if (path === undefined) {
      path = { id: this.paths.length, repair, exhausted, from, joins: new Map(), targets: new Map() };
      this.pathsByKey.set(key, path);
      this.paths.push(path);
    }
    return path;
  }

  /** The node at which a gate sends the unit to a repair; its number if it is in a repair itself. */
  private judgedAt(gate: Step): number | string {
    const at = this.gateNodes.get(gate);
    return at === undefined ? gate.number : this.decisionOf(at);
  }

  /** The node at which a gate is judged. */
  private decisionOf(node: number): number {
    return this.graph.decisions.get(node) ?? node;
  }

  private propagate(path: Way, node: number, state: AbstractState) {
    if (this.visitor !== null) return;
    let join = path.joins.get(node);
    if (join === undefined) {
      // One state may be sent several ways: what is kept is its own.
      join = { path, node, state: this.states.copy(state), isQueued: false };
      path.joins.set(node, join);
    } else if (!join.state.join(state)) return;
    if (join.isQueued) return;
    join.isQueued = true;
    this.worklist.push(join);
  }

  /** Walks from a join point to the next ones, applying steps in place. The node to go on from, if it is far to there. */
  private walk(path: Way, start: number, state: AbstractState): number | null {
    const { nodes } = this.graph;
    for (let index = start; index < nodes.length; index++) {
      if (index !== start && this.isJoinPoint[index] === 1) {
        this.propagate(path, index, state);
        return null;
      }
      const node = nodes[index]!;
      switch (node.kind) {
        case 'enter':
          if (index - start >= nodesInPiece) return index;
          this.enter(node.block, index, state, path);
          break;
        case 'step':
          this.passStep(node, index, state, path);
          break;
        case 'nop':
          break;
        case 'carryBack':
          this.carryBack(node.block, index, state, path);
          break;
        case 'branch':
          this.sendFailed(node.group, index, state, path);
          for (const test of node.group.tests)
            this.refine(state, test.gate.id, gateBits.failed | gateBits.notYet, index);
          break;
        case 'return':
          this.resume(node.block, index, state, path);
          return null;
        case 'end':
          this.visitor?.end?.({ state, path, at: index, block: node.block, last: this.lastStepBefore(index) });
          return null;
      }
    }
    return null;
  }

  private passStep(node: Extract<FlowNode, { kind: 'step' }>, index: number, state: AbstractState, path: Way) {
    const { step, block } = node;
    const { visitor } = this;
    if (visitor === null) {
      this.passed++;
      this.transfers.apply(step, state, index);
    } else {
      const visit: Visit = { step, block, before: state, path, at: index };
      visitor.step?.(visit);
      this.transfers.apply(step, state, index);
      visitor.after?.(visit, state);
    }
    const cell = this.gateCells[index]!;
    if (cell < 0 || !isGate(step)) return;
    const mayFail = step.gate.onFail.length > 0;
    // With a list of repairs a fail goes on to the stage's last test; without one the unit waits for the lead.
    if (node.group !== null)
      return state.set(cell, mayFail ? gateBits.passed | gateBits.failed : gateBits.passed, index);
    if (mayFail) this.send(step, cell, state, path, index);
    state.set(cell, gateBits.passed, index);
  }

  /** Any of the tests may have failed; the unit goes to one of the repairs that those ask for. */
  private sendFailed(group: TestGroup, index: number, state: AbstractState, path: Way) {
    for (const test of group.tests) {
      const cell = this.layout.gates.get(test.gate.id)!;
      if (state.may(cell, gateBits.failed)) this.send(test, cell, state, path, index);
    }
  }

  /** Sends the unit with a failed gate to the repairs that may be next; the state is as before then. */
  private send(gate: GateStep, cell: number, state: AbstractState, path: Way, index: number) {
    if (this.visitor !== null) return;
    const value = state.values[cell]!;
    const since = state.provenance[cell]!;
    state.set(cell, gateBits.failed, index);
    let targets = path.targets.get(gate);
    if (targets === undefined) {
      targets = this.targetsOf(gate, path);
      path.targets.set(gate, targets);
    }
    for (let at = 0; at < targets.length; at++) {
      this.passed++;
      const { path: next, node } = targets[at]!;
      this.propagate(next, node, state);
    }
    state.values[cell] = value;
    state.provenance[cell] = since;
  }

  private targetsOf(gate: GateStep, path: Way): Target[] {
    const targets: Target[] = [];
    const entries = nextEntries(gate.gate.onFail, this.triesOf, (name) => (path.exhausted & this.bit(name)) !== 0);
    for (const { repair } of entries) {
      const target = this.sendTo(repair, gate, path);
      if (target !== null) targets.push(target);
    }
    return targets;
  }

  /** One that is used up after one try counts as such only as far as these are distinguished. */
  private readonly triesOf = (name: string): number | null => {
    const tries = this.repairs.get(name)?.tries ?? null;
    return tries === 1 && !this.oneTry.includes(name) ? 2 : tries;
  };

  private bit(repair: string): number {
    const index = this.oneTry.indexOf(repair);
    return index < 0 ? 0 : 1 << index;
  }

  private sendTo(name: string, gate: GateStep, path: Way): Target | null {
    const node = this.graph.repairs.get(name);
    const repair = this.repairs.get(name);
    if (node === undefined || repair === undefined) return null;
    // A check in a repair that sends on to another: the unit goes back to where the first was sent from.
    const sender = repair.inline || path.from === null || !this.gateNodesInRepairs.has(gate) ? gate : path.from.gate;
    return { path: this.path(repair, path.exhausted | this.bit(name), { path, gate: sender, by: gate }), node };
  }

  private enter(block: Stage | Repair, index: number, state: AbstractState, path: PathContext) {
    const bit = this.layout.stationBit(block.station);
    if (block.station === null) return;
    const cell = this.layout.unit.station;
    if (index > 0 && !state.must(cell, bit)) {
      this.visitor?.leave?.({
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
    if (!state.may(this.layout.unit.station, bit)) return this.left(state, index);
    const staying = this.states.copy(state);
    this.left(state, index);
    state.join(staying);
    this.states.giveBack(staying);
  }

  /** Conditions of leaving are taken as met once they are reported. */
  private left(state: AbstractState, index: number) {
    const station = state.get(this.layout.unit.station);
    const fromWet = this.graph.procedure.shop.stations.some(
      (one) => one.wet && (station & this.layout.stationBit(one.name)) !== 0,
    );
    for (const { name, cells } of this.parts) {
      state.set(cells.kept, keptBits.kept, index);
      const isWet = fromWet && state.may(cells.wet, wet.solvent | wet.water);
      if (isWet && !isLeftToSoak(this.graph, state, name)) state.set(cells.wet, wet.dry, index);
    }
    state.set(this.layout.unit.clamped, flag.no, index);
    state.set(this.layout.unit.pressure, flag.no, index);
    // A line that comes off takes the prime with it.
    for (const cell of this.layout.ports.values()) {
      if (!state.may(cell, portBits.connected)) continue;
      state.set(this.layout.unit.primed, flag.no, index);
      state.set(cell, state.get(cell) & ~portBits.connected || portBits.open, index);
    }
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
    const at = this.gateNodes.get(gate);
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

  private carryBack(repair: Repair, index: number, state: AbstractState, path: PathContext) {
    const to = this.sentFrom(path);
    if (to === null || to.station === null) return;
    const bit = this.layout.stationBit(to.station);
    if (state.must(this.layout.unit.station, bit)) return;
    this.visitor?.leave?.({ last: this.lastStepBefore(index), block: repair, to, state, path, at: index });
    this.goes(state, bit, index);
    state.set(this.layout.unit.station, bit, index);
  }

  /** After a repair: to each gate that may be the earliest not passed on this build. */
  private resume(repair: Repair, index: number, state: AbstractState, path: Way) {
    const sender = path.from?.gate ?? null;
    const inRepair = sender === null ? undefined : this.gateNodesInRepairs.get(sender);
    // A check inside a repair that renews a part on the spot goes on in that repair.
    if (repair.inline && inRepair !== undefined) {
      this.visitor?.resume?.(repair, sender);
      return this.propagate(path.from!.path, inRepair, state);
    }
    const senderNode = sender === null ? undefined : this.gateNodes.get(sender);
    const upTo =
      senderNode === undefined ? Number.POSITIVE_INFINITY : Math.max(senderNode, this.decisionOf(senderNode));
    for (const { node, step } of this.graph.gates) {
      if (node > upTo) break;
      const { gate } = step;
      const cell = this.layout.gates.get(gate.id)!;
      if (state.may(cell, gateBits.notYet | gateBits.stale | gateBits.failed)) {
        const back = this.states.copy(state);
        this.refine(back, gate.id, gateBits.passed, index);
        this.goTo(node, repair, back, index, path);
        this.states.giveBack(back);
        if (!state.may(cell, gateBits.passed)) return;
      }
      this.refine(state, gate.id, gateBits.notYet | gateBits.stale | gateBits.failed, index);
    }
    if (senderNode !== undefined) this.goTo(this.decisionOf(senderNode), repair, state, index, path);
  }

  private goTo(node: number, repair: Repair, state: AbstractState, index: number, path: Way) {
    const to = this.graph.nodes[node]!;
    this.visitor?.resume?.(repair, to.kind === 'step' ? to.step : null);
    this.comeBack(node, repair, state, index, path);
    const { block } = to;
    const bit = this.layout.stationBit(block.station);
    if (block.station !== null && !state.must(this.layout.unit.station, bit)) {
      this.visitor?.leave?.({ last: repair.steps.at(-1) ?? null, block: repair, to: block, state, path, at: index });
      this.goes(state, bit, index);
      state.set(this.layout.unit.station, bit, index);
    }
    this.propagate(path, node, state);
  }

  /** What a repair left off is reported once; then the unit counts as it was at the test on the first path. */
  private comeBack(node: number, repair: Repair, state: AbstractState, index: number, path: PathContext) {
    const target = this.graph.nodes[node]!;
    const stood = this.paths[0]!.joins.get(node)?.state;
    if (target.kind !== 'step' || stood === undefined) return;
    const { step } = target;
    if (!isTest(step) && step.verb !== 'set') return;
    const off = this.leftOff(state, stood, step.verb === 'set');
    if (off.length === 0) return;
    this.visitor?.comeBack?.({
      last: repair.steps.at(-1) ?? null,
      block: repair,
      to: step,
      off,
      state,
      path,
      at: index,
    });
    for (const [cell, { kind }] of this.layout.locations.entries())
      if (!['gate', 'reading', 'age'].includes(kind)) state.set(cell, stood.get(cell), index);
  }

  /** Parts that surely were on and may be off, or their joint apart. What closes over an adjuster is off while it is set. */
  private leftOff(state: AbstractState, stood: AbstractState, loadedOnly: boolean): string[] {
    const on = placeBits.in | placeBits.trial;
    const off: string[] = [];
    for (const { name, cells, joint, isLoaded } of this.parts) {
      if (loadedOnly && !isLoaded) continue;
      const isOff = stood.must(cells.place, on) && !state.must(cells.place, on);
      const isApart = joint !== undefined && !stood.may(joint, jointBits.apart) && state.may(joint, jointBits.apart);
      if (isOff || isApart) off.push(name);
    }
    return off;
  }

  /** Takes values out of a gate's cell, where others remain. */
  private refine(state: AbstractState, name: string, out: number, at: number) {
    const cell = this.layout.gates.get(name)!;
    const left = state.get(cell) & ~out;
    state.set(cell, left === 0 ? gateBits.passed : left, at);
  }
}

function repairsIn({ procedure }: ControlFlowGraph): ReadonlyMap<string, Repair> {
  return new Map(procedure.repairs.map((repair) => [repair.name, repair] as const));
}

/** Whether two graphs have the same nodes but for words and figures, with the same gates at them. */
function isAlike(one: ControlFlowGraph, other: ControlFlowGraph, transfers: Transfers): boolean {
  return (
    one.nodes.length === other.nodes.length &&
    one.procedure.repairs.length === other.procedure.repairs.length &&
    one.procedure.repairs.every((repair, index) => isAlikeRepair(repair, other.procedure.repairs[index]!)) &&
    one.absent.size === other.absent.size &&
    [...one.absent].every((part) => other.absent.has(part)) &&
    equal(one.numbers, other.numbers) &&
    one.nodes.every((node, index) => isAlikeNode(node, other.nodes[index]!, transfers))
  );
}

function isAlikeRepair(one: Repair, other: Repair): boolean {
  return one === other || (one.name === other.name && one.tries === other.tries && one.inline === other.inline);
}

function isAlikeNode(one: FlowNode, other: FlowNode, transfers: Transfers): boolean {
  if (one.kind !== other.kind || !isAlikeBlock(one.block, other.block)) return false;
  if (one.kind === 'branch' && other.kind === 'branch') return isSameGroup(one.group, other.group);
  if (one.kind !== 'step' || other.kind !== 'step' || one.step === other.step) return true;
  return !isGate(one.step) && !isGate(other.step) && transfers.doTheSame(one.step, other.step);
}

function isAlikeBlock(one: Stage | Repair, other: Stage | Repair): boolean {
  return (
    one === other || ('tries' in one === 'tries' in other && one.name === other.name && one.station === other.station)
  );
}

function isSameGroup({ tests }: TestGroup, other: TestGroup): boolean {
  return tests.length === other.tests.length && tests.every((test, index) => test === other.tests[index]);
}

/** Join points by their nodes: few, and found nearly in this order. */
function inOrder(joins: ReadonlyMap<number, JoinState>): JoinState[] {
  const sorted: JoinState[] = [];
  for (const join of joins.values()) {
    let at = sorted.length;
    while (at > 0 && sorted[at - 1]!.node > join.node) at--;
    sorted.splice(at, 0, join);
  }
  return sorted;
}

/**
 * The flow analysis of a procedure: one for each set of part numbers whose steps differ. Pure.
 * @param memory of the procedure that was analyzed last, for one that is analyzed after each edit
 */
export function analyzeFlow(procedure: Procedure, memory = new FlowMemory()): FlowAnalysis[] {
  return finish(analyzeInPieces(procedure, memory)).flows;
}

/** What was analyzed, and has to be given back to the memory with these facts. */
export interface Analyzed {
  readonly flows: FlowAnalysis[];
  readonly facts: Facts;
}

/** The same; may be left where it yields, or go on after another one with the same memory. */
export function* analyzeInPieces(procedure: Procedure, memory: FlowMemory): Generator<undefined, Analyzed> {
  const { states, transfersOf, before, facts } = memory.begin(procedure);
  const flows: FlowAnalysis[] = [];
  const all = variants(procedure);
  for (const flow of before.slice(all.length)) flow.release();
  for (const [index, numbers] of all.entries()) {
    const graph = buildControlFlowGraph(procedure, numbers);
    yield;
    const known = before[index];
    if (known?.goOn(graph) === true) {
      flows.push(known);
      continue;
    }
    known?.release();
    const flow = new FlowAnalysis(graph, states, transfersOf(graph));
    yield* flow.seek();
    flows.push(flow);
  }
  return { flows, facts };
}

/** Does work to its end. */
export function finish<T>(work: Generator<undefined, T>): T {
  for (;;) {
    const { done, value } = work.next();
    if (done === true) return value;
  }
}

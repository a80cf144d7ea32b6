import type { Face, Port } from '../../language/model/family.ts';
import type { FailEntry, Procedure, Repair, Stage, Step, StepOf } from '../../language/model/procedure.ts';
import { closesUp, failEntries, type GateStep, isGate, namedIn, own } from '../../language/model/steps.ts';
import type { Verb } from '../../language/model/verbs.ts';
import type { Deviation } from './deviations.ts';
import { Facts, isHydraulic, triesOf } from './facts.ts';

/*
 * Every concrete run of a procedure, one after the other: one value for each property, no sets, no merging, tries
 * counted. Written from the language document and the rules' pages.
 * Runs that reach a gate in the same state with the same tries done go on alike, so the second is not followed.
 */

/** Rules whose condition the oracle knows. */
export const covered = [
  'part-handled-twice',
  'nothing-to-fit-on',
  'part-still-held',
  'joint-not-slackened',
  'left-hand-tight',
  'part-left-out',
  'still-clamped',
  'not-clamped',
  'opened-under-pressure',
  'gate-before-prime',
  'not-on-the-tester',
  'gate-stale',
  'left-connected',
  'passage-blocked',
  'open-port-in-dirt',
  'bare-lapped-face',
  'fitted-dirty',
  'fitted-wet',
  'lapped-face-not-checked',
  'no-sign-off',
] as const;

export type Covered = (typeof covered)[number];

interface PartState {
  place: 'in' | 'off' | 'gone' | 'guard' | 'trial' | 'sub';
  fresh: boolean;
  dirt: 'dirty' | 'washed' | 'rinsed' | 'preserved' | 'loosened';
  wet: 'dry' | 'solvent' | 'water' | 'oil';
}

interface UnitState {
  station: string | null;
  clamped: boolean;
  pressure: boolean;
  primed: boolean;
  signed: boolean;
  parts: Record<string, PartState>;
  guarded: Record<string, boolean>;
  looked: Record<string, boolean>;
  joints: Record<string, 'found' | 'apart' | 'run' | 'torqued' | 'slack'>;
  ports: Record<string, 'open' | 'capped' | 'connected'>;
  /** By the index of the gate's step among all stage steps. */
  gates: ('not yet' | 'passed' | 'stale' | 'failed')[];
}

/** A step with its place: in a stage by the stage's index, or in a repair. */
interface Place {
  readonly block: Stage | Repair;
  readonly stage: number | null;
  readonly at: number;
}

interface Run {
  place: Place;
  state: UnitState;
  /** By repair. */
  tries: number[];
  /** Indices of gates that failed in this stage and wait for its last test. */
  asked: number[];
  /** The gate that sent the unit to the repair it is in. */
  sender: number;
  /** The step that it was sent from. */
  from: Step | null;
  /** The station that its gate sent it from; null: it is not carried back there. */
  sentFrom: string | null;
}

interface GateAt {
  readonly step: GateStep;
  readonly place: Place;
  /** The last test of its stage: after it one repair is done. */
  readonly lastTest: Step;
}

export interface OracleResult {
  /** `rule step-key`. */
  readonly diagnostics: ReadonlySet<string>;
  /** Steps done over all runs. */
  readonly steps: number;
  /** False where it was given up: too many runs. */
  readonly complete: boolean;
}

const mostSteps = 400_000;

export interface Options {
  readonly deviations: ReadonlySet<Deviation>;
  /**
   * False: only one-try repairs are spent, and any entry of any test that failed may be the next. The flow analysis says that
   * it does not count; so what it alone finds is explained where such runs find it too.
   */
  readonly counts: boolean;
}

export function interpret(procedure: Procedure, options: Options): OracleResult {
  return new Interpreter(procedure, options).result();
}

/** A check of a part looks at its faces if it sorts the part, or mentions them. */
function looksAtFaces(step: StepOf<'check'>): boolean {
  return step.all || step.verdicts.length > 0 || /\bfaces?\b/u.test(step.text ?? '');
}

function copied(run: Run): Run {
  return { ...run, state: structuredClone(run.state), tries: [...run.tries], asked: [...run.asked] };
}

const ahead: ReadonlySet<Verb> = new Set<Verb>(['relieve', 'disconnect', 'unclamp', 'cap']);
const behind: ReadonlySet<Verb> = new Set<Verb>(['uncap', 'connect', 'prime']);

class Interpreter {
  private readonly facts: Facts;
  private readonly diagnostics = new Set<string>();
  private readonly seen = new Set<string>();
  private readonly waiting: Run[] = [];
  private readonly gates: GateAt[] = [];
  private readonly entries: readonly FailEntry[];
  /** How the unit was at each gate before any repair. */
  private readonly stood = new Map<Step, UnitState>();
  private readonly mostTries: number;
  private steps = 0;

  private readonly procedure: Procedure;
  private readonly options: Options;

  constructor(procedure: Procedure, options: Options) {
    this.procedure = procedure;
    this.options = options;
    this.facts = new Facts(procedure.family);
    procedure.stages.forEach((stage, index) => {
      const tests = stage.steps.filter((step) => step.verb === 'test');
      stage.steps.forEach((step, at) => {
        if (!isGate(step)) return;
        const lastTest = step.verb === 'test' ? (tests.at(-1) ?? step) : step;
        this.gates.push({ step, place: { block: stage, stage: index, at }, lastTest });
      });
    });
    this.entries = [...procedure.stages, ...procedure.repairs].flatMap((block) =>
      block.steps.flatMap((step) => failEntries(step)),
    );
    this.mostTries = Math.max(1, ...this.entries.map((entry) => this.triesFor(entry)).filter(Number.isFinite));
  }

  result(): OracleResult {
    const [first] = this.procedure.stages;
    if (first !== undefined) {
      const state = this.entry(first.station);
      this.waiting.push({
        place: { block: first, stage: 0, at: 0 },
        state,
        tries: this.procedure.repairs.map(() => 0),
        asked: [],
        sender: -1,
        from: null,
        sentFrom: null,
      });
    }
    for (let run = this.waiting.pop(); run !== undefined && this.steps < mostSteps; run = this.waiting.pop())
      this.follow(run);
    return { diagnostics: this.diagnostics, steps: this.steps, complete: this.steps < mostSteps };
  }

  /** What `receive` found: assembled, dirty outside and in, ports open, nothing known to be tight. */
  private entry(station: string | null): UnitState {
    const { parts, faces, joints, ports } = this.procedure.family;
    const each = <T>(names: readonly string[], value: () => T): Record<string, T> =>
      Object.fromEntries(names.map((name) => [name, value()]));
    return {
      station,
      clamped: false,
      pressure: false,
      primed: false,
      signed: false,
      parts: each(
        parts.map((part) => part.name),
        () => ({ place: 'in', fresh: false, dirt: 'dirty', wet: 'dry' }) as PartState,
      ),
      guarded: each(
        faces.map((face) => face.id),
        () => false,
      ),
      looked: each(
        faces.map((face) => face.id),
        () => false,
      ),
      joints: each(
        joints.map((joint) => joint.part),
        () => 'found' as const,
      ),
      ports: each(
        ports.map((port) => port.name),
        () => 'open' as const,
      ),
      gates: this.gates.map(() => 'not yet'),
    };
  }

  // ---- the way of a unit ---------------------------------------------------------------------------------

  private follow(run: Run) {
    for (;;) {
      const { block, stage, at } = run.place;
      const step = block.steps[at];
      if (step === undefined) {
        if (stage === null) {
          this.carry(run, block as Repair, at);
          if (!this.resume(run)) return;
        } else {
          const next = this.procedure.stages[stage + 1];
          if (next === undefined) {
            this.end(run.state, block);
            return;
          }
          this.move(run.state, next.station, block.steps.at(-1));
          run.place = { block: next, stage: stage + 1, at: 0 };
        }
        continue;
      }
      if (stage === null) this.carry(run, block as Repair, at);
      if (isGate(step)) {
        if (run.tries.every((done) => done === 0) && !this.stood.has(step))
          this.stood.set(step, structuredClone(run.state));
        if (this.known(run)) return;
      }
      this.steps++;
      if (this.steps >= mostSteps) return;
      run.place = { block, stage, at: at + 1 };
      this.judge(run.state, step, block);
      this.apply(run.state, step);
      if (!isGate(step)) continue;
      const failed = copied(run);
      const index = this.gates.findIndex((gate) => gate.step === step);
      if (index < 0) {
        // A check inside a repair: on a fail it sends the unit to another, which does not come back to it.
        this.send(failed, [step], step);
        continue;
      }
      const { lastTest } = this.gates[index]!;
      failed.state.gates[index] = 'failed';
      // With no list the unit is on hold.
      if (step.gate.onFail.length > 0) this.failed(failed, index);
      run.state.gates[index] = 'passed';
      if (step.verb !== 'test' || step !== lastTest) continue;
      if (run.asked.length === 0) {
        continue;
      }
      this.sendAsking(run, step);
      return;
    }
  }

  private failed(failed: Run, index: number) {
    const { step, lastTest } = this.gates[index]!;
    if (step.verb !== 'test' || step.gate.stopIfFails) {
      this.send(failed, [step], step);
      return;
    }
    failed.asked.push(index);
    if (step === lastTest) this.sendAsking(failed, step);
    else this.waiting.push(failed);
  }

  private sendAsking(run: Run, from: Step) {
    const asking = run.asked.map((index) => this.gates[index]!.step);
    this.send(run, asking, from);
  }

  /** Whether the unit came here before in the same state, with as many tries done. */
  private known(run: Run): boolean {
    const { block, at } = run.place;
    const key = `${block.name}\n${at}\n${run.tries}\n${run.asked}\n${run.sender}\n${run.sentFrom}\n${JSON.stringify(run.state)}`;
    if (this.seen.has(key)) return true;
    this.seen.add(key);
    return false;
  }

  /** The most thorough repair named is done once; if a list is used up, the unit is on hold: the run ends. */
  private send(run: Run, asking: readonly GateStep[], from: Step) {
    if (!this.options.counts) {
      for (const step of asking)
        for (const index of this.possible(step, run.tries)) this.sendTo(copied(run), index, step, from);
      return;
    }
    const repairs = asking.map((step) => this.next(step, run.tries));
    if (repairs.some((repair) => repair === null)) return;
    const index = Math.max(...(repairs as number[]));
    this.sendTo(run, index, asking[repairs.indexOf(index)]!, from);
  }

  private sendTo(run: Run, index: number, asking: Step, from: Step) {
    const repair = this.procedure.repairs[index]!;
    run.tries[index] = Math.min(run.tries[index]! + 1, this.options.counts ? this.mostTries : 1);
    const sender = this.gates.findIndex((gate) => gate.step === asking);
    if (sender >= 0) run.sender = sender;
    run.asked = [];
    if (sender >= 0) run.sentFrom = this.gates[sender]!.place.block.station;
    run.from = from;
    run.place = { block: repair, stage: null, at: 0 };
    this.waiting.push(run);
  }

  private possible(step: GateStep, tries: readonly number[]): number[] {
    return step.gate.onFail.flatMap((entry) => {
      const index = this.procedure.repairs.findIndex((repair) => repair.name === entry.repair);
      const { tries: most, inline } = this.procedure.repairs[index]!;
      return most === 1 && !inline && tries[index]! > 0 ? [] : [index];
    });
  }

  /**
   * A repair at a station of its own is done there. What is let down and capped first is done where the unit comes
   * from; what is connected and primed last, where it goes back to.
   */
  private carry(run: Run, repair: Repair, at: number) {
    if (repair.station === null) return;
    const verbs = repair.steps.map(({ verb }) => verb);
    const first = verbs.findIndex((verb) => !ahead.has(verb));
    const there = first < 0 ? verbs.length : first;
    const back = Math.max(verbs.findLastIndex((verb) => !behind.has(verb)) + 1, there);
    const last = repair.steps[at - 1];
    if (at === there) {
      this.move(run.state, repair.station, last ?? run.from ?? undefined);
    }
    if (at === back && at < verbs.length) this.move(run.state, run.sentFrom, last);
  }

  private departs(deviation: Deviation): boolean {
    return this.options.deviations.has(deviation);
  }

  /** The first entry of the list that has a try left. */
  private next(step: GateStep, tries: readonly number[]): number | null {
    for (const entry of step.gate.onFail) {
      const index = this.procedure.repairs.findIndex((repair) => repair.name === entry.repair);
      if (index >= 0 && tries[index]! < this.triesFor(entry)) return index;
    }
    return null;
  }

  private triesFor(entry: FailEntry): number {
    const repair = this.procedure.repairs.find((one) => one.name === entry.repair);
    return repair === undefined ? 0 : triesOf(entry, repair, this.entries);
  }

  /** The earliest of: the step that sent the unit there, and every gate before it that is not passed on this build. */
  private resume(run: Run): boolean {
    const open = run.state.gates.findIndex((state, index) => index < run.sender && state !== 'passed');
    const gate = this.gates[open < 0 ? run.sender : open];
    if (gate === undefined) return false;
    const last = run.place.block.steps.at(-1);
    const isTest = gate.step.verb === 'test';
    const hidden = this.departs('what-is-wrong-at-a-leaving-is-hidden-by-a-part-left-off');
    if (isTest && hidden) this.comeBack(run, gate.step);
    this.move(run.state, gate.place.block.station, last);
    if (isTest && !hidden) this.comeBack(run, gate.step);
    run.place = gate.place;
    return true;
  }

  /**
   * A repair that leaves a part off is a finding of its own (comes-back-different, which the oracle does not judge);
   * after it the unit is as it was at the test before any repair.
   */
  private comeBack(run: Run, test: Step) {
    const stood = this.stood.get(test);
    if (stood === undefined) return;
    const { state } = run;
    const isOff = Object.keys(state.parts).some((name) => this.isIn(stood, name) && !this.isIn(state, name));
    const isApart = Object.keys(state.joints).some(
      (name) => stood.joints[name] !== 'apart' && state.joints[name] === 'apart',
    );
    if (!isOff && !isApart) return;
    const { gates, parts } = state;
    run.state = structuredClone(stood);
    run.state.gates = gates;
    for (const [name, part] of Object.entries(run.state.parts)) part.fresh = parts[name]!.fresh;
  }

  private move(state: UnitState, station: string | null, last: Step | undefined) {
    if (station === null || station === state.station) return;
    this.leaves(state, last);
    state.station = station;
  }

  // ---- what is found -------------------------------------------------------------------------------------

  private report(rule: Covered, step: Step | undefined) {
    this.diagnostics.add(`${rule} ${step?.key ?? 'procedure'}`);
  }

  private leaves(state: UnitState, last: Step | undefined) {
    if (state.clamped) this.report('still-clamped', last);
    state.clamped = false;
    if (state.pressure) this.report('opened-under-pressure', last);
    state.pressure = false;
    for (const name of this.linesOn(state, Object.keys(state.ports), last)) {
      state.ports[name] = 'open';
      state.primed = false;
    }
    this.bareFaces(state, last);
    // Bare steel leaves a wet station dry or oiled.
    const isWet = this.procedure.shop.stations.some((one) => one.name === state.station && one.wet);
    if (isWet) for (const part of Object.values(state.parts)) if (part.wet !== 'oil') part.wet = 'dry';
  }

  private end(state: UnitState, block: Stage | Repair) {
    const last = block.steps.at(-1);
    const { parts, joints, ports } = this.procedure.family;
    for (const port of ports)
      if (!port.openInTransit && this.isExposed(state, port) && state.ports[port.name] === 'open')
        this.report('open-port-in-dirt', last);
    this.leaves(state, last);
    for (const part of parts)
      if (!part.suppliedLoose && state.parts[part.name]!.place !== 'in') this.report('part-left-out', last);
    for (const joint of joints)
      if (!joint.handTightIsFinal && this.isLoose(state, joint.part)) this.report('left-hand-tight', last);
    this.gates.forEach((gate, index) => {
      if (state.gates[index] === 'stale') this.diagnostics.add(`gate-stale ${gate.step.number}`);
    });
    if (!state.signed) this.report('no-sign-off', undefined);
  }

  /**
   * What is wrong before a step. After it the unit is as if the step's condition had held, by what the step itself
   * does: fitted is clean and shut in is there. What the step does not do stays as it was, and would be reported again: the
   * collector of the rules puts that together by its cause, which is out of the oracle's reach.
   */
  private judge(state: UnitState, step: Step, block: Stage | Repair) {
    const names = namedIn(step).map((object) => object.name);
    switch (step.verb) {
      case 'clamp':
        if (state.clamped) this.report('still-clamped', step);
        return;
      case 'unclamp':
        if (!state.clamped) this.report('still-clamped', step);
        return;
      case 'slacken':
        this.held(state, step);
        if (names.some((name) => !this.isIn(state, name))) this.report('part-handled-twice', step);
        this.opened(state, step);
        return;
      case 'torque':
        this.held(state, step);
        this.tightened(state, names, step);
        return;
      case 'remove':
      case 'discard':
      case 'renew':
        this.comingOff(state, step);
        this.opened(state, step);
        return;
      case 'disconnect':
        this.letDown(state, step);
        return;
      case 'fit':
      case 'run-down':
        this.goingOn(state, step, block, names);
        this.tightened(
          state,
          step.objects.map((object) => object.name),
          step,
        );
        return;
      case 'cap':
        this.linesOn(state, names, step);
        return;
      case 'connect':
        this.stillCapped(state, names, step);
        return;
      case 'wash':
      case 'soak':
        for (const port of this.procedure.family.ports)
          if (names.includes(port.part)) this.stillCapped(state, [port.name], step);
        return;
      case 'buff':
      case 'blast':
        this.openPorts(state, step);
        this.bareFaces(state, step);
        return;
      case 'wait':
        // While the unit drains on the tester its other ports are open on purpose.
        if (!Object.values(state.ports).includes('connected')) this.openPorts(state, step);
        this.bareFaces(state, step);
        return;
      default:
        if (isHydraulic(step, this.procedure)) this.underPressure(state, step);
    }
  }

  /** Clamped, held by something, or hanging on its line. */
  private held(state: UnitState, step: Step) {
    if (own(step, 'holder') != null || state.clamped || Object.values(state.ports).includes('connected')) return;
    this.report('not-clamped', step);
  }

  /** Something that holds pressure or spring load is loosened or comes off. */
  private opened(state: UnitState, step: Step) {
    const { facts } = this;
    const opens = step.objects.filter((object) => state.parts[object.name]!.place === 'in');
    if (opens.some(({ name }) => this.holdsPressure(name))) this.letDown(state, step);
    if (step.verb === 'slacken' && this.departs('a-line-may-be-on-when-a-joint-is-slackened')) return;
    if (opens.some(({ name }) => facts.isLoaded(name) || facts.closedBy(name).length > 0))
      this.linesOn(state, Object.keys(state.ports), step);
  }

  /** A lock nut outside, or a lever, holds nothing. */
  private holdsPressure(name: string): boolean {
    const { facts } = this;
    const hasPort = this.procedure.family.ports.some((port) => port.part === name);
    return facts.isLoaded(name) || hasPort || facts.closedBy(name).length > 0;
  }

  private tightened(state: UnitState, names: readonly string[], step: Step) {
    if (state.pressure && names.some((name) => this.holdsPressure(name))) this.report('opened-under-pressure', step);
  }

  private letDown(state: UnitState, step: Step) {
    if (state.pressure) this.report('opened-under-pressure', step);
    state.pressure = false;
  }

  private linesOn(state: UnitState, names: readonly string[], step: Step | undefined): string[] {
    const on = names.filter((name) => state.ports[name] === 'connected');
    if (on.length > 0) this.report('left-connected', step);
    return on;
  }

  private stillCapped(state: UnitState, names: readonly string[], step: Step) {
    if (names.some((name) => state.ports[name] === 'capped')) this.report('passage-blocked', step);
  }

  private comingOff(state: UnitState, step: Step) {
    const { facts } = this;
    const listed = step.objects.map((object) => object.name);
    const together = namedIn(step).map((object) => object.name);
    for (const name of listed) {
      const { place } = state.parts[name]!;
      if (step.verb !== 'renew') {
        const carrierGoes = facts.part(name).in.some((carrier) => carrier !== name && listed.includes(carrier));
        if (place === 'gone' || (place === 'off' && step.verb === 'remove') || (place === 'sub' && carrierGoes))
          this.report('part-handled-twice', step);
        const joint = facts.joint(name);
        const tight = state.joints[name] === 'found' || state.joints[name] === 'torqued';
        if (joint !== undefined && !joint.handTightIsFinal && tight && place === 'in')
          this.report('joint-not-slackened', step);
      }
      if (place !== 'in' && place !== 'trial') continue;
      const inside = facts.inside(name);
      const over = facts.over(name).filter((other) => !together.includes(other) && !inside.includes(other));
      if (over.some((other) => this.isIn(state, other))) this.report('part-still-held', step);
    }
  }

  private goingOn(state: UnitState, step: Step, block: Stage | Repair, names: readonly string[]) {
    const { facts } = this;
    for (const name of names) {
      const { place } = state.parts[name]!;
      const joint = state.joints[name];
      const twice =
        step.verb === 'run-down' ? (joint === 'torqued' || joint === 'run') && this.isIn(state, name) : place === 'in';
      if (twice) this.report('part-handled-twice', step);
    }
    if (step.verb === 'run-down')
      for (const { name } of step.objects)
        for (const inside of facts.closedOver(name))
          if (!this.isIn(state, inside) && !facts.part(inside).suppliedLoose) this.report('part-left-out', step);
    if (!closesUp(step)) return;
    const upsideDown = this.isUpsideDown(step, block);
    for (const name of names) {
      if (this.isIn(state, name)) continue;
      const under = facts.restsOn(name);
      const missing = [...under, ...facts.part(name).holds].filter(
        (other) => !names.includes(other) && !this.isIn(state, other) && !this.inHand(name, other),
      );
      if (missing.length > 0 && !upsideDown) this.report('nothing-to-fit-on', step);
      for (const one of [name, ...under.filter((other) => this.isIn(state, other))]) {
        const part = state.parts[one]!;
        const fromKit = part.place === 'gone' && facts.part(one).renewed;
        if ((part.dirt === 'dirty' || part.dirt === 'loosened') && !fromKit) this.report('fitted-dirty', step);
        if (part.place !== 'gone' && (part.wet === 'solvent' || part.wet === 'water')) this.report('fitted-wet', step);
      }
    }
    for (const face of this.procedure.family.faces) this.closedUnseen(state, step, face, names);
  }

  /** A lapped face that this step closes, old, and not looked at since the unit came in. */
  private closedUnseen(state: UnitState, step: Step, face: Face, names: readonly string[]) {
    const other = this.procedure.family.faces.find((one) => one.id === face.meets || one.meets === face.id);
    if (face.finish === null || other === undefined) return;
    const pair = [face.part, other.part];
    const closes =
      pair.every((part) => names.includes(part) || this.isIn(state, part)) &&
      pair.some((part) => names.includes(part) && !this.isIn(state, part));
    const part = state.parts[face.part]!;
    if (!closes || state.looked[face.id] || part.fresh || part.place === 'gone') return;
    this.report('lapped-face-not-checked', step);
  }

  /** A sub-assembly in the hand: put into or onto a part that is off itself, which then goes in with it. */
  private inHand(name: string, under: string): boolean {
    const { facts } = this;
    const { in: inside, on } = facts.part(name);
    if (facts.joint(name) !== undefined || facts.restsOn(under).length === 0) return false;
    return inside.includes(under) || (on.includes(under) && !this.isInBore(under));
  }

  /** It lies in a part, or on one that does. */
  private isInBore(name: string): boolean {
    const { in: inside, on } = this.facts.part(name);
    return inside.length > 0 || on.some((lower) => this.facts.restsOn(lower).length > 0 && this.isInBore(lower));
  }

  /** A run of fits in which two pairs at least, and all, come before what they rest on: built from the other end. */
  private isUpsideDown(step: Step, block: Stage | Repair): boolean {
    const at = block.steps.indexOf(step);
    if (step.verb !== 'fit' && step.verb !== 'run-down') return false;
    let first = at;
    while (block.steps[first - 1]?.verb === 'fit') first--;
    let last = at;
    while (block.steps[last + 1]?.verb === 'fit') last++;
    const order = new Map<string, number>();
    block.steps.slice(first, last + 1).forEach((fit, index) => {
      for (const { name } of namedIn(fit)) order.set(name, index);
    });
    const pairs: boolean[] = [];
    for (const [name, index] of order)
      for (const under of this.facts.restsOn(name)) {
        const place = order.get(under);
        if (place !== undefined && place !== index) pairs.push(index < place);
      }
    for (const [name, index] of order)
      for (const loaded of this.facts.part(name).bearsOn) {
        const place = order.get(loaded);
        if (place !== undefined && place !== index) pairs.push(place < index);
      }
    return pairs.length > 1 && pairs.every(Boolean);
  }

  private openPorts(state: UnitState, step: Step) {
    for (const port of this.procedure.family.ports) {
      if (!this.isExposed(state, port) || state.ports[port.name] !== 'open') continue;
      this.report('open-port-in-dirt', step);
    }
  }

  private bareFaces(state: UnitState, step: Step | undefined) {
    const { faces } = this.procedure.family;
    for (const face of faces) {
      if (face.finish === null || !this.isIn(state, face.part) || state.guarded[face.id]) continue;
      const other = faces.find((one) => one.id === face.meets || one.meets === face.id);
      if (other !== undefined && this.isIn(state, other.part)) continue;
      this.report('bare-lapped-face', step);
    }
  }

  private underPressure(state: UnitState, step: Step) {
    const { procedure, facts } = this;
    const { stations } = procedure.shop;
    for (const port of procedure.family.ports)
      if (this.isExposed(state, port)) this.stillCapped(state, [port.name], step);
    const station = stations.find((one) => one.name === state.station);
    if (stations.some((one) => one.pressure) && station?.pressure !== true) this.report('not-on-the-tester', step);
    else if (procedure.family.ports.length > 0 && !Object.values(state.ports).includes('connected'))
      this.report('not-on-the-tester', step);
    if (step.verb !== 'test') return;
    if (!state.primed) this.report('gate-before-prime', step);
    for (const { part, handTightIsFinal } of procedure.family.joints) {
      const through = step.gate.provesThrough;
      if (handTightIsFinal || !facts.isLoaded(part) || (through !== null && !through.includes(part))) continue;
      if (this.isLoose(state, part)) this.report('left-hand-tight', step);
    }
  }

  private isIn(state: UnitState, name: string): boolean {
    const { place } = state.parts[name]!;
    return place === 'in' || place === 'trial';
  }

  private isLoose(state: UnitState, joint: string): boolean {
    const now = state.joints[joint];
    return this.isIn(state, joint) && (now === 'run' || now === 'slack' || now === 'apart');
  }

  /** A port counts while its part is in place and nothing covers it. */
  private isExposed(state: UnitState, port: Port): boolean {
    return this.isIn(state, port.part) && (port.under === null || !this.isIn(state, port.under));
  }

  // ---- what a step does ----------------------------------------------------------------------------------

  private apply(state: UnitState, step: Step) {
    const names = step.objects.map((object) => object.name);
    const all = namedIn(step).map((object) => object.name);
    switch (step.verb) {
      case 'clamp':
        state.clamped = true;
        return;
      case 'unclamp':
        state.clamped = false;
        return;
      case 'slacken':
        for (const name of names) {
          if (state.joints[name] === undefined || !this.isIn(state, name)) continue;
          state.joints[name] = 'slack';
          this.open(state, name);
        }
        return;
      case 'remove':
        for (const name of names) this.takeOff(state, name, 'off', all);
        for (const { name } of step.withObjects) this.takeOff(state, name, 'sub', all);
        return;
      case 'discard':
        for (const name of all) this.takeOff(state, name, 'gone', all);
        return;
      case 'renew':
        for (const name of names) this.renew(state, name, step, names);
        return;
      case 'guard': {
        const face = names[0]!;
        state.guarded[face] = true;
        for (const { name } of step.withObjects) {
          state.parts[name]!.place = 'guard';
          if (state.joints[name] !== undefined) state.joints[name] = 'apart';
        }
        return;
      }
      case 'cap':
        for (const name of names) state.ports[name] = 'capped';
        return;
      case 'uncap':
      case 'disconnect':
        for (const name of names) state.ports[name] = 'open';
        if (step.verb === 'disconnect') state.primed = false;
        return;
      case 'connect':
        for (const name of names) state.ports[name] = 'connected';
        return;
      case 'wash':
      case 'soak':
      case 'rinse':
        for (const name of names) this.bathe(state, name, step);
        return;
      case 'choose':
        // Another one out of the drawer, in preservative.
        for (const name of names) if (!this.facts.part(name).readyToFit) state.parts[name]!.dirt = 'preserved';
        return;
      case 'blow-dry':
        for (const name of names) if (state.parts[name]!.place !== 'gone') state.parts[name]!.wet = 'dry';
        return;
      case 'clean-holes':
        for (const name of names) if (state.parts[name]!.dirt !== 'dirty') state.parts[name]!.dirt = 'loosened';
        return;
      case 'buff':
      case 'blast':
        for (const name of names) state.parts[name]!.dirt = 'dirty';
        return;
      case 'lap':
        for (const object of step.objects)
          for (const face of this.procedure.family.faces) {
            if (face.id !== object.name && face.part !== object.name) continue;
            state.parts[face.part]!.dirt = 'dirty';
            state.parts[face.part]!.fresh = false;
            this.touchFace(state, face.id);
          }
        return;
      case 'check':
        for (const object of step.objects)
          for (const face of this.procedure.family.faces)
            if (face.id === object.name || (face.part === object.name && looksAtFaces(step)))
              state.looked[face.id] = true;
        return;
      case 'fit':
        for (const name of all) this.fit(state, name, step);
        return;
      case 'run-down':
        for (const name of names) {
          this.close(state, name);
          state.joints[name] = 'run';
          this.touch(state, name);
        }
        return;
      case 'torque':
        for (const name of names) {
          this.close(state, name);
          state.joints[name] = 'torqued';
          this.touch(state, name);
        }
        return;
      case 'relieve':
        state.pressure = false;
        return;
      case 'sign-off':
        state.signed = true;
        return;
      default:
        if (!isHydraulic(step, this.procedure)) return;
        state.pressure = true;
        if (step.verb === 'prime') state.primed = true;
    }
  }

  private takeOff(state: UnitState, name: string, to: 'off' | 'gone' | 'sub', together: readonly string[]) {
    const part = state.parts[name]!;
    const again = to === 'off' && (part.place === 'off' || part.place === 'gone');
    if (part.place === 'in') {
      for (const joint of this.facts.closedBy(name)) this.open(state, joint);
      if (state.joints[name] !== undefined) this.open(state, name);
    }
    if (state.joints[name] !== undefined) state.joints[name] = 'apart';
    if (again || this.isIn(state, name))
      for (const inside of this.facts.inside(name))
        if (!together.includes(inside) && this.isIn(state, inside)) state.parts[inside]!.place = 'sub';
    this.uncover(state, name);
    part.place = to;
  }

  /** A guard comes off the faces that it was on. */
  private uncover(state: UnitState, name: string) {
    if (state.parts[name]!.place !== 'guard') return;
    for (const face of this.procedure.family.faces)
      if (face.guardedBy === name || face.guardedBy === null) state.guarded[face.id] = false;
  }

  private renew(state: UnitState, name: string, step: StepOf<'renew'>, together: readonly string[]) {
    if (this.isIn(state, name)) this.takeOff(state, name, 'off', together);
    this.uncover(state, name);
    const ready = step.readyToFit || this.facts.part(name).readyToFit;
    state.parts[name] = { place: 'off', fresh: true, dirt: ready ? 'rinsed' : 'preserved', wet: 'dry' };
    this.newPorts(state, name);
  }

  /** Caps and lines go with the old part. */
  private newPorts(state: UnitState, name: string) {
    for (const port of this.procedure.family.ports) if (port.part === name) state.ports[port.name] = 'open';
  }

  private bathe(state: UnitState, name: string, step: StepOf<'wash' | 'soak' | 'rinse'>) {
    const part = state.parts[name]!;
    if (part.place === 'gone') return;
    const kind = this.procedure.shop.fluids.find((fluid) => fluid.name === step.fluid)?.kind ?? 'solvent';
    part.wet =
      kind === 'solvent' ? 'solvent' : kind === 'water' || kind === 'detergent' || kind === 'caustic' ? 'water' : 'oil';
    if (step.verb !== 'rinse') part.dirt = 'washed';
    else if (part.dirt !== 'dirty') part.dirt = 'rinsed';
  }

  private fit(state: UnitState, name: string, step: StepOf<'fit'>) {
    const part = state.parts[name]!;
    if (step.forTrial) {
      this.place(state, name, 'trial');
      return;
    }
    this.uncover(state, name);
    if (part.place === 'gone') this.newPorts(state, name);
    this.place(state, name, 'in');
  }

  /** A joint that closes has what it goes on and all inside it in place. */
  private close(state: UnitState, name: string) {
    this.uncover(state, name);
    for (const part of [...this.facts.closedOver(name), ...this.facts.restsOn(name), name])
      if (!this.isIn(state, part)) this.place(state, part, 'in');
  }

  /** What lies in a sub-assembly goes in with it. */
  private place(state: UnitState, name: string, to: 'in' | 'trial') {
    const part = state.parts[name]!;
    if (part.place === 'gone') part.fresh = true;
    part.place = to;
    part.dirt = 'rinsed';
    if (to === 'in') part.wet = 'oil';
    for (const inside of this.facts.inside(name))
      if (state.parts[inside]!.place === 'sub') this.place(state, inside, to);
  }

  /** Opening loses the prime and touches the joint. */
  private open(state: UnitState, joint: string) {
    if (this.facts.isLoaded(joint)) state.primed = false;
    this.touch(state, joint);
  }

  /** A gate that proves through a joint is stale when that is touched, and with it what used its reading. */
  private touch(state: UnitState, joint: string) {
    this.fall(state, (step) => {
      const through = step.gate.provesThrough;
      return through === null ? step.verb === 'test' && this.facts.isLoaded(joint) : through.includes(joint);
    });
  }

  private touchFace(state: UnitState, face: string) {
    this.fall(state, (step) => step.gate.provesThrough?.includes(face) ?? step.verb === 'test');
  }

  /** Gates that no longer hold, and with them every result that used their reading. */
  private fall(state: UnitState, falls: (step: GateStep) => boolean) {
    const stale: string[] = [];
    const fall = (is: (step: GateStep) => boolean) =>
      this.gates.forEach(({ step }, index) => {
        if (state.gates[index] !== 'passed' || !is(step)) return;
        state.gates[index] = 'stale';
        if (step.verb === 'test') stale.push(step.gate.test);
      });
    fall(falls);
    for (let name = stale.pop(); name !== undefined; name = stale.pop())
      fall((step) => step.verb === 'test' && step.test.hold?.of === name);
  }
}

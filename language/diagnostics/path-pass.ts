import type { Departure, FlowAnalysis, PathContext, Visit, Visitor } from '../analysis/flow-analysis.ts';
import { type Footprint, Recorder } from '../analysis/footprint.ts';
import type { AbstractState } from '../analysis/state.ts';
import type { Block, Step } from '../model/procedure.ts';
import type { Verb } from '../model/verbs.ts';
import type { PathChecks } from './rule.ts';

/** The checks of one rule; none is called again once one has thrown. */
export interface GuardedChecks {
  readonly checks: PathChecks;
  works: boolean;
  readonly thrown: (error: unknown) => void;
}

/** Something that checks were shown, and what they read of the state and, if at all, of the path. */
interface Shown {
  readonly what: Occasion;
  readonly footprint: Footprint;
  readonly path: PathContext | null;
}

/** What is shown besides state and path. */
interface Occasion {
  readonly hook: 'step' | 'leave' | 'end';
  readonly last: Step | null;
  readonly block: Block;
  readonly to: Block | null;
}

/** Most that are kept of one node: more means that no two states are alike. */
const most = 16;

/**
 * Shows the checks of all rules what they listen to, in the order of the rules. Most paths lead through most steps in a
 * state that differs in nothing that the rules look at. So what they read is taken down, and where it was the same
 * before, at the same node, they are not shown it: they would report the same again.
 */
export class PathPass implements Visitor {
  private readonly flow: FlowAnalysis;
  private readonly steps = new Map<Verb, { readonly of: GuardedChecks; readonly check: (visit: Visit) => void }[]>();
  private readonly all: readonly GuardedChecks[];
  private readonly recorder: Recorder;
  private readonly shown: (Shown[] | undefined)[] = [];
  private readonly paths = new Map<PathContext, PathContext>();
  private isPathRead = false;

  constructor(flow: FlowAnalysis, all: readonly GuardedChecks[]) {
    this.flow = flow;
    this.all = all;
    this.recorder = new Recorder(flow.layout.locations.length);
    for (const of of all) {
      const { step } = of.checks;
      if (step === undefined) continue;
      for (const verb of step.verbs) {
        const listening = this.steps.get(verb) ?? [];
        this.steps.set(verb, listening);
        listening.push({ of, check: step.check });
      }
    }
  }

  step({ step, block, before, path, at }: Visit) {
    const listening = this.steps.get(step.verb);
    if (listening === undefined) return;
    this.show({ hook: 'step', last: step, block, to: null }, at, before, path, (path) => {
      const visit: Visit = { step, block, before, path, at };
      for (const { of, check } of listening) call(of, check, visit);
    });
  }

  leave({ last, block, to, state, path, at }: Departure & { readonly to: Block }) {
    this.show({ hook: 'leave', last, block, to }, at, state, path, (path) => {
      const leaving = { last, block, to, state, path, at };
      for (const of of this.all) call(of, of.checks.leave, leaving);
    });
  }

  end({ last, block, state, path, at }: Departure) {
    this.show({ hook: 'end', last, block, to: null }, at, state, path, (path) => {
      const ending = { last, block, state, path, at };
      for (const of of this.all) call(of, of.checks.end, ending);
    });
  }

  comeBack(coming: Parameters<NonNullable<Visitor['comeBack']>>[0]) {
    for (const of of this.all) call(of, of.checks.comeBack, coming);
  }

  private show(what: Occasion, at: number, state: AbstractState, path: PathContext, show: (path: PathContext) => void) {
    if (!this.flow.isShared(at)) return show(path);
    const known = this.shown[at] ?? [];
    for (const one of known)
      if (isSame(one.what, what) && (one.path === null || one.path === path) && one.footprint.fits(state)) return;
    if (known.length === most) return show(path);
    this.isPathRead = false;
    this.recorder.start(state);
    show(this.traced(path));
    this.recorder.stop();
    known.push({ what, footprint: this.recorder.footprint, path: this.isPathRead ? path : null });
    this.shown[at] = known;
  }

  /** A path that takes down that it is looked at. Most rules only hand it on. */
  private traced(path: PathContext): PathContext {
    const known = this.paths.get(path);
    if (known !== undefined) return known;
    const read = () => {
      this.isPathRead = true;
      return path;
    };
    const traced: PathContext = {
      get id() {
        return read().id;
      },
      get repair() {
        return read().repair;
      },
      get exhausted() {
        return read().exhausted;
      },
      get from() {
        return read().from;
      },
    };
    this.paths.set(path, traced);
    return traced;
  }
}

function isSame(one: Occasion, other: Occasion): boolean {
  return one.hook === other.hook && one.last === other.last && one.block === other.block && one.to === other.to;
}

function call<T>(of: GuardedChecks, check: ((shown: T) => void) | undefined, shown: T) {
  if (check === undefined || !of.works) return;
  try {
    check.call(of.checks, shown);
  } catch (error) {
    of.works = false;
    of.thrown(error);
  }
}

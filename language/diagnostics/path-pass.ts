import type { Departure, FlowAnalysis, PathContext, Visit, Visitor } from '../analysis/flow-analysis.ts';
import { type Footprint, Recorder } from '../analysis/footprint.ts';
import type { AbstractState } from '../analysis/state.ts';
import type { Block, Step } from '../model/procedure.ts';
import type { Verb } from '../model/verbs.ts';
import type { PathChecks, Report } from './rule.ts';

type Hook = 'step' | 'leave' | 'end';

/** Something that rules were shown, with what they read of the state and, if at all, of the path. */
interface Shown {
  readonly flow: FlowAnalysis;
  readonly hook: Hook;
  readonly last: Step | null;
  readonly block: Block;
  readonly to: Block | null;
  readonly path: PathContext | null;
  readonly footprint: Footprint;
  /** Nothing was reported. */
  readonly isClean: boolean;
}

/** What was shown at each node. */
type ShownByNode = (Shown[] | undefined)[];

/** What was shown in the analyses of one procedure, by the parts that are absent: nodes are the same in all of them. */
export class ShownBefore {
  private readonly byAbsent = new Map<string, ShownByNode>();

  in({ graph }: FlowAnalysis): ShownByNode {
    const key = [...graph.absent].sort().join();
    const shown = this.byAbsent.get(key) ?? [];
    this.byAbsent.set(key, shown);
    return shown;
  }
}

/** Rules for which one memory is kept, and what they do while they are shown something. */
interface Group {
  readonly shown: ShownByNode;
  readonly recorder: Recorder;
  isPathRead: boolean;
  reports: number;
  isShown: boolean;
}

/** The checks of one rule; none is called again once one has thrown. */
interface GuardedChecks {
  readonly checks: PathChecks;
  readonly group: Group;
  readonly thrown: (error: unknown) => void;
  works: boolean;
}

/** Most that are kept of one node: more means that no two states are alike. */
const most = 16;

const none: readonly never[] = [];

/**
 * Shows the checks of all rules what they listen to, in the order of the rules. Most paths lead through most steps in a
 * state that differs in nothing that the rules look at. So what they read is taken down, and where it was the same
 * before, at the same node, they are not shown it: they would report the same again.
 */
export class PathPass implements Visitor {
  private readonly flow: FlowAnalysis;
  private readonly all: GuardedChecks[] = [];
  private readonly byVerb = new Map<Verb, GuardedChecks[]>();
  /** Rules that look at what they are shown and nothing else; and those that also look around. */
  private readonly local: Group;
  private readonly wide: Group;
  /** That of the rule that is shown something. */
  private current: Group;
  private readonly paths = new Map<PathContext, PathContext>();

  /** @param before what local rules were shown for other part numbers */
  constructor(flow: FlowAnalysis, before: ShownBefore) {
    const size = flow.layout.locations.length;
    const group = (shown: ShownByNode) => ({
      shown,
      recorder: new Recorder(size),
      isPathRead: false,
      reports: 0,
      isShown: false,
    });
    this.flow = flow;
    this.local = group(before.in(flow));
    this.wide = group([]);
    this.current = this.wide;
  }

  add(checks: PathChecks, thrown: (error: unknown) => void) {
    const one = { checks, group: checks.looksAround === true ? this.wide : this.local, thrown, works: true };
    this.all.push(one);
    for (const verb of checks.step?.verbs ?? []) {
      const others = this.byVerb.get(verb);
      if (others === undefined) this.byVerb.set(verb, [one]);
      else others.push(one);
    }
  }

  /** A sink that takes note that something is reported. */
  noting(report: (report: Report) => void): (report: Report) => void {
    return (one) => {
      this.current.reports++;
      report(one);
    };
  }

  step({ step, block, before, path, at }: Visit) {
    this.show('step', this.byVerb.get(step.verb) ?? none, step, block, null, at, before, path);
  }

  leave({ last, block, to, state, path, at }: Departure & { readonly to: Block }) {
    this.show('leave', this.all, last, block, to, at, state, path);
  }

  end({ last, block, state, path, at }: Departure) {
    this.show('end', this.all, last, block, null, at, state, path);
  }

  comeBack(coming: Parameters<NonNullable<Visitor['comeBack']>>[0]) {
    for (const one of this.all) call(one, one.checks.comeBack, coming);
  }

  private show(
    hook: Hook,
    listening: readonly GuardedChecks[],
    last: Step | null,
    block: Block,
    to: Block | null,
    at: number,
    state: AbstractState,
    path: PathContext,
  ) {
    if (listening.length === 0) return;
    const { local, wide } = this;
    local.isShown = !this.isKnown(local, hook, last, block, to, at, state, path);
    wide.isShown = !this.isKnown(wide, hook, last, block, to, at, state, path);
    if (!local.isShown && !wide.isShown) return;
    const [localReports, wideReports] = [local.reports, wide.reports];
    const traced = this.traced(path);
    local.recorder.start(state);
    wide.recorder.start(state);
    for (const one of listening) {
      if (!one.group.isShown) continue;
      this.current = one.group;
      state.recorder = one.group.recorder;
      tell(one, hook, last, block, to, at, state, traced);
    }
    local.recorder.stop();
    wide.recorder.stop();
    const what = { flow: this.flow, hook, last, block, to };
    if (local.isShown) keep(local, at, what, path, local.reports === localReports);
    if (wide.isShown) keep(wide, at, what, path, wide.reports === wideReports);
  }

  private isKnown(
    { shown }: Group,
    hook: Hook,
    last: Step | null,
    block: Block,
    to: Block | null,
    at: number,
    state: AbstractState,
    path: PathContext,
  ): boolean {
    const known = shown[at];
    if (known === undefined) return false;
    for (const one of known)
      if (
        one.hook === hook &&
        one.last === last &&
        one.to === to &&
        one.block === block &&
        (one.path === null || one.path === path) &&
        (one.isClean || one.flow === this.flow) &&
        one.footprint.fits(state)
      )
        return true;
    return false;
  }

  /** A path that takes down that it is looked at. Most rules only hand it on. */
  private traced(path: PathContext): PathContext {
    const known = this.paths.get(path);
    if (known !== undefined) return known;
    const read = () => {
      this.current.isPathRead = true;
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

function keep(
  group: Group,
  at: number,
  what: Pick<Shown, 'flow' | 'hook' | 'last' | 'block' | 'to'>,
  path: PathContext,
  isClean: boolean,
) {
  const { recorder, isPathRead, shown } = group;
  group.isPathRead = false;
  const all = shown[at] ?? [];
  shown[at] = all;
  if (all.length < most) all.push({ ...what, path: isPathRead ? path : null, footprint: recorder.footprint, isClean });
}

function tell(
  one: GuardedChecks,
  hook: Hook,
  last: Step | null,
  block: Block,
  to: Block | null,
  at: number,
  state: AbstractState,
  path: PathContext,
) {
  switch (hook) {
    case 'step':
      return call(one, one.checks.step?.check, { step: last!, block, before: state, path, at });
    case 'leave':
      return call(one, one.checks.leave, { last, block, to: to!, state, path, at });
    case 'end':
      return call(one, one.checks.end, { last, block, state, path, at });
  }
}

function call<T>(one: GuardedChecks, check: ((shown: T) => void) | undefined, shown: T) {
  if (check === undefined || !one.works) return;
  try {
    check.call(one.checks, shown);
  } catch (error) {
    one.works = false;
    one.thrown(error);
  }
}

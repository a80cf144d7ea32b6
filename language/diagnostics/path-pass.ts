import type { Departure, FlowAnalysis, PathContext, Visit, Visitor } from '../analysis/flow-analysis.ts';
import { type Footprint, Recorder } from '../analysis/footprint.ts';
import type { AbstractState } from '../analysis/state.ts';
import type { Block, Step } from '../model/procedure.ts';
import type { Verb } from '../model/verbs.ts';
import type { PathChecks, Report } from './rule.ts';
import type { CleanSteps } from './step-pass.ts';

type Hook = 'step' | 'leave' | 'end';

/** Something that rules were shown, with what they read of the state and, if at all, of the path. */
interface Shown {
  /** The pass in which it was shown. What was reported, or depends on the path, is the same in this pass only. */
  readonly pass: number;
  readonly hook: Hook;
  readonly at: number;
  readonly block: Block;
  readonly to: Block | null;
  /** Its id; null: it was not looked at. */
  readonly path: number | null;
  readonly footprint: Footprint;
  /** Nothing was reported. */
  readonly isClean: boolean;
}

/** What was shown, by the step, or by the block where there is no step. */
type ShownAt = WeakMap<Step | Block, Shown[]>;

/** What was shown in earlier passes over a procedure: on its paths by the parts that are absent, and its steps by themselves. */
export class ShownBefore {
  private readonly byAbsent = new Map<string, ShownAt>();
  private passes = 0;
  readonly cleanSteps: CleanSteps = new WeakMap();

  in({ graph }: FlowAnalysis): ShownAt {
    const key = [...graph.absent].sort().join();
    const shown = this.byAbsent.get(key) ?? new WeakMap();
    this.byAbsent.set(key, shown);
    return shown;
  }

  nextPass(): number {
    return ++this.passes;
  }
}

/** Rules for which one memory is kept, and what they do while they are shown something. */
interface Group {
  readonly shown: ShownAt;
  /** The same for the step at each node. */
  readonly atNodes: (Shown[] | undefined)[];
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

/** Those that listen to something, in the order of the rules, and how many of them are local and wide. */
interface Listeners {
  readonly all: GuardedChecks[];
  local: number;
  wide: number;
}

/** Most that are kept of one step; the oldest goes first. */
const most = 16;

/**
 * Shows the checks of all rules what they listen to, in the order of the rules. Most paths lead through most steps in a
 * state that differs in nothing that the rules look at. So what they read is taken down, and where it was the same
 * before, at the same node, they are not shown it: they would report the same again.
 */
export class PathPass implements Visitor {
  private readonly leaving: Listeners = { all: [], local: 0, wide: 0 };
  private readonly ending: Listeners = { all: [], local: 0, wide: 0 };
  private readonly comingBack: GuardedChecks[] = [];
  private readonly byVerb = new Map<Verb, Listeners>();
  /** Rules that look at what they are shown and nothing else; and those that also look around. */
  private readonly local: Group;
  private readonly wide: Group;
  /** That of the rule that is shown something. */
  private current: Group;
  private readonly paths = new Map<PathContext, PathContext>();
  private readonly pass: number;

  /** @param before what local rules were shown for other part numbers, and before an edit */
  constructor(flow: FlowAnalysis, before: ShownBefore) {
    const size = flow.layout.locations.length;
    const group = (shown: ShownAt): Group => ({
      shown,
      atNodes: [],
      recorder: new Recorder(size),
      isPathRead: false,
      reports: 0,
      isShown: false,
    });
    this.pass = before.nextPass();
    this.local = group(before.in(flow));
    this.wide = group(new WeakMap());
    this.current = this.wide;
  }

  add(checks: PathChecks, thrown: (error: unknown) => void) {
    const size = checks.looksAround === true ? 'wide' : 'local';
    const one = { checks, group: this[size], thrown, works: true };
    const listen = (to: Listeners) => {
      to.all.push(one);
      to[size]++;
    };
    if (checks.step !== undefined) for (const verb of checks.step.verbs) listen(this.listenersTo(verb));
    if (checks.leave !== undefined) listen(this.leaving);
    if (checks.end !== undefined) listen(this.ending);
    if (checks.comeBack !== undefined) this.comingBack.push(one);
  }

  private listenersTo(verb: Verb): Listeners {
    const known = this.byVerb.get(verb) ?? { all: [], local: 0, wide: 0 };
    this.byVerb.set(verb, known);
    return known;
  }

  /** A sink that takes note that something is reported. */
  noting(report: (report: Report) => void): (report: Report) => void {
    return (one) => {
      this.current.reports++;
      report(one);
    };
  }

  step({ step, block, before, path, at }: Visit) {
    const listeners = this.byVerb.get(step.verb);
    if (listeners !== undefined) this.show('step', listeners, step, block, null, at, before, path);
  }

  leave({ last, block, to, state, path, at }: Departure & { readonly to: Block }) {
    this.show('leave', this.leaving, last, block, to, at, state, path);
  }

  end({ last, block, state, path, at }: Departure) {
    this.show('end', this.ending, last, block, null, at, state, path);
  }

  comeBack(coming: Parameters<NonNullable<Visitor['comeBack']>>[0]) {
    for (const one of this.comingBack) call(one, one.checks.comeBack, coming);
  }

  private show(
    hook: Hook,
    listeners: Listeners,
    last: Step | null,
    block: Block,
    to: Block | null,
    at: number,
    state: AbstractState,
    path: PathContext,
  ) {
    const { local, wide } = this;
    const known = listeners.local > 0 ? shownIn(local, hook, last, block, at) : null;
    const knownWide = listeners.wide > 0 ? shownIn(wide, hook, last, block, at) : null;
    local.isShown = known !== null && !this.isKnown(known, hook, block, to, at, state, path);
    wide.isShown = knownWide !== null && !this.isKnown(knownWide, hook, block, to, at, state, path);
    if (!local.isShown && !wide.isShown) return;
    const [localReports, wideReports] = [local.reports, wide.reports];
    const traced = this.traced(path);
    local.isPathRead = false;
    wide.isPathRead = false;
    local.recorder.start(state);
    wide.recorder.start(state);
    const shown = { step: last!, last, block, to: to!, before: state, state, path: traced, at };
    for (const one of listeners.all) {
      if (!one.group.isShown) continue;
      this.current = one.group;
      state.recorder = one.group.recorder;
      tell(one, hook, shown);
    }
    local.recorder.stop();
    wide.recorder.stop();
    if (local.isShown) this.keep(known!, local, hook, at, block, to, path, local.reports === localReports);
    if (wide.isShown) this.keep(knownWide!, wide, hook, at, block, to, path, wide.reports === wideReports);
  }

  private keep(
    known: Shown[],
    { recorder, isPathRead }: Group,
    hook: Hook,
    at: number,
    block: Block,
    to: Block | null,
    { id }: PathContext,
    isClean: boolean,
  ) {
    const footprint = recorder.footprint();
    known.push({ pass: this.pass, hook, at, block, to, path: isPathRead ? id : null, footprint, isClean });
    if (known.length > most) known.shift();
  }

  private isKnown(
    known: readonly Shown[],
    hook: Hook,
    block: Block,
    to: Block | null,
    at: number,
    state: AbstractState,
    path: PathContext,
  ): boolean {
    for (let index = 0; index < known.length; index++) {
      const one = known[index]!;
      if (
        one.hook === hook &&
        one.to === to &&
        one.block === block &&
        (one.pass === this.pass
          ? one.at === at && (one.path ?? path.id) === path.id
          : one.isClean && one.path === null) &&
        one.footprint.fits(state)
      )
        return true;
    }
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

/** What a group was shown at a step, or at the end of a block where there is no step. */
function shownIn({ shown, atNodes }: Group, hook: Hook, last: Step | null, block: Block, at: number): Shown[] {
  const here = hook === 'step' ? atNodes[at] : undefined;
  if (here !== undefined) return here;
  const known = shown.get(last ?? block) ?? [];
  shown.set(last ?? block, known);
  if (hook === 'step') atNodes[at] = known;
  return known;
}

/** What may be shown to any of the hooks. */
type Anything = Visit & Departure & { readonly to: Block };

function tell(one: GuardedChecks, hook: Hook, shown: Anything) {
  switch (hook) {
    case 'step':
      return call(one, one.checks.step?.check, shown);
    case 'leave':
      return call(one, one.checks.leave, shown);
    case 'end':
      return call(one, one.checks.end, shown);
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

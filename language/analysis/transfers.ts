import type { Procedure, Step } from '../model/procedure.ts';
import type { Effects } from './effects.ts';
import { type Footprint, Recorder } from './footprint.ts';
import type { AbstractState } from './state.ts';

/** What a step did to a state with a footprint: cells and the values that they were set to, in order. */
interface Transfer {
  readonly footprint: Footprint;
  readonly writes: readonly number[];
}

/** Steps that do the same, and what they did. */
interface Kind {
  readonly transfers: Transfer[];
  runs: number;
}

/** How often steps are worked out before what they do is kept: most are passed once while the states are sought, and once after. */
const least = 2;

/** Most that are kept of steps that do the same: more means that no two states are alike. */
const most = 8;

/** Most kinds of steps that are kept over the edits of a procedure: then all are dropped. */
const mostKinds = 5_000;

/** The effects of the steps of a procedure, each worked out once for all states that are the same to it. */
export class Transfers {
  private readonly effects: Effects;
  private readonly recorder: Recorder;
  private readonly kinds: Map<string, Kind>;
  private readonly size: number;
  private readonly kindsOfSteps = new WeakMap<Step, Kind>();

  /** @param size of the states: how many cells they have */
  constructor(effects: Effects, size: number, kinds = new Map<string, Kind>()) {
    this.effects = effects;
    this.size = size;
    this.kinds = kinds;
    this.recorder = new Recorder(size);
  }

  /** The same for another procedure, with the same family, shop and gates. */
  of(procedure: Procedure): Transfers {
    return new Transfers(this.effects.of(procedure), this.size, this.kinds);
  }

  /** Applies a step in place. */
  apply(step: Step, state: AbstractState, node: number) {
    const kind = this.kindOf(step);
    const { transfers } = kind;
    // By index: an iterator would be made at each step of each path.
    for (let at = 0; at < transfers.length; at++) {
      const { footprint, writes } = transfers[at]!;
      if (!footprint.fits(state)) continue;
      for (let index = 0; index < writes.length; index += 2) state.set(writes[index]!, writes[index + 1]!, node);
      return;
    }
    if (kind.runs < least || transfers.length === most) {
      kind.runs++;
      return this.effects.apply(step, state, node);
    }
    const { recorder } = this;
    recorder.start(state);
    this.effects.apply(step, state, node);
    recorder.stop();
    transfers.push({ footprint: recorder.footprint(), writes: recorder.writes });
  }

  /** Whether two steps do the same to every state. False also where that is no longer known. */
  doTheSame(one: Step, other: Step): boolean {
    return one === other || this.kindOf(one) === this.kindOf(other);
  }

  private kindOf(step: Step): Kind {
    return this.kindsOfSteps.get(step) ?? this.findKind(step);
  }

  private findKind(step: Step): Kind {
    const key = this.effects.keyOf(step);
    if (this.kinds.size === mostKinds) this.kinds.clear();
    const kind = this.kinds.get(key) ?? { transfers: [], runs: 0 };
    this.kinds.set(key, kind);
    this.kindsOfSteps.set(step, kind);
    return kind;
  }
}

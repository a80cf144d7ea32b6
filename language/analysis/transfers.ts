import type { Step } from '../model/procedure.ts';
import type { Effects } from './effects.ts';
import { type Footprint, Recorder } from './footprint.ts';
import type { AbstractState } from './state.ts';

/** What a step did to a state with a footprint: cells and the values that they were set to, in order. */
interface Transfer {
  readonly footprint: Footprint;
  readonly writes: readonly number[];
}

/** How often a step is worked out before what it does is kept: a node that is on no loop is passed twice. */
const before = 2;

/** Most that are kept of one node: more means that no two states are alike. */
const most = 8;

/** The effects of the steps at the nodes of a graph, each worked out once for all states that are the same to it. */
export class Transfers {
  private readonly effects: Effects;
  private readonly recorder: Recorder;
  private readonly runs: Uint8Array;
  private readonly known: (Transfer[] | undefined)[] = [];

  constructor(effects: Effects, nodes: number, size: number) {
    this.effects = effects;
    this.recorder = new Recorder(size);
    this.runs = new Uint8Array(nodes);
  }

  /** Applies a step in place. */
  apply(step: Step, state: AbstractState, node: number) {
    const known = this.known[node];
    if (known !== undefined)
      for (const { footprint, writes } of known)
        if (footprint.fits(state)) {
          for (let index = 0; index < writes.length; index += 2) state.set(writes[index]!, writes[index + 1]!, node);
          return;
        }
    if (this.runs[node]! < before || known?.length === most) {
      this.runs[node]!++;
      this.effects.apply(step, state, node);
      return;
    }
    const { recorder } = this;
    recorder.start(state);
    this.effects.apply(step, state, node);
    recorder.stop();
    const { footprint, writes } = recorder;
    if (known === undefined) this.known[node] = [{ footprint, writes }];
    else known.push({ footprint, writes });
  }
}

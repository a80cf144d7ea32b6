import equal from 'fast-deep-equal';
import type { Procedure } from '../model/procedure.ts';
import type { ControlFlowGraph } from './control-flow-graph.ts';
import { Effects, gatesOf } from './effects.ts';
import type { FlowAnalysis } from './flow-analysis.ts';
import { LocationLayout } from './locations.ts';
import { StatePool } from './state.ts';
import { Transfers } from './transfers.ts';

/** All that what a step does depends on, besides the step and the state. */
export type Facts = Pick<Procedure, 'family' | 'shop' | 'specs' | 'numbers'> & { readonly gates: string };

/**
 * What a flow analysis can use again after an edit, or for another procedure: its states where they have the same layout; what
 * steps did to them where family, shop and gates are the same too; and all of it where an edit changed words or figures only.
 */
export class FlowMemory {
  states: StatePool | null = null;
  /** The same object as long as what is kept is good. */
  facts: Facts | null = null;
  /** By the parts that are absent: nothing else in which variants differ changes what a step does. */
  private transfers = new Map<string, Transfers>();
  /** The analyses that were made last, and the facts for which; null: somebody has them. */
  private made: { readonly facts: Facts; readonly flows: readonly FlowAnalysis[] } | null = null;

  /** What there is for a procedure that is about to be analyzed; the rest is dropped. It is good for as long as the analysis takes. */
  begin(procedure: Procedure): Remembered {
    this.update(procedure);
    const { transfers, made } = this;
    const states = this.states!;
    const isGood = made?.facts === this.facts;
    this.made = null;
    if (!isGood) for (const flow of made?.flows ?? []) flow.release();
    return {
      states,
      transfersOf: (graph) => transfersOf(graph, states, transfers),
      before: isGood ? made!.flows : [],
      facts: this.facts!,
    };
  }

  /** Takes analyses back that nobody needs for now. */
  keep(flows: readonly FlowAnalysis[], facts: Facts) {
    for (const flow of this.made?.flows ?? []) flow.release();
    this.made = { facts, flows };
  }

  private update(procedure: Procedure) {
    const { family, shop, specs, numbers } = procedure;
    const layout = new LocationLayout(procedure);
    const facts = { family, shop, specs, numbers, gates: JSON.stringify(gatesOf(procedure), withoutPlaces) };
    const { facts: before } = this;
    const isLike = this.states !== null && layout.isLike(this.states.layout);
    if (!isLike) this.states = new StatePool(layout);
    const doTheSame =
      isLike && before !== null && before.family === family && before.shop === shop && before.gates === facts.gates;
    if (!doTheSame) this.transfers = new Map();
    else if (equal(before.specs, specs) && equal(before.numbers, numbers)) return;
    this.facts = facts;
    // What a step does may depend on its spec: that is in its key, which is looked up again.
    this.transfers = new Map([...this.transfers].map(([key, known]) => [key, known.of(procedure)]));
  }
}

interface Remembered {
  readonly states: StatePool;
  readonly transfersOf: (graph: ControlFlowGraph) => Transfers;
  /** Analyses that may be good as they are. */
  readonly before: readonly FlowAnalysis[];
  readonly facts: Facts;
}

function transfersOf(
  { procedure, absent }: ControlFlowGraph,
  { layout }: StatePool,
  all: Map<string, Transfers>,
): Transfers {
  const key = [...absent].sort().join();
  const known = all.get(key);
  if (known !== undefined) return known;
  const transfers = new Transfers(new Effects(procedure, absent), layout.locations.length);
  all.set(key, transfers);
  return transfers;
}

/** Where a gate is written and where it sends the unit is no matter of what steps do. */
function withoutPlaces(key: string, value: unknown): unknown {
  return key === 'source' || key === 'onFail' ? undefined : value;
}

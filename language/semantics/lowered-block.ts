import type { Block, Repair, Step } from '../model/procedure.ts';
import { failEntries } from '../model/steps.ts';
import type { AddressedHazard, LoweredLines } from './lower-steps.ts';
import { sameItems } from './memo.ts';

type HazardList = readonly AddressedHazard[];

/** A stage or repair, and what else comes of its lines. While nothing in it changes it is the same object. */
export class LoweredBlock<B extends Block = Block> {
  readonly block: B;
  readonly repairs: readonly Repair[];
  readonly files: readonly string[];
  readonly addressed: readonly AddressedHazard[];
  private knownTries: ReadonlyMap<string, number> | null = null;
  /** With the hazards that were put in last, by step. */
  private placed: { readonly lists: readonly HazardList[]; readonly block: B } | null = null;

  constructor(block: B, { repairs, files, addressed }: Omit<LoweredLines, 'steps'>) {
    this.block = block;
    this.repairs = repairs;
    this.files = files;
    this.addressed = addressed;
  }

  /** The most tries that it gives each repair. */
  get tries(): ReadonlyMap<string, number> {
    if (this.knownTries !== null) return this.knownTries;
    const most = new Map<string, number>();
    for (const step of this.block.steps)
      for (const { repair, tries } of failEntries(step))
        if (tries !== null) most.set(repair, Math.max(tries, most.get(repair) ?? tries));
    this.knownTries = most;
    return most;
  }

  /** With hazards at the steps that they name. @param hazardsAt gives the same list while they are the same */
  withHazards(hazardsAt: (step: Step) => HazardList): B {
    const { block } = this;
    const lists = block.steps.map(hazardsAt);
    if (lists.every((list) => list.length === 0)) return block;
    if (this.placed === null || !sameItems(this.placed.lists, lists)) {
      const steps = block.steps.map((step, index) => {
        const more = lists[index]!.map(({ hazard }) => hazard);
        return more.length === 0 ? step : { ...step, hazards: [...step.hazards, ...more] };
      });
      this.placed = { lists, block: { ...block, steps } };
    }
    return this.placed.block;
  }
}

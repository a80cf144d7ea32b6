import type { Block, Hazard, Repair } from '../model/procedure.ts';
import { failEntries } from '../model/steps.ts';
import { type AddressedHazard, addressesOf, type LoweredLines } from './lower-steps.ts';
import { sameItems } from './memo.ts';

/** Hazards by what they name their steps by. */
export type HazardsByAddress = ReadonlyMap<string, readonly OrderedHazard[]>;

interface OrderedHazard {
  readonly hazard: Hazard;
  /** Among all that name steps. */
  readonly order: number;
}

/** A stage or repair, and what else comes of its lines. While nothing in it changes it is the same object. */
export class LoweredBlock<B extends Block = Block> {
  readonly block: B;
  readonly repairs: readonly Repair[];
  readonly files: readonly string[];
  readonly addressed: readonly AddressedHazard[];
  private knownTries: ReadonlyMap<string, number> | null = null;
  private knownAddresses: ReadonlyMap<string, readonly number[]> | null = null;
  /** With the hazards that were put in last, and at which steps. */
  private placed: { readonly hazards: readonly (number | Hazard)[]; readonly block: B } | null = null;

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

  /** Its steps, by all that a hazard may name them by. */
  private get addresses(): ReadonlyMap<string, readonly number[]> {
    if (this.knownAddresses !== null) return this.knownAddresses;
    const steps = new Map<string, number[]>();
    for (const [index, step] of this.block.steps.entries())
      for (const address of addressesOf(step)) {
        const same = steps.get(address);
        if (same === undefined) steps.set(address, [index]);
        else same.push(index);
      }
    this.knownAddresses = steps;
    return steps;
  }

  /** The block with hazards at the steps that they name. @param named notes what names a step */
  withHazards(hazards: HazardsByAddress, named: Set<string>): B {
    const { addresses, block } = this;
    const [few, many] = addresses.size < hazards.size ? [addresses, hazards] : [hazards, addresses];
    const here: { readonly index: number; readonly one: OrderedHazard }[] = [];
    for (const address of few.keys()) {
      if (!many.has(address)) continue;
      named.add(address);
      for (const index of addresses.get(address)!) for (const one of hazards.get(address)!) here.push({ index, one });
    }
    if (here.length === 0) return block;
    here.sort((a, b) => a.one.order - b.one.order);
    const put = here.flatMap(({ index, one }) => [index, one.hazard]);
    if (this.placed !== null && sameItems(this.placed.hazards, put)) return this.placed.block;
    const steps = [...block.steps];
    for (const { index, one } of here)
      steps[index] = { ...steps[index]!, hazards: [...steps[index]!.hazards, one.hazard] };
    this.placed = { hazards: put, block: { ...block, steps } };
    return this.placed.block;
  }
}

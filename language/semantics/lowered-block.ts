import type { Block, Repair } from '../model/procedure.ts';
import { failEntries } from '../model/steps.ts';
import { type AddressedHazard, addressesOf, type LoweredLines } from './lower-steps.ts';
import { sameItems } from './memo.ts';

/** A stage or repair, and what else comes of its lines. While nothing in it changes it is the same object. */
export class LoweredBlock<B extends Block = Block> {
  readonly block: B;
  readonly repairs: readonly Repair[];
  readonly files: readonly string[];
  readonly addressed: readonly AddressedHazard[];
  private knownTries: ReadonlyMap<string, number> | null = null;
  private knownAddresses: ReadonlyMap<string, readonly number[]> | null = null;
  /** With the hazards that were put in last. */
  private placed: { readonly lists: readonly (readonly AddressedHazard[])[]; readonly block: B } | null = null;

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

  /**
   * The block with hazards at the steps that they name; the same as before for the same lists of them.
   * @param hazards by what they name their steps by
   * @param named notes what names a step
   * @param order of hazards
   */
  withHazards(
    hazards: ReadonlyMap<string, readonly AddressedHazard[]>,
    named: Set<string>,
    order: ReadonlyMap<AddressedHazard, number>,
  ): B {
    const { addresses, block } = this;
    const [few, many] = addresses.size < hazards.size ? [addresses, hazards] : [hazards, addresses];
    const here: string[] = [];
    for (const address of few.keys()) if (many.has(address)) here.push(address);
    if (here.length === 0) return block;
    for (const address of here) named.add(address);
    const lists = here.map((address) => hazards.get(address)!);
    // Of several lists the order may be another.
    if (lists.length === 1 && this.placed !== null && sameItems(this.placed.lists, lists)) return this.placed.block;
    const put = new Map<number, AddressedHazard[]>();
    for (const address of here)
      for (const index of addresses.get(address)!)
        put.set(index, [...(put.get(index) ?? []), ...hazards.get(address)!]);
    const steps = [...block.steps];
    for (const [index, some] of put) {
      const added = some.sort((a, b) => order.get(a)! - order.get(b)!).map(({ hazard }) => hazard);
      steps[index] = { ...steps[index]!, hazards: [...steps[index]!.hazards, ...added] };
    }
    this.placed = { lists, block: { ...block, steps } };
    return this.placed.block;
  }
}

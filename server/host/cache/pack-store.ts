import type { Store, StoredResult } from '../../../language/db/engine.ts';
import type { Pack } from '../../../language/db/pack.ts';

/** Several packs as one; a later one counts before an earlier one. */
export class PackStore implements Store {
  private packs: readonly Pack[] = [];

  add(pack: Pack | null) {
    if (pack !== null) this.packs = [pack, ...this.packs];
  }

  get(query: string, key: string): StoredResult | null {
    for (const pack of this.packs) {
      const found = pack.get(query, key);
      if (found !== null) return found;
    }
    return null;
  }
}

/** Names of long lists: a list does not change, and is looked up in for each of its uses. */
const indexes = new WeakMap<readonly { readonly name: string }[], ReadonlyMap<string, unknown>>();
const short = 8;

/** The first of a name. */
export function firstNamed<T extends { readonly name: string }>(among: readonly T[], name: string): T | undefined {
  if (among.length <= short) return among.find((item) => item.name === name);
  let index = indexes.get(among) as Map<string, T> | undefined;
  if (index === undefined) {
    index = new Map();
    for (const item of among) if (!index.has(item.name)) index.set(item.name, item);
    indexes.set(among, index);
  }
  return index.get(name);
}

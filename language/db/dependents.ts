/**
 * Who has read a result: most have one reader, some have thousands. A set for each would be most of the memory of a large
 * workspace.
 */
export type Dependents<T extends object> = null | T | Set<T>;

export function withDependent<T extends object>(dependents: Dependents<T>, one: T): Dependents<T> {
  if (dependents === null) return one;
  if (dependents instanceof Set) return dependents.add(one);
  return dependents === one ? one : new Set([dependents, one]);
}

export function withoutDependent<T extends object>(dependents: Dependents<T>, one: T): Dependents<T> {
  if (!(dependents instanceof Set)) return dependents === one ? null : dependents;
  dependents.delete(one);
  return dependents.size === 0 ? null : dependents;
}

export function dependentsIn<T extends object>(dependents: Dependents<T>): Iterable<T> {
  return dependents === null ? [] : dependents instanceof Set ? dependents : [dependents];
}

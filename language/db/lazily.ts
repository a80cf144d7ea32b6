/** An object whose properties are worked out when they are first read, each once. */
export function lazily<T extends object>(makers: { readonly [key in keyof T]: () => T[key] }): T {
  const made = {} as T;
  for (const [key, make] of Object.entries(makers) as [keyof T, () => T[keyof T]][])
    Object.defineProperty(made, key, {
      enumerable: true,
      configurable: true,
      get: () => {
        const value = make();
        Object.defineProperty(made, key, { enumerable: true, value });
        return value;
      },
    });
  return made;
}

/** A map whose values are worked out when they are read. */
export class LazyMap<Value> implements ReadonlyMap<string, Value> {
  private readonly names: ReadonlySet<string>;
  private readonly make: (key: string) => Value;

  /** @param make gives the same for the same key */
  constructor(names: Iterable<string>, make: (key: string) => Value) {
    this.names = new Set(names);
    this.make = make;
  }

  get size(): number {
    return this.names.size;
  }

  get(key: string): Value | undefined {
    return this.names.has(key) ? this.make(key) : undefined;
  }

  has(key: string): boolean {
    return this.names.has(key);
  }

  forEach(each: (value: Value, key: string, map: ReadonlyMap<string, Value>) => void) {
    for (const [key, value] of this) each(value, key, this);
  }

  *entries(): MapIterator<[string, Value]> {
    for (const key of this.names) yield [key, this.make(key)];
  }

  keys(): MapIterator<string> {
    return this.names.keys();
  }

  *values(): MapIterator<Value> {
    for (const key of this.names) yield this.make(key);
  }

  [Symbol.iterator](): MapIterator<[string, Value]> {
    return this.entries();
  }
}

/** A function of an object that never changes, worked out once for each as long as the object is there. */
export function oncePer<K extends object, T>(work: (key: K) => T): (key: K) => T {
  const results = new WeakMap<K, { readonly value: T }>();
  return (key) => {
    let result = results.get(key);
    if (result === undefined) {
      result = { value: work(key) };
      results.set(key, result);
    }
    return result.value;
  };
}

/** Most texts that a result is kept for: then all are dropped, so that memory stays bounded. */
const mostTexts = 5_000;

/** A function of a text, worked out once for each of those that were asked of lately. */
export function oncePerText<T>(work: (text: string) => T): (text: string) => T {
  const results = new Map<string, T>();
  return (text) => {
    if (results.has(text)) return results.get(text)!;
    const value = work(text);
    if (results.size === mostTexts) results.clear();
    results.set(text, value);
    return value;
  };
}

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

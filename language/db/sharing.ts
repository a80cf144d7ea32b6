/** Plain values that are made of those of another declaration. Values are trees; what is no plain object or array is kept. */
import equal from 'fast-deep-equal';

type Plain = Readonly<Record<string, unknown>> | readonly unknown[];

/**
 * A value with the objects of `before` where they are the same but for the id that its sources have: `id` becomes `as`. What is
 * one object in it stays one.
 */
export function sharing<T extends object>(before: T, value: T, id: string, as: string): T {
  const made = new Map<object, unknown>();
  const shared = (old: unknown, now: unknown): unknown => {
    if (typeof now === 'string') return now === id ? as : now;
    if (typeof now !== 'object' || now === null || old === now) return now;
    if (!isPlain(now)) return equal(old, now) ? old : now;
    const known = made.get(now);
    if (known !== undefined) return known;
    const result = sharedPlain(isPlain(old) && Array.isArray(old) === Array.isArray(now) ? old : null, now);
    made.set(now, result);
    return result;
  };
  function sharedPlain(old: Plain | null, now: Plain): unknown {
    if (Array.isArray(now)) {
      const of = old as readonly unknown[] | null;
      const items = now.map((item, index) => shared(of?.[index], item));
      return of?.length === now.length && items.every((item, index) => item === of[index]) ? of : items;
    }
    const of = old as Readonly<Record<string, unknown>> | null;
    const copy: Record<string, unknown> = {};
    let count = 0;
    let isSame = of !== null;
    for (const key in now) {
      const item = shared(of?.[key], (now as Readonly<Record<string, unknown>>)[key]);
      copy[key] = item;
      count++;
      if (isSame && (item !== of![key] || !(key in of!))) isSame = false;
    }
    return isSame && Object.keys(of!).length === count ? old : copy;
  }
  return shared(before, value) as T;
}

/** A value in whose sources one id is another one. */
export function renamed<T>(value: T, id: string, as: string): T {
  return id === as ? value : replaced(value, (one) => (one === id ? as : one));
}

/** A value with other values in it. @param replace gives what it is given where that stays */
export function replaced<T>(value: T, replace: (one: unknown) => unknown): T {
  const made = (one: unknown): unknown => {
    const other = replace(one);
    if (other !== one || typeof one !== 'object' || one === null || !isPlain(one)) return other;
    return Array.isArray(one)
      ? one.map(made)
      : Object.fromEntries(Object.entries(one).map(([key, item]) => [key, made(item)]));
  };
  return made(value) as T;
}

function isPlain(value: unknown): value is Plain {
  if (typeof value !== 'object' || value === null) return false;
  const prototype = Object.getPrototypeOf(value);
  return prototype === Object.prototype || prototype === Array.prototype;
}

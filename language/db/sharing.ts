/** Plain values that are made of those of another declaration. Values are trees; what is no plain object or array is kept. */
import equal from 'fast-deep-equal';
import { type Source, sameSource } from '../model/source.ts';

type Fields = Readonly<Record<string, unknown>>;

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
    if (isSource(now)) return sharedSource(isSource(old) ? old : null, now);
    const known = made.get(now);
    if (known !== undefined) return known;
    const result = Array.isArray(now)
      ? sharedItems(Array.isArray(old) ? old : [], now)
      : sharedFields(isPlain(old) && !Array.isArray(old) ? (old as Fields) : {}, now as Fields);
    made.set(now, result);
    return result;
  };
  function sharedSource(old: Source | null, { file, range }: Source): Source {
    const source = { file: file === id ? as : file, range };
    return old !== null && sameSource(old, source) ? old : source;
  }
  function sharedItems(old: readonly unknown[], now: readonly unknown[]): readonly unknown[] {
    let copy: unknown[] | null = old.length === now.length ? null : [];
    for (let index = 0; index < now.length; index++) {
      const item = shared(old[index], now[index]);
      if (copy === null && item !== old[index]) copy = old.slice(0, index);
      copy?.push(item);
    }
    return copy ?? old;
  }
  function sharedFields(old: Fields, now: Fields): Fields {
    const keys = Object.keys(now);
    const items = keys.map((key) => shared(old[key], now[key]));
    const isSame =
      keys.length === Object.keys(old).length && keys.every((key, at) => items[at] === old[key] && key in old);
    return isSame ? old : Object.fromEntries(keys.map((key, at) => [key, items[at]]));
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

function isPlain(value: unknown): value is Fields | readonly unknown[] {
  if (typeof value !== 'object' || value === null) return false;
  const prototype = Object.getPrototypeOf(value);
  return prototype === Object.prototype || prototype === Array.prototype;
}

export function isSource(value: unknown): value is Source {
  return typeof value === 'object' && value !== null && 'file' in value && 'range' in value;
}

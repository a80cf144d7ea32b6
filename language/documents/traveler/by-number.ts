import type { Setting } from './print-context.ts';

/** A result, and the part numbers that it is for. */
export interface ByNumber<T> {
  readonly told: T;
  /** `A-250, A-235`; empty: it is for all of the sheet. */
  readonly whose: string;
}

/**
 * Results for the part numbers of the sheet, once for all that have the same result; a number for which nothing has
 * to be shown has none. With no part numbers it is computed once, for none.
 */
export function byNumber<T>(
  { numbers }: Pick<Setting, 'numbers'>,
  work: (number: string | null) => T | null,
): ByNumber<T>[] {
  const several = numbers.length === 0 ? [null] : numbers.map(({ name }) => name);
  const groups = new Map<string, { told: T; of: string[] }>();
  for (const number of several) {
    const told = work(number);
    if (told === null) continue;
    const key = JSON.stringify(told);
    const known = groups.get(key);
    if (known === undefined) groups.set(key, { told, of: [number ?? ''] });
    else known.of.push(number ?? '');
  }
  return [...groups.values()].map(({ told, of }) => ({
    told,
    whose: of.length === several.length ? '' : of.join(', '),
  }));
}

/** `A-250: 53.3 N·m`; the text alone where it is for all. */
export function withNumbers({ told, whose }: ByNumber<string>): string {
  return whose === '' ? told : `${whose}: ${told}`;
}

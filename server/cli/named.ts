import { nearest } from '../../language/syntax/nearest.ts';
import { shownPath } from '../host/files/find-files.ts';
import { UsageError } from './usage-error.ts';

interface Declared {
  readonly name: string;
  readonly source: { readonly file: string };
}

/** The one of a name, or the first of a file. Throws a UsageError with the nearest names. */
export function named<T>(what: string, name: string, all: readonly T[], declared: (one: T) => Declared): T {
  const file = name.endsWith('.rebuild') ? shownPath(name) : null;
  const found = all.find((one) => declared(one).name === name || declared(one).source.file === file);
  if (found !== undefined) return found;
  const names = all.map((one) => declared(one).name);
  if (file !== null)
    throw new UsageError(
      `${name} declares no ${what} that can be used. Run npx handtight check ${name}, or give a name. There are: ${names.join(', ') || 'none'}.`,
    );
  const near = nearest(name, names);
  throw new UsageError(
    `No ${what} is called ${name}. ${near.length > 0 ? `Did you mean ${near.join(' or ')}?` : `There are: ${names.join(', ') || 'none'}.`}`,
  );
}

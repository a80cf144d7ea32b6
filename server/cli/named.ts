import { term } from '../../language/say/say.ts';
import { nearest } from '../../language/syntax/nearest.ts';
import { shownPath } from '../host/files/find-files.ts';
import { worded } from './messages.ts';
import { meant, thereAre } from './near.ts';
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
      worded`${name} declares no ${term(what)} that can be used. Run npx handtight check ${name}, or give a name. ${thereAre(names)}`,
    );
  const near = nearest(name, names);
  throw new UsageError(worded`No ${term(what)} is called ${name}. ${meant(near, thereAre(names))}`);
}

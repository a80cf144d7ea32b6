import { either } from '../../language/say/say.ts';
import { worded } from './messages.ts';

/** Asks whether a name that is near was meant; says something else where none is. */
export function meant(near: readonly string[], otherwise: string): string {
  return near.length > 0 ? worded`Did you mean ${either(near)}?` : otherwise;
}

export function thereAre(names: readonly string[]): string {
  return worded`There are: ${listOf(names)}.`;
}

/** `A-250, A-220`; of nothing, that there is none. */
export function listOf(names: readonly string[]): string {
  return names.length === 0 ? worded`none` : names.join(', ');
}

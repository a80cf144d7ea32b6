import type { Words } from '../../i18n/index.ts';
import type { Procedure } from '../../model/procedure.ts';
import { capital, titleOf } from '../traveler/names.ts';

/** Says in a language what is missing or wrong, why it matters, and what to write. */
export type Say = (words: Words) => string;

/** What a name in a job is called: a test, a spec, or a part that was looked at. */
export function nameWords({ specs, family }: Procedure, name: string): string {
  const known = specs.find((one) => one.name === name) ?? family.parts.find((one) => one.name === name);
  return capital(titleOf(known ?? { name, title: name }));
}

export function partWords({ family }: Procedure, name: string): string {
  return titleOf(family.parts.find((one) => one.name === name) ?? { name, title: name });
}

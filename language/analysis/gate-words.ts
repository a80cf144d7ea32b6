import type { Step } from '../model/procedure.ts';

/** A gate in the middle of a sentence: `opening`, `the check at 5.3`, `opening across the set`. */
export function gateWords({ gate, verb, number, reading }: Step): string {
  switch (verb) {
    case 'check':
    case 'measure':
      return `the ${verb} at ${number}`;
    case 'across':
      return `${gate!.name.replace(/^across /u, '')} across the set`;
    case 'set':
      return `the setting of ${reading}`;
    default:
      return gate!.name;
  }
}

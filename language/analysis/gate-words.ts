import type { GateStep } from '../model/steps.ts';

/** A gate in the middle of a sentence: `opening`, `the check at 5.3`, `opening across the set`. */
export function gateWords({ gate, number }: GateStep): string {
  switch (gate.kind) {
    case 'check':
    case 'measure':
      return `the ${gate.kind} at ${number}`;
    case 'across':
      return `${gate.test} across the set`;
    case 'set':
      return `the setting of ${gate.test}`;
    case 'test':
      return gate.test;
  }
}

import type { FuzzCase, Generator } from './case.ts';
import { bomb } from './generators/bombs.ts';
import { bytes } from './generators/bytes.ts';
import { hostile } from './generators/hostile.ts';
import { splices } from './generators/splices.ts';
import { tokens } from './generators/tokens.ts';
import { typing } from './generators/typing.ts';
import { Random } from './random.ts';

const generators: readonly Generator[] = [bytes, tokens, splices, typing, typing, hostile, bomb];

/** The case of a seed and a place in its row. */
export function caseAt(seed: number, index: number): FuzzCase {
  const random = new Random(Math.imul(seed, 1_000_003) + index);
  return random.pick(generators)(random);
}

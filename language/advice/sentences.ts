import type { ScrewTurns } from '../calculations/screw-turns.ts';
import type { ShimAdvice, ShimChoice } from '../calculations/shim-advice.ts';
import { decimalsOf } from '../quantities/decimal.ts';
import { roundTo, sub } from '../quantities/index.ts';
import type { Difference, Quantity } from '../quantities/types.ts';
import type { Words } from '../words/index.ts';

/** An expected pressure, as a gauge shows it: with the digits of its window, and no more than one behind the point. */
export function expectedWords({ quantity }: Words, expected: Quantity, like: Quantity): string {
  const decimals = Math.min(1, decimalsOf(like.number));
  return quantity(roundTo(expected, like.unit, decimals, 'nearest') ?? expected);
}

/** A spread to a tenth, rounded up: none is printed smaller than it is. */
export function spreadWords({ quantity }: Words, spread: Quantity): string {
  return quantity(roundTo(spread, spread.unit, 1, 'up') ?? spread);
}

/** `Fit 1.45 mm (now 1.30 mm): expect 253 bar, 249 to 257 bar`. */
function choiceSentence(words: Words, choice: ShimChoice, now: Quantity, like: Quantity): string {
  const { advice, number, quantity } = words;
  const { expected, low, high } = choice;
  const said = { shims: stackWords(words, choice), now: quantity(now), expected: expectedWords(words, expected, like) };
  if (low.number === high.number) return advice.fit(said);
  const least = number(roundTo(low, like.unit, 0, 'nearest')!.number);
  return advice.fitBetween({ ...said, low: least, high: expectedWords(words, high, like) });
}

function stackWords({ advice, quantity }: Words, { shims }: ShimChoice): string {
  const [first, second] = shims;
  return second === undefined ? quantity(first!) : advice.and({ first: quantity(first!), second: quantity(second) });
}

/** What to fit, or why nothing fits and what to do. */
export function adviceSentence(
  words: Words,
  told: ShimAdvice,
  now: Quantity,
  like: Quantity,
  settling: Difference | null,
): string {
  const { advice } = words;
  if ('choice' in told) {
    const sentence = choiceSentence(words, told.choice, now, like);
    return withSettled(words, sentence, told.choice.expected, settling, like);
  }
  const { nothing } = told;
  const gives = (one: ShimChoice) =>
    advice.gives({ shims: stackWords(words, one), expected: expectedWords(words, one.expected, like) });
  switch (nothing.reason) {
    case 'empty':
      return advice.empty;
    case 'settles out':
      return advice.settlesOut;
    case 'too thin':
      return advice.tooThin({ nearest: gives(nothing.nearest) });
    case 'too thick':
      return advice.tooThick({ nearest: gives(nothing.nearest) });
    case 'too coarse':
      return advice.tooCoarse({ under: gives(nothing.under), over: gives(nothing.over) });
  }
}

/** `Turn it 345° in: expect 122 bar`; `Turn it 2 turns and 90° in: expect 260 bar`. */
export function turnsSentence(words: Words, turns: ScrewTurns, like: Quantity, settling: Difference | null): string {
  const { advice, quantity } = words;
  const count = Math.floor(turns.angle / 360);
  const rest = turns.angle % 360;
  const angle = quantity({ number: String(rest), unit: '°' });
  const whole = advice.turns({ count });
  const said = {
    turns: count === 0 ? angle : rest === 0 ? whole : advice.and({ first: whole, second: angle }),
    expected: expectedWords(words, turns.expected, like),
  };
  const sentence = turns.way === 'in' ? advice.turn(said) : advice.turnOut(said);
  return withSettled(words, sentence, turns.expected, settling, like);
}

/** The sentence, and what a gauge will show when a new spring has lost what it loses. */
export function withSettled(
  words: Words,
  sentence: string,
  expected: Quantity,
  settling: Difference | null,
  like: Quantity,
): string {
  const settled = settling === null ? null : sub(expected, settling);
  return settled === null ? sentence : words.advice.settled({ sentence, settled: expectedWords(words, settled, like) });
}

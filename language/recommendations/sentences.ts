import type { ScrewTurns } from '../engineering/screw-turns.ts';
import type { ShimAdvice, ShimChoice } from '../engineering/shim-advice.ts';
import type { Words } from '../i18n/index.ts';
import { decimalsOf, decimalValue, rounded } from '../quantities/decimal.ts';
import { compare, kindOfUnit, roundTo, sub } from '../quantities/index.ts';
import type { Difference, Figure, Quantity } from '../quantities/types.ts';

/** An expected figure, as a tool shows it: with the digits of its window; of a pressure no more than one behind the point. */
export function expectedWords({ quantity }: Words, expected: Quantity, like: Quantity): string {
  return quantity(roundTo(expected, expected.unit, placesLike(expected, like), 'nearest') ?? expected);
}

function placesLike({ unit }: Figure, like: Quantity): number {
  const decimals = decimalsOf(like.number);
  return kindOfUnit(unit) === 'pressure' ? Math.min(1, decimals) : decimals;
}

/** A spread to a tenth, or to the digits of its window where they are finer; rounded up: none is printed smaller than it is. */
export function spreadWords({ quantity }: Words, spread: Difference, like: Quantity): string {
  const places = Math.max(1, placesLike(spread, like));
  return quantity({ number: rounded(decimalValue(spread.number), places, 'up'), unit: spread.unit });
}

/** `Fit 1.45 mm (now 1.30 mm): expect 253 bar, 249 to 257 bar`. */
function choiceSentence(words: Words, choice: ShimChoice, now: Quantity, like: Quantity): string {
  const { advice, number, quantity } = words;
  const { expected, low, high } = choice;
  const said = { shims: stackWords(words, choice), now: quantity(now), expected: expectedWords(words, expected, like) };
  if (low.number === high.number) return advice.fit(said);
  const least = number(roundTo(low, low.unit, placesLike(low, like), 'nearest')!.number);
  return advice.fitBetween({ ...said, low: least, high: expectedWords(words, high, like) });
}

function stackWords({ advice, quantity }: Words, { shims }: ShimChoice): string {
  const [first, second] = shims;
  return second === undefined ? quantity(first!) : advice.and({ first: quantity(first!), second: quantity(second) });
}

/** The basis of an advice. */
interface Told {
  readonly now: Quantity;
  /** How precisely figures are written. */
  readonly like: Quantity;
  readonly settling: Difference | null;
  /** Limit of use of all that lies on each other. */
  readonly most: Quantity | null;
}

/** What to fit, or why nothing fits and what to do. */
export function adviceSentence(words: Words, told: ShimAdvice, { now, like, settling, most }: Told): string {
  const { advice, quantity } = words;
  if ('choice' in told) {
    const fit = choiceSentence(words, told.choice, now, like);
    const sentence =
      most !== null && compare(now, most) === 1
        ? advice.tooThickNow({ sentence: fit, now: quantity(now), most: quantity(most) })
        : fit;
    return withSettled(words, sentence, told.choice.expected, settling, like);
  }
  const { nothing } = told;
  const gives = (one: ShimChoice) =>
    advice.gives({ shims: stackWords(words, one), expected: expectedWords(words, one.expected, like) });
  switch (nothing.reason) {
    case 'empty':
      return advice.empty;
    case 'absurd':
      return advice.absurd;
    case 'settles out':
      return advice.settlesOut;
    case 'too thin':
      return nothing.held && most !== null
        ? advice.held({ nearest: gives(nothing.nearest), most: quantity(most) })
        : advice.tooThin({ nearest: gives(nothing.nearest) });
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

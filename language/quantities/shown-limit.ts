import { between, compare, convert } from './convert.ts';
import { formatLimit, formatQuantity, type Wording } from './format.ts';
import { unitOfLimit } from './limit-kind.ts';
import { lastPlace } from './printed-digits.ts';
import { inUnit, roundTo, windowInSteps } from './round.ts';
import type { Difference, Limit, NominalLimit, Quantity } from './types.ts';
import type { UnitName } from './units.ts';
import { type Window, window } from './window.ts';
/** How a limit is printed. */
export interface ShownLimit {
  /** Large: what the hand sets or reads, in the unit of its tool. */
  readonly value: string;
  /** Small, beside it: the window of a nominal, and what the author wrote where that differs. */
  readonly also: string;
}

export interface ShowOptions {
  /** Unit of the tool; null: the author's. */
  readonly unit: UnitName | null;
  /** A mark of the tool in that unit, if it has any: what has no tolerance is rounded to it. */
  readonly mark?: Difference | null;
  /** The least that can be read of it: half a mark, or a digital tool's last digit. No end of a window is finer. */
  readonly least?: Difference | null;
  /** Puts a tolerance to a nominal that has none, as far as there is one; null: a limit says all of itself. */
  readonly complete?: ((limit: Limit) => Limit) | null;
  /** A nominal is what is set (a wrench), not only the middle of a window (a reading). */
  readonly setToNominal: boolean;
  /** How the language writes figures. */
  readonly wording: Wording;
}

/** As it is written, with no second unit. */
const plain: Omit<ShowOptions, 'wording'> = { unit: null, setToNominal: true };

/** A limit in one line of text, in the author's unit. */
export function limitText(limit: Limit, wording: Wording, showing: Partial<ShowOptions> = {}): string {
  const { value, also } = shownLimit(limit, { ...plain, ...showing, wording });
  return also === '' ? value : `${value} (${also})`;
}

/**
 * A limit as a bench hand needs it: no arithmetic left to do. Printed large is what decides, in the unit of the tool and no
 * finer than it can be read: of a pair in two units that one, else it is converted, never loosened. As it was written it
 * is beside.
 */
export function shownLimit(limit: Limit, showing: ShowOptions): ShownLimit {
  const complete = showing.complete ?? same;
  const whole = onLeast(complete(limit), showing.least ?? null);
  const { wording } = showing;
  const written = formatLimit(limit, { wording });
  const own = unitOfLimit(limit);
  const foreign =
    showing.unit !== null &&
    own !== showing.unit &&
    (limit.form === 'then' ||
      limit.form === 'tolerance' ||
      limit.pair === undefined ||
      unitOfLimit(limit.pair) !== showing.unit);
  const converted = foreign ? inTool(whole, showing.unit!, showing.mark ?? null) : null;
  if (converted !== null) {
    const range = whole.form === 'nominal' ? windowText(wording, whole, showing.unit!, showing.mark) : null;
    const { value, beside } = split(wording, converted, showing.setToNominal, range);
    return { value, also: joined(beside, written) };
  }
  if (limit.form !== 'tolerance' && limit.form !== 'then' && limit.pair !== undefined) {
    const range = whole.form === 'nominal' ? windowText(wording, whole, showing.unit ?? own!, showing.mark) : null;
    // No tool reads it: it is shown as it was written.
    if (showing.unit === null) return { value: written, also: range ?? split(wording, whole, true).beside };
    const part = own === showing.unit ? whole : onLeast(complete(alike(limit.pair, limit)), showing.least ?? null);
    const inner = part.form === 'nominal' && whole.form === 'nominal' ? innerEnds(part, whole, showing) : null;
    const ends = inner === null ? range : formatLimit({ form: 'range', ...inner }, { wording });
    const { value, beside } = split(wording, unpaired(part), showing.setToNominal, ends);
    return { value, also: joined(beside, written) };
  }
  const marked = whole.form === 'nominal' ? windowText(wording, whole, own!, showing.mark) : null;
  const { value, beside } = split(wording, whole, showing.setToNominal, marked);
  // The words of the author are beside a window that was worked out from them.
  return {
    value,
    also: joined(
      beside,
      value === written || (showing.setToNominal && limit.form === 'nominal') || limit.form === 'then' ? '' : written,
    ),
  };
}

const same = (limit: Limit) => limit;

/** The second half of a pair as the first is meant: `at least 20 000 kPa (2900 psi)` is at least 2900 psi. */
function alike(pair: Limit, { form }: Limit): Limit {
  if (pair.form !== 'nominal' || pair.plus !== null || pair.minus !== null) return pair;
  if (form === 'at least') return { form, least: pair.nominal };
  return form === 'at most' ? { form, most: pair.nominal } : pair;
}

/** The window that both halves of a pair let through, in the tool's unit. */
function innerEnds(part: NominalLimit, whole: NominalLimit, { unit, mark }: ShowOptions): Ends | null {
  const [one, other] = [part, whole].map((limit) => readableEnds(limit, unit!, mark));
  if (one == null || other == null || part === whole) return one ?? null;
  const low = compare(one.low, other.low) === -1 ? other.low : one.low;
  const high = compare(one.high, other.high) === 1 ? other.high : one.high;
  return compare(low, high) === -1 ? { low, high } : one;
}

function unpaired(limit: Limit): Limit {
  if (limit.form === 'then' || limit.form === 'tolerance') return limit;
  const { pair: _, ...alone } = limit;
  return alone;
}

/**
 * A limit with its ends on what can be read of the tool, drawn inwards; itself where they lie there, where nothing would
 * be left between them, or where it is in another unit.
 */
function onLeast(limit: Limit, least: Difference | null): Limit {
  if (least === null || limit.form === 'then' || limit.form === 'tolerance' || unitOfLimit(limit) !== least.unit)
    return limit;
  if (limit.form === 'nominal' && inPerCent(limit)) return limit;
  const [exact, steps] = [window(limit), windowInSteps(limit, least)];
  const isThere = (end: 'low' | 'high') => exact[end] === null || compare(exact[end], steps![end]!) === 0;
  if (steps === null || (isThere('low') && isThere('high'))) return limit;
  return endsOf(limit, steps) ?? limit;
}

/** The limit with other ends; null: nothing is left between them. */
function endsOf(limit: Exclude<Limit, { form: 'then' | 'tolerance' }>, { low, high }: Window): Limit | null {
  if (low !== null && high !== null && compare(low, high) !== -1) return null;
  switch (limit.form) {
    case 'nominal': {
      const { nominal } = limit;
      const under = high !== null && compare(nominal, high) === 1 ? high : nominal;
      const inside = low !== null && compare(under, low) === -1 ? low : under;
      const plus = high === null ? null : between(high, inside);
      return { ...limit, nominal: inside, plus, minus: low === null ? null : between(inside, low) };
    }
    case 'range':
      return low === null || high === null ? null : { form: 'range', low, high };
    case 'at least':
      return low === null ? null : { form: 'at least', least: low };
    case 'at most':
      return high === null ? null : { form: 'at most', most: high };
  }
}

function joined(...texts: readonly string[]): string {
  return texts.filter((text, index) => text !== '' && texts.indexOf(text) === index).join('; ');
}

/** A limit in the tool's unit: a window never loosens, a nominal that was worked from percent is the nearest mark. */
function inTool(limit: Limit, unit: UnitName, mark: Difference | null): Limit | null {
  if (limit.form === 'then' || limit.form === 'tolerance') return inUnit(limit, unit);
  if (limit.form !== 'nominal') {
    const steps = mark?.unit === unit ? windowInSteps(limit, mark) : null;
    return (steps === null ? null : endsOf(limit, steps)) ?? inUnit(limit, unit);
  }
  const bareOne = limit.plus === null && limit.minus === null;
  if (!bareOne && !inPerCent(limit)) return inUnit(limit, unit);
  const nominal = (mark?.unit === unit ? windowInSteps(limit, mark)?.nominal : null) ?? nearest(limit.nominal, unit);
  if (nominal === null) return null;
  if (bareOne) return { form: 'nominal', nominal, plus: null, minus: null };
  const ends = readableEnds(limit, unit, mark);
  if (ends === null) return inUnit(limit, unit);
  const inside = compare(nominal, ends.low) === -1 ? ends.low : compare(nominal, ends.high) === 1 ? ends.high : nominal;
  return { form: 'nominal', nominal: inside, plus: between(ends.high, inside), minus: between(inside, ends.low) };
}

/** The tolerance is worked out, so that its digits are not the author's. */
function inPerCent({ nominal, plus, minus }: NominalLimit): boolean {
  return nominal.unit !== '%' && (plus?.unit === '%' || minus?.unit === '%');
}

interface Ends {
  readonly low: Quantity;
  readonly high: Quantity;
}

/**
 * The ends of a window as a hand reads them, never loosened: whole marks of the tool; where it has none, as few
 * digits as keep three quarters of the window. Null: no two ends, or they are one.
 */
function readableEnds(limit: NominalLimit, unit: UnitName, mark: Difference | null | undefined): Ends | null {
  const { low, high } = window(limit);
  if (low === null || high === null || compare(low, high) !== -1) return null;
  const own = unit === limit.nominal.unit;
  // What the author wrote in the tool's unit stays as it is.
  if (own && !inPerCent(limit)) return { low, high };
  const marked = mark?.unit === unit ? windowInSteps(limit, mark) : null;
  if (marked?.low != null && marked.high != null && compare(marked.low, marked.high) === -1)
    return { low: marked.low, high: marked.high };
  if (!inPerCent(limit)) return null;
  return fewDigits({ low, high }, unit, own ? lastPlace(limit.nominal.number) : Number.POSITIVE_INFINITY);
}

/** Ends with as few digits as keep three quarters of what lies between them, drawn inwards; none coarser than a place. */
export function fewDigits({ low, high }: Ends, unit: UnitName, coarsest = Number.POSITIVE_INFINITY): Ends | null {
  const [from, to] = [convert(low, unit), convert(high, unit)];
  if (from === null || to === null || to.compare(from) <= 0) return null;
  const width = to.sub(from).valueOf();
  const first = Math.min(Math.floor(Math.log10(width)), coarsest);
  for (let place = first; place >= first - finerPlaces; place--) {
    const [least, most] = [roundTo(low, unit, -place, 'up'), roundTo(high, unit, -place, 'down')];
    if (least === null || most === null) return null;
    if ((Number(most.number) - Number(least.number)) * 4 >= width * 3) return { low: least, high: most };
  }
  return null;
}

/** Places tried beyond the first; the next one loses a fifth of a window at most. */
const finerPlaces = 2;

/** As few digits as keep a figure within half a percent. */
function nearest(quantity: Quantity, unit: UnitName): Quantity | null {
  const exact = convert(quantity, unit)?.valueOf();
  if (exact === undefined) return null;
  for (let decimals = -6; decimals <= 6; decimals++) {
    const rounded = roundTo(quantity, unit, decimals, 'nearest');
    if (rounded !== null && Math.abs(Number(rounded.number) - exact) <= Math.abs(exact) * 0.005) return rounded;
  }
  return null;
}

/** The large text, and the window beside a nominal that is set. */
function split(
  wording: Wording,
  limit: Limit,
  setToNominal: boolean,
  marked: string | null = null,
): { value: string; beside: string } {
  const whole = (one: Limit) => formatLimit(one, { wording });
  const figure = (one: Quantity) => formatQuantity(one, { wording });
  if (limit.form === 'then') {
    const range = (part: NominalLimit) => windowText(wording, part);
    const text = (part: NominalLimit) => (range(part) === null ? whole(part) : figure(part.nominal));
    return {
      value: `${text(limit.first)} ${wording.thenAngle} ${text(limit.angle)}`,
      beside: [range(limit.first), range(limit.angle)].filter((one) => one !== null).join(', '),
    };
  }
  if (limit.form !== 'nominal') return { value: whole(limit), beside: '' };
  const range = marked ?? windowText(wording, limit);
  if (range === null) return { value: whole(bare(limit)), beside: '' };
  return setToNominal ? { value: figure(limit.nominal), beside: range } : { value: range, beside: '' };
}

/** `250 to 258 bar`; null where no two ends are known, or they are one. */
function windowText(
  wording: Wording,
  limit: NominalLimit,
  unit: UnitName = limit.nominal.unit,
  mark: Difference | null = null,
): string | null {
  const ends = readableEnds(limit, unit, mark);
  if (ends !== null) return formatLimit({ form: 'range', ...ends }, { wording });
  const converted = unit === limit.nominal.unit ? null : inUnit(limit, unit);
  return converted?.form === 'nominal' ? windowText(wording, converted) : null;
}

function bare({ pair: _, ...limit }: NominalLimit): NominalLimit {
  return limit;
}

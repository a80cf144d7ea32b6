/** Whether a limit is printed: as it is written, or in another unit and on whole marks, and never looser. */
import type { Procedure } from '../../language/model/index.ts';
import {
  convert,
  formatLimit,
  formatQuantity,
  kindOfUnit,
  type Limit,
  type Quantity,
  type UnitName,
  units,
  window,
} from '../../language/quantities/index.ts';
import { lowBones } from './words.ts';

/** What a limit is judged by: where the author gave no tolerance, that of the shop, with its source. */
export function judgedLimit({ shop }: Procedure, limit: Limit): { limit: Limit; source: string | null } {
  if (limit.form !== 'nominal' || limit.plus !== null || limit.minus !== null) return { limit, source: null };
  const rule = shop.unlessStated.find(({ kind }) => kind === kindOfUnit(limit.nominal.unit));
  return rule === undefined
    ? { limit, source: null }
    : { limit: { ...limit, plus: rule.limit.plus, minus: rule.limit.minus }, source: rule.sourceText };
}

/** A window may lose this share of its width at each end to whole marks of the tool. */
const lost = 0.3;

/** True where the text says the limit. */
export function saysLimit(text: string, limit: Limit): boolean {
  if (lowBones(text).includes(lowBones(formatLimit(limit)))) return true;
  if (limit.form === 'then') return saysLimit(text, limit.first) && saysLimit(text, limit.angle);
  if (limit.form === 'tolerance') return false;
  const { low, high, nominal } = window(limit);
  const [first] = [high, low, nominal].filter((end) => end !== null);
  if (first === undefined) return false;
  return units.some((unit) => {
    if (unit.kind !== kindOfUnit(first.unit)) return false;
    const name = unit.name as UnitName;
    const figures = figuresIn(text);
    const inUnit = (quantity: Quantity | null) => (quantity === null ? null : convert(quantity, name)!.valueOf());
    const [from, to, middle] = [inUnit(low), inUnit(high), inUnit(nominal)];
    const named = (least: number, most: number) => figures.some(isNamed(name, least, most));
    const bare = (least: number, most: number) =>
      figures.some(({ value }) => value >= least - slack(least) && value <= most + slack(most));
    if (from !== null && to !== null) {
      const give = (to - from) * lost;
      return bare(from, from + give) && named(to - give, to);
    }
    if (from !== null) return named(from, from * 1.03);
    if (to !== null) return named(to * 0.97, to);
    return named(middle! - Math.abs(middle! * 0.005), middle! + Math.abs(middle! * 0.005));
  });
}

interface Figure {
  readonly value: number;
  /** The text after it. */
  readonly after: string;
}

const slack = (value: number) => Math.abs(value) * 1e-9;

function isNamed(unit: UnitName, least: number, most: number) {
  const name = lowBones(unit);
  const single = name.replace(/s$/u, '');
  return ({ value, after }: Figure) =>
    value >= least - slack(least) &&
    value <= most + slack(most) &&
    (after.startsWith(name) || after.startsWith(single));
}

/** Numbers of a text; those in groups of three both as one number and as written. */
function figuresIn(text: string): Figure[] {
  const read = (pattern: RegExp) =>
    [...text.matchAll(pattern)].map((match) => ({
      value: Number(match[0].replace(/\s/gu, '')),
      after: lowBones(text.slice(match.index + match[0].length, match.index + match[0].length + 30)),
    }));
  return [...read(/\d+(?:\.\d+)?/gu), ...read(/(?<!\d)\d{1,3}(?:\s\d{3})+(?!\d)/gu)];
}

/** How a person would write the limit. */
export function limitWords(limit: Limit): string {
  return limit.form === 'nominal' && limit.plus === null ? formatQuantity(limit.nominal) : formatLimit(limit);
}

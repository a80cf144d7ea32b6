import { either, type Said, say } from '../say/say.ts';
import { nearUnits, refusedUnits } from './near-units.ts';
import type { UnitName } from './types.ts';
import { units } from './unit-table.ts';

/** A unit; or the one that was meant, with why it is not written so; or why there is none. */
export type UnitReading = { unit: UnitName } | { near: UnitName; why: Said } | { refused: Said };

/**
 * Typing differences that no eye can misread: the same sign under another code point, as keyboards, fonts and
 * word processors give it. They are accepted silently. Keys are signs of the table, values every sign taken for it.
 */
export const sameSigns: Readonly<Record<string, string>> = {
  '·': '·⋅•∙‧',
  '°': '°º˚',
  µ: 'µμ',
  Ω: 'ΩΩ',
  K: 'KK',
  ' ': ' \u00A0\u202F',
};

/** Writes a unit with the signs of the table and single ordinary blanks. */
function withTableSigns(text: string): string {
  let result = text;
  for (const [sign, others] of Object.entries(sameSigns)) {
    result = result.replace(new RegExp(`[${others}]${sign === ' ' ? '+' : ''}`, 'gu'), sign);
  }
  return result.trim();
}

/** Every accepted spelling with its unit. */
export const spellings: ReadonlyMap<string, UnitName> = new Map(
  units.flatMap((row) => [row.name, ...row.spellings].map((spelling): [string, UnitName] => [spelling, row.name])),
);

const nearBySpelling = new Map(nearUnits.map((row) => [row.written, row]));
const refusedBySpelling = new Map(refusedUnits.map((row) => [row.written, row.why]));

/**
 * Case is judged only for two letters and more: a single letter in the other case is a unit of its own or a word
 * (k, a), and those that are surely meant are in the list of near misses.
 */
export const judgedByCase = (spelling: string): boolean => spelling.replace(/[^A-Za-z]/gu, '').length > 1;

/** Of `mohm` and `Mohm` only the case tells which is meant. */
const byLowerCase = new Map<string, Set<UnitName>>();
for (const [spelling, name] of [...nearUnits.map((row): [string, UnitName] => [row.written, row.near]), ...spellings]) {
  if (!judgedByCase(spelling)) continue;
  const lower = spelling.toLowerCase();
  byLowerCase.set(lower, (byLowerCase.get(lower) ?? new Set()).add(name));
}

/** Case differences that are another unit elsewhere: the message says which, so that nobody waves it through. */
const otherMeaning: Readonly<Record<string, Said>> = {
  nm: say`nm is a nanometre`,
  mPa: say`mPa is a millipascal`,
  Mbar: say`Mbar is a million bar`,
  Mm: say`Mm is a megameter`,
  MS: say`MS is a megasiemens`,
  mS: say`mS is a millisiemens`,
  Ms: say`Ms is a megasecond`,
};

/**
 * Reads a unit as typed. Look-alike signs (`º`, `⋅`, `•`, Greek mu) are the same unit; other spellings that the trade
 * types (`ft-lb`, `N-m`, `mins`, `PSI`) are near misses; `mil` and a few more are refused with what to write.
 */
export function readUnit(text: string): UnitReading {
  const typed = withTableSigns(text);
  const exact = spellings.get(typed);
  if (exact !== undefined) return { unit: exact };
  const near = nearBySpelling.get(typed);
  if (near !== undefined) return { near: near.near, why: near.why };
  const refused = refusedBySpelling.get(typed);
  if (refused !== undefined) return { refused };
  const [otherCase, ...others] = byLowerCase.get(typed.toLowerCase()) ?? [];
  if (others.length > 0)
    return {
      refused: say`"${typed}" can be read as ${either([otherCase!, ...others])}: upper and lower case make different units.`,
    };
  if (otherCase !== undefined) {
    const meaning = Object.hasOwn(otherMeaning, typed) ? otherMeaning[typed] : undefined;
    return {
      near: otherCase,
      why: say`"${typed}" should be ${otherCase}: ${meaning ?? say`upper and lower case make different units`}.`,
    };
  }
  return { refused: say`"${typed}" is no unit of this language.` };
}

import type {
  Acceptance,
  Asset,
  Calibration,
  DecisionRule,
  Fluid,
  FluidKind,
  Letterhead,
  Master,
  Shop,
  StandingTolerance,
  Station,
  Stock,
} from '../model/shop.ts';
import type { Source } from '../model/source.ts';
import {
  amount,
  asDifference,
  between,
  compare,
  compareDifferences,
  formatLimit,
  formatQuantity,
  kindAdmits,
  kindOf,
  kindOfUnit,
  sizesOf,
} from '../quantities/index.ts';
import type { Difference, Figure, Quantity, RangeLimit, ToleranceOnly } from '../quantities/types.ts';
import { type Said, say, term } from '../say/say.ts';
import type * as ast from '../syntax/generated/ast.ts';
import { textOf } from '../syntax/place.ts';
import type { ProblemCode } from '../syntax/problem-code.ts';
import { allowsWithin } from './allows.ts';
import type { Context } from './context.ts';
import { withDanger } from './dangers.ts';
import { languageOf } from './language.ts';
import { lowerLimit, lowerMeasure, lowerNumber, lowerQuantity, lowerRange, lowerToleranceOnly } from './limits.ts';
import { unreadLine } from './unread.ts';

/** Name, title and place of anything that is declared. */
export function named(
  context: Context,
  node:
    | ast.Shop
    | ast.Station
    | ast.Asset
    | ast.Fluid
    | ast.Stock
    | ast.Master
    | ast.Part
    | ast.Places
    | ast.Assembly
    | ast.PointClause
    | ast.Operand
    | ast.Family
    | ast.Procedure
    | ast.Stage
    | ast.Repair
    | ast.Spec
    | ast.Sequence,
) {
  const source: Source = context.source(node, 'name');
  return { name: node.name, title: node.title ?? node.name, source };
}

export function lowerShop(context: Context, node: ast.Shop): Shop {
  const stations: Station[] = [];
  const assets: ast.Asset[] = [];
  const fluids: Fluid[] = [];
  const stocks: Stock[] = [];
  const masters: ast.Master[] = [];
  const unlessStated: StandingTolerance[] = [];
  let airBelow: Shop['airBelow'] = null;
  let acceptance: Acceptance | null = null;
  const about: { -readonly [key in keyof Letterhead]: Letterhead[key] } = {
    address: null,
    telephone: null,
    accreditation: null,
    terms: null,
  };
  for (const item of node.items) {
    switch (item.$type) {
      case 'Station':
        stations.push(stationOf(context, item));
        break;
      case 'Asset':
        assets.push(item);
        break;
      case 'Fluid':
        fluids.push(fluidOf(context, item));
        break;
      case 'Stock':
        stocks.push(stockOf(context, item));
        break;
      case 'Master':
        masters.push(item);
        break;
      case 'UnlessStated':
        unlessStated.push(...standingOf(context, item, unlessStated));
        break;
      case 'AirBelow':
        airBelow = airBelowOf(context, item, airBelow);
        break;
      case 'Acceptance':
        if (acceptance !== null)
          context.syntax(
            'written-twice',
            say`The shop says twice how readings are accepted. Delete one.`,
            context.source(item),
          );
        acceptance ??= { rule: decisionRule(item.rule), sourceText: item.sourceText ?? null };
        break;
      case 'ShopFact':
        if (about[item.word] !== null)
          context.syntax(
            'written-twice',
            say`The shop says ${item.word} twice: nobody knows which one counts. Delete one.`,
            context.source(item),
          );
        about[item.word] ??= item.text;
        break;
      case 'Unread':
        unreadLine(context, item, [
          'station',
          'wrench',
          'gauge',
          'tool',
          'fluid',
          'stock',
          'master',
          'unless',
          'air',
          'acceptance',
          'address',
          'telephone',
          'accreditation',
          'terms',
        ]);
        break;
    }
  }
  const known = context.unique(stations, 'station');
  return {
    ...named(context, node),
    about,
    language: node.language === undefined ? null : languageOf(context, node, node.language),
    stations: known,
    assets: context.unique(
      assets.map((asset) => assetOf(context, asset, known)),
      'tool',
    ),
    fluids: context.unique(fluids, 'fluid'),
    stocks: context.unique(stocks, 'stock'),
    masters: context.unique(
      masters.flatMap((master) => masterOf(context, master, known) ?? []),
      'master',
    ),
    unlessStated,
    airBelow,
    acceptance: acceptance ?? { rule: 'simple', sourceText: null },
    allow: allowsWithin(context, node),
  };
}

/** Words of one data rule come without the blanks between them. */
export function decisionRule(words: string): DecisionRule {
  if (words.startsWith('fully')) return 'fully guarded';
  return words === 'guarded' ? 'guarded' : 'simple';
}

function masterOf(context: Context, node: ast.Master, stations: readonly Station[]): Master | null {
  const station = context.find(node.station, 'station', stations, context.source(node, 'station'));
  if (station === null) return null;
  const limit = node.limit === undefined ? null : lowerLimit(context, node.limit);
  return { ...named(context, node), station: station.name, limit };
}

function stationOf(context: Context, node: ast.Station): Station {
  const has = (trait: ast.StationTrait) => node.traits.includes(trait);
  if (has('clean') && (has('dirty') || has('abrasive'))) {
    context.syntax(
      'two-ways-at-once',
      say`Station ${node.name} cannot be clean and ${has('dirty') ? say`dirty` : say`abrasive`} at the same time: split it into two stations.`,
      context.source(node, 'name'),
    );
  }
  return {
    ...named(context, node),
    clean: has('clean'),
    dirty: has('dirty') || has('abrasive'),
    abrasive: has('abrasive'),
    wet: has('wet'),
    pressure: has('pressure'),
    dangers: node.dangers.reduce<Station['dangers']>(
      (known, danger) => withDanger(context, known, danger, context.source(danger)),
      [],
    ),
    wear: node.wear ?? null,
  };
}

function assetOf(context: Context, node: ast.Asset, stations: readonly Station[]): Asset {
  const asset = {
    ...named(context, node),
    kind: node.kind,
    range: null as Asset['range'],
    within: null as Figure | null,
    accuracyClass: null as string | null,
    graduated: null as Figure | null,
    at: null as string | null,
    calibrated: null as string | null,
    due: null as string | null,
    outOfUse: null as string | null,
    damped: false,
    digital: false,
    length: null as Quantity | null,
  };
  const calibrations: MadeCalibration[] = [];
  const seen = new Set<string>();
  for (const fact of node.facts) {
    if (isOfCalibration(fact) && beginsAnother(fact, calibrations)) {
      calibrations.push({ calibrated: null, due: null, certificate: null, found: null });
      for (const type of ofCalibration) seen.delete(type);
    }
    const said = fact.$type === 'AssetTrait' ? fact.trait : fact.$type;
    if (seen.has(said) && fact.$type !== 'AssetAllow')
      context.syntax(
        'written-twice',
        say`${node.name} says “${textOf(fact)}” and gives the same fact again: nobody knows which one counts. Delete one.`,
        context.source(fact),
      );
    seen.add(said);
    switch (fact.$type) {
      case 'AssetRange':
        asset.range = lowerRange(context, fact.range);
        break;
      case 'AssetWithin':
        asset.within = withinOf(context, fact, node.name);
        break;
      case 'AssetClass':
        asset.accuracyClass = classOf(context, fact, node.name);
        break;
      case 'AssetGraduated':
        asset.graduated = lowerMeasure(context, fact, 'step', fact.step, {
          what: say`The graduation of ${node.name}`,
          why: say`nothing could be read on it`,
          like: 'graduated 1 bar',
          kind: null,
        });
        break;
      case 'AssetAt':
        asset.at = context.find(fact.station, 'station', stations, context.source(fact, 'station'))?.name ?? null;
        break;
      case 'AssetCalibrated':
        calibrations.at(-1)!.calibrated = lowerDate(context, fact, 'date', fact.date);
        break;
      case 'AssetDue':
        calibrations.at(-1)!.due = lowerDate(context, fact, 'date', fact.date);
        break;
      case 'AssetCertificate':
        calibrations.at(-1)!.certificate = fact.number ?? null;
        break;
      case 'AssetFound':
        calibrations.at(-1)!.found = foundOf(context, fact, node.name);
        break;
      case 'AssetRetired':
      case 'AssetOutOfUse': {
        const date = lowerDate(context, fact, 'date', fact.date);
        if (date !== null && (asset.outOfUse === null || date < asset.outOfUse)) asset.outOfUse = date;
        break;
      }
      case 'AssetLength':
        asset.length = lowerMeasure(context, fact, 'length', fact.length, {
          what: say`The length of ${node.name}`,
          why: say`what to set through an adapter is worked out from it`,
          like: 'length 300 mm',
          kind: 'length',
        });
        break;
      case 'AssetAllow':
        break;
      case 'AssetTrait':
        asset[fact.trait] = true;
        break;
    }
  }
  for (const { calibrated, due } of calibrations)
    if (calibrated !== null && due !== null && due < calibrated)
      context.syntax(
        'wrong-date',
        say`${node.name} was calibrated on ${calibrated} and was due on ${due}, before that: nothing that it reads could be certified. Correct one of the two dates.`,
        context.source(node, 'name'),
      );
  calibrations.sort((one, other) => ((one.calibrated ?? '') < (other.calibrated ?? '') ? -1 : 1));
  const { calibrated, due } = calibrations.at(-1) ?? { calibrated: null, due: null };
  return { ...asset, calibrated, due, calibrations, ...onItsScale(context, node, asset) };
}

type MadeCalibration = { -readonly [key in keyof Calibration]: Calibration[key] };

const ofCalibration = ['AssetCalibrated', 'AssetDue', 'AssetCertificate', 'AssetFound'] as const;

function isOfCalibration(fact: ast.AssetFact): boolean {
  return (ofCalibration as readonly string[]).includes(fact.$type);
}

/** Facts belong to the calibration that they are written behind. One without an end is not over when another is named. */
function beginsAnother(fact: ast.AssetFact, before: readonly MadeCalibration[]): boolean {
  const last = before.at(-1);
  if (last === undefined) return true;
  return fact.$type === 'AssetCalibrated' && last.calibrated !== null && last.due !== null;
}

/** `found 3 bar high at 250 bar`. */
function foundOf(context: Context, fact: ast.AssetFound, name: string): Calibration['found'] {
  const measure = (property: 'error' | 'value', written: string) =>
    lowerMeasure(context, fact, property, written, {
      what: say`What ${name} was found with`,
      why: say`which readings were in doubt is worked out from it`,
      like: 'found 3 bar high at 250 bar',
      kind: null,
    });
  const [error, at] = [measure('error', fact.error), measure('value', fact.value)];
  if (error === null || at === null) return null;
  if (kindOfUnit(error.unit) !== kindOfUnit(at.unit)) {
    context.syntax(
      'unit-of-another-kind',
      say`${name} was found ${formatQuantity(error)} off at ${formatQuantity(at)}, and the two measure different things. Write both as it reads them: found 3 bar high at 250 bar.`,
      context.source(fact, 'error'),
    );
    return null;
  }
  return { error: asDifference(error), high: fact.side === 'high', at };
}

/** EN 837-1 has classes up to 4; more than this is a slip of the point. */
const coarsestClass = 10;

function classOf(context: Context, fact: ast.AssetClass, name: string): string | null {
  const number = lowerNumber(context, fact, 'number', fact.number);
  if (number === null || (Number(number) > 0 && Number(number) <= coarsestClass)) return number;
  context.syntax(
    'impossible-figure',
    say`${name} cannot be of class ${number}: the class is how far a gauge may be off, in percent of its span (EN 837-1). Write the one on its dial, such as class 0.6 or class 1.6.`,
    context.source(fact, 'number'),
  );
  return null;
}

/** What a tool is good for: over nothing, and under all of what it reads. */
function withinOf(context: Context, fact: ast.AssetWithin, name: string): Figure | null {
  const within = lowerMeasure(context, fact, 'error', fact.error, {
    what: say`The error of ${name}`,
    why: say`no tool is exact, and every limit read with it would be judged as if this one were`,
    like: say`within 4 %, or within 0.003 mm`,
    kind: null,
  });
  if (within === null || within.unit !== '%' || Number(within.number) < 100) return within;
  context.syntax(
    'impossible-figure',
    say`${name} could be off by as much as it reads: within ${formatQuantity(within)} says nothing about it. Look the figure up on its calibration sheet.`,
    context.source(fact, 'error'),
  );
  return null;
}

/** Marks and error of a tool that are wider than its whole scale are a slip in one of the three: none is gone by. */
function onItsScale(
  context: Context,
  node: ast.Asset,
  { range, within, graduated }: Pick<Asset, 'range' | 'within' | 'graduated'>,
): Pick<Asset, 'within' | 'graduated'> {
  const span = range === null ? null : between(range.high, range.low);
  const kept = (figure: Difference | null, type: 'AssetWithin' | 'AssetGraduated', what: Said) => {
    if (figure === null || span === null || (compareDifferences(figure, span) ?? -1) === -1) return figure;
    context.syntax(
      'impossible-figure',
      say`${node.name} ${what} ${formatQuantity(figure)}, and its whole scale is ${formatQuantity(span)} long: one of the two is wrong. Check the digits and the units.`,
      context.source(node.facts.find((fact) => fact.$type === type)!),
    );
    return null;
  };
  return {
    within: kept(within, 'AssetWithin', say`may be off by`),
    graduated: kept(graduated, 'AssetGraduated', say`has a mark only every`),
  };
}

/** What hand-held air stays under. */
function airBelowOf(context: Context, node: ast.AirBelow, before: Shop['airBelow']): Shop['airBelow'] {
  if (before !== null)
    context.syntax(
      'written-twice',
      say`The shop gives the limit for compressed air twice. Delete one.`,
      context.source(node),
    );
  const limit = lowerMeasure(context, node, 'limit', node.limit, {
    what: say`The limit of the shop for compressed air`,
    why: say`every blow-dry is checked against it`,
    like: 'air below 30 psi',
    kind: 'pressure',
  });
  return limit === null ? before : { limit, source: context.source(node) };
}

/** An ISO date that is in the calendar; else reported and null. */
export function lowerDate(
  context: Context,
  node:
    | ast.AssetCalibrated
    | ast.AssetDue
    | ast.AssetRetired
    | ast.AssetOutOfUse
    | ast.ApprovedBy
    | ast.Received
    | ast.ResultDate
    | ast.ResultOn,
  property: string,
  text: string,
): string | null {
  const date = new Date(`${text}T00:00:00Z`);
  if (!Number.isNaN(date.getTime()) && date.toISOString().startsWith(text)) return text;
  context.syntax(
    'wrong-date',
    say`${text} is not in the calendar: write the date as year-month-day.`,
    context.source(node, property),
  );
  return null;
}

function fluidOf(context: Context, node: ast.Fluid): Fluid {
  let kind: FluidKind = 'solvent';
  let flammable: Quantity | null = null;
  for (const fact of node.facts) {
    if (fact.kind !== undefined) kind = fact.kind;
    if (fact.flash !== undefined) flammable = flashOf(context, fact, node.name) ?? flammable;
  }
  return { ...named(context, node), kind, flammable };
}

/** No liquid of a workshop lies outside: petrol flashes at about −40 °C, a heavy quenching oil at about 300 °C. */
const flashPoints: RangeLimit = {
  form: 'range',
  low: { number: '-60', unit: '°C' },
  high: { number: '400', unit: '°C' },
};

function flashOf(context: Context, fact: ast.FluidFact, name: string): Quantity | null {
  const flash = lowerQuantity(context, fact, 'flash', fact.flash!, fact.flashSign);
  if (flash === null) return null;
  const problem =
    kindOfUnit(flash.unit) !== 'temperature'
      ? say`is a temperature, and ${formatQuantity(flash)} is a ${term(kindOfUnit(flash.unit))}`
      : compare(flash, flashPoints.low) === -1 || compare(flash, flashPoints.high) === 1
        ? say`cannot be ${formatQuantity(flash)}: flash points of liquids range from ${formatLimit(flashPoints)}`
        : null;
  if (problem === null) return flash;
  context.syntax(
    kindOfUnit(flash.unit) === 'temperature' ? 'impossible-figure' : 'unit-of-another-kind',
    say`The flash point of ${name} ${problem}. Baths and cautions are judged by it: take it from the safety data sheet, such as flammable 62 °C.`,
    context.source(fact, 'flash'),
  );
  return null;
}

function stockOf(context: Context, node: ast.Stock): Stock {
  const head = { ...named(context, node), stacks: node.stacks.length > 0 };
  if (node.low === undefined) {
    const shims = node.sizes
      .flatMap((one) => shimOf(context, one) ?? [])
      .sort((a, b) => amount(a.size).compare(amount(b.size)));
    for (const [index, { size, source }] of shims.entries()) {
      if (index === 0 || !amount(size).equals(amount(shims[index - 1]!.size))) continue;
      context.syntax(
        'written-twice',
        say`Stock ${node.name} has ${formatQuantity(size)} twice: nobody knows which count is meant. Write it once, with the total count.`,
        source,
      );
    }
    return {
      ...head,
      sizes: shims.map(({ size }) => size),
      counts: shims.map(({ count }) => count),
    };
  }
  const [low, high, step] = (['low', 'high', 'step'] as const).map((end) =>
    lowerMeasure(context, node, end, node[end]!, {
      what: end === 'step' ? say`The step of stock ${node.name}` : say`A size of stock ${node.name}`,
      why: say`shims are chosen by their thickness`,
      like: 'from 1.00 mm to 1.95 mm by 0.05 mm',
      kind: 'length',
    }),
  );
  const sizes = low == null || high == null || step == null ? [] : seriesOf(context, node, { low, high, step });
  return { ...head, sizes, counts: sizes.map(() => null) };
}

/** The sizes of an even series; none where it has a slip (reported). */
function seriesOf(
  context: Context,
  node: ast.Stock,
  { low, high, step }: { readonly low: Quantity; readonly high: Quantity; readonly step: Figure },
): Quantity[] {
  const span = between(high, low)!;
  const problem =
    compare(low, high) !== -1
      ? say`goes from ${formatQuantity(low)} to ${formatQuantity(high)}: the first size must be less than the last`
      : compareDifferences(step, span) === 1
        ? say`has a step of ${formatQuantity(step)}, which is more than the distance from ${formatQuantity(low)} to ${formatQuantity(high)}: it would have one size only`
        : null;
  const sizes = problem === null ? sizesOf(low, high, step) : null;
  if (sizes === null)
    context.syntax(
      'impossible-figure',
      say`Stock ${node.name} ${problem ?? say`has more than 10000 sizes: the step is too small`}. Check the digits and the units.`,
      context.source(node, problem === null ? 'step' : 'high'),
    );
  return sizes ?? [];
}

/** A single size, and how many there are of it. Null where the size has no meaning (reported). */
function shimOf(context: Context, node: ast.StockSize) {
  const size = lowerMeasure(context, node, 'size', node.size, {
    what: say`The size of a shim`,
    why: say`shims are chosen by their thickness`,
    like: '1.45 mm',
    kind: 'length',
  });
  const number = node.count === undefined ? null : lowerNumber(context, node, 'count', node.count);
  const isWhole = /^\d+$/u.test(number ?? '0');
  if (!isWhole) {
    context.syntax(
      'impossible-figure',
      say`Shims come in whole numbers, and ${node.count!} is not a count. Write a whole number, 0 if there is none, or leave out the count if there are always enough.`,
      context.source(node, 'count'),
    );
  }
  const count = number === null || !isWhole ? null : Number(number);
  return size === null ? null : { size, count, source: context.source(node, 'size') };
}

function standingOf(
  context: Context,
  node: ast.UnlessStated,
  before: readonly StandingTolerance[],
): StandingTolerance[] {
  const own: StandingTolerance[] = [];
  for (const standing of node.tolerances) {
    const limit = lowerToleranceOnly(context, standing.limit);
    const kind = kindOf(standing.kind);
    const problem =
      limit === null
        ? null
        : [...before, ...own].some((other) => other.kind === kind)
          ? ([
              'written-twice',
              say`The shop gives the tolerance of a ${term(standing.kind)} twice. Delete one.`,
            ] as const)
          : wrongTolerance(standing.kind, limit);
    if (problem !== null) context.syntax(...problem, context.source(standing));
    else if (limit !== null)
      own.push({ kind, limit, sourceText: node.sourceText ?? null, source: context.source(node) });
  }
  return own;
}

/** What is wrong with a standing tolerance; null: nothing. */
function wrongTolerance(word: ast.SpecKind, { plus, minus }: ToleranceOnly): readonly [ProblemCode, Said] | null {
  const written = formatLimit({ form: 'tolerance', plus, minus });
  const sides = [plus, minus];
  const other = sides.find(({ unit }) => unit !== '%' && !kindAdmits(kindOf(word), unit));
  if (other !== undefined)
    return [
      'unit-of-another-kind',
      say`A ${term(word)} cannot have a tolerance of ${written}: ${formatQuantity(other)} is a ${term(kindOfUnit(other.unit))}. Write it in percent, or in a unit of ${term(word)}.`,
    ];
  if (sides.every(({ number }) => Number(number) === 0))
    return [
      'impossible-figure',
      say`A tolerance of ${written} lets no reading through. Write what the shop works to, such as ±10 %.`,
    ];
  return sides.some(({ unit, number }) => unit === '%' && Number(number) >= 100)
    ? [
        'impossible-figure',
        say`A tolerance of ${written} reaches down to zero, which is no tolerance. Check the digits.`,
      ]
    : null;
}

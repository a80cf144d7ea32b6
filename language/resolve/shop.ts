import type * as ast from '../grammar/generated/ast.ts';
import type {
  Acceptance,
  Asset,
  DecisionRule,
  Fluid,
  FluidKind,
  Master,
  Shop,
  StandingTolerance,
  Station,
  Stock,
} from '../model/shop.ts';
import type { Source } from '../model/source.ts';
import { amount, formatQuantity, kindOf, sizesOf } from '../quantities/index.ts';
import type { Figure, Quantity } from '../quantities/types.ts';
import { allowsWithin } from './allows.ts';
import type { Context } from './context.ts';
import { withDanger } from './dangers.ts';
import { quantityOf, rangeOf, toleranceOnlyOf } from './limits.ts';
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

export function shopOf(context: Context, node: ast.Shop): Shop {
  const stations: Station[] = [];
  const assets: ast.Asset[] = [];
  const fluids: Fluid[] = [];
  const stocks: Stock[] = [];
  const masters: ast.Master[] = [];
  const unlessStated: StandingTolerance[] = [];
  let airBelow: Quantity | null = null;
  let acceptance: Acceptance | null = null;
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
        unlessStated.push(...standingOf(context, item));
        break;
      case 'AirBelow':
        airBelow = quantityOf(context, item, 'limit', item.limit);
        break;
      case 'Acceptance':
        if (acceptance !== null)
          context.syntax('The shop says twice how readings are judged. Take one out.', context.source(item));
        acceptance ??= { rule: decisionRule(item.rule), sourceText: item.sourceText ?? null };
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
        ]);
        break;
    }
  }
  const known = context.unique(stations, 'station');
  return {
    ...named(context, node),
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
  return station === null ? null : { ...named(context, node), station: station.name };
}

function stationOf(context: Context, node: ast.Station): Station {
  const has = (trait: ast.StationTrait) => node.traits.includes(trait);
  if (has('clean') && (has('dirty') || has('abrasive'))) {
    context.syntax(
      `Station ${node.name} cannot be clean and ${has('dirty') ? 'dirty' : 'abrasive'} at once: make two stations of it.`,
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
    damped: false,
    digital: false,
    length: null as Quantity | null,
  };
  for (const fact of node.facts) {
    switch (fact.$type) {
      case 'AssetRange':
        asset.range = rangeOf(context, fact.range);
        break;
      case 'AssetWithin':
        asset.within = quantityOf(context, fact, 'error', fact.error);
        break;
      case 'AssetClass':
        asset.accuracyClass = fact.number;
        break;
      case 'AssetGraduated':
        asset.graduated = quantityOf(context, fact, 'step', fact.step);
        break;
      case 'AssetAt':
        asset.at = context.find(fact.station, 'station', stations, context.source(fact, 'station'))?.name ?? null;
        break;
      case 'AssetCalibrated':
        asset.calibrated = dateOf(context, fact, 'date', fact.date);
        break;
      case 'AssetDue':
        asset.due = dateOf(context, fact, 'date', fact.date);
        break;
      case 'AssetLength':
        asset.length = quantityOf(context, fact, 'length', fact.length);
        break;
      case 'AssetAllow':
        break;
      case 'AssetTrait':
        asset[fact.trait] = true;
        break;
    }
  }
  return asset;
}

/** An ISO date that is in the calendar; else reported and null. */
export function dateOf(
  context: Context,
  node: ast.AssetCalibrated | ast.AssetDue | ast.ApprovedBy | ast.Received | ast.ResultOn,
  property: string,
  text: string,
): string | null {
  const date = new Date(`${text}T00:00:00Z`);
  if (!Number.isNaN(date.getTime()) && date.toISOString().startsWith(text)) return text;
  context.syntax(`${text} is not in the calendar: write the date as year-month-day.`, context.source(node, property));
  return null;
}

function fluidOf(context: Context, node: ast.Fluid): Fluid {
  let kind: FluidKind = 'solvent';
  let flammable: Quantity | null = null;
  for (const fact of node.facts) {
    if (fact.kind !== undefined) kind = fact.kind;
    if (fact.flash !== undefined) flammable = quantityOf(context, fact, 'flash', fact.flash);
  }
  return { ...named(context, node), kind, flammable };
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
        `Stock ${node.name} has ${formatQuantity(size)} twice: nobody knows which count is meant. Write it once, with the count of both.`,
        source,
      );
    }
    return {
      ...head,
      sizes: shims.map(({ size }) => size),
      counts: shims.map(({ count }) => count),
    };
  }
  const [low, high, step] = (['low', 'high', 'step'] as const).map((end) => quantityOf(context, node, end, node[end]!));
  const sizes = low == null || high == null || step == null ? null : sizesOf(low, high, step);
  if (sizes === null) {
    context.syntax(
      `Stock ${node.name} has no sizes: the first must not be over the last, the step must be over nothing, and there may be at most 10000.`,
      context.source(node, 'name'),
    );
  }
  return {
    ...head,
    sizes: sizes ?? [],
    counts: (sizes ?? []).map(() => null),
  };
}

/** A single size, and how many there are of it. Null where the size has no meaning (reported). */
function shimOf(context: Context, node: ast.StockSize) {
  const size = quantityOf(context, node, 'size', node.size);
  const isWhole = /^\d+$/u.test(node.count ?? '0');
  if (!isWhole) {
    context.syntax(
      `There are whole shims only, and ${node.count} is no count of them. Write a whole number, 0 where there is none, or no bracket where there are as many as are wanted.`,
      context.source(node, 'count'),
    );
  }
  const count = node.count === undefined || !isWhole ? null : Number(node.count);
  return size === null ? null : { size, count, source: context.source(node, 'size') };
}

function standingOf(context: Context, node: ast.UnlessStated): StandingTolerance[] {
  return node.tolerances.flatMap((standing) => {
    const limit = toleranceOnlyOf(context, standing.limit);
    return limit === null
      ? []
      : [{ kind: kindOf(standing.kind), limit, sourceText: node.sourceText ?? null, source: context.source(node) }];
  });
}

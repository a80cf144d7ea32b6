import type { FluidKind, Shop, Station } from '../model/shop.ts';
import { kindOfUnit } from '../quantities/index.ts';
import { blank } from './blank.ts';

/** Where the work of a draft is done and with what, by the traits that the shop gives: names, or a blank. */
export interface Workplaces {
  readonly dirty: string;
  readonly wet: string;
  readonly clean: string;
  readonly tester: string;
  /** Null: the shop has none. */
  readonly solvent: string | null;
  readonly oil: string | null;
  /** A measuring tool for lengths. */
  readonly measure: string | null;
}

export function chooseWorkplaces({ stations, fluids, assets }: Shop): Workplaces {
  const first = (isIt: (station: Station) => boolean) => stations.find(isIt)?.name;
  const fluid = (...kinds: readonly FluidKind[]) => {
    const found = kinds.flatMap((kind) => fluids.filter((one) => one.kind === kind));
    return found[0]?.name ?? null;
  };
  const isBench = ({ pressure, abrasive }: Station) => !pressure && !abrasive;
  const bench = first(isBench) ?? stations[0]?.name ?? blank;
  const measuring = assets.find(
    ({ kind, range }) => kind === 'tool' && range !== null && kindOfUnit(range.high.unit) === 'length',
  );
  return {
    dirty: first((one) => one.dirty && isBench(one)) ?? bench,
    wet: first((one) => one.wet && isBench(one)) ?? bench,
    clean: first((one) => one.clean && isBench(one)) ?? first((one) => !one.dirty && !one.wet && isBench(one)) ?? bench,
    tester: first(({ pressure }) => pressure) ?? bench,
    solvent: fluid('solvent', 'detergent'),
    oil: fluid('test-oil', 'oil'),
    measure: measuring?.name ?? null,
  };
}

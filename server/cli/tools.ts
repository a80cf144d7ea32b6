import type { Asset, Calibration } from '../../language/model/shop.ts';
import { formatQuantity } from '../../language/quantities/index.ts';
import { worded } from './messages.ts';
import type { RowFormat } from './row-formats.ts';
import { type Column, sayRows } from './rows.ts';
import { say } from './say.ts';
import { UsageError } from './usage-error.ts';
import { openQuietly } from './workspace.ts';

export interface ToolsOptions {
  readonly workspace: string;
  readonly today: string;
  /** `30 days`: only what is due within them, or overdue; undefined: all. */
  readonly within?: string | undefined;
  readonly format: RowFormat;
}

interface ToolRow {
  readonly shop: string;
  readonly asset: Asset;
  readonly state: string;
  /** What was found at each calibration. */
  readonly found: string;
}

/** Lists the tools of the shop by the day on which they are due. Exit code 0. */
export async function toolsCommand({ workspace, today, within, format }: ToolsOptions): Promise<number> {
  const { result } = await openQuietly([workspace]);
  const until = within === undefined ? null : later(today, daysOf(within));
  const all = result.resolved.shops.flatMap(({ name: shop, assets }) =>
    assets.map((asset): ToolRow => ({ shop, asset, state: stateOn(asset, today), found: foundWords(asset) })),
  );
  if (all.length === 0) throw new UsageError(worded`No shop in ${workspace} declares a wrench, a gauge or a tool.`);
  const rows = all.filter(({ asset }) => until === null || isDueBy(asset, { today, until }));
  rows.sort(({ asset: one }, { asset: other }) => ((one.due ?? '') < (other.due ?? '') ? -1 : 1));
  if (rows.length === 0 && format === 'text') say(`${worded`No tool is due by ${until!}.`}\n`);
  else sayRows(rows, columns(), format);
  return 0;
}

const columns = (): readonly Column<ToolRow>[] => [
  { key: 'due', head: worded`due`, value: ({ asset }) => asset.due },
  { key: 'tool', head: worded`tool`, value: ({ asset }) => asset.name },
  { key: 'title', head: worded`title`, value: ({ asset }) => (asset.title === asset.name ? '' : asset.title) },
  { key: 'kind', head: null, value: ({ asset }) => asset.kind },
  { key: 'shop', head: worded`shop`, value: ({ shop }) => shop },
  { key: 'calibrated', head: worded`calibrated`, value: ({ asset }) => asset.calibrated },
  { key: 'certificate', head: worded`certificate`, value: ({ asset }) => asset.calibrations.at(-1)?.certificate },
  { key: 'state', head: worded`today`, value: ({ state }) => state },
  { key: 'found', head: worded`found at calibration`, value: ({ found }) => found },
];

function stateOn({ calibrations, due, outOfUse }: Asset, today: string): string {
  if (outOfUse !== null && outOfUse <= today) return worded`out of use since ${outOfUse}`;
  const inForce = calibrations.some(
    (one) => one.calibrated !== null && one.due !== null && one.calibrated <= today && today <= one.due,
  );
  if (inForce) return worded`in date`;
  return due !== null && due < today ? worded`overdue` : worded`not calibrated`;
}

function foundWords({ calibrations }: Asset): string {
  const words = ({ calibrated, found }: Calibration) =>
    found === null
      ? []
      : [
          `${calibrated ?? ''} ${formatQuantity(found.error)} ${found.high ? 'high' : 'low'} at ${formatQuantity(found.at)}`.trim(),
        ];
  return calibrations.flatMap(words).join('; ');
}

/** One that is out of use is not sent to be calibrated. */
function isDueBy(
  { due, outOfUse }: Asset,
  { today, until }: { readonly today: string; readonly until: string },
): boolean {
  return (outOfUse === null || outOfUse > today) && (due === null || due <= until);
}

/** What a sheet that is printed today should say of a tool that it names; null: nothing. */
export function toolWarning(asset: Asset, today: string): string | null {
  const { name, due, outOfUse } = asset;
  if (outOfUse !== null && outOfUse <= today) return worded`${name} is out of use since ${outOfUse}. Use another tool.`;
  if (due === null) return null;
  if (due < today)
    return worded`${name} has been due for calibration since ${due}: nothing read with it now can be certified.`;
  return due <= later(today, soon)
    ? worded`${name} is due for calibration on ${due}: what is read with it after that cannot be certified.`
    : null;
}

/** Days in which a job that is printed today is done, as far as anybody knows. */
const soon = 30;

function daysOf(text: string): number {
  const days = /^(\d{1,4})(?: ?days?)?$/u.exec(text)?.[1];
  if (days === undefined)
    throw new UsageError(worded`--within ${text} is no number of days. Write it as --within "30 days".`);
  return Number(days);
}

function later(day: string, days: number): string {
  const date = new Date(`${day}T00:00:00Z`);
  date.setUTCDate(date.getUTCDate() + days);
  return date.toISOString().slice(0, 10);
}

/** A limit as a cell: its words as the sheet prints them, its tool, the accuracy ratio, and what is missing. */
import type { Step, ToolUse } from '../../model/procedure.ts';
import type { Asset } from '../../model/shop.ts';
import type { Source } from '../../model/source.ts';
import { type Kind, kindOfUnit, type Limit, window } from '../../quantities/index.ts';
import type { LimitFigure } from '../figures/limit-figure.ts';
import { scaleFor, type Where } from '../figures/scales.ts';
import type { StepFigures } from '../figures/step-figures.ts';
import type { PrintContext } from '../print-context.ts';
import { toolWords } from '../tools.ts';
import { accuracyOf } from './accuracy.ts';
import type { MissingKind, SpecCell, SpecLine, SpecMissing } from './model.ts';

/** A step and where it is done: tool, unit and station of a limit come from it. */
export interface CompletedCell {
  readonly step: Step;
  readonly figures: StepFigures;
  /** As the sheet takes it: of a repair with no station of its own, none. */
  readonly where: Where;
  /** Where it may be done: of such a repair, at every station that sends a unit there. */
  readonly stations: readonly Where[];
}

/** How much is asked of a limit. */
export interface Asked {
  /** Something is passed or refused by it, so that it needs a tolerance; else it is a condition of the work. */
  readonly judged: boolean;
  /** The words that take the place of those that the limit makes: `20 bar below the opening pressure read`. */
  readonly value?: string;
}

export const missing = (kind: MissingKind, text: string): SpecMissing => ({ kind, words: text });

export function lineOf({ file, range }: Source): SpecLine {
  return { file, line: range.start.line, last: range.end.line };
}

/** A cell with words only. */
export function wordsCell(
  value: string,
  line: SpecLine,
  missed: readonly SpecMissing[] = [],
  source: string | null = null,
): SpecCell {
  return {
    value,
    also: '',
    standing: null,
    source,
    low: null,
    high: null,
    tool: null,
    ratio: null,
    missing: missed,
    line,
  };
}

/** Quantities that are counted or read off a clock: no numbered tool is needed. */
const byHand: ReadonlySet<Kind> = new Set(['time', 'drops', 'strokes', 'turns', 'stroke rate', 'ratio']);

/** A limit that a step uses. */
export function limitCell(
  setting: PrintContext,
  done: CompletedCell,
  figure: LimitFigure,
  source: string | null,
  line: SpecLine,
  asked: Asked,
): SpecCell {
  const { words } = setting;
  const { step } = done;
  const { kind } = figure;
  const { whole, standing } = asked.judged ? figure : { whole: figure.limit, standing: null };
  const found = kind === null ? null : toolFor(setting, done, kind, figure);
  const turned = step.verb === 'torque' || step.verb === 'lock';
  const accuracy = found?.asset == null ? null : accuracyOf(found.asset, whole, turned, words);
  const { low, high } = window(whole);
  const missed: SpecMissing[] = [];
  if (asked.judged && isBare(whole)) missed.push(missing('tolerance', words.specs.missing.tolerance));
  if (source === null) missed.push(missing('source', words.specs.missing.source));
  if (standing !== null && standing.sourceText === null)
    missed.push(missing('source', words.specs.missing.standingSource));
  // A pressure that is only held is read off a gauge too.
  if (found === null && kind !== null && (kind === 'pressure' || (asked.judged && !byHand.has(kind)))) {
    const gauged = step.verb === 'test' || step.verb === 'read' || step.verb === 'set' || step.verb === 'across';
    missed.push(missing('tool', gauged ? words.specs.missing.gauge : words.specs.missing.tool));
  }
  if (found?.asset != null && accuracy === null && low !== null && high !== null && asked.judged)
    missed.push(missing('accuracy', words.specs.missing.accuracy({ tool: found.asset.name })));
  return {
    value: asked.value ?? figure.value,
    also: asked.value === undefined ? figure.also : '',
    standing:
      standing === null
        ? null
        : `${words.limits.standing} ${words.limit(standing.limit)}${standing.sourceText === null ? '' : `: ${standing.sourceText}`}`,
    source,
    low,
    high,
    tool:
      found === null
        ? null
        : {
            number: found.asset?.name ?? null,
            words: found.words,
            error: accuracy?.error ?? null,
          },
    ratio: asked.judged ? (accuracy?.ratio ?? null) : null,
    missing: missed,
    line,
  };
}

/** Nobody can say when a reading is good. */
function isBare(limit: Limit): boolean {
  if (limit.form === 'then') return isBare(limit.first) || isBare(limit.angle);
  return limit.form === 'nominal' && limit.plus === null && limit.minus === null;
}

interface FoundTool {
  readonly asset: Asset | null;
  readonly words: string;
}

/** The tool that the sheet takes for a limit, or what the author says about one. */
function toolFor(
  setting: PrintContext,
  { step, where, stations }: CompletedCell,
  kind: Kind,
  { limit, scale: ownScale }: LimitFigure,
): FoundTool | null {
  const { procedure } = setting;
  const { assets } = procedure.shop;
  const scales = stations.flatMap((at) => (at === where ? ownScale : scaleFor(procedure, step, at, kind, limit)) ?? []);
  const scale = scales[0] ?? null;
  const asset = assets.find((other) => other === scale);
  const uses = new Map<Asset | undefined, ToolUse>(
    step.tools.map((use) => [use.form === 'asset' ? assets.find(({ name }) => name === use.name) : undefined, use]),
  );
  if (asset !== undefined) return { asset, words: assetWords(setting, asset, uses.get(asset)) };
  if (scale !== null) {
    const use = step.tools.find((other) => other.form === 'kind' && other.range === scale.range);
    return use === undefined ? null : { asset: null, words: toolWords(setting, use) };
  }
  for (const [named, use] of uses) {
    // Of what says neither range nor marks only its error tells what it measures.
    if (named !== undefined && named.range === null && named.graduated === null) {
      const measures = named.within === null || named.within.unit === '%' ? null : kindOfUnit(named.within.unit);
      if (measures === null || measures === kind) return { asset: named, words: assetWords(setting, named, use) };
    }
    if (use.form === 'kind' && use.range === null) return { asset: null, words: toolWords(setting, use) };
  }
  const said = step.tools.filter((use) => use.form === 'words');
  return said.length === 0 ? null : { asset: null, words: said.map(({ text }) => text).join(', ') };
}

function assetWords({ words }: PrintContext, { name, title, kind }: Asset, use: ToolUse | undefined): string {
  const tool = title === name ? words.tools.kinds[kind] : title;
  return use?.form === 'asset' && use.adapter !== null
    ? words.specs.facts.adapter({ tool, length: words.quantity(use.adapter.length) })
    : tool;
}

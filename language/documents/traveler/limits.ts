import type { LimitUse, PartNumber, RateFrom, Step } from '../../model/procedure.ts';
import { specFor } from '../../model/spec-for.ts';
import { isAsFound, own, readingOf } from '../../model/steps.ts';
import type { Kind, Limit, Quantity } from '../../quantities/index.ts';
import { kindOfLimit, kindOfUnit } from '../../quantities/index.ts';
import type { Words } from '../../i18n/index.ts';
import { byNumber, withNumbers } from './by-number.ts';
import { limitText, type Shown, shownLimit, unitOfLimit } from './figures.ts';
import type { LimitLine } from './model.ts';
import { capital, specTitle, titleOf } from './names.ts';
import type { Setting } from './print-context.ts';
import { leastAt, markAt, toolUnit, type Where } from './units.ts';

export type Which = 'rebuilt' | 'inService' | 'whenNew';

/** The limits of a step, large, in the unit of the tool; one line for each part number that differs. */
export function stepLimits(setting: Setting, step: Step, where: Where): LimitLine[] {
  const { words } = setting;
  const lines: LimitLine[] = [];
  const use = useOf(setting, step);
  if (use !== null) {
    const spec = use.form === 'spec' ? use.spec : null;
    lines.push(
      ...(spec === null
        ? [writtenLine(setting, step, where, (use as Extract<LimitUse, { form: 'limit' }>).limit)]
        : specLines(setting, step, where, spec)),
    );
  }
  const [stretch, inTime, spread] = [own(step, 'stretch'), own(step, 'test')?.inTime, own(step, 'spread')];
  if (stretch != null) lines.push(writtenLine(setting, step, where, stretch, words.facts.stretch));
  if (inTime != null) lines.push(writtenLine(setting, step, where, inTime));
  if (spread != null) lines.push(spreadLine(setting, step, where, spread));
  return lines;
}

/** What the figure of a step is held to: written in it, or its spec. */
export function useOf(setting: Setting, step: Step): LimitUse | null {
  return own(step, 'limit') ?? readingSpec(setting, step);
}

/** A `read` or `set` names its spec, if there is one. */
function readingSpec(setting: Setting, step: Step): LimitUse | null {
  const spec = setting.procedure.specs.find(({ name }) => name === own(step, 'reading'));
  return spec === undefined ? null : { form: 'spec', spec: spec.name, source: step.source };
}

/** As found is judged by the in-service limit, what was rebuilt by the other. */
function whichOf(step: Step, served: boolean): readonly Which[] {
  // What was found is judged by the limit in service; that of a rebuilt unit beside it says how far it has gone.
  if (isAsFound(step)) return served ? ['inService', 'rebuilt'] : ['rebuilt'];
  return step.verb === 'test' || step.verb === 'set' || step.verb === 'read' ? ['rebuilt', 'whenNew'] : ['rebuilt'];
}

export function specLines(setting: Setting, step: Step, where: Where, spec: string): LimitLine[] {
  const { procedure, numbers } = setting;
  const several: readonly (PartNumber | null)[] = numbers.length === 0 ? [null] : numbers;
  // Where some number has a limit for the service, what was found is not held to the rebuilt one.
  const served = several.some((number) => specFor(procedure, spec, number?.name ?? null)?.inService != null);
  const columns = whichOf(step, served).map((which) => {
    const lines = several.map((number) => ({
      number: number?.name ?? '',
      line: specLine(setting, step, where, which, specFor(procedure, spec, number?.name ?? null)),
    }));
    const merged = new Map<string, { line: LimitLine; numbers: string[] }>();
    for (const { number, line } of lines) {
      if (line === null) continue;
      const key = JSON.stringify(line);
      const known = merged.get(key);
      if (known === undefined) merged.set(key, { line, numbers: [number] });
      else known.numbers.push(number);
    }
    const alone = merged.size === 1 && [...merged.values()][0]!.numbers.length === several.length;
    return [...merged.values()].map(({ line, numbers: of }, index) => ({
      ...line,
      head: index === 0 ? line.head : '',
      label: alone ? '' : of.join(', '),
    }));
  });
  const filled = columns.filter((lines) => lines.length > 0);
  // What a test is held to anyway needs no head where nothing stands beside it.
  const [only, ...others] = filled;
  return titled(
    setting,
    step,
    spec,
    others.length > 0 || only === undefined || isAsFound(step) || only[0]!.head !== setting.words.limits.rebuilt
      ? filled.flat()
      : only.map((line) => ({ ...line, head: '' })),
  );
}

/** What the figure is of, before it, where the sentence of the step does not say it: `Free length of the spring`. */
function titled({ procedure }: Setting, step: Step, name: string, lines: LimitLine[]): LimitLine[] {
  const spec = procedure.specs.find((one) => one.name === name);
  const [first, ...others] = lines;
  // What a part is chosen by is told beside its aim.
  if (spec === undefined || spec.title === spec.name || first === undefined || step.verb === 'choose') return lines;
  const title = capital(titleOf(spec));
  const said = step.verb === 'across' ? step.gate.test : readingOf(step);
  if (said !== null && capital(specTitle(procedure, said)) === title) return lines;
  if (first.head === '' && first.label === '') return [{ ...first, label: title }, ...others];
  return [{ ...first, head: first.head === '' ? title : `${title}, ${first.head}` }, ...others];
}

function specLine(
  setting: Setting,
  step: Step,
  where: Where,
  which: Which,
  value: ReturnType<typeof specFor>,
): LimitLine | null {
  if (value === null) return null;
  const { words } = setting;
  const newPart = setting.procedure.family.parts.find(({ name }) => name === value.whenNewPart);
  const head =
    which === 'whenNew' && newPart !== undefined
      ? words.limits.withNew({ part: words.inSentence(newPart.title) })
      : words.limits[which];
  if (value.notRequired)
    return which === 'rebuilt'
      ? {
          head,
          label: '',
          value: words.limits.notRequired,
          also: '',
          source: sourceWords(words, value.sourceText),
        }
      : null;
  const limit = value[which];
  if (limit === null)
    return which === 'rebuilt' && !isAsFound(step)
      ? {
          head,
          label: '',
          value: words.limits.missing,
          also: '',
          source: sourceWords(words, value.sourceText),
        }
      : null;
  return lineOf(setting.words, head, shownIn(setting, step, where, limit), value.sourceText);
}

/** Whether the source written in a step stands beside a limit that is written in it too. */
export function saysSource(step: Step): boolean {
  const figures = [own(step, 'stretch'), own(step, 'test')?.inTime, own(step, 'spread')];
  return own(step, 'limit')?.form === 'limit' || figures.some((one) => one != null);
}

function writtenLine(setting: Setting, step: Step, where: Where, limit: Limit, head = ''): LimitLine {
  return lineOf(setting.words, head, shownIn(setting, step, where, limit), step.sourceText);
}

/** A spread is a difference: one of temperatures stays in its own unit, since 5 °C apart are no 41 °F. */
function spreadLine(setting: Setting, step: Step, where: Where, limit: Limit): LimitLine {
  const { words } = setting;
  if (kindOfLimit(limit) !== 'temperature') return writtenLine(setting, step, where, limit, words.boxes.spread);
  const { wording } = words;
  const shown = shownLimit(limit, { unit: null, standing: () => null, setToNominal: false, wording });
  return lineOf(words, words.boxes.spread, shown, step.sourceText);
}

function lineOf(words: Words, head: string, { value, also, standing }: Shown, source: string | null): LimitLine {
  const rule =
    standing === null
      ? ''
      : `${words.limits.standing} ${words.limit(standing.limit)}${standing.sourceText === null || standing.sourceText === source ? '' : `: ${standing.sourceText}`}`;
  return {
    head,
    label: '',
    value,
    also,
    source: [sourceWords(words, source), rule].filter((word) => word !== '').join('; '),
  };
}

function sourceWords(words: Words, source: string | null): string {
  return source === null ? '' : `${words.limits.source}: ${source}`;
}

/** How limits of this step are shown: in the unit of its tool, with the shop's tolerances. */
export function shownIn(setting: Setting, step: Step, where: Where, limit: Limit): Shown {
  const unit = unitOfLimit(limit);
  return shownLimit(limit, {
    unit: unit === null ? null : toolUnit(setting, step, where, kindOfUnit(unit), limit),
    mark: markAt(setting, step, where, limit),
    least: leastAt(setting, step, where, limit),
    standing: standingOf(setting),
    setToNominal: step.verb === 'torque' || step.verb === 'lock',
    wording: setting.words.wording,
  });
}

/** The shop's tolerance for a kind, where the author wrote none. */
export function standingOf({ procedure }: Setting) {
  return (kind: Kind) => procedure.shop.unlessStated.find((one) => one.kind === kind) ?? null;
}

/** A figure of a test in one line, in the unit of the tool. */
export function figureText(setting: Setting, step: Step, where: Where, limit: Limit): string {
  const unit = unitOfLimit(limit);
  return limitText(limit, setting.words.wording, {
    unit: unit === null ? null : toolUnit(setting, step, where, kindOfUnit(unit), limit),
    mark: markAt(setting, step, where, limit),
    least: leastAt(setting, step, where, limit),
  });
}

/** `3 bar per 0.001 in`, from a spec of a rate; by part number where they differ. */
export function rateText({ procedure, numbers, words }: Setting, name: string): string {
  const texts = byNumber({ numbers }, (number) => {
    const value = specFor(procedure, name, number);
    if (value?.rebuilt == null) return null;
    const source = value.sourceText === null ? '' : ` (${sourceWords(words, value.sourceText)})`;
    return `${rateWords(words, value.rebuilt, value.spec.per, value.rateFrom)}${source}`;
  });
  return texts.length === 0 ? name : texts.map(withNumbers).join('; ');
}

/** A rate as it is written, or with what it was worked out from: `94.31 bar per mm, from 200 N/mm, guide 6 mm, seat 3 mm`. */
export function rateWords(words: Words, rebuilt: Limit, each: Quantity | null, from: RateFrom | null): string {
  const { figures, facts, quantity, wording } = words;
  const amount = limitText(rebuilt, wording);
  const written = each === null ? amount : figures.per({ amount, each: quantity(each) });
  if (from === null) return written;
  const { stiffness, guide, seat } = from;
  return `${written}, ${facts.rateFrom({ stiffness: quantity(stiffness), guide: quantity(guide), seat: quantity(seat) })}`;
}

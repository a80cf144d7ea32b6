import { kindRead } from '../../analysis/reach.ts';
import { Relations } from '../../analysis/relations.ts';
import type { Words } from '../../i18n/index.ts';
import type { Step, StepOf } from '../../model/procedure.ts';
import { decimalValue, exactText } from '../../quantities/decimal.ts';
import { type Difference, type Limit, type NominalLimit, toleranceOf, unitOfLimit } from '../../quantities/index.ts';
import { byNumber, withNumbers } from '../figures/by-number.ts';
import type { StepFigures } from '../figures/step-figures.ts';
import { type PrintContext, stageSteps } from '../print-context.ts';
import type { Annotations } from './facts.ts';
import { findShapes } from './shape-of.ts';
import type { ShapeName } from './shapes/index.ts';

/** What the drawing of a family shows of a procedure: where each part is fitted, and its figures. */
export function annotate(setting: PrintContext, figures: ReadonlyMap<Step, StepFigures>): Annotations {
  const shapes = findShapes(Relations.of(setting.procedure.family));
  const steps = stageSteps(setting).map(({ step }) => step);
  const gaps = gapsOf(setting, figures, shapes);
  return {
    torques: torquesOf(setting, figures),
    steps: fittedAt(steps),
    figures: joined([lengthsOf(setting, figures, shapes), stocksOf(setting), gaps]),
    gaps: new Set(gaps.keys()),
    feeds: new Set(steps.flatMap((step) => (step.verb === 'connect' ? step.objects : [])).map(({ name }) => name)),
  };
}

/** The step at which each part is fitted last: what is fitted for trial, or to try again, comes before it. */
function fittedAt(steps: readonly Step[]): Map<string, string> {
  const found = new Map<string, string>();
  for (const step of steps) {
    if (step.verb !== 'fit' || step.forTrial) continue;
    for (const { kind, name } of [...step.objects, ...step.withObjects])
      if (kind === 'part') found.set(name, step.number);
  }
  for (const step of steps) {
    // What is only turned on is fitted by that.
    if (step.verb !== 'run-down') continue;
    for (const { name } of step.objects) if (!found.has(name)) found.set(name, step.number);
  }
  return found;
}

/** What each joint is tightened to, by part number where they differ; all in one style, with the step. */
function torquesOf(setting: PrintContext, figures: ReadonlyMap<Step, StepFigures>): Map<string, string> {
  const { words } = setting;
  const torques = new Map<string, string>();
  for (const { step, held, place } of figures.values()) {
    if ((step.verb !== 'torque' && step.verb !== 'lock') || step.limit === null || 'tries' in place) continue;
    const told = heldText(setting, held, (limit) => kept(words, centered(limit)));
    if (told === '') continue;
    const cross =
      step.verb === 'torque' && step.pattern
        ? ` ${words
            .piece('cross')
            .map(({ text }) => text)
            .join('')
            .trim()}`
        : '';
    for (const { name } of step.objects)
      if (!torques.has(name))
        torques.set(name, words.drawing.torqueAt({ torque: `${told}${cross}`, step: step.number }));
  }
  return torques;
}

type Held = StepFigures['held'];

/** The limit as rebuilt, by part number where they differ. */
function heldText(setting: PrintContext, held: Held, write: (limit: Limit) => string): string {
  const rebuilt = held.filter(({ which }) => which === 'rebuilt');
  const texts = byNumber(setting, (number) => {
    const own = rebuilt.find((one) => one.number === number || one.number === null)?.figure ?? null;
    return own === null ? null : write(own.whole);
  });
  return texts.map(withNumbers).join('; ');
}

/** Lengths that springs and other parts are measured to. */
function lengthsOf(
  setting: PrintContext,
  figures: ReadonlyMap<Step, StepFigures>,
  shapes: ReadonlyMap<string, ShapeName>,
): Map<string, string[]> {
  const { words } = setting;
  const found = new Map<string, string[]>();
  for (const { step, held } of figures.values()) {
    if (step.verb !== 'measure' || step.limit === null) continue;
    const lengths = held.filter(({ figure }) => figure?.kind === 'length');
    const text = heldText(setting, lengths, (limit) => kept(words, limit));
    if (text === '') continue;
    for (const { kind, name } of step.objects)
      if (kind === 'part' && !found.has(name))
        found.set(name, [shapes.get(name) === 'spring' ? words.drawing.springLength({ length: text }) : text]);
  }
  return found;
}

/** What lies in the drawer of each part that is chosen. */
function stocksOf({ procedure: { family, shop }, words }: PrintContext): Map<string, string[]> {
  const found = new Map<string, string[]>();
  for (const { name, chosenFrom } of family.parts) {
    const stock = shop.stocks.find((one) => one.name === chosenFrom);
    const [first, last] = [stock?.sizes[0], stock?.sizes.at(-1)];
    if (first === undefined || last === undefined || first.unit !== last.unit) continue;
    found.set(name, [kept(words, { form: 'range', low: first, high: last })]);
  }
  return found;
}

/**
 * Gaps by the part at which they are drawn: what a shim is chosen to bring a length to, and, where two parts press on one
 * needle, one after the other, its whole travel.
 */
function gapsOf(
  setting: PrintContext,
  figures: ReadonlyMap<Step, StepFigures>,
  shapes: ReadonlyMap<string, ShapeName>,
): Map<string, string[]> {
  const { family } = setting.procedure;
  const found = new Map<string, string[]>();
  const chosen = new Map<string, string>();
  for (const { step } of figures.values())
    if (step.verb === 'choose' && step.choose !== null)
      for (const { name } of step.objects) chosen.set(step.choose.test, name);
  const twice = family.parts.find(
    ({ name }) =>
      shapes.get(name) === 'needle' && family.parts.filter(({ bearsOn }) => bearsOn.includes(name)).length > 1,
  );
  for (const one of figures.values()) {
    const { step } = one;
    if (step.verb !== 'test' || kindRead(setting.procedure, step) !== 'length') continue;
    const part = chosen.get(step.gate.test) ?? twice?.name;
    const text = heldText(setting, one.held, (limit) => kept(setting.words, limit));
    if (part === undefined || text === '') continue;
    found.set(part, [
      ...(found.get(part) ?? []),
      `${testTitle(setting, one as StepFigures & { readonly step: StepOf<'test'> })} ${text}`,
    ]);
  }
  return found;
}

function testTitle(
  { procedure, words }: PrintContext,
  { step, use }: StepFigures & { readonly step: StepOf<'test'> },
): string {
  const named = use?.form === 'spec' ? use.spec : step.gate.test;
  return words.inSentence(procedure.specs.find(({ name }) => name === named)?.title ?? named);
}

/** A limit in words; its unit and its tolerance stay with their figure at the end of a line. */
function kept({ limit: write, wording }: Words, limit: Limit): string {
  const unit = unitOfLimit(limit);
  const ends = ['±', '+', '−', ...(unit === null ? [] : [wording.unit(unit, false)])];
  return ends.reduce((text, end) => text.replaceAll(` ${end}`, `\u00a0${end}`), write(limit));
}

function joined(maps: readonly ReadonlyMap<string, readonly string[]>[]): Map<string, string[]> {
  const all = new Map<string, string[]>();
  for (const map of maps) for (const [part, texts] of map) all.set(part, [...(all.get(part) ?? []), ...texts]);
  return all;
}

/** A limit as a figure with what it may be off to both sides: `45..55 N·m` is `50 N·m ±5`. What has no middle stays. */
function centered(limit: Limit): Limit {
  if (limit.form === 'then') return { ...limit, first: absolute(limit.first), angle: absolute(limit.angle) };
  if (limit.form === 'nominal') return absolute(limit);
  if (limit.form !== 'range' || limit.low.unit !== limit.high.unit) return limit;
  const { unit } = limit.low;
  const [low, high] = [decimalValue(limit.low.number), decimalValue(limit.high.number)];
  const half: Difference = { number: exactText(high.sub(low).div(2)), unit };
  return { form: 'nominal', nominal: { number: exactText(low.add(high).div(2)), unit }, plus: half, minus: half };
}

/** With a tolerance in the unit of the figure. */
function absolute(limit: NominalLimit): NominalLimit {
  const inUnit = (tolerance: Difference | null): Difference | null => {
    const size = tolerance === null || tolerance.unit !== '%' ? null : toleranceOf(limit.nominal, tolerance);
    return size === null ? tolerance : { number: exactText(size), unit: limit.nominal.unit };
  };
  return { ...limit, plus: inUnit(limit.plus), minus: inUnit(limit.minus) };
}

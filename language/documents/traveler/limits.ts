import type { Words } from '../../i18n/index.ts';
import type { Step } from '../../model/procedure.ts';
import { isAsFound, own, readingOf } from '../../model/steps.ts';
import { capital, titleOf } from '../../model/titles.ts';
import { unitOfLimit, window } from '../../quantities/index.ts';
import { type ForNumbers, forNumbers, whoseWords } from '../figures/by-number.ts';
import type { HeldFigure, Which } from '../figures/held.ts';
import type { LimitFigure } from '../figures/limit-figure.ts';
import { unitOfScale } from '../figures/scales.ts';
import type { StepFigures } from '../figures/step-figures.ts';
import type { LimitLine } from '../model.ts';
import { specTitle } from '../names.ts';
import { numbersOf, type PrintContext } from '../print-context.ts';

/** The limits of a step, large, in the unit of the tool; one line for each part number that differs. */
export function stepLimits(setting: PrintContext, figures: StepFigures): LimitLine[] {
  const { words } = setting;
  const { step, use, stretch, inTime, spread, plan } = figures;
  // A limit that differs from point to point, or from place to place, is in the table.
  const held = plan?.byPlace != null || (plan !== null && plan.plan.points.length > 0) ? [] : figures.held;
  const written = (figure: LimitFigure | null, head = '') =>
    figure === null ? [] : [lineOf(words, head, figure, step.sourceText)];
  return [
    ...(use === null || held.length === 0
      ? []
      : use.form === 'limit'
        ? held.flatMap(({ figure }) => written(figure))
        : specLines(setting, step, held, use.spec)),
    ...written(stretch, words.facts.stretch),
    ...written(inTime),
    ...written(spread, words.boxes.spread),
  ];
}

/** As found is judged by the in-service limit, what was rebuilt by the other. */
function whichOf(step: Step, served: boolean): readonly Which[] {
  // What was found is judged by the limit in service; that of a rebuilt unit beside it says how far it has gone.
  if (isAsFound(step)) return served ? ['inService', 'rebuilt'] : ['rebuilt'];
  return step.verb === 'test' || step.verb === 'set' || step.verb === 'read' ? ['rebuilt', 'whenNew'] : ['rebuilt'];
}

/** The lines of a spec: a column for each limit that counts at the step. */
export function specLines(setting: PrintContext, step: Step, held: readonly HeldFigure[], spec: string): LimitLine[] {
  // Where some number has a limit for the service, what was found is not held to the rebuilt one.
  const served = held.some(({ which, figure }) => which === 'inService' && figure !== null);
  const columns = whichOf(step, served).map((which) => {
    const lines = forNumbers(numbersOf(setting), (number) => {
      const one = held.find((other) => other.which === which && other.number === number);
      return one === undefined ? null : specLine(setting, step, one);
    });
    return lines.map((line, index) => inColumn(line, index));
  });
  const filled = columns.filter((lines) => lines.length > 0);
  // What a test is held to anyway needs no head where nothing is beside it.
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

function inColumn(line: ForNumbers<LimitLine>, index: number): LimitLine {
  return { ...line.made, head: index === 0 ? line.made.head : '', label: whoseWords(line) };
}

/** What the figure is of, before it, where the sentence of the step does not say it: `Free length of the spring`. */
function titled({ procedure }: PrintContext, step: Step, name: string, lines: LimitLine[]): LimitLine[] {
  const spec = procedure.specs.find((one) => one.name === name);
  const [first, ...others] = lines;
  // The reading that a part is chosen by is printed beside its target.
  if (spec === undefined || spec.title === spec.name || first === undefined || step.verb === 'choose') return lines;
  const title = capital(titleOf(spec));
  const said = step.verb === 'across' ? step.gate.test : readingOf(step);
  if (said !== null && capital(specTitle(procedure, said)) === title) return lines;
  if (first.head === '' && first.label === '') return [{ ...first, label: title }, ...others];
  return [{ ...first, head: first.head === '' ? title : `${title}, ${first.head}` }, ...others];
}

function specLine(
  { procedure, words }: PrintContext,
  step: Step,
  { which, value, figure }: HeldFigure,
): LimitLine | null {
  if (value === null) return null;
  const newPart = procedure.family.parts.find(({ name }) => name === value.whenNewPart);
  const head =
    which === 'whenNew' && newPart !== undefined
      ? words.limits.withNew({ part: words.inSentence(newPart.title) })
      : words.limits[which];
  if (figure !== null && !value.notRequired) return lineOf(words, head, figure, value.sourceText);
  if (which !== 'rebuilt' || (isAsFound(step) && !value.notRequired)) return null;
  const text = value.notRequired ? words.limits.notRequired : words.limits.missing;
  return { head, label: '', value: text, also: '', sources: sourcesOf(value.sourceText) };
}

/** Whether the source written in a step is beside a limit that is written in it too. */
export function saysSource(step: Step): boolean {
  const figures = [own(step, 'stretch'), own(step, 'test')?.inTime, own(step, 'spread')];
  return own(step, 'limit')?.form === 'limit' || figures.some((one) => one != null);
}

function lineOf(words: Words, head: string, figure: LimitFigure, source: string | null): LimitLine {
  const { value, standing } = figure;
  // In the unit of the tool, its ends say all that the author wrote.
  const also = isWindow(words, figure) ? '' : figure.also;
  const rule =
    standing === null
      ? null
      : `${words.limits.standing} ${words.limit(standing.limit)}${standing.sourceText === null ? '' : `: ${standing.sourceText}`}`;
  return { head, label: '', value, also, sources: sourcesOf(source, rule) };
}

function sourcesOf(...texts: readonly (string | null)[]): string[] {
  return texts.filter((text) => text !== null);
}

function isWindow({ number: written }: Words, { limit, whole, value, scale }: LimitFigure): boolean {
  const own = unitOfLimit(limit);
  const unit = unitOfScale(scale);
  const { low, high } = window(whole);
  return (
    own !== null &&
    (unit === null || unit === own) &&
    low !== null &&
    high !== null &&
    [low, high].every(({ number }) => value.includes(written(number)))
  );
}

import type { Span } from '../../i18n/index.ts';
import type { FailEntry, Repair, Step } from '../../model/procedure.ts';
import { isGate } from '../../model/steps.ts';
import { capital } from '../../model/titles.ts';
import { brief } from '../header.ts';
import type { Fact, FailPath, FailStop, FailWay, StepBlock } from '../model.ts';
import { repairNumber, repairTitle } from '../names.ts';
import { isShown, type PrintContext, shownSteps } from '../print-context.ts';
import type { SheetContext } from './context.ts';
import { findPaths } from './paths.ts';
import { buildSentence } from './sentences.ts';
import { stationFacts } from './station-facts.ts';

/**
 * What happens on a fail, to be followed with a finger. Null: the step is no gate.
 * @param build makes the steps of a repair that is here
 */
export function failPath(context: SheetContext, step: Step, build: (step: Step) => StepBlock): FailPath | null {
  if (!isGate(step)) return null;
  const { words } = context;
  const { marks, verdicts, failed } = words.boxes;
  const { onFail, stopIfFails } = step.gate;
  const said = step.verb === 'check' ? step.verdicts : [];
  const verdict = (name: 'lap' | 'reject') => {
    const found = said.find((one) => one.verdict === name);
    return found === undefined ? '' : `${verdicts[name]}: ${found.text}`;
  };
  const way = (mark: string, when: string, entries: readonly FailEntry[]): FailWay => ({
    mark,
    when,
    stops: entries.map((entry) => stopOf(context, step, entry, build)),
    // What may be tried as often as it takes is never used up.
    end: entries.some((entry) => !Number.isFinite(triesWritten(context, entry))) ? '' : words.fail.hold,
  });
  const [first, ...rest] = onFail;
  // A verdict of `lap` sends to a repair of its own, and the list is for `reject`.
  const ways =
    verdict('lap') !== '' && first !== undefined && isLap(context, first)
      ? [way(marks.lap, verdict('lap'), [first]), way(marks.reject, verdict('reject'), rest)]
      : said.length > 0
        ? [way(marks.reject, verdict('reject'), onFail)]
        : [way(failed, '', onFail)];
  return { ways, stop: stopIfFails ? words.fail.stop : '' };
}

/** Verdicts that no way of the fail path says. */
export function passingVerdicts({ procedure }: PrintContext, step: Step): Extract<Step, { verb: 'check' }>['verdicts'] {
  if (step.verb !== 'check') return [];
  const [first] = step.gate.onFail;
  const laps = first !== undefined && isLap({ procedure }, first);
  return step.verdicts.filter(({ verdict }) => verdict === 'reuse' || (verdict === 'lap' && !laps));
}

function isLap({ procedure }: Pick<PrintContext, 'procedure'>, entry: FailEntry): boolean {
  const repair = procedure.repairs.find(({ name }) => name === entry.repair);
  return repair?.inline === true && repair.steps[0]?.verb === 'lap';
}

function triesWritten({ procedure }: PrintContext, entry: FailEntry): number {
  return entry.tries ?? procedure.repairs.find(({ name }) => name === entry.repair)?.tries ?? 1;
}

export function triesText({ words }: PrintContext, tries: number | null): string {
  return tries !== null && Number.isFinite(tries) ? words.fail.tries({ count: tries }) : words.fail.noLimit;
}

function stopOf(context: SheetContext, step: Step, entry: FailEntry, build: (step: Step) => StepBlock): FailStop {
  const { words, procedure, arrangement } = context;
  const count = triesText(context, triesWritten(context, entry));
  const repair = procedure.repairs.find(({ name }) => name === entry.repair);
  const here = repair !== undefined && arrangement.embedded.get(repair) === step;
  const steps = here ? shownSteps(context, repair) : [];
  return {
    number: repairNumber(procedure, entry.repair),
    target: repairId(context, entry.repair),
    // One step says what is done by itself, and what is under the test is found by its number.
    title:
      steps.length === 1 || isUnder(context, step, entry.repair) ? '' : capital(repairWords(context, entry.repair)),
    tries: entry.furthestOut ? `${words.fail.furthest}, ${count}` : count,
    steps: steps.map((one, index) => {
      const block = ofThese(context, step, one, build(one));
      return index === 0 ? { ...block, notes: [...placeFacts(context, repair!), ...block.notes] } : block;
    }),
    // The row for the second look says it where that is at the same step.
    back: here && !returnsTo(context, entry.repair, step) ? backText(context, entry.repair) : '',
    line: here ? { file: repair.source.file, line: repair.source.range.start.line } : null,
  };
}

/** Facts of a repair that has no head: where it is done, what is worn there, what is conceded. */
function placeFacts(context: SheetContext, repair: Repair): Fact[] {
  const { allowed, because: why } = context.words.facts;
  return [
    ...stationFacts(context, [repair]),
    ...repair.allow.map(({ rule, because }) => ({ label: allowed, text: `${rule} ${why} ${because}` })),
  ];
}

/** What is done to all that the check looks at needs no list of it. */
function ofThese(context: SheetContext, check: Step, step: Step, block: StepBlock): StepBlock {
  const names = (one: Step) => one.objects.map(({ kind, name }) => `${kind} ${name}`).join(', ');
  const same = check.objects.length > 1 && names(check) === names(step);
  const sentence = same ? buildSentence(context, step, context.words.names.these) : block.sentence;
  return { ...block, sentence: withoutStop(sentence) };
}

/** It goes on behind the sentence. */
function withoutStop(spans: readonly Span[]): Span[] {
  return spans.map((span, at) => (at === spans.length - 1 ? { ...span, text: span.text.replace(/\.$/u, '') } : span));
}

function returnsTo(context: PrintContext, name: string, step: Step): boolean {
  const steps = findPaths(context.procedure).resumes.get(name) ?? [];
  return steps.length === 1 && (steps[0] === step || steps[0] === null);
}

/** The repair is with the tests of its log. */
function isUnder({ arrangement }: SheetContext, step: Step, name: string): boolean {
  return arrangement.groups.some(
    ({ stages, repairs }) =>
      stages.some(({ steps }) => steps.includes(step)) && repairs.some((repair) => repair.name === name),
  );
}

/** Id of a repair's head; empty where this sheet does not show it. */
export function repairId(context: PrintContext, name: string): string {
  const { repairs } = context.procedure;
  const repair = repairs.find((other) => other.name === name);
  if (repair === undefined || (repair.steps.length > 0 && shownSteps(context, repair).length === 0)) return '';
  return `repair-${repairs.indexOf(repair) + 1}`;
}

/** Of a head, and of the box that leads to it. */
const longestTitle = 160;

/** Where a unit goes on after a repair: by number, as it may be sent there from a later step. */
export function backText(setting: PrintContext, name: string): string {
  const { words, procedure } = setting;
  const steps = (findPaths(procedure).resumes.get(name) ?? []).filter(
    (step) => step === null || isShown(setting, step),
  );
  const numbers = steps.flatMap((step) => step?.number ?? []);
  if (numbers.length === 0 || steps.includes(null)) return words.place.backText;
  const [first, ...others] = numbers;
  return others.length === 0
    ? words.place.retest({ step: first! })
    : words.place.retestFirst({ steps: numbers.join(', ') });
}

/** Title of a repair; one written inside `on fail` is called by what it does. */
export function repairWords(setting: PrintContext, name: string): string {
  const repair = setting.procedure.repairs.find((other) => other.name === name);
  const [step] = repair?.steps ?? [];
  if (repair?.inline !== true || step === undefined) return repairTitle(setting.procedure, name);
  const words = buildSentence(setting, step)
    .map(({ text }) => text)
    .join('')
    .replace(/\.$/u, '');
  // Its one step says it whole.
  return brief(words, longestTitle);
}

import type { FailEntry, Step } from '../../model/procedure.ts';
import { isGate } from '../../model/steps.ts';
import { capital } from '../../model/titles.ts';
import { brief } from '../header.ts';
import type { FailPath, FailStop, FailWay } from '../model.ts';
import { repairNumber, repairTitle } from '../names.ts';
import { isShown, type PrintContext, shownSteps } from '../print-context.ts';
import { findTries } from './boxes.ts';
import { findPaths } from './paths.ts';
import { buildSentence } from './sentences.ts';

/** What happens on a fail, to be followed by hand from box to box. Null: the step is no gate. */
export function failPath(setting: PrintContext, step: Step): FailPath | null {
  if (!isGate(step)) return null;
  const { words } = setting;
  const { onFail, stopIfFails } = step.gate;
  const laps = step.verb === 'check' && step.verdicts.some(({ verdict }) => verdict === 'lap');
  const [first, ...rest] = onFail;
  // A verdict of `lap` sends to a repair of its own, and the list is for `reject`.
  const ways =
    laps && first !== undefined && isLap(setting, first)
      ? [wayOf(setting, [first], words.boxes.verdicts.lap), wayOf(setting, rest, words.boxes.verdicts.reject)]
      : [wayOf(setting, onFail, '')];
  return { lead: words.fail.if, ways, units: setting.columns.length, stop: stopIfFails ? words.fail.stop : '' };
}

function isLap(setting: PrintContext, entry: FailEntry): boolean {
  const repair = setting.procedure.repairs.find(({ name }) => name === entry.repair);
  return repair?.inline === true && repair.steps[0]?.verb === 'lap';
}

function wayOf(setting: PrintContext, entries: readonly FailEntry[], verdict: string): FailWay {
  // What may be tried as often as it takes is never used up.
  const endless = entries.some((entry) => !Number.isFinite(triesWritten(setting, entry)));
  return {
    verdict,
    stops: entries.map((entry) => stopOf(setting, entry)),
    end: endless ? '' : setting.words.fail.hold,
  };
}

function triesWritten({ procedure }: PrintContext, entry: FailEntry): number {
  return entry.tries ?? procedure.repairs.find(({ name }) => name === entry.repair)?.tries ?? 1;
}

function stopOf(setting: PrintContext, entry: FailEntry): FailStop {
  const { words, procedure } = setting;
  const tries = triesWritten(setting, entry);
  const count = Number.isFinite(tries) ? words.fail.tries({ count: tries }) : words.fail.noLimit;
  const boxes = findTries(setting, entry.repair, entry.tries);
  return {
    number: repairNumber(procedure, entry.repair),
    target: repairId(setting, entry.repair),
    title: capital(repairWords(setting, entry.repair)),
    tries: entry.furthestOut ? `${words.fail.furthest}, ${count}` : count,
    boxes: Array.from({ length: boxes }, (_, index) => String(index + 1)),
  };
}

/** Id of a repair's head; empty where this sheet does not show it. */
function repairId(setting: PrintContext, name: string): string {
  const { repairs } = setting.procedure;
  const repair = repairs.find((other) => other.name === name);
  if (repair === undefined || (repair.steps.length > 0 && shownSteps(setting, repair).length === 0)) return '';
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

import type { FailEntry, Step } from '../model/procedure.ts';
import type { Span } from './model.ts';
import { repairNumber, repairTitle } from './names.ts';
import { sentenceOf } from './sentences.ts';
import type { Setting } from './setting.ts';

/** What happens on a fail, in words a hand can follow; empty for a step that is no gate. */
export function failPath(setting: Setting, step: Step): Span[] {
  if (step.gate === null) return [];
  const { words } = setting;
  const { onFail, stopIfFails } = step.gate;
  const stop: Span[] = stopIfFails ? [{ text: ` ${words.fail.stop}` }] : [];
  const laps = step.verdicts.some(({ verdict }) => verdict === 'lap');
  const [first, ...rest] = onFail;
  // A verdict of `lap` sends to a repair of its own, and the list is for `reject`.
  if (laps && first !== undefined && isLap(setting, first)) {
    return [
      { text: `${words.boxes.verdicts.lap}:`, strong: true },
      { text: ` ${entryWords(setting, first)}. ` },
      { text: `${words.boxes.verdicts.reject}:`, strong: true },
      { text: ` ${pathWords(setting, rest)}.` },
      ...stop,
    ];
  }
  return [{ text: words.fail.if, strong: true }, { text: ` ${pathWords(setting, onFail)}.` }, ...stop];
}

function isLap(setting: Setting, entry: FailEntry): boolean {
  const repair = setting.procedure.repairs.find(({ name }) => name === entry.repair);
  return repair?.inline === true && repair.steps[0]?.verb === 'lap';
}

function pathWords(setting: Setting, entries: readonly FailEntry[]): string {
  const { words } = setting;
  return [...entries.map((entry) => entryWords(setting, entry)), words.fail.hold].join(`; ${words.fail.andThen} `);
}

function entryWords(setting: Setting, entry: FailEntry): string {
  const { words } = setting;
  const tries = entry.tries ?? setting.procedure.repairs.find(({ name }) => name === entry.repair)?.tries ?? 1;
  const count = Number.isFinite(tries) ? words.fail.tries({ count: tries }) : words.fail.noLimit;
  const furthest = entry.furthestOut ? ` ${words.fail.furthest}` : '';
  return `${words.inSentence(repairWords(setting, entry.repair))} (${repairNumber(setting.procedure, entry.repair)})${furthest}, ${count}`;
}

/** Title of a repair; one written inside `on fail` is called by what it does. */
export function repairWords(setting: Setting, name: string): string {
  const repair = setting.procedure.repairs.find((other) => other.name === name);
  const [step] = repair?.steps ?? [];
  if (repair?.inline !== true || step === undefined) return repairTitle(setting.procedure, name);
  return sentenceOf(setting, step)
    .map(({ text }) => text)
    .join('')
    .replace(/\.$/u, '');
}

import { type Called, type Caution, type Topic, topics } from '../../analysis/cautions/index.ts';
import type { Words } from '../../i18n/index.ts';
import type { Hazard, Repair, Stage, Step } from '../../model/procedure.ts';
import { capital } from '../../model/titles.ts';
import type { CautionBlock, Fact, PlaceBlock, SafetyBlock } from '../model.ts';
import { repairNumber } from '../names.ts';
import { shownSteps } from '../print-context.ts';
import type { SheetContext } from './context.ts';

/** What holds in the whole shop all day, and warns of no sudden hurt at a step. */
const rules: ReadonlySet<Topic> = new Set(['alone', 'disposal', 'oil-on-skin', 'rags']);

/** What may cost a hand or a life: in full at the place where it can happen. */
const extreme: ReadonlySet<Topic> = new Set(['injection', 'rail', 'electrical']);

/** The author's own warning. */
export function ownCaution({ signals }: Words, { word, text }: Hazard): CautionBlock {
  return { word, label: signals[word], text };
}

function fullCaution({ cautions, signals }: Words, { topic, word }: Caution): CautionBlock {
  return { word, label: signals[word], text: cautions[topic].text };
}

/** What is said about spray through the skin at the foot of each page where it can happen; null: nothing is under pressure. */
export function pressedWords({ words, cautions }: SheetContext) {
  if (!cautions.pressure) return null;
  const alert: CautionBlock = {
    word: 'DANGER',
    label: words.signals.DANGER,
    text: shortOf(words, 'injection'),
  };
  return { alert, firstAid: words.firstAid };
}

function shortOf({ cautions }: Words, topic: Topic): string {
  const said: { readonly text: string; readonly short?: string } = cautions[topic];
  return said.short ?? said.text;
}

/** Cautions of a place that its head says: those of its own, and of the repairs that are in its checks. */
function headOf(context: SheetContext, place: Stage | Repair): Caution[] {
  const { cautions, arrangement } = context;
  const own = [...(cautions.stages.get(place.name) ?? []), ...(cautions.repairs.get(place.name) ?? [])].filter(
    () => context.procedure.stages.includes(place as Stage) || context.procedure.repairs.includes(place as Repair),
  );
  const standing = [...arrangement.embedded].flatMap(([repair, step]) =>
    place.steps.includes(step) ? (cautions.repairs.get(repair.name) ?? []) : [],
  );
  const seen = new Set<Topic>();
  return [...own, ...standing].filter(({ topic }) => !seen.has(topic) && seen.add(topic));
}

/** Section messages: the worst in full where the family is tested, else a line for each. */
export function sectionMessages(
  context: SheetContext,
  places: readonly (Stage | Repair)[],
  inFull: boolean,
  saidAbove: readonly (Stage | Repair)[] = [],
): Pick<PlaceBlock, 'danger' | 'warnings'> {
  const { words } = context;
  const seen = new Set<Topic>(saidAbove.flatMap((place) => headOf(context, place)).map(({ topic }) => topic));
  const all = places
    .flatMap((place) => headOf(context, place))
    .filter(({ topic }) => !rules.has(topic) && !seen.has(topic) && seen.add(topic));
  const full = inFull ? all.find(({ topic }) => extreme.has(topic)) : undefined;
  return {
    danger: full === undefined ? null : fullCaution(words, full),
    warnings: all
      .filter((one) => one !== full)
      .map(({ topic, word }) => ({ label: word === 'DANGER' ? words.signals[word] : '', text: shortOf(words, topic) })),
  };
}

/** Grouped messages: each hazard of the sheet once, in full, with the steps that it holds for. */
export function safetyBlock(context: SheetContext): SafetyBlock {
  const { words, procedure, cautions } = context;
  const places = [...procedure.stages, ...procedure.repairs].filter(
    (place) => place.steps.length === 0 || shownSteps(context, place).length > 0,
  );
  const heads = places.flatMap((place) => headOf(context, place));
  const found = topics.flatMap((topic) => {
    const first = heads.find((one) => one.topic === topic);
    return first === undefined ? [] : [first];
  });
  const order = ['DANGER', 'WARNING', 'CAUTION', 'NOTICE'] as const;
  const { safety } = words;
  return {
    kind: 'safety',
    title: safety.title,
    lead: safety.lead,
    // Nobody signs what is for the wall.
    read: context.options.form === 'instruction' ? '' : safety.read,
    firstAid: cautions.pressure ? words.firstAid : null,
    where: safety.where,
    rows: [
      ...procedure.hazards.map((one) => ({ ...ownCaution(words, one), steps: safety.everywhere })),
      ...found
        .filter(({ topic }) => !rules.has(topic))
        .sort((a, b) => order.indexOf(a.word) - order.indexOf(b.word))
        .map((one) => ({ ...fullCaution(words, one), steps: stepsOf(context, one.topic) })),
    ],
    rules: found
      .filter(({ topic }) => rules.has(topic))
      .map(({ topic }): Fact => ({ label: safety.rule, text: words.cautions[topic].text })),
  };
}

/** `2.2–2.5, 5, R1–R3`: the steps of a hazard; a place as a whole by its number. */
function stepsOf(context: SheetContext, topic: Topic): string {
  const { procedure, called } = context;
  const runs: string[] = [];
  const whole: number[] = [];
  const has = (step: Step) => called(step).some((one) => one.topic === topic && one.headOnly !== true);
  for (const [index, stage] of procedure.stages.entries()) {
    const steps = shownSteps(context, stage);
    if (steps.some(has)) runs.push(...runsOf(steps, has, String(index + 1)));
    else if (isAtHead(context, stage, topic)) runs.push(String(index + 1));
  }
  for (const [index, repair] of procedure.repairs.entries())
    if (shownSteps(context, repair).some(has) || isAtHead(context, repair, topic)) whole.push(index);
  for (let at = 0; at < whole.length; ) {
    let end = at;
    while (whole[end + 1] === whole[end]! + 1) end++;
    const name = (index: number) => repairNumber(procedure, procedure.repairs[whole[index]!]!.name);
    runs.push(end > at ? `${name(at)}–${name(end)}` : name(at));
    at = end + 1;
  }
  return runs.join(', ');
}

function isAtHead({ cautions, procedure }: SheetContext, place: Stage | Repair, topic: Topic): boolean {
  const heads = procedure.stages.includes(place as Stage) ? cautions.stages : cautions.repairs;
  return (heads.get(place.name) ?? []).some((one) => one.topic === topic);
}

/** `2.2–2.5`; the number of the stage where it is all of its steps. */
function runsOf(steps: readonly Step[], has: (step: Step) => boolean, stage: string): string[] {
  if (steps.every(has)) return [stage];
  const runs: Step[][] = [];
  steps.forEach((step, index) => {
    if (!has(step)) return;
    const last = runs.at(-1);
    if (last !== undefined && last.at(-1) === steps[index - 1]) last.push(step);
    else runs.push([step]);
  });
  return runs.map((run) => (run.length > 1 ? `${run[0]!.number}–${run.at(-1)!.number}` : run[0]!.number));
}

/** What the triangle at a step is called: the hazards by the first words of their lines. */
export function alertName({ words }: SheetContext, called: readonly Called[]): string {
  const lines = called
    .filter(({ topic, repeats, headOnly }) => repeats && headOnly !== true && !rules.has(topic))
    .map(({ topic }) => shortOf(words, topic).split(/[:,.;]/u)[0]!);
  return capital(words.list(lines));
}

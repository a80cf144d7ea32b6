import type { StepCautions } from '../../analysis/cautions/index.ts';
import { shimChoices } from '../../analysis/shim-choices.ts';
import type { Words } from '../../i18n/index.ts';
import type { Choice, Hold, Repair, Stage, Step, StepOf } from '../../model/procedure.ts';
import { specFor } from '../../model/spec-for.ts';
import { own } from '../../model/steps.ts';
import type { Limit } from '../../quantities/index.ts';
import { kindOfLimit, kindOfUnit } from '../../quantities/index.ts';
import { advisedOf } from '../../recommendations/advised.ts';
import { spreadWords } from '../../recommendations/sentences.ts';
import { matchedSets } from '../../recommendations/set-shims.ts';
import { verbsThat } from '../../syntax/verbs/index.ts';
import { isEach, stepGrids } from './boxes.ts';
import { byNumber, withNumbers } from './by-number.ts';
import { fullCaution, ownCaution, shortCaution } from './cautions.ts';
import { failPath } from './fail-path.ts';
import { ceilingText, limitText } from './figures.ts';
import { isGateStep } from './gates.ts';
import { gaugeWindows } from './gauge-window.ts';
import { holdLookup } from './hold-lookup.ts';
import { figureText, rateText, saysSource, specLines, stepLimits, useOf } from './limits.ts';
import type { CautionBlock, Fact, LimitLine, StepBlock } from './model.ts';
import { capital, fluidTitle, specTitle } from './names.ts';
import { isShown, type Setting } from './print-context.ts';
import { sentenceOf } from './sentences.ts';
import { settlingFacts } from './settling-allowance.ts';
import { shimCharts } from './shim-chart.ts';
import { shimLookup } from './shim-lookup.ts';
import { toolUnit, toolWords } from './units.ts';
import { passFacts, wrenchSettings } from './wrench-setting.ts';

/** One step with everything that stands around it, in reading order. */
export function stepBlock(
  setting: Setting,
  place: Stage | Repair,
  step: Step,
  cautions: StepCautions | undefined,
  inRepair: boolean,
): StepBlock {
  const { words } = setting;
  return {
    kind: 'step',
    id: stepId(step.number),
    number: step.number,
    verb: step.verb,
    key: step.key,
    line: { file: step.source.file, line: step.source.range.start.line },
    gate: isGateStep(step),
    pressure: cautions?.pressure ?? false,
    cautions: cautionBlocks(setting, step, cautions),
    only:
      step.only === null
        ? null
        : words.only({ numbers: step.only.filter((name) => isShown(setting, { ...step, only: [name] })).join(', ') }),
    sentence: sentenceOf(setting, step),
    limits: [...stepLimits(setting, step, place), ...unitLines(setting, step)],
    lookups: [...holdLookup(setting, step, place), ...shimLookup(setting, step)],
    drawings: shimCharts(setting, step),
    facts: facts(setting, step, place, inRepair),
    // A repair is done up to so many times: its boxes stand in the rows for the tries.
    grids: inRepair ? [] : stepGrids(setting, step, place),
    lines: linesOf(setting, step),
    fail: failPath(setting, step),
    notes: notes(setting, step),
  };
}

/** Lines to write on: who signs, and what was found on a unit that comes in. */
function linesOf({ words: { lines } }: Setting, { verb }: Step): string[] {
  if (verb === 'receive') return [lines.found];
  return verb === 'sign-off' || verb === 'hold-for' ? [lines.name, lines.date] : [];
}

/** Id of a step's element, the same in the preview and the printed page. */
export function stepId(number: string): string {
  return `step-${number}`;
}

/** Full texts, the author's own, then short lines. */
function cautionBlocks({ words }: Setting, step: Step, cautions: StepCautions | undefined): CautionBlock[] {
  return [
    ...(cautions?.full ?? []).map((one) => fullCaution(words, one)),
    ...step.hazards.map((one) => ownCaution(words, one)),
    ...(cautions?.short ?? []).map((one) => shortCaution(words, one)),
  ];
}

/** What the hand needs to know besides the limit: tool, thread, hold, speed, gauge, what to accept. */
function facts(setting: Setting, step: Step, place: Stage | Repair, inRepair: boolean): Fact[] {
  const { words } = setting;
  const label = words.facts;
  return [
    ...step.tools.map((tool) => ({
      label: label.with,
      text: toolWords(setting, tool),
    })),
    ...wrenchSettings(setting, step),
    ...gaugeWindows(setting, step, place),
    ...('holder' in step && step.holder !== null && step.verb !== 'clamp'
      ? [{ label: label.held, text: step.holder }]
      : []),
    ...jointFacts(setting, step),
    ...passFacts(setting, step),
    ...(step.air === null ? [] : [{ label: label.air, text: limitText(step.air, words.wording) }]),
    ...('gauge' in step && step.gauge !== null ? [{ label: label.gauge, text: label[step.gauge] }] : []),
    ...openGauge(setting, step),
    ...testFacts(setting, step, place),
    ...chooseFacts(setting, step, place),
    ...screwFacts(setting, step),
    ...comparedFacts(setting, step),
    ...matchFacts(setting, step),
    ...('fluid' in step && step.fluid !== null && !saysFluid.has(step.verb)
      ? [
          {
            label: label.fluid,
            text: fluidTitle(setting.procedure, step.fluid),
          },
        ]
      : []),
    ...(step.verb === 'check' && (isEach(step) || inRepair)
      ? step.verdicts.map(({ verdict, text }) => ({ label: words.boxes.verdicts[verdict], text }))
      : []),
    ...('accept' in step && step.accept !== null ? [{ label: label.accept, text: step.accept }] : []),
    ...('reject' in step && step.reject !== null ? [{ label: label.reject, text: step.reject }] : []),
    ...(step.sourceText === null || saysSource(step) ? [] : [{ label: words.limits.source, text: step.sourceText }]),
    ...(step.takes === null ? [] : [{ label: label.takes, text: words.quantity(step.takes) }]),
  ];
}

/** Verbs whose sentence names the fluid. */
const saysFluid: ReadonlySet<string> = new Set(['wash', 'rinse', 'soak', 'wipe', 'clean-outside', 'oil']);

function jointFacts(setting: Setting, step: Step): Fact[] {
  if (!turns.has(step.verb)) return [];
  const label = setting.words.facts;
  const joints = setting.procedure.family.joints.filter(({ part }) => step.objects.some(({ name }) => name === part));
  const tightens = step.verb === 'run-down' || step.verb === 'torque' || step.verb === 'lock';
  const facts: Fact[] = [];
  const add = (fact: Fact) => {
    if (!facts.some((other) => other.label === fact.label && other.text === fact.text)) facts.push(fact);
  };
  for (const joint of joints) {
    if (joint.leftHand)
      add({
        label: '',
        text: tightens ? label.leftHandTighten : label.leftHandSlacken,
      });
    if (joint.thread !== null && tightens)
      add({
        label: label.thread,
        text:
          joint.solid === null
            ? joint.thread
            : label.ofClass({ thread: joint.thread, class: joint.solid.propertyClass }),
      });
    if (joint.oiled && tightens) add({ label: label.oilThread, text: label.oilThreadText });
    if (joint.handTightIsFinal && step.verb === 'run-down') add({ label: label.handTight, text: '' });
  }
  if (step.verb === 'torque' && step.oiled) add({ label: label.oilThread, text: label.oilThreadText });
  return facts;
}

/** Verbs that turn a threaded part. */
const turns: ReadonlySet<string> = new Set(verbsThat('turns'));

function testFacts(setting: Setting, step: Step, place: Stage | Repair): Fact[] {
  const { words } = setting;
  const label = words.facts;
  const facts: Fact[] = [];
  const figure = (limit: Limit) => figureText(setting, step, place, limit);
  const test = own(step, 'test');
  const at = own(step, 'at');
  if (test?.hold != null)
    facts.push({
      label: label.hold,
      text: holdWords(setting, test.hold, figure(test.hold.amount)),
    });
  if (test?.from != null) facts.push({ label: label.from, text: figure(test.from) });
  if (test?.to != null) facts.push({ label: label.to, text: figure(test.to) });
  if (test?.forTime != null) facts.push({ label: label.forTime, text: figure(test.forTime) });
  if (at != null) facts.push({ label: label.at, text: figure(at) });
  if (test?.neverAbove != null)
    facts.push({
      label: label.never,
      text: ceilingText(
        words,
        test.neverAbove,
        toolUnit(setting, step, place, kindOfUnit(test.neverAbove.unit), { form: 'at most', most: test.neverAbove }),
      ),
    });
  for (const text of conditionsOf(words, step)) facts.push({ label: label.conditions, text });
  return facts;
}

/** What a reading is taken with: air or vacuum, and the author's own words. */
export function conditionsOf({ facts: { gases } }: Words, step: Step): string[] {
  if (!('conditions' in step)) return [];
  return [...(step.gas === null ? [] : [gases[step.gas]]), ...step.conditions];
}

/** `20 bar below the opening pressure read`. */
export function holdWords(setting: Setting, { relation, of }: Hold, text: string): string {
  if (relation === 'at') return text;
  const { facts: said, inSentence } = setting.words;
  const name = of === null || of === 'reading' ? said.pressure : inSentence(specTitle(setting.procedure, of));
  return said[relation]({ amount: text, name });
}

/** In a job, what to fit in each unit or how far to turn it, by its last reading: as large as a limit. */
function unitLines(setting: Setting, step: Step): LimitLine[] {
  const { words } = setting;
  const { job } = setting.options;
  const test = own(step, 'choose')?.test ?? (step.verb === 'set' ? step.reading : null);
  if (job === null || test === null) return [];
  const parts = step.objects.map(({ name }) => name);
  return advisedOf(job, words).flatMap(({ unit, test: of, part, reading, sentence }) =>
    sentence === null || of !== test || !parts.includes(part) || !setting.units.includes(unit)
      ? []
      : [
          {
            head: '',
            label: words.facts.unit({ place: unit.place, reading: words.quantity(reading.value) }),
            value: sentence,
            also: '',
            source: '',
          },
        ],
  );
}

/** Where some step shuts the gauge, each that reads it says that it is open: a shut one shows nothing, and zero as well. */
function openGauge(setting: Setting, step: Step): Fact[] {
  const { procedure, words } = setting;
  const shuts = [...procedure.stages, ...procedure.repairs].some(({ steps }) =>
    steps.some((one) => own(one, 'gauge') === 'shut'),
  );
  if (!shuts || own(step, 'gauge') != null || !readsGauge(setting, step)) return [];
  return [{ label: words.facts.gauge, text: words.facts.open }];
}

function readsGauge(setting: Setting, step: Step): boolean {
  if (step.verb === 'relieve') return true;
  if (step.verb !== 'read' && step.verb !== 'set' && step.verb !== 'test') return false;
  const test = own(step, 'test');
  if (test?.hold != null || test?.from != null) return true;
  // What is read is said outright, or by what it is held to.
  const use = useOf(setting, step);
  const spec = use?.form === 'spec' ? setting.procedure.specs.find(({ name }) => name === use.spec) : undefined;
  const judged = use?.form === 'limit' ? kindOfLimit(use.limit) : (spec?.kind ?? null);
  return (test?.reads ?? judged) === 'pressure';
}

/** Of a mixed set, which units are compared: each with those of its own part number. */
function comparedFacts({ options, units, words }: Setting, step: Step): Fact[] {
  if (options.job === null || step.verb !== 'across') return [];
  const places = new Map<string, string[]>();
  for (const { numberText, place } of units) places.set(numberText, [...(places.get(numberText) ?? []), place]);
  if (places.size < 2) return [];
  const text = [...places].map(([number, of]) => {
    const said = { number, units: words.list(of) };
    return of.length > 1 ? words.facts.comparedOf(said) : words.facts.notCompared(said);
  });
  return [{ label: words.facts.compare, text: text.join('; ') }];
}

/** In a job, which units are opened to bring the set together, and with which shims. Nothing where the spread is kept. */
function matchFacts({ options: { job }, words }: Setting, step: Step): Fact[] {
  if (job === null || step.verb !== 'across') return [];
  const { facts: said, quantity } = words;
  return matchedSets(job).flatMap(({ number, choices, spread, settled, stands, read, units, across, kept }) => {
    if (across?.step !== step || choices === null || choices.every(({ shims }) => shims === null)) return [];
    const told = choices.map(({ stand, shims }) => {
      const fitted = { place: stand.unit.place, shim: (shims ?? [stand.now]).map(quantity).join(' + ') };
      return shims === null ? said.ofUnitStays(fitted) : said.ofUnit(fitted);
    });
    const { like } = stands[0]!;
    const ends = [
      said.spreads({ spread: spreadWords(words, spread!, like), read, all: units }),
      ...(settled === null ? [] : [said.spreadsSettled({ spread: spreadWords(words, settled, like) })]),
      ...(kept ? [] : [words.advice.notKept]),
    ];
    const label = number === null ? said.forSet : said.forSetOf({ number });
    return [{ label, text: `${told.join(', ')}; ${ends.join('; ')}` }];
  });
}

/** What one turn of the screw brings. */
function screwFacts({ procedure, words }: Setting, step: Step): Fact[] {
  if (step.verb !== 'set') return [];
  return procedure.family.adjusters.flatMap(({ part, sets, rate }) =>
    rate === null || sets !== step.reading || !step.objects.some(({ name }) => name === part)
      ? []
      : [{ label: words.facts.rate, text: words.facts.turnedIn({ rate: words.quantity(rate) }) }],
  );
}

function chooseFacts(setting: Setting, step: Step, place: Stage | Repair): Fact[] {
  if (step.verb !== 'choose') return [];
  const { words } = setting;
  const { choose, rate } = step;
  // Also where the step does not say it: over this the coils of the spring bind.
  const most = shimChoices(setting.procedure).find((one) => one.step === step)?.most ?? step.neverAbove;
  return [
    ...(choose === null ? [] : aimFacts(setting, step, choose, place)),
    ...(rate === null ? [] : [{ label: rateTitle(setting, rate), text: rateText(setting, rate) }]),
    ...(most === null ? [] : [{ label: words.facts.never, text: words.quantity(most) }]),
  ];
}

function aimFacts(setting: Setting, step: StepOf<'choose'>, { test, target }: Choice, place: Stage | Repair): Fact[] {
  const { words } = setting;
  const name = words.inSentence(specTitle(setting.procedure, test));
  const to =
    target === null
      ? ''
      : target.form === 'spec'
        ? specLines(setting, step, place, target.spec)
            .map(({ label, value }) => (label === '' ? value : `${label} ${value}`))
            .join(', ')
        : limitText(target.limit, words.wording);
  return [
    { label: words.facts.target, text: to === '' ? name : words.facts.targetTo({ name, target: to }) },
    ...(target?.form === 'spec' ? aimedBy(setting, target.spec) : []),
    ...settlingFacts(setting, step, place),
  ];
}

/** What the aim is and where it is from, as the author says it of its spec. */
function aimedBy(setting: Setting, name: string): Fact[] {
  const { procedure, words } = setting;
  const spec = procedure.specs.find((one) => one.name === name);
  const title = spec === undefined || spec.title === spec.name ? '' : words.inSentence(spec.title);
  const sources = byNumber(setting, (number) => specFor(procedure, name, number)?.sourceText ?? null);
  if (sources.length === 0) return title === '' ? [] : [{ label: '', text: capital(title) }];
  const text = sources.map(withNumbers).join('; ');
  return [{ label: words.limits.source, text: title === '' ? text : `${text} (${title})` }];
}

function rateTitle({ procedure, words }: Setting, name: string): string {
  const spec = procedure.specs.find((one) => one.name === name);
  return spec === undefined || spec.title === spec.name ? words.facts.rate : capital(spec.title);
}

function notes({ words }: Setting, step: Step): Fact[] {
  const label = words.facts;
  return [
    ...(step.note === null ? [] : [{ label: label.note, text: step.note }]),
    ...step.allow.map(({ rule, because }) => ({
      label: label.allowed,
      text: `${rule} ${label.because} ${because}`,
    })),
  ];
}

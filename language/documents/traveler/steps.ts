import { shimChoices } from '../../analysis/shims.ts';
import type { Words } from '../../i18n/index.ts';
import type { Choice, Step } from '../../model/procedure.ts';
import type { Allow } from '../../model/source.ts';
import { own } from '../../model/steps.ts';
import { capital } from '../../model/titles.ts';
import { limitText } from '../../quantities/index.ts';
import { buildRecommendations } from '../../recommendations/advised.ts';
import { spreadWords } from '../../recommendations/sentences.ts';
import { matchedSets } from '../../recommendations/set-shims.ts';
import { verbsThat } from '../../syntax/verbs/index.ts';
import { whoseWords, withNumbers } from '../figures/by-number.ts';
import { holdTables } from '../figures/hold-table.ts';
import { holdLookup, inRows, shimLookups } from '../figures/lookups.ts';
import { rateText, specSources } from '../figures/rates.ts';
import { shimTables } from '../figures/shim-table.ts';
import { readsGauge, type StepFigures } from '../figures/step-figures.ts';
import { testFacts } from '../figures/test-facts.ts';
import type { Fact, SignBoxes, StepBlock } from '../model.ts';
import { baseTitle, fluidTitle, specTitle } from '../names.ts';
import type { PrintContext } from '../print-context.ts';
import { toolWords } from '../tools.ts';
import type { SheetContext } from './context.ts';
import { dangerFacts } from './danger-facts.ts';
import { failPath, passingVerdicts } from './fail-path.ts';
import { isGateStep } from './gates.ts';
import { gaugeWindows } from './gauge-window.ts';
import { saysSource, specLines, stepLimits } from './limits.ts';
import { planTables } from './plan-tables.ts';
import { comparedRow, setBoxes, stepRows } from './rows.ts';
import { alertName, ownCaution } from './safety.ts';
import { buildSentence } from './sentences.ts';
import { passFacts, wrenchSettings } from './wrench-setting.ts';

/** One step with everything around it, in reading order. */
export function stepBlock(context: SheetContext, step: Step): StepBlock {
  const { words } = context;
  const figures = context.figures.get(step)!;
  const { cautions } = figures;
  const inRepair = context.procedure.repairs.some(({ steps }) => steps.includes(step));
  const logged = isLogged(context, step);
  return {
    kind: 'step',
    id: stepId(step.number),
    number: step.number,
    verb: step.verb,
    key: step.key,
    line: { file: step.source.file, line: step.source.range.start.line },
    gate: isGateStep(step),
    pressure: cautions?.pressure ?? false,
    alert: alertName(context, context.called(step)),
    cautions: step.hazards.map((one) => ownCaution(words, one)),
    only: step.only === null ? null : onlyWords(context, step.only),
    sentence: buildSentence(context, step),
    limits: stepLimits(context, figures),
    lookups: [
      ...holdLookup(context, holdTables(context, step, figures.place)),
      ...shimLookups(context, step, shimTables(context, step)).flatMap(inRows),
    ],
    tables: planTables(context, figures),
    facts: facts(context, figures),
    notes: notes(context, step),
    // A repair is done up to so many times: what it records is in the log.
    rows: inRepair || logged ? [] : [...comparedRow(context, figures), ...stepRows(context, figures)],
    set: setBoxes(context, figures),
    logged,
    fail: failPath(context, step, (one) => stepBlock(context, one)),
    sign: signBoxes(context, step),
    close: null,
  };
}

/** It is on a line of the log. */
function isLogged({ arrangement }: SheetContext, step: Step): boolean {
  const { verb } = step;
  if (verb === 'check' || verb === 'across') return false;
  if (verb === 'measure' && step.limit !== null) return false;
  return arrangement.groups.some(({ stages }) => stages.some(({ steps }) => steps.includes(step)));
}

/** `Only A-220, unit 5`. */
function onlyWords({ words, units, options, ...setting }: SheetContext, only: readonly string[]): string {
  const shown = only.filter((name) => setting.numbers.some((number) => number.name === name));
  const numbers = shown.join(', ');
  const places = units.flatMap(({ number, place }) => (number !== null && shown.includes(number) ? [place] : []));
  if (options.job === null || places.length === 0) return words.only({ numbers });
  return words.onlyUnits({ numbers, count: places.length, units: words.list(places) });
}

/** Who signs, and for what; a place for a time of its own, since a sheet comes out the same whenever it is printed. */
function signBoxes({ words, columns }: SheetContext, { verb }: Step): SignBoxes | null {
  const { sign } = words;
  const signed = [
    { label: sign.name, share: 3 },
    { label: sign.signature, share: 3 },
    { label: sign.date, share: 2 },
  ];
  if (verb === 'hold-for') return { statement: '', boxes: signed };
  if (verb !== 'sign-off') return null;
  const several = columns.length > 1;
  return {
    statement: several ? sign.statement : sign.statementOne,
    boxes: [
      { label: several ? sign.released : sign.releasedOne, share: 2 },
      { label: several ? sign.held : sign.heldOne, share: 2 },
      ...signed,
    ],
  };
}

/** Id of a step's element, the same in the preview and the printed page. */
function stepId(number: string): string {
  return `step-${number}`;
}

/** What the hand needs to know besides the limit: tool, thread, hold, speed, gauge, what to accept. */
function facts(setting: PrintContext, figures: StepFigures): Fact[] {
  const { words } = setting;
  const { step } = figures;
  const label = words.facts;
  return [
    ...step.tools.map((tool) => ({
      label: label.with,
      text: toolWords(setting, tool),
    })),
    ...wrenchSettings(setting, figures),
    ...gaugeWindows(setting, figures),
    ...('holder' in step && step.holder !== null && step.verb !== 'clamp'
      ? [{ label: label.held, text: step.holder }]
      : []),
    ...jointFacts(setting, figures),
    ...passFacts(setting, figures),
    ...(step.air === null ? [] : [{ label: label.air, text: limitText(step.air, words.wording) }]),
    ...('gauge' in step && step.gauge !== null ? [{ label: label.gauge, text: label[step.gauge] }] : []),
    ...openGauge(setting, figures),
    ...testFacts(setting, figures),
    ...chooseFacts(setting, figures),
    ...(step.verb === 'set' ? adviceFacts(setting, step) : []),
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
    ...passingVerdicts(setting, step).map(({ verdict, text }) => ({
      label: `${words.boxes.marks[verdict]} ${words.boxes.verdicts[verdict]}`,
      text,
    })),
    ...('accept' in step && step.accept !== null ? [{ label: label.accept, text: step.accept }] : []),
    ...('reject' in step && step.reject !== null ? [{ label: label.reject, text: step.reject }] : []),
    ...dangerFacts(setting, step),
    ...(step.sourceText === null || saysSource(step) ? [] : [{ label: '', text: '', sources: [step.sourceText] }]),
    ...(step.takes === null ? [] : [{ label: label.takes, text: words.quantity(step.takes) }]),
  ];
}

/** Verbs whose sentence names the fluid. */
const saysFluid: ReadonlySet<string> = new Set(['wash', 'rinse', 'soak', 'wipe', 'clean-outside', 'oil']);

function jointFacts(setting: PrintContext, { step, place }: StepFigures): Fact[] {
  if (!turns.has(step.verb)) return [];
  // Said where it is run down, in the same breath.
  const before = place.steps.slice(0, place.steps.indexOf(step));
  const said = (part: string) =>
    step.verb !== 'run-down' &&
    before.some((one) => one.verb === 'run-down' && one.objects.some(({ name }) => name === part));
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
    if (said(joint.part)) continue;
    if (joint.thread !== null && tightens)
      add({
        label: label.thread,
        text:
          joint.solid === null
            ? setting.words.thread(joint.thread)
            : label.ofClass({ thread: setting.words.thread(joint.thread), class: joint.solid.propertyClass }),
      });
    if (joint.oiled && tightens) add({ label: label.oilThread, text: label.oilThreadText });
    if (joint.handTightIsFinal && step.verb === 'run-down') add({ label: label.handTight, text: '' });
  }
  if (step.verb === 'torque' && step.oiled) add({ label: label.oilThread, text: label.oilThreadText });
  return facts;
}

/** Verbs that turn a threaded part. */
const turns: ReadonlySet<string> = new Set(verbsThat('turns'));

/** In a job, what to fit in each unit or how far to turn it, by its last reading. */
export function adviceFacts(setting: PrintContext, step: Step): Fact[] {
  const { words } = setting;
  const { job } = setting.options;
  const test = own(step, 'choose')?.test ?? (step.verb === 'set' ? step.reading : null);
  if (job === null || test === null) return [];
  const parts = step.objects.map(({ name }) => name);
  return buildRecommendations(job, words).flatMap(({ unit, test: of, part, reading, sentence }) =>
    sentence === null || of !== test || !parts.includes(part) || !setting.units.includes(unit)
      ? []
      : [{ label: words.facts.unit({ place: unit.place, reading: words.quantity(reading.value) }), text: sentence }],
  );
}

/** Where some step shuts the gauge, each that reads it says that it is open: a shut one shows nothing, and zero as well. */
function openGauge({ procedure, words }: PrintContext, figures: StepFigures): Fact[] {
  const { step } = figures;
  const shuts = [...procedure.stages, ...procedure.repairs].some(({ steps }) =>
    steps.some((one) => own(one, 'gauge') === 'shut'),
  );
  if (!shuts || own(step, 'gauge') != null || !readsGauge(procedure, figures)) return [];
  return [{ label: words.facts.gauge, text: words.facts.open }];
}

/** Of a mixed set, which units are compared: each with those of its own part number. */
function comparedFacts({ options, units, words }: PrintContext, step: Step): Fact[] {
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
function matchFacts({ options: { job }, words }: PrintContext, step: Step): Fact[] {
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
function screwFacts({ procedure, words }: PrintContext, step: Step): Fact[] {
  if (step.verb !== 'set') return [];
  return procedure.family.adjusters.flatMap(({ part, sets, rate }) =>
    rate === null || sets !== step.reading || !step.objects.some(({ name }) => name === part)
      ? []
      : [{ label: words.facts.rate, text: words.facts.turnedIn({ rate: words.quantity(rate) }) }],
  );
}

function chooseFacts(setting: PrintContext, figures: StepFigures): Fact[] {
  const { step } = figures;
  if (step.verb !== 'choose') return [];
  const { words } = setting;
  const { choose, rate } = step;
  // Also where the step does not say it: over this the coils of the spring bind.
  const most = shimChoices(setting.procedure).find((one) => one.step === step)?.most ?? step.neverAbove;
  return [
    ...(choose === null ? [] : aimFacts(setting, figures, choose)),
    ...(rate === null
      ? []
      : [{ label: rateTitle(setting, rate), text: rateText(setting, rate), sources: specSources(setting, rate) }]),
    ...(most === null ? [] : [{ label: words.facts.never, text: words.quantity(most) }]),
  ];
}

function aimFacts(setting: PrintContext, { step, aim, settling }: StepFigures, { test, target }: Choice): Fact[] {
  const { words } = setting;
  const name = words.inSentence(specTitle(setting.procedure, test));
  const to =
    target === null
      ? ''
      : target.form === 'spec'
        ? specLines(setting, step, aim, target.spec)
            .map(({ label, value }) => (label === '' ? value : `${label} ${value}`))
            .join(', ')
        : limitText(target.limit, words.wording);
  const spec = target?.form === 'spec' ? setting.procedure.specs.find((one) => one.name === target.spec) : undefined;
  // As the author calls it.
  const label = spec === undefined || spec.title === spec.name ? words.facts.target : capital(spec.title);
  return [
    {
      label,
      text: to === '' ? name : words.facts.targetTo({ name, target: to }),
      ...(spec === undefined ? {} : { sources: specSources(setting, spec.name) }),
    },
    ...settlingFacts(setting, settling),
  ];
}

/** `New spring: set 4 bar higher, it settles`. */
export function settlingFacts({ words }: PrintContext, settling: StepFigures['settling']): Fact[] {
  return settling.map((group): Fact => {
    const { spring, amount } = group.made;
    return {
      label: words.facts.newPart({ part: words.inSentence(baseTitle(spring)) }),
      text: withNumbers({ told: words.facts.settles({ amount: words.quantity(amount) }), whose: whoseWords(group) }),
    };
  });
}

function rateTitle({ procedure, words }: PrintContext, name: string): string {
  const spec = procedure.specs.find((one) => one.name === name);
  return spec === undefined || spec.title === spec.name ? words.facts.rate : capital(spec.title);
}

function notes({ words }: PrintContext, step: Step): Fact[] {
  const label = words.facts;
  return [
    ...(step.note === null ? [] : [{ label: '', text: step.note }]),
    ...step.allow.map(({ rule, because }) => ({
      label: label.allowed,
      text: `${rule} ${label.because} ${because}`,
    })),
  ];
}

/** Concessions on a whole stage or repair, at its head. */
export function allowedHere({ facts: { allowed, because: why } }: Words, allow: readonly Allow[]): string[] {
  return allow.map(({ rule, because }) => `${allowed}: ${rule} ${why} ${because}`);
}

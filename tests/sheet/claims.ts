/**
 * What a print must say, walked from the procedure and the job and not from the sheet: for each step its number, what it
 * acts on, its limits, tools, cautions, sources, concessions and what is done on a fail.
 */
import { type Called, cautionsByStep, type Topic, usualCautions } from '../../language/analysis/cautions/index.ts';
import { baseTitle, copyKind, objectTitle } from '../../language/documents/names.ts';
import type { SheetOptions } from '../../language/documents/print-context.ts';
import { wordsIn } from '../../language/i18n/index.ts';
import { translated } from '../../language/i18n/translate.ts';
import { fullMessage } from '../../language/model/diagnostic.ts';
import type { LimitUse, Procedure, Step, Verb } from '../../language/model/index.ts';
import { specFor } from '../../language/model/spec-for.ts';
import {
  failEntries,
  type GateStep,
  isAsFound,
  isGate,
  isOfAll,
  isTest,
  namedIn,
  own,
} from '../../language/model/steps.ts';
import { titleOf } from '../../language/model/titles.ts';
import { formatLimit, formatQuantity, type Limit } from '../../language/quantities/index.ts';
import { judgedLimit } from './limit-claims.ts';

const words = wordsIn('en');

/** One text or figure that must be found. */
export interface Claim {
  /** `tool`, `note`: what a person would call it. */
  readonly kind: string;
  readonly text: string;
}

/** What one step must say. */
export interface StepClaims {
  readonly number: string;
  /** Hazards of the safety page that hold at it: it is among their steps, and has a triangle for those that a step is warned of. */
  readonly alerts: readonly { readonly topic: string; readonly repeats: boolean }[];
  /** The author's own, in its words. */
  readonly cautions: readonly Claim[];
  /** In this order after the number. */
  readonly sentence: readonly Claim[];
  /** After the sentence; figures may be printed in the unit of the tool. */
  readonly limits: readonly Limit[];
  /** After the sentence, in any order. */
  readonly others: readonly Claim[];
  /** Listed under a letter, which is at the step. */
  readonly sources: readonly Claim[];
}

/** A stage or a repair. */
export interface PlaceClaims {
  readonly number: string;
  /** It is part of the check that asks for it: `6.1`; null: it has a head of its own. */
  readonly within: string | null;
  /** Hazards of the safety page: its head, or that of the tests it is printed with, has a line for each. */
  readonly lines: readonly Claim[];
  readonly title: string;
  readonly head: readonly Claim[];
  readonly steps: readonly StepClaims[];
}

/** All that a print must say. */
export interface SheetClaims {
  /** On every page. */
  readonly furniture: readonly Claim[];
  /** Before the first stage, or after the last step. */
  readonly lists: readonly Claim[];
  /** Stages, then repairs. */
  readonly places: readonly PlaceClaims[];
  /** What can hurt: once, in full. */
  readonly hazards: readonly {
    readonly topic: string;
    readonly word: string;
    readonly text: string;
    readonly rule: boolean;
  }[];
}

const claim = (kind: string, ...texts: readonly (string | null | undefined)[]): Claim[] =>
  texts.flatMap((text) => (text == null || text === '' ? [] : [{ kind, text }]));

/** As much of an entry as there must be room for at the head of each page. */
function beginning(text: string | null | undefined): string | null {
  const letters = [...(text ?? '')];
  return text == null || letters.length <= 60 ? (text ?? null) : letters.slice(0, 59).join('');
}

/** Part numbers that the print is for. */
export function numbersOf({ numbers }: Procedure, { job, number }: SheetOptions): readonly string[] {
  if (number !== null) return [number];
  const inJob = numbers.filter(({ name }) => job?.units.some((unit) => unit.number === name));
  return (inJob.length > 0 ? inJob : numbers).map(({ name }) => name);
}

/** Verbs that read a figure off the gauge of the station. */
const gauged: ReadonlySet<string> = new Set(['test', 'read', 'set', 'across']);
/** Verbs that tighten a thread. */
const tightens: ReadonlySet<string> = new Set(['run-down', 'torque', 'lock']);

/** What a verb is called on paper, where that is not its own name. */
const called: Partial<Record<Verb, string>> = {
  photo: 'photograph',
  release: 'release',
  relieve: 'pressure',
  'clean-outside': 'outside',
  'clean-holes': 'holes',
  'send-out': 'send',
  'book-in': 'book',
  'hold-for': 'hold',
  across: 'compare',
  guard: 'protect',
  lock: 'tighten',
  renew: 'replace',
  do: '',
};

/** What a print of this procedure with these options must say. */
export function claimsOf(procedure: Procedure, options: SheetOptions): SheetClaims {
  const cautions = usualCautions(procedure);
  const called = cautionsByStep(procedure);
  const numbers = numbersOf(procedure, options);
  const shown = (step: Step) => step.only === null || step.only.some((name) => numbers.includes(name));
  const { shop, family } = procedure;
  const station = (name: string | null) => shop.stations.find((one) => one.name === name);
  const places = (['stages', 'repairs'] as const).flatMap((form) =>
    procedure[form].flatMap((place, index): PlaceClaims[] => {
      const steps = place.steps.filter(shown);
      if (steps.length === 0 && place.steps.length > 0) return [];
      const usual = cautions[form].get(place.name) ?? [];
      const inline = 'inline' in place && place.inline;
      const within = form === 'stages' ? null : standsIn(procedure, shown, place.name, steps);
      return [
        {
          number: form === 'stages' ? String(index + 1) : `R${index + 1}`,
          within,
          // What is written inside `on fail` is called by what it does, and one step says so by itself.
          title: inline || (within !== null && steps.length === 1) ? '' : titleOf(place),
          lines: usual
            .filter(({ topic }) => !rules.has(topic))
            .flatMap(({ topic }) => claim('caution line', shortOf(topic))),
          head: [
            ...claim('station', place.station === null ? null : (station(place.station) ?? place).title),
            ...claim('to wear', station(place.station)?.wear),
            ...place.allow.flatMap(({ rule, because }) => [
              ...claim('concession', rule),
              ...claim('concession', because),
            ]),
          ],
          steps: steps.map((step) => stepClaims(procedure, options, step, called(step))),
        },
      ];
    }),
  );
  const steps = [...procedure.stages, ...procedure.repairs].flatMap((place) => place.steps.filter(shown));
  const hazards = [...cautions.stages.values(), ...cautions.repairs.values()].flat();
  const allow = [procedure, shop, family, ...family.parts, ...procedure.specs].flatMap((one) => one.allow);
  const allowed = procedure.numbers.filter(({ name }) => numbers.includes(name)).flatMap((one) => one.allow);
  const units = (options.job?.units ?? []).filter((unit) => options.number === null || unit.number === options.number);
  const tools = steps.flatMap((step) => step.tools);
  const gauges = [...procedure.stages, ...procedure.repairs].flatMap((place) =>
    place.steps.some((step) => shown(step) && gauged.has(step.verb))
      ? shop.assets.filter(({ kind, at }) => kind === 'gauge' && at !== null && at === place.station)
      : [],
  );
  return {
    furniture: [
      ...claim('title', beginning(procedure.title)),
      ...claim('name', beginning(procedure.name)),
      ...claim('revision', beginning(procedure.revision)),
      ...claim('work order', options.form === 'instruction' ? null : beginning(options.job?.name)),
      ...claim('hash', options.hash.slice(0, 12)),
      ...(procedure.approvedBy === null ? claim('alarm', words.notApproved) : []),
    ],
    lists: [
      // A short title is on each page, and need not be said again.
      ...claim('title', beginning(procedure.title) === procedure.title ? null : procedure.title),
      ...claim('name', procedure.name),
      ...claim('revision', procedure.revision),
      ...claim('work order', options.job?.name),
      ...claim('family', family.title),
      ...claim('author', procedure.writtenBy),
      ...claim('approval', procedure.approvedBy, procedure.approvedBy === null ? null : procedure.approvedOn),
      ...claim('part number', ...numbers),
      ...claim('shop', shop.title),
      ...claim('work order', options.job?.title, options.job?.customer, options.job?.received),
      ...procedure.hazards.flatMap(({ word, text }) => [...claim('signal word', word), ...claim('caution', text)]),
      ...[...allow, ...allowed].flatMap(({ rule, because }) => [
        ...claim('concession', rule),
        ...claim('concession', because),
      ]),
      ...units.flatMap((unit) => [
        ...claim('unit', unit.place, unit.numberText, unit.serial),
        ...claim('hold', unit.onHold),
        ...claim('note', unit.note),
      ]),
      ...family.parts.filter(({ renewed }) => renewed).flatMap((part) => claim('part to renew', baseTitle(part))),
      ...tools.flatMap((use) => {
        const asset = use.form === 'asset' ? shop.assets.find(({ name }) => name === use.name) : undefined;
        return [
          ...claim(
            'tool',
            use.form === 'asset' ? use.name : use.form === 'words' ? use.text : words.tools.kinds[use.kind],
          ),
          ...claim('tool', asset?.title === asset?.name ? null : asset?.title),
          ...claim('calibration', asset?.due),
        ];
      }),
      ...steps.flatMap((step) => claim('tool', own(step, 'holder'))),
      ...gauges.flatMap(({ name, due }) => [...claim('gauge', name), ...claim('calibration', due)]),
      ...steps.flatMap((step) => {
        const found = shop.fluids.find(({ name }) => name === own(step, 'fluid'));
        return [
          ...claim('fluid', found === undefined ? null : titleOf(found)),
          ...claim('flash point', found?.flammable == null ? null : formatQuantity(found.flammable)),
        ];
      }),
      ...options.diagnostics
        .filter(({ severity }) => severity !== 'hint')
        .flatMap((one) => claim('finding', fullMessage(translated(one, words.language)))),
    ],
    places,
    hazards: [...new Map(hazards.map((one) => [one.topic, one])).values()].map(({ topic, word }) => ({
      topic,
      word,
      text: words.cautions[topic].text,
      rule: rules.has(topic),
    })),
  };
}

/** What holds in the whole shop warns of nothing. */
const rules: ReadonlySet<Topic> = new Set(['alone', 'disposal', 'oil-on-skin', 'rags']);

function shortOf(topic: Topic): string {
  const said: { readonly text: string; readonly short?: string } = words.cautions[topic];
  return said.short ?? said.text;
}

/** A repair of a step or two that writes nothing down is part of the first check that asks for it, if only checks do. */
function standsIn(
  procedure: Procedure,
  shown: (step: Step) => boolean,
  name: string,
  steps: readonly Step[],
): string | null {
  const writes = ['choose', 'torque', 'lock', 'read', 'measure', 'record', 'set', 'check', 'test', 'hold-for'];
  const asks = (step: Step) => shown(step) && failEntries(step).some(({ repair }) => repair === name);
  const askers = procedure.stages.flatMap((stage) => stage.steps.filter(asks));
  const others = procedure.repairs.some((repair) => repair.steps.some(asks));
  const small = steps.length > 0 && steps.length <= 2 && steps.every(({ verb }) => !writes.includes(verb));
  const [first] = askers;
  if (first === undefined || others || !small) return null;
  return askers.every(({ verb }) => verb === 'check' || verb === 'measure') ? first.number : null;
}

function stepClaims(procedure: Procedure, options: SheetOptions, step: Step, hazards: readonly Called[]): StepClaims {
  const { family, shop, specs } = procedure;
  const numbers = numbersOf(procedure, options);
  const spec = (name: string) => titleOf(specs.find((one) => one.name === name) ?? { name, title: name });
  /** Words that the author gave it. */
  const titled = (name: string | null | undefined) =>
    specs.find((one) => one.name === name && one.title !== name)?.title;
  const fluid = shop.fluids.find(({ name }) => name === own(step, 'fluid'));
  const choose = own(step, 'choose');
  const aim = aimedAt(step);
  const bath = own(step, 'bath');
  const count = own(step, 'count');
  const gauge = own(step, 'gauge');
  const use = own(step, 'limit');
  const used = limitsOf(procedure, numbers, step);
  const turned = tightens.has(step.verb) || step.verb === 'slacken' || step.verb === 'remove';
  const said = (part: string) => saidBefore(procedure, step, part);
  const joints = family.joints.filter(({ part }) => turned && step.objects.some(({ name }) => name === part));
  return {
    number: step.number,
    alerts: hazards.filter(({ topic, headOnly }) => headOnly !== true && !rules.has(topic)),
    cautions: step.hazards.flatMap(({ word, text }) => [...claim('signal word', word), ...claim('caution', text)]),
    sentence: [
      ...claim('part number', ...(step.only ?? []).filter((name) => numbers.includes(name))),
      ...claim('verb', called[step.verb] ?? step.verb.replaceAll('-', ' ')),
      ...claim('sequence', step.lead),
      ...(step.verb === 'read' || step.verb === 'set' ? claim('reading', spec(step.reading)) : []),
      // In the author's own words, and what they change behind them.
      ...(step.verb === 'do' ? claim('words', step.text) : []),
      ...objectClaims(procedure, step),
      ...(isTest(step) ? claim('test', spec(step.gate.test)) : []),
      ...(step.verb === 'do' ? [] : claim('words', step.text)),
    ],
    limits: used.map(({ limit }) => limit),
    others: [
      ...step.tools.flatMap((use) =>
        claim('tool', use.form === 'asset' ? use.name : use.form === 'words' ? use.text : null),
      ),
      ...claim('what it is to bring', choose == null ? null : spec(choose.test)),
      ...claim('holder', own(step, 'holder')),
      ...claim('station', shop.stations.find(({ name }) => name === own(step, 'station'))?.title),
      ...claim('bath', bath == null ? null : formatLimit(bath)),
      ...claim('as left', own(step, 'asLeft') ? 'as left' : null),
      ...claim('ready to fit', own(step, 'readyToFit') ? 'ready to fit' : null),
      ...(use?.form === 'spec' ? claim('spec', titled(use.spec)) : []),
      ...claim('spec', titled(aim)),
      ...claim('spec', titled(own(step, 'rate'))),
      ...claim('fluid', fluid === undefined ? null : titleOf(fluid)),
      ...claim('count', count == null ? null : formatLimit(count)),
      ...claim('time', step.takes === null ? null : formatQuantity(step.takes)),
      ...claim('pass', ...(own(step, 'passes') ?? []).map((pass) => formatQuantity(pass))),
      ...claim('what is good', own(step, 'accept')),
      ...claim('what is not', own(step, 'reject')),
      ...('conditions' in step ? claim('condition', step.gas && words.facts.gases[step.gas], ...step.conditions) : []),
      ...(gauge === 'shut' ? claim('gauge', words.facts.shut) : []),
      ...(gauge === 'open' ? claim('gauge', words.facts.open) : []),
      ...(own(step, 'verdicts') ?? []).flatMap(({ verdict, text }) => [
        ...claim('verdict', words.boxes.verdicts[verdict]),
        ...claim('verdict', text),
      ]),
      ...(own(step, 'marking') ?? []).flatMap((mark) => claim('mark', mark)),
      ...step.objects.flatMap(({ located }) => claim('where it is located', located)),
      ...joints.flatMap(({ part, thread, oiled, leftHand, handTightIsFinal }) => [
        ...claim('thread', tightens.has(step.verb) && !said(part) ? thread : null),
        ...claim('oil', tightens.has(step.verb) && oiled && !said(part) ? words.facts.oilThread : null),
        ...claim('left-hand thread', leftHand ? 'LEFT-HAND' : null),
        ...claim('hand-tight', handTightIsFinal && step.verb === 'run-down' ? words.facts.handTight : null),
      ]),
      ...claim('oil', own(step, 'oiled') ? words.facts.oilThread : null),
      ...failEntries(step).flatMap(({ repair, tries }) => [
        ...claim('fail path', `R${procedure.repairs.findIndex(({ name }) => name === repair) + 1}`),
        ...claim('tries', tries === null || !Number.isFinite(tries) ? null : String(tries)),
      ]),
      ...(!isGate(step) || isEndless(procedure, step) ? [] : claim('hold', words.fail.hold)),
      ...(isGate(step) && step.gate.stopIfFails ? claim('stop', words.fail.stop) : []),
      ...(readsShutGauge(procedure, step) ? claim('gauge', `${words.facts.gauge} ${words.facts.open}`) : []),
      ...(step.verb === 'sign-off' || step.verb === 'hold-for'
        ? claim('line to sign', words.sign.name, words.sign.signature, words.sign.date)
        : []),
      ...claim('note', step.note),
      ...step.allow.flatMap(({ rule, because }) => [...claim('concession', rule), ...claim('concession', because)]),
    ],
    sources: [...used.flatMap(({ sources }) => claim('source', ...sources)), ...claim('source', step.sourceText)],
  };
}

/** The thread of a nut is said where it is run down, and not again where it is tightened. */
function saidBefore({ stages, repairs }: Procedure, step: Step, part: string): boolean {
  const place = [...stages, ...repairs].find(({ steps }) => steps.includes(step));
  const before = place?.steps.slice(0, place.steps.indexOf(step)) ?? [];
  return (
    step.verb !== 'run-down' &&
    before.some((one) => one.verb === 'run-down' && one.objects.some(({ name }) => name === part))
  );
}

/** The spec that a choice aims at. */
function aimedAt(step: Step): string | null {
  const target = own(step, 'choose')?.target;
  return target?.form === 'spec' ? target.spec : null;
}

/** Something may be tried as often as it takes: then nothing is left over for the lead. */
function isEndless({ repairs }: Procedure, step: GateStep): boolean {
  // A verdict of lap has a way of its own.
  if (step.verb === 'check' && step.verdicts.some(({ verdict }) => verdict === 'lap')) return false;
  return step.gate.onFail.some(
    ({ repair, tries }) => (tries ?? repairs.find(({ name }) => name === repair)?.tries) === Number.POSITIVE_INFINITY,
  );
}

/** A gauge that another step of the procedure shuts must be open where it is looked at. */
function readsShutGauge({ stages, repairs, specs }: Procedure, step: Step): boolean {
  const steps = [...stages, ...repairs].flatMap((place) => place.steps);
  const { verb } = step;
  const test = own(step, 'test');
  if (!steps.some((one) => own(one, 'gauge') === 'shut')) return false;
  if (own(step, 'gauge') != null) return false;
  if (step.verb === 'read' || step.verb === 'set')
    return specs.some(({ name, kind }) => name === step.reading && kind === 'pressure');
  return (
    verb === 'relieve' || (verb === 'test' && (test?.reads === 'pressure' || test?.hold != null || test?.from != null))
  );
}

/** Things acted on, by what they are called; copies by cylinder are said once. */
function objectClaims(procedure: Procedure, step: Step): Claim[] {
  const { family } = procedure;
  if (isOfAll(step) || step.verb === 'across') return [];
  const said = new Set<string>();
  return namedIn(step).flatMap((object) => {
    const kind = copyKind(family, object);
    if (kind === null) return claim('object', objectTitle({ procedure, words }, object));
    if (said.has(kind)) return [];
    said.add(kind);
    const part = family.parts.find(({ base }) => base === kind.split(' ')[1])!;
    const port = family.ports.find(({ name }) => object.kind === 'port' && name === object.name);
    return claim('object', port?.title ?? baseTitle(part));
  });
}

/** Every limit that a step is held to, with its source, and every figure that it is worked by. */
function limitsOf(procedure: Procedure, numbers: readonly string[], step: Step) {
  const [test, choose] = [own(step, 'test'), own(step, 'choose')];
  const named = own(step, 'reading');
  const use: LimitUse | null =
    own(step, 'limit') ??
    (procedure.specs.some(({ name }) => name === named) ? { form: 'spec', spec: named!, source: step.source } : null);
  const written = [own(step, 'stretch'), test?.inTime, own(step, 'spread'), use?.form === 'limit' ? use.limit : null];
  const figures = [
    test?.from,
    test?.to,
    test?.forTime,
    own(step, 'at'),
    test?.hold?.amount,
    step.air,
    choose?.target?.form === 'limit' ? choose.target.limit : null,
  ];
  const ceilings = [test?.neverAbove, step.verb === 'choose' ? step.neverAbove : null].flatMap((most) =>
    most == null ? [] : [{ form: 'at most' as const, most }],
  );
  const valuesOf = (spec: string | null | undefined) =>
    spec == null ? [] : (numbers.length === 0 ? [null] : numbers).map((number) => specFor(procedure, spec, number));
  const values = valuesOf(use?.form === 'spec' ? use.spec : null);
  const served = values.some((value) => value?.inService != null);
  const specified = values.flatMap((value) => {
    const whenNew = gauged.has(step.verb) && !isAsFound(step) ? [value?.whenNew] : [];
    const found = isAsFound(step) && served ? [value?.inService] : [];
    return [...found, value?.rebuilt, ...whenNew].map((limit) => ({
      limit,
      source: value?.sourceText,
    }));
  });
  const aimed = [aimedAt(step), own(step, 'rate')].flatMap((spec) =>
    valuesOf(spec).map((value) => ({ limit: value?.rebuilt, source: null })),
  );
  const rates = procedure.family.adjusters.flatMap(({ part, sets, rate }) =>
    rate === null || step.verb !== 'set' || sets !== step.reading || !step.objects.some(({ name }) => name === part)
      ? []
      : [{ limit: { form: 'nominal' as const, nominal: rate, plus: null, minus: null }, source: null }],
  );
  const judged = [...specified, ...written.map((limit) => ({ limit, source: step.sourceText }))];
  return [
    ...judged.flatMap(({ limit, source }) => {
      if (limit == null) return [];
      const { limit: whole, source: rule } = judgedLimit(procedure, limit);
      return [{ limit: whole, sources: [source, rule] }];
    }),
    ...[...figures, ...ceilings].flatMap((limit) => (limit == null ? [] : [{ limit, sources: [] }])),
    ...[...aimed, ...rates].flatMap(({ limit }) => (limit == null ? [] : [{ limit, sources: [] }])),
  ];
}

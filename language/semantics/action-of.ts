import type { Condition, Wording } from '../model/plan.ts';
import type {
  Action,
  Choice,
  FailEntry,
  LimitUse,
  PartGate,
  Step,
  StepObject,
  TestFigures,
  TestGate,
  ToolUse,
  Verdict,
} from '../model/procedure.ts';
import type { Allow, Source } from '../model/source.ts';
import { partGateId, testGateId } from '../model/steps.ts';
import type { Verb } from '../model/verbs.ts';
import type { Limit, Quantity } from '../quantities/types.ts';
import { noPlan, type PlanDraft, planOf } from './plans.ts';

export type Draft<T> = { -readonly [key in keyof T]: T[key] };

/** All that the clauses of one step may say, before it is known what they mean after its verb. */
export interface Said extends Draft<TestFigures> {
  source: Source;
  objects: readonly StepObject[];
  all: boolean;
  withObjects: readonly StepObject[];
  tools: readonly ToolUse[];
  fluid: string | null;
  holder: string | null;
  station: string | null;
  limit: LimitUse | null;
  stretch: Limit | null;
  air: Limit | null;
  gas: 'air' | 'vacuum' | null;
  gauge: 'shut' | 'open' | null;
  text: string | null;
  wordsAfter: Action['wordsAfter'];
  reading: string;
  sourceText: string | null;
  marking: readonly ('number' | 'serial')[];
  choose: Choice | null;
  rate: string | null;
  count: Limit | null;
  bath: Limit | null;
  passes: readonly Quantity[];
  pattern: boolean;
  oiled: boolean;
  forTrial: boolean;
  readyToFit: boolean;
  moves: 'slides' | 'turns-free' | null;
  asFound: boolean;
  asLeft: boolean;
  accept: string | null;
  reject: string | null;
  verdicts: readonly Verdict[];
  at: Limit | null;
  figures: readonly Condition[];
  title: string | null;
  wording: Wording;
  plan: PlanDraft;
  spread: Limit | null;
  conditions: readonly string[];
  onFail: readonly FailEntry[];
  failWritten: boolean;
  stopIfFails: boolean;
  through: readonly string[] | null;
  takes: Quantity | null;
  note: string | null;
  dangers: Action['dangers'];
  allow: readonly Allow[];
}

/** One list for all that have nothing: no list of a model ever changes. */
export const none: readonly never[] = Object.freeze([]);

export function sayNothing(source: Source): Said {
  return {
    source,
    objects: none,
    all: false,
    withObjects: none,
    tools: none,
    fluid: null,
    holder: null,
    station: null,
    limit: null,
    stretch: null,
    air: null,
    gas: null,
    gauge: null,
    text: null,
    reading: '',
    wordsAfter: [],
    sourceText: null,
    marking: none,
    choose: null,
    rate: null,
    count: null,
    bath: null,
    passes: none,
    pattern: false,
    oiled: false,
    forTrial: false,
    readyToFit: false,
    moves: null,
    asFound: false,
    asLeft: false,
    accept: null,
    reject: null,
    verdicts: none,
    at: null,
    figures: none,
    title: null,
    wording: { form: 'any' },
    plan: noPlan(),
    spread: null,
    conditions: none,
    onFail: none,
    failWritten: false,
    stopIfFails: false,
    through: null,
    takes: null,
    note: null,
    dangers: none,
    allow: none,
    reads: null,
    hold: null,
    from: null,
    to: null,
    inTime: null,
    forTime: null,
    neverAbove: null,
  };
}

/** What a step is, of its verb and of what was said: each verb has its own fields, and no others. */
export function actionOf(verb: Verb, said: Said, around: Pick<Action, 'hazards' | 'only' | 'call'>): Step {
  const { source, objects, tools, air, gas, text, wordsAfter, sourceText, takes, note, dangers, allow } = said;
  const base = {
    source,
    objects,
    tools,
    air,
    gas,
    text,
    wordsAfter,
    sourceText,
    takes,
    note,
    dangers,
    allow,
    lead: null,
    hazards: around.hazards,
    only: around.only,
    call: around.call,
    // Where it is in its block is not known yet.
    number: '',
    key: '',
  };
  const { all, withObjects, fluid, holder, station, count, bath, limit, gauge, conditions, at, readyToFit } = said;
  const looked = { gauge, conditions };
  const plan = planOf(said.plan);
  const onTester = { ...looked, station, at, figures: said.figures, plan };
  switch (verb) {
    case 'receive':
    case 'tag':
    case 'photo':
    case 'unclamp':
    case 'back-off':
    case 'discard':
    case 'release':
    case 'press':
    case 'connect':
    case 'disconnect':
    case 'relieve':
    case 'buff':
    case 'clean-holes':
    case 'lap':
    case 'line-up':
    case 'seal':
    case 'sign-off':
    case 'hold-for':
    case 'send-out':
    case 'book-in':
    case 'do':
      return { ...base, verb };
    case 'clamp':
    case 'slacken':
    case 'run-down':
      return { ...base, verb, holder };
    case 'lock':
      return { ...base, verb, holder, limit };
    case 'torque': {
      const { stretch, passes, pattern, oiled } = said;
      return { ...base, verb, holder, limit, fluid, stretch, passes, pattern, oiled };
    }
    case 'keep':
      return { ...base, verb, all, withObjects, station, fluid };
    case 'send':
      return { ...base, verb, station };
    case 'remove':
      return { ...base, verb, withObjects, holder, station, fluid };
    case 'guard':
      return { ...base, verb, withObjects };
    case 'renew':
      return { ...base, verb, withObjects, readyToFit };
    case 'fit':
      return { ...base, verb, withObjects, fluid, readyToFit, forTrial: said.forTrial };
    case 'choose':
      return { ...base, verb, choose: said.choose, rate: said.rate, neverAbove: said.neverAbove };
    case 'mark':
      return { ...base, verb, station, marking: said.marking };
    case 'cap':
    case 'uncap':
    case 'blow-dry':
      return { ...base, verb, all };
    case 'wash':
    case 'soak':
      return { ...base, verb, all, fluid, count, bath, station };
    case 'rinse':
      return { ...base, verb, all, fluid, count };
    case 'wipe':
    case 'oil':
      return { ...base, verb, all, fluid };
    case 'blast':
      return { ...base, verb, fluid, station };
    case 'compress':
    case 'clean-outside':
    case 'pack':
      return { ...base, verb, fluid };
    case 'prime':
      return { ...base, verb, count, gauge };
    case 'wait':
      return { ...base, verb, count };
    case 'check': {
      const { accept, verdicts, moves } = said;
      return { ...base, verb, ...looked, all, limit, accept, verdicts, moves, gate: partGate(verb, said) };
    }
    case 'measure':
      // With no limit it is only written down, unless it says what is done on a fail: then the limit is missing.
      return limit === null && said.onFail.length === 0
        ? { ...base, verb, ...looked, limit, gate: null }
        : { ...base, verb, ...looked, limit, gate: partGate(verb, said) };
    case 'read': {
      const { reading, asFound, asLeft } = said;
      return { ...base, verb, ...onTester, reading, asFound, asLeft };
    }
    case 'record':
      return { ...base, verb, reading: said.reading, title: said.title, wording: said.wording, plan };
    case 'set':
      return { ...base, verb, ...onTester, limit, reading: said.reading, gate: testGate(verb, said) };
    case 'test': {
      const { accept, reject, reads, hold, from, to, inTime, forTime, neverAbove } = said;
      const test = { reads, hold, from, to, inTime, forTime, neverAbove };
      return { ...base, verb, ...onTester, limit, fluid, accept, reject, test, gate: testGate(verb, said) };
    }
    case 'across':
      return { ...base, verb, ...looked, spread: said.spread, gate: testGate(verb, said) };
    default:
      return verb satisfies never;
  }
}

/** What the clauses say of a gate of any kind. */
function judged({ onFail, failWritten, verdicts, stopIfFails, through }: Said) {
  return { onFail, failWritten: failWritten || verdicts.length > 0, stopIfFails, provesThrough: through };
}

function testGate(kind: TestGate['kind'], said: Said): TestGate {
  return { kind, id: testGateId(kind, said.reading), test: said.reading, ...judged(said) };
}

function partGate(kind: PartGate['kind'], said: Said): PartGate {
  return { kind, id: partGateId(kind, said.objects), ...judged(said) };
}

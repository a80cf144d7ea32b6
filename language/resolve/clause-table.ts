import type { Clause, TestClause } from '../grammar/generated/ast.ts';
import type { ObjectKind } from '../model/procedure.ts';
import type { Verb } from '../model/verbs.ts';

type ClauseType = (Clause | TestClause)['$type'];

interface VerbForm {
  /** What it acts on, in the order in which names are looked up; `reading`: a test or spec. */
  readonly objects: readonly (ObjectKind | 'reading')[];
  /** Clauses that mean something after it, besides note, allow, takes, source and tools. */
  readonly clauses: readonly ClauseType[];
}

const form = (objects: VerbForm['objects'], ...clauses: ClauseType[]): VerbForm => ({ objects, clauses });

/** After each verb, what has a meaning. A clause that is not here is reported, not dropped. */
export const verbForms: Readonly<Record<Verb, VerbForm>> = {
  receive: form([], 'TextClause'),
  tag: form([], 'TextClause'),
  photo: form([], 'TextClause'),
  clamp: form(['part'], 'InClause', 'TextClause'),
  unclamp: form(['part'], 'TextClause'),
  slacken: form(['part'], 'TextClause', 'HeldClause'),
  'back-off': form(['adjuster'], 'TextClause'),
  remove: form(['part'], 'TextClause', 'HeldClause', 'InClause', 'AtClause'),
  discard: form(['part'], 'TextClause'),
  keep: form(['part'], 'AtClause', 'InClause', 'TextClause'),
  send: form(['part'], 'ToClause', 'TextClause'),
  guard: form(['face'], 'TextClause'),
  cap: form(['port'], 'TextClause'),
  uncap: form(['port'], 'TextClause'),
  compress: form(['part'], 'TextClause', 'InClause'),
  release: form(['part'], 'TextClause'),
  press: form(['part'], 'TextClause'),
  wash: form(['part'], 'InClause', 'ExceptClause', 'ForClause', 'AtClause', 'TextClause'),
  rinse: form(['part'], 'InClause', 'ExceptClause', 'ForClause', 'TextClause'),
  soak: form(['part'], 'InClause', 'ExceptClause', 'ForClause', 'AtClause', 'TextClause'),
  'blow-dry': form(['part'], 'ExceptClause', 'TextClause'),
  wipe: form(['part', 'face'], 'ExceptClause', 'TextClause', 'InClause'),
  blast: form(['part'], 'TextClause', 'InClause', 'AtClause'),
  buff: form(['part'], 'TextClause'),
  'clean-outside': form([], 'TextClause', 'InClause'),
  'clean-holes': form(['part'], 'TextClause'),
  lap: form(['face', 'part'], 'TextClause'),
  check: form(
    ['part', 'face', 'port'],
    'TextClause',
    'SlidesClause',
    'VerdictClause',
    'RejectClause',
    'AcceptClause',
    'WithinClause',
    'FailClause',
    'ProvesClause',
    'AmountClause',
  ),
  measure: form(['part', 'face'], 'TextClause', 'WithinClause', 'FailClause', 'AmountClause'),
  read: form(['reading'], 'WordsClause', 'TextClause', 'AtClause'),
  renew: form(['part'], 'WordsClause', 'TextClause'),
  fit: form(['part'], 'ForClause', 'WordsClause', 'TextClause', 'InClause'),
  'line-up': form(['part'], 'TextClause'),
  'run-down': form(['part'], 'TextClause', 'HeldClause'),
  torque: form(
    ['part'],
    'ToClause',
    'ByClause',
    'AmountClause',
    'PassesClause',
    'InClause',
    'WordsClause',
    'HeldClause',
    'TextClause',
  ),
  lock: form(['part'], 'ToClause', 'HeldClause', 'TextClause'),
  oil: form(['part', 'face'], 'InClause', 'TextClause'),
  connect: form(['port'], 'TextClause'),
  prime: form([], 'AmountClause', 'TextClause', 'ForClause'),
  relieve: form([], 'TextClause'),
  disconnect: form(['port'], 'TextClause'),
  test: form(
    [],
    'ReadClause',
    'HoldClause',
    'WithinClause',
    'ForClause',
    'FromClause',
    'ToClause',
    'InClause',
    'AtClause',
    'AmountClause',
    'AcceptClause',
    'RejectClause',
    'FailClause',
    'WordsClause',
    'ProvesClause',
    'NeverClause',
    'TextClause',
  ),
  set: form(['reading'], 'WithinClause', 'ToClause', 'ByClause', 'FailClause', 'TextClause', 'AtClause'),
  choose: form(['part'], 'BringClause', 'ByClause', 'NeverClause', 'TextClause'),
  across: form([], 'SpreadClause', 'FailClause', 'TextClause'),
  mark: form(['part'], 'TextClause', 'AtClause'),
  seal: form(['part'], 'TextClause'),
  pack: form([], 'TextClause', 'InClause'),
  'sign-off': form([], 'ByClause', 'TextClause'),
  'hold-for': form([], 'TextClause', 'ForClause'),
  wait: form([], 'AmountClause', 'ForClause', 'TextClause'),
  'send-out': form([], 'ForClause', 'TextClause'),
  'book-in': form([], 'TextClause'),
  do: form([], 'TextClause'),
};

/** Clauses that any step may carry. */
export const everywhere: readonly ClauseType[] = [
  'NoteClause',
  'AllowClause',
  'TakesClause',
  'SourceClause',
  'WithClause',
  'DangerClause',
];

/** Every way to go on after a verb: how it begins, and what follows. The grammar reads them, the table says after which verb. */
import { dangers } from './dangers.ts';

/** What follows the words of a phrase: words in quotes, a figure, a limit, a rule, or a name of one of these kinds. */
export type Follow =
  | 'text'
  | 'figure'
  | 'limit'
  | 'kind'
  | 'rule'
  | 'part'
  | 'face'
  | 'joint'
  | 'adjuster'
  | 'tool'
  | 'fluid'
  | 'station'
  | 'spec'
  | 'test'
  | 'repair'
  | 'places';

interface Form {
  /** Its fixed words, in each way to say them; none: it begins with what follows. */
  readonly said: readonly string[];
  readonly follows?: readonly Follow[];
  /** How the README shows it, where that is more than its words and what follows. */
  readonly shown?: string;
  /** Goes on from one of these, whatever the verb; `object`: from what the verb acts on. */
  readonly after?: readonly string[];
  /** What it goes on from is not whole without it. */
  readonly must?: true;
  /** Takes the place of what follows the words of this one. */
  readonly insteadOf?: string;
}

/** The first word of each key is its clause: it appears once in a step, unless it is in `repeating`. */
const forms = {
  text: { said: [], follows: ['text'] },
  amount: { said: [], follows: ['limit'], shown: 'a limit' },
  'with tool': { said: ['with'], follows: ['tool'] },
  'with part': { said: ['with'], follows: ['part'] },
  'with fluid': { said: ['with'], follows: ['fluid'] },
  'with marking': { said: ['with number', 'with serial'], shown: 'with number, serial' },
  'with text': { said: ['with'], follows: ['text'] },
  'with kind': { said: ['with wrench', 'with gauge', 'with tool'], follows: ['limit'] },
  'with gauge': { said: ['with gauge shut', 'with gauge open'], shown: 'with gauge shut' },
  'with air': { said: ['with air at most', 'with air'], follows: ['limit'], shown: 'with air at most 2 bar' },
  'with no fluid': { said: ['with air', 'with vacuum'] },
  'with marks': { said: ['with marks aligned'] },
  'and adapter': {
    said: ['and adapter'],
    follows: ['figure'],
    shown: 'and adapter 50 mm at 0°',
    after: ['with tool'],
  },
  'adapter at': { said: ['at'], follows: ['figure'], after: ['and adapter'] },
  'in text': { said: ['in'], follows: ['text'] },
  'in fluid': { said: ['in'], follows: ['fluid'] },
  'in time': { said: ['in'], follows: ['limit'], shown: 'in 6..20 s' },
  'in cross pattern': { said: ['in cross pattern'] },
  'at limit': { said: ['at'], follows: ['figure'] },
  'at each': { said: ['at each'], follows: ['places'], shown: 'at each PLACE' },
  'at station': { said: ['at'], follows: ['station'] },
  'to limit': { said: ['to'], follows: ['limit'] },
  'to spec': { said: ['to'], follows: ['spec'] },
  'to station': { said: ['to'], follows: ['station'] },
  'to parts': { said: ['to'], follows: ['part', 'face', 'adjuster'], shown: 'to PARTS' },
  'to bring': { said: ['to bring'], follows: ['test', 'spec'], shown: 'to bring TEST to LIMIT' },
  'bring to': { said: ['to'], follows: ['limit', 'spec'], after: ['to bring'], must: true },
  from: { said: ['from'], follows: ['limit'] },
  'from place': { said: ['from'], follows: ['places'], shown: 'from PLACE' },
  'by text': { said: ['by'], follows: ['text'] },
  'by spec': { said: ['by'], follows: ['spec'] },
  'by adjuster': { said: ['by'], follows: ['adjuster'] },
  'by stretch': { said: ['by stretch'], follows: ['limit'], shown: 'by stretch 0.009..0.010 in' },
  'for trial': { said: ['for trial'] },
  'for time': { said: ['for'], follows: ['limit'], shown: 'for 15 min' },
  'for text': { said: ['for'], follows: ['text'] },
  within: { said: ['within'], follows: ['spec', 'limit'] },
  accept: { said: ['accept'], follows: ['text', 'limit'] },
  reject: { said: ['reject if', 'reject'], follows: ['text'], shown: 'reject if "…"' },
  verdict: { said: ['reuse if'], follows: ['text'] },
  'verdict lap': { said: ['lap if'], follows: ['text'] },
  'then wash': { said: ['then wash in'], follows: ['fluid'], after: ['verdict lap', 'fail lap'] },
  fail: { said: ['on fail'], follows: ['repair'] },
  'fail part': {
    said: ['renew', 'wash', 'rinse', 'oil', 'wipe'],
    follows: ['part', 'face'],
    insteadOf: 'fail',
  },
  'fail lap': { said: ['lap'], follows: ['part', 'face'], insteadOf: 'fail' },
  'fail fluid': { said: ['in'], follows: ['fluid'], after: ['fail part'] },
  furthest: { said: ['of the furthest out'], after: ['fail', 'fail part', 'fail lap'] },
  again: { said: ['then all again'], after: ['fail', 'fail part', 'fail lap', 'furthest'] },
  note: { said: ['note'], follows: ['text'] },
  allow: { said: ['allow'], follows: ['rule'], shown: 'allow RULE because "…"' },
  because: { said: ['because'], follows: ['text'], after: ['allow'], must: true },
  takes: { said: ['takes'], follows: ['figure'], shown: 'takes 10 min' },
  source: { said: ['source'], follows: ['text'] },
  held: { said: ['held by'], follows: ['text'] },
  'words threads oiled': { said: ['threads oiled'] },
  'as words': { said: ['as'], follows: ['text'], shown: 'as 6 letters or digits` or `as "good", "worn"' },
  'words as found': { said: ['as found'] },
  'words as left': { said: ['as left'] },
  'words stop if fails': { said: ['stop if fails'] },
  'words ready to fit': { said: ['ready to fit'] },
  passes: { said: ['passes'], follows: ['figure'], shown: 'passes 50 % 75 % 100 %' },
  moves: { said: ['slides', 'turns-free'], follows: ['text'] },
  spread: { said: ['spread at most', 'spread'], follows: ['limit'], shown: 'spread at most …' },
  proves: { said: ['proves through'], follows: ['joint', 'adjuster', 'face', 'part'], shown: 'proves through JOINT' },
  never: { said: ['never above'], follows: ['figure'] },
  except: { said: ['except'], follows: ['part'] },
  'of parts': { said: ['of'], follows: ['part'], shown: 'of PARTS' },
  danger: { said: [...dangers, ...dangers.map((danger) => `not ${danger}`)] },
  read: { said: ['read'], follows: ['kind'], shown: 'read KIND' },
  hold: { said: ['hold'], follows: ['limit'], shown: 'hold … below TEST' },
  'hold of': { said: ['below', 'above'], follows: ['test', 'spec'], after: ['hold'] },
  point: { said: ['point'], shown: 'point NAME …' },
  'worked out': { said: ['worked out as'], shown: 'worked out as A less B' },
  located: { said: ['located', 'located by'], shown: 'located', after: ['object'] },
} as const satisfies Readonly<Record<string, Form>>;

export type PhraseName = keyof typeof forms;
export interface Phrase extends Form {
  readonly name: PhraseName;
}

export const phrases: readonly Phrase[] = (Object.keys(forms) as PhraseName[]).map((name) => ({
  name,
  ...forms[name],
}));

/** The clause that a phrase is a way to write: two of one clause are refused. */
export const clauseOf = (phrase: PhraseName): string => phrase.replace(/ .*/u, '');

const repeating: ReadonlySet<string> = new Set([
  'with',
  'verdict',
  'allow',
  'note',
  'words',
  'in',
  'text',
  'by',
  'at',
  'danger',
  'point',
]);

/** Whether a clause may appear in a step more than once. */
export const repeats = (phrase: PhraseName): boolean => repeating.has(clauseOf(phrase));

/** What any step may say. */
export const everywhere: readonly PhraseName[] = [
  'text',
  'with text',
  'with kind',
  'with air',
  'note',
  'takes',
  'source',
  'allow',
  'danger',
];

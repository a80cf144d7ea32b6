/** Verbs and clauses in words: what each takes, with an example. */

import { either, say, type Tell, term } from '../say/say.ts';
import { phrasesAfter, spellingOf, type Verb, verbTable } from '../syntax/verbs/index.ts';
import { everywhere, type Phrase } from '../syntax/verbs/phrases.ts';
import type { VerbObject } from '../syntax/verbs/verb.ts';

/** One step of each verb as it is written at the bench. */
export const examples: Readonly<Record<Verb, string>> = {
  receive: 'receive',
  tag: 'tag',
  photo: 'photo "Each side, with the tag"',
  clamp: 'clamp body in "holding fixture"',
  unclamp: 'unclamp body',
  keep: 'keep nozzle, needle at tank "Own basket, own number"',
  send: 'send nozzle to wheel',
  slacken: 'slacken nut held by "open-end wrench"',
  'back-off': 'back-off screw',
  remove: 'remove nut, nozzle with needle',
  discard: 'discard washer',
  compress: 'compress spring with "spring press"',
  release: 'release spring',
  press: 'press bush with "arbor press"',
  guard: 'guard body.end with nut',
  cap: 'cap inlet, return',
  uncap: 'uncap inlet',
  connect: 'connect inlet',
  disconnect: 'disconnect inlet',
  prime: 'prime 6 strokes with gauge shut',
  relieve: 'relieve',
  wash: 'wash body, nut in solvent for 15 min',
  rinse: 'rinse nozzle, needle in cal-oil',
  soak: 'soak spacer in solvent for 20 min',
  'blow-dry': 'blow-dry all with air at most 2 bar',
  wipe: 'wipe body in solvent',
  oil: 'oil nut with cal-oil',
  blast: 'blast body at wheel',
  buff: 'buff body "Outside only"',
  'clean-outside': 'clean outside in solvent',
  'clean-holes': 'clean holes of nozzle "Wire of the size of the hole"',
  lap: 'lap spacer.top "Figure eights on the plate"',
  check: 'check needle slides "Falls by its own weight" on fail renew nozzle, needle (once)',
  measure: 'measure spring within spring-length on fail renew spring (once)',
  read: 'read opening as found',
  renew: 'renew nozzle, needle',
  fit: 'fit shim, spring, nozzle located with needle',
  'line-up': 'line-up spacer "Dowel holes over each other"',
  'run-down': 'run-down nut',
  torque: 'torque nut to nut-fit with TW-80',
  lock: 'lock lock-nut to 20 N·m ±2',
  choose: 'choose shim to bring opening to 254 bar by shim-rate',
  test: 'test opening read pressure within opening on fail reshim (3 times)',
  set: 'set opening to opening by screw',
  record: 'record trim "Trim code" as 6 letters or digits',
  across: 'across the set opening spread at most 5 bar on fail reshim (3 times)',
  mark: 'mark body with number, serial',
  seal: 'seal screw with "wire and lead"',
  pack: 'pack in "own box"',
  'sign-off': 'sign-off by "Bench lead"',
  'hold-for': 'hold-for "the foreman"',
  wait: 'wait at least 10 min',
  'send-out': 'send-out "Hard chroming"',
  'book-in': 'book-in',
  do: 'do "Turn the seat scraper three times by hand"',
};

/** What is to be filled in is called as its reader calls it; the words of the language stay. */
const objectWords: Readonly<Record<VerbObject, readonly string[]>> = {
  part: ['PARTS'],
  face: ['FACES'],
  port: ['PORTS'],
  adjuster: ['ADJUSTER'],
  reading: ['TEST', 'SPEC'],
  gate: ['TEST'],
};

/** What a verb acts on; null where it acts on the unit. */
export function objectsText(verb: Verb, tell: Tell): string | null {
  const { objects, all } = verbTable[verb];
  const words = [...objects.flatMap((kind) => objectWords[kind].map(term)), ...(all === undefined ? [] : ['all'])];
  return words.length === 0 ? null : tell(either(words));
}

function inCapitals(text: string, tell: Tell): string {
  return text.replace(/\b[A-Z]{4,}\b/gu, (word) => tell(term(word)));
}

/** A way to go on, as it is written. */
export function phraseText({ said, follows, shown }: Phrase, tell: Tell): string {
  if (shown !== undefined) return inCapitals(shown.startsWith('a ') ? 'LIMIT' : shown, tell);
  const behind = [...new Set((follows ?? []).map((one) => (one === 'text' ? '"…"' : one.toUpperCase())))];
  return inCapitals(`${said[0] ?? ''} ${tell(either(behind))}`, tell).trim();
}

/** What may follow a verb and its objects, its own clauses first. */
export function clausesOf(verb: Verb): Phrase[] {
  return phrasesAfter(verb).filter(({ name, after }) => after === undefined && !everywhere.includes(name));
}

/** Markdown: what a verb does, what it takes, and an example. */
export function verbMarkdown(verb: Verb, tell: Tell): string {
  const takes = [...new Set(clausesOf(verb).map((one) => phraseText(one, tell)))];
  const objects = objectsText(verb, tell);
  return [
    `**${spellingOf(verb)}**${objects === null ? '' : ` ${objects}`}: ${tell(term(verbTable[verb].does))}.`,
    `\`\`\`rebuild\n${examples[verb]}\n\`\`\``,
    ...(takes.length === 0 ? [] : [tell(say`Goes on with ${takes.map((one) => `\`${one}\``).join(', ')}.`)]),
  ].join('\n\n');
}

/** Markdown: the ways to go on after a verb that have a word. Null: none has it. */
export function clauseMarkdown(verb: Verb, word: string, tell: Tell): string | null {
  const found = phrasesAfter(verb).filter(({ said }) => said.some((one) => one.split(' ').includes(word)));
  if (found.length === 0) return null;
  const ways = [...new Set(found.map((phrase) => `\`${phraseText(phrase, tell)}\``))];
  const head = tell(say`**${word}** after ${spellingOf(verb)}: ${ways.join(', ')}`);
  return `${head}\n\n\`\`\`rebuild\n${examples[verb]}\n\`\`\``;
}

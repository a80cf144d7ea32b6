/** Verbs and clauses in words: what each takes, with an example. */

import { phrasesAfter, spellingOf, type Verb, verbTable } from '../syntax/verbs/index.ts';
import { everywhere, type Follow, type Phrase } from '../syntax/verbs/phrases.ts';
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

const objectWords: Readonly<Record<VerbObject, string>> = {
  part: 'PARTS',
  face: 'FACES',
  port: 'PORTS',
  adjuster: 'ADJUSTER',
  reading: 'TEST or SPEC',
  gate: 'TEST',
};

const followWords: Readonly<Partial<Record<Follow, string>>> = { text: '"…"', limit: 'LIMIT', figure: 'FIGURE' };

/** What a verb acts on; null where it acts on the unit. */
export function objectsText(verb: Verb): string | null {
  const { objects, all } = verbTable[verb];
  const words = [...objects.map((kind) => objectWords[kind]), ...(all === undefined ? [] : ['all'])];
  return words.length === 0 ? null : words.join(', or ');
}

/** A way to go on, as it is written. */
export function phraseText({ said, follows, shown }: Phrase): string {
  if (shown !== undefined) return shown.startsWith('a ') ? 'LIMIT' : shown;
  const behind = [...new Set((follows ?? []).map((one) => followWords[one] ?? one.toUpperCase()))].join(' or ');
  return `${said[0] ?? ''} ${behind}`.trim();
}

/** What may follow a verb and its objects, its own clauses first. */
export function clausesOf(verb: Verb): Phrase[] {
  return phrasesAfter(verb).filter(({ name, after }) => after === undefined && !everywhere.includes(name));
}

/** Markdown: what a verb does, what it takes, and an example. */
export function verbMarkdown(verb: Verb): string {
  const takes = [...new Set(clausesOf(verb).map(phraseText))];
  const objects = objectsText(verb);
  return [
    `**${spellingOf(verb)}**${objects === null ? '' : ` ${objects}`}: ${verbTable[verb].does}.`,
    `\`\`\`rebuild\n${examples[verb]}\n\`\`\``,
    ...(takes.length === 0 ? [] : [`Goes on with ${takes.map((one) => `\`${one}\``).join(', ')}.`]),
  ].join('\n\n');
}

/** Markdown: the ways to go on after a verb that have a word. Null: none has it. */
export function clauseMarkdown(verb: Verb, word: string): string | null {
  const found = phrasesAfter(verb).filter(({ said }) => said.some((one) => one.split(' ').includes(word)));
  if (found.length === 0) return null;
  const ways = [...new Set(found.map((phrase) => `\`${phraseText(phrase)}\``))];
  return `**${word}** after ${spellingOf(verb)}: ${ways.join(', ')}\n\n\`\`\`rebuild\n${examples[verb]}\n\`\`\``;
}

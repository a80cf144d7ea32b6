import { type Said, say } from '../say/say.ts';
/** Words that a bench hand says for a verb of the language, and that look nothing like it. */
export const synonyms: ReadonlyMap<string, string> = new Map(
  Object.entries({
    inspect: 'check',
    examine: 'check',
    tighten: 'torque',
    'hand-tighten': 'run-down',
    unscrew: 'remove',
    'take-off': 'remove',
    dismantle: 'remove',
    loosen: 'slacken',
    undo: 'slacken',
    install: 'fit',
    assemble: 'fit',
    insert: 'fit',
    replace: 'renew',
    scrap: 'discard',
    grease: 'oil',
    lubricate: 'oil',
    flush: 'rinse',
    dry: 'blow-dry',
    polish: 'buff',
    plug: 'cap',
    bleed: 'prime',
    drain: 'relieve',
    release_pressure: 'relieve',
    'leak-test': 'test',
    stamp: 'mark',
    engrave: 'mark',
    label: 'tag',
  }),
);

/** The message for a word that stands for a verb. */
export function synonymMessage(word: string): Said {
  return say`Here ${word} is called ${synonyms.get(word)!}. Write ${synonyms.get(word)!}.`;
}

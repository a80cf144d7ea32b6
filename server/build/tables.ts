/**
 * `npm run tables`: writes what comes from the table of verbs and the shapes of parts into the grammar, the colors and the README, and the settings of the
 * extension from its manifest into the README.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { usualHazards } from '../../language/analysis/cautions/index.ts';
import { drawnAs } from '../../language/model/drawn-as.ts';
import { english } from '../../language/say/say.ts';
import { spellingOf, type Verb, verbs, verbTable } from '../../language/syntax/verbs/index.ts';
import { type Follow, type Phrase, type PhraseName, phrases } from '../../language/syntax/verbs/phrases.ts';
import type { VerbObject } from '../../language/syntax/verbs/verb.ts';
import manifest from '../../package.json' with { type: 'json' };

/** A file with a place in it that is made from the table. */
interface Made {
  readonly path: string;
  /** The text before the place, the place, and the text after it. */
  readonly place: RegExp;
  readonly text: string;
}

/** Verbs that a rule of their own reads. */
const own: readonly Verb[] = ['clean-outside', 'clean-holes', 'test', 'record', 'across'];

/** A rule of the grammar that is one of these words. */
function ruleOf(name: string, words: readonly string[]): Made {
  const lines: string[] = [''];
  for (const word of words.map((one) => `'${one}'`)) {
    const longer = `${lines.at(-1)} | ${word}`;
    if (lines.at(-1) === '') lines[lines.length - 1] = `    ${word}`;
    else if (longer.length <= 118) lines[lines.length - 1] = longer;
    else lines.push(`  | ${word}`);
  }
  return {
    path: 'language/syntax/rebuild.langium',
    place: new RegExp(String.raw`(\n${name} returns string:\n)([^;]*)(;)`, 'u'),
    text: lines.join('\n'),
  };
}

const objectWords: Readonly<Record<VerbObject, string>> = {
  part: 'PARTS',
  face: 'FACES',
  port: 'PORTS',
  adjuster: 'ADJUSTER',
  reading: 'TEST',
  gate: 'TEST',
};

const followWords: Readonly<Partial<Record<Follow, string>>> = { text: '"…"', limit: '…', figure: '…' };

/** A phrase as the README shows it. */
function shown({ said, follows, shown: written }: Phrase): string {
  if (written !== undefined) return written.startsWith('a ') ? written : `\`${written}\``;
  const [first] = follows ?? [];
  const behind = first === undefined ? '' : (followWords[first] ?? first.toUpperCase());
  return said.map((words) => `\`${`${words} ${behind}`.trim()}\``).join(', ');
}

/** Rows of the README's table; verbs that differ by their words alone share one. */
function rows(): string[] {
  const made = new Map<string, string[]>();
  for (const verb of verbs) {
    const { objects, all, takes, does } = verbTable[verb];
    const [first, ...others] = objects.map((kind) => objectWords[kind]);
    const then = [...others.map((kind) => kind.toLowerCase()), ...(all === undefined ? [] : ['`all`'])];
    const behind = takes.map((name: PhraseName) => shown(phrases.find((phrase) => phrase.name === name)!)).join(', ');
    const same = ` | ${behind === '' ? '' : `${behind} `}| ${does} |`;
    const what = [`\`${[spellingOf(verb), first].filter(Boolean).join(' ')}\``, ...then].join(', ');
    made.set(same, [...(made.get(same) ?? []), what]);
  }
  return [...made].map(([same, what]) => `| ${what.join('; ')}${same}`);
}

/** A setting, as the manifest describes it. */
interface Setting {
  readonly default: unknown;
  readonly enum?: readonly string[];
  readonly markdownDescription: string;
}

/** Rows of the README's table of settings. */
function settingRows(): string[] {
  const settings: Readonly<Record<string, Setting>> = manifest.contributes.configuration.properties;
  return Object.entries(settings).map(([name, { default: byDefault, enum: values, markdownDescription }]) => {
    const choice = values?.map((value) => (value === '' ? 'empty' : `\`${value}\``)).join(', ');
    const shown = byDefault === '' ? 'empty' : `\`${byDefault}\``;
    return `| \`${name}\` | ${shown} | ${markdownDescription}${choice === undefined ? '' : ` One of: ${choice}.`} |`;
  });
}

export const tables: readonly Made[] = [
  ruleOf(
    'ObjectVerb',
    verbs.filter((verb) => !own.includes(verb) && verbTable[verb].objects.length > 0),
  ),
  ruleOf(
    'BareVerb',
    verbs.filter((verb) => !own.includes(verb) && verbTable[verb].objects.length === 0),
  ),
  {
    path: 'extension/syntaxes/rebuild.tmLanguage.json',
    // `across the set` is painted with the name of its test, and `lap if` is a clause.
    place: /("match": "\(\?:\^\|\(\?<=\\\\\{\)\)\\\\s\*\()(clean[^)]*(?:\(\?![^)]*\)[^)]*)*)(\|only\|hazard\))/u,
    text: [...verbs]
      .filter((verb) => verb !== 'across')
      .sort((a, b) => Number(b.startsWith('clean-')) - Number(a.startsWith('clean-')))
      .map((verb) =>
        verb === 'lap' ? String.raw`lap(?!\\s+if\\b)` : spellingOf(verb).replaceAll(' ', String.raw`\\s+`),
      )
      .join('|'),
  },
  {
    path: 'extension/syntaxes/rebuild.tmLanguage.json',
    place: /(\(drawn\\\\s\+as\)\\\\s\+\()([^)]*)(\))/u,
    // The longest first: `shaft-and-wheel` is no `shaft`.
    text: [...drawnAs].sort((a, b) => b.length - a.length).join('|'),
  },
  {
    path: 'README.md',
    place: /(<!-- verbs: npm run tables -->\n)([\s\S]*?)(\n<!-- end of verbs -->)/u,
    text: ['| verb | what it takes | what it does |', '|---|---|---|', ...rows()].join('\n'),
  },
  {
    path: 'README.md',
    place: /(<!-- cautions: npm run tables -->\n)([\s\S]*?)(<!-- end of cautions -->)/u,
    text: [
      '| caution | signal word | follows from |',
      '|---|---|---|',
      ...usualHazards.map(({ topic, word, from }) => `| \`${topic}\` | ${word} | ${english(from)} |`),
      '',
    ].join('\n'),
  },
  {
    path: 'README.md',
    place: /(<!-- settings: npm run tables -->\n)([\s\S]*?)(\n<!-- end of settings -->)/u,
    text: ['| setting | default | |', '|---|---|---|', ...settingRows()].join('\n'),
  },
];

/** The text of a file with its place rewritten; null: the place is not found. */
export function written({ place, text }: Made, now: string): string | null {
  return place.test(now) ? now.replace(place, (_, before, __, behind) => `${before}${text}${behind}`) : null;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  for (const table of tables) {
    const now = readFileSync(table.path, 'utf8');
    const next = written(table, now);
    if (next === null) throw new Error(`${table.path} has no place for ${table.place}`);
    writeFileSync(table.path, next);
  }
}

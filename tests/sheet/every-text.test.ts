/**
 * Every text of a procedure, its family, its shop and its job is on the sheet. Each is marked in the model itself,
 * whatever it is called there: a field that is added later is looked for too, until it is printed or listed here.
 */
import { describe, expect, it } from 'vitest';
import { headTexts, renderText } from '../../language/documents/texts.ts';
import { buildSheet } from '../../language/documents/traveler/index.ts';
import type { Job, Procedure } from '../../language/model/index.ts';
import { numbersOf } from './claims.ts';
import { drawnTexts } from './html.ts';
import { libraryPrints, type Print } from './prints.ts';

/** Keys of what names, counts or sorts a thing, and is no text of an author's. */
const structural: ReadonlySet<string> = new Set([
  ...['name', 'id', 'key', 'number', 'file', 'source', 'extent', 'likeSource', 'call', 'position', 'place'],
  ...[
    'kind',
    'form',
    'verb',
    'unit',
    'gas',
    'finish',
    'relation',
    'moves',
    'verdict',
    'word',
    'rule',
    'gauge',
    'reads',
  ],
  ...[
    'part',
    'material',
    'base',
    'to',
    'meets',
    'guardedBy',
    'lockedBy',
    'under',
    'sets',
    'chosenFrom',
    'drawnAs',
    'whenNewPart',
    'baseTitle',
    'spec',
    'of',
  ],
  ...['on', 'in', 'through', 'bearsOn', 'holds', 'matchedTo', 'balancedWith', 'provesThrough', 'provenBy', 'with'],
  ...[
    'fluid',
    'station',
    'at',
    'reading',
    'test',
    'as',
    'rate',
    'repair',
    'marking',
    'only',
    'per',
    'tool',
    'way',
    'how',
    'signs',
    'film',
    'places',
    'eachOf',
  ],
  // Figures as digits, and dates.
  ...[
    'accuracyClass',
    'propertyClass',
    'due',
    'calibrated',
    'danger',
    'approvedOn',
    'received',
    'acceptance',
    'thread',
    'like',
    'language',
    'revision',
    'numberText',
  ],
]);

/** Texts that are printed elsewhere or nowhere, with the reason. */
const elsewhere: readonly { readonly path: RegExp; readonly why: string }[] = [
  { path: /\.shop\.about\.|\.certificate$/u, why: 'a customer reads it on the certificate' },
  { path: /\.results\./u, why: 'what was found and read prints on the certificate' },
  { path: /\.plan\.from$/u, why: 'a place is called by its number' },
  { path: /\.objects\.[1-9]\d*\.located$/u, why: 'of several copies that of the first is printed' },
  { path: /\.(adjusters|joints)\.\d+\.title/u, why: 'a joint and an adjuster are called by their part' },
];

/** What the shop has and other part numbers are is printed where it is used: one of each kind, by one of all prints. */
const whereUsed = /^\.(shop|numbers)\.|\.heldIn$/u;

interface Marked {
  readonly path: string;
  readonly mark: string;
}

/** The same data with a mark behind each text. */
function marked<T>(value: T, path: string, marks: Marked[]): T {
  if (Array.isArray(value)) return value.map((one, at) => marked(one, `${path}.${at}`, marks)) as T;
  if (value === null || typeof value !== 'object') return value;
  const named = value as { readonly name?: unknown; readonly title?: unknown; readonly position?: unknown };
  return Object.fromEntries(
    Object.entries(value).map(([key, inner]) => {
      const at = `${path}.${key}`;
      if (typeof inner !== 'string')
        return [key, key === 'procedure' || structural.has(key) ? inner : marked(inner, at, marks)];
      // A title that is the name is none, and a part of several cylinders or sides is called by its base and where it is.
      const isDerived = key === 'title' && (inner === named.name || typeof named.position === 'number');
      if (structural.has(key) || inner === '' || isDerived) return [key, inner];
      const mark = `qz${marks.length}zq`;
      marks.push({ path: at, mark });
      return [key, `${inner} ${mark}`];
    }),
  ) as T;
}

/** The texts of a print, and which of them it says. */
function textsOf({ procedure, options }: Print): { readonly path: string; readonly said: boolean }[] {
  const numbers = numbersOf(procedure, options);
  const shown = <P extends Pick<Procedure['repairs'][number], 'steps'>>(place: P): P => ({
    ...place,
    steps: place.steps.filter(({ only }) => only === null || only.some((name) => numbers.includes(name))),
  });
  const whole: Procedure = {
    ...procedure,
    stages: procedure.stages.map(shown),
    repairs: procedure.repairs.map(shown),
  };
  const marks: Marked[] = [];
  const made = marked(whole, '', marks);
  const job: Job | null = options.job === null ? null : { ...marked(options.job, 'job', marks), procedure: made };
  const sheet = buildSheet(made, { ...options, job, diagnostics: [] });
  const drawn = sheet.blocks.flatMap((block) =>
    block.kind === 'drawing' ? [block.alt, ...drawnTexts(block.svg)] : [],
  );
  const printed = [...headTexts(sheet), ...renderText(sheet), ...drawn].join('\n');
  const copies = copiesOf(procedure);
  return marks
    .filter(({ path }) => !copies.some((copy) => path.startsWith(copy)))
    .filter(({ path }) => !elsewhere.some((one) => one.path.test(path)))
    .map(({ path, mark }) => ({ path, said: printed.includes(mark) }));
}

/**
 * Where copies of a part are, by cylinder or side: they are said once, by the title that they share, so the texts of the
 * first count for all, and its own title, with its cylinder, for none.
 */
function copiesOf({ family }: Procedure): string[] {
  const isCopy = (name: string) => family.parts.some((part) => part.name === name && part.position !== null);
  const first = new Set<string>();
  const again = (base: string) => first.has(base) || !first.add(base);
  return [
    ...family.parts.flatMap(({ name, base }, at) =>
      isCopy(name) ? (again(base) ? `.family.parts.${at}.` : `.family.parts.${at}.title`) : [],
    ),
    ...family.ports.flatMap(({ part, base }, at) =>
      isCopy(part) && again(`port ${base}`) ? `.family.ports.${at}.` : [],
    ),
    ...family.faces.flatMap(({ part, name }, at) => {
      const { base } = family.parts.find((one) => one.name === part)!;
      return isCopy(part) && again(`face ${base} ${name}`) ? `.family.faces.${at}.` : [];
    }),
  ];
}

// The flawed procedure mentions things that no step uses: they are among its mistakes.
const prints = libraryPrints('a4').filter(({ procedure }) => !procedure.source.file.includes('flawed/'));

describe('every text is printed', () => {
  it.each(prints)('of $name', (print) => {
    const lost = textsOf(print).filter(({ path, said }) => !said && !whereUsed.test(path));
    expect(lost.map(({ path }) => path)).toEqual([]);
  });
  it('of the shop and of part numbers, where it is used', () => {
    const kinds = new Map<string, boolean>();
    for (const { path, said } of prints.flatMap(textsOf)) {
      const kind = path.replace(/\.\d+/gu, '');
      if (whereUsed.test(path)) kinds.set(kind, said || kinds.get(kind) === true);
    }
    expect([...kinds].filter(([, said]) => !said).map(([kind]) => kind)).toEqual([]);
    expect(kinds.size).toBeGreaterThan(8);
  });
  it('and of all kinds there are many', () => {
    const paths = new Set(prints.flatMap(textsOf).map(({ path }) => path.replace(/\.\d+/gu, '')));
    expect(paths.size).toBeGreaterThan(25);
  });
});

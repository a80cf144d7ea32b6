/** Random procedures with random words in every place where an author may write some. */
import fc from 'fast-check';
import { checkFiles } from '../../language/db/workspace.ts';
import type { Allow, Job, Procedure, Repair, Source, Stage, Step } from '../../language/model/index.ts';
import { own } from '../../language/model/steps.ts';
import { numbersFrom, tastes, walk } from '../legal/walk.ts';
import { procedureTexts, shopText } from '../oracle/random.ts';
import { type Print, printOf } from './prints.ts';

/** Words as they may come: of the trade, with signs that fonts join or take from another font, long, and hostile. */
const samples = [
  'official fitting, flush, fluffy waffle',
  'Größe ⌀8 ½ ± 3 µm → ☐ ½″',
  '#panic() $x$ `raw` *b* _c_ <b>&amp;</b> "quoted" \\u{41} [d] @e ~ =',
  'two  blanks\u00a0and a no-break one\u202fand a narrow one',
  'Unterwasserschneidbrennerhalterungsschraubendreher',
  'see 3.4 and R1.2, 1.5 mm, page 2 of 9',
  'wear gloves; let it cool',
  'as-found/as-left - half-moon key',
];

/** A few of the samples, marked so that no other text can stand for them. */
type Words = () => string;

/** The text of a legal procedure, or of one with mistakes; null if the walk reached a dead end. */
function textOf(seed: number): string | null {
  if (seed % 2 === 0) return shopText + fc.sample(procedureTexts, { seed, numRuns: 1 })[0]!;
  return walk(fc.sample(tastes, { seed, numRuns: 1 })[0]!, numbersFrom(seed));
}

/** A random print; null where the seed gives none. */
export function randomPrint(seed: number): Print | null {
  const text = textOf(seed);
  const checked = text === null ? null : checkFiles([{ uri: 'random.rebuild', text }]);
  const [first] = checked?.procedures ?? [];
  if (checked === null || first === undefined) return null;
  const random = numbersFrom(seed + 1);
  let count = 0;
  const words: Words = () => `${samples[Math.floor(random() * samples.length)]!} w${seed}x${count++}`;
  const chance = (share: number) => random() < share;
  const procedure = dressed(first.procedure, words, chance);
  const job = chance(0.5) ? jobFor(procedure, 1 + Math.floor(random() * 14), words, chance) : null;
  return printOf(checked, procedure, { job, paper: chance(0.5) ? 'a4' : 'letter' });
}

type Chance = (share: number) => boolean;

/** The procedure with words put into it. */
function dressed(procedure: Procedure, words: Words, chance: Chance): Procedure {
  const { family, shop } = procedure;
  /** In this share of places one of them, in a third of those two: what prints only the first is seen. */
  const some = <T>(share: number, make: () => T): T[] =>
    chance(share) ? Array.from({ length: chance(0.3) ? 2 : 1 }, make) : [];
  const step = (one: Step): Step => ({
    ...one,
    note: chance(0.2) ? words() : one.note,
    hazards: [
      ...one.hazards,
      ...some(0.15, () => ({ word: chance(0.5) ? 'DANGER' : 'NOTICE', text: words(), source: one.source }) as const),
    ],
    allow: [...one.allow, ...some(0.1, () => allowed(one.source, words))],
    text: one.text !== null && chance(0.5) ? words() : one.text,
    ...(own(one, 'accept') != null && chance(0.5) ? { accept: words() } : {}),
    sourceText: own(one, 'limit')?.form === 'limit' && chance(0.5) ? words() : one.sourceText,
    ...(own(one, 'holder') != null && chance(0.5) ? { holder: words() } : {}),
  });
  const place = <P extends Stage | Repair>(one: P): P => ({
    ...one,
    title: 'inline' in one && one.inline ? one.title : chance(0.4) ? words() : one.title,
    allow: [...one.allow, ...some(0.2, () => allowed(one.source, words))],
    steps: one.steps.map(step),
  });
  return {
    ...procedure,
    title: words(),
    approvedBy: chance(0.7) ? words().slice(0, 60) : null,
    hazards: some(0.4, () => ({ word: 'WARNING', text: words(), source: procedure.source }) as const),
    allow: some(0.4, () => allowed(procedure.source, words)),
    family: {
      ...family,
      parts: family.parts.map((part) => ({
        ...part,
        title: chance(0.4) ? `Q${words()}` : part.title,
        locatedBy: part.locatedBy === null ? null : words(),
      })),
    },
    shop: { ...shop, stations: shop.stations.map((station) => ({ ...station, wear: chance(0.3) ? words() : null })) },
    specs: procedure.specs.map((spec) => ({
      ...spec,
      title: chance(0.3) ? `Q${words()}` : spec.title,
      sourceText: words(),
    })),
    stages: procedure.stages.map(place),
    repairs: procedure.repairs.map(place),
  };
}

function allowed(source: Source, words: Words): Allow {
  return { rule: 'some-rule', because: words(), source, extent: source };
}

function jobFor(procedure: Procedure, count: number, words: Words, chance: Chance): Job {
  const { source } = procedure;
  return {
    name: '77',
    title: words(),
    source,
    order: null,
    intake: [],
    checks: [],
    procedure,
    revision: procedure.revision,
    customer: chance(0.5) ? words() : null,
    received: chance(0.5) ? '2026-11-03' : null,
    units: Array.from({ length: count }, (_, index) => ({
      place: String(index + 1),
      number: null,
      numberText: `K-${index}`,
      serial: chance(0.8) ? `S${1000 + index}` : null,
      noSerial: null,
      onHold: chance(0.2) ? words() : null,
      note: chance(0.2) ? words() : null,
      results: [],
      source,
    })),
  };
}

/** Which units may follow a figure, by the kind of quantity that is written there. */
import { type KindWord, kindAdmits, kindOf, units } from '../../quantities/index.ts';
import type { Kind } from '../../quantities/types.ts';
import { kindWords } from '../../syntax/keywords.ts';
import { type Verb, verbs } from '../../syntax/verbs/index.ts';
import type { Place } from './place.ts';

/** Whether the words break off in a figure whose unit comes next. */
function endsInFigure({ before }: Place): boolean {
  const [one, last] = before.slice(-2);
  if (last === undefined || !/^\d+(?:\.\d+)?$/u.test(last)) return false;
  // `unit 1`, `nozzle 3`, `revision 2`: no figures. A tolerance takes the unit of its nominal.
  return !(one === undefined || /^[±−+-]$/u.test(one)) && !countedWords.has(before[0]!);
}

const countedWords: ReadonlySet<string> = new Set(['unit', 'job', 'only']);

/** Units that may follow, those that the text uses most first. None where the kind cannot be known. */
export function unitsAt(place: Place, kindOfSpec: (name: string) => Kind | null, text: string): string[] {
  const kinds = endsInFigure(place) ? kindsAt(place, kindOfSpec) : [];
  const found = units.flatMap(({ name, kind }) => (kinds.includes(kind) ? [name] : []));
  const uses = new Map(found.map((name) => [name, text.split(` ${name}`).length]));
  return found.sort((one, other) => uses.get(other)! - uses.get(one)!);
}

const ofWord = (word: string): Kind[] => [
  ...new Set(units.flatMap(({ name, kind }) => (kindAdmits(kindOf(word as KindWord), name) ? [kind] : []))),
];

/** What a figure of an asset is in. */
const ofAsset: Readonly<Record<string, readonly Kind[]>> = {
  wrench: ['torque'],
  gauge: ['pressure'],
  tool: ['length'],
};

function kindsAt({ before, blocks }: Place, kindOfSpec: (name: string) => Kind | null): readonly Kind[] {
  const block = blocks.at(-1)?.word ?? null;
  // The word that says what the figure is, before signs, other figures and `at least`.
  const words = before.filter((word) => /^\p{L}/u.test(word) && !['least', 'most', 'then'].includes(word));
  const ofName = (name: string | undefined): readonly Kind[] => {
    const kind = name === undefined ? null : kindOfSpec(name);
    return kind === null ? [] : [kind];
  };
  const head = before[0]!;
  let last = words.at(-1) ?? '';
  if (last === 'at' && /^(?:least|most)$/u.test(before.at(-2) ?? '')) last = words.at(-2) ?? '';
  if (block === 'procedure' && head === 'spec') return ofSpec(words, last);
  if (block === 'number') return ofName(words.findLast((word) => kindOfSpec(word) !== null));
  if (block === 'unit')
    return last === 'in' || last === 'out'
      ? ['length']
      : last !== head && head === 'torque'
        ? ['torque']
        : ofName(last);
  if (block === 'shop') return inShop(head, last);
  if (block === 'family') return last === 'over' ? ['length'] : head === 'adjuster' ? ['screw rate'] : [];
  return inStep(words, last, ofName);
}

function ofSpec(words: readonly string[], last: string): readonly Kind[] {
  if (last === 'per') return ['length', 'turns'];
  if (last === 'stiffness' && words.includes('rate')) return ['stiffness'];
  if (last === 'guide' || last === 'seat') return ['length'];
  const kind = words.slice(2).find((word) => kindWords.includes(word));
  if (kind === 'rate') return ['pressure', 'setting rate', 'screw rate'];
  return kind === undefined ? [] : ofWord(kind);
}

function inShop(head: string, last: string): readonly Kind[] {
  if (last === 'flammable') return ['temperature'];
  if (head === 'stock' || last === 'length') return ['length'];
  if (head === 'air') return ['pressure'];
  if (head === 'unless') return kindWords.includes(last) ? [...ofWord(last), 'ratio'] : [];
  return last === 'within' ? [...(ofAsset[head] ?? []), 'ratio'] : (ofAsset[head] ?? []);
}

function inStep(
  words: readonly string[],
  last: string,
  ofName: (name: string | undefined) => readonly Kind[],
): readonly Kind[] {
  const verb = words.findLast((word): word is Verb => (verbs as readonly string[]).includes(word));
  const readKind = words[words.lastIndexOf('read') + 1];
  const reading =
    words.includes('read') && readKind !== undefined && kindWords.includes(readKind) ? ofWord(readKind) : [];
  switch (last) {
    case 'takes':
    case 'wait':
      return ['time'];
    case 'for':
      return words.includes('point') ? ['strokes', 'time'] : ['time'];
    case 'air':
      return ['pressure'];
    case 'adapter':
      return ['length'];
    case 'wrench':
    case 'gauge':
    case 'tool':
      return ofAsset[last]!;
    case 'prime':
      return ['strokes', 'time'];
    case 'stretch':
      return ['length'];
    case 'passes':
      return ['ratio'];
    case 'above':
      return verb === 'choose' ? ['length'] : ['pressure'];
    case 'hold':
    case 'from':
      return ['pressure'];
    case 'in':
      return verb === 'test' ? ['time'] : [];
    case 'at':
      if (words.includes('adapter')) return ['angle'];
      return verb === 'wash' || verb === 'soak' ? ['temperature'] : ['stroke rate', 'speed'];
    case 'spread':
      return verb === 'across' ? ofName(words[words.indexOf('set') + 1]) : reading;
    case 'within':
      return verb === 'measure' ? ['length'] : reading;
    case 'to':
      if (words.includes('bring')) return ofName(words[words.indexOf('bring') + 1]);
      return verb === 'torque' || verb === 'lock' ? ['torque'] : verb === 'test' ? ['pressure'] : ofName(words.at(-2));
    default:
      return verb === 'torque' ? ['torque'] : [];
  }
}

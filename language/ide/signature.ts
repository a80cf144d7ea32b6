/** What a verb takes, while its step is written. */
import type { Position } from '../model/source.ts';
import { type Tell, term } from '../say/say.ts';
import { stepBlocks } from '../syntax/keywords.ts';
import { spellingOf, verbTable } from '../syntax/verbs/index.ts';
import { placeAt } from './completion/place.ts';
import { verbIn } from './completion/step-place.ts';
import { offsetAt } from './offset.ts';
import type { Snapshot } from './snapshot.ts';
import { clausesOf, objectsText, phraseText } from './verb-words.ts';

export interface Signature {
  readonly label: string;
  /** Markdown. */
  readonly documentation: string;
  /** Pieces of the label, from and to. */
  readonly parameters: readonly (readonly [number, number])[];
  /** The one that is being written; null: none of them. */
  readonly active: number | null;
}

/** The signature of the step at a place; null where no step is written. */
export function signatureAt({ textOf }: Snapshot, file: string, position: Position, tell: Tell): Signature | null {
  const text = textOf(file) ?? '';
  const { before, blocks, quoted } = placeAt(text, offsetAt(text, position));
  const found = quoted || !stepBlocks.includes(blocks.at(-1)?.word ?? '') ? null : verbIn(before);
  if (found === null) return null;
  const { verb, isVerb } = found;
  const objects = objectsText(verb, tell);
  const clauses = [...new Set(clausesOf(verb).map((one) => phraseText(one, tell)))];
  const pieces = [...(objects === null ? [] : [objects]), ...clauses];
  if (pieces.length === 0) return null;
  let label = spellingOf(verb);
  const parameters = pieces.map((piece): [number, number] => {
    const start = label.length + 1;
    label += ` ${piece}`;
    return [start, label.length];
  });
  const last = before.at(-1)!;
  const said = clauses.findIndex((clause) => clause.split(' ')[0] === clauseWord(before, clauses));
  const isObject = objects !== null && (isVerb || last === ',') && said < 0;
  return {
    label,
    documentation: tell(term(verbTable[verb].does)),
    parameters,
    active: isObject ? 0 : said < 0 ? null : said + (objects === null ? 0 : 1),
  };
}

/** The last word that begins one of the clauses. */
function clauseWord(before: readonly string[], clauses: readonly string[]): string | undefined {
  const first = new Set(clauses.map((clause) => clause.split(' ')[0]!));
  return before.findLast((word, index) => index > 0 && first.has(word));
}

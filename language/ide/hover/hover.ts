/** Hover: why a finding matters, a name's words, and what is declared of it. */

import { allSteps } from '../../analysis/locations.ts';
import type { CheckResult } from '../../db/workspace.ts';
import { familyDrawing } from '../../documents/traveler/drawings.ts';
import { wordsIn } from '../../i18n/index.ts';
import type { Reader } from '../../i18n/translate.ts';
import type { Procedure } from '../../model/procedure.ts';
import { comparePositions, contains } from '../../model/ranges.ts';
import type { Position, Range } from '../../model/source.ts';
import { type Filling, say, type Tell, term } from '../../say/say.ts';
import { stepBlocks } from '../../syntax/keywords.ts';
import { placeAt } from '../completion/place.ts';
import { verbIn } from '../completion/step-place.ts';
import type { Declared } from '../declared.ts';
import { namedAt } from '../named-at.ts';
import { offsetAt } from '../offset.ts';
import type { Snapshot } from '../snapshot.ts';
import { type StateAt, stateAt } from '../state-at.ts';
import { clauseMarkdown, verbMarkdown } from '../verb-words.ts';
import { rangeOfToken, scannedFile, tokensAt } from '../words.ts';
import { figureMarkdown } from './figure.ts';
import { markdownText } from './markdown.ts';
import { cautionsMarkdown, changesMarkdown, traitsText, whereMarkdown } from './state.ts';

/** What is shown for a place. */
export interface Hover {
  /** The text that it is about. */
  readonly range: Range;
  readonly markdown: string;
}

/** A spec for all part numbers, in Markdown; it is made from the table of specifications, which is loaded when it is wanted. */
export type SpecText = (procedure: Procedure, name: string, reader: Reader) => string | null;

/** Most declarations that one hover shows. */
const mostShown = 3;

/**
 * Why what is found at a place matters (the list of problems has no room for it), and what is there: a name with its words,
 * its declaration, and what is known of it at this step; a verb with what it takes and changes; a figure in other units.
 */
export function hoverAt(
  snapshot: Snapshot,
  file: string,
  position: Position,
  reader: Reader,
  specText: SpecText = () => null,
): Hover | null {
  const found = snapshot
    .findingsIn(file)
    .filter(({ why, source }) => why !== undefined && contains(source.range, position));
  const reasons = found.map(
    ({ rule, why, said }) => `**${markdownText(rule)}**: ${markdownText(reader.tell(said?.why ?? why!))}`,
  );
  const there =
    nameHover(snapshot, file, position, reader, specText) ?? wordHover(snapshot, file, position, reader.tell);
  const range = there?.range ?? found[0]?.source.range;
  if (range === undefined) return null;
  return { range, markdown: [...reasons, ...(there === null ? [] : [there.markdown])].join('\n\n---\n\n') };
}

function nameHover(
  snapshot: Snapshot,
  file: string,
  position: Position,
  reader: Reader,
  specText: SpecText,
): Hover | null {
  const named = namedAt(snapshot.result, file, position);
  const shown = (named?.targets ?? []).flatMap(({ declared }) => declared ?? []).slice(0, mostShown);
  if (named === null || shown.length === 0) return null;
  const known = () => knownAt(snapshot, file, position);
  const parts = shown.map((one) =>
    [
      describeDeclared(one, snapshot.textOf, reader.tell),
      more(one, known, snapshot, reader, specText),
      pictureOf(one, snapshot.result, reader),
    ]
      .filter((part) => part !== null)
      .join('\n\n'),
  );
  return { range: named.range, markdown: parts.join('\n\n---\n\n') };
}

/** What is known of the unit at a step. */
function knownAt(snapshot: Snapshot, file: string, position: Position): StateAt | null {
  const text = snapshot.textOf(file) ?? '';
  return stateAt(snapshot, file, placeAt(text, offsetAt(text, position)));
}

/** What there is to say of a name besides its declaration. */
function more(
  { uri, symbol, within }: Declared,
  knownHere: () => StateAt | null,
  { result }: Snapshot,
  reader: Reader,
  specText: SpecText,
): string | null {
  const { kind, name } = symbol;
  if (kind === 'spec') {
    const procedure = result.proceduresIn(uri).find((one) => one.procedure.name === within.name)?.procedure;
    return procedure === undefined ? null : specText(procedure, name, reader);
  }
  if (kind !== 'part' && kind !== 'face' && kind !== 'port') return null;
  const known = knownHere();
  const part = known?.procedure.family.parts.find((one) => one.name === name);
  const here = known === null ? null : whereMarkdown(known, name, reader.tell);
  const said = [part === undefined || kind !== 'part' ? null : traitsText(part, reader.tell), here].filter(
    (one) => one !== null,
  );
  return said.length === 0 ? null : said.join('\n\n');
}

/** A verb or a clause of a step, or a figure. */
function wordHover(snapshot: Snapshot, file: string, position: Position, tell: Tell): Hover | null {
  const token = tokensAt(scannedFile(snapshot, file), position).find(({ name }) => name !== 'STRING');
  if (token === undefined) return null;
  const range = rangeOfToken(token);
  if (token.name === 'QUANTITY') {
    const markdown = figureMarkdown(token.image, tell);
    return markdown === null ? null : { range, markdown };
  }
  if (token.name !== token.image) return null;
  const text = snapshot.textOf(file) ?? '';
  const place = placeAt(text, offsetAt(text, range.end));
  if (!stepBlocks.includes(place.blocks.at(-1)?.word ?? '')) return null;
  const step = verbIn([...place.before, place.partial]);
  if (step === null) return null;
  if (!step.isVerb) {
    const clause = clauseMarkdown(step.verb, token.image, tell);
    return clause === null ? null : { range, markdown: clause };
  }
  const more = stepMarkdown(snapshot, file, range, tell);
  return { range, markdown: [verbMarkdown(step.verb, tell), ...more].join('\n\n') };
}

/** What a step changes, and its cautions with what each follows from. */
function stepMarkdown({ result }: Snapshot, file: string, { start }: Range, tell: Tell): string[] {
  for (const { procedure, states } of result.proceduresIn(file)) {
    const step = allSteps(procedure).find(
      ({ source }) => source.file === file && comparePositions(source.range.start, start) === 0,
    );
    if (step === undefined) continue;
    const changes = states === null ? null : changesMarkdown(procedure, states, step, tell);
    const cautions = cautionsMarkdown(procedure, step, tell);
    return [
      ...(changes === null ? [] : [`${tell(say`Step ${step.number} changes:`)}\n\n${changes}`]),
      ...(cautions === null ? [] : [`${tell(say`Its cautions:`)}\n\n${cautions}`]),
    ];
  }
  return [];
}

/** A declared name: its words, its declaration as it is written, and what it is of. */
export function describeDeclared({ uri, symbol, within }: Declared, textOf: Snapshot['textOf'], tell: Tell): string {
  const title = symbol.title === '' ? '' : ` ${markdownText(symbol.title)}`;
  const isAlone = within.name === symbol.name && within.kind === symbol.kind;
  const kind: Filling = isAlone
    ? term(symbol.kind)
    : say`${term(symbol.kind)} of ${term(within.kind)} ${markdownText(within.name)}`;
  const source = isAlone ? null : written(textOf(uri), symbol.range);
  return [
    `**${markdownText(symbol.name)}**${title}`,
    source === null ? null : `\`\`\`rebuild\n${source}\n\`\`\``,
    tell(kind),
  ]
    .filter((line) => line !== null)
    .join('\n\n');
}

/** As wide as a hover usually is, in the editor's own pixels. */
const pictureWidth = 420;
/** The editor cuts a hover that is longer than this, picture and all. */
const longestPicture = 90_000;

/** A family taken apart, as on its sheet. Null: it is no family, or the picture is too large for a hover. */
function pictureOf({ uri, symbol }: Declared, { familiesIn }: CheckResult, { language }: Reader): string | null {
  if (symbol.kind !== 'family') return null;
  const family = familiesIn(uri).find(({ name }) => name === symbol.name);
  if (family === undefined || family.parts.length === 0) return null;
  const [{ svg, alt }] = familyDrawing(family, wordsIn(language));
  // Paper, also where the editor is dark.
  const paper = svg.replace('<path', '<rect width="100%" height="100%" fill="#fff" stroke="none"/><path');
  const data = base64(paper);
  const said = alt.replace(/[[\]\\\n]/gu, ' ');
  return data.length > longestPicture ? null : `![${said}](data:image/svg+xml;base64,${data}|width=${pictureWidth})`;
}

/** The bytes of a text in UTF-8. */
function base64(text: string): string {
  return btoa(Array.from(new TextEncoder().encode(text), (byte) => String.fromCharCode(byte)).join(''));
}

/** Most lines of a declaration that are shown. */
const mostLines = 6;

/** The declaration as it is written; of a block only its head. */
function written(text: string | null, range: Range): string | null {
  if (text === null) return null;
  const lines = text.split(/\r?\n/).slice(range.start.line, range.end.line + 1);
  if (lines.length === 0) return null;
  const brace = lines.findIndex((line) => /\{\s*(?:\/\/.*)?$/.test(line));
  const shown = (brace < 0 ? lines : lines.slice(0, brace + 1)).slice(0, mostLines);
  return shown
    .map((line) => line.trim().replaceAll('```', ''))
    .join('\n')
    .replace(/\s*\{$/, '');
}

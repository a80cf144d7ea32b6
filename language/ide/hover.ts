/** Hover: why a finding matters, a name's words, and what is declared of it. */
import type { CheckResult } from '../db/workspace.ts';
import { familySvg } from '../documents/traveler/drawings.ts';
import { wordsIn } from '../i18n/index.ts';
import { contains } from '../model/ranges.ts';
import type { Position, Range } from '../model/source.ts';
import type { Declared } from './declared.ts';
import { namedAt } from './named-at.ts';
import type { Snapshot } from './snapshot.ts';

/** What is shown for a place. */
export interface Hover {
  /** The text that it is about. */
  readonly range: Range;
  readonly markdown: string;
}

/** Most declarations that one hover shows. */
const mostShown = 3;

/**
 * Why what is found at a place matters (the list of problems has no room for it), and the name there: its words, and its
 * declaration as it is written, with limits and sources.
 */
export function hoverAt({ result, findingsIn, textOf }: Snapshot, file: string, position: Position): Hover | null {
  const named = namedAt(result, file, position);
  const shown = (named?.targets ?? []).flatMap(({ declared }) => declared ?? []).slice(0, mostShown);
  const declared = shown.map((one) =>
    [describe(one, textOf), pictureOf(one, result)].filter((part) => part !== null).join('\n\n'),
  );
  const found = findingsIn(file).filter(({ why, source }) => why !== undefined && contains(source.range, position));
  const reasons = found.map(({ rule, why }) => `**${markdownText(rule)}**: ${markdownText(why!)}`);
  const range = declared.length > 0 ? named!.range : found[0]?.source.range;
  if (range === undefined) return null;
  const markdown = [...(reasons.length === 0 ? [] : [reasons.join('\n\n')]), ...declared].join('\n\n---\n\n');
  return { range, markdown };
}

function describe({ uri, symbol, within }: Declared, textOf: Snapshot['textOf']): string {
  const title = symbol.title === '' ? '' : ` ${markdownText(symbol.title)}`;
  const of =
    within.name === symbol.name && within.kind === symbol.kind ? '' : ` of ${within.kind} ${markdownText(within.name)}`;
  const source = of === '' ? null : written(textOf(uri), symbol.range);
  return [
    `**${markdownText(symbol.name)}**${title}`,
    source === null ? null : `\`\`\`rebuild\n${source}\n\`\`\``,
    `${symbol.kind}${of}`,
  ]
    .filter((line) => line !== null)
    .join('\n\n');
}

/** As wide as a hover usually is, in the editor's own pixels. */
const pictureWidth = 420;
/** The editor cuts a hover that is longer than this, picture and all. */
const longestPicture = 90_000;

/** A family taken apart, as on its sheet. Null: it is no family, or the picture is too large for a hover. */
function pictureOf({ uri, symbol }: Declared, { familiesIn }: CheckResult): string | null {
  if (symbol.kind !== 'family') return null;
  const family = familiesIn(uri).find(({ name }) => name === symbol.name);
  if (family === undefined || family.parts.length === 0) return null;
  const { svg, alt } = familySvg(family, wordsIn('en'));
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

/** Text that Markdown reads unchanged. */
function markdownText(text: string): string {
  return text.replace(/[\\`*_{}[\]()#+!<>|~]/g, '\\$&');
}

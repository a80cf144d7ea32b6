/** Hover and definition: why a finding matters, a name's words, and what is declared of it. */
import type { Hover, Location } from 'vscode-languageserver-types';
import type { CheckResult } from '../../language/db/workspace.ts';
import { familySvg } from '../../language/documents/traveler/index.ts';
import { wordsIn } from '../../language/i18n/index.ts';
import { contains } from '../../language/model/ranges.ts';
import type { Position, Range, Source } from '../../language/model/source.ts';
import { allDeclared, type Declared } from './scope.ts';

/** A name at a place, and what it leads to: several where it stands in a sequence that several procedures call. */
interface Named {
  readonly range: Range;
  readonly targets: readonly Target[];
}

interface Target {
  /** Where the name is declared. */
  readonly place: Source;
  readonly declared: Declared | null;
}

/** Most declarations that one hover shows. */
const mostShown = 3;

/**
 * Why what is found at a place matters (the list of problems has no room for it), and the name there: its words, and its
 * declaration as it is written, with limits and sources.
 */
export function hoverAt(
  uri: string,
  position: Position,
  result: CheckResult,
  textOf: (uri: string) => string | null,
): Hover | null {
  const named = namedAt(uri, position, result);
  const shown = (named?.targets ?? []).flatMap(({ declared }) => declared ?? []).slice(0, mostShown);
  const declared = shown.map((one) =>
    [describe(one, textOf), pictureOf(one, result)].filter((part) => part !== null).join('\n\n'),
  );
  const found = result.findings.filter(
    ({ why, source }) => why !== undefined && source.file === uri && contains(source.range, position),
  );
  const reasons = found.map(({ rule, why }) => `**${markdownText(rule)}**: ${markdownText(why!)}`);
  const range = declared.length > 0 ? named!.range : found[0]?.source.range;
  if (range === undefined) return null;
  const value = [...(reasons.length === 0 ? [] : [reasons.join('\n\n')]), ...declared].join('\n\n---\n\n');
  return { range, contents: { kind: 'markdown', value } };
}

/** Where the name at a place is declared. */
export function definitionAt(
  uri: string,
  position: Position,
  result: CheckResult,
  clientUri: (uri: string) => string,
): Location[] {
  const named = namedAt(uri, position, result);
  return (named?.targets ?? []).map(({ place }) => ({ uri: clientUri(place.file), range: place.range }));
}

function namedAt(uri: string, position: Position, result: CheckResult): Named | null {
  const links = result.linksIn(uri).filter(({ use }) => contains(use.range, position));
  const all = allDeclared(result);
  const [link] = links;
  if (link === undefined) {
    const declared = all.find(
      ({ uri: file, symbol }) => file === uri && isNamed(symbol.kind) && contains(symbol.nameRange, position),
    );
    if (declared === undefined) return null;
    const range = declared.symbol.nameRange;
    return { range, targets: [{ place: { file: uri, range }, declared }] };
  }
  const places = new Map(links.map((one) => [placeKey(one.target), one] as const));
  const targets = [...places.values()].map((one): Target => {
    const there = all.filter(
      ({ uri: file, symbol }) => file === one.target.file && contains(symbol.nameRange, one.target.range.start),
    );
    const declared =
      there.find(({ symbol }) => symbol.kind === one.what) ?? there.find(({ symbol }) => symbol.name === one.name);
    return { place: one.target, declared: declared ?? there[0] ?? null };
  });
  return { range: link.use.range, targets };
}

function placeKey({ file, range }: Source): string {
  return `${file}:${range.start.line}:${range.start.character}`;
}

/** Steps are declared and have no name that is used elsewhere. */
function isNamed(kind: string): boolean {
  return kind !== 'step' && kind !== 'test' && kind !== 'only';
}

function describe({ uri, symbol, within }: Declared, textOf: (uri: string) => string | null): string {
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
function pictureOf({ uri, symbol }: Declared, { procedures }: CheckResult): string | null {
  if (symbol.kind !== 'family') return null;
  const found = procedures.find(
    ({ procedure: { family } }) => family.name === symbol.name && family.source.file === uri,
  );
  if (found === undefined || found.procedure.family.parts.length === 0) return null;
  const { svg, alt } = familySvg(found.procedure.family, wordsIn('en'));
  // Paper, also where the editor is dark.
  const paper = svg.replace('<path', '<rect width="100%" height="100%" fill="#fff" stroke="none"/><path');
  const data = Buffer.from(paper).toString('base64');
  const said = alt.replace(/[[\]\\\n]/gu, ' ');
  return data.length > longestPicture ? null : `![${said}](data:image/svg+xml;base64,${data}|width=${pictureWidth})`;
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

/** Text that Markdown reads as it stands. */
function markdownText(text: string): string {
  return text.replace(/[\\`*_{}[\]()#+!<>|~]/g, '\\$&');
}

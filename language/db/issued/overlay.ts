/** Jobs that name an issued revision are judged by it, and an issued revision is compared with its source. */
import { type SettingsFile, settingsName } from '../../config/config.ts';
import type { Diagnostic } from '../../model/diagnostic.ts';
import type { Job } from '../../model/job.ts';
import type { Position, Range } from '../../model/source.ts';
import { collectSymbols, type DeclaredSymbol } from '../../semantics/symbols.ts';
import { parse } from '../../syntax/parse.ts';
import { lazily } from '../lazily.ts';
import { type CheckedFiles, canonical, cut } from '../printed-content.ts';
import type { CheckedProcedure, CheckResult, SourceFile } from '../workspace.ts';
import { alone, blanked, toolsIn } from './content.ts';
import { type IssuedFile, isIssuedFile, readIssued } from './format.ts';
import { issuedContent, issuedDeclarations } from './issue.ts';

/** What was issued in a workspace. */
export interface Issued {
  readonly revisions: readonly IssuedFile[];
  /** Files that are not as they were written. */
  readonly damaged: readonly SourceFile[];
}

export const nothingIssued: Issued = { revisions: [], damaged: [] };

export function separateIssued(files: readonly SourceFile[]): {
  readonly sources: readonly SourceFile[];
  readonly issued: Issued;
} {
  if (!files.some(({ uri }) => isIssuedFile(uri))) return { sources: files, issued: nothingIssued };
  const revisions: IssuedFile[] = [];
  const damaged: SourceFile[] = [];
  for (const file of files.filter(({ uri }) => isIssuedFile(uri))) {
    const read = readIssued(file.uri, file.text);
    if (read === null) damaged.push(file);
    else revisions.push(read);
  }
  return { sources: files.filter(({ uri }) => !isIssuedFile(uri)), issued: { revisions, damaged } };
}

/** Checks some files by themselves. `all`: the same ones are checked again and again. */
export type CheckApart = (files: readonly SourceFile[], settings: SettingsFile, all: IssuedFile | null) => CheckResult;

/** A job in its file, and the revision that it is judged by. */
interface Judged {
  readonly symbol: DeclaredSymbol;
  readonly revision: IssuedFile;
}

/** The result for sources, with jobs judged by the issued revision that they name. */
export function withIssued(
  sources: readonly SourceFile[],
  plain: CheckResult,
  { revisions, damaged }: Issued,
  checkApart: CheckApart,
): CheckResult {
  const texts = new Map(sources.map(({ uri, text }) => [uri, text]));
  const inFile = new Map<string, readonly Judged[]>();
  const judgedIn = (uri: string): readonly Judged[] => {
    const known = inFile.get(uri) ?? judgedJobs(texts.get(uri) ?? '', plain.symbols.get(uri) ?? [], revisions);
    inFile.set(uri, known);
    return known;
  };
  /** Files with jobs of a revision, and these alone. */
  const jobFiles = (revision: IssuedFile, uris: Iterable<string>): SourceFile[] =>
    [...uris].flatMap((uri) => {
      const ranges = judgedIn(uri).flatMap((one) => (one.revision === revision ? [one.symbol.range] : []));
      return ranges.length === 0 ? [] : [{ uri, text: alone(texts.get(uri) ?? '', ranges) }];
    });
  const checked = (revision: IssuedFile, uris: Iterable<string>, all: IssuedFile | null): CheckedFiles => {
    const files = [
      { uri: revision.uri, text: withToolsOfToday(revision, sources, plain) },
      ...jobFiles(revision, uris),
    ];
    const settings = { uri: settingsName, text: JSON.stringify(settingsOf(revision)) };
    return { files, result: withoutIssue(checkApart(files, settings, all), revision) };
  };
  const together = new Map<IssuedFile, CheckedFiles>();
  const byAll = (revision: IssuedFile): CheckedFiles => {
    const known = together.get(revision) ?? checked(revision, texts.keys(), revision);
    together.set(revision, known);
    return known;
  };
  /** Where a job is written, whether or not its procedure is known in the sources. */
  const place = (nameOrUri: string): { readonly uri: string; readonly judged: Judged } | null => {
    if (!texts.has(nameOrUri) && !plain.declared.jobs.some(({ name }) => name === nameOrUri)) return null;
    const job = plain.jobOf(nameOrUri);
    const uris = job !== null ? [job.source.file] : texts.has(nameOrUri) ? [nameOrUri] : texts.keys();
    for (const uri of uris)
      for (const judged of judgedIn(uri))
        if (uri === nameOrUri || bare(judged.symbol.name) === nameOrUri) return { uri, judged };
    return null;
  };
  const judgedBy = (nameOrUri: string): CheckedFiles | null => {
    const at = place(nameOrUri);
    return at === null ? null : checked(at.judged.revision, [at.uri], null);
  };
  const findingsOfJobs = (uri: string): Diagnostic[] => {
    const own = judgedIn(uri);
    return [...new Set(own.map(({ revision }) => revision))].flatMap((revision) =>
      byAll(revision)
        .result.findingsIn(uri)
        .filter(({ rule }) => rule !== 'duplicate-name'),
    );
  };
  const isOfSources = ({ source: { file, range }, rule }: Diagnostic) =>
    rule === 'duplicate-name' || !judgedIn(file).some(({ symbol }) => holds(symbol.range, range.start));
  const edited = new Map<CheckedProcedure, readonly Diagnostic[]>();
  const editedIn = (one: CheckedProcedure): readonly Diagnostic[] => {
    const known =
      edited.get(one) ??
      editedFinding(one, { files: sources, result: plain }, revisions, (revision) => byAll(revision));
    edited.set(one, known);
    return known;
  };
  const procedure = (one: CheckedProcedure): CheckedProcedure =>
    lazily<CheckedProcedure>({
      procedure: () => one.procedure,
      flows: () => one.flows,
      diagnostics: () => [...one.diagnostics, ...editedIn(one)],
    });
  const unreadable = damaged.map(({ uri }) => damagedFinding(uri));
  const editedAt = (uri: string) =>
    plain.procedures.filter((one) => one.procedure.source.file === uri).flatMap(editedIn);
  const findingsIn = (uri: string): readonly Diagnostic[] =>
    inPlace([
      ...plain.findingsIn(uri).filter(isOfSources),
      ...findingsOfJobs(uri),
      ...editedAt(uri),
      ...unreadable.filter(({ source }) => source.file === uri),
    ]);
  const order = new Map(sources.map(({ uri }, index) => [uri, index]));
  const jobs = (): Job[] => {
    const judged = sources.flatMap(({ uri }) => {
      const own = new Set(judgedIn(uri).map(({ revision }) => revision));
      return [...own].flatMap((revision) => byAll(revision).result.jobs.filter(({ source }) => source.file === uri));
    });
    const others = plain.jobs.filter(
      ({ source }) => !judgedIn(source.file).some(({ symbol }) => holds(symbol.range, source.range.start)),
    );
    return [...others, ...judged].sort(
      ({ source: one }, { source: other }) =>
        order.get(one.file)! - order.get(other.file)! || one.range.start.line - other.range.start.line,
    );
  };
  return changed(plain, {
    diagnostics: () => [
      ...plain.diagnostics.filter(({ source }) => !order.has(source.file)),
      ...sources.flatMap(({ uri }) =>
        inPlace([
          ...plain.diagnostics.filter((one) => one.source.file === uri && isOfSources(one)),
          ...findingsOfJobs(uri),
          ...editedAt(uri),
        ]),
      ),
      ...unreadable,
    ],
    procedures: () => plain.procedures.map(procedure),
    jobs,
    findingsIn: () => findingsIn,
    jobOf: () => (nameOrUri) => judgedBy(nameOrUri)?.result.jobOf(nameOrUri) ?? plain.jobOf(nameOrUri),
    procedureOf: () => (nameOrUri) => {
      const found = plain.procedureOf(nameOrUri);
      return found === null ? null : procedure(found);
    },
    issued: () => revisions,
    judgedBy: () => judgedBy,
  });
}

/** A result with some parts of it changed. */
function changed(
  result: CheckResult,
  parts: { readonly [key in keyof CheckResult]?: () => CheckResult[key] },
): CheckResult {
  const same = Object.keys(result).map((key) => [key, () => result[key as keyof CheckResult]]);
  return lazily<CheckResult>({ ...Object.fromEntries(same), ...parts });
}

/** Its own findings were dealt with at its issue; a rule that came later makes no old job red. */
function withoutIssue(result: CheckResult, { uri, procedure }: IssuedFile): CheckResult {
  return changed(result, {
    diagnostics: () => result.diagnostics.filter(({ source }) => source.file !== uri),
    procedureOf: () => (name) => {
      const found = result.procedureOf(name === uri ? procedure : name);
      return found === null ? null : { procedure: found.procedure, flows: [], diagnostics: [] };
    },
  });
}

function settingsOf({ settings: { word, severities } }: IssuedFile) {
  return { ...(word === null ? {} : { sheet: { word } }), severities: Object.fromEntries(severities) };
}

/** The text of an issue with the shop's tools as they are today: a tool is judged by its own history, not by the day of the issue. */
function withToolsOfToday({ text }: IssuedFile, sources: readonly SourceFile[], plain: CheckResult): string {
  const shop = /^shop[ \t]+([^\s"{]+)/mu.exec(text)?.[1];
  for (const file of sources) {
    if (!new RegExp(`^shop[ \\t]+${shop}(?![\\w-])`, 'mu').test(file.text)) continue;
    const symbol = (plain.symbols.get(file.uri) ?? []).find(({ kind, name }) => kind === 'shop' && name === shop);
    if (symbol !== undefined)
      return withTools(
        text,
        toolsIn(symbol).map(({ name, range }) => ({ name, text: cut(file.text, range) })),
      );
  }
  return text;
}

function withTools(text: string, tools: readonly { readonly name: string; readonly text: string }[]): string {
  const named = new Set(tools.map(({ name }) => name));
  const issuedShop = collectSymbols(parse(text).ast).find(({ kind }) => kind === 'shop') ?? null;
  if (issuedShop === null) return text;
  const old = toolsIn(issuedShop).filter(({ name }) => named.has(name));
  const { line, character } = issuedShop.range.end;
  const lines = blanked(
    text,
    old.map(({ range }) => range),
  ).split('\n');
  const last = lines[line] ?? '';
  lines[line] =
    `${last.slice(0, character - 1)}\n${tools.map((tool) => tool.text).join('\n')}\n${last.slice(character - 1)}`;
  return lines.join('\n');
}

/** The jobs of a file whose heads name an issued revision. */
function judgedJobs(text: string, symbols: readonly DeclaredSymbol[], revisions: readonly IssuedFile[]): Judged[] {
  return symbols.flatMap((symbol) => {
    if (symbol.kind !== 'job') return [];
    const { of, revision } = headOf(cut(text, symbol.range));
    const found = revisions.find((one) => one.procedure === of && one.revision === revision);
    return found === undefined ? [] : [{ symbol, revision: found }];
  });
}

/** What the head of a job names, by its text: the parser has no say in whether its procedure can be read. */
function headOf(text: string): { readonly of: string | undefined; readonly revision: string | undefined } {
  const words = [...text.matchAll(/\/\/.*|"([^"]*)"|[^\s"{}]+|[{}]/gu)].filter(([word]) => !word.startsWith('//'));
  const head = words.slice(
    0,
    Math.max(
      0,
      words.findIndex(([word]) => word === '{'),
    ),
  );
  const after = (keyword: string) => {
    const at = head.findIndex(([word], index) => index > 1 && word === keyword);
    const found = at < 0 ? undefined : head[at + 1];
    return found?.[1] ?? found?.[0];
  };
  return { of: after('of'), revision: after('revision') };
}

/** A source that says the revision that was issued, and is not what was issued. */
function editedFinding(
  { procedure }: CheckedProcedure,
  sources: CheckedFiles,
  revisions: readonly IssuedFile[],
  issuedAs: (revision: IssuedFile) => CheckedFiles,
): readonly Diagnostic[] {
  const { name, revision, source } = procedure;
  const issued = revisions.find((one) => one.procedure === name && one.revision === revision);
  if (issued === undefined || issued.content === issuedContent(procedure, sources)) return [];
  const before = issuedAs(issued);
  const frozen = before.result.procedureOf(name)?.procedure;
  const [now, then] = [
    issuedDeclarations(procedure, sources),
    frozen === undefined ? null : issuedDeclarations(frozen, before),
  ];
  const differing =
    then === null
      ? []
      : [...new Set([...now.keys(), ...then.keys()])].filter(
          (key) => canonical(now.get(key)?.text ?? '') !== canonical(then.get(key)?.text ?? ''),
        );
  const what = differing.length === 0 ? 'The settings' : differing.join(', ');
  return [
    {
      rule: 'issued-and-edited',
      severity: 'error',
      message: `Revision ${revision} of ${name} is issued, and its text is no longer what was issued.`,
      why: `${what} changed since ${issued.issuedOn}. A sheet that is printed now would say revision ${revision} and show other work than the sheets on the bench.`,
      help: `Give the procedure the next revision, have it approved, and issue that: npx handtight issue ${name}. Or take the change back: ${issued.uri} has the text that was issued.`,
      source,
    },
  ];
}

function damagedFinding(file: string): Diagnostic {
  const start = { line: 0, character: 0 };
  return {
    rule: 'issued-file-changed',
    severity: 'error',
    message: 'This file of an issued revision is not as it was written, so no job is judged by it.',
    help: 'Take it back from version control or from a backup. What an issued revision says is changed by a new revision only.',
    source: { file, range: { start, end: start } },
  };
}

function inPlace(diagnostics: readonly Diagnostic[]): Diagnostic[] {
  return [...diagnostics].sort(
    ({ source: { range: one } }, { source: { range: other } }) =>
      one.start.line - other.start.line || one.start.character - other.start.character,
  );
}

function holds({ start, end }: Range, at: Position): boolean {
  return !before(at, start) && before(at, end);
}

function before(one: Position, other: Position): boolean {
  return one.line < other.line || (one.line === other.line && one.character < other.character);
}

function bare(name: string): string {
  return name.replace(/"/gu, '');
}

import { TextDocument } from 'vscode-languageserver-textdocument';
import { type CheckResult, checkFiles, type SourceFile, Workspace } from '../../language/db/workspace.ts';
import { buildCertificate, findMissing } from '../../language/documents/certificate/index.ts';
import {
  renderHtml,
  renderSpecsHtml,
  renderSpecsText,
  renderText,
  renderTypst,
} from '../../language/documents/renderers/index.ts';
import { buildSpecs } from '../../language/documents/specs/index.ts';
import { buildSheet, type Sheet } from '../../language/documents/traveler/index.ts';
import { languages } from '../../language/i18n/index.ts';
import { readerOf } from '../../language/i18n/translate.ts';
import { actionsIn, allSafeChanges } from '../../language/ide/code-actions.ts';
import { codeLensesOf } from '../../language/ide/code-lenses.ts';
import { completionsAt } from '../../language/ide/completion/completions.ts';
import { definitionsAt } from '../../language/ide/definition.ts';
import { formatted } from '../../language/ide/format/format.ts';
import { hoverAt } from '../../language/ide/hover/hover.ts';
import { inlayHintsIn } from '../../language/ide/inlay-hints.ts';
import { outlineOf } from '../../language/ide/outline.ts';
import { problemText } from '../../language/ide/problem.ts';
import { highlightsAt, referencesAt } from '../../language/ide/references.ts';
import { renameAt } from '../../language/ide/rename.ts';
import { coloredNames } from '../../language/ide/semantic-tokens.ts';
import { signatureAt } from '../../language/ide/signature.ts';
import { stateViewAt } from '../../language/ide/state-view.ts';
import { foldsOf, rangesAround } from '../../language/ide/structure.ts';
import { typeDefinitionsAt } from '../../language/ide/type-definition.ts';
import { fullMessage } from '../../language/model/diagnostic.ts';
import type { Job } from '../../language/model/job.ts';
import type { Procedure } from '../../language/model/procedure.ts';
import type { Range } from '../../language/model/source.ts';
import { buildHints } from '../../language/recommendations/hints.ts';
import { rateLines } from '../../language/recommendations/rate-report.ts';
import { matchLines, shimLines } from '../../language/recommendations/report.ts';
import { english } from '../../language/say/say.ts';
import { parse } from '../../language/syntax/parse.ts';
import { textProblem } from '../../language/syntax/text-problem.ts';
import { stepsOf } from '../../server/cli/replay.ts';
import { githubReport } from '../../server/cli/report-github.ts';
import { textReport } from '../../server/cli/report-text.ts';
import { libraryFiles } from '../library.ts';
import type { Failure, FuzzCase } from './case.ts';
import { talk } from './frames.ts';
import { intruder, madeOf } from './pages.ts';
import { Random } from './random.ts';

const reader = readerOf('en');

/** Where a throw came from: the innermost frame of our own source. */
function frameOf(error: unknown): string {
  const stack = error instanceof Error ? (error.stack ?? '') : '';
  if (stack.includes('Maximum call stack')) return 'stack';
  const own = stack.match(/(?:language|server)\/[\w./-]+\.ts/u)?.[0] ?? 'elsewhere';
  const name =
    stack
      .split('\n')
      .find((line) => line.includes(own))
      ?.match(/at (?:new )?([\w.<>]+)/u)?.[1] ?? '';
  return `${own} ${name}`.trim();
}

/** Runs everything that takes an author’s text, and says what went wrong. `progress` hears what is begun. */
export async function failuresOf(one: FuzzCase, progress: (target: string) => void): Promise<Failure[]> {
  const failures: Failure[] = [];
  const fail = (target: string, at: string, what: string) => {
    if (!failures.some((other) => other.target === target && other.at === at)) failures.push({ target, at, what });
  };
  const run = <T>(target: string, work: () => T): T | null => {
    progress(target);
    try {
      return work();
    } catch (error) {
      fail(target, frameOf(error), String(error).slice(0, 300));
      return null;
    }
  };
  const checker = new Workspace();
  // Each sheet in one language; which one, the text says.
  let turn = one.versions.flat().reduce((sum, { text }) => sum + text.length, 0);
  for (const files of one.versions) {
    const result = run('check', () => checkFiles(files));
    const kept = run('check again', () => checker.check(files));
    if (result === null || kept === null) continue;
    const told = JSON.stringify(result.diagnostics);
    if (told !== JSON.stringify(kept.diagnostics))
      fail('check again', 'kept', firstDifference(told, JSON.stringify(kept.diagnostics)));
    run('findings', () => aboutFindings(files, result, fail));
    for (const { procedure, flows, diagnostics } of result.procedures) {
      const jobs = result.jobs.filter((job) => job.procedure === procedure);
      // Every state of a long procedure in words is more than a case is worth; the flow analysis itself the check has done.
      for (const replay of flows) if (replay.graph.nodes.length < 60) run('replay', () => stepsOf(replay));
      for (const job of [null, ...jobs]) {
        const language = languages[turn++ % languages.length]!;
        const sheet = run('sheet', () =>
          buildSheet(procedure, { job, number: null, paper: 'a4', draft: true, diagnostics, language, hash: 'abcdef' }),
        );
        if (sheet !== null) run('print', () => aboutSheet('print', sheet, fail));
      }
      run('specs', () => aboutSpecs(procedure, fail));
      for (const job of jobs) run('advice', () => [...shimLines(job), ...matchLines(job)]);
      for (const job of jobs) run('certificate', () => aboutCertificate(procedure, job, fail));
      run('rate', () => rateLines(procedure, jobs));
    }
    run('hints', () =>
      buildHints(
        result.procedures.map(({ procedure }) => procedure),
        result.jobs,
      ),
    );
    run('reports', () => aboutReports(files, result, fail));
    aboutEditor(files, result, run, fail);
  }
  // Where the check itself throws, no answer of the server is news.
  if (failures.some(({ target }) => target.startsWith('check'))) return failures;
  progress('frames');
  try {
    await talk(one, (at, what) => fail('frames', at, what));
  } catch (error) {
    fail('frames', frameOf(error), String(error).slice(0, 300));
  }
  return failures;
}

type Fail = (target: string, at: string, what: string) => void;

function firstDifference(one: string, other: string): string {
  let at = 0;
  while (one[at] === other[at]) at++;
  return `fresh …${one.slice(Math.max(0, at - 80), at + 120)}… kept …${other.slice(Math.max(0, at - 80), at + 120)}…`;
}

/** Whether a range lies in a text, by the lines of the protocol. */
function liesIn({ start, end }: Range, lines: readonly string[]): boolean {
  const inside = ({ line, character }: Range['start']) =>
    line >= 0 && character >= 0 && line < lines.length && character <= lines[line]!.length;
  const ordered = start.line < end.line || (start.line === end.line && start.character <= end.character);
  return inside(start) && inside(end) && ordered;
}

function aboutFindings(files: readonly SourceFile[], result: CheckResult, fail: Fail) {
  const lines = new Map(files.map(({ uri, text }) => [uri, text.split(/\r\n|\n|\r/u)]));
  for (const { rule, source, related = [], fix, ...said } of result.diagnostics) {
    const message = fullMessage(said);
    const places = [source, ...related.map((one) => one.source), ...(fix?.edits.map((edit) => edit.source) ?? [])];
    for (const { file, range } of places)
      if (!liesIn(range, lines.get(file) ?? []))
        fail('findings', `place of ${rule}`, `${file} ${JSON.stringify(range)}: ${message.slice(0, 120)}`);
    if (
      message.trim() === '' ||
      (/undefined|\[object|NaN|Infinity/u.test(message) &&
        !files.some(({ text }) => /undefined|object|NaN|Infinity/u.test(text)))
    )
      fail('findings', `message of ${rule}`, message.slice(0, 200));
  }
  for (const { use, target, name } of result.references)
    for (const { file, range } of [use, target])
      if (!liesIn(range, lines.get(file) ?? []))
        fail('findings', 'place of a link', `${name} ${JSON.stringify(range)}`);
  for (const { uri, text } of files) {
    if (!uri.endsWith('.rebuild')) continue;
    const own = result.diagnostics.filter(({ source, severity }) => source.file === uri && severity === 'error');
    const problems = textProblem(text) === null ? parse(text) : null;
    if (problems !== null && problems.problems.length > 0 && own.length === 0)
      fail('findings', 'syntax and clean', english(problems.problems[0]!.message));
    const written = text.replace(/\/\/[^\n\r]*/gu, '').trim();
    if (written !== '' && (problems?.ast.declarations.length ?? 0) === 0 && own.length === 0)
      fail('findings', 'nothing read and clean', written.slice(0, 120));
  }
  // What is declared is checked, or it is said why not.
  for (const { uri, text } of files) {
    const heads = (text.match(/^procedure [A-Za-z]/gmu) ?? []).length;
    const checked = result.procedures.filter(({ procedure }) => procedure.source.file === uri).length;
    const errors = result.diagnostics.some(({ source, severity }) => source.file === uri && severity === 'error');
    if (checked < heads && !errors)
      fail('findings', 'procedure not checked and clean', `${uri}: ${checked} of ${heads}`);
  }
}

let known: { readonly sheet: ReadonlySet<string>; readonly specs: ReadonlySet<string> } | null = null;

/** Stands for the day of the print. */
const today = '2027-12-31';

/** Elements and attributes of the library’s own pages. */
function usual() {
  if (known !== null) return known;
  const files = libraryFiles(true).filter(({ uri }) => /one-spring|shared|jobs|flawed|procedures\/shop/u.test(uri));
  const { procedures, jobs } = checkFiles(files);
  const sheets = procedures.flatMap(({ procedure, diagnostics }) =>
    [null, ...jobs.filter((job) => job.procedure === procedure)].map((job) =>
      buildSheet(procedure, { job, number: null, paper: 'a4', draft: job === null, diagnostics, hash: 'abcdef' }),
    ),
  );
  const certificates = jobs.map((job) =>
    buildCertificate(job.procedure, job, { paper: 'a4', draft: true, diagnostics: [], hash: 'abcdef', today }),
  );
  known = {
    // A drawing names a second font for signs that its first lacks: the library has none of these.
    sheet: new Set([
      'text.font-family',
      // The words of a procedure in a language of its own are marked as such; those of the library print in that language.
      'span.lang',
      ...[...sheets, ...certificates].flatMap((sheet) => [...madeOf(renderHtml(sheet))]),
    ]),
    specs: new Set(procedures.flatMap(({ procedure }) => [...madeOf(renderSpecsHtml(buildSpecs(procedure)))])),
  };
  return known;
}

function aboutSheet(target: string, sheet: Sheet, fail: Fail) {
  const html = renderHtml(sheet);
  const foreign = intruder(html, usual().sheet);
  if (foreign !== null) fail(target, `HTML, ${foreign}`, foreign);
  if (html !== renderHtml(sheet)) fail(target, 'HTML twice', 'two prints of one sheet differ');
  // The words are data: nothing of a sheet is in the source.
  if (renderTypst([sheet], 'title').source !== renderTypst([{ ...sheet, blocks: [] }], '').source)
    fail(target, 'Typst source', 'differs by what is printed');
  const said = renderText(sheet).join('\n');
  if (/\bundefined\b|\[object Object\]/u.test(said))
    fail(target, 'text', said.match(/.{0,60}(?:undefined|\[object Object\]).{0,60}/u)![0]);
}

function aboutSpecs(procedure: Procedure, fail: Fail) {
  const specs = buildSpecs(procedure);
  renderSpecsText(specs, { width: 100 });
  const foreign = intruder(renderSpecsHtml(specs), usual().specs);
  if (foreign !== null) fail('specs', `HTML, ${foreign}`, foreign);
}

function aboutCertificate(procedure: Procedure, job: Job, fail: Fail) {
  findMissing(procedure, job, { diagnostics: [], today });
  const language = languages[job.name.length % languages.length]!;
  aboutSheet(
    'certificate',
    buildCertificate(procedure, job, { paper: 'a4', draft: true, diagnostics: [], language, hash: 'abcdef', today }),
    fail,
  );
}

function aboutReports(files: readonly SourceFile[], { diagnostics }: CheckResult, fail: Fail) {
  const texts = new Map(files.map(({ uri, text }) => [uri, text]));
  const checked = {
    files: files.map(({ uri }) => uri),
    diagnostics,
    errors: 1,
    warnings: 1,
    fixed: [],
    settings: null,
    textOf: (file: string) => texts.get(file) ?? '',
  };
  const commands = githubReport(checked).split('\n').slice(0, -1);
  if (
    commands.length !== diagnostics.length ||
    commands.some((line) => !/^::(?:error|warning) file=[^\n\r]*$/u.test(line))
  )
    fail(
      'reports',
      'github',
      commands.find((line) => !line.startsWith('::')) ?? `${commands.length} lines of ${diagnostics.length} findings`,
    );
  const text = textReport(checked);
  const control = text
    .replace(/\u001b\[\d*m/gu, '')
    .match(/[\u0000-\u0008\u000b-\u001f\u007f\u202a-\u202e\u2066-\u2069]/u);
  if (control !== null) fail('reports', 'control characters', `U+${control[0].codePointAt(0)!.toString(16)}`);
  if (/^::/mu.test(text)) fail('reports', 'commands', text.match(/^::.*/mu)![0].slice(0, 120));
}

function aboutEditor(
  files: readonly SourceFile[],
  result: CheckResult,
  run: <T>(target: string, work: () => T) => T | null,
  fail: Fail,
) {
  const texts = new Map(files.map(({ uri, text }) => [uri, text]));
  const findingsIn = (uri: string) => result.diagnostics.filter(({ source }) => source.file === uri);
  const snapshot = { result, findingsIn, textOf: (uri: string) => texts.get(uri) ?? null };
  const random = new Random(files.reduce((sum, { text }) => sum + text.length, 1));
  for (const { uri, text } of files) {
    const document = TextDocument.create(uri, 'rebuild', 1, text);
    const lines = text.split(/\r\n|\n|\r/u);
    for (let count = 0; count < 4; count++) {
      const offset = random.chance(0.1) ? text.length : random.below(text.length + 1);
      const position = random.chance(0.1) ? { line: lines.length + 3, character: 99 } : document.positionAt(offset);
      run('state view', () => stateViewAt(snapshot, uri, position));
      run('completion', () =>
        completionsAt(snapshot, uri, position, { snippets: random.chance(0.5), onlyNames: random.chance(0.5) }),
      );
      const hover = run('hover', () => hoverAt(snapshot, uri, position, reader));
      if (hover !== null && !liesIn(hover.range, lines)) fail('hover', 'place', JSON.stringify(hover.range));
      const found = run('definition', () => definitionsAt(snapshot, uri, position)) ?? [];
      for (const { file, range } of found)
        if (!liesIn(range, (texts.get(file) ?? '').split(/\r\n|\n|\r/u)))
          fail('definition', 'place', JSON.stringify(range));
      const used = run('references', () => referencesAt(snapshot, uri, position, true)) ?? [];
      const renamed = run('rename', () => renameAt(snapshot, uri, position, 'otherwise'));
      const edits = renamed?.kind === 'changes' ? renamed.edits.map(({ source }) => source) : [];
      for (const { file, range } of [...used, ...edits])
        if (!liesIn(range, (texts.get(file) ?? '').split(/\r\n|\n|\r/u)))
          fail('rename', 'place', JSON.stringify(range));
      run('signature', () => signatureAt(snapshot, uri, position, reader.tell));
      run('highlights', () => highlightsAt(snapshot, uri, position));
      run('type definition', () => typeDefinitionsAt(snapshot, uri, position));
    }
    const whole = { start: { line: 0, character: 0 }, end: { line: lines.length, character: 0 } };
    run('structure', () => foldsOf(text).length + rangesAround(text, { line: 3, character: 5 }).length);
    run('colors', () => coloredNames(snapshot, uri));
    run('format', () => formatted(text));
    run('lenses', () => codeLensesOf(snapshot, uri));
    run('symbols', () => outlineOf(snapshot, uri));
    run('inlay hints', () => inlayHintsIn(snapshot, uri, whole, { shims: true, steps: true, limits: true }, reader));
    run('code actions', () =>
      actionsIn(snapshot, uri, whole, 'en').map(({ diagnostic }) => problemText(diagnostic, 'en')),
    );
    run('fix all', () => {
      const edits = allSafeChanges(snapshot, uri).map(({ source, text: newText }) => ({
        range: source.range,
        newText,
      }));
      return TextDocument.applyEdits(document, edits);
    });
  }
}

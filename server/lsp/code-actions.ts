/** Quick fixes: a finding's own fix, the page of its rule, and last, where that may be, a concession with a reason. */
import {
  type CodeAction,
  CodeActionKind,
  type Diagnostic,
  type SnippetTextEdit,
  type TextDocumentEdit,
  type TextEdit,
  type WorkspaceEdit,
} from 'vscode-languageserver-types';
import { safeFixes } from '../../language/db/fixes.ts';
import { blank, fitted } from '../../language/diagnostics/edits.ts';
import { rules } from '../../language/diagnostics/index.ts';
import type { AnyRule } from '../../language/diagnostics/rule.ts';
import type { Edit, Finding } from '../../language/model/diagnostic.ts';
import { contains, touches } from '../../language/model/ranges.ts';
import type { Range } from '../../language/model/source.ts';
import type { DeclaredSymbol } from '../../language/semantics/symbols.ts';

/** Where edits go, and what the client makes of them. */
interface Editing {
  readonly textOf: (uri: string) => string | null;
  readonly clientUri: (uri: string) => string;
  /** Version of an open document; null for one that is not open. */
  readonly versionOf: (uri: string) => number | null;
  /** The client takes snippets in edits: the cursor goes to what is to be written. */
  readonly snippets: boolean;
}

/** What the actions are made from. */
export interface ActionQuestion extends Editing {
  readonly uri: string;
  readonly range: Range;
  /** Findings of the whole workspace. */
  readonly findings: readonly Finding[];
  readonly symbols: readonly DeclaredSymbol[];
  readonly diagnosticOf: (finding: Finding) => Diagnostic;
  /** Command of the client that opens the page of a rule; null: it has none. */
  readonly explain: string | null;
}

/** The kind of what fixes all that can be fixed without a question. */
export const fixAllKind = `${CodeActionKind.SourceFixAll}.handtight`;

/** Actions for the findings that the range touches: fixes, then explanations, then concessions. */
export function codeActions(question: ActionQuestion): CodeAction[] {
  const here = question.findings.filter(
    ({ source }) => source.file === question.uri && touches(source.range, question.range),
  );
  const action = (finding: Finding, what: Omit<CodeAction, 'kind' | 'diagnostics'>): CodeAction => ({
    ...what,
    kind: CodeActionKind.QuickFix,
    diagnostics: [question.diagnosticOf(finding)],
  });
  const fixes = here.flatMap((finding) => {
    if (finding.fix === undefined) return [];
    const { title, safe, edits } = finding.fix;
    return [action(finding, { title, ...(safe ? { isPreferred: true } : {}), edit: workspaceEdit(edits, question) })];
  });
  const { explain } = question;
  const explained = new Set<string>();
  const explanations = here.flatMap((finding) => {
    if (explain === null || explained.has(finding.rule) || !isRule(finding.rule)) return [];
    explained.add(finding.rule);
    const title = `Explain ${finding.rule}`;
    return [action(finding, { title, command: { title, command: explain, arguments: [finding.rule] } })];
  });
  const concessions = here.flatMap((finding) => {
    const edit = concessionOf(finding, question);
    return edit === null ? [] : [action(finding, { title: `Allow ${finding.rule} here, with a reason`, edit })];
  });
  return [...fixes, ...explanations, ...concessions];
}

function isRule(code: string): boolean {
  return rules.some((rule) => rule.code === code);
}

/** The safe fixes of all findings of a file. */
export function fixAll(question: Editing & Pick<ActionQuestion, 'uri' | 'findings'>): CodeAction | null {
  const edits = safeFixes(question.findings, question.uri).flatMap((fix) => fix.edits);
  if (edits.length === 0) return null;
  return { title: 'Apply all safe fixes', kind: fixAllKind, edit: workspaceEdit(edits, question) };
}

function workspaceEdit(edits: readonly Edit[], editing: Editing): WorkspaceEdit {
  const byFile = new Map<string, (TextEdit | SnippetTextEdit)[]>();
  for (const edit of edits) {
    const { file } = edit.source;
    byFile.set(file, [...(byFile.get(file) ?? []), textEdit(fitted(editing.textOf(file) ?? '', edit), editing)]);
  }
  return {
    documentChanges: [...byFile].map(
      ([uri, changes]): TextDocumentEdit => ({
        textDocument: { uri: editing.clientUri(uri), version: editing.versionOf(uri) },
        edits: changes,
      }),
    ),
  };
}

/** What only the author knows is the gap of a snippet. */
function textEdit({ source: { range }, text }: Edit, { snippets }: Editing): TextEdit | SnippetTextEdit {
  if (!snippets || !text.includes(blank)) return { range, newText: text };
  const value = text.replace(/[\\$}]/gu, '\\$&').replace(blank, `\${1:${blank}}`);
  return { range, snippet: { kind: 'snippet', value } };
}

/** What an `allow` can be on; a procedure's own is in its head and would silence too much. */
const allowedOn = new Set(['step', 'test', 'check', 'spec', 'number', 'part', 'repair', 'gate', 'across']);

/** It can hurt somebody, or what is missing can only be written: whoever means to allow it writes that out. */
const isGrave = ({ unsafe, ofAbsence, severity }: AnyRule) =>
  unsafe === true || (ofAbsence === true && severity === 'error');

/** Findings that no reason makes right, and those for which the light bulb must not teach one. */
const neverAllowed = new Set([
  ...rules.filter(isGrave).map(({ code }) => code),
  'duplicate-name',
  'circular-fit',
  'allow-without-effect',
  'unreadable-file',
]);

function concessionOf(finding: Finding, question: ActionQuestion): WorkspaceEdit | null {
  if (neverAllowed.has(finding.rule)) return null;
  const symbol = innermost(question.symbols, finding.source.range, null);
  if (symbol === null) return null;
  const at = endOfHead(symbol.range, question.textOf(question.uri) ?? '');
  if (at === null) return null;
  const source = { file: question.uri, range: { start: at, end: at } };
  return workspaceEdit([{ source, text: ` allow ${finding.rule} because "${blank}"` }], question);
}

function innermost(
  symbols: readonly DeclaredSymbol[],
  range: Range,
  found: DeclaredSymbol | null,
): DeclaredSymbol | null {
  const holder = symbols.find((symbol) => contains(symbol.range, range.start) && contains(symbol.range, range.end));
  if (holder === undefined) return found;
  return innermost(holder.children, range, allowedOn.has(holder.kind) ? holder : null);
}

/** Where a clause can be added: the end of the statement, or before the brace of its block. */
function endOfHead(range: Range, text: string): Range['end'] | null {
  const lines = text.split('\n');
  for (let line = range.start.line; line <= range.end.line; line++) {
    const whole = lines[line] ?? '';
    const from = line === range.start.line ? range.start.character : 0;
    const to = line === range.end.line ? range.end.character : whole.length;
    const masked = whole.slice(0, to).replace(/"[^"\n]*"?/g, (quoted) => '"'.repeat(quoted.length));
    const brace = masked.indexOf('{', from);
    if (brace >= 0) return { line, character: masked.slice(0, brace).trimEnd().length };
  }
  return range.end;
}

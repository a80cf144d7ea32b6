/** Quick fixes: the finding's own mend, and behind it a concession with a reason. */
import {
  type CodeAction,
  CodeActionKind,
  type Diagnostic,
  type TextDocumentEdit,
  type TextEdit,
  type WorkspaceEdit,
} from 'vscode-languageserver-types';
import type { Finding, Fix } from '../../language/model/finding.ts';
import type { Range } from '../../language/model/source.ts';
import type { DeclaredSymbol } from '../../language/resolve/symbols.ts';
import { contains, touches } from './ranges.ts';

/** What the actions are made from. */
export interface ActionQuestion {
  readonly uri: string;
  readonly range: Range;
  /** Findings of the whole workspace. */
  readonly findings: readonly Finding[];
  readonly symbols: readonly DeclaredSymbol[];
  readonly text: string;
  readonly diagnosticOf: (finding: Finding) => Diagnostic;
  readonly clientUri: (uri: string) => string;
  /** Version of an open document; null for one that is not open. */
  readonly versionOf: (uri: string) => number | null;
  /** The client takes snippets in edits: the cursor goes to the reason. */
  readonly snippets: boolean;
}

/** Actions for the findings that the range touches. */
export function codeActions(question: ActionQuestion): CodeAction[] {
  const here = question.findings.filter(
    ({ source }) => source.file === question.uri && touches(source.range, question.range),
  );
  return here.flatMap((finding) => {
    const diagnostics = [question.diagnosticOf(finding)];
    const actions: CodeAction[] = [];
    if (finding.fix !== undefined) {
      actions.push({
        title: finding.fix.title,
        kind: CodeActionKind.QuickFix,
        isPreferred: true,
        diagnostics,
        edit: workspaceEdit(finding.fix, question),
      });
    }
    const concession = concessionOf(finding, question);
    if (concession !== null) {
      actions.push({
        title: `Allow ${finding.rule} here, with a reason`,
        kind: CodeActionKind.QuickFix,
        diagnostics,
        edit: concession,
      });
    }
    return actions;
  });
}

/** The mends of all findings of a file that have one, where they do not overlap. */
export function fixAll({
  uri,
  findings,
  clientUri,
  versionOf,
}: Pick<ActionQuestion, 'uri' | 'findings' | 'clientUri' | 'versionOf'>): CodeAction | null {
  const edits: { source: { range: Range }; text: string }[] = [];
  for (const { source, fix } of findings) {
    if (source.file !== uri || fix === undefined || fix.edits.some((edit) => edit.source.file !== uri)) continue;
    const free = fix.edits.every((edit) => edits.every((other) => !touches(edit.source.range, other.source.range)));
    if (free) edits.push(...fix.edits);
  }
  if (edits.length === 0) return null;
  const change: TextDocumentEdit = {
    textDocument: { uri: clientUri(uri), version: versionOf(uri) },
    edits: edits.map(({ source, text }) => ({ range: source.range, newText: text })),
  };
  return {
    title: 'Mend all that can be mended',
    kind: CodeActionKind.SourceFixAll,
    edit: { documentChanges: [change] },
  };
}

function workspaceEdit(fix: Fix, { clientUri, versionOf }: ActionQuestion): WorkspaceEdit {
  const byFile = new Map<string, TextEdit[]>();
  for (const { source, text } of fix.edits) {
    byFile.set(source.file, [...(byFile.get(source.file) ?? []), { range: source.range, newText: text }]);
  }
  return {
    documentChanges: [...byFile].map(([uri, edits]) => ({
      textDocument: { uri: clientUri(uri), version: versionOf(uri) },
      edits,
    })),
  };
}

/** What an `allow` can stand on; a procedure's own stands in its head and would silence too much. */
const allowedOn = new Set(['step', 'test', 'check', 'spec', 'number', 'part', 'repair', 'gate', 'across']);

/** Findings that no reason makes right. */
const neverAllowed = new Set([
  'syntax',
  'unknown-name',
  'duplicate-name',
  'circular-fit',
  'allow-without-effect',
  'unreadable-file',
]);

function concessionOf(finding: Finding, question: ActionQuestion): WorkspaceEdit | null {
  if (neverAllowed.has(finding.rule)) return null;
  const symbol = innermost(question.symbols, finding.source.range, null);
  if (symbol === null) return null;
  const at = endOfHead(symbol.range, question.text);
  if (at === null) return null;
  const range = { start: at, end: at };
  const edit = question.snippets
    ? { range, snippet: { kind: 'snippet' as const, value: ` allow ${finding.rule} because "\${1:reason}"$0` } }
    : { range, newText: ` allow ${finding.rule} because "reason"` };
  return {
    documentChanges: [
      {
        textDocument: { uri: question.clientUri(question.uri), version: question.versionOf(question.uri) },
        edits: [edit],
      },
    ],
  };
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

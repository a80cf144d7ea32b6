/** What can be done about findings: their own fix, the page of their rule, and last, where that may be, a concession with a reason. */
import { safeFixes } from '../db/fixes.ts';
import { blank, fitted } from '../diagnostics/edits.ts';
import { rules } from '../diagnostics/index.ts';
import type { AnyRule } from '../diagnostics/rule.ts';
import { inLanguage, translated } from '../i18n/translate.ts';
import type { Language } from '../i18n/words.ts';
import type { Diagnostic, Edit } from '../model/diagnostic.ts';
import { contains, touches } from '../model/ranges.ts';
import type { Range } from '../model/source.ts';
import { type Said, say } from '../say/say.ts';
import type { DeclaredSymbol } from '../semantics/symbols.ts';
import type { Snapshot } from './snapshot.ts';

/** An edit as it fits into its text. */
export interface TextChange extends Edit {
  /** The text as a snippet of the protocol, where a gap is left for what only the author knows; else null. */
  readonly snippet: string | null;
}

/** One thing that can be done about a finding. */
export type Action = { readonly title: string; readonly diagnostic: Diagnostic } & (
  | { readonly kind: 'fix'; readonly preferred: boolean; readonly changes: readonly TextChange[] }
  | { readonly kind: 'explain'; readonly rule: string }
  | { readonly kind: 'allow'; readonly changes: readonly TextChange[] }
);

/** Actions for the findings that a range of a file touches: fixes, then explanations, then concessions. */
export function actionsIn(snapshot: Snapshot, file: string, range: Range, language: Language): Action[] {
  const here = snapshot
    .findingsIn(file)
    .filter(({ source }) => touches(source.range, range))
    .map((diagnostic) => translated(diagnostic, language));
  const fixes = here.flatMap((diagnostic): Action[] => {
    if (diagnostic.fix === undefined) return [];
    const { title, safe, edits } = diagnostic.fix;
    return [{ kind: 'fix', title, diagnostic, preferred: safe, changes: changesOf(edits, snapshot) }];
  });
  const explanations = here
    .filter(({ rule }, index) => isRule(rule) && here.findIndex((other) => other.rule === rule) === index)
    .map(
      (diagnostic): Action => ({
        kind: 'explain',
        title: inLanguage(say`Explain ${diagnostic.rule}`, language),
        diagnostic,
        rule: diagnostic.rule,
      }),
    );
  const concessions = here.flatMap((diagnostic): Action[] => {
    const edit = concessionOf(diagnostic, snapshot, file);
    if (edit === null) return [];
    return [
      {
        kind: 'allow',
        title: inLanguage(say`Allow ${diagnostic.rule} here, with a reason`, language),
        diagnostic,
        changes: changesOf([edit], snapshot),
      },
    ];
  });
  return [...fixes, ...explanations, ...concessions];
}

function isRule(code: string): boolean {
  return rules.some((rule) => rule.code === code);
}

export const allSafeTitle: Said = say`Apply all safe fixes`;

/** The safe fixes of all findings of a file, applied together. */
export function allSafeChanges(snapshot: Snapshot, file: string): TextChange[] {
  return changesOf(
    safeFixes(snapshot.findingsIn(file), file).flatMap((fix) => fix.edits),
    snapshot,
  );
}

export function changesOf(edits: readonly Edit[], { textOf }: Snapshot): TextChange[] {
  // Changes as they fit into their texts, with gaps for what only the author knows.
  return edits.map((edit) => {
    const { source, text } = fitted(textOf(edit.source.file) ?? '', edit);
    return { source, text, snippet: text.includes(blank) ? snippetOf(text) : null };
  });
}

function snippetOf(text: string): string {
  return text.replace(/[\\$}]/gu, '\\$&').replace(blank, `\${1:${blank}}`);
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

function concessionOf({ rule, source }: Diagnostic, { result, textOf }: Snapshot, file: string): Edit | null {
  if (neverAllowed.has(rule)) return null;
  const symbol = innermost(result.symbols.get(file) ?? [], source.range, null);
  if (symbol === null) return null;
  const at = endOfHead(symbol.range, textOf(file) ?? '');
  return { source: { file, range: { start: at, end: at } }, text: ` allow ${rule} because "${blank}"` };
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
function endOfHead(range: Range, text: string): Range['end'] {
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

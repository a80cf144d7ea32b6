import {
  findNodeAtLocation,
  type Node,
  type ParseError,
  type ParseErrorCode,
  parseTree,
  printParseErrorCode,
} from 'jsonc-parser';
import * as z from 'zod';
import { rules } from '../diagnostics/index.ts';
import { type Language, languages, type OwnWords } from '../i18n/words.ts';
import { type Diagnostic, type Severity, stated } from '../model/diagnostic.ts';
import type { Paper } from '../model/paper.ts';
import { type SheetForm, sheetForms } from '../model/sheet-form.ts';
import type { Position, Source } from '../model/source.ts';
import { type Filling, joined, type Said, say } from '../say/say.ts';
import { nearest } from '../syntax/nearest.ts';
import { textProblem } from '../syntax/text-problem.ts';

const level = z.enum(['error', 'warning', 'hint', 'off']);

/**
 * A pattern of files that are not read. Few signs that stand for anything: with many, a long name takes minutes to compare,
 * and the file may be somebody else's.
 */
const pattern = z
  .string()
  .min(1)
  .max(200)
  .refine((text) => {
    const parts = text.split('/');
    return parts.every((part) => part.split('*').length <= 3) && parts.filter((part) => part === '**').length <= 2;
  });

/** A word or two; no braces and no `<`, which mean something in a message. */
const kind = z
  .string()
  .regex(/^[^{}<>]{1,30}$/u)
  .exactOptional();

/** What kinds of part are called in a shop. */
export const kindsSchema = z.strictObject({ shim: kind, shims: kind, spring: kind, springs: kind });

/**
 * What a settings file may say. A rule whose neglect makes the sheet unsafe can be named, and stays an error: it is
 * silenced by a concession with its reason only. Published as settings.schema.json.
 */
export const settingsSchema = z
  .strictObject({
    $schema: z.string().optional(),
    sheet: z
      .strictObject({
        word: z.string().min(1).max(40).describe('What the sheet is called here, such as "Job card"').optional(),
        language: z.enum(languages).describe('Language of the fixed words: en, es or de').optional(),
        paper: z.enum(['a4', 'letter']).describe('Paper that sheets are laid out for').optional(),
        form: z
          .enum(sheetForms)
          .describe('What print makes: the card, which has all; a record to fill in; or an instruction for the wall')
          .optional(),
        kinds: kindsSchema
          .describe('What kinds of part are called here where the sheet itself mentions them, such as "suplemento"')
          .optional(),
      })
      .describe('How sheets are printed in this workspace')
      .optional(),
    messages: z.enum(languages).describe('Language of what the command says: en, es or de').optional(),
    exclude: z
      .array(pattern)
      .max(100)
      .describe('Files and folders that are not read: patterns as in .gitignore, from the folder of this file')
      .optional(),
    severities: z
      .strictObject(
        Object.fromEntries(
          rules.map((rule) => [
            rule.code,
            (rule.unsafe === true ? z.literal('error') : level).describe(rule.title).optional(),
          ]),
        ),
      )
      .describe('How grave a finding of each rule is in this workspace, where it is not as built in')
      .optional(),
  })
  .describe('Settings of a workspace of rebuild procedures');

/** How sheets are printed in a workspace; null: it does not say. */
export interface SheetSettings {
  readonly word: string | null;
  readonly language: Language | null;
  readonly paper: Paper | null;
  readonly form: SheetForm | null;
  readonly kinds: OwnWords;
}

export const noSheetSettings: SheetSettings = { word: null, language: null, paper: null, form: null, kinds: {} };

/** How a sheet is printed: as requested, else as the workspace says, else as a card, in English on A4. */
export function printedAs(
  { word, language, paper, form, kinds }: SheetSettings,
  asked: {
    readonly language?: Language | undefined;
    readonly paper?: Paper | undefined;
    readonly form?: SheetForm | undefined;
  } = {},
) {
  return {
    word,
    kinds,
    language: asked.language ?? language ?? 'en',
    paper: asked.paper ?? paper ?? 'a4',
    form: asked.form ?? form ?? 'card',
  } as const;
}

export interface Settings {
  /** Patterns as in .gitignore, from the folder of the file, of what is not read. */
  readonly exclude: readonly string[];
  readonly sheet: SheetSettings;
  /** Language of what the command says; null: it does not say. */
  readonly messages: Language | null;
  /** Rules whose severity differs from the one that is built in. */
  readonly severities: ReadonlyMap<string, Severity | 'off'>;
  readonly problems: readonly Diagnostic[];
}

/** The settings file in force, as it was read; `unreadable` says why it could not be, and what to do. */
export type SettingsFile =
  | { readonly uri: string; readonly text: string }
  | { readonly uri: string; readonly unreadable: Filling };

/** Reads a settings file. Never throws; what cannot be used is a problem at its place, and is left out. */
export function readSettings(file: SettingsFile): Settings {
  const { uri } = file;
  const unused = (message: Said, source: Source): Settings => ({
    exclude: [],
    sheet: noSheetSettings,
    messages: null,
    severities: new Map(),
    problems: [{ rule: 'settings-unreadable', severity: 'error', ...stated({ message }), source }],
  });
  if ('unreadable' in file)
    return unused(say`None of these settings is used. ${file.unreadable}`, sourceAt(uri, '', 0, 0));
  // Parsed without the byte order mark, with every place where it was.
  const text = file.text.replace(/^\uFEFF/u, ' ');
  if (textProblem(text) !== null)
    return unused(
      say`This settings file is not text in UTF-8, so none of it is used. Save it as UTF-8.`,
      sourceAt(uri, text, 0, 1),
    );
  const errors: ParseError[] = [];
  const tree = parseTree(text, errors, { allowTrailingComma: true });
  const [first] = errors;
  const problem = (message: Said, offset: number, length: number): Diagnostic => ({
    rule: 'settings-unreadable',
    severity: 'error',
    ...stated({ message }),
    source: sourceAt(uri, text, offset, length),
  });
  if (tree === undefined || first !== undefined) {
    const at = first ?? { offset: 0, length: text.length, error: 0 };
    const what = first === undefined ? say`is empty` : say`cannot be read here (${wordsOf(first.error)})`;
    return unused(
      say`This settings file ${what}, so none of it is used. Correct it, or delete the file.`,
      sourceAt(uri, text, at.offset, at.length),
    );
  }
  const read = settingsSchema.safeParse(plain(tree));
  const problems = read.success ? [] : read.error.issues.map((issue) => told(issue, tree, problem));
  const severities = new Map<string, Severity | 'off'>();
  for (const [rule, value] of entries(findNodeAtLocation(tree, ['severities']))) {
    const known = rules.find(({ code }) => code === rule);
    const wanted = level.safeParse(value);
    if (known !== undefined && wanted.success && (known.unsafe !== true || wanted.data === 'error'))
      severities.set(rule, wanted.data);
  }
  const exclude = (findNodeAtLocation(tree, ['exclude'])?.children ?? []).flatMap(
    (node) => pattern.safeParse(node.value).data ?? [],
  );
  return {
    exclude: exclude.slice(0, 100),
    sheet: sheetSettings(findNodeAtLocation(tree, ['sheet'])),
    messages: settingsSchema.shape.messages.safeParse(findNodeAtLocation(tree, ['messages'])?.value).data ?? null,
    severities,
    problems,
  };
}

/** `ValueExpected` as words. */
function wordsOf(error: ParseErrorCode): string {
  return printParseErrorCode(error)
    .replace(/(?<=[a-z])(?=[A-Z])/gu, ' ')
    .toLowerCase();
}

/** Each one that can be used, whatever is wrong with the others. */
function sheetSettings(node: Node | undefined): SheetSettings {
  const said = new Map(entries(node));
  const { word, language, paper, form, kinds } = settingsSchema.shape.sheet.unwrap().shape;
  return {
    word: word.safeParse(said.get('word')).data ?? null,
    language: language.safeParse(said.get('language')).data ?? null,
    paper: paper.safeParse(said.get('paper')).data ?? null,
    form: form.safeParse(said.get('form')).data ?? null,
    kinds: kinds.safeParse(said.get('kinds')).data ?? {},
  };
}

/** The findings with the severities of a workspace; those of a rule that is off are left out. */
export function withSeverities(
  diagnostics: readonly Diagnostic[],
  severities: Settings['severities'],
): readonly Diagnostic[] {
  if (severities.size === 0) return diagnostics;
  return diagnostics.flatMap((diagnostic) => {
    const severity = diagnostic.isSettled
      ? diagnostic.severity
      : (severities.get(diagnostic.rule) ?? diagnostic.severity);
    return severity === 'off' ? [] : [severity === diagnostic.severity ? diagnostic : { ...diagnostic, severity }];
  });
}

function told(
  issue: z.core.$ZodIssue,
  tree: Node,
  problem: (message: Said, offset: number, length: number) => Diagnostic,
): Diagnostic {
  const path = issue.path as (string | number)[];
  if (issue.code === 'unrecognized_keys') {
    const [key] = issue.keys;
    const node = findNodeAtLocation(tree, [...path, key!])?.parent ?? tree;
    const known =
      path[0] === 'severities'
        ? rules.map(({ code }) => code)
        : path[0] === 'sheet'
          ? Object.keys(settingsSchema.shape.sheet.unwrap().shape)
          : Object.keys(settingsSchema.shape);
    const near = nearest(key!, known);
    const fix = near.length > 0 ? say`Did you mean ${joined(near, say` or `)}?` : say`Delete it.`;
    return problem(
      path[0] === 'severities' ? say`No rule is called ${key!}. ${fix}` : say`${key!} is no setting. ${fix}`,
      node.offset,
      node.length,
    );
  }
  const node = findNodeAtLocation(tree, path) ?? tree;
  const rule = rules.find(({ code }) => code === path[1]);
  if (rule?.unsafe === true)
    return problem(
      say`${rule.code} keeps a sheet from being released that could hurt somebody: it stays an error. Where one step is right as it is, write allow ${rule.code} because "…" there; the reason prints on the sheet.`,
      node.offset,
      node.length,
    );
  const message =
    path[0] === 'severities' && path.length > 1
      ? say`A severity is "error", "warning", "hint" or "off".`
      : path[0] === 'sheet'
        ? say`Of the sheet a word, a language ("en", "es" or "de"), a paper ("a4" or "letter") and a form ("card", "record" or "instruction") can be said, and kinds: what shim, shims, spring and springs are called.`
        : path[0] === 'exclude'
          ? say`What is not read is a list of up to 100 patterns as in .gitignore, such as ["archive/", "*.draft.rebuild"]: each with at most 200 characters, two * between slashes, and two **.`
          : path[0] === 'messages'
            ? say`Messages are in "en", "es" or "de".`
            : say`Settings are written like { "severities": { "part-not-located": "error" } }.`;
  return problem(message, node.offset, node.length);
}

function entries(node: Node | undefined): [string, unknown][] {
  if (node?.type !== 'object') return [];
  return (node.children ?? []).map((property) => [
    property.children![0]!.value as string,
    property.children![1] === undefined ? undefined : plain(property.children![1]!),
  ]);
}

function plain(node: Node): unknown {
  if (node.type === 'object') return Object.fromEntries(entries(node));
  if (node.type === 'array') return (node.children ?? []).map(plain);
  return node.value;
}

function sourceAt(file: string, text: string, offset: number, length: number): Source {
  return { file, range: { start: positionAt(text, offset), end: positionAt(text, offset + Math.max(1, length)) } };
}

function positionAt(text: string, offset: number): Position {
  const before = text.slice(0, offset).split('\n');
  return { line: before.length - 1, character: before.at(-1)!.length };
}

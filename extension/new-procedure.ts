/** The command `handtight.newProcedure`: from nothing to a first procedure, by four questions. */
import {
  commands,
  type Disposable,
  type QuickPickItem,
  QuickPickItemKind,
  SnippetString,
  type Uri,
  window,
  workspace,
} from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import { nameLetters, namePattern } from '../language/syntax/name-pattern.ts';
import {
  type FamilyChoicesParams,
  type FamilyChoicesResult,
  type FirstProcedureParams,
  type FirstProcedureResult,
  familyChoicesMethod,
  firstProcedureMethod,
} from './requests.ts';
import { readSamples } from './samples.ts';
import { l10n } from './words.ts';

type FamilyChoice = FamilyChoicesResult['families'][number];

/** Answers in the place of questions, for tests and for other extensions. */
export interface Answers {
  readonly family: string;
  readonly reads: Readonly<Record<string, string>>;
  readonly name: string;
  /** A family of its own, instead of one that there is. */
  readonly own?: { readonly title: string; readonly parts: string[]; readonly tests: string[] };
}

/** Kinds of figure that a test of a bench gives most often. */
const kinds = [
  'pressure',
  'time',
  'length',
  'volume',
  'flow',
  'angle',
  'speed',
  'force',
  'resistance',
  'voltage',
  'current',
];

/** Registers the command; it returns the URI of the document that it opened. */
export function registerNewProcedure(client: BaseLanguageClient, extensionUri: Uri): Disposable {
  return commands.registerCommand('handtight.newProcedure', async (given?: Answers): Promise<string | undefined> => {
    const at = window.activeTextEditor?.document.uri ?? workspace.workspaceFolders?.[0]?.uri;
    const params: FamilyChoicesParams = {
      uri: (at ?? extensionUri).toString(),
      samples: await readSamples(extensionUri),
    };
    const { families } = await client.sendRequest<FamilyChoicesResult>(familyChoicesMethod, params);
    const answers = given ?? (await ask(families));
    if (answers === undefined) return undefined;
    const request: FirstProcedureParams = { ...params, ...answers, title: l10n.t('Rebuild and test') };
    const { text } = await client.sendRequest<FirstProcedureResult>(firstProcedureMethod, request);
    if (text === null) {
      void window.showErrorMessage(l10n.t('No family is called {0}.', answers.family));
      return undefined;
    }
    return openWithBlanks(text);
  });
}

async function ask(families: readonly FamilyChoice[]): Promise<Answers | undefined> {
  const chosen = await askFamily(families);
  const family = chosen === 'own' ? await askOwn() : chosen;
  if (family === undefined) return undefined;
  const reads = await askReads(family);
  if (reads === undefined) return undefined;
  const name = await askName(l10n.t('New procedure: its name'), `rebuild-${family.name}`);
  if (name === undefined) return undefined;
  return { family: family.name, reads, name, ...('own' in family ? { own: family.own } : {}) };
}

async function askFamily(families: readonly FamilyChoice[]): Promise<FamilyChoice | 'own' | undefined> {
  type Item = QuickPickItem & { readonly chosen: FamilyChoice | 'own' | undefined };
  const part = (origin: FamilyChoice['origin'], label: string): Item[] => {
    const items = families
      .filter((family) => family.origin === origin)
      .map((one): Item => ({ label: one.title, description: one.name, detail: one.note, chosen: one }));
    return items.length === 0 ? [] : [{ label, kind: QuickPickItemKind.Separator, chosen: undefined }, ...items];
  };
  const other: Item = {
    label: l10n.t('$(add) Another kind of unit'),
    detail: l10n.t('You name its parts in the order in which they are built.'),
    chosen: 'own',
  };
  const item = await window.showQuickPick<Item>(
    [...part('workspace', l10n.t('In this workspace')), ...part('sample', l10n.t('Comes with Handtight')), other],
    { title: l10n.t('New procedure: what is rebuilt?'), matchOnDescription: true, matchOnDetail: true },
  );
  return item?.chosen;
}

type OwnFamily = Pick<FamilyChoice, 'name' | 'tests'> & { readonly own: NonNullable<Answers['own']> };

/** A family from the names of its parts. Undefined: the questions were left. */
async function askOwn(): Promise<OwnFamily | undefined> {
  const title = await window.showInputBox({
    title: l10n.t('New family: what do you call such a unit?'),
    placeHolder: l10n.t('Relief valve'),
    validateInput: (text) => (/^[^"…]+$/u.test(text) ? null : l10n.t('Write a few words, without quotes.')),
  });
  if (title === undefined) return undefined;
  const name = await askName(l10n.t('New family: its name'), suggestedName(title));
  if (name === undefined) return undefined;
  const parts = await askNames(
    l10n.t('New family: its parts'),
    l10n.t(
      'In the order in which they are built, the body first, with commas: body, ball, spring, plug. For another stack on the body, name it again: body, screw.',
    ),
    2,
    true,
  );
  if (parts === undefined) return undefined;
  const tests = await askNames(
    l10n.t('New family: what must every unit pass?'),
    l10n.t('Names of tests, with commas: opening, seat-leak'),
    0,
  );
  if (tests === undefined) return undefined;
  return { name, tests: tests.map((test) => ({ name: test, reads: null })), own: { title, parts, tests } };
}

function suggestedName(title: string): string {
  const words = title.toLowerCase().match(new RegExp(`[${nameLetters}0-9]+`, 'gu')) ?? [];
  const name = words.join('-');
  return namePattern.test(name) ? name : 'unit';
}

function askName(title: string, value: string): Thenable<string | undefined> {
  return window.showInputBox({
    title,
    value,
    prompt: l10n.t('Letters, digits and hyphens'),
    validateInput: (text) =>
      namePattern.test(text) ? null : l10n.t('A name begins with a letter and has letters, digits and single hyphens.'),
  });
}

async function askNames(title: string, prompt: string, least: number, stacks = false): Promise<string[] | undefined> {
  const namesIn = (text: string) =>
    text
      .split(',')
      .map((one) => one.trim().replaceAll(/\s+/gu, '-'))
      .filter((one) => one !== '');
  const typed = await window.showInputBox({
    title,
    prompt,
    validateInput: (text) => {
      const names = namesIn(text);
      const wrong = names.find((one) => !namePattern.test(one));
      if (wrong !== undefined) return l10n.t('{0} is no name: it needs letters, digits and single hyphens.', wrong);
      // The first again begins another stack.
      const own = stacks ? names.filter((one, index) => index === 0 || one !== names[0]) : names;
      if (new Set(own).size < own.length) return l10n.t('Give each its own name.');
      return names.length < least ? l10n.t('Name at least {0}.', least) : null;
    },
  });
  return typed === undefined ? undefined : namesIn(typed);
}

/** Which tests give a figure, and of what kind: the others are watched. Undefined: the questions were left. */
async function askReads({ tests }: Pick<FamilyChoice, 'tests'>): Promise<Record<string, string> | undefined> {
  if (tests.length === 0) return {};
  const chosen = await window.showQuickPick(
    tests.map(({ name, reads }) => ({ label: name, description: reads ?? '', picked: reads !== null, reads })),
    { title: l10n.t('New procedure: which tests give a figure?'), canPickMany: true },
  );
  if (chosen === undefined) return undefined;
  const reads: Record<string, string> = {};
  for (const { label, reads: known } of chosen) {
    const kind =
      known ?? (await window.showQuickPick(kinds, { title: l10n.t('New procedure: what does {0} read?', label) }));
    if (kind === undefined) return undefined;
    reads[label] = kind;
  }
  return reads;
}

/** A document that is not saved yet, with the cursor in its first blank; Tab goes to the next. */
async function openWithBlanks(text: string): Promise<string> {
  const document = await workspace.openTextDocument({ language: 'rebuild', content: '' });
  const editor = await window.showTextDocument(document);
  let count = 0;
  const escaped = text.replace(/[\\$}]/gu, '\\$&').replace(/…/gu, () => `\${${++count}:…}`);
  await editor.insertSnippet(new SnippetString(escaped));
  return document.uri.toString();
}

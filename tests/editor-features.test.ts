/** Each feature of the editor once over the protocol, as a client asks for it. */
import { afterEach, expect, test } from 'vitest';
import type {
  CallHierarchyItem,
  CodeAction,
  CodeLens,
  CompletionItem,
  DocumentHighlight,
  Hover,
  Location,
  Diagnostic as LspDiagnostic,
  SignatureHelp,
  TextEdit,
  WorkspaceEdit,
} from 'vscode-languageserver-protocol/node';
import { TextDocument } from 'vscode-languageserver-textdocument';
import type { DrawingResult, SheetResult, StateResult } from '../server/lsp/requests.ts';
import { EditorSession } from './editor-session.ts';
import { procedureText, shopText } from './holder.ts';

const texts = { 'shop.rebuild': shopText, 'procedure.rebuild': procedureText };
let session: EditorSession;
afterEach(() => session.end());

const begin = async (...more: [Parameters<typeof EditorSession.begin>[1]?, unknown?]) => {
  session = await EditorSession.begin(texts, ...more);
};

test('references, highlights, type definition and renaming', async () => {
  await begin({ textDocument: { rename: { prepareSupport: true } } });
  expect(session.initialized.capabilities).toMatchObject({
    referencesProvider: true,
    documentHighlightProvider: true,
    typeDefinitionProvider: true,
    renameProvider: { prepareProvider: true },
  });
  const at = ['procedure.rebuild', 'slacken n'] as const;
  const context = { includeDeclaration: false };
  const references = await session.ask<Location[]>('textDocument/references', ...at, { context });
  expect(references.map(({ uri, range }) => `${uri.split('/').at(-1)}:${range.start.line + 1}`)).toEqual([
    'procedure.rebuild:10',
    'procedure.rebuild:11',
    'shop.rebuild:12',
    'shop.rebuild:14',
  ]);
  const highlights = await session.ask<DocumentHighlight[]>('textDocument/documentHighlight', ...at);
  expect(highlights.map(({ range, kind }) => [range.start.line, kind])).toEqual([
    [9, 2],
    [10, 2],
  ]);
  expect(await session.ask('textDocument/typeDefinition', ...at)).toMatchObject([
    { uri: session.uri('shop.rebuild'), range: { start: { line: 7, character: 7 } } },
  ]);
  expect(await session.ask('textDocument/prepareRename', ...at)).toMatchObject({ placeholder: 'nut' });
  const renamed = await session.ask<WorkspaceEdit>('textDocument/rename', ...at, { newName: 'collar' });
  expect(renamed.documentChanges).toMatchObject([
    { textDocument: { uri: session.uri('procedure.rebuild'), version: 1 }, edits: [{}, {}] },
    { textDocument: { uri: session.uri('shop.rebuild'), version: 1 }, edits: [{}, {}, {}] },
  ]);
  await expect(session.ask('textDocument/rename', ...at, { newName: 'body' })).rejects.toThrow(
    /^There is already a part body: line 9 of shop\.rebuild/u,
  );
  await expect(session.ask('textDocument/rename', ...at)).rejects.toThrow(/expected string/u);
  await expect(session.ask('textDocument/prepareRename', 'procedure.rebuild', 'sla')).rejects.toThrow(
    /is a word of the language/u,
  );
});

test('completion by the state of the unit, with documentation when an item is looked at', async () => {
  await begin();
  await session.type('procedure.rebuild', '    remove cap, nut, nozzle\n', '    remove \n');
  const items = await session.ask<CompletionItem[]>('textDocument/completion', 'procedure.rebuild', '    remove ', {
    context: { triggerKind: 1 },
  });
  const [first] = items.sort((a, b) => (a.sortText! < b.sortText! ? -1 : 1));
  expect(first).toMatchObject({ label: 'cap', labelDetails: { description: 'Shipping cap' } });
  const resolved = await session.connection.sendRequest<CompletionItem>('completionItem/resolve', first!);
  expect(resolved.documentation).toMatchObject({ value: expect.stringContaining('part cap "Shipping cap" on nut') });
});

test('a verb is explained while it is written, and shown with what its step changes', async () => {
  await begin();
  const help = await session.ask<SignatureHelp>('textDocument/signatureHelp', 'procedure.rebuild', 'slacken ');
  expect(help.signatures).toMatchObject([{ label: expect.stringMatching(/^slacken PARTS/u), activeParameter: 0 }]);
  const hover = await session.ask<Hover>('textDocument/hover', 'procedure.rebuild', 'slack');
  expect(hover.contents).toMatchObject({ value: expect.stringContaining('- nut: tight as found → slackened') });
});

test('the state at the cursor, and a family that no procedure uses yet, drawn', async () => {
  await begin();
  const ask = (method: string, name: string, line: number) =>
    session.connection.sendRequest<StateResult | DrawingResult>(`handtight/${method}`, {
      uri: session.uri(name),
      position: { line, character: 6 },
    });
  const slackened = procedureText.split('\n').indexOf('    slacken nut');
  const state = (await ask('state', 'procedure.rebuild', slackened)) as Extract<StateResult, { kind: 'state' }>;
  expect(state).toMatchObject({ kind: 'state', after: '1.2' });
  const nut = { name: 'Nozzle nut', words: 'slackened', isNew: true };
  const since = { number: '1.2', source: { file: session.uri('procedure.rebuild') } };
  expect(state.groups.find(({ kind }) => kind === 'loose')).toMatchObject({ items: [{ ...nut, since }] });
  expect(await ask('state', 'shop.rebuild', 8)).toMatchObject({
    kind: 'none',
    reason: expect.stringMatching(/cursor in a step/u),
  });
  await session.type('procedure.rebuild', procedureText, '');
  const drawn = await ask('drawing', 'shop.rebuild', 8);
  expect(drawn).toMatchObject({
    kind: 'drawing',
    title: 'Nozzle holder',
    html: expect.stringContaining('>Nozzle nut<'),
  });
  expect(await ask('drawing', 'shop.rebuild', 1)).toMatchObject({ kind: 'drawing', title: 'Nozzle holder' });
  expect(await ask('drawing', 'procedure.rebuild', 0)).toMatchObject({ kind: 'none' });
});

test('the sheet as a record or an instruction, and as the settings say where none is given', async () => {
  await begin();
  const ask = (form?: string) =>
    session.connection.sendRequest<SheetResult>('handtight/sheet', { uri: session.uri('procedure.rebuild'), form });
  expect(await ask()).toMatchObject({ kind: 'sheet', form: 'card' });
  const [record, instruction] = [await ask('record'), await ask('instruction')];
  expect(record).toMatchObject({
    kind: 'sheet',
    form: 'record',
    html: expect.stringContaining('class="pages record"'),
  });
  expect(instruction).toMatchObject({
    form: 'instruction',
    html: expect.stringContaining('class="pages instruction"'),
  });
  await expect(ask('poster')).rejects.toThrow(/form/u);
});

test('the layout is registered for procedures alone, where the client lets it be', async () => {
  const dynamicRegistration = true;
  await begin({
    textDocument: {
      formatting: { dynamicRegistration },
      rangeFormatting: { dynamicRegistration },
      onTypeFormatting: { dynamicRegistration },
    },
  });
  expect(session.initialized.capabilities.documentFormattingProvider).toBeUndefined();
  expect(session.registered).toEqual(
    ['formatting', 'rangeFormatting', 'onTypeFormatting'].map((kind) => ({
      method: `textDocument/${kind}`,
      languages: ['rebuild'],
    })),
  );
});

test('lays out a document, a range, and what is typed; refuses in words what cannot be read', async () => {
  await begin();
  const options = { tabSize: 2, insertSpaces: true };
  await session.type('procedure.rebuild', '    slacken nut\n', 'slacken   nut\n');
  const edits = await session.ask<TextEdit[]>('textDocument/formatting', 'procedure.rebuild', null, { options });
  const document = session.documents.get('procedure.rebuild')!;
  expect(TextDocument.applyEdits(document, edits)).toContain('\n    slacken nut\n');
  const range = { start: { line: 9, character: 0 }, end: { line: 9, character: 0 } };
  const some = await session.ask<TextEdit[]>('textDocument/rangeFormatting', 'procedure.rebuild', null, {
    options,
    range,
  });
  expect(TextDocument.applyEdits(document, some).split('\n')[9]).toBe('    slacken nut');
  const typed = await session.ask<TextEdit[]>('textDocument/onTypeFormatting', 'procedure.rebuild', 'slacken   nut\n', {
    options,
    ch: '\n',
  });
  expect(TextDocument.applyEdits(document, typed).split('\n')[9]).toBe('    slacken nut');
  await session.type('procedure.rebuild', '"holding fixture"', '"holding fixture');
  await expect(session.ask('textDocument/formatting', 'procedure.rebuild', null, { options })).rejects.toThrow(
    /^Not laid out: line 9 cannot be read\./u,
  );
});

test('leaves the layout of the settings to the editor', async () => {
  session = await EditorSession.begin({ ...texts, 'handtight.json': '{ "language":"en" }\n' });
  const options = { tabSize: 2, insertSpaces: true };
  expect(await session.ask<TextEdit[]>('textDocument/formatting', 'handtight.json', null, { options })).toEqual([]);
});

test('symbols of the workspace, folding, selections, linked editing, colors, hints, links, lenses, hierarchy', async () => {
  const options = { rulePages: 'file:///pages', printCommand: 'print', usesCommand: 'uses' };
  const called = procedureText
    .replace('    slacken nut\n', '    loosen\n')
    .concat('sequence loosen {\n  slacken nut\n}\n');
  session = await EditorSession.begin(
    { ...texts, 'procedure.rebuild': called },
    {},
    { hints: { steps: true } },
    options,
  );
  const file = 'procedure.rebuild';
  const send = <T>(method: string, params: object) => session.connection.sendRequest<T>(method, params);
  expect(await send('workspace/symbol', { query: 'nozzle nut' })).toMatchObject([
    { name: 'nut Nozzle nut', location: { uri: session.uri('shop.rebuild') } },
  ]);
  expect(await session.ask('textDocument/foldingRange', file)).toContainEqual({ startLine: 7, endLine: 11 });
  const { textDocument, position } = session.behind(file, '    remove cap, nu');
  expect(await send('textDocument/selectionRange', { textDocument, positions: [position] })).toMatchObject([
    { range: { start: { line: 10, character: 16 } }, parent: { range: { start: { line: 10, character: 11 } } } },
  ]);
  expect(await session.ask('textDocument/linkedEditingRange', file, 'sequence loos')).toMatchObject({
    ranges: [{ start: { line: 9 } }, { start: { line: 18 } }],
  });
  expect(await session.ask('textDocument/semanticTokens/full', file)).toEqual({
    data: [9, 4, 6, 0, 0, 1, 11, 3, 2, 0],
  });
  const range = { start: { line: 0, character: 0 }, end: { line: 99, character: 0 } };
  expect(await session.ask('textDocument/inlayHint', file, null, { range })).toContainEqual({
    position: { line: 8, character: 4 },
    label: '1.1',
    paddingRight: true,
  });
  const lenses = await session.ask<CodeLens[]>('textDocument/codeLens', file);
  expect(lenses).toMatchObject([{ command: { command: 'print' } }, { data: {} }]);
  expect(await send('codeLens/resolve', lenses[1]!)).toMatchObject({
    command: { title: 'Called once', command: 'uses' },
  });
  const [item] = await session.ask<CallHierarchyItem[]>('textDocument/prepareCallHierarchy', file, 'sequence loos');
  expect(await send('callHierarchy/incomingCalls', { item })).toMatchObject([{ from: { name: 'rebuild' } }]);
  expect(await send('callHierarchy/outgoingCalls', { item })).toEqual([]);
  await session.type(file, 'unclamp body', 'unclamp body allow not-clamped because "…"');
  expect(await session.ask('textDocument/documentLink', file)).toMatchObject([
    { target: 'file:///pages/order/not-clamped.md', tooltip: 'Explain not-clamped' },
  ]);
});

test('a client that only asks for findings gets them on request', async () => {
  await begin({ textDocument: { diagnostic: {} } });
  expect(session.initialized.capabilities.diagnosticProvider).toMatchObject({ interFileDependencies: true });
  await session.type('procedure.rebuild', 'remove cap, nut, nozzle', 'remove cap, nut, nozzel');
  const report = await session.ask<{ items: { code: string }[] }>('textDocument/diagnostic', 'procedure.rebuild');
  expect(report.items.map(({ code }) => code)).toContain('unknown-name');
  session.end();
  await begin({ textDocument: { diagnostic: {}, publishDiagnostics: {} } });
  expect(session.initialized.capabilities.diagnosticProvider).toBeUndefined();
});

test('refactorings are offered by kind, with edits of the document', async () => {
  await begin();
  const { textDocument, position } = session.behind('procedure.rebuild', 'unclamp');
  const actions = await session.connection.sendRequest<CodeAction[]>('textDocument/codeAction', {
    textDocument,
    range: { start: position, end: position },
    context: { diagnostics: [], only: ['refactor.rewrite'] },
  });
  expect(actions.map(({ title, kind }) => `${kind} ${title}`)).toEqual([
    'refactor.rewrite Write the build from this teardown',
    'refactor.rewrite Split the stage here',
  ]);
  expect(actions[1]!.edit!.documentChanges).toMatchObject([{ textDocument: { uri: textDocument.uri, version: 1 } }]);
});

test('related places and faded text only for a client that shows them', async () => {
  const idle = procedureText.replace('unclamp body', 'unclamp body allow not-clamped because "held"');
  const asked = async (can: object) => {
    session = await EditorSession.begin({ ...texts, 'procedure.rebuild': idle }, { textDocument: { diagnostic: can } });
    const report = await session.ask<{ items: LspDiagnostic[] }>('textDocument/diagnostic', 'procedure.rebuild');
    return report.items.find(({ code }) => code === 'allow-without-effect');
  };
  expect(await asked({ tagSupport: { valueSet: [1] } })).toMatchObject({ tags: [1] });
  session.end();
  expect((await asked({}))!.tags).toBeUndefined();
});

test('findings and fixes are in the language that is set, or in that of the editor', async () => {
  const wrong = { ...texts, 'procedure.rebuild': procedureText.replace('slacken nut', 'slacken nutt') };
  session = await EditorSession.begin(wrong, {}, { language: 'de' });
  const of = { textDocument: { uri: session.uri('procedure.rebuild') } };
  const { items } = await session.connection.sendRequest<{ items: LspDiagnostic[] }>('textDocument/diagnostic', of);
  const unknown = items.find(({ code }) => code === 'unknown-name')!;
  expect(unknown.message).toContain('nutt gibt es nicht. Ist nut gemeint?');
  const actions = await session.connection.sendRequest<CodeAction[]>('textDocument/codeAction', {
    ...of,
    range: unknown.range,
    context: { diagnostics: [unknown] },
  });
  expect(actions.map(({ title }) => title)).toContain('nut schreiben');
});

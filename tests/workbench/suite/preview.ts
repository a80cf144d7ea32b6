import { commands, type Tab, TabInputWebview, window } from 'vscode';
import type { SheetResult, SpecsResult } from '../../../server/lsp/requests.ts';
import { assert, extension, fileUri, find, open, put, replace, type Test, until } from './test.ts';

export const previewTests: readonly Test[] = [
  {
    name: 'the preview opens beside the editor with the title of the procedure',
    async run() {
      const editor = await open('procedure.rebuild');
      put(editor, find(editor.document, 'torque nut').start.line);
      await commands.executeCommand('handtight.preview');
      const tab = await until('the preview', () => previewTab('Sheet: Rebuild and set'));
      assert.notEqual(tab.group.viewColumn, editor.viewColumn, 'beside the editor');
      assert.equal(window.activeTextEditor?.document, editor.document, 'the cursor stays in the text');
    },
  },
  {
    name: 'the preview follows the cursor to another file, and the text as it is typed',
    async run() {
      const job = await open('job.rebuild');
      await until('the sheet of the job', () => previewTab('Sheet: Set of two'));
      await replace(job, 'Set of two', 'Set of three');
      await until('the new title', () => previewTab('Sheet: Set of three'));
      await open('job.rebuild');
      await open('shop.rebuild');
      // A shop has no sheet: the last one stays, and says whose it is.
      await new Promise((resolve) => setTimeout(resolve, 1500));
      assert.ok(previewTab('Sheet: Set of two'), 'the last sheet stays');
      await open('procedure.rebuild');
      await until('the sheet of the procedure', () => previewTab('Sheet: Rebuild and set'));
    },
  },
  {
    name: 'the sheet holds every step with the line that it is written on',
    async run() {
      const { client } = await extension();
      const { document } = await open('procedure.rebuild');
      const answer = await client.sendRequest<SheetResult>('handtight/sheet', { uri: document.uri.toString() });
      assert.equal(answer.kind, 'sheet');
      if (answer.kind !== 'sheet') return;
      const line = find(document, 'torque nut to nut-fit').start.line;
      assert.ok(answer.html.includes(`data-source-line="${line}"`));
      assert.match(answer.html, /60/);
      const refused = await client.sendRequest('handtight/sheet', { uri: 7 }).then(
        () => false,
        () => true,
      );
      assert.ok(refused, 'a question of the wrong form is refused');
      assert.equal(
        (await client.sendRequest<SheetResult>('handtight/sheet', { uri: fileUri('nowhere.rebuild').toString() })).kind,
        'none',
      );
    },
  },
  {
    name: 'the specifications open beside the editor, and follow the text as it is typed',
    async run() {
      const editor = await open('procedure.rebuild');
      put(editor, find(editor.document, 'torque nut').start.line);
      await commands.executeCommand('handtight.specs');
      const tab = await until('the specifications', () =>
        viewTab('handtight.specs', 'Specifications: Rebuild and set'),
      );
      assert.notEqual(tab.group.viewColumn, editor.viewColumn, 'beside the editor');
      assert.equal(window.activeTextEditor?.document, editor.document, 'the cursor stays in the text');
      const { client } = await extension();
      const answer = await client.sendRequest<SpecsResult>('handtight/specs', { uri: editor.document.uri.toString() });
      assert.equal(answer.kind, 'specs');
      if (answer.kind === 'specs') {
        const line = find(editor.document, 'torque nut to nut-fit').start.line;
        assert.ok(answer.html.includes(`data-source-line="${line}"`));
      }
      await replace(editor, 'Rebuild and set', 'Rebuild, set and prove');
      await until('the new title', () => viewTab('handtight.specs', 'Specifications: Rebuild, set and prove'));
      await open('procedure.rebuild');
      const renewed = await until('the old title', () => viewTab('handtight.specs', 'Specifications: Rebuild and set'));
      await window.tabGroups.close(renewed);
      await until('it to be gone', () => viewTab('handtight.specs', 'Specifications: Rebuild and set') === undefined);
    },
  },
  {
    name: 'the preview closes',
    async run() {
      const tab = await until('the preview', () => previewTab('Sheet: Rebuild and set'));
      await window.tabGroups.close(tab);
      await until('it to be gone', () => previewTab('Sheet: Rebuild and set') === undefined);
    },
  },
];

function previewTab(label: string): Tab | undefined {
  return viewTab('handtight.sheet', label);
}

function viewTab(viewType: string, label: string): Tab | undefined {
  return window.tabGroups.all
    .flatMap(({ tabs }) => tabs)
    .find(
      (tab) => tab.input instanceof TabInputWebview && tab.input.viewType.endsWith(viewType) && tab.label === label,
    );
}

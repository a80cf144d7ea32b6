import { mkdtempSync, readdirSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { commands, Uri, window, workspace } from 'vscode';
import { assert, extension, problems, rule, type Test, until } from './test.ts';

export const beginTests: readonly Test[] = [
  {
    name: 'a new procedure opens with the cursor in its first blank, and Tab goes to the next',
    async run() {
      await extension();
      const uri = await commands.executeCommand<string | undefined>('handtight.newProcedure', {
        family: 'pintle',
        reads: { opening: 'pressure' },
        name: 'rebuild-first',
      });
      assert.ok(uri !== undefined, 'it was written');
      const editor = window.activeTextEditor!;
      const text = () => editor.document.getText();
      assert.match(text(), /^procedure rebuild-first "/mu);
      assert.match(text(), /^family pintle "/mu);
      assert.equal(text().slice(editor.document.offsetAt(editor.selection.start)).charAt(0), '…');
      const first = editor.selection.start;
      await commands.executeCommand('type', { text: 'Shop lead' });
      await commands.executeCommand('jumpToNextSnippetPlaceholder');
      assert.ok(editor.selection.start.isAfter(first), 'the cursor went on');
      assert.equal(editor.document.getText(editor.selection), '…');
      await until('only blanks are reported as errors', () => {
        const found = problems(editor.document);
        return found.length > 10 && found.some((problem) => rule(problem) === 'blank-left');
      });
      await commands.executeCommand('workbench.action.revertAndCloseActiveEditor');
    },
  },
  {
    name: 'a family of its own is begun from the names of its parts',
    async run() {
      await commands.executeCommand('handtight.newProcedure', {
        family: 'relief',
        reads: { opening: 'pressure' },
        name: 'rebuild-relief',
        own: { title: 'Relief valve', parts: ['body', 'ball', 'spring', 'plug'], tests: ['opening'] },
      });
      const text = window.activeTextEditor!.document.getText();
      assert.match(text, /^ {2}part plug +"Plug" +on body +holds spring$/mu);
      assert.match(text, /^ {4}torque plug to plug-fit with …$/mu);
      await commands.executeCommand('workbench.action.revertAndCloseActiveEditor');
    },
  },
  {
    name: 'the samples are copied into a folder of their own, and never over what is there',
    async run() {
      const folder = mkdtempSync(join(tmpdir(), 'handtight-samples-'));
      const copied = await commands.executeCommand<string | undefined>(
        'handtight.samples',
        Uri.file(folder).toString(),
      );
      assert.ok(copied !== undefined, 'they were copied');
      assert.ok(readdirSync(join(folder, 'handtight-samples')).includes('one-spring'));
      assert.equal((await workspace.fs.stat(Uri.parse(`${copied}/first/first.rebuild`))).size > 500, true);
      // Not awaited: the message stays until it is closed.
      assert.equal(await commands.executeCommand('handtight.samples', Uri.file(folder).toString()), undefined);
    },
  },
];

import { type CodeAction, commands, languages, type TabInputCustom, Uri, window, workspace } from 'vscode';
import { assert, extension, fileUri, find, open, problems, replace, rule, type Test, until } from './test.ts';

export const diagnosticsTests: readonly Test[] = [
  {
    name: 'the extension starts for a folder with .rebuild files',
    async run() {
      const { client } = await extension();
      await until('the running server', () => client.isRunning());
    },
  },
  {
    name: 'a mistake is reported as it is typed, and goes away when it is corrected',
    async run() {
      const editor = await open('procedure.rebuild');
      assert.equal(editor.document.languageId, 'rebuild');
      await replace(editor, 'remove nut, nozzle', 'remove nut, nozzel');
      const found = await until('a finding', () =>
        problems(editor.document).find((problem) => rule(problem) === 'unknown-name'),
      );
      assert.match(found.message, /nozzel/);
      assert.ok(found.range.intersection(find(editor.document, 'nozzel')), 'it is at the name');
      await replace(editor, 'nozzel', 'nozzle');
      await until('the finding to go', () =>
        problems(editor.document).every((problem) => rule(problem) !== 'unknown-name'),
      );
    },
  },
  {
    name: "a finding's code leads to the page of its rule, which opens rendered",
    async run() {
      const editor = await open('procedure.rebuild');
      await replace(editor, 'remove nut, nozzle', 'remove nut, nozzel');
      const found = await until('a finding', () =>
        problems(editor.document).find((problem) => rule(problem) === 'unknown-name'),
      );
      assert.ok(typeof found.code === 'object', 'the code has a link');
      assert.equal(found.code.target.toString(), 'handtight-rule:/unknown-name.md');
      const page = await workspace.openTextDocument(found.code.target);
      assert.match(page.getText(), /^# unknown-name/m);
      // What a click on the link does.
      await commands.executeCommand('vscode.open', found.code.target);
      const tab = await until('the page', () => {
        const { activeTab } = window.tabGroups.activeTabGroup;
        return activeTab?.label.includes('unknown-name') ? activeTab : undefined;
      });
      assert.equal((tab.input as TabInputCustom).viewType, 'vscode.markdown.preview.editor');
      await window.tabGroups.close(tab);
      await open('procedure.rebuild');
      await commands.executeCommand('handtight.explain', 'unknown-name');
      const explained = await until('the page', () =>
        window.tabGroups.all.flatMap(({ tabs }) => tabs).find(({ label }) => label.includes('unknown-name')),
      );
      await window.tabGroups.close(explained);
      await open('procedure.rebuild');
    },
  },
  {
    name: 'a quick fix corrects a finding',
    async run() {
      const editor = await open('procedure.rebuild');
      await replace(editor, 'remove nut, nozzle', 'remove nut, nozzel');
      const found = await until('a finding', () =>
        problems(editor.document).find((problem) => rule(problem) === 'unknown-name'),
      );
      const actions = await commands.executeCommand<CodeAction[]>(
        'vscode.executeCodeActionProvider',
        editor.document.uri,
        found.range,
      );
      const preferred = actions.find(({ isPreferred }) => isPreferred);
      assert.ok(preferred?.edit, `a preferred fix is offered: ${actions.map(({ title }) => title).join(', ')}`);
      assert.ok(await workspace.applyEdit(preferred.edit));
      assert.ok(editor.document.getText().includes('remove nut, nozzle, spring'));
      await open('procedure.rebuild');
    },
  },
  {
    name: 'a concession is offered behind the fix, and takes its finding away',
    async run() {
      const editor = await open('procedure.rebuild');
      const found = await until('a finding that can be allowed', async () => {
        for (const problem of problems(editor.document)) {
          const actions = await commands.executeCommand<CodeAction[]>(
            'vscode.executeCodeActionProvider',
            editor.document.uri,
            problem.range,
          );
          const action = actions.find(({ title }) => title.startsWith(`Allow ${rule(problem)}`));
          if (action?.edit) return { problem, edit: action.edit, preferred: action.isPreferred };
        }
        return undefined;
      });
      assert.notEqual(found.preferred, true);
      const before = problems(editor.document).filter((problem) => rule(problem) === rule(found.problem)).length;
      assert.ok(await workspace.applyEdit(found.edit));
      assert.match(editor.document.getText(), new RegExp(`allow ${rule(found.problem)} because "`));
      await until(
        'fewer findings of the rule',
        () => problems(editor.document).filter((problem) => rule(problem) === rule(found.problem)).length < before,
      );
      await open('procedure.rebuild');
    },
  },
  {
    name: 'files that are not open are reported too, and follow the disk',
    async run() {
      await open('procedure.rebuild');
      const stray = fileUri('stray.rebuild');
      await workspace.fs.writeFile(stray, new TextEncoder().encode('procedure stray for nothing at nowhere {\n}\n'));
      await until('findings of the new file', () => languages.getDiagnostics(stray).length > 0);
      await workspace.fs.delete(stray);
      await until('them to go with the file', () => languages.getDiagnostics(stray).length === 0);
    },
  },
  {
    name: 'the server can be restarted, and reports everything again',
    async run() {
      const { client } = await extension();
      const editor = await open('procedure.rebuild');
      await until('findings', () => problems(editor.document).length > 0);
      await commands.executeCommand('handtight.restartServer');
      assert.ok(client.isRunning());
      await until('findings again', () => problems(editor.document).length > 0);
    },
  },
  {
    name: 'a file deleted while open does not stop the server',
    async run() {
      const { client } = await extension();
      const gone = fileUri('gone.rebuild');
      await workspace.fs.writeFile(gone, new TextEncoder().encode('family gone "Gone" {\n}\n'));
      const editor = await open('gone.rebuild');
      await workspace.fs.delete(Uri.parse(gone.toString()));
      await editor
        .edit((edit) => edit.insert(editor.document.positionAt(0), '// still typed in\n'))
        .then(
          () => undefined,
          () => undefined,
        );
      await commands.executeCommand('workbench.action.revertAndCloseActiveEditor');
      assert.ok(client.isRunning());
      const other = await open('procedure.rebuild');
      await replace(other, 'remove nut, nozzle', 'remove nut, nozzel');
      await until('a finding', () => problems(other.document).some((problem) => rule(problem) === 'unknown-name'));
      await open('procedure.rebuild');
    },
  },
];

import { languages, tasks, workspace } from 'vscode';
import { assert, extension, open, type Test, until } from './test.ts';

export const taskTests: readonly Test[] = [
  {
    name: 'the task checks the folder, and its findings are in the list of problems',
    async run() {
      await extension();
      const editor = await open('procedure.rebuild');
      const found = await tasks.fetchTasks({ type: 'handtight' });
      assert.deepEqual(found.map(({ name }) => name).sort(), ['check', 'watch']);
      assert.ok(workspace.workspaceFolders !== undefined);
      await tasks.executeTask(found.find(({ name }) => name === 'check')!);
      const ofTask = await until('the findings of the task', () => {
        const all = languages.getDiagnostics(editor.document.uri).filter(({ source }) => source === 'handtight check');
        return all.length > 0 ? all : undefined;
      });
      assert.ok(
        ofTask.some(({ code }) => code === 'part-still-held'),
        JSON.stringify(ofTask),
      );
    },
  },
];

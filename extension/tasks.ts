/** The tasks `handtight: check` and `handtight: watch`: the command on each folder, its findings in the list of problems. */
import {
  type Disposable,
  type ExtensionContext,
  ProcessExecution,
  Task,
  TaskGroup,
  tasks,
  type WorkspaceFolder,
  workspace,
} from 'vscode';
import { l10n } from './words.ts';

/** Must be the type in the manifest. */
const type = 'handtight';

/** As the manifest describes it. */
interface CheckTask {
  readonly type: typeof type;
  readonly task: 'check' | 'watch';
  /** Files and folders, from the workspace folder; without any all of it. */
  readonly paths?: readonly string[];
}

export function registerTasks(context: ExtensionContext): Disposable {
  const command = context.asAbsolutePath('out/handtight.mjs');
  return tasks.registerTaskProvider(type, {
    provideTasks: () =>
      (workspace.workspaceFolders ?? [])
        .filter(({ uri }) => uri.scheme === 'file')
        .flatMap((folder) => [
          taskFor(command, folder, { type, task: 'check' }),
          taskFor(command, folder, { type, task: 'watch' }),
        ]),
    resolveTask({ definition, scope }) {
      const folder = typeof scope === 'object' ? scope : workspace.workspaceFolders?.[0];
      return folder === undefined ? undefined : taskFor(command, folder, definition as unknown as CheckTask);
    },
  });
}

function taskFor(command: string, folder: WorkspaceFolder, definition: CheckTask): Task {
  const watches = definition.task === 'watch';
  const paths = definition.paths ?? [];
  const task = new Task(
    { ...definition },
    folder,
    definition.task,
    'handtight',
    // The editor's own program runs as Node so.
    new ProcessExecution(process.execPath, [command, 'check', ...(watches ? ['--watch'] : []), '--', ...paths], {
      cwd: folder.uri.fsPath,
      env: { ELECTRON_RUN_AS_NODE: '1' },
    }),
    watches ? '$handtight-watch' : '$handtight',
  );
  task.isBackground = watches;
  task.group = TaskGroup.Build;
  task.detail = watches ? l10n.t('Check again after each change') : l10n.t('Check all procedures of the folder');
  return task;
}

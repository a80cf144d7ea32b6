/** What the records of closed jobs answer, as pages beside the text: the command makes them, as it does in a terminal. */
import { execFile } from 'node:child_process';
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import {
  commands,
  Disposable,
  type ExtensionContext,
  type TextEditor,
  ViewColumn,
  type WebviewPanel,
  window,
  workspace,
} from 'vscode';
import { l10n, language } from './words.ts';

interface Question {
  readonly command: string;
  /** Title of its page. */
  readonly title: () => string;
  /** Its arguments; undefined: it was given up. @param given an answer in the place of a question, for tests and other extensions */
  readonly ask: (given?: string) => Promise<readonly string[] | undefined> | readonly string[];
}

const questions: readonly Question[] = [
  {
    command: 'handtight.history',
    title: () => l10n.t('History'),
    async ask(given) {
      const word = given ?? serialAtCursor() ?? (await askFor(l10n.t('A serial, a job, a part number or a customer')));
      return word === undefined ? undefined : ['history', '--', word];
    },
  },
  { command: 'handtight.openJobs', title: () => l10n.t('In the house'), ask: () => ['open'] },
  {
    command: 'handtight.affected',
    title: () => l10n.t('Affected'),
    async ask(given) {
      const tool = given ?? (await askFor(l10n.t('The tool that was found wrong'), wordAtCursor()));
      return tool === undefined ? undefined : ['affected', `--tool=${tool}`];
    },
  },
  { command: 'handtight.learn', title: () => l10n.t('Learned'), ask: () => ['learn'] },
];

/** Registers the commands; each returns the page that it shows, or what it says where there is none. */
export function registerRecords(context: ExtensionContext): Disposable {
  const program = context.asAbsolutePath('out/handtight.mjs');
  let panel: WebviewPanel | undefined;
  const show = (title: string, page: string) => {
    panel ??= opened(title, () => {
      panel = undefined;
    });
    panel.title = title;
    panel.webview.html = page;
    panel.reveal(undefined, true);
  };
  return Disposable.from(
    ...questions.map(({ command, title, ask }) =>
      commands.registerCommand(command, async (given?: string): Promise<string | undefined> => {
        const folder = folderInHand();
        if (folder === undefined) {
          void window.showInformationMessage(l10n.t('Open the folder that has the jobs.'));
          return undefined;
        }
        const args = await ask(given);
        if (args === undefined) return undefined;
        const { page, said } = await answer(program, folder, args);
        if (page === null) void window.showInformationMessage(said);
        else show(title(), page);
        return page ?? said;
      }),
    ),
  );
}

function opened(title: string, closed: () => void): WebviewPanel {
  const panel = window.createWebviewPanel('handtight.records', title, ViewColumn.Beside, { localResourceRoots: [] });
  panel.onDidDispose(closed);
  return panel;
}

/** Runs the command in a folder. `page` is null where there is no answer: then it says why. */
async function answer(program: string, cwd: string, [name, ...args]: readonly string[]) {
  const beside = await mkdtemp(join(tmpdir(), 'handtight-page-'));
  const file = join(beside, 'page.html');
  try {
    const said = await new Promise<string>((resolve) => {
      // The editor's own program runs as Node so.
      const env = { ...process.env, ELECTRON_RUN_AS_NODE: '1', LC_ALL: language(), NO_COLOR: '1' };
      execFile(process.execPath, [program, name!, `--page=${file}`, ...args], { cwd, env }, (error, stdout, stderr) =>
        resolve(`${stdout}${stderr}`.trim() || (error?.message ?? '')),
      );
    });
    return { page: await readFile(file, 'utf8').catch(() => null), said };
  } finally {
    await rm(beside, { recursive: true, force: true });
  }
}

/** The folder of the file in hand, or the first: records are kept in it. */
function folderInHand(): string | undefined {
  const { document } = window.activeTextEditor ?? {};
  const own = document === undefined ? undefined : workspace.getWorkspaceFolder(document.uri);
  const [folder] = (own === undefined ? (workspace.workspaceFolders ?? []) : [own]).filter(
    ({ uri }) => uri.scheme === 'file',
  );
  return folder?.uri.fsPath;
}

async function askFor(title: string, value = ''): Promise<string | undefined> {
  const word = await window.showInputBox({ title, value, ignoreFocusOut: true });
  return word?.trim() === '' ? undefined : word?.trim();
}

/** That of the unit in whose line the cursor is. */
function serialAtCursor(): string | undefined {
  const found = /\bserial[ \t]+(?:"([^"]+)"|([^\s"{]+))/u.exec(lineOf(window.activeTextEditor));
  const serial = found?.[1] ?? found?.[2];
  return serial === 'none' ? undefined : serial;
}

function lineOf(editor: TextEditor | undefined): string {
  return editor?.document.languageId === 'rebuild' ? editor.document.lineAt(editor.selection.active.line).text : '';
}

function wordAtCursor(): string | undefined {
  const { document, selection } = window.activeTextEditor ?? {};
  const range = selection === undefined ? undefined : document?.getWordRangeAtPosition(selection.active);
  return range === undefined ? undefined : document?.getText(range);
}

/** The live preview: the sheet of what stands at the cursor, beside the editor, as it would be printed. */
import {
  commands,
  Disposable,
  type ExtensionContext,
  l10n,
  Position,
  Range,
  Selection,
  type TextEditor,
  TextEditorRevealType,
  Uri,
  ViewColumn,
  type WebviewPanel,
  window,
  workspace,
} from 'vscode';
import type { LanguageClient } from 'vscode-languageclient/node';
import { frameHtml } from './preview-frame.ts';
import type { PrintPlace } from './print.ts';
import { checkedMethod, type SheetAnswer, type SheetQuestion, sheetMethod } from './requests.ts';

const viewType = 'handtight.sheet';

/** Messages to the frame; lines are zero-based. */
export type ToFrame =
  | { readonly type: 'sheet'; readonly answer: SheetAnswer; readonly uri: string }
  | { readonly type: 'reveal'; readonly line: number };

/** Registers `handtight.preview`, and takes a preview up again that was open when the window was closed. */
export function registerPreview(context: ExtensionContext, client: LanguageClient): Disposable {
  const preview = new SheetPreview(context, client);
  return Disposable.from(
    preview,
    commands.registerCommand('handtight.preview', (uri?: Uri) => preview.show(uri)),
    window.registerWebviewPanelSerializer(viewType, {
      async deserializeWebviewPanel(panel, state: unknown) {
        const uri =
          typeof state === 'object' && state !== null && 'uri' in state && typeof state.uri === 'string'
            ? state.uri
            : undefined;
        preview.adopt(panel, uri === undefined ? undefined : Uri.parse(uri));
      },
    }),
  );
}

/** One panel that follows the active `.rebuild` editor. */
class SheetPreview implements Disposable {
  readonly #client: LanguageClient;
  readonly #context: ExtensionContext;
  readonly #always: Disposable[] = [];
  #panel: WebviewPanel | undefined;
  #document: Uri | undefined;
  #position = new Position(0, 0);
  #lines: { first: number; last: number } | undefined;
  /** Counts questions, so that an answer that was overtaken is dropped. */
  #asked = 0;
  #cursorMoved: NodeJS.Timeout | undefined;

  constructor(context: ExtensionContext, client: LanguageClient) {
    this.#context = context;
    this.#client = client;
    this.#always.push(
      client.onNotification(checkedMethod, () => this.#refresh()),
      window.onDidChangeActiveTextEditor((editor) => {
        // A cursor that moved just before in the editor that was left would bring its sheet back.
        clearTimeout(this.#cursorMoved);
        this.#follow(editor);
      }),
      window.onDidChangeTextEditorSelection(({ textEditor }) => {
        clearTimeout(this.#cursorMoved);
        this.#cursorMoved = setTimeout(() => {
          if (textEditor === window.activeTextEditor) this.#follow(textEditor);
        }, 80);
      }),
    );
  }

  dispose(): void {
    clearTimeout(this.#cursorMoved);
    this.#panel?.dispose();
    Disposable.from(...this.#always).dispose();
  }

  /** Opens the preview beside the editor, or brings it to the front. */
  async show(uri?: Uri): Promise<void> {
    const editor = window.activeTextEditor;
    const document = uri ?? editor?.document.uri ?? this.#document;
    if (document === undefined) return;
    if (editor !== undefined && editor.document.uri.toString() === document.toString())
      this.#position = editor.selection.active;
    if (this.#panel === undefined) {
      const panel = window.createWebviewPanel(
        viewType,
        l10n.t('Sheet'),
        { viewColumn: ViewColumn.Beside, preserveFocus: true },
        { enableScripts: true, localResourceRoots: [], retainContextWhenHidden: false },
      );
      this.adopt(panel, document);
      return;
    }
    this.#document = document;
    this.#panel.reveal(undefined, true);
    await this.#refresh();
  }

  /** Takes a panel over, new or from a closed window. */
  adopt(panel: WebviewPanel, document: Uri | undefined): void {
    this.#panel?.dispose();
    this.#panel = panel;
    this.#document = document ?? window.activeTextEditor?.document.uri;
    panel.iconPath = {
      light: Uri.joinPath(this.#context.extensionUri, 'extension/icons/file-light.svg'),
      dark: Uri.joinPath(this.#context.extensionUri, 'extension/icons/file-dark.svg'),
    };
    panel.webview.options = { enableScripts: true, localResourceRoots: [] };
    panel.webview.onDidReceiveMessage((message: unknown) => this.#hear(message));
    panel.onDidDispose(() => {
      if (this.#panel === panel) this.#panel = undefined;
    });
    // The frame says `ready` when its script runs; the sheet is sent then.
    panel.webview.html = frameHtml(crypto.randomUUID().replaceAll('-', ''));
  }

  #follow(editor: TextEditor | undefined): void {
    if (this.#panel === undefined || editor?.document.languageId !== 'rebuild') return;
    const { uri } = editor.document;
    const { active } = editor.selection;
    const sameSheet =
      uri.toString() === this.#document?.toString() &&
      this.#lines !== undefined &&
      this.#lines.first <= active.line &&
      active.line <= this.#lines.last;
    this.#document = uri;
    this.#position = active;
    if (sameSheet) this.#reveal();
    else void this.#refresh();
  }

  async #refresh(): Promise<void> {
    const panel = this.#panel;
    if (panel === undefined || this.#document === undefined) return;
    const asked = ++this.#asked;
    const uri = this.#document.toString();
    const question: SheetQuestion = {
      uri,
      position: { line: this.#position.line, character: this.#position.character },
    };
    let answer: SheetAnswer;
    try {
      answer = await this.#client.sendRequest<SheetAnswer>(sheetMethod, question);
    } catch (error) {
      answer = {
        kind: 'none',
        reason: l10n.t(
          'The language server did not answer: {0}',
          error instanceof Error ? error.message : String(error),
        ),
      };
    }
    if (asked !== this.#asked || panel !== this.#panel) return;
    this.#lines = answer.kind === 'sheet' ? answer.lines : undefined;
    panel.title = answer.kind === 'sheet' ? l10n.t('Sheet: {0}', answer.title) : l10n.t('Sheet');
    await panel.webview.postMessage({ type: 'sheet', answer, uri } satisfies ToFrame);
    this.#reveal();
  }

  #reveal(): void {
    if (!workspace.getConfiguration('handtight').get('preview.revealStep', true)) return;
    void this.#panel?.webview.postMessage({ type: 'reveal', line: this.#position.line } satisfies ToFrame);
  }

  #hear(message: unknown): void {
    if (typeof message !== 'object' || message === null || !('type' in message)) return;
    if (message.type === 'ready') void this.#refresh();
    if (message.type === 'print' && this.#document !== undefined) {
      const { line, character } = this.#position;
      const place: PrintPlace = { uri: this.#document.toString(), position: { line, character } };
      void commands.executeCommand('handtight.print', place);
    }
    if (message.type === 'problems') void commands.executeCommand('workbench.actions.view.problems');
    if (
      message.type === 'open' &&
      'line' in message &&
      Number.isSafeInteger(message.line) &&
      Number(message.line) >= 0
    ) {
      const file = 'file' in message && typeof message.file === 'string' ? Uri.parse(message.file) : this.#document;
      if (file !== undefined) void openLine(file, Number(message.line));
    }
  }
}

/** Shows a line in the editor that has the file, or in the first column. */
async function openLine(file: Uri, line: number): Promise<void> {
  const document = await workspace.openTextDocument(file);
  const open = window.visibleTextEditors.find((editor) => editor.document === document);
  const editor = await window.showTextDocument(document, { viewColumn: open?.viewColumn ?? ViewColumn.One });
  const place = document.lineAt(Math.min(line, document.lineCount - 1)).range.start;
  editor.selection = new Selection(place, place);
  editor.revealRange(new Range(place, place), TextEditorRevealType.InCenterIfOutsideViewport);
}

/** The live pages beside the editor, of what is at the cursor: the sheet as it would be printed, the specifications, the drawing. */
import {
  commands,
  Disposable,
  type Event,
  type ExtensionContext,
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
import type { BaseLanguageClient } from 'vscode-languageclient';
import { type FrameWords, frameHtml } from './preview-frame.ts';
import type { PrintPlace } from './print.ts';
import { rebuildPlace } from './rebuild-place.ts';
import {
  type CheckedNotification,
  type DrawingResult,
  drawingMethod,
  type SheetParams,
  type SheetResult,
  type SpecsResult,
  sheetMethod,
  specsMethod,
} from './requests.ts';
import { l10n, language, languageSetting } from './words.ts';

type PageResult = SheetResult | SpecsResult | DrawingResult;

/** Must be the setting in the manifest. */
const revealSetting = 'handtight.preview.revealStep';

/** What differs between the views that are beside the editor. */
interface View {
  readonly viewType: string;
  readonly command: string;
  readonly method: string;
  readonly title: string;
  titleOf(page: string): string;
  readonly words: FrameWords;
  /** What the bar says about a page; null: nothing. */
  status(result: Exclude<PageResult, { kind: 'none' }>): Status | null;
}

interface Status {
  readonly text: string;
  readonly bad: boolean;
  /** It can be pressed, and leads to what it says. */
  readonly leads: boolean;
}

/** Messages to the frame; lines are zero-based. */
export type ToFrame =
  | {
      readonly type: 'page';
      readonly result: PageResult;
      readonly uri: string;
      /** Where it was requested, and in which form: a window that is opened again shows the same. */
      readonly line: number | undefined;
      readonly form: string | undefined;
      readonly status: Status | null;
      /** Whose page it is, where the cursor is in something that has none. */
      readonly whose: string | null;
    }
  /** The line that is marked; null: none. */
  | { readonly type: 'reveal'; readonly line: number | null };

function findWords(): FrameWords['find'] {
  return {
    label: l10n.t('Find in this page'),
    previous: l10n.t('Previous match (Shift+Enter)'),
    next: l10n.t('Next match (Enter)'),
    close: l10n.t('Close (Escape)'),
    none: l10n.t('No match'),
  };
}

/** The sheet as it would be printed. */
function sheetView(): View {
  return {
    viewType: 'handtight.sheet',
    command: 'handtight.preview',
    method: sheetMethod,
    title: l10n.t('Sheet'),
    titleOf: (page) => l10n.t('Sheet: {0}', page),
    words: {
      title: l10n.t('Sheet'),
      page: l10n.t('Sheet as it prints. Click a step to find it in the text; Enter goes to the step that is marked.'),
      print: l10n.t('Print to PDF'),
      forms: {
        label: l10n.t('What is printed'),
        words: {
          card: l10n.t('Card: all of it'),
          record: l10n.t('Record: what is written down'),
          instruction: l10n.t('Instruction: what is done'),
        },
      },
      find: findWords(),
    },
    status(result) {
      const errors = result.kind === 'sheet' ? result.errors : 0;
      const text =
        errors === 0
          ? l10n.t('No errors')
          : errors === 1
            ? l10n.t('1 error: prints as a draft only')
            : l10n.t('{0} errors: prints as a draft only', errors);
      return { text, bad: errors > 0, leads: true };
    },
  };
}

/** Part numbers across, limits with source and tool down. */
function specsView(): View {
  return {
    viewType: 'handtight.specs',
    command: 'handtight.specs',
    method: specsMethod,
    title: l10n.t('Specifications'),
    titleOf: (page) => l10n.t('Specifications: {0}', page),
    words: {
      title: l10n.t('Specifications'),
      page: l10n.t('Specifications of the procedure. Click a figure to find it in the text.'),
      print: null,
      forms: null,
      find: findWords(),
    },
    status(result) {
      const missing = result.kind === 'specs' ? result.missing : 0;
      const text =
        missing === 0
          ? l10n.t('Nothing missing')
          : missing === 1
            ? l10n.t('1 thing missing: show it')
            : l10n.t('{0} things missing: show the next', missing);
      return { text, bad: missing > 0, leads: missing > 0 };
    },
  };
}

/** The unit taken apart: of a family while it is written, of a procedure with its steps and figures. */
function drawingView(): View {
  return {
    viewType: 'handtight.drawing',
    command: 'handtight.drawing',
    method: drawingMethod,
    title: l10n.t('Drawing'),
    titleOf: (page) => l10n.t('Drawing: {0}', page),
    words: {
      title: l10n.t('Drawing'),
      page: l10n.t('Drawing of the unit taken apart'),
      print: null,
      forms: null,
      find: findWords(),
    },
    status: () => null,
  };
}

/** Registers the views beside the editor, and takes those up again that were open when the window was closed. */
export function registerPreview(
  context: ExtensionContext,
  client: BaseLanguageClient,
  onChecked: Event<CheckedNotification>,
): Disposable {
  return Disposable.from(
    ...[sheetView, specsView, drawingView].map((view) => registerView(view, context, client, onChecked)),
  );
}

function registerView(
  viewNow: () => View,
  context: ExtensionContext,
  client: BaseLanguageClient,
  onChecked: Event<CheckedNotification>,
): Disposable {
  const preview = new Preview(viewNow, context, client, onChecked);
  const view = viewNow();
  return Disposable.from(
    preview,
    commands.registerCommand(view.command, (uri?: Uri) => preview.show(uri)),
    window.registerWebviewPanelSerializer(view.viewType, {
      async deserializeWebviewPanel(panel, state: unknown) {
        preview.adopt(panel, kept(state));
      },
    }),
  );
}

/** Where a page was requested, and in which form. */
interface Place {
  readonly document: Uri | undefined;
  readonly position: Position;
  readonly form: string | undefined;
}

/** What a frame kept of the window that was closed, whatever it is. */
function kept(state: unknown): Place {
  const { uri, line, form } = (typeof state === 'object' && state !== null ? state : {}) as Record<string, unknown>;
  return {
    document: typeof uri === 'string' ? Uri.parse(uri) : undefined,
    position: new Position(Number.isSafeInteger(line) && Number(line) >= 0 ? Number(line) : 0, 0),
    form: typeof form === 'string' ? form : undefined,
  };
}

/** One panel that follows the active `.rebuild` editor. */
class Preview implements Disposable {
  /** In the language of the moment. */
  readonly #viewNow: () => View;
  readonly #client: BaseLanguageClient;
  readonly #context: ExtensionContext;
  readonly #always: Disposable[] = [];
  #panel: WebviewPanel | undefined;
  #document: Uri | undefined;
  #position = new Position(0, 0);
  #lines: { first: number; last: number } | undefined;
  /** Where the page that is shown was requested: it stays while the cursor is in what has no page, such as a family. */
  #shown: SheetParams | undefined;
  #form: string | undefined;
  /** One request at a time: what changes meanwhile is taken up when its answer is there. */
  #isAsking = false;
  #isStale = false;
  /** What the frame was sent last, so that it is not made to draw the same again. */
  #sent = '';
  #cursorMoved: ReturnType<typeof setTimeout> | undefined;

  constructor(
    viewNow: () => View,
    context: ExtensionContext,
    client: BaseLanguageClient,
    onChecked: Event<CheckedNotification>,
  ) {
    this.#viewNow = viewNow;
    this.#context = context;
    this.#client = client;
    this.#always.push(
      onChecked(() => void this.#refresh()),
      // The findings take their time; what is printed does not wait for them.
      workspace.onDidChangeTextDocument(({ document, contentChanges }) => {
        if (document.languageId === 'rebuild' && contentChanges.length > 0) void this.#refresh();
      }),
      workspace.onDidChangeConfiguration((event) => {
        if (event.affectsConfiguration(languageSetting)) this.#draw();
        if (event.affectsConfiguration(revealSetting)) this.#mark(this.#reveals ? this.#position.line : null);
      }),
      window.onDidChangeActiveTextEditor((editor) => {
        // A cursor that moved just before in the editor that was left would bring its page back.
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

  get #view(): View {
    return this.#viewNow();
  }

  dispose(): void {
    clearTimeout(this.#cursorMoved);
    this.#panel?.dispose();
    Disposable.from(...this.#always).dispose();
  }

  /** Opens the preview beside the editor, or brings it to the front. */
  async show(uri?: Uri): Promise<void> {
    const place = rebuildPlace();
    const document = uri ?? place?.uri ?? this.#document;
    if (document === undefined) {
      const begin = l10n.t('New Procedure');
      const chosen = await window.showInformationMessage(
        l10n.t('Open a .rebuild file first: this shows what is at its cursor.'),
        begin,
      );
      if (chosen === begin) await commands.executeCommand('handtight.newProcedure');
      return;
    }
    if (place?.uri.toString() === document.toString()) this.#position = place.position;
    if (this.#panel === undefined) {
      const panel = window.createWebviewPanel(
        this.#view.viewType,
        this.#view.title,
        { viewColumn: ViewColumn.Beside, preserveFocus: true },
        { enableScripts: true, localResourceRoots: [], retainContextWhenHidden: false },
      );
      this.adopt(panel, { document, position: this.#position, form: this.#form });
      return;
    }
    this.#document = document;
    this.#panel.reveal(undefined, true);
    await this.#refresh();
  }

  /** Takes a panel over, new or from a closed window. */
  adopt(panel: WebviewPanel, { document, position, form }: Place): void {
    this.#panel?.dispose();
    this.#panel = panel;
    this.#document = document ?? rebuildPlace()?.uri;
    this.#position = position;
    this.#form = form;
    this.#shown = undefined;
    panel.iconPath = {
      light: Uri.joinPath(this.#context.extensionUri, 'extension/icons/file-light.svg'),
      dark: Uri.joinPath(this.#context.extensionUri, 'extension/icons/file-dark.svg'),
    };
    panel.webview.options = { enableScripts: true, localResourceRoots: [] };
    panel.webview.onDidReceiveMessage((message: unknown) => this.#hear(message));
    panel.onDidChangeViewState(() => void this.#refresh());
    panel.onDidDispose(() => {
      if (this.#panel === panel) this.#panel = undefined;
    });
    this.#draw();
  }

  /** The frame says `ready` when its script runs; the page is sent then. */
  #draw(): void {
    if (this.#panel === undefined) return;
    const nonce = crypto.randomUUID().replaceAll('-', '');
    this.#panel.webview.html = frameHtml(nonce, language(), this.#view.words);
  }

  #follow(editor: TextEditor | undefined): void {
    if (this.#panel === undefined || editor?.document.languageId !== 'rebuild') return;
    const { uri } = editor.document;
    const { active } = editor.selection;
    const samePage =
      uri.toString() === this.#document?.toString() &&
      this.#lines !== undefined &&
      this.#lines.first <= active.line &&
      active.line <= this.#lines.last;
    this.#document = uri;
    this.#position = active;
    if (samePage) this.#reveal();
    else void this.#refresh();
  }

  /** Shows what is at the cursor now; again until nothing has changed meanwhile. */
  async #refresh(): Promise<void> {
    this.#isStale = true;
    if (this.#isAsking) return;
    this.#isAsking = true;
    try {
      while (this.#isStale) {
        this.#isStale = false;
        await this.#update();
      }
    } finally {
      this.#isAsking = false;
    }
  }

  async #update(): Promise<void> {
    const panel = this.#panel;
    if (panel === undefined || this.#document === undefined || !panel.visible) return;
    let params = this.#params();
    let result = await this.#ask(params);
    // The cursor went to what has no page of its own: the last one stays, and goes on following the text.
    const isKept = result.kind === 'none' && this.#shown !== undefined;
    if (isKept) {
      params = this.#shown!;
      result = await this.#ask(params);
    }
    if (panel !== this.#panel) return;
    const page = result.kind === 'none' ? null : result;
    this.#shown = page === null ? undefined : params;
    this.#lines = isKept ? undefined : page?.lines;
    panel.title = page === null ? this.#view.title : this.#view.titleOf(page.title);
    const message: ToFrame = {
      type: 'page',
      result,
      uri: params.uri,
      line: params.position?.line,
      form: this.#form,
      status: page === null ? null : this.#view.status(page),
      whose: isKept && page !== null ? l10n.t('Of {0}, shown last', page.title) : null,
    };
    const sent = JSON.stringify({ ...message, line: null });
    if (sent !== this.#sent) await panel.webview.postMessage(message);
    this.#sent = sent;
    if (!isKept) this.#reveal();
  }

  #params(): SheetParams {
    const { line, character } = this.#position;
    const form = this.#form as SheetParams['form'];
    return { uri: this.#document!.toString(), position: { line, character }, ...(form === undefined ? {} : { form }) };
  }

  async #ask(params: SheetParams): Promise<PageResult> {
    try {
      return await this.#client.sendRequest<PageResult>(this.#view.method, params);
    } catch (error) {
      const reason = error instanceof Error ? error.message : String(error);
      return { kind: 'none', reason: l10n.t('The language server did not answer: {0}', reason) };
    }
  }

  #reveal(): void {
    if (this.#reveals) this.#mark(this.#position.line);
  }

  get #reveals(): boolean {
    return workspace.getConfiguration().get(revealSetting, true);
  }

  #mark(line: number | null): void {
    void this.#panel?.webview.postMessage({ type: 'reveal', line } satisfies ToFrame);
  }

  #hear(message: unknown): void {
    if (typeof message !== 'object' || message === null || !('type' in message)) return;
    if (message.type === 'ready') {
      this.#sent = '';
      void this.#refresh();
    }
    if (message.type === 'form' && 'form' in message && typeof message.form === 'string') {
      this.#form = message.form;
      if (this.#shown !== undefined) this.#shown = { ...this.#shown, form: this.#params().form };
      void this.#refresh();
    }
    if (message.type === 'print' && this.#document !== undefined) {
      // What is shown is printed, wherever the cursor has gone.
      const place: PrintPlace = this.#shown ?? this.#params();
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
      const goes = 'goes' in message && message.goes === true;
      // The editor is not the active one while the page has the keys: what is shown here follows all the same.
      if (file?.toString() === this.#document?.toString()) this.#position = new Position(Number(message.line), 0);
      if (file !== undefined) void openLine(file, Number(message.line), !goes);
    }
  }
}

/** Shows a line in the editor that has the file, or in the first column. */
async function openLine(file: Uri, line: number, preserveFocus: boolean): Promise<void> {
  const document = await workspace.openTextDocument(file);
  const open = window.visibleTextEditors.find((editor) => editor.document === document);
  const editor = await window.showTextDocument(document, {
    viewColumn: open?.viewColumn ?? ViewColumn.One,
    preserveFocus,
  });
  const place = document.lineAt(Math.min(line, document.lineCount - 1)).range.start;
  editor.selection = new Selection(place, place);
  editor.revealRange(new Range(place, place), TextEditorRevealType.InCenterIfOutsideViewport);
}

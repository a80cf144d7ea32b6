/** The view of the unit at the cursor: what is off, bare, open, wet and loose after the step there, and since which step. */
import {
  commands,
  Disposable,
  type Event,
  EventEmitter,
  type Position,
  ThemeIcon,
  type TreeDataProvider,
  TreeItem,
  TreeItemCollapsibleState,
  Uri,
  window,
  workspace,
} from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import { rebuildEditor } from './rebuild-place.ts';
import { type CheckedNotification, type PlaceParams, type StateResult, stateMethod } from './requests.ts';
import { l10n } from './words.ts';

/** Must be the id in the manifest. */
const id = 'handtight.state';

type State = Extract<StateResult, { kind: 'state' }>;
type Group = State['groups'][number];
type Item = Group['items'][number];
type Node = { readonly group: Group; readonly item: Item | null; readonly index: number };

/** Registers the view, and the command that goes to it. */
export function registerStateView(client: BaseLanguageClient, onChecked: Event<CheckedNotification>): Disposable {
  const tree = new StateTree();
  const view = window.createTreeView<Node>(id, { treeDataProvider: tree });
  let place: { readonly uri: Uri; readonly position: Position } | undefined;
  let moved: ReturnType<typeof setTimeout> | undefined;
  let isAsking = false;
  let isStale = false;

  const update = async () => {
    const at = place;
    if (at === undefined || !view.visible) return;
    const { line, character } = at.position;
    const params: PlaceParams = { uri: at.uri.toString(), position: { line, character } };
    const result = await client.sendRequest<StateResult>(stateMethod, params);
    if (result.kind === 'none') {
      // What was known last stays: in a family it is still of use.
      view.message = result.reason;
      return;
    }
    view.message =
      result.after === null
        ? l10n.t('{0}: as it comes in', result.procedure)
        : l10n.t('{0}: after step {1}', result.procedure, result.after);
    tree.show(result);
  };
  /** One request at a time: where the cursor is by then is taken up when its answer is there. */
  const refresh = async () => {
    isStale = true;
    if (isAsking) return;
    isAsking = true;
    try {
      while (isStale) {
        isStale = false;
        await update();
      }
    } catch {
      // The server was stopped, or started again: the next check asks again.
    } finally {
      isAsking = false;
    }
  };
  const follow = () => {
    const editor = rebuildEditor();
    if (editor === undefined) return;
    place = { uri: editor.document.uri, position: editor.selection.active };
    clearTimeout(moved);
    moved = setTimeout(() => void refresh(), 80);
  };
  follow();
  return Disposable.from(
    view,
    tree,
    view.onDidChangeVisibility(() => void refresh()),
    onChecked(() => void refresh()),
    window.onDidChangeActiveTextEditor(follow),
    window.onDidChangeTextEditorSelection(follow),
    workspace.onDidChangeTextDocument(({ document }) => {
      if (document === window.activeTextEditor?.document) follow();
    }),
    new Disposable(() => clearTimeout(moved)),
    commands.registerCommand('handtight.showState', () => commands.executeCommand(`${id}.focus`)),
  );
}

class StateTree implements TreeDataProvider<Node>, Disposable {
  readonly #changed = new EventEmitter<void>();
  readonly onDidChangeTreeData = this.#changed.event;
  #state: State | null = null;

  show(state: State): void {
    this.#state = state;
    this.#changed.fire();
  }

  dispose(): void {
    this.#changed.dispose();
  }

  getChildren(node?: Node): Node[] {
    if (node === undefined) return (this.#state?.groups ?? []).map((group, index) => ({ group, item: null, index }));
    return node.group.items.map((item, index) => ({ group: node.group, item, index }));
  }

  getTreeItem({ group, item, index }: Node): TreeItem {
    return item === null ? groupItem(group) : stateItem(group, item, index);
  }
}

function groupItem({ kind, items }: Group): TreeItem {
  const { label, icon } = titleOf(kind);
  // What has to be looked after is open; the rest says it in its line.
  const isOpen = kind !== 'unit' && kind !== 'wet' && kind !== 'tests';
  const shown = new TreeItem(label, isOpen ? TreeItemCollapsibleState.Expanded : TreeItemCollapsibleState.Collapsed);
  shown.id = kind;
  shown.iconPath = new ThemeIcon(icon);
  shown.description = summary(kind, items);
  return shown;
}

/** What a group says while it is closed. */
function summary(kind: Group['kind'], items: readonly Item[]): string {
  switch (kind) {
    case 'unit':
      return items.map(({ name, words }) => `${name} ${words}`.trim()).join(', ');
    case 'tests':
      return items.map(({ name, words }) => `${name}: ${words}`).join(', ');
    default:
      return String(items.length);
  }
}

function titleOf(kind: Group['kind']): { readonly label: string; readonly icon: string } {
  switch (kind) {
    case 'unit':
      return { label: l10n.t('The unit'), icon: 'tools' };
    case 'off':
      return { label: l10n.t('Off the unit'), icon: 'layers' };
    case 'bare':
      return { label: l10n.t('Faces that are bare'), icon: 'shield' };
    case 'open':
      return { label: l10n.t('Ports that are open'), icon: 'circle-large-outline' };
    case 'wet':
      return { label: l10n.t('Wet'), icon: 'beaker' };
    case 'loose':
      return { label: l10n.t('Joints that are not tight'), icon: 'unlock' };
    case 'tests':
      return { label: l10n.t('Tests'), icon: 'checklist' };
  }
}

function stateItem({ kind }: Group, { name, words, since, isNew }: Item, index: number): TreeItem {
  const shown = new TreeItem(name);
  shown.id = `${kind} ${index} ${name}`;
  const how = isNew ? l10n.t('now {0}', words) : words;
  const when = since === null || isNew ? '' : l10n.t('since {0}', since.number);
  shown.description = [how.trim(), when].filter((part) => part !== '').join(' · ');
  shown.tooltip = [name, shown.description].filter((part) => part !== '').join(': ');
  if (since !== null) {
    const { start } = since.source.range;
    const selection = { start, end: start };
    shown.command = {
      command: 'vscode.open',
      title: l10n.t('Go to the step'),
      arguments: [Uri.parse(since.source.file), { selection }],
    };
  }
  return shown;
}

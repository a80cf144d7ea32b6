/**
 * The pages of the rules, behind `handtight-rule:/NAME.md`. A scheme of its own lets the manifest say that they open
 * rendered (`workbench.editorAssociations`), wherever the link is: in a hover, in the list of problems, in a command.
 */
import { commands, Disposable, languages, Uri, window, workspace } from 'vscode';
import { packagedFiles, packagedText } from './packaged.ts';
import { l10n } from './words.ts';

const scheme = 'handtight-rule';

/** Address of a rule's page. */
export function rulePageUri(rule: string): Uri {
  return Uri.from({ scheme, path: `/${rule}.md` });
}

/** Serves the pages and the command `handtight.explain`, which takes a rule or asks for one. */
export function registerRulePages(extension: Uri): Disposable {
  return Disposable.from(
    workspace.registerTextDocumentContentProvider(scheme, {
      async provideTextDocumentContent(uri) {
        const rule = uri.path.slice(1).replace(/\.md$/, '');
        const page = (await rulePages(extension)).get(rule);
        if (page === undefined) return l10n.t('# {0}\n\nThere is no page for this.', rule);
        return packagedText(extension, page);
      },
    }),
    commands.registerCommand('handtight.explain', async (rule?: unknown) => {
      const named = typeof rule === 'string' ? rule : await askForRule(extension);
      if (named !== undefined) await commands.executeCommand('vscode.open', rulePageUri(named), { preview: true });
    }),
  );
}

async function askForRule(extension: Uri): Promise<string | undefined> {
  const here = rulesAtCursor();
  const names = [...(await rulePages(extension)).keys()].filter((name) => !here.includes(name)).sort();
  const items = [
    ...here.map((label) => ({ label, description: l10n.t('at the cursor') })),
    ...names.map((label) => ({ label })),
  ];
  const chosen = await window.showQuickPick(items, { placeHolder: l10n.t('Which rule should be explained?') });
  return chosen?.label;
}

/** Rules of the findings on the cursor's line, so that the first answer is the likely one. */
function rulesAtCursor(): string[] {
  const editor = window.activeTextEditor;
  if (editor === undefined) return [];
  const line = editor.selection.active.line;
  const rules = new Set<string>();
  for (const diagnostic of languages.getDiagnostics(editor.document.uri)) {
    const { code, range } = diagnostic;
    if (typeof code === 'object' && range.start.line <= line && line <= range.end.line) rules.add(String(code.value));
  }
  return [...rules];
}

/** Page of each rule: they are in folders by area, which a link does not name. */
async function rulePages(extension: Uri): Promise<Map<string, string>> {
  const paths = await packagedFiles(extension, 'rulePages');
  return new Map(paths.map((path) => [path.replace(/^.*\/|\.md$/gu, ''), path]));
}

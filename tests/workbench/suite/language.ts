import {
  type CompletionItem,
  type CompletionList,
  commands,
  type DocumentSymbol,
  type Hover,
  type InlayHint,
  type Location,
  MarkdownString,
  Position,
  Range,
  type TextEditor,
} from 'vscode';
import { assert, find, open, replace, type Test, until } from './test.ts';

export const languageTests: readonly Test[] = [
  {
    name: 'beside a reading of a job it shows what to fit, and beside a choice the change for one step of the drawer',
    async run() {
      const hints = async (editor: TextEditor) => {
        const { document } = editor;
        const whole = new Range(0, 0, document.lineCount, 0);
        const all = await commands.executeCommand<InlayHint[]>('vscode.executeInlayHintProvider', document.uri, whole);
        return (all ?? []).map((hint) => String(hint.label).replaceAll('\u00a0', ' '));
      };
      const job = await open('job.rebuild');
      await replace(job, 'serial 0411', 'serial 0411 { shim out 1.30 mm  opening 231 bar }');
      await until('the shim to fit', async () =>
        (await hints(job)).includes('Fit 1.50 mm (now 1.30 mm): expect 255 bar'),
      );
      await open('job.rebuild');
      const procedure = await open('procedure.rebuild');
      await until('what a step brings', async () =>
        (await hints(procedure)).includes('one step of 0.05 mm brings 5.91 bar'),
      );
    },
  },
  {
    name: 'the outline holds what the file declares',
    async run() {
      const editor = await open('procedure.rebuild');
      const symbols = await until('symbols', async () => {
        const all = await commands.executeCommand<DocumentSymbol[]>(
          'vscode.executeDocumentSymbolProvider',
          editor.document.uri,
        );
        return all !== undefined && all.length > 0 ? all : undefined;
      });
      const procedure = symbols.find(({ name }) => name === 'rebuild-holder-17');
      assert.ok(procedure, symbols.map(({ name }) => name).join(', '));
      const names = procedure.children.map(({ name }) => name);
      for (const name of ['opening', 'receive', 'teardown', 'prove', 'reshim'])
        assert.ok(names.includes(name), `${name} in ${names.join(', ')}`);
    },
  },
  {
    name: 'completion at the beginning of a step offers verbs',
    async run() {
      const editor = await open('procedure.rebuild');
      await replace(editor, '    slacken nut\n', '    slacken nut\n    \n');
      const line = find(editor.document, 'slacken nut').start.line + 1;
      const items = await complete(editor, new Position(line, 4));
      for (const label of ['torque', 'clean outside', 'run-down', 'sign-off'])
        assert.ok(labels(items).includes(label), `${label} in ${labels(items)}`);
      await open('procedure.rebuild');
    },
  },
  {
    name: 'completion offers the names that fit, with their words',
    async run() {
      const editor = await open('procedure.rebuild');
      const parts = await completeAfter(editor, '    slacken nut\n', '    remove ');
      const nozzle = parts.find((item) => label(item) === 'nozzle');
      assert.equal(nozzle?.detail, 'Nozzle: under nut', 'what is in its way is said');
      assert.ok(labels(parts).includes('cap'), 'a part called by a verb');
      assert.ok(!labels(parts).includes('torque'), 'no verb among the parts');
      assert.ok(labels(await completeAfter(editor, '    slacken nut\n', '    torque nut to ')).includes('nut-fit'));
      assert.ok(
        labels(await completeAfter(editor, '    slacken nut\n', '    torque nut to nut-fit with ')).includes('TW-80'),
      );
      assert.ok(labels(await completeAfter(editor, '    slacken nut\n', '    wash nut in ')).includes('solvent'));
      assert.ok(
        labels(
          await completeAfter(editor, '    slacken nut\n', '    test opening read pressure within opening on fail '),
        ).includes('reshim'),
      );
      assert.ok(labels(await completeAfter(editor, '    slacken nut\n', '    keep nut at ')).includes('tank'));
      assert.ok(
        labels(await completeAfter(editor, '    slacken nut\n', '    slacken nut allow ')).includes(
          'joint-not-slackened',
        ),
      );
    },
  },
  {
    name: 'a name leads to its declaration, and says what it is',
    async run() {
      const editor = await open('procedure.rebuild');
      const place = find(editor.document, 'slacken nut').end.translate(0, -1);
      const locations = await until('a definition', async () => {
        const found = await commands.executeCommand<Location[]>(
          'vscode.executeDefinitionProvider',
          editor.document.uri,
          place,
        );
        return found.length > 0 ? found : undefined;
      });
      assert.ok(locations[0]?.uri.path.endsWith('shop.rebuild'));
      const hovers = await commands.executeCommand<Hover[]>('vscode.executeHoverProvider', editor.document.uri, place);
      const said = hovers
        .flatMap(({ contents }) => contents)
        .map((content) => (content instanceof MarkdownString ? content.value : String(content)));
      assert.match(said.join('\n'), /Nozzle nut/);
    },
  },
];

function label({ label }: CompletionItem): string {
  return typeof label === 'string' ? label : label.label;
}

function labels(items: readonly CompletionItem[]): string[] {
  return items.map(label);
}

async function complete(editor: TextEditor, position: Position): Promise<CompletionItem[]> {
  const list = await commands.executeCommand<CompletionList>(
    'vscode.executeCompletionItemProvider',
    editor.document.uri,
    position,
  );
  return list.items;
}

/** Writes a half line behind a text, asks at its end, and takes it away again. */
async function completeAfter(editor: TextEditor, text: string, half: string): Promise<CompletionItem[]> {
  await replace(editor, text, `${text}${half}\n`);
  const items = await complete(editor, find(editor.document, `${text}${half}`).end);
  await replace(editor, `${text}${half}\n`, text);
  return items;
}

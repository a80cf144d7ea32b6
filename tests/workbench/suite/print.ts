import { commands, Uri, workspace } from 'vscode';
import type { PrintResult } from '../../../server/lsp/requests.ts';
import { assert, extension, fileUri, open, problems, replace, rule, type Test, until } from './test.ts';

export const printTests: readonly Test[] = [
  {
    name: 'a procedure with errors is refused, and prints as a draft on request',
    async run() {
      const { client } = await extension();
      const editor = await open('procedure.rebuild');
      await replace(editor, 'remove nut, nozzle', 'remove nut, nozzel');
      await until('a finding', () => problems(editor.document).some((problem) => rule(problem) === 'unknown-name'));
      const question = { uri: editor.document.uri.toString(), folder: fileUri('traveler').toString() };
      const refused = await client.sendRequest<PrintResult>('handtight/print', question);
      assert.equal(refused.kind, 'errors');
      const draft = await client.sendRequest<PrintResult>('handtight/print', { ...question, draft: true });
      assert.equal(draft.kind, 'printed');
      if (draft.kind === 'printed') await expectPdf(draft.file);
      await open('procedure.rebuild');
    },
  },
  {
    name: 'the command prints a PDF into the folder of the setting',
    async run() {
      const editor = await open('clean.rebuild');
      await until('no errors', async () => {
        const { client } = await extension();
        const answer = await client.sendRequest<{ kind: string; errors?: number }>('handtight/sheet', {
          uri: editor.document.uri.toString(),
        });
        return answer.kind === 'sheet' && answer.errors === 0;
      });
      const file = await commands.executeCommand<string | undefined>('handtight.print');
      assert.ok(file !== undefined, 'it was printed');
      assert.ok(file.includes('/traveler/'), file);
      await expectPdf(file);
    },
  },
];

async function expectPdf(file: string): Promise<void> {
  const bytes = await workspace.fs.readFile(Uri.parse(file));
  assert.equal(new TextDecoder('latin1').decode(bytes.slice(0, 5)), '%PDF-');
  assert.ok(bytes.length > 10_000, `${bytes.length} bytes`);
}

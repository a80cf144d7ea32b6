import { commands, Selection, window } from 'vscode';
import { assert, extension, find, open, type Test, until } from './test.ts';

const tabs = () => window.tabGroups.all.flatMap((group) => group.tabs.map(({ label }) => label));

export const recordTests: readonly Test[] = [
  {
    name: 'what is in the house is a page beside the text',
    async run() {
      await extension();
      await open('job.rebuild');
      const page = await commands.executeCommand<string>('handtight.openJobs');
      assert.match(page, /^<!doctype html>/iu);
      assert.match(page, /job\.rebuild/u);
      await until('its tab', () => tabs().includes('In the house'));
    },
  },
  {
    name: 'the history is that of the serial in the line of the cursor, and where nothing is recorded it says so',
    async run() {
      const editor = await open('job.rebuild');
      const { start } = find(editor.document, 'serial');
      editor.selection = new Selection(start, start);
      const said = await commands.executeCommand<string>('handtight.history');
      assert.match(said, /There are no records in records/u);
      for (const [command, given] of [['handtight.affected', 'PG-400'], ['handtight.learn']] as const)
        assert.match(await commands.executeCommand<string>(command, given), /There are no records in records/u);
    },
  },
];

import * as z from 'zod';
import { formatted, unreadable } from '../../../language/ide/format/format.ts';
import { writeFixed } from '../../cli/fix.ts';
import { worded } from '../../cli/messages.ts';
import { UsageError } from '../../cli/usage-error.ts';
import { draftOf } from '../folder.ts';
import { type AddTool, answered, data } from '../tool.ts';

/** Lays a text out. The only tool that writes, and only on request. */
export const addFormat: AddTool = (server, folder) => {
  server.registerTool(
    'format',
    {
      title: worded`Lay out a procedure`,
      description: worded`Returns a .rebuild text laid out: indentation, blanks, columns. Nothing but white space changes. With \`text\`, lays out that text and writes nothing. Without, takes the file as it is, and with \`write\` saves it. A text with a line that cannot be read is refused, with that line: correct it first.`,
      inputSchema: {
        file: z.string().min(1).default('draft.rebuild').describe(worded`Path from the folder of the server`),
        text: z.string().optional().describe(worded`The text to lay out; left out: that of the file`),
        write: z.boolean().default(false).describe(worded`Save the file. Not together with \`text\``),
      },
      outputSchema: { file: z.string(), changed: z.boolean(), written: z.boolean(), text: z.string() },
      annotations: { readOnlyHint: false, destructiveHint: false, idempotentHint: true, openWorldHint: false },
    },
    ({ file, text, write }) =>
      answered(async () => {
        if (text !== undefined && write)
          throw new UsageError(
            worded`A text that is given is not written: save it as the file first, or leave \`text\` out.`,
          );
        const name = folder.inside(file);
        const before = draftOf(file, text)?.text ?? (await textOf(name, folder));
        const why = unreadable(before);
        if (why !== null)
          throw new UsageError(
            worded`Not laid out: line ${why.line + 1} cannot be read. ${why.message} Correct it first.`,
          );
        const after = formatted(before);
        const changed = after !== before;
        const written = write && changed;
        if (written) await writeFixed([{ file: name, before, after, count: 1 }]);
        return data(after, { file: name, changed, written, text: after });
      }),
  );
};

async function textOf(name: string, folder: Parameters<AddTool>[1]): Promise<string> {
  const { files } = await folder.open();
  const found = files.find(({ uri }) => uri === name);
  if (found === undefined) throw new UsageError(worded`${name} is not there. Give its text, or another path.`);
  return found.text;
}

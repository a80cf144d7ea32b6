import * as z from 'zod';
import { translated } from '../../../language/i18n/translate.ts';
import { type Diagnostic, fullMessage } from '../../../language/model/diagnostic.ts';
import { checkReport } from '../../cli/check-schema.ts';
import { messageLanguage, worded } from '../../cli/messages.ts';
import { buildReport } from '../../cli/report-json.ts';
import { draftOf } from '../folder.ts';
import { type AddTool, answered, data, readOnly } from '../tool.ts';

/** Checks a text that is being written, or the files as they are. */
export const addCheck: AddTool = (server, folder) => {
  server.registerTool(
    'check',
    {
      title: 'Check a procedure',
      description: worded`Checks .rebuild files with all rules and returns every finding: what is wrong, why it matters, what to do, and where. With \`text\`, checks that text as if it were saved under \`file\`, among the other files of the folder; nothing is written. Without, checks the files as they are. A draft is done when there is no error and no warning left that the shop has not answered with \`allow … because\`. Never invent a figure to silence a finding: leave a blank for the lead.`,
      inputSchema: {
        file: z.string().min(1).default('draft.rebuild').describe(worded`Path from the folder of the server`),
        text: z.string().optional().describe(worded`The whole text of that file; left out: the files as they are`),
      },
      outputSchema: checkReport.shape,
      annotations: readOnly,
    },
    ({ file, text }) =>
      answered(async () => {
        const draft = draftOf(file, text);
        const { files, result, workspace } = await folder.open(draft);
        const name = draft === null ? null : folder.inside(file);
        const diagnostics = [...result.diagnostics, ...(name === null ? workspace.notRead : [])].filter(
          ({ severity, source }) => severity !== 'hint' && (name === null || source.file === name),
        );
        const count = (wanted: string) => diagnostics.filter(({ severity }) => severity === wanted).length;
        const report = buildReport({
          files: name === null ? files.map(({ uri }) => uri) : [name],
          diagnostics,
          errors: count('error'),
          warnings: count('warning'),
          fixed: [],
        });
        return data([...diagnostics.map(line), summary(report)].join('\n'), report);
      }),
  );
};

function line(diagnostic: Diagnostic): string {
  const { severity, rule, source } = diagnostic;
  const { line: row, character } = source.range.start;
  return `${source.file}:${row + 1}:${character + 1} ${severity} ${rule}: ${fullMessage(translated(diagnostic, messageLanguage()))}`;
}

function summary({ files, errors, warnings }: { files: readonly string[]; errors: number; warnings: number }): string {
  return `${files.length} ${files.length === 1 ? 'file' : 'files'} checked, ${errors} ${errors === 1 ? 'error' : 'errors'}, ${warnings} ${warnings === 1 ? 'warning' : 'warnings'}.`;
}

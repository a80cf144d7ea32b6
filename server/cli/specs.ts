import pc from 'picocolors';
import { renderSpecsHtml, renderSpecsText } from '../../language/documents/renderers/index.ts';
import { buildSpecs, missingCount, type Specs } from '../../language/documents/specs/index.ts';
import { shownPath } from '../host/files/find-files.ts';
import { htmlFonts } from '../host/print/fonts.ts';
import { WriteError, writeWhole } from '../host/print/write.ts';
import { messageLanguage, worded, words } from './messages.ts';
import { openProcedure } from './procedure.ts';
import { note, say, sayData } from './say.ts';
import { type SpecsReport, specsReport } from './specs-schema.ts';
import { UsageError } from './usage-error.ts';
import { visibleHtml, visibleJson } from './visible.ts';

export type SpecsFormat = 'text' | 'json' | 'html';

export interface SpecsCommandOptions {
  readonly format: SpecsFormat;
  /** File to write; undefined: to the standard output. */
  readonly out: string | undefined;
  readonly workspace: string;
}

/** Width where there is no terminal. */
const usualWidth = 100;

/** Lays out the specifications of a procedure. What is missing is listed, and is not a failure: that is for the check. */
export async function specsCommand(name: string, { format, out, workspace }: SpecsCommandOptions): Promise<number> {
  const { found } = await openProcedure(name, workspace);
  const { procedure, diagnostics } = found;
  const specs = buildSpecs(procedure, messageLanguage());
  if (out === undefined) {
    (format === 'text' ? say : sayData)(written(specs, format, true));
  } else {
    try {
      writeWhole(out, written(specs, format, false), '--out');
    } catch (error) {
      if (error instanceof WriteError) throw new UsageError(words(error.said));
      throw error;
    }
    say(`${pc.green(worded`written`)}  ${shownPath(out)}\n`);
  }
  const errors = diagnostics.filter(({ severity }) => severity === 'error').length;
  if (errors > 0)
    note(
      errors === 1
        ? worded`${procedure.name} has 1 error: what it affects may be missing here. Run npx handtight check ${procedure.source.file} to see it.`
        : worded`${procedure.name} has ${errors} errors: what they affect may be missing here. Run npx handtight check ${procedure.source.file} to see them.`,
    );
  return 0;
}

function written(specs: Specs, format: SpecsFormat, toTerminal: boolean): string {
  const language = messageLanguage();
  switch (format) {
    case 'json':
      return `${visibleJson(reportOf(specs))}\n`;
    case 'html':
      return visibleHtml(renderSpecsHtml(specs, { fonts: htmlFonts(), language }));
    case 'text':
      return toTerminal
        ? renderSpecsText(specs, {
            width: Math.min(process.stdout.columns ?? usualWidth, 160),
            language,
            strong: pc.bold,
            alarm: pc.red,
          })
        : renderSpecsText(specs, { width: usualWidth, language });
  }
}

function reportOf(specs: Specs): SpecsReport {
  return specsReport.parse({ ...specs, missing: missingCount(specs) });
}

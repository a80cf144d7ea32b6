import { fullMessage } from '../../language/model/diagnostic.ts';
import type { Checked } from './check.ts';
import { visible } from './visible.ts';

/** Workflow commands of GitHub Actions: each finding appears at its line of the change. */
export function githubReport({ diagnostics }: Checked): string {
  return diagnostics
    .map((diagnostic) => {
      const { rule, severity, source } = diagnostic;
      const { file, range } = source;
      const place = `file=${property(file)},line=${range.start.line + 1},col=${range.start.character + 1},endLine=${range.end.line + 1},endColumn=${range.end.character + 1}`;
      return `::${severity === 'error' ? 'error' : 'warning'} ${place},title=${property(rule)}::${data(fullMessage(diagnostic))}\n`;
    })
    .join('');
}

function data(text: string): string {
  return visible(text).replaceAll('%', '%25').replaceAll('\r', '%0D').replaceAll('\n', '%0A');
}

function property(text: string): string {
  return data(text).replaceAll(':', '%3A').replaceAll(',', '%2C');
}

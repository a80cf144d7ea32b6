import type { Checked } from './check.ts';
import { type CheckReport, checkReport } from './check-schema.ts';
import { visibleJson } from './visible.ts';

/** For programs. The schema is check-schema.ts. */
export function jsonReport(checked: Checked): string {
  return `${visibleJson(buildReport(checked))}\n`;
}

/** The same as data. */
export function buildReport(
  checked: Pick<Checked, 'files' | 'diagnostics' | 'errors' | 'warnings' | 'fixed'>,
): CheckReport {
  return checkReport.parse({
    files: [...checked.files],
    errors: checked.errors,
    warnings: checked.warnings,
    ...(checked.fixed.length === 0 ? {} : { fixed: checked.fixed.map(({ file, count }) => ({ file, count })) }),
    findings: checked.diagnostics.map(({ rule, severity, message, why, help, when, source, step }) => ({
      rule,
      severity: severity as 'error' | 'warning',
      message,
      why,
      help,
      when,
      file: source.file,
      range: source.range,
      ...(step === undefined ? {} : { step }),
    })),
  } satisfies CheckReport);
}

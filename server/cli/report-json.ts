import type { Checked } from './check.ts';
import { type CheckReport, checkReport } from './check-schema.ts';
import { visibleJson } from './visible.ts';

/** For programs. The schema is check-schema.ts. */
export function jsonReport(checked: Checked): string {
  const report: CheckReport = {
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
  };
  return `${visibleJson(checkReport.parse(report))}\n`;
}

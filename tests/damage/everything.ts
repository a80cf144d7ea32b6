import { type CheckResult, type SourceFile, Workspace } from '../../language/db/workspace.ts';
import { buildCertificate, findMissing } from '../../language/documents/certificate/index.ts';
import { buildExploded } from '../../language/documents/drawing/exploded.ts';
import { renderHtml, renderSpecsHtml, renderSpecsText, renderTypst } from '../../language/documents/renderers/index.ts';
import { buildSpecs } from '../../language/documents/specs/index.ts';
import { buildSheet } from '../../language/documents/traveler/index.ts';
import { buildHints } from '../../language/recommendations/hints.ts';
import { rateLines } from '../../language/recommendations/rate-report.ts';
import { matchLines, shimLines } from '../../language/recommendations/report.ts';

/**
 * All that `language/` makes of files: findings, and of each procedure and job the sheet as a draft, the specifications,
 * the certificate as a draft, the advice. What it throws goes through.
 */
export function everythingOf(files: readonly SourceFile[], checker = new Workspace()): CheckResult {
  const result = checker.check(files);
  const defect = result.diagnostics.find(({ rule }) => rule === 'internal-error');
  if (defect !== undefined) throw new Error(defect.message);
  for (const family of result.resolved.families) buildExploded(family);
  for (const { procedure, diagnostics } of result.procedures) {
    const sheet = { paper: 'a4', draft: true, diagnostics, hash: '' } as const;
    const jobs = result.jobs.filter((job) => job.procedure === procedure);
    const made = [null, ...jobs].map((job) => buildSheet(procedure, { ...sheet, job, number: null }));
    for (const job of jobs) {
      const certificate = { ...sheet, today: '2027-12-31' };
      made.push(buildCertificate(procedure, job, certificate));
      findMissing(procedure, job, certificate);
      shimLines(job);
      matchLines(job);
    }
    for (const one of made) renderHtml(one);
    renderTypst(made, procedure.name);
    const specs = buildSpecs(procedure);
    renderSpecsHtml(specs);
    renderSpecsText(specs, { width: 100 } as Parameters<typeof renderSpecsText>[1]);
    rateLines(procedure, jobs);
  }
  buildHints(
    result.procedures.map(({ procedure }) => procedure),
    result.jobs,
  );
  return result;
}

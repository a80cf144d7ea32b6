import { Checker, type CheckResult, type SourceFile } from '../../language/db/workspace.ts';
import { certificateOf, missingOf } from '../../language/documents/certificate/index.ts';
import { explodedOf } from '../../language/documents/drawing/exploded.ts';
import { htmlOf, specsHtml, specsText, typstOf } from '../../language/documents/renderers/index.ts';
import { specsOf } from '../../language/documents/specs/index.ts';
import { sheetOf } from '../../language/documents/traveler/index.ts';
import { hintsOf } from '../../language/recommendations/hints.ts';
import { rateLines } from '../../language/recommendations/rate-report.ts';
import { matchLines, shimLines } from '../../language/recommendations/report.ts';

/**
 * All that `language/` makes of files: findings, and of each procedure and job the sheet as a draft, the specifications,
 * the certificate as a draft, the advice. What it throws goes through.
 */
export function everythingOf(files: readonly SourceFile[], checker = new Checker()): CheckResult {
  const result = checker.check(files);
  const defect = result.findings.find(({ rule }) => rule === 'internal-error');
  if (defect !== undefined) throw new Error(defect.message);
  for (const family of result.resolved.families) explodedOf(family);
  for (const { procedure, findings } of result.procedures) {
    const sheet = { paper: 'a4', draft: true, findings, hash: '' } as const;
    const jobs = result.jobs.filter((job) => job.procedure === procedure);
    const made = [null, ...jobs].map((job) => sheetOf(procedure, { ...sheet, job, number: null }));
    for (const job of jobs) {
      const certificate = { ...sheet, today: '2027-12-31' };
      made.push(certificateOf(procedure, job, certificate));
      missingOf(procedure, job, certificate);
      shimLines(job);
      matchLines(job);
    }
    for (const one of made) htmlOf(one);
    typstOf(made, procedure.name);
    const specs = specsOf(procedure);
    specsHtml(specs);
    specsText(specs, { width: 100 } as Parameters<typeof specsText>[1]);
    rateLines(procedure, jobs);
  }
  hintsOf(
    result.procedures.map(({ procedure }) => procedure),
    result.jobs,
  );
  return result;
}

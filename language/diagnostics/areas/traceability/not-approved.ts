import { listed } from '../../../analysis/prose.ts';
import type { Rule } from '../../rule.ts';

/** A procedure that nobody has approved, or of which nobody can say which revision it is. */
export const notApproved: Rule = {
  code: 'not-approved',
  severity: 'warning',
  since: '0.2.0',
  title: 'A procedure has no revision, or nobody has approved it with a date.',
  procedure(procedure, report) {
    const { revision, approvedBy, approvedOn } = procedure;
    const missing = [
      revision === null ? 'no revision' : '',
      approvedBy === null ? 'nobody who approved it' : approvedOn === null ? 'no date when it was approved' : '',
    ].filter(Boolean);
    if (missing.length === 0) return;
    report({
      at: procedure.source,
      message: `The procedure has ${listed(missing)}.`,
      why: 'a sheet of it could not be told from a draft, nor a unit traced to what was valid then.',
      help: `Write “${[
        revision === null ? 'revision A' : '',
        approvedBy === null || approvedOn === null ? 'approved by "…" on 2026-01-31' : '',
      ]
        .filter(Boolean)
        .join('   ')}” in its head.`,
    });
  },
};

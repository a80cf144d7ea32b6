import { listed } from '../../../analysis/prose.ts';
import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** A procedure that nobody has approved, or that has no revision. */
export const notApproved: Rule = {
  code: 'not-approved',
  severity: 'warning',
  since: '0.2.0',
  title: 'A procedure has no revision, or no approval with a date.',
  procedure(procedure, report) {
    const { revision, approvedBy, approvedOn } = procedure;
    const missing = [
      revision === null ? say`no revision` : '',
      approvedBy === null ? say`no approval` : approvedOn === null ? say`no approval date` : '',
    ].filter(Boolean);
    if (missing.length === 0) return;
    report({
      at: procedure.source,
      rootCause: revision === null ? 'revision' : 'approved',
      message: say`The procedure has ${listed(missing)}.`,
      why: say`nobody could distinguish its sheet from a draft, or trace a unit to what was valid at the time.`,
      help: say`Write “${[
        revision === null ? 'revision A' : '',
        approvedBy === null || approvedOn === null ? 'approved by "…" on 2026-01-31' : '',
      ]
        .filter(Boolean)
        .join('   ')}” in its head.`,
    });
  },
};

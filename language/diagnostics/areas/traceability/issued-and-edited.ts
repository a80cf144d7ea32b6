import type { Rule } from '../../rule.ts';

/** Found where the texts of two revisions are compared (`db/issued/findings.ts`). */
export const issuedAndEdited: Rule = {
  code: 'issued-and-edited',
  severity: 'error',
  unsafe: true,
  since: '0.2.0',
  title: 'A procedure says a revision that is issued, and its text is no longer what was issued.',
};

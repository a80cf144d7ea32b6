import type { Rule } from '../../rule.ts';

/** Found where issued revisions are read (`db/issued/findings.ts`). */
export const issuedFileChanged: Rule = {
  code: 'issued-file-changed',
  severity: 'error',
  unsafe: true,
  since: '0.2.0',
  title: 'The file of an issued revision is not as it was written.',
};

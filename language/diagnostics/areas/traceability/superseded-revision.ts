import type { Job, NewerIssue } from '../../../model/job.ts';
import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** A job that is in work names a revision, and a newer one is issued. */
export const supersededRevision: Rule<NewerIssue> = {
  code: 'superseded-revision',
  severity: 'warning',
  since: '0.2.0',
  title: 'A job in work names a revision after which another was issued.',
  job(job, report) {
    const { name, newerIssue: newer, revision } = job;
    if (newer === undefined || revision === null || isDoneBy(job, newer.issuedOn)) return;
    const isBegun = job.units.some(({ results }) => results.length > 0);
    report({
      at: newer.at,
      message: say`Job ${name} is worked by revision ${revision}, and revision ${newer.revision} was issued on ${newer.issuedOn}.`,
      why: say`what was changed since is not done in these units, and their sheet shows the older limits.`,
      help: isBegun
        ? say`See which results hold over: npx handtight move ${name} --to ${newer.revision}. Or finish the job by ${revision}, if what was changed does not concern it.`
        : say`Nothing is written down yet: write revision ${newer.revision}, and print the sheet again.`,
      ...(isBegun ? {} : { data: newer }),
    });
  },
  // Which revision a customer's units are worked by is for the lead to say.
  fix: ({ at, revision }) => ({
    title: say`Write revision ${revision}`,
    safe: false,
    edits: [{ source: at, text: /^\p{L}[\p{L}\d_-]*$/u.test(revision) ? revision : `"${revision}"` }],
  }),
};

/** All its units were done by that day: nothing is left to be done by another revision. */
function isDoneBy({ units }: Job, day: string): boolean {
  const inWork = units.filter(({ onHold }) => onHold === null);
  return (
    inWork.length > 0 &&
    inWork.every(({ results }) => {
      const last = results.findLast(({ form }) => form === 'done');
      return last?.form === 'done' && last.on !== null && last.on <= day;
    })
  );
}

import { expect, it } from 'vitest';
import { checkFiles } from '../../../language/db/workspace.ts';
import { fileKey } from './file-name.ts';
import { certificateName, sheetNames } from './sheet-name.ts';

const numbers = ['A/1', 'a-1', 'A-1', 'B2', 'x'.repeat(130), `${'x'.repeat(130)}y`];
const text = `shop s "S" {\n station b "B"\n}\nfamily f "F" {\n part p "P"\n proven by x\n}
procedure job-B2 for f at s {\n stage one at b {\n receive\n }\n}
${numbers.map((number) => `job "${number}" of job-B2 {\n unit 1 number unknown\n}\n`).join('')}`;

it('no two sheets or certificates of a workspace have one file, drafts neither; who shares with nobody has no digits', () => {
  const result = checkFiles([{ uri: 'x', text }]);
  const nameOf = sheetNames(result);
  const targets = [
    ...result.jobs.map((job) => ({ procedure: job.procedure, job })),
    ...result.procedures.map(({ procedure }) => ({ procedure, job: null })),
  ];
  expect(targets).toHaveLength(7);
  const names = [false, true].flatMap((draft) => [
    ...targets.map((one) => nameOf(one, draft)),
    ...result.jobs.map((job) => certificateName(job, draft, result.jobs)),
  ]);
  expect(new Set(names.map(fileKey)).size).toBe(26);
  expect(certificateName(result.jobs[3]!, false, result.jobs)).toBe('certificate-B2');
  expect(nameOf(targets[3]!, false)).toMatch(/^job-B2-[0-9a-f]{8}$/u);
});

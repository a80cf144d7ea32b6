/** A job that is moved to another revision: who decided it and why, which results hold over, and what is done again. */
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { movedText } from '../language/drafting/moved.ts';
import { command } from './command.ts';
import { root } from './library.ts';

const folder = mkdtempSync(join(tmpdir(), 'handtight-moved-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const jobFile = join(folder, 'jobs', 'job-2198.rebuild');
const by = ['--by', 'Works manager', '--reason', 'The customer wants it tighter', '--today', '2026-10-18'];
const move = (...more: string[]) => command(folder, 'move', '2198', ...by, ...more);
const certificate = () => command(folder, 'certificate', '2198', '--today', '2026-12-01', '--format', 'html');
let before = '';

/** Revision C is issued, and D has another limit for the back leak. It was approved after the work was done. */
beforeAll(async () => {
  for (const part of ['shop.rebuild', 'one-spring', 'shared', 'jobs'])
    cpSync(join(root, 'procedures', part), join(folder, part), { recursive: true });
  expect((await command(folder, 'issue', 'rebuild-one-spring', '--today', '2026-10-06')).status).toBe(0);
  const procedure = join(folder, 'one-spring', 'procedure.rebuild');
  const text = readFileSync(procedure, 'utf8');
  const next = text
    .replace('revision C', 'revision D')
    .replace('2026-10-05', '2026-10-17')
    .replace('6..20 s', '8..20 s');
  expect(next).not.toBe(text);
  writeFileSync(procedure, next);
  before = readFileSync(jobFile, 'utf8');
});

describe('handtight move', () => {
  it('shows what it would write, and which results do not hold over', async () => {
    const { status, stdout } = await move('--to', 'D');
    expect(status).toBe(0);
    expect(stdout.replaceAll('\u00a0', ' ')).toContain(
      'Back leak: limit 6 to 20 s, now 8 to 20 s. It is done again.\n',
    );
    expect(stdout).toContain('+    moved "C" by "Works manager" on 2026-10-18 reason "The customer wants it tighter"');
    expect(stdout.match(/^\+ {4}again back-leak$/gmu)).toHaveLength(6);
    expect(readFileSync(jobFile, 'utf8')).toBe(before);
  });

  it.each([
    [['--to', 'E'], 'has no revision E. There are: D.'],
    [['--to', 'C'], 'is at revision C already'],
    [['--to', 'D', '--holds', 'chatter'], 'no result of this job that revision D has done otherwise'],
  ])('refuses %j', async (options, said) => {
    const { status, stderr } = await move(...options);
    expect([status, stderr]).toEqual([2, expect.stringContaining(said)]);
  });

  it('is certified by the new revision once the rest is done again, and says so', async () => {
    expect((await move('--to', 'D', '--write')).status).toBe(0);
    const open = await certificate();
    expect(open.status).toBe(1);
    expect(open.stderr).toContain(
      'Back leak: the last result is from before the job was moved to revision D, and does not hold over.',
    );
    // What was done before the move was done by revision C, which was approved then.
    expect(open.stderr).not.toContain('approved on 2026-10-17');
    const again = readFileSync(jobFile, 'utf8').replaceAll(
      /^ {4}again back-leak$/gmu,
      '$&\n    back-leak 12 s on PG-400\n    done by "R. Abel" on 2026-10-19',
    );
    writeFileSync(jobFile, again);
    const done = await certificate();
    expect([done.status, done.stderr]).toEqual([0, '']);
    const html = readFileSync(join(folder, 'traveler', 'certificate-2198.html'), 'utf8');
    expect(html).toContain('The customer wants it tighter');
  });

  it('leaves what somebody says holds over as it is', async () => {
    writeFileSync(jobFile, before);
    const moved = await move('--to', 'D', '--holds', 'back-leak', '--write');
    expect(moved.stdout).toContain('It holds over.');
    expect(readFileSync(jobFile, 'utf8')).not.toContain('again');
    expect((await certificate()).status).toBe(0);
    writeFileSync(jobFile, before);
  });
});

it.each([
  ['job 9 of p {\n}\n', 'job 9 of p revision D {\n  intake {\n    moved "C"'],
  ['job 9 "a { b" of p revision C // {\n{\n}\n', 'job 9 "a { b" of p revision D // {\n{\n  intake {\n    moved "C"'],
  [
    'job 9 of p revision C {\n  intake {\n    missing "}"\n  }\n}\n',
    'revision D {\n  intake {\n    missing "}"\n    moved "C"',
  ],
])('finds the head and the intake of a job: %j', (text, wanted) => {
  const lines = text.split('\n').length - 1;
  const range = { start: { line: 0, character: 0 }, end: { line: lines, character: 0 } };
  expect(movedText(text, range, { from: 'C', to: 'D', by: 'A', on: '2026-10-18', reason: 'x' })).toContain(wanted);
});

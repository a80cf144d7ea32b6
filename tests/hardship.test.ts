/** Places that cannot be written to, and moments that end badly: a clear message, nothing lost, nothing half. */
import { spawnSync } from 'node:child_process';
import {
  chmodSync,
  chownSync,
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { kill } from './kills/kills.ts';
import { root } from './library.ts';

const folder = mkdtempSync(join(tmpdir(), 'handtight-hardship-'));
const start = join(folder, 'start');
const now = join(folder, 'now');
const program = join(root, 'out', 'handtight.mjs');
const close = ['close', '2198', '--today', '2026-10-20'];
const handtight = (args: readonly string[], more: object = {}) => {
  const env = { ...process.env, HANDTIGHT_CACHE: join(now, '.cache'), LANG: 'C', NO_COLOR: '1' };
  const { status, stdout, stderr } = spawnSync(process.execPath, [program, ...args], {
    cwd: now,
    env,
    encoding: 'utf8',
    ...more,
  });
  return { status, stdout, stderr };
};

beforeAll(() => {
  for (const part of ['shop.rebuild', 'one-spring', 'shared', 'jobs'])
    cpSync(join(root, 'procedures', part), join(start, part), { recursive: true });
  cpSync(start, now, { recursive: true });
  expect(handtight(['issue', 'rebuild-one-spring', '--today', '2026-10-06']).status).toBe(0);
  cpSync(now, start, { recursive: true });
});
beforeEach(() => {
  rmSync(now, { recursive: true, force: true });
  cpSync(start, now, { recursive: true });
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Whether this machine lets a test have a small disk of its own. */
const hasSmallDisk =
  spawnSync('unshare', ['-rm', 'mount', '-t', 'tmpfs', '-o', 'size=16k', 'none', '/mnt']).status === 0;

describe('a full disk', () => {
  /** Closes a job on a disk of so many kB, then once more on one with room. */
  const onDisk = (size: number) => {
    mkdirSync(join(now, 'records'));
    const script = `mount -t tmpfs -o size=${size}k none records
"$0" "$1" close 2198 --today 2026-10-20 2>&1; echo "--"; ls -A records | grep -v '^records.list$'; echo "--"
mount -o remount,size=4m records; "$0" "$1" close 2198 --today 2026-10-20 2>&1; echo "--"; "$0" "$1" verify`;
    const { stdout } = spawnSync('unshare', ['-rm', 'sh', '-c', script, process.execPath, program], {
      cwd: now,
      encoding: 'utf8',
      env: { ...process.env, HANDTIGHT_CACHE: 'off', LANG: 'C' },
    });
    const [first = '', left = '', then = '', verified = ''] = stdout.split('--\n');
    expect(verified).toContain('1 record: all as they were written.');
    return {
      said: /the disk is full/u.exec(first)?.[0] ?? first,
      left: left.split('\n').filter((one) => one !== ''),
      after: /complete now|Closed: job 2198/u.exec(then.replace(/Closed: .*complete/u, 'complete'))?.[0] ?? then,
    };
  };

  it.skipIf(!hasSmallDisk).each([4, 16])('of %d kB: nothing is written, and nothing is half', (size) => {
    expect(onDisk(size)).toEqual({ said: 'the disk is full', left: [], after: 'Closed: job 2198' });
  });

  it.skipIf(!hasSmallDisk)('that has room for the record alone: closing again completes the list', () => {
    expect(handtight(close).status).toBe(0);
    const pages = Math.ceil(statSync(join(now, 'records', '2198-1.record.json')).size / 4096);
    rmSync(join(now, 'records'), { recursive: true });
    expect(onDisk(pages * 4)).toEqual({
      said: 'the disk is full',
      left: ['2198-1.record.json'],
      after: 'complete now',
    });
    rmSync(join(now, 'records'), { recursive: true, force: true });
    expect(onDisk(pages * 4 - 4)).toEqual({ said: 'the disk is full', left: [], after: 'Closed: job 2198' });
  });
});

describe('a folder without permission', () => {
  /** Nobody, where the tests run as somebody who may do anything. */
  const nobody = process.getuid?.() === 0 ? { uid: 65_534, gid: 65_534 } : {};
  it.each<[string, readonly string[], string]>([
    ['close', close, 'records'],
    ['import', ['import', 'bench.csv', '--mapping', 'map.json', '--write'], 'jobs'],
    ['a page', ['learn', '--page', 'locked/x.html'], 'locked'],
    ['issue', ['issue', 'rebuild-one-spring', '--today', '2026-10-06'], 'one-spring/issued'],
  ])('is named, and nothing is left in it: %s', (name, args, locked) => {
    if (name === 'a page') expect(handtight(close).status).toBe(0);
    if (name === 'issue') rmSync(join(now, locked), { recursive: true });
    writeFileSync(join(now, 'bench.csv'), 'job,serial,leak\n2207,0413,9\n');
    writeFileSync(
      join(now, 'map.json'),
      '{"job":"job","serial":"serial","results":[{"test":{"is":"back-leak"},"value":"leak","unit":{"is":"s"}}]}',
    );
    mkdirSync(join(now, locked), { recursive: true });
    const before = readdirSync(join(now, locked));
    chmodSync(join(now, locked), 0o555);
    if ('uid' in nobody) chownSync(join(now, locked), 0, 0);
    chmodSync(folder, 0o755);
    const { status, stderr } = handtight(args, nobody);
    chmodSync(join(now, locked), 0o755);
    expect([status, stderr]).toEqual([2, expect.stringMatching(/no permission|not allowed|permission/iu)]);
    expect(stderr).toContain(locked);
    expect(readdirSync(join(now, locked))).toEqual(before);
  });
});

describe('records that are damaged', () => {
  it.each<[string, (record: string) => void]>([
    ['cut off in the middle', (record) => truncateSync(record, 5000)],
    ['empty', (record) => truncateSync(record, 0)],
    ['no text', (record) => writeFileSync(record, Buffer.from([0xff, 0xfe, 0x00, 0x80]))],
    ['gone', (record) => rmSync(record)],
  ])('are named by every command, and stop no answer: %s', (_, damage) => {
    expect(handtight(close).status).toBe(0);
    const record = join(now, 'records', '2198-1.record.json');
    chmodSync(record, 0o644);
    damage(record);
    const verified = handtight(['verify']);
    expect([verified.status, verified.stdout]).toEqual([1, expect.stringContaining('2198-1.record.json: ')]);
    const asked = handtight(['history', '1107']);
    expect([asked.status, asked.stderr]).toEqual([
      1,
      expect.stringContaining('2198-1.record.json is missing or not as written'),
    ]);
    if (!existsSync(record)) return;
    const printed = handtight(['certificate', 'records/2198-1.record.json']);
    expect([printed.status, printed.stderr]).toEqual([2, expect.stringContaining('is not as it was written')]);
    const again = handtight(close);
    expect([again.status, again.stderr]).toEqual([2, expect.stringContaining('Take it back from a backup')]);
  });
});

it('a job number that is there twice closes neither', () => {
  const text = readFileSync(join(now, 'jobs', 'job-2198.rebuild'), 'utf8');
  writeFileSync(join(now, 'jobs', 'other.rebuild'), text.replaceAll(/serial (\d+)/gu, 'serial 9$1'));
  const { status, stderr } = handtight(close);
  expect([status, stderr]).toEqual([2, expect.stringContaining('There are 2 jobs 2198')]);
  expect(existsSync(join(now, 'records'))).toBe(false);
});

it('a job that breaks off is not closed', () => {
  const path = join(now, 'jobs', 'job-2198.rebuild');
  const text = readFileSync(path, 'utf8');
  for (const share of [0.2, 0.5, 0.9, 0.99]) {
    writeFileSync(path, text.slice(0, text.length * share));
    const { status, stderr } = handtight(close);
    expect([1, 2]).toContain(status);
    expect(stderr).not.toBe('');
    expect(existsSync(join(now, 'records'))).toBe(false);
  }
});

it('a command that is killed leaves the old file or the new one, and is ended by giving it again', async () => {
  const { wrong, inTime } = await kill(16);
  expect(wrong).toEqual([]);
  expect(inTime).toBeGreaterThan(0);
}, 300_000);

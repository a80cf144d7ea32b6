/** Closing a job, verifying records, printing from a record alone: through the command. */
import { spawn } from 'node:child_process';
import { generateKeyPairSync } from 'node:crypto';
import { once } from 'node:events';
import {
  chmodSync,
  cpSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it, test } from 'vitest';
import { listName } from '../server/host/files/record-names.ts';
import { fileHash, readList, recordNames } from '../server/host/files/records.ts';
import { command } from './command.ts';
import { root } from './library.ts';

const folder = mkdtempSync(join(tmpdir(), 'handtight-closing-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const record = join(folder, 'records', '2198-1.record.json');
const today = ['--today', '2026-10-20'];
const plain = ({ status, stdout, stderr }: { status: number; stdout: string; stderr: string }) =>
  `${status} ${stdout}${stderr}`.replaceAll('\\', '/');

beforeAll(async () => {
  cpSync(join(root, 'procedures'), folder, { recursive: true });
  rmSync(join(folder, 'flawed'), { recursive: true });
});

describe('a job', () => {
  it('is not closed before its procedure is issued, nor while anything is missing', async () => {
    const early = await command(folder, 'close', '2198', ...today);
    expect(plain(early)).toMatch(/^1 Job 2198 is not closed\. What is open:\n {2}the procedure: revision C of /u);
    expect(plain(await command(folder, 'issue', 'rebuild-one-spring', '--today', '2026-10-06'))).toMatch(
      /^0 Issued: /u,
    );
    const open = await command(folder, 'close', '2207', '--today', '2026-12-20');
    expect(plain(open)).toMatch(/^1 Job 2207 is not closed\. What is open:\n {2}unit 1 /u);
    expect(recordNames(join(folder, 'records'))).toEqual([]);
  });

  it('is closed once, and verified', async () => {
    expect(plain(await command(folder, 'close', '2198', ...today))).toBe(
      '0 Closed: job 2198, records/2198-1.record.json\n',
    );
    expect(plain(await command(folder, 'verify'))).toBe('0 1 not signed\n1 record: all as they were written.\n');
    expect(plain(await command(folder, 'close', '2198', ...today))).toMatch(/^1 Job 2198 is closed: /u);
  });

  it('is not looked into anymore by a check, unless it is named or was written on', async () => {
    const source = join(folder, 'jobs', 'job-2198.rebuild');
    const text = readFileSync(source, 'utf8');
    const { mtime } = statSync(source);
    const checked = async (...args: string[]) => (await command(folder, 'check', '--no-cache', ...args)).stdout;
    writeFileSync(source, text.replace('done by', 'don by'));
    expect(await checked()).toContain('job-2198.rebuild');
    utimesSync(source, mtime, mtime);
    expect(await checked()).not.toContain('job-2198.rebuild');
    expect(await checked('jobs/job-2198.rebuild')).toContain('job-2198.rebuild');
    writeFileSync(source, text);
    utimesSync(source, mtime, mtime);
    // A second job in the file is open.
    const both = join(folder, 'jobs', 'both.rebuild');
    writeFileSync(both, `${text}${text.replace('job 2198', 'job 2199').replaceAll('done by', 'don by')}`);
    utimesSync(both, mtime, mtime);
    expect(await checked()).toContain('both.rebuild');
    rmSync(both);
  });

  it('has no sheet in its record, and the way to its certificate is shown', async () => {
    expect(plain(await command(folder, 'print', 'records/2198-1.record.json'))).toBe(
      '2 handtight: records/2198-1.record.json is the record of a closed job: it has its certificate, and no sheet. Print that: npx handtight certificate records/2198-1.record.json\n',
    );
  });

  it('has the same certificate from its record alone, where nothing else is', async () => {
    const alone = mkdtempSync(join(tmpdir(), 'handtight-alone-'));
    writeFileSync(join(alone, 'x.record.json'), readFileSync(record));
    const formats = ['--format', 'pdf,html', '--to', 'out'];
    await command(folder, 'certificate', '2198', ...today, ...formats);
    expect((await command(alone, 'certificate', 'x.record.json', ...formats)).status).toBe(0);
    for (const name of ['certificate-2198.pdf', 'certificate-2198.html'])
      expect(readFileSync(join(alone, 'out', name)).equals(readFileSync(join(folder, 'out', name)))).toBe(true);
    writeFileSync(join(alone, 'y.record.json'), readFileSync(record, 'utf8').replace('254', '255'));
    expect(plain(await command(alone, 'certificate', 'y.record.json', ...formats))).toMatch(
      /^2 .*is not as it was written, so no certificate is printed from it/u,
    );
    rmSync(alone, { recursive: true });
  });

  it('is closed once more with a reason, which its certificate says', async () => {
    const { privateKey, publicKey } = generateKeyPairSync('ed25519');
    writeFileSync(join(folder, 'shop.pem'), privateKey.export({ type: 'pkcs8', format: 'pem' }));
    writeFileSync(join(folder, 'shop.pub'), publicKey.export({ type: 'spki', format: 'pem' }));
    const again = await command(folder, 'close', '2198', ...today, '--reissue', 'serial misread', '--key', 'shop.pem');
    expect(plain(again)).toBe('0 Closed: job 2198, records/2198-2.record.json, signed\n');
    const printed = ['records/2198-2.record.json', '--format', 'html', '--to', 'out'];
    expect((await command(folder, 'certificate', ...printed)).status).toBe(0);
    expect(readFileSync(join(folder, 'out', 'certificate-2198-issue-2.html'), 'utf8')).toContain(
      '2, replaces 1: serial misread',
    );
    expect(plain(await command(folder, 'verify'))).toMatch(
      /^0 1 signed with the key (?:[0-9a-f]{4} ?){4}\n1 not signed\n/u,
    );
    expect(plain(await command(folder, 'verify', '--key', 'shop.pub'))).toMatch(
      /^1 ✗ 2198-1\.record\.json: not signed\./u,
    );
    expect(plain(await command(folder, 'verify', '--key', 'shop.rebuild'))).toMatch(/^2 .*is no key of Ed25519/u);
  });
});

describe('verify', () => {
  it('names what was changed, is missing, or is new', async () => {
    const copy = join(folder, 'copy');
    cpSync(join(folder, 'records'), copy, { recursive: true });
    const one = join(copy, '2198-1.record.json');
    const text = readFileSync(one, 'utf8');
    chmodSync(one, 0o644);
    for (const at of [0, 1000, text.length - 2]) {
      writeFileSync(one, `${text.slice(0, at)}${text[at] === 'x' ? 'y' : 'x'}${text.slice(at + 1)}`);
      expect(plain(await command(folder, 'verify', 'copy'))).toContain('✗ 2198-1.record.json: changed.');
    }
    writeFileSync(join(copy, 'new-1.record.json'), text);
    rmSync(one);
    const answer = plain(await command(folder, 'verify', 'copy'));
    expect(answer).toContain('✗ new-1.record.json: new.');
    expect(answer).toContain('✗ 2198-1.record.json: missing.');
    writeFileSync(join(copy, listName), `${readFileSync(join(copy, listName), 'utf8')}half a li`);
    expect(plain(await command(folder, 'verify', 'copy'))).toContain('✗ records.list: changed.');
    mkdirSync(join(folder, 'none'));
    expect(plain(await command(folder, 'verify', 'none'))).toMatch(/^2 .*There is no record in none/u);
  });

  it('goes silent about an interrupted closing once the job is closed again', async () => {
    rmSync(join(folder, 'records', listName));
    expect(plain(await command(folder, 'verify'))).toContain('✗ 2198-2.record.json: new.');
    expect(plain(await command(folder, 'close', '2198', ...today))).toContain('was interrupted, and is complete now');
    expect(readList(join(folder, 'records')).has('2198-2.record.json')).toBe(true);
  });
});

test('a kill at any moment leaves whole records, and a list of whole lines', async () => {
  const to = join(folder, 'killed');
  const { KILLS = '24' } = process.env;
  const kills = Number(KILLS);
  for (let kill = 0; kill < kills; kill++) {
    const first = kill * 100_000 + 1;
    const child = spawn(process.execPath, [join(root, 'tests/fixtures/close-forever.ts'), to, String(first)]);
    const seen = () => recordNames(to).length;
    const before = seen();
    while (seen() === before) await new Promise((resolve) => setTimeout(resolve, 2));
    await new Promise((resolve) => setTimeout(resolve, (kill * 7) % 20));
    child.kill('SIGKILL');
    await once(child, 'exit');
    const list = readList(to);
    const names = recordNames(to).filter((name) => Number.parseInt(name, 10) >= first);
    for (const name of names) {
      const bytes = readFileSync(join(to, name));
      expect(bytes.toString()).toBe(`${String(Number.parseInt(name, 10)).repeat(20_000)}\n`);
      if (list.has(name)) expect(list.get(name)).toBe(fileHash(bytes));
    }
    // Only the last one may have come no further than its record.
    expect(names.filter((name) => !list.has(name)).length).toBeLessThanOrEqual(1);
    expect([...list.keys()].filter((name) => Number.parseInt(name, 10) >= first && !names.includes(name))).toEqual([]);
    for (const name of readdirSync(to)) if (name !== listName) rmSync(join(to, name), { force: true });
    rmSync(join(to, listName), { force: true });
  }
}, 240_000);

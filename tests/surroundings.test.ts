/** The command where something around it is bad: files, settings, texts that steer a terminal, disks, readers. */
import { execFileSync, spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import {
  chmodSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  realpathSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeEach, describe, expect, it, vi } from 'vitest';
import { Workspace } from '../language/db/workspace.ts';
import { checkReport } from '../server/cli/check-schema.ts';
import { command } from './command.ts';
import { root } from './library.ts';

const program = join(root, 'out/handtight.mjs');
const top = realpathSync(mkdtempSync(join(tmpdir(), 'handtight-around-')));
const folder = join(top, 'work');
const valve = readFileSync(join(root, 'procedures/first/first.rebuild'), 'utf8');
const job = (number: string) => `job ${number} of rebuild-valve {\n  unit 1 number unknown\n}\n`;
const posix = process.platform !== 'win32';
/** Root may read and write everything; then nobody (65534) is asked to try. */
const other = posix && process.getuid?.() === 0 ? { uid: 65534, gid: 65534 } : {};

beforeEach(() => {
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder);
  write('valve.rebuild', valve);
});
afterAll(() => rmSync(top, { recursive: true, force: true }));

function write(path: string, text: string | Uint8Array) {
  mkdirSync(join(folder, path, '..'), { recursive: true });
  writeFileSync(join(folder, path), text);
}
const handtight = (...args: string[]) => command(folder, ...args);
/** The built program in a process of its own. */
const started = (args: readonly string[], options: Parameters<typeof spawnSync>[2] = {}) =>
  spawnSync(process.execPath, [program, ...args], { cwd: folder, encoding: 'utf8', ...options });

describe('one bad entry costs itself', () => {
  it.runIf(posix)('in check: it is an error of that file, and the others are checked', async () => {
    symlinkSync('gone.rebuild', join(folder, 'lost.rebuild'));
    execFileSync('mkfifo', [join(folder, 'pipe.rebuild')]);
    write('._valve.rebuild', new Uint8Array([0, 5, 22, 7]));
    const { status, stdout } = await handtight('check', '--format', 'json');
    const { files, errors, findings: diagnostics } = checkReport.parse(JSON.parse(stdout));
    expect({ status, files, errors }).toEqual({ status: 1, files: ['valve.rebuild'], errors: 2 });
    expect(diagnostics.map(({ rule, file, message }) => `${file} ${rule}: ${message}`)).toEqual([
      'lost.rebuild unreadable-file: This is a link to gone.rebuild, which is not there, so nothing is read. Correct the link, or delete it.',
      'pipe.rebuild unreadable-file: This is a pipe, a socket or a device, not a file, so it is not read. Move it out of the folder.',
    ]);
    expect((await handtight('check')).stdout).toContain(
      'lost.rebuild:1:1  error  unreadable-file\n  This is a link to gone.rebuild, which is not there, so nothing is read. Correct the link, or\n  delete it.\n\npipe',
    );
    // What is asked about is in order.
    expect(await handtight('check', 'valve.rebuild')).toMatchObject({ status: 0 });
    // What is named by hand and cannot be read is wrong use.
    expect(await handtight('check', 'lost.rebuild')).toMatchObject({ status: 2 });
    expect(await handtight('check', 'pipe.rebuild')).toMatchObject({
      status: 2,
      stderr: expect.stringMatching(/pipe\.rebuild: This is a pipe/u),
    });
  });

  it.runIf(posix)('in print: the others print; it is named if its folder was requested', async () => {
    write('jobs/7.rebuild', job('7'));
    symlinkSync('gone.rebuild', join(folder, 'jobs/lost.rebuild'));
    expect(await handtight('print', '7', '--format', 'html', '--to', 'a')).toMatchObject({
      status: 0,
      stdout: 'printed  a/job-7.html\n',
      stderr: expect.stringMatching(/^note {2}jobs\/lost\.rebuild: This is a link to gone\.rebuild/u),
    });
    expect(await handtight('print', 'jobs', '--format', 'html', '--to', 'b')).toMatchObject({
      status: 1,
      stdout: 'printed  b/job-7.html\n',
      stderr: expect.stringMatching(/^jobs\/lost\.rebuild is not printed: .*\n1 printed, 1 not printed\n$/u),
    });
    expect((await handtight('shim', '7')).stderr).toMatch(/^note {2}jobs\/lost\.rebuild: /u);
  });

  it.runIf(posix)('a file and a folder without permission', () => {
    write('shut.rebuild', valve);
    write('shut/in.rebuild', valve);
    chmodSync(join(folder, 'shut.rebuild'), 0);
    chmodSync(join(folder, 'shut'), 0);
    for (const at of [top, folder]) chmodSync(at, 0o755);
    const { status, stdout, stderr } = started(['check'], other);
    chmodSync(join(folder, 'shut'), 0o755);
    expect({ status, stderr }).toEqual({ status: 1, stderr: '' });
    expect(stdout).toMatch(/shut:1:1 {2}error {2}unreadable-file\n {2}This folder could not be read: no permission\./u);
    expect(stdout).toMatch(
      /shut\.rebuild:1:1 {2}error {2}unreadable-file\n {2}This file could not be read: no permission/u,
    );
    expect(stdout).toContain('1 file checked: 2 errors, 0 warnings.');
  });
});

describe('one settings file is in force', () => {
  // A warning that the settings raise.
  const warned = valve.replace('sign-off by "Shop lead"', 'sign-off by "Shop lead"  allow no-sign-off because "tried"');
  const raised = '{ "severities": { "allow-without-effect": "error" } }';
  const off = '{ "severities": { "allow-without-effect": "off" } }';

  it('that of the folder, and the summary says so; one below is reported and lowers nothing', async () => {
    write('valve.rebuild', warned);
    write('handtight.json', raised);
    write('sub/handtight.json', off);
    const { status, stdout } = await handtight('check');
    expect(status).toBe(1);
    expect(stdout).toContain('error  allow-without-effect');
    expect(stdout).toContain(
      'sub/handtight.json:1:1  warning  settings-not-read\n  This settings file is not read: only the one at the top of the workspace counts. Put what you need\n  into handtight.json, and delete this one.\n\n2 files',
    );
    expect(stdout).toContain('\nhandtight.json changes the severity of 1 finding or turns it off.\n');
    // Run from a folder below, the nearest above is in force.
    rmSync(join(folder, 'sub/handtight.json'));
    const below = await command(join(folder, 'sub'), 'check', '..');
    expect(below.status).toBe(1);
    expect(below.stdout.replaceAll('\n  ', ' ')).toContain(
      `${folder}/handtight.json changes the severity of 1 finding`,
    );
  });

  it('and says what is not read: neither checked nor printed, and no name of it is seen, unless it is named', async () => {
    write('valve.rebuild', valve);
    write('archive/valve.rebuild', valve);
    expect((await handtight('check')).stdout).toContain('duplicate-name');
    write('handtight.json', '{ "exclude": ["archive/"] }');
    expect(await handtight('check')).toMatchObject({ status: 0, stdout: '2 files checked: nothing found.\n' });
    expect((await handtight('print', 'rebuild-valve', '--format', 'html')).status).toBe(0);
    expect((await handtight('check', 'archive')).stdout).toContain('2 files checked');
    // Run below it, it is in force too.
    write('sub/archive/other.rebuild', valve);
    expect((await command(join(folder, 'sub'), 'check')).status).toBe(2);
  });

  it.each([
    [
      'no JSON',
      '{ "severities": ',
      /handtight\.json:1:17 .*cannot be read here \(value expected\), so none of it is used/u,
    ],
    ['empty', '', /handtight\.json:1:1 .*so none of it is used/u],
    ['no object', '[7]', /handtight\.json:1:1 .*Settings are written like/u],
    ['of a wrong type', '{ "severities": [] }', /handtight\.json:1:17 .*Settings are written like/u],
    ['UTF-16', Buffer.from(`\uFEFF${off}`, 'utf16le'), /not text in UTF-8, so none of it is used\. Save it as UTF-8/u],
    ['ten megabytes', Buffer.alloc(10_000_000, ' '), /None of these settings is used\. This file has 10 MB/u],
    ['a folder', null, /None of these settings is used\. This is a folder, not a file/u],
  ])('that is %s is reported, and nothing prints as if there were none', async (_, text, says) => {
    if (text === null) mkdirSync(join(folder, 'handtight.json'));
    else write('handtight.json', text);
    const { status, stdout } = await handtight('check', 'valve.rebuild');
    expect(status).toBe(1);
    expect(stdout.replaceAll(/\n {2}(?=\S)/gu, ' ')).toMatch(says);
    expect(await handtight('print', 'rebuild-valve', '--format', 'html', '--to', 'a')).toEqual({
      status: 1,
      stdout: '',
      stderr:
        'rebuild-valve is not printed: it has 1 error. Run npx handtight check handtight.json to see it, or print it with --draft, which marks every page.\n',
    });
    expect(await handtight('check', 'handtight.json')).toMatchObject({ status: text === null ? 2 : 1 });
    expect(await handtight('print', 'rebuild-valve', '--draft', '--format', 'html', '--to', 'a')).toMatchObject({
      status: 0,
    });
  });

  it('with a byte order mark is read', async () => {
    write('valve.rebuild', warned);
    write('handtight.json', `\uFEFF${off}`);
    expect((await handtight('check')).stdout).toMatch(
      /^2 files checked: nothing found\.\nhandtight\.json changes the severity of 1 finding /u,
    );
  });
});

describe('a text that would steer what shows it', () => {
  const evil = '\u001B]0;owned\u0007 \u202E::set-output name=a::b%0A::error::x ##[group]y';
  const commands: readonly (readonly string[])[] = [
    ['check'],
    ['check', '--format', 'json'],
    ['check', '--format', 'sarif'],
    ['check', '--format', 'github'],
    ['print', '.', '--draft', '--format', 'html'],
    ['print', evil],
    ['replay', 'rebuild-valve'],
    ['replay', 'rebuild-valve', '--format', 'json'],
    ['specs', 'rebuild-valve'],
    ['specs', 'rebuild-valve', '--format', 'json'],
    ['specs', 'rebuild-valve', '--format', 'html'],
    ['shim', '7'],
    ['match', '7'],
    ['rate', 'rebuild-valve'],
    ['certificate', '7'],
    ['certificate', evil],
    ['work-out', evil],
    ['work-out', 'shim-rate', evil],
    ['explain', evil],
    ['check', '--format', evil],
    ['check', evil],
  ];

  beforeEach(() => {
    const file = posix ? `::error::${evil}.rebuild` : 'evil.rebuild';
    rmSync(join(folder, 'valve.rebuild'));
    write(
      file.replaceAll('/', '-'),
      valve
        .replace('"Relief valve"', `"${evil}"`)
        .replace('"Plug torque"', `"${evil}"`)
        .replace('"My own figure"', `"${evil}"`)
        .replace('receive', `receive  do "::error::${evil}"`)
        .replace('stage strip "', `stage strip "${evil}`),
    );
    write('job.rebuild', job(`7 "${evil}"`).replace('unknown', `unknown serial "${evil}"`));
  });

  it.each(commands.map((args) => [args.join(' ').replace(evil, 'EVIL'), args] as const))('%s', async (_, args) => {
    const { stdout, stderr } = await handtight(...args);
    const said = stdout + stderr;
    expect(said).not.toBe('');
    expect(said).not.toMatch(/[\0-\u0008\u000B-\u001F\u007F-\u009F\u202E]/u);
    expect(said).not.toMatch(/##\[/u);
    // Those of --format github are the command's own.
    const own = args.includes('github') ? /^::(error|warning) file=[^:]*::[^\n]*$/gmu : /(?!)/u;
    expect(said.replace(own, '')).not.toMatch(/^\s*::/mu);
  });

  it('is reported at its place', async () => {
    const { stdout } = await handtight('check', '--format', 'json');
    const { findings: diagnostics } = checkReport.parse(JSON.parse(stdout));
    const line = valve.split('\n').findIndex((one) => one.includes('"Relief valve"'));
    expect(
      diagnostics
        .filter(({ range }) => range.start.line === line)
        .map(({ range, message }) => `${range.start.character} ${/U\+\w+/u.exec(message)}`),
    ).toEqual(['14 U+001B', '23 U+0007', '25 U+202E']);
  });
});

describe('files of sheets', () => {
  it('are never the same for two, however long or alike the names', async () => {
    const long = 'x'.repeat(150);
    write(
      'jobs.rebuild',
      ['"A/1"', '"a-1"', '"A-1"', long, `${long}y`, 'CON', 'con', 'é', 'e\u0301']
        .map((name) => job(name.startsWith('"') ? name : `"${name}"`))
        .join(''),
    );
    expect((await handtight('print', 'jobs.rebuild', '--format', 'html', '--to', 'a')).status).toBe(0);
    const names = readdirSync(join(folder, 'a'));
    expect(new Set(names.map((name) => name.normalize('NFC').toLowerCase())).size).toBe(9);
    // One at a time they go into the same files.
    for (const name of ['A/1', 'a-1', 'A-1', `${long}y`])
      expect((await handtight('print', name, '--format', 'html', '--to', 'a')).status).toBe(0);
    expect(readdirSync(join(folder, 'a'))).toEqual(names);
    // A name that nobody shares has no digits.
    write('jobs.rebuild', job('"A/1"'));
    expect((await handtight('print', 'A/1', '--format', 'html', '--to', 'b')).stdout).toBe('printed  b/job-A-1.html\n');
    // A draft of a long name does not take the place of the sheet.
    write('jobs.rebuild', job(`"${long}"`));
    for (const more of [[], ['--draft']])
      expect((await handtight('print', long, '--format', 'html', '--to', 'c', ...more)).status).toBe(0);
    expect(readdirSync(join(folder, 'c'))).toHaveLength(2);
  });
});

describe('where nothing can be written', () => {
  it.runIf(posix)('a folder without permission, and a file that is read-only', () => {
    mkdirSync(join(folder, 'shut'));
    mkdirSync(join(folder, 'open'));
    write('open/job-7.html', 'signed');
    write('jobs.rebuild', job('7'));
    for (const at of [top, folder]) chmodSync(at, 0o755);
    chmodSync(join(folder, 'shut'), 0o555);
    chmodSync(join(folder, 'open'), 0o777);
    chmodSync(join(folder, 'open/job-7.html'), 0o444);
    for (const to of ['shut', 'open'])
      expect(started(['print', '7', '--format', 'html', '--to', to], other)).toMatchObject({
        status: 2,
        stdout: '',
        stderr: expect.stringMatching(/^handtight: Cannot write \w+\/job-7\.html: no permission\. [^\n]*\n$/u),
      });
    expect(readdirSync(join(folder, 'shut'))).toEqual([]);
    expect(readdirSync(join(folder, 'open'))).toEqual(['job-7.html']);
    expect(readFileSync(join(folder, 'open/job-7.html'), 'utf8')).toBe('signed');
  });

  it.runIf(existsSync('/dev/full'))('a full disk, for a file and for the answer itself', () => {
    expect(started(['specs', 'rebuild-valve', '--out', '/dev/full'])).toMatchObject({
      status: 2,
      stderr: 'handtight: Cannot write /dev/full: the disk is full. Make room, or give another folder with --out.\n',
    });
    const shell = (line: string) => spawnSync('sh', ['-c', line], { cwd: folder, encoding: 'utf8' });
    expect(shell(`"${process.execPath}" "${program}" explain > /dev/full`)).toMatchObject({
      status: 2,
      stderr: 'handtight: The answer could not be written: the disk that it goes to is full.\n',
    });
    expect(shell(`"${process.execPath}" "${program}" nothing 2> /dev/full`)).toMatchObject({ status: 2, stdout: '' });
  });

  it.runIf(posix)('a reader that goes away: no trace, no error', () => {
    const line = `"${process.execPath}" "${program}" replay rebuild-valve --format json | head -1`;
    expect(spawnSync('bash', ['-c', `set -o pipefail; ${line}`], { cwd: folder, encoding: 'utf8' })).toMatchObject({
      status: 0,
      stdout: '{\n',
      stderr: '',
    });
  });

  it.runIf(posix)('killed while it prints, it leaves whole files only', async () => {
    write('jobs.rebuild', Array.from({ length: 60 }, (_, index) => job(`8${index}`)).join(''));
    const child = spawn(process.execPath, [program, 'print', 'jobs.rebuild', '--to', 'a'], { cwd: folder });
    child.stdout.once('data', () => setTimeout(() => child.kill('SIGKILL'), 70));
    await once(child, 'close');
    const sheets = readdirSync(join(folder, 'a')).filter((name) => !name.startsWith('.'));
    expect(sheets.length).toBeGreaterThan(0);
    for (const name of sheets)
      expect(
        readFileSync(join(folder, 'a', name))
          .subarray(-7)
          .toString(),
      ).toMatch(/%%EOF/u);
  });
});

describe('a defect of the program', () => {
  it('ends with one sentence and its own exit code; the trace is for those who ask for it', async () => {
    const broken = vi.spyOn(Workspace.prototype, 'open').mockImplementation(() => {
      throw new TypeError('x is not a function\n    at nowhere');
    });
    try {
      const answer = await handtight('check');
      expect(answer).toEqual({
        status: 3,
        stdout: '',
        stderr: expect.stringMatching(
          /^handtight: This is a defect of Handtight [\d.]+, not a mistake of yours: x is not a function\. [^\n]*HANDTIGHT_TRACE=1[^\n]*\n$/u,
        ),
      });
      vi.stubEnv('HANDTIGHT_TRACE', '1');
      expect((await handtight('check')).stderr).toMatch(/\n\s+at .*surroundings\.test\.ts/u);
    } finally {
      vi.unstubAllEnvs();
      broken.mockRestore();
    }
  });
});

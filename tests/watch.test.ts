/** `check --watch` as a process, and what reads the report of the command: the problem matchers, and the hook of the README. */
import { type ChildProcess, execFileSync, spawn, spawnSync } from 'node:child_process';
import { chmodSync, cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { command } from './command.ts';
import { root } from './library.ts';

const program = join(root, 'out/handtight.mjs');
const manifest = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));

/** As `--format json` has it. */
interface Finding {
  readonly rule: string;
  readonly severity: string;
  readonly file: string;
  readonly range: { readonly start: { readonly line: number; readonly character: number } };
}

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'handtight-watch-'));
  for (const name of ['clean.rebuild', 'shop.rebuild'])
    cpSync(join(root, 'tests/workbench/workspace', name), join(folder, name));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const clean = () => readFileSync(join(root, 'tests/workbench/workspace/clean.rebuild'), 'utf8');
const write = (name: string, text: string) => writeFileSync(join(folder, name), text);
const flawed = () => clean().replace('slacken plug', 'slacken plugg');

describe('check --watch', () => {
  let child: ChildProcess;
  let said = '';
  /** Waits for what is said from here on. */
  const hear = (what: RegExp) => vi.waitUntil(() => what.test(said), { timeout: 30_000 });

  const begin = async (...args: string[]) => {
    said = '';
    child = spawn(process.execPath, [program, 'check', '--watch', ...args], {
      cwd: folder,
      env: { ...process.env, HANDTIGHT_CACHE: 'off' },
    });
    for (const stream of [child.stdout!, child.stderr!])
      stream.on('data', (chunk) => {
        said += String(chunk);
      });
    await hear(/Watching/u);
  };
  const change = async (act: () => void, expected: RegExp) => {
    said = '';
    act();
    await hear(expected);
    await hear(/Watching/u);
  };
  afterEach(() => {
    child.kill('SIGKILL');
  });

  it('checks again when a file changes, comes or goes, and ends by Ctrl-C', { timeout: 120_000 }, async () => {
    await begin();
    expect(said).toMatch(/^\d\d:\d\d:\d\d {2}checking\n2 files checked: nothing found\.\nWatching for changes/u);
    await change(() => write('clean.rebuild', flawed()), /No part is called plugg[\s\S]*1 error, 0 warnings/u);
    await change(() => write('clean.rebuild', clean()), /2 files checked: nothing found/u);
    // A shop counts for the procedures at it: what it breaks in another file is reported.
    const shop = readFileSync(join(folder, 'shop.rebuild'), 'utf8');
    await change(() => write('shop.rebuild', shop.replace('TW-80', 'TW-81')), /clean\.rebuild:\d+:\d+ {2}error/u);
    await change(() => write('shop.rebuild', shop), /nothing found/u);
    mkdirSync(join(folder, 'more'));
    await change(() => write('more/new.rebuild', 'procedur'), /more\/new\.rebuild:1:1 {2}error[\s\S]*3 files checked/u);
    await change(() => rmSync(join(folder, 'more'), { recursive: true }), /2 files checked: nothing found/u);
    // Settings count at once.
    await change(() => write('handtight.json', '{ "exclud": [] }'), /handtight\.json:1:\d+ {2}error/u);

    const ended = new Promise((resolve) => child.once('exit', (_, signal) => resolve(signal)));
    child.kill('SIGINT');
    expect(await ended).toBe('SIGINT');
    expect(said).not.toMatch(/Error|\u001b/u);
  });

  it('waits for a file that was named and is gone', { timeout: 60_000 }, async () => {
    await begin('clean.rebuild');
    await change(() => rmSync(join(folder, 'clean.rebuild')), /clean\.rebuild is not there/u);
    await change(() => write('clean.rebuild', flawed()), /1 error/u);
  });

  it('is for a person: with a form for programs, or with fixes, it is refused', async () => {
    for (const other of [['--format', 'json'], ['--fix'], ['--max-warnings', '3']]) {
      const { status, stderr } = await command(folder, 'check', '--watch', ...other);
      expect(status).toBe(2);
      expect(stderr).toMatch(/cannot be used with/u);
    }
  });
});

describe('the problem matchers', () => {
  const [check, watch] = manifest.contributes.problemMatchers;
  const [head, message] = (check.pattern as { regexp: string }[]).map(({ regexp }) => new RegExp(regexp, 'u'));

  it('read each finding of the report: file, place, severity, rule and message', async () => {
    write('clean.rebuild', flawed().replace('torque plug to plug-fit', 'tighten plug'));
    const { stdout } = await command(folder, 'check', '--no-cache');
    const report = JSON.parse((await command(folder, 'check', '--no-cache', '--format', 'json')).stdout);
    const lines = stdout.split('\n');
    const found = lines.flatMap((line, index) => {
      const at = head!.exec(line);
      return at === null ? [] : [[...at.slice(1), message!.exec(lines[index + 1]!)?.[1]]];
    });
    expect(found.length).toBeGreaterThan(1);
    expect(found.map(([file, line, column, severity, rule]) => [file, line, column, severity, rule])).toEqual(
      report.findings.map((one: Finding) => [
        one.file,
        String(one.range.start.line + 1),
        String(one.range.start.character + 1),
        one.severity,
        one.rule,
      ]),
    );
    expect(found.every(([, , , , , text]) => text !== undefined && text.length > 10)).toBe(true);
  });

  it('know when a watch begins and ends a check', () => {
    const { beginsPattern, endsPattern } = watch.background;
    expect('08:05:59  checking').toMatch(new RegExp(beginsPattern, 'u'));
    const source = readFileSync(join(root, 'server/cli/watch.ts'), 'utf8');
    expect(source).toContain(endsPattern.replace('^', ''));
    expect(watch.base).toBe(`$${check.name}`);
  });
});

describe.skipIf(process.platform === 'win32' || spawnSync('git', ['--version']).status !== 0)('the hook', () => {
  const recipe = /`\.git\/hooks\/pre-commit`[\s\S]*?```sh\n([\s\S]*?)```/u.exec(
    readFileSync(join(root, 'README.md'), 'utf8'),
  )![1]!;
  const git = (...args: string[]) =>
    spawnSync('git', ['-c', 'user.name=Lead', '-c', 'user.email=lead@example.org', ...args], {
      cwd: folder,
      encoding: 'utf8',
    });

  it('refuses what would be committed with errors, and looks at nothing else', { timeout: 120_000 }, () => {
    execFileSync('git', ['init', '--quiet', folder]);
    writeFileSync(join(folder, '.git/hooks/pre-commit'), recipe);
    chmodSync(join(folder, '.git/hooks/pre-commit'), 0o755);
    mkdirSync(join(folder, 'node_modules/.bin'), { recursive: true });
    symlinkSync(program, join(folder, 'node_modules/.bin/handtight'));
    chmodSync(program, 0o755);
    write('clean.rebuild', flawed());
    git('add', '*.rebuild');
    const refused = git('commit', '-m', 'First');
    expect(refused.status).toBe(1);
    expect(refused.stdout + refused.stderr).toContain('No part is called plugg');

    write('clean.rebuild', clean());
    git('add', '*.rebuild');
    write('clean.rebuild', flawed());
    expect(git('commit', '-m', 'First').status).toBe(0);

    write('notes.txt', 'Nothing of Handtight');
    git('add', 'notes.txt');
    const other = git('commit', '-m', 'Notes');
    expect(other.status).toBe(0);
    expect(other.stdout).not.toContain('checked');
  });
});

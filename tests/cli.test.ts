/**
 * The command as a shop runs it: its exit codes, what it writes and what it refuses. Most calls are in this process, since a
 * start of its own costs each half a second; the built program must then answer the same.
 */
import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import {
  chmodSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { checkReport } from '../server/cli/check-schema.ts';
import { specsReport } from '../server/cli/specs-schema.ts';
import { type Answer, command } from './command.ts';
import { root } from './library.ts';

const program = join(root, 'out/handtight.mjs');
const folder = mkdtempSync(join(tmpdir(), 'handtight-'));
const first = readFileSync(join(root, 'procedures/first/first.rebuild'), 'utf8');
const flawed = first.replace(/\n\s+torque [^\n]*/u, '\n    torque plug');

beforeAll(() => {
  if (!existsSync(program)) throw new Error('The command is not built: run npm run build.');
  mkdirSync(join(folder, 'good'));
  mkdirSync(join(folder, 'bad'));
  mkdirSync(join(folder, 'empty'));
  writeFileSync(join(folder, 'good/first.rebuild'), first);
  writeFileSync(join(folder, 'bad/flawed.rebuild'), flawed);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const handtight = (...args: string[]) => command(folder, ...args);
/** The built program in a process of its own. */
function started(...args: string[]): Answer {
  const { status, stdout, stderr } = spawnSync(process.execPath, [program, ...args], { cwd: folder, encoding: 'utf8' });
  return { status: status!, stdout, stderr };
}

const nameOf = (text: string) => /procedure (\S+)/u.exec(text)![1]!;

describe('the built program', () => {
  const name = nameOf(first);

  it.each([
    [0, ['check', 'good']],
    [1, ['check', 'bad', '--format', 'json']],
    [2, ['check', 'nowhere']],
    [2, ['chekc']],
    [0, ['explain', 'left-hand-tight']],
    [0, ['specs', name, '--workspace', 'good', '--format', 'html']],
  ])('ends with %i and says what it says in this process: %j', async (status, args) => {
    const answer = started(...args);
    expect(answer.status).toBe(status);
    expect(answer).toEqual(await handtight(...args));
  });

  it('prints the same bytes, with its own fonts', async () => {
    const print = ['print', name, '--workspace', 'good', '--format', 'pdf,html', '--to'];
    expect(started(...print, 'built')).toMatchObject({ status: 0, stderr: '' });
    await handtight(...print, 'source');
    const files = readdirSync(join(folder, 'built'));
    expect(files).toHaveLength(2);
    for (const file of files)
      expect(readFileSync(join(folder, 'built', file)).equals(readFileSync(join(folder, 'source', file)))).toBe(true);
  });
});

describe('check', () => {
  it('ends with 0 where nothing is found, 1 with findings, 2 where it cannot read', async () => {
    expect(await handtight('check', 'good')).toMatchObject({ status: 0, stdout: '1 file checked: nothing found.\n' });
    expect((await handtight('check', 'bad')).status).toBe(1);
    expect(await handtight('check', 'nowhere')).toMatchObject({
      status: 2,
      stderr: 'handtight: nowhere is not there. Check the spelling, or give a folder that has .rebuild files in it.\n',
    });
    expect((await handtight('check', 'empty')).status).toBe(2);
    expect((await handtight('chekc')).status).toBe(2);
    expect((await handtight('check', '--format', 'xml')).status).toBe(2);
  });

  it('shows the line with the place marked', async () => {
    const { stdout } = await handtight('check', 'bad');
    expect(stdout).toMatch(/bad\/flawed\.rebuild:\d+:\d+ {2}error {2}torque-missing {2}step \d+\.\d+/u);
    expect(stdout).toMatch(/> +\d+ \| +torque plug\n +\| +\^{11}\n/u);
  });

  it('writes JSON that its schema takes, counting from zero', async () => {
    const report = checkReport.parse(JSON.parse((await handtight('check', '--format', 'json', 'bad')).stdout));
    expect(report.files).toEqual(['bad/flawed.rebuild']);
    const diagnostic = report.findings.find(({ rule }) => rule === 'torque-missing')!;
    expect(
      flawed
        .split('\n')
        [diagnostic.range.start.line]!.slice(diagnostic.range.start.character, diagnostic.range.end.character),
    ).toBe('torque plug');
    expect(diagnostic).toMatchObject({
      why: 'the bench hand would have to guess.',
      help: expect.stringMatching(/^Write /u),
    });
    expect(diagnostic.message).toMatch(/^No torque is given for the .*\.$/u);
  });

  it('writes SARIF 2.1.0 and the commands of GitHub Actions', async () => {
    const sarif = JSON.parse((await handtight('check', '--format', 'sarif', 'bad')).stdout);
    expect(sarif).toMatchObject({ version: '2.1.0', runs: [{ tool: { driver: { name: 'handtight' } } }] });
    const [run] = sarif.runs;
    const { message, properties } = run.results.find(({ ruleId }: { ruleId: string }) => ruleId === 'torque-missing');
    expect(message.text).toBe(`${properties.message.slice(0, -1)}: ${properties.why} ${properties.help}`);
    for (const { ruleId, ruleIndex } of run.results) expect(run.tool.driver.rules[ruleIndex].id).toBe(ruleId);
    expect((await handtight('check', '--format', 'github', 'bad')).stdout).toMatch(
      /^::error file=bad\/flawed\.rebuild,line=\d+,col=\d+,endLine=\d+,endColumn=\d+,title=[a-z-]+::/mu,
    );
  });

  it('counts warnings against --max-warnings', async () => {
    writeFileSync(
      join(folder, 'warned.rebuild'),
      first.replace(/\n(\s+)sign-off/u, '\n$1sign-off by "x" allow no-sign-off because "tried"\n$1sign-off'),
    );
    expect(await handtight('check', 'warned.rebuild', '--workspace', 'warned.rebuild')).toMatchObject({ status: 0 });
    expect(
      await handtight('check', 'warned.rebuild', '--workspace', 'warned.rebuild', '--max-warnings', '0'),
    ).toMatchObject({
      status: 1,
    });
    expect((await handtight('check', 'warned.rebuild', '--max-warnings', 'few')).status).toBe(2);
  });

  it.each([
    ['nothing', Buffer.alloc(0), 0, /nothing found/u],
    ['UTF-16', Buffer.from(`\ufeff${first}`, 'utf16le'), 1, /Save it as UTF-8/u],
    ['Latin-1', Buffer.from(first.replace('±', '\u00b1'), 'latin1'), 1, /Save it as\s+UTF-8/u],
    ['binary data', Buffer.from([0x89, 0x50, 0, 0, 1, 2, 3, 0xff]), 1, /binary|UTF/u],
    [
      'ten megabytes',
      Buffer.alloc(10 * 1024 * 1024, 'fit shim\n'),
      1,
      /Split\s+the\s+declarations\s+over\s+several\s+files/u,
    ],
    ['CR LF', Buffer.from(first.replaceAll('\n', '\r\n')), 0, /nothing found/u],
    ['a decimal comma', Buffer.from(first.replace(/(\d+) N·m/u, '$1,50 N·m')), 1, /,50/u],
  ])('says what is wrong with a file of %s', async (_, content, status, words) => {
    writeFileSync(join(folder, 'odd.rebuild'), content);
    const answer = await handtight('check', 'odd.rebuild', '--workspace', 'odd.rebuild');
    expect(answer.stdout + answer.stderr).toMatch(words);
    expect(answer.status).toBe(status);
  });
});

describe('check --fix', () => {
  /** A word misspelled, and two steps left out that are found once it can be read. */
  const broken = first
    .replace('clamp body', 'clmp body')
    .replace('    slacken plug\n', '')
    .replace('    relieve\n    disconnect inlet\n    cap', '    disconnect inlet\n    cap');
  const at = (name: string) => join(folder, 'fix', name);
  const put = (name: string, content: string | Buffer) => {
    rmSync(join(folder, 'fix'), { recursive: true, force: true });
    mkdirSync(join(folder, 'fix'));
    writeFileSync(at(name), content);
  };

  it('makes the safe fixes until there are none, and says what it fixed', async () => {
    put('valve.rebuild', broken);
    expect(await handtight('check', 'fix', '--fix')).toEqual({
      status: 0,
      stdout: 'fixed 3 in fix/valve.rebuild\n\n1 file checked: nothing found.\n',
      stderr: '',
    });
    expect(readFileSync(at('valve.rebuild'), 'utf8')).toBe(first);
    expect((await handtight('check', 'fix', '--fix')).stdout).toBe('1 file checked: nothing found.\n');
    expect(readdirSync(join(folder, 'fix'))).toEqual(['valve.rebuild']);
  });

  it.each([
    ['\r\n', '\uFEFF'],
    ['\r', ''],
  ])('keeps the line ends %j, the byte order mark and the mode of a file', async (end, mark) => {
    const written = (text: string) => `${mark}${text.replaceAll('\n', end)}`;
    put('valve.rebuild', written(broken));
    chmodSync(at('valve.rebuild'), 0o640);
    expect((await handtight('check', 'fix', '--fix')).status).toBe(0);
    expect(readFileSync(at('valve.rebuild'), 'utf8')).toBe(written(first));
    if (process.platform !== 'win32') expect(statSync(at('valve.rebuild')).mode & 0o777).toBe(0o640);
  });

  it('reports what is left, in every format', async () => {
    put('valve.rebuild', broken.replace(' to plug-fit with TW-60', ''));
    const answer = await handtight('check', 'fix', '--fix', '--format', 'json');
    expect(answer.status).toBe(1);
    const report = checkReport.parse(JSON.parse(answer.stdout));
    expect(report.fixed).toEqual([{ file: 'fix/valve.rebuild', count: 3 }]);
    expect(report.findings.map(({ rule }) => rule)).toEqual(['torque-missing']);
  });

  it('shows with --dry-run what it would change, and changes nothing', async () => {
    put('valve.rebuild', broken);
    const { status, stdout, stderr } = await handtight('check', 'fix', '--dry-run');
    expect({ status, stderr }).toEqual({ status: 1, stderr: 'would fix 3 in fix/valve.rebuild\n' });
    expect(stdout.match(/^[-+].*$/gmu)).toEqual([
      '--- fix/valve.rebuild',
      '+++ fix/valve.rebuild',
      '-    clmp body',
      '+    clamp body',
      '+    slacken plug',
      '+    relieve',
    ]);
    expect(readFileSync(at('valve.rebuild'), 'utf8')).toBe(broken);
    expect((await handtight('check', 'fix', '--dry-run', '--format', 'json')).status).toBe(2);
    expect(await handtight('check', 'good', '--dry-run')).toEqual({
      status: 0,
      stdout: '',
      stderr: 'No safe fix is left to make.\n',
    });
  });

  it('touches only the files asked about', async () => {
    put('valve.rebuild', broken);
    expect((await handtight('check', 'good', '--workspace', 'fix', '--fix')).stdout).not.toContain('fixed');
    expect(readFileSync(at('valve.rebuild'), 'utf8')).toBe(broken);
  });

  it('corrects no name while a file cannot be read, and does not touch that file', async () => {
    put('valve.rebuild', broken.replace('clmp body', 'clamp body').replace('remove plug', 'remove plgu'));
    const wide = Buffer.from(broken, 'utf16le');
    writeFileSync(at('wide.rebuild'), wide);
    const before = readFileSync(at('valve.rebuild'));
    const { stderr, status } = await handtight('check', 'fix', '--fix');
    expect(stderr).toContain('As long as a file cannot be read, no name is corrected');
    expect(status).toBe(1);
    expect(readFileSync(at('valve.rebuild'))).toEqual(before);
    expect(readFileSync(at('wide.rebuild'))).toEqual(wide);
    rmSync(at('wide.rebuild'));
    expect((await handtight('check', 'fix', '--fix')).stdout).toContain('fixed 3 in fix/valve.rebuild');
  });
});

describe('print', () => {
  const name = nameOf(first);

  it('writes PDF and HTML into a folder that it makes, the same bytes each time', async () => {
    const answer = await handtight(
      'print',
      name,
      '--workspace',
      'good',
      '--format',
      'pdf,html',
      '--to',
      'sheets/today',
      '--paper',
      'letter',
    );
    expect(answer).toMatchObject({ status: 0, stderr: '' });
    const files = readdirSync(join(folder, 'sheets/today')).sort();
    expect(files.map((file) => file.split('.').pop())).toEqual(['html', 'pdf']);
    const pdf = readFileSync(join(folder, 'sheets/today', files[1]!));
    expect(pdf.subarray(0, 5).toString()).toBe('%PDF-');
    await handtight('print', name, '--workspace', 'good', '--to', 'sheets/again', '--paper', 'letter');
    expect(readFileSync(join(folder, 'sheets/again', files[1]!)).equals(pdf)).toBe(true);
  });

  it('refuses a procedure with errors; a draft has another name', async () => {
    const refused = await handtight('print', nameOf(flawed), '--workspace', 'bad', '--to', 'drafts');
    expect(refused.status).toBe(1);
    expect(refused.stderr).toMatch(/is not printed: it has \d+ error/u);
    expect(existsSync(join(folder, 'drafts'))).toBe(false);
    expect((await handtight('print', nameOf(flawed), '--workspace', 'bad', '--to', 'drafts', '--draft')).status).toBe(
      0,
    );
    expect(readdirSync(join(folder, 'drafts'))[0]).toMatch(/-draft\.pdf$/u);
  });

  it('answers an unknown name with the nearest, and a folder that cannot be made with what to do', async () => {
    expect(await handtight('print', `${name}x`, '--workspace', 'good')).toMatchObject({
      status: 2,
      stderr: expect.stringContaining(`Did you mean ${name}?`),
    });
    expect(await handtight('print', name, '--workspace', 'good', '--to', 'good/first.rebuild/x')).toMatchObject({
      status: 2,
      stderr: expect.stringMatching(/Cannot write .*--to/u),
    });
  });
});

describe('print of several', () => {
  const of = nameOf(first);
  const job = (number: string, more = '') => `job ${number} of ${of} {\n  unit 1 number unknown ${more}\n}\n`;
  const files: Record<string, string> = {
    'shop/procedures/valve.rebuild': first,
    'shop/jobs/a.rebuild': job('31') + job('32'),
    'shop/jobs/sub/b.rebuild': job('"33 late"'),
    'shop/mixed/good.rebuild': job('41') + job('42', 'serial 7 serial 8') + job('43'),
    'shop/mixed/lost.rebuild': `job 44 of ${of}x {\n  unit 1 number unknown\n}\n`,
    'shop/mixed/unread.rebuild': '\u0000\u0001',
    'shop/same/a.rebuild': job('"A/1"'),
    'shop/same/b.rebuild': job('"a-1"'),
    'shop/31/c.rebuild': job('51'),
    'shop/tools/only.rebuild': 'shop elsewhere {}\n',
  };
  beforeAll(() => {
    for (const [file, text] of Object.entries(files)) {
      mkdirSync(join(folder, file, '..'), { recursive: true });
      writeFileSync(join(folder, file), text);
    }
  });
  const run = (to: string, ...args: string[]) => command(join(folder, 'shop'), 'print', ...args, '--to', to);
  const made = (to: string) =>
    existsSync(join(folder, 'shop', to)) ? readdirSync(join(folder, 'shop', to)).sort() : [];

  it('prints the jobs of a folder and those below it, each once, and says how many', async () => {
    expect(await run('one', 'jobs', '32', 'jobs/a.rebuild')).toEqual({
      status: 0,
      stdout: 'printed  one/job-31.pdf\nprinted  one/job-32.pdf\nprinted  one/job-33 late.pdf\n',
      stderr: '3 printed\n',
    });
    expect(made('one')).toEqual(['job-31.pdf', 'job-32.pdf', 'job-33 late.pdf']);
  });

  it('prints the others where some have errors or cannot be read, and names these at the end', async () => {
    const { status, stdout, stderr } = await run('two', 'mixed');
    expect({ status, stdout }).toEqual({
      status: 1,
      stdout: 'printed  two/job-41.pdf\nprinted  two/job-43.pdf\n',
    });
    expect(stderr.trimEnd().split('\n')).toEqual([
      'job 44 is not printed: its procedure was not found, or could not be read. Run npx handtight check mixed/lost.rebuild to see why.',
      'mixed/unread.rebuild is not printed: nothing in it can be read. Run npx handtight check mixed/unread.rebuild to see why.',
      expect.stringMatching(
        /^job 42 is not printed: it has \d+ errors?\. Run npx handtight check mixed\/good\.rebuild to see /u,
      ),
      '2 printed, 3 not printed',
    ]);
  });

  it('takes a folder without jobs as its procedures, and one with nothing or no file as wrong use', async () => {
    expect(await run('three', 'procedures')).toMatchObject({
      status: 0,
      stderr: 'note  procedures declares no job: its procedures are printed as blank sheets.\n',
    });
    expect(made('three')).toHaveLength(1);
    expect(await run('x', 'tools')).toMatchObject({
      status: 2,
      stderr: expect.stringContaining('tools declares no job'),
    });
    expect(await run('x', '../empty')).toMatchObject({
      status: 2,
      stderr: 'handtight: There is no .rebuild file in ../empty. Give a folder that has jobs or procedures in it.\n',
    });
    expect(await run('x', 'jobbs')).toMatchObject({
      status: 2,
      stderr: expect.stringContaining('No job, procedure or folder is called jobbs.'),
    });
    expect(made('x')).toEqual([]);
  });

  it('takes a job before a folder of its name, and says so', async () => {
    expect(await run('four', '31')).toMatchObject({
      stdout: 'printed  four/job-31.pdf\n',
      stderr: 'note  31 is both a job and a folder: the job is used. Write ./31 for the folder.\n',
    });
    expect((await run('four', './31')).stdout).toBe('printed  four/job-51.pdf\n');
  });

  it('reads a folder outside the workspace, and the workspace for its names', async () => {
    expect((await run('five', '../outside')).status).toBe(2);
    mkdirSync(join(folder, 'outside'));
    writeFileSync(join(folder, 'outside/d.rebuild'), job('61'));
    expect(await run('five', '../outside')).toMatchObject({ status: 0, stdout: 'printed  five/job-61.pdf\n' });
    rmSync(join(folder, 'outside'), { recursive: true });
  });

  it('gives jobs whose files would be one, but for capitals and signs, files of their own', async () => {
    expect(await run('six', 'same')).toEqual({
      status: 0,
      stdout: expect.stringMatching(
        /^printed {2}six\/job-A-1-[0-9a-f]{8}\.pdf\nprinted {2}six\/job-a-1-[0-9a-f]{8}\.pdf\n$/u,
      ),
      stderr: '2 printed\n',
    });
    expect((await run('six', 'same', '--one-file', 'both')).status).toBe(0);
  });

  it('refuses the second of two jobs of one name, which would take the file of the first', async () => {
    writeFileSync(join(folder, 'shop/same/c.rebuild'), job('"A/1"'));
    const { status, stderr } = await run('twice', 'same', '--draft');
    rmSync(join(folder, 'shop/same/c.rebuild'));
    expect(status).toBe(1);
    expect(stderr).toMatch(
      /^job A\/1 \(same\/c\.rebuild\) is not printed: its file job-A-1-[0-9a-f]{8}-draft would be that of job A\/1 \(same\/a\.rebuild\)\. .*--one-file\.\n2 printed, 1 not printed\n$/u,
    );
  });

  it('puts all into one file of each format, the same bytes each time', async () => {
    const print = (to: string) => run(to, 'jobs', '--one-file', 'week 9.pdf', '--format', 'pdf,html');
    expect(await print('seven')).toEqual({
      status: 0,
      stdout: 'printed  seven/week 9.pdf\nprinted  seven/week 9.html\n',
      stderr: '3 printed\n',
    });
    expect(made('seven')).toEqual(['week 9.html', 'week 9.pdf']);
    await print('eight');
    for (const file of made('seven'))
      expect(
        readFileSync(join(folder, 'shop/eight', file)).equals(readFileSync(join(folder, 'shop/seven', file))),
      ).toBe(true);
    expect(/<title>.*<\/title>/u.exec(readFileSync(join(folder, 'shop/seven/week 9.html'), 'utf8'))?.[0]).toBe(
      '<title>Traveler: week 9</title>',
    );
    expect((await run('nine', '31', '--one-file', 'a', '--draft')).stdout).toBe('printed  nine/a-draft.pdf\n');
    expect(await run('nine', '31', '--one-file', 'a/b')).toMatchObject({
      status: 2,
      stderr: expect.stringContaining('Give its folder with --to'),
    });
  });

  it('stops where a file cannot be written; what was printed stays', async () => {
    mkdirSync(join(folder, 'shop/ten/job-32.pdf/x'), { recursive: true });
    expect(await run('ten', 'jobs')).toEqual({
      status: 2,
      stdout: 'printed  ten/job-31.pdf\n',
      stderr: expect.stringMatching(
        /^handtight: Cannot write ten\/job-32\.pdf: a folder of that name is in the way\. .* 1 of 3 printed\.\n$/u,
      ),
    });
    expect(made('ten')).toEqual(['job-31.pdf', 'job-32.pdf']);
  });

  it.skipIf(process.platform === 'win32').each(['SIGINT', 'SIGTERM'] as const)(
    'leaves only whole files when %s stops it, and says how many',
    async (signal) => {
      const many = join(folder, 'shop/many');
      mkdirSync(many, { recursive: true });
      writeFileSync(join(many, 'all.rebuild'), Array.from({ length: 200 }, (_, index) => job(`7${index}`)).join(''));
      const to = `stopped-${signal}`;
      const child = spawn(process.execPath, [program, 'print', 'many', '--to', to], { cwd: join(folder, 'shop') });
      let said = '';
      let printed = '';
      child.stderr.on('data', (text) => {
        said += text;
      });
      child.stdout.on('data', (text) => {
        if (printed === '') child.kill(signal);
        printed += text;
      });
      const [, ended] = await once(child, 'close');
      rmSync(many, { recursive: true });
      expect(ended).toBe(signal);
      const count = printed.trimEnd().split('\n').length;
      expect(said).toBe(`Stopped: ${count} of 200 printed.\n`);
      expect(made(to)).toHaveLength(count);
      expect(made(to).filter((name) => !name.endsWith('.pdf'))).toEqual([]);
      for (const name of made(to))
        expect(
          readFileSync(join(folder, 'shop', to, name))
            .subarray(-7)
            .toString(),
        ).toMatch(/%%EOF/u);
    },
  );
});

describe('replay', () => {
  it('shows each step with what it changes, and as JSON the state before and after', async () => {
    const name = nameOf(first);
    expect((await handtight('replay', name, '--workspace', 'good')).stdout).toMatch(/joint plug is: .* → .*torqued/u);
    const { flows } = JSON.parse((await handtight('replay', name, '--workspace', 'good', '--format', 'json')).stdout);
    const [step] = flows[0].steps;
    const connect = flows[0].steps.find((one: { key: string }) => one.key.includes('/connect'));
    expect(connect.cautions).toContainEqual({
      topic: 'injection',
      word: 'DANGER',
      because: 'the step says connect',
    });
    expect(step).toMatchObject({
      number: '1.1',
      file: 'good/first.rebuild',
      range: { start: { line: expect.any(Number) } },
    });
    expect(Object.keys(step.before)).toEqual(Object.keys(step.after));
  });
});

describe('specs', () => {
  const name = nameOf(first);
  const specs = (...args: string[]) => handtight('specs', ...args, '--workspace', 'good');

  it('lays out limits with source, tool and ratio', async () => {
    const { status, stdout, stderr } = await specs(name);
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    expect(stdout).toMatch(/^JOINTS$/mu);
    // 4 % of 40 N·m is 1.6; class 0.6 of 40 bar is 0.24.
    expect(stdout).toMatch(
      /^ {2}Torque +40 N·m\n {2}steps? [\dR., ]+36 to 44 N·m\n +TW-60 ±1\.6 N·m, ratio 2\.5:1\n/mu,
    );
    expect(stdout).toMatch(/18 to 22 bar\n.*20 bar ±2\n +PG-40 ±0\.24 bar, ratio 8\.3:1\n/u);
  });

  it('writes JSON that its schema takes, and HTML into a file', async () => {
    const report = specsReport.parse(JSON.parse((await specs(name, '--format', 'json')).stdout));
    expect(report).toMatchObject({ procedure: name, missing: 0, columns: [{ number: null }] });
    const [figure] = report.groups[0]!.items[0]!.figures;
    expect(first.split('\n')[figure!.cells[0]!.line.line]).toContain('spec plug-fit');
    expect(await specs(name, '--format', 'html', '--out', 'specs/valve.html')).toMatchObject({
      status: 0,
      stdout: 'written  specs/valve.html\n',
    });
    expect(readFileSync(join(folder, 'specs/valve.html'), 'utf8')).toMatch(/^<!doctype html>/u);
  });

  it('tells of errors, answers an unknown name with the nearest, and a place that cannot be written with what to do', async () => {
    expect(await handtight('specs', nameOf(flawed), '--workspace', 'bad')).toMatchObject({
      status: 0,
      stdout: expect.stringContaining('no torque given'),
      stderr: expect.stringMatching(/has \d+ errors?: /u),
    });
    expect(await specs(`${name}x`)).toMatchObject({
      status: 2,
      stderr: expect.stringContaining(`Did you mean ${name}?`),
    });
    expect(await specs(name, '--out', 'good/first.rebuild/x')).toMatchObject({
      status: 2,
      stderr: expect.stringMatching(/Cannot write .*--out/u),
    });
    expect((await specs(name, '--format', 'xml')).status).toBe(2);
  });
});

describe('shim and match', () => {
  const demo = ['--workspace', join(root, 'procedures')];

  it('say what to fit in each unit of a job, and in the whole set', async () => {
    expect(await handtight('shim', '2207', ...demo)).toMatchObject({
      status: 0,
      stdout: expect.stringMatching(/^unit 1 A-250 0411: opening 231.bar\. Fit /u),
    });
    expect((await handtight('match', '2207', ...demo)).stdout).toMatch(
      /spread 0\.1.bar expected .*: no choice opens fewer, and none of those has less/u,
    );
  });

  it('and rate fits what a shim brings, where the jobs have readings for it', async () => {
    expect(await handtight('rate', 'rebuild-one-spring', ...demo)).toMatchObject({
      status: 0,
      stdout: expect.stringMatching(/115.bar.per.mm.*\n {2}from 4 readings of 2 units, job 2198/u),
    });
    expect(await handtight('rate', 'rebuild-two-spring', ...demo)).toMatchObject({
      status: 0,
      stdout: expect.stringMatching(/too few readings/u),
    });
    expect((await handtight('rate', 'rebuild-one-sprin', ...demo)).stderr).toContain(
      'Did you mean rebuild-one-spring?',
    );
  });

  it('answer a number that is no job with the nearest', async () => {
    expect(await handtight('shim', '2270', ...demo)).toMatchObject({
      status: 2,
      stderr: expect.stringContaining('No job is called 2270. Did you mean 2207?'),
    });
  });
});

describe('certificate', () => {
  const demo = ['--workspace', join(root, 'procedures'), '--today', '2026-11-28'];

  it('prints that of a job that is done, in the languages and formats of print', async () => {
    expect(await handtight('certificate', '2198', ...demo, '--to', 'given', '--format', 'pdf,html')).toMatchObject({
      status: 0,
      stdout: 'printed  given/certificate-2198.pdf\nprinted  given/certificate-2198.html\n',
    });
    await handtight('certificate', '2198', ...demo, '--to', 'german', '--format', 'html', '--language', 'de');
    expect(readFileSync(join(folder, 'german/certificate-2198.html'), 'utf8')).toContain(
      'Instandsetzungsbescheinigung',
    );
  });

  it('takes language and paper from handtight.json, and leaves the word for the traveler alone', async () => {
    writeFileSync(
      join(folder, 'handtight.json'),
      '{ "sheet": { "word": "Job card", "language": "es", "paper": "letter" } }',
    );
    await handtight('certificate', '2198', ...demo, '--to', 'own', '--format', 'html');
    rmSync(join(folder, 'handtight.json'));
    const html = readFileSync(join(folder, 'own/certificate-2198.html'), 'utf8');
    expect(html).toContain('Certificado de reconstrucción');
    expect(html).not.toContain('Job card');
  });

  it('refuses one that is not, unit by unit, and prints it as a draft only', async () => {
    const { status, stderr } = await handtight('certificate', '2207', ...demo, '--to', 'refused');
    expect(status).toBe(1);
    expect(stderr).toMatch(/^Job 2207 is not certified\. What is missing:\n {2}unit 1 A-250 0411: Opening pressure: /u);
    expect(stderr).toContain('  unit 6 A-250 0416: Nothing is written down of it.');
    expect(existsSync(join(folder, 'refused'))).toBe(false);
    expect(await handtight('certificate', '2207', ...demo, '--to', 'refused', '--draft')).toMatchObject({
      status: 0,
      stdout: 'printed  refused/certificate-2207-draft.pdf\n',
    });
    expect(await handtight('certificate', '2189', ...demo)).toMatchObject({
      status: 2,
      stderr: expect.stringContaining('Did you mean 2198?'),
    });
  });

  it('knows the day: what is dated later is not certified', async () => {
    const on = (day: string) => handtight('certificate', '2198', demo[0]!, demo[1]!, '--today', day, '--to', 'dated');
    expect((await on('2026-10-16')).status).toBe(0);
    expect(await on('2026-10-15')).toMatchObject({
      status: 1,
      stderr: expect.stringContaining('Done on 2026-10-16, and today is 2026-10-15. Correct the date.'),
    });
    expect(await on('2026-13-45')).toMatchObject({
      status: 2,
      stderr: expect.stringContaining('2026-13-45 is not in the calendar. Write the date as year-month-day.'),
    });
  });

  it.each([
    ['job 7 received\n', 'The job in half.rebuild cannot be read. Line 1: '],
    ['job 7 of rebuild-one-spring\n', 'has 1 error'],
    ['job 7 of rebuild-one-sprng {\n}\n', 'No procedure is called rebuild-one-sprng.'],
    ['job 7 {\n  unit 1\n}\n', 'does not say which procedure it follows'],
    ['job 7 of rebuild-one-spring {\n  unit 1 number A-250 serial 1 {\n    opening 254 bar on', 'has 2 errors'],
    ['// nothing yet\n', 'half.rebuild declares no job that can be used.'],
  ])('of a job that is half written, %j, says what is wrong, and shows no trace', async (text, message) => {
    writeFileSync(join(folder, 'half.rebuild'), text);
    const { status, stderr } = await handtight('certificate', 'half.rebuild', ...demo);
    rmSync(join(folder, 'half.rebuild'));
    expect([1, 2]).toContain(status);
    expect(stderr).toContain(message);
    expect(stderr).not.toMatch(/^ +at |Error:|undefined/mu);
  });
});

describe('work-out', () => {
  it('lists calculations, says what one asks for, and works it out with its way', async () => {
    expect((await handtight('work-out')).stdout).toMatch(/^choose-shim +The shim that/mu);
    expect((await handtight('work-out', 'wrench-setting')).stdout).toContain(
      'For example: handtight work-out wrench-setting',
    );
    const made = await handtight('work-out', 'wrench-setting', 'torque=30 lbf·ft', 'wrench=12 in', 'adapter=6 in');
    expect(made).toMatchObject({ status: 0, stdout: expect.stringMatching(/setting 20.lbf·ft\n$/u) });
    expect(made.stdout).toContain('Source: TM 9-254');
  });

  it('answers a slip with the nearest, and figures that make no sense with what to do', async () => {
    expect(await handtight('work-out', 'chose-shim')).toMatchObject({
      status: 2,
      stderr: expect.stringContaining('Did you mean choose-shim?'),
    });
    expect(await handtight('work-out', 'shim-rate', 'stiffness=200 N/mm', 'guide=4 mm', 'seat=4 mm')).toMatchObject({
      status: 2,
      stderr: expect.stringContaining('no pressure would lift this needle'),
    });
  });
});

describe('explain', () => {
  it('prints the page of a rule, its version and its standards', async () => {
    const { status, stdout } = await handtight('explain', 'tool-out-of-range');
    expect(status).toBe(0);
    expect(stdout).toMatch(/^tool-out-of-range\n/u);
    expect(stdout).toMatch(/\nIn Handtight since \d+\.\d+\.\d+\. References: ISO 6789, EN 837-2\.\n$/u);
    expect((await handtight('explain', 'comes-back-different')).stdout).toMatch(
      /\nKnown problems\n\nThe unit is compared/u,
    );
  });

  it('prints the page of a rule, lists them, and answers a slip with the nearest', async () => {
    expect((await handtight('explain', 'left-hand-tight')).stdout).toMatch(/Why it matters at the bench/u);
    expect((await handtight('explain')).stdout).toMatch(/^left-hand-tight +error +/mu);
    expect(await handtight('explain', 'left-hand-tigt')).toMatchObject({
      status: 2,
      stderr: expect.stringContaining('left-hand-tight'),
    });
  });
});

describe('the language of messages', () => {
  const spoken = async (...args: string[]) => (await handtight('check', 'bad', ...args)).stdout;

  it('is the one that is chosen, else that of the workspace, else that of the machine', async () => {
    for (const name of ['LC_ALL', 'LC_MESSAGES', 'LANG']) vi.stubEnv(name, '');
    expect(await spoken()).toContain('No torque is given');
    vi.stubEnv('LANG', 'es_MX.UTF-8');
    expect(await spoken()).toContain('No se da par de apriete');
    vi.stubEnv('LC_ALL', 'C.UTF-8');
    expect(await spoken()).toContain('No torque is given');
    writeFileSync(join(folder, 'handtight.json'), '{ "messages": "de" }');
    expect((await handtight('check', 'bad')).stdout).toContain('ist kein Drehmoment angegeben');
    expect((await handtight('--messages', 'es', 'check', 'bad')).stdout).toContain('No se da par de apriete');
    rmSync(join(folder, 'handtight.json'));
    vi.unstubAllEnvs();
  });

  it('is the same in each form of the report, and a wrong one is refused', async () => {
    const { findings } = checkReport.parse(JSON.parse(await spoken('--format', 'json', '--messages', 'de')));
    expect(findings.map(({ message }) => message).join(' ')).toMatch(/ist|wird/u);
    expect((await handtight('check', 'bad', '--messages', 'fr')).status).toBe(2);
  });
});

/** Every command with arguments that are missing, wrong, doubled, empty or huge: the exit code, and a sentence that helps. */
import { copyFileSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { command } from './command.ts';
import { root } from './library.ts';

const folder = mkdtempSync(join(tmpdir(), 'handtight-arguments-'));
const huge = 'x'.repeat(100_000);
const long = 'y'.repeat(3000);

beforeAll(() => {
  copyFileSync(join(root, 'procedures/first/first.rebuild'), join(folder, 'valve.rebuild'));
  writeFileSync(join(folder, 'job.rebuild'), 'job 7 of rebuild-valve {\n  unit 1 number unknown\n}\n');
  writeFileSync(join(folder, 'notes.txt'), 'nothing\n');
  mkdirSync(join(folder, 'dist'));
  writeFileSync(join(folder, 'dist/handtight.json'), '{}');
  mkdirSync(join(folder, 'empty'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Arguments, exit code, and what the answer says on either stream. */
const table: readonly (readonly [string, readonly string[], number, RegExp])[] = [
  ['nothing', [], 2, /Usage: handtight/u],
  ['a wrong command', ['chekc'], 2, /unknown command 'chekc'.*\n.*Did you mean check\?/u],
  ['an unknown option', ['check', '--forma', 'json'], 2, /unknown option '--forma'/u],
  ['an option before any command', ['--format', 'json'], 2, /unknown option/u],
  ['help', ['--help'], 0, /Usage: handtight/u],
  ['help of a command', ['help', 'print'], 0, /Usage: handtight print/u],
  ['version', ['--version'], 0, /^\d+\.\d+\.\d+\n$/u],

  ['check, a path that is not there', ['check', 'nowhere'], 2, /nowhere is not there\. Check the spelling/u],
  ['check, below a file', ['check', 'valve.rebuild/x'], 2, /valve\.rebuild\/x is not there/u],
  ['check, a folder with nothing in it', ['check', 'empty'], 2, /There is no \.rebuild file in empty\. Give/u],
  ['check, a folder with settings only', ['check', 'dist'], 2, /There is no \.rebuild file in dist\. Give/u],
  ['check, a file of another kind', ['check', 'notes.txt'], 2, /notes\.txt is not a \.rebuild file\. Give/u],
  ['check, one of two not there', ['check', 'valve.rebuild', 'gone.rebuild'], 2, /gone\.rebuild is not there/u],
  ['check, the same twice', ['check', 'valve.rebuild', './valve.rebuild'], 0, /^1 file checked: nothing found/u],
  ['check, a folder and a file in it', ['check', '.', 'valve.rebuild'], 0, /^2 files checked/u],
  ['check, empty', ['check', ''], 2, /One of the arguments is empty/u],
  ['check, huge', ['check', huge], 2, /begins with x{40} has 100000 characters/u],
  ['check, a path too long', ['check', long], 2, /y{80}… cannot be read: its name is longer than the system allows/u],
  ['check, format of another kind', ['check', '--format', 'xml'], 2, /Allowed choices are text, json, sarif, github/u],
  ['check, format without a value', ['check', '--format'], 2, /argument missing/u],
  ['check, format twice: the last counts', ['check', '--format', 'xml', '--format', 'text'], 2, /Allowed choices/u],
  ['check, warnings below nothing', ['check', '--max-warnings', '-1'], 2, /Give a whole number/u],
  ['check, warnings in words', ['check', '--max-warnings', 'few'], 2, /Give a whole number/u],
  ['check, a workspace that is not there', ['check', '.', '--workspace', 'nowhere'], 2, /nowhere is not there/u],
  ['check, an empty workspace', ['check', '.', '--workspace', ''], 2, /One of the arguments is empty/u],

  ...['print', 'certificate', 'replay', 'specs', 'shim', 'match', 'rate'].flatMap(
    (name): (readonly [string, readonly string[], number, RegExp])[] => [
      [`${name}, nothing`, [name], 2, /missing required argument/u],
      [`${name}, empty`, [name, ''], 2, /One of the arguments is empty/u],
      [`${name}, huge`, [name, huge], 2, /has 100000 characters/u],
      [`${name}, a long name`, [name, long], 2, /No .* is called y{80}…\. There are: /u],
      [`${name}, an unknown name`, [name, 'nothing-like-it'], 2, /No .* is called nothing-like-it\. There are: /u],
      [`${name}, a file that is not there`, [name, 'gone.rebuild'], 2, /gone\.rebuild is not there/u],
      [`${name}, a workspace that is not there`, [name, '7', '--workspace', 'nowhere'], 2, /nowhere is not there/u],
      [`${name}, an unknown option`, [name, '7', '--frm', 'x'], 2, /unknown option '--frm'/u],
    ],
  ),
  ...['certificate', 'replay', 'specs', 'shim', 'match', 'rate'].map(
    (name) => [`${name}, two`, [name, '7', '8'], 2, /too many arguments/u] as const,
  ),
  ['shim, the name of a procedure', ['shim', 'rebuild-valve'], 2, /No job is called rebuild-valve\. There are: 7\./u],
  [
    'shim, a file without a job',
    ['shim', './valve.rebuild'],
    2,
    /valve\.rebuild declares no job that can be used.*There are: 7/u,
  ],
  ['replay, a file by another path', ['replay', './empty/../valve.rebuild'], 0, /unit clamped/u],
  ['replay, a near name', ['replay', 'rebuild-valv'], 2, /Did you mean rebuild-valve\?/u],
  ['print, a near name', ['print', 'rebuild-valv'], 2, /Did you mean rebuild-valve\?/u],
  ['print, one of two unknown: nothing prints', ['print', '7', '8'], 2, /No job, procedure or folder is called 8/u],
  ['print, formats of another kind', ['print', '7', '--format', 'pdf,doc'], 2, /Formats are pdf and html, not doc/u],
  ['print, an empty format', ['print', '7', '--format', ','], 2, /Formats are pdf and html/u],
  ['print, paper of another kind', ['print', '7', '--paper', 'a3'], 2, /Allowed choices are a4, letter/u],
  ['print, a language that is not there', ['print', '7', '--language', 'fr'], 2, /Allowed choices are en, es, de/u],
  ['print, a file where the folder goes', ['print', '7', '--to', 'notes.txt'], 2, /Cannot write notes\.txt\/.*--to/u],
  ['print, a folder too long', ['print', '7', '--to', long], 2, /the name is too long/u],
  ['print, one file with a folder', ['print', '7', '--one-file', 'a/b'], 2, /Give its folder with --to/u],
  ['print, one file of blanks', ['print', '7', '--one-file', ' '], 2, /Give the name of a file/u],
  [
    'specs, out to a folder',
    ['specs', 'rebuild-valve', '--out', 'empty'],
    2,
    /a folder of that name is in the way.*--out/u,
  ],
  ['specs, format of another kind', ['specs', 'rebuild-valve', '--format', 'csv'], 2, /Allowed choices/u],

  ['work-out, an unknown calculation', ['work-out', 'shim-rat'], 2, /Did you mean shim-rate\?/u],
  ['work-out, a long name', ['work-out', long], 2, /No calculation is called y{80}…\./u],
  ['work-out, nothing: the list', ['work-out'], 0, /^choose-shim/u],
  ['work-out, no figure: what it asks for', ['work-out', 'shim-rate'], 0, /For example: handtight work-out/u],
  ['work-out, a figure without a name', ['work-out', 'shim-rate', '6 mm'], 2, /6 mm/u],
  ['work-out, an unknown figure', ['work-out', 'shim-rate', 'colour=6 mm'], 2, /colour/u],
  ['work-out, a figure without a value', ['work-out', 'shim-rate', 'guide='], 2, /guide/u],
  ['work-out, empty', ['work-out', ''], 2, /One of the arguments is empty/u],
  ['explain, nothing: the list', ['explain'], 0, /^left-hand-tight +error /mu],
  ['explain, a near name', ['explain', 'left-hand-tigt'], 2, /Did you mean left-hand-tight\?/u],
  ['explain, a path', ['explain', '../../package'], 2, /No rule is called \.\.\/\.\.\/package/u],
  ['explain, a word of every object', ['explain', 'constructor'], 2, /No rule is called constructor/u],
  ['explain, the step of what is no procedure', ['explain', 'a', 'b'], 2, /No procedure is called a/u],
];

describe('the command', () => {
  it.each(table)('%s', async (_, args, status, says) => {
    const answer = await command(folder, ...args);
    const said = answer.stdout + answer.stderr;
    expect({ status: answer.status, said }).toEqual({ status, said: expect.stringMatching(says) });
    // A trace, or a value that was never there.
    expect(said).not.toMatch(/\n\s+at .*:\d+|undefined|\[object|defect of Handtight/u);
    // Output beside the answer is not part of it.
    if (status === 2) expect(answer.stdout).toBe('');
    expect(said.length).toBeLessThan(30_000);
  });
});

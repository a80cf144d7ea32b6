/** `handtight new`: from nothing to a first procedure. */
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { command } from './command.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'handtight-new-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const handtight = (...args: string[]) => command(folder, ...args);
const read = (file: string) => readFileSync(join(folder, file), 'utf8');

describe('handtight new', () => {
  it('alone lists what there is to begin from', async () => {
    const { status, stdout } = await handtight('new');
    expect(status).toBe(0);
    expect(stdout).toMatch(/^ {2}pintle +Injector, pintle nozzle/mu);
  });

  it('writes a procedure with the family and the shop of a sample into an empty folder', async () => {
    expect(await handtight('new', 'procedure', 'valve', '--name', 'my-valve')).toMatchObject({ status: 0, stderr: '' });
    expect(read('my-valve.rebuild').match(/^(?:shop|family|procedure) \S+/gmu)).toEqual([
      'shop my-bench',
      'family valve',
      'procedure my-valve',
    ]);
    const { stdout } = await handtight('check', '--format', 'json');
    const { findings } = JSON.parse(stdout) as { findings: { rule: string }[] };
    expect(findings.filter(({ rule }) => rule === 'blank-left').length).toBeGreaterThan(8);
  });

  it('takes the shop and the family of the folder where it has them', async () => {
    expect((await handtight('new', 'samples', 'mine')).status).toBe(0);
    expect(
      await handtight('new', 'procedure', 'pintle', '--workspace', 'mine', '--to', 'mine/p.rebuild'),
    ).toMatchObject({
      status: 0,
    });
    expect(read('mine/p.rebuild').match(/^(?:shop|family|procedure) \S+/gmu)).toEqual(['procedure rebuild-pintle']);
    expect(read('mine/p.rebuild')).toContain('test opening read pressure within opening');
  });

  it('asks for no figure that it is not to ask for', async () => {
    await handtight('new', 'procedure', 'pintle', '--reads', 'opening=pressure,back-leak=time');
    expect(read('rebuild-pintle.rebuild')).toContain('test back-leak read time within back-leak');
    expect(read('rebuild-pintle.rebuild')).toMatch(/spec back-leak +"Back leak" +time +… /u);
  });

  it.each([
    [
      ['procedur', 'pintle'],
      '“procedur” is nothing that can be begun: write new procedure, new family, new job or new samples. Did you mean procedure?',
    ],
    [['procedure', 'pintel'], 'No family is called pintel. Did you mean pintle?'],
    [['procedure', 'valve', '--reads', 'spray=pressure'], 'valve is not proven by spray. Its tests: opening.'],
    [
      ['procedure', 'valve', '--reads', 'opening=pressur'],
      'pressur is no kind of figure. Write it as opening=pressure.',
    ],
    [['procedure', 'valve', '--name', 'a b'], '“a b” is no name.'],
    [['procedure', 'valve', '--workspace', 'nowhere'], 'nowhere'],
    [['family', 'relief', '--parts', 'body'], 'A family has at least two parts.'],
    [['family', 'relief', '--parts', 'body,in'], '“in” is no name.'],
    [['family', 'relief'], '--parts'],
  ])('refuses %j', async (args, why) => {
    const { status, stderr } = await handtight('new', ...args);
    expect(status).toBe(2);
    expect(stderr).toContain(why);
  });

  it('overwrites nothing', async () => {
    writeFileSync(join(folder, 'rebuild-valve.rebuild'), 'mine');
    const { status, stderr } = await handtight('new', 'procedure', 'valve');
    expect(status).toBe(2);
    expect(stderr).toContain('rebuild-valve.rebuild is there already.');
    expect(read('rebuild-valve.rebuild')).toBe('mine');
    mkdirSync(join(folder, 'mine/first'), { recursive: true });
    writeFileSync(join(folder, 'mine/first/first.rebuild'), 'mine');
    expect((await handtight('new', 'samples', 'mine')).status).toBe(2);
    expect(read('mine/first/first.rebuild')).toBe('mine');
  });

  it('writes a family from the names of its parts', async () => {
    await handtight(
      'new',
      'family',
      'relief',
      '--parts',
      'body,ball,spring,plug',
      '--tests',
      'opening',
      '--title',
      'Relief valve',
    );
    expect(read('relief.rebuild')).toMatch(/^family relief "Relief valve" \{\n/u);
    expect((await handtight('new', 'procedure', 'relief')).status).toBe(0);
    expect(read('rebuild-relief.rebuild')).toContain('torque plug to plug-fit with …');
  });
});

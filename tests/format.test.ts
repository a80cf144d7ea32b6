/** `handtight format` as a shop runs it: what it writes, what it only says, and what it refuses. */
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeEach, expect, test } from 'vitest';
import { formatted } from '../language/ide/format/format.ts';
import { command } from './command.ts';
import { shopText } from './holder.ts';

const folder = mkdtempSync(join(tmpdir(), 'handtight-format-'));
const path = join(folder, 'shops/shop.rebuild');
const crooked = shopText.replace('  station strip', 'station   strip');

beforeEach(() => {
  rmSync(join(folder, 'shops'), { recursive: true, force: true });
  mkdirSync(join(folder, 'shops'));
  writeFileSync(path, crooked);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const format = (...args: string[]) => command(folder, 'format', ...args);

test('lays files out, says which, and finds nothing to do a second time', async () => {
  expect(await format('shops')).toEqual({ status: 0, stdout: 'laid out shops/shop.rebuild\n', stderr: '' });
  expect(readFileSync(path, 'utf8')).toBe(formatted(crooked));
  expect(await format('shops')).toEqual({ status: 0, stdout: 'The file is laid out.\n', stderr: '' });
});

test('--check says which are not, fails, and writes nothing', async () => {
  expect(await format('shops', '--check')).toEqual({
    status: 1,
    stdout: 'would lay out shops/shop.rebuild\n',
    stderr: '',
  });
  expect(readFileSync(path, 'utf8')).toBe(crooked);
});

test('leaves a file alone that cannot be read, says where, and lays out the others', async () => {
  const broken = 'shop other "Other" {\nstation a "A\n}\n';
  writeFileSync(join(folder, 'shops/other.rebuild'), broken);
  const { status, stdout, stderr } = await format('shops');
  expect(status).toBe(1);
  expect(stderr).toMatch(/^not laid out {2}shops\/other\.rebuild:2: .* Correct it, and run the command again\.\n$/u);
  expect(stdout).toBe('laid out shops/shop.rebuild\n');
  expect(readFileSync(join(folder, 'shops/other.rebuild'), 'utf8')).toBe(broken);
});

test('keeps line ends and the mark at the beginning', async () => {
  writeFileSync(path, `\ufeff${crooked.replaceAll('\n', '\r\n')}`);
  await format('shops');
  expect(readFileSync(path, 'utf8')).toBe(`\ufeff${formatted(crooked).replaceAll('\n', '\r\n')}`);
});

import { expect, test } from 'vitest';
import { checkFiles } from '../../language/db/workspace.ts';
import { fullMessage } from '../../language/model/diagnostic.ts';
import { jobFolder } from './workload/jobs.ts';
import {
  editedPath,
  longPath,
  longProcedure,
  manyProcedures,
  oneTryRepairs,
  slipRule,
  type WorkloadFile,
  withSlip,
  withSlips,
} from './workload/procedures.ts';
import { jsonText, yamlText } from './workload/records.ts';

const checked = (files: readonly WorkloadFile[]) => checkFiles(files.map(({ path, text }) => ({ uri: path, text })));
const findings = (files: readonly WorkloadFile[]) =>
  checked(files).diagnostics.map((one) => `${one.source.file}: ${one.rule}: ${fullMessage(one)}`);

test.each([
  ['16 procedures of three families and more', manyProcedures(16)],
  ['a procedure of 500 steps', longProcedure(500)],
  ['a procedure with 3 one-try repairs more', oneTryRepairs(3)],
  ['a folder of 20 jobs', jobFolder(20)],
])('Nothing is found in %s', (_what, files) => {
  expect(findings(files)).toEqual([]);
  expect(new Set(files.map(({ path }) => path)).size).toBe(files.length);
});

test('The workloads have what they are named for', () => {
  expect(checked(manyProcedures(16)).procedures).toHaveLength(16);
  expect(checked(jobFolder(20)).jobs).toHaveLength(20);
  for (const steps of [60, 500, 2000]) {
    const { stages } = checked(longProcedure(steps)).procedures[0]!.procedure;
    const count = stages.reduce((sum, stage) => sum + stage.steps.length, 0);
    expect(Math.abs(count / steps - 1)).toBeLessThan(0.1);
  }
});

test.each([
  [editedPath, manyProcedures(3)],
  [longPath, longProcedure(500)],
])('The slip in %s costs one finding, beyond the line that is edited', (path, files) => {
  const text = files.find((file) => file.path === path)!.text;
  const { diagnostics } = checked(files.map((file) => (file.path === path ? { path, text: withSlip(text) } : file)));
  expect(diagnostics.map(({ rule, source }) => [source.file, rule])).toEqual([[path, slipRule]]);
  const differs = text.split('\n').findIndex((line, index) => line !== withSlip(text).split('\n')[index]);
  expect(diagnostics[0]!.source.range.start.line).toBeGreaterThan(differs);
});

test('Each procedure with a slip is found, and the edited one has none', () => {
  const { files, wrong } = withSlips(manyProcedures(7));
  expect(wrong).not.toContain(editedPath);
  expect(wrong.length).toBeGreaterThan(3);
  expect(
    checked(files)
      .diagnostics.map(({ source }) => source.file)
      .sort(),
  ).toEqual([...wrong].sort());
});

test('The texts of the peers have the bytes that they are to have', () => {
  for (const bytes of [2000, 7400, 100_001]) {
    expect(Buffer.byteLength(jsonText(bytes))).toBe(bytes);
    expect(Buffer.byteLength(yamlText(bytes))).toBe(bytes);
    expect(JSON.parse(jsonText(bytes))).toMatchObject({ procedure: 'rebuild' });
  }
});

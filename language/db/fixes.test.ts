import { describe, expect, it } from 'vitest';
import type { Diagnostic } from '../model/diagnostic.ts';
import { fixFiles, mostRounds, safeFixes } from './fixes.ts';
import { type CheckResult, checkFiles, type SourceFile } from './workspace.ts';

const place = (start: number, end: number, file = 'a') => ({
  file,
  range: { start: { line: 0, character: start }, end: { line: 0, character: end } },
});
const diagnostic = (rule: string, start: number, end: number, safe = true): Diagnostic => ({
  rule,
  severity: 'error',
  message: rule,
  source: place(start, end),
  fix: { title: rule, safe, edits: [{ source: place(start, end), text: rule }] },
});
const titles = (diagnostics: readonly Diagnostic[]) => safeFixes(diagnostics, 'a').map(({ title }) => title);

describe('safe fixes of a file', () => {
  it('are those that are safe, stay in the file and do not overlap one before', () => {
    const elsewhere = {
      ...diagnostic('d', 9, 10),
      fix: { title: 'd', safe: true, edits: [{ source: place(9, 10, 'b'), text: '' }] },
    };
    expect(
      titles([
        diagnostic('a', 0, 3),
        diagnostic('b', 3, 5),
        diagnostic('c', 6, 8, false),
        elsewhere,
        diagnostic('e', 12, 13),
      ]),
    ).toEqual(['a', 'e']);
  });

  it('are those of what cannot be read first', () => {
    expect(titles([diagnostic('a', 0, 3), diagnostic('out-of-place', 6, 8)])).toEqual(['out-of-place']);
    expect(titles([diagnostic('a', 0, 3), diagnostic('out-of-place', 6, 8, false)])).toEqual([]);
  });
});

describe('fixing files', () => {
  it('ends, and says so, where each fix brings the next', () => {
    let checks = 0;
    const again = (files: readonly SourceFile[]): CheckResult => {
      checks++;
      return { ...checkFiles(files), diagnostics: [diagnostic(`${checks}`, 0, 1)] };
    };
    const files = [{ uri: 'a', text: 'x' }];
    const { isSettled, counts } = fixFiles({ files, result: again(files) }, again, () => true);
    expect(isSettled).toBe(false);
    expect(checks).toBe(mostRounds + 1);
    expect(counts).toEqual(new Map([['a', mostRounds]]));
  });

  it('leaves alone what is not wanted', () => {
    const files = [{ uri: 'a', text: 'x' }];
    const result = { ...checkFiles(files), diagnostics: [diagnostic('y', 0, 1)] };
    expect(fixFiles({ files, result }, checkFiles, () => false)).toMatchObject({ files, isSettled: true });
  });
});

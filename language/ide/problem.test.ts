import { existsSync } from 'node:fs';
import { expect, test } from 'vitest';
import { askedAt, edited } from '../../tests/holder.ts';
import { rules } from '../diagnostics/index.ts';
import { isUnnecessary, problemText, rulePage } from './problem.ts';

test('a problem is said with its step, and what to do', () => {
  const { snapshot } = askedAt(edited('    clamp body in "holding fixture"\n', ''));
  const problem = snapshot.result.diagnostics.find(({ rule }) => rule === 'not-clamped')!;
  expect(problemText(problem, 'en')).toMatch(
    /^Step \d+\.\d+: Nothing holds the unit while the nozzle nut is broken loose\. Clamp it first/u,
  );
  expect(isUnnecessary(problem)).toBe(false);
  expect(snapshot.result.diagnostics.filter(isUnnecessary).map(({ rule }) => rule)).toContain('spec-unused');
});

test('every rule has its page where it is said to be, and nothing else has', () => {
  const pages = new URL('../diagnostics/areas/', import.meta.url);
  const lost = rules.map(({ code }) => rulePage(code)!).filter((page) => !existsSync(new URL(page, pages)));
  expect(lost).toEqual([]);
  expect(rulePage('toString')).toBeNull();
});

import { expect, it } from 'vitest';
import { english } from '../say/say.ts';
import { bounds } from './bounds.ts';
import { nearest } from './nearest.ts';
import { parse } from './parse.ts';

const problems = (text: string) => parse(text).problems.map(({ message }) => english(message));
const family = (part: string) => `family f {\n  ${part}\n}\n`;

it('reads names and words up to their length, and cuts what is longer', () => {
  expect(problems(family(`part ${'n'.repeat(bounds.name)} "${'w'.repeat(bounds.words - 2)}"`))).toEqual([]);
  expect(problems(family(`part ${'n'.repeat(bounds.name + 1)} "P"`))).toEqual([
    'This name has 101 letters; at most 100 are read. Give it a shorter one, with the long one in quotes after it.',
  ]);
  const { ast, problems: found } = parse(family(`part p "${'w'.repeat(50_000)}"`));
  expect(found.map(({ message }) => english(message))).toEqual([
    'This text has 50002 letters; at most 5000 are read. Shorten it, or split it over several steps.',
  ]);
  expect(ast.declarations).toHaveLength(1);
});

it('reads a statement, its brackets and its blocks up to what somebody writes, and says where it is more', () => {
  const list = (length: number) => family(`always checked ${Array.from({ length }, () => 'p').join(', ')}`);
  expect(problems(list(900))).toEqual([]);
  expect(problems(list(20_000))).toEqual([
    'This statement has 40001 words and symbols; the longest that is read has 2000. Nothing in this file is read until the statement is split into several.',
  ]);
  const nested = (depth: number) =>
    `procedure p {\n stage s {\n${'only A {\n'.repeat(depth)}wait 1 min\n${'}\n'.repeat(depth)} }\n}\n`;
  expect(problems(nested(40))).toEqual([]);
  const deep =
    'This is nested in more than 50 blocks or brackets. Nothing in this file is read until it is nested less deeply.';
  expect(problems(nested(400))).toEqual([deep]);
  expect(problems(`procedure p {\n spec x torque ${'1 N·m ('.repeat(400)}1 N·m${')'.repeat(400)}\n}\n`)).toEqual([
    deep,
  ]);
  expect(problems(`procedure p {\n spec x torque 1 N·m${' then 1°'.repeat(400)}\n}\n`)).toEqual([deep]);
  expect(problems(`procedure p {\n spec x torque ${'1'.repeat(50_000)} N·m\n}\n`)).toEqual([
    'This number has 50004 characters; the longest that is read has 60. Nothing in this file is read until it is shorter.',
  ]);
});

it('compares a name only where it may be a slip', () => {
  expect(nearest('x'.repeat(61), ['x'.repeat(60)])).toEqual([]);
  expect(
    nearest(
      'nozle',
      Array.from({ length: 10_000 }, (_, at) => `part-${at}`),
    ),
  ).toEqual([]);
  expect(nearest('nozle', ['nozzle'])).toEqual(['nozzle']);
});

it('answers where digits go on without end', () => {
  // Each digit would be tried as the first of a number, to the end.
  expect(problems(family(`part p ${'1.2,'.repeat(50_000)}1x`))).toEqual([
    'This number has 200001 characters; the longest that is read has 60. Nothing in this file is read until it is shorter.',
  ]);
});

it('answers where brackets can belong to many things: to each limit before them, and each angle', () => {
  // Followed to the end, each bracket would double the work.
  for (const depth of [5, 12, 20]) {
    const limit = (closed: boolean) => `${'1 N·m then 2° ('.repeat(depth)}1 N·m${closed ? ')'.repeat(depth) : ''}`;
    expect(problems(`procedure p {\n spec x torque ${limit(true)}\n}\n`)).toEqual([]);
    expect(problems(`procedure p {\n spec x torque ${limit(false)}\n}\n`)).toHaveLength(1);
  }
});

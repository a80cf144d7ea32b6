import { describe, expect, it } from 'vitest';
import { told } from '../../tests/fixtures/example-pages.ts';
import { instead, procedureWith } from '../../tests/fixtures/sound-procedure.ts';
import { isProblemCode } from '../syntax/problem-code.ts';

/** Rules on the fitness of tools that speak where the opening is held to a limit and read on a gauge. */
function read(limit: string, gauge: string): string[] {
  const text = procedureWith({
    shop: instead('gauge  PG-400  range 0..400 bar  class 0.25  graduated 1 bar  at tester', `gauge  PG-400  ${gauge}`),
    specs: instead('pressure  250 bar +8 -0', `pressure  ${limit}`),
  }).replace(/number A-220 \{[^}]*\}/u, 'number A-220');
  const diagnostics = told(text).filter(
    ({ rule }) => /^(tool|graduation|guard|no-tool|wrong)/u.test(rule) || isProblemCode(rule),
  );
  return [...new Set(diagnostics.map(({ rule }) => rule))];
}

/** … and where a nut is torqued with the wrench. */
function torqued(limit: string, wrench: string): string[] {
  const text = procedureWith({
    shop: instead('wrench TW-80   range 16..80 N·m  within 4 %', `wrench TW-80  ${wrench}`),
    specs: instead('torque    60 N·m ±5', `torque  ${limit}`),
  });
  const diagnostics = told(text).filter(({ rule }) => /^(tool-|wrong)/u.test(rule) || isProblemCode(rule));
  return [...new Set(diagnostics.map(({ rule }) => rule))];
}

describe('at an equal bound nothing is found, a hair beyond it is', () => {
  it.each([
    ['in one unit', '250 bar +8 -0', 'range 0..400 bar  within 1 bar', 'range 0..400 bar  within 1.0001 bar'],
    [
      'a tolerance in psi on bar',
      '250 bar ±4 psi',
      'range 0..400 bar  within 1 psi',
      'range 0..400 bar  within 1.0001 psi',
    ],
    [
      'a class in psi of a limit in bar',
      '250 bar ±20 psi',
      'range 0..5000 psi  class 0.1',
      'range 0..5000 psi  class 0.1001',
    ],
    [
      'ends in two units',
      '3600 psi ±0.4 bar',
      'range 0..400 bar  within 0.1 bar',
      'range 0..400 bar  within 0.1001 bar',
    ],
    [
      'kgf/cm² on bar',
      '250 bar ±4 kgf/cm²',
      'range 0..400 bar  within 1 kgf/cm²',
      'range 0..400 bar  within 1.0001 kgf/cm²',
    ],
  ])('four to one: %s', (_, limit, equal, beyond) => {
    expect(read(limit, `${equal}  at tester  digital`)).toEqual([]);
    expect(read(limit, `${beyond}  at tester  digital`)).toEqual(['tool-too-coarse']);
  });

  it.each([
    ['bar', '250 bar ±0.5', 'graduated 2 bar', 'graduated 2.001 bar'],
    ['psi tolerance on psi marks', '250 bar ±5 psi', 'graduated 20 psi', 'graduated 20.001 psi'],
  ])('half a mark as wide as the limit: %s', (_, limit, equal, beyond) => {
    expect(read(limit, `range 0..400 bar  ${equal}  at tester`)).toEqual([]);
    expect(read(limit, `range 0..400 bar  ${beyond}  at tester`)).toEqual(['graduation-too-coarse']);
  });

  it.each([
    ['bar', '292 bar +8 -0', 'range 0..400 bar'],
    ['psi', '4250 psi +100 -0', 'range 0..5800 psi'],
    ['psi tolerance in bar', '29.5 MPa ±5 bar', 'range 0..400 bar'],
  ])('three quarters of the scale of a gauge: %s', (_, limit, range) => {
    expect(read(limit, `${range}  within 0.1 bar  at tester`)).toEqual([]);
    const lower = range.replace('400', '399.99').replace('5800', '5799.9');
    expect(read(limit, `${lower}  within 0.1 bar  at tester`)).toEqual(['tool-out-of-range']);
  });

  it.each([
    ['a fifth of the wrench', '16 N·m ±2', 'range 8..80 N·m  within 4 %', 'range 8..80.01 N·m  within 4 %'],
    ['a fifth, in lbf·ft', '12 lbf·ft ±2', 'range 6..60 lbf·ft  within 4 %', 'range 6..60.01 lbf·ft  within 4 %'],
  ])('%s', (_, limit, equal, beyond) => {
    expect(torqued(limit, equal)).toEqual([]);
    expect(torqued(limit, beyond)).toEqual(['tool-out-of-range']);
  });

  it.each([
    ['all of it', '80 N·m ±5', 'range 16..80 N·m  within 4 %', 'range 16..79.99 N·m  within 4 %', 'tool-cannot-do-it'],
    [
      'in lbf·ft',
      '60 lbf·ft ±5',
      'range 12..60 lbf·ft  within 4 %',
      'range 12..59.99 lbf·ft  within 4 %',
      'tool-cannot-do-it',
    ],
    [
      'error as wide as the limit, in per cent',
      '50 N·m ±2',
      'range 8..80 N·m  within 4 %',
      'range 8..80 N·m  within 4.001 %',
      'tool-too-coarse',
    ],
    [
      'error in another unit',
      '50 N·m ±2 lbf·ft',
      'range 8..80 N·m  within 2 lbf·ft',
      'range 8..80 N·m  within 2.001 lbf·ft',
      'tool-too-coarse',
    ],
  ])('of a wrench %s', (_, limit, equal, beyond, rule) => {
    expect(torqued(limit, equal)).toEqual([]);
    expect(torqued(limit, beyond)).toEqual([rule]);
  });
});

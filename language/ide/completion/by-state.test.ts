/** What is offered by what is known of the unit at the cursor. */
import { expect, test } from 'vitest';
import { libraryFiles } from '../../../tests/library.ts';
import { english } from '../../say/say.ts';
import { positionAt } from '../offset.ts';
import { snapshotOf } from '../snapshot.ts';
import { completionsAt, type Suggestion } from './completions.ts';

const uri = 'procedures/one-spring/procedure.rebuild';
const files = libraryFiles().filter((file) => /^procedures\/(?:shared\/|one-spring\/|shop\.)/u.test(file.uri));
const text = files.find((file) => file.uri === uri)!.text;

/** What is offered behind a half-typed step written behind a line of the one-spring procedure. */
function offered(behind: string, half: string): Suggestion[] {
  const at = text.indexOf(behind);
  expect(at, behind).toBeGreaterThan(0);
  const end = text.indexOf('\n', at);
  const whole = `${text.slice(0, end)}\n    ${half}${text.slice(end)}`;
  const snapshot = snapshotOf(files.map((file) => (file.uri === uri ? { uri, text: whole } : file)));
  const position = positionAt(whole, end + 5 + half.length);
  return completionsAt(snapshot, uri, position, { snippets: false, onlyNames: false }).sort((a, b) =>
    a.order < b.order ? -1 : 1,
  );
}

const shown = (behind: string, half: string, count: number) =>
  offered(behind, half)
    .slice(0, count)
    .map(({ label, description }) => `${label} | ${english(description ?? '')}`);

const names = (behind: string, half: string) =>
  offered(behind, half).flatMap(({ label, kind }) => (kind === 'name' ? [label] : []));

test('after remove the parts that can come off, in order; then those under them', () => {
  expect(shown('slacken nut with', 'remove ', 3)).toEqual([
    'nut | Nozzle nut',
    'needle | under nut',
    'nozzle | under nut',
  ]);
  expect(names('slacken nut with', 'remove nut, ').slice(0, 2)).toEqual(['needle', 'nozzle']);
  expect(names('remove nut, nozzle, needle, spacer', 'remove ')).not.toContain('spring');
});

test('after fit those that can go on', () => {
  expect(names('check needle slides', 'fit ').slice(0, 2)).toEqual(['shim', 'spacer']);
  expect(names('check needle slides', 'fit shim, ')[0]).toBe('spring');
  expect(names('fit shim, spring, seat', 'fit ')).not.toContain('shim');
});

test('after torque the joints that are run down, with their torque', () => {
  expect(shown('    run-down nut', 'torque ', 1)).toEqual(['nut to nut-fit | run down']);
  expect(names('    run-down nut', 'torque nut to ')).toEqual(['nut-fit']);
});

test('after test those still owed', () => {
  const without = (name: string) => offered('prime 6 strokes', 'test ').find(({ label }) => label === name);
  expect(english(without('opening')!.description ?? '')).toBe('not passed yet');
});

test('a shim is chosen from its drawer, to bring what is read, by a rate', () => {
  const at = 'repair reshim "Change the setting shim" {\n    open';
  expect(names(at, 'choose ')).toEqual(['shim']);
  expect(names(at, 'choose shim to bring ')).toEqual(['opening', 'aim']);
  expect(names(at, 'choose shim to bring opening to aim by ')).toEqual(['shim-rate']);
});

test('ports by what they are', () => {
  expect(names('    uncap inlet, return, tip', 'cap ')).toEqual(['inlet', 'return', 'bore', 'tip']);
  expect(shown('    connect inlet', 'disconnect ', 2)).toEqual(['inlet | port', 'return | open']);
});

test('units by the kind of quantity', () => {
  const units = (half: string) =>
    offered('    run-down nut', half).flatMap(({ label, kind }) => (kind === 'unit' ? [label] : []));
  expect(units('torque nut to 60 ').slice(0, 2)).toEqual(['N·m', 'cN·m']);
  expect(units('blow-dry nut with air at most 2 ')).toContain('bar');
  expect(units('wait 5 ')).toEqual(expect.arrayContaining(['min', 's', 'h']));
  expect(units('remove nut ')).toEqual([]);
});

test('whole steps that can come next', () => {
  const steps = (behind: string) => offered(behind, '').flatMap(({ label, kind }) => (kind === 'step' ? [label] : []));
  expect(steps('    run-down nut')[0]).toBe('torque nut to nut-fit');
  expect(steps('slacken nut with')).toContain('remove nut, needle, nozzle, spacer, seat, spring, shim');
  expect(steps('fit shim, spring, seat')).toContain('fit spacer located, nozzle located, needle');
});

import { expect, test } from 'vitest';
import { askedAt, edited as procedureWith } from '../../tests/holder.ts';
import { edited } from '../db/fixes.ts';
import { rules } from '../diagnostics/index.ts';
import { type Action, actionsIn, allSafeChanges, type TextChange } from './code-actions.ts';

/** The actions at the marker, and what a text becomes by one. */
function offered(marked: string) {
  const { snapshot, file, position } = askedAt(marked);
  const apply = (changes: readonly TextChange[]) => edited(snapshot.textOf(file)!, changes);
  return { actions: actionsIn(snapshot, file, { start: position, end: position }, 'en'), apply };
}

const changesOf = (action: Action | undefined) =>
  action === undefined || action.kind === 'explain' ? [] : action.changes;

test('a fix repairs its finding', () => {
  const { actions, apply } = offered(procedureWith('remove cap, nut, nozzle', 'remove cap, nut, noz<|>zel'));
  const fix = actions.find((action) => action.kind === 'fix' && action.preferred);
  expect(apply(changesOf(fix))).toContain('remove cap, nut, nozzle\n');
});

test('fixes come first, then explanations, each once, then concessions', () => {
  const { actions, apply } = offered(procedureWith('unclamp body', 'uncl<|>amp body'));
  expect(actions.map(({ title }) => title)).toEqual([
    'Explain part-left-out',
    'Explain open-port-in-dirt',
    'Allow open-port-in-dirt here, with a reason',
  ]);
  const [change] = changesOf(actions.at(-1));
  expect(change!.snippet).toBe(` allow open-port-in-dirt because "\${1:…}"`);
  expect(apply([change!])).toContain('unclamp body allow open-port-in-dirt because "…"\n');
});

test('the reason of a concession is required until it is written, and is no concession of its own', () => {
  const { actions } = offered(procedureWith('slacken nut\n', 'slacken nut allow not-clamped because "<|>…"\n'));
  const titles = actions.map(({ title }) => title);
  expect(titles).toContain('Explain allow-without-reason');
  expect(titles.filter((title) => title.startsWith('Allow allow-without-reason'))).toEqual([]);
});

const flawed = procedureWith('    slacken nut\n', '    slaken nut\n').replace(
  '  repair again {\n',
  '  stage prove at tester {\n    prime 6 strokes\n    test opening read pressure within opening on fail again (without limit)\n  }\n\n  repair again {\n',
);

test('what makes a sheet unsafe is not silenced from the light bulb', () => {
  const { snapshot, file } = askedAt(flawed);
  const whole = { start: { line: 0, character: 0 }, end: { line: 99, character: 0 } };
  const actions = actionsIn(snapshot, file, whole, 'en');
  const found = snapshot.result.diagnostics.map(({ rule }) => rule);
  expect(found).toEqual(expect.arrayContaining(['repair-unbounded', 'unknown-name']));
  const allowed = actions.filter(({ kind }) => kind === 'allow').map(({ diagnostic }) => diagnostic.rule);
  expect(allowed.length).toBeGreaterThan(0);
  const unsafe = rules.filter((rule) => rule.unsafe === true).map(({ code }) => code);
  expect(allowed.filter((code) => unsafe.includes(code))).toEqual([]);
  const preferred = new Map(
    actions.flatMap((action) => (action.kind === 'fix' ? [[action.title, action.preferred]] : [])),
  );
  expect(preferred.get('Write slacken')).toBe(true);
  expect(preferred.get('Say how often it may be tried')).toBe(false);
});

test('only safe fixes are applied together, and what cannot be read first', () => {
  const { snapshot, file } = askedAt(flawed);
  expect(edited(flawed, allSafeChanges(snapshot, file))).toBe(flawed.replace('slaken', 'slacken'));
  expect(allSafeChanges(snapshot, 'shop.rebuild')).toEqual([]);
});

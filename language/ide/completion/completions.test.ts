import { expect, test } from 'vitest';
import { askedAt, edited, procedureText } from '../../../tests/holder.ts';
import { rules } from '../../diagnostics/index.ts';
import { english } from '../../say/say.ts';
import { documentationOf } from '../documentation.ts';
import { completionsAt, type Suggestion } from './completions.ts';

const all = { snippets: false, onlyNames: false };

/** What is offered behind a half-typed step, in its order. */
function offeredAfter(half: string, options = all): Suggestion[] {
  const { snapshot, file, position } = askedAt(edited('    slacken nut\n', `    slacken nut\n    ${half}<|>\n`));
  return completionsAt(snapshot, file, position, options).sort((a, b) => (a.order < b.order ? -1 : 1));
}

const labels = (half: string, options = all) => offeredAfter(half, options).map(({ label }) => label);

test('names by what is before them, with the words of the author', () => {
  expect(offeredAfter('press ').map(({ label, detail }) => [label, detail])).toEqual([
    ['body', 'Holder'],
    ['cap', 'Shipping cap'],
    ['nozzle', 'Nozzle'],
    ['nut', 'Nozzle nut'],
  ]);
  expect(labels('cap ').slice(0, 2)).toEqual(['inlet', 'return']);
  expect(labels('torque nut to ')).toContain('nut-fit');
  expect(labels('torque nut to nut-fit with ')).toContain('TW-80');
  expect(offeredAfter('keep nut at ')).toContainEqual(
    expect.objectContaining({ label: 'strip', kind: 'name', names: 'station', detail: 'Strip-down bench' }),
  );
  expect(labels('rinse nut in ')).toContain('cal-oil');
  expect(labels('test opening read pressure within opening on fail ')).toContain('again');
});

test('verbs where a step begins, with what they do', () => {
  const verb = offeredAfter('').find(({ label }) => label === 'run-down')!;
  expect(verb).toMatchObject({ kind: 'verb', about: 'run-down' });
  const { snapshot } = askedAt(procedureText);
  expect(documentationOf(snapshot, verb, english)).toBe(
    '**run-down** PARTS: turns a joint home, hand-tight.\n\n```rebuild\nrun-down nut\n```\n\nGoes on with `held by "…"`, `with TOOL`, `with air`, `with marks aligned`.',
  );
  const nut = offeredAfter('press ').find(({ label }) => label === 'nut')!;
  expect(documentationOf(snapshot, nut, english)).toContain('part nut "Nozzle nut" on body holds nozzle');
});

test('every rule behind allow, and a place for the reason', () => {
  expect(labels('slacken nut allow ')).toEqual(rules.map(({ code }) => code).sort());
  const [first] = offeredAfter('slacken nut allow ');
  expect(first!.insert).toEqual({ text: `${first!.label} because ""`, snippet: false });
  const [gapped] = offeredAfter('slacken nut allow ', { ...all, snippets: true });
  expect(gapped!.insert).toEqual({ text: `${first!.label} because "$1"$0`, snippet: true });
});

test('nothing in words and remarks, and only names where a blank was typed', () => {
  expect(labels('do "')).toEqual([]);
  expect(labels('slacken nut // ')).toEqual([]);
  expect(labels('slacken nut ', { ...all, onlyNames: true })).toEqual([]);
  expect(labels('slacken ', { ...all, onlyNames: true })).toContain('nut');
});

test('snippets where their word may begin, and only to an editor that knows them', () => {
  const snippets = (options: typeof all) =>
    offeredAfter('', options)
      .filter(({ kind }) => kind === 'snippet')
      .map(({ label }) => label);
  expect(snippets({ ...all, snippets: true })).toEqual(['check', 'test']);
  expect(snippets(all)).toEqual([]);
});

test('a file that is not there offers what a new one may begin with', () => {
  const { snapshot } = askedAt('');
  const offered = completionsAt(snapshot, 'new.rebuild', { line: 7, character: 7 }, all);
  expect(offered.map(({ label }) => label)).toEqual(['shop', 'family', 'procedure', 'job', 'sequence']);
});

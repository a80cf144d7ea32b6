import { expect, test } from 'vitest';
import { askedAt, edited as holderWith, procedureText, shopText } from '../../tests/holder.ts';
import { edited } from '../db/fixes.ts';
import { english } from '../say/say.ts';
import { highlightsAt, referencesAt } from './references.ts';
import { renameAt, renameSubjectAt } from './rename.ts';
import { snapshotOf } from './snapshot.ts';

const shared = `sequence shut with openings; fastener; tool {
  cap openings
  slacken fastener with tool
  slacken nut
}
`;
const sister = `procedure sister "Sister" for holder at bench like rebuild {
  spec nut-fit torque 50 N·m ±5 source "Test sheet, page 9"
  number B-1 { nut-fit 48 N·m ±5 source "Test sheet, page 9" }
  instead of stage teardown "Other teardown" {
    clamp body in "holding fixture"
    shut with inlet, return; nut; TW-80
    torque nut to nut-fit with TW-80
  }
}
`;
const job = `job 7 "Two" of rebuild revision A at bench {
  unit 1 number A-250 serial 1 {
    as found opening 240 bar
    torque nut 60 N·m with TW-80
  }
}
`;
const texts = {
  'procedure.rebuild': procedureText.replace('    unclamp body\n', '    torque nut to nut-fit\n    unclamp body\n'),
  'shop.rebuild': shopText,
  'shared.rebuild': shared,
  'sister.rebuild': sister,
  'job.rebuild': job,
};
type File = keyof typeof texts;
const snapshot = snapshotOf(Object.entries(texts).map(([uri, text]) => ({ uri, text })));

function at(file: File, before: string) {
  const offset = texts[file].indexOf(before);
  expect(offset, before).toBeGreaterThanOrEqual(0);
  const lines = texts[file].slice(0, offset + before.length).split('\n');
  return { line: lines.length - 1, character: lines.at(-1)!.length };
}

/** The lines that change, as they then are. */
function renamed(file: File, before: string, name: string): string[] {
  const done = renameAt(snapshot, file, at(file, before), name);
  if (done.kind === 'refused') return [english(done.reason)];
  return Object.entries(texts).flatMap(([uri, text]) => {
    const lines = text.split('\n');
    const after = edited(
      text,
      done.edits.filter(({ source }) => source.file === uri),
    ).split('\n');
    return after.flatMap((line, index) => (line === lines[index] ? [] : [`${uri}: ${line.trim()}`]));
  });
}

test('a part is renamed with its joint, its uses in every procedure, sequence and job', () => {
  expect(renamed('procedure.rebuild', 'slacken n', 'collar')).toEqual([
    'procedure.rebuild: slacken collar',
    'procedure.rebuild: remove cap, collar, nozzle',
    'procedure.rebuild: torque collar to nut-fit',
    'shop.rebuild: part collar "Nozzle nut" on body holds nozzle',
    'shop.rebuild: part cap "Shipping cap" on collar',
    'shop.rebuild: joint collar to body "M20x1.5"',
    'shared.rebuild: slacken collar',
    'sister.rebuild: shut with inlet, return; collar; TW-80',
    'sister.rebuild: torque collar to nut-fit with TW-80',
    'job.rebuild: torque collar 60 N·m with TW-80',
  ]);
});

test('a spec keeps the name of the test that it is judged by, of its part numbers, and of what is like it', () => {
  expect(renamed('shop.rebuild', 'proven by open', 'popping')).toEqual([
    'procedure.rebuild: spec popping pressure 250 bar +8 -0 source "Test sheet, page 4"',
    'shop.rebuild: proven by popping',
    'job.rebuild: as found popping 240 bar',
  ]);
  expect(renamed('sister.rebuild', 'spec nut', 'tightness')).toEqual([
    'procedure.rebuild: spec tightness torque 60 N·m ±5 source "Test sheet, page 2"',
    'procedure.rebuild: torque nut to tightness',
    'sister.rebuild: spec tightness torque 50 N·m ±5 source "Test sheet, page 9"',
    'sister.rebuild: number B-1 { tightness 48 N·m ±5 source "Test sheet, page 9" }',
    'sister.rebuild: torque nut to tightness with TW-80',
  ]);
});

test('a stage, a sequence, its parameter, a tool', () => {
  expect(renamed('sister.rebuild', 'instead of stage tear', 'strip-down')).toEqual([
    'procedure.rebuild: stage strip-down at strip {',
    'sister.rebuild: instead of stage strip-down "Other teardown" {',
  ]);
  expect(renamed('sister.rebuild', '    shu', 'close')).toEqual([
    'shared.rebuild: sequence close with openings; fastener; tool {',
    'sister.rebuild: close with inlet, return; nut; TW-80',
  ]);
  expect(renamed('shared.rebuild', 'cap ope', 'ports')).toEqual([
    'shared.rebuild: sequence shut with ports; fastener; tool {',
    'shared.rebuild: cap ports',
  ]);
  expect(renamed('job.rebuild', 'with TW', 'TW-81')).toEqual([
    'shop.rebuild: wrench TW-81 range 16..80 N·m within 4 % due 2027-03-01',
    'sister.rebuild: shut with inlet, return; nut; TW-81',
    'sister.rebuild: torque nut to nut-fit with TW-81',
    'job.rebuild: torque nut 60 N·m with TW-81',
  ]);
});

test('a label may be any words', () => {
  expect(renamed('job.rebuild', 'number A', 'A 250 (old)')).toEqual([
    'procedure.rebuild: number "A 250 (old)"',
    'job.rebuild: unit 1 number "A 250 (old)" serial 1 {',
  ]);
});

test.each([
  ['procedure.rebuild', 'slacken n', 'body', /^There is already a part body: line 9 of shop\.rebuild\./u],
  ['procedure.rebuild', 'slacken n', 'with', /^“with” joins the words of a step/u],
  ['procedure.rebuild', 'slacken n', 'noz zle', /^“noz zle” cannot be a name\./u],
  ['procedure.rebuild', 'slacken n', '7', /^“7” cannot be a name\./u],
  ['procedure.rebuild', 'slacken n', '', /^A name cannot be empty/u],
  ['procedure.rebuild', 'sla', 'loosen', /^“slacken” is a word of the language here/u],
  ['procedure.rebuild', '"holding fix', 'vise', /^Words in quotes/u],
  ['procedure.rebuild', 'revision A\n{\n  spec opening pressure 25', 'x', /^There is no name here\./u],
  ['sister.rebuild', '    shu', 'remove', /^“remove” is a word of the language: a sequence/u],
  [
    'shared.rebuild',
    'cap ope',
    'fastener',
    /^“fastener” already means something else there: line 1 of shared\.rebuild/u,
  ],
] as const)('%s at “%s”: refuses “%s” in words', (file, before, name, reason) => {
  const done = renameAt(snapshot, file, at(file, before), name);
  expect(done.kind === 'refused' && english(done.reason)).toMatch(reason);
});

test('refuses a name that something else there has, though each is of its own kind', () => {
  const { snapshot: other, file, position } = askedAt(holderWith('repair again', 'repair ag<|>ain'));
  expect(renameAt(other, file, position, 'teardown')).toMatchObject({ kind: 'changes' });
  expect(renameAt(snapshot, 'shop.rebuild', at('shop.rebuild', 'port in'), 'return')).toMatchObject({
    kind: 'refused',
  });
});

test('says before it asks what can be renamed', () => {
  expect(renameSubjectAt(snapshot, 'procedure.rebuild', at('procedure.rebuild', 'slacken n'))).toEqual({
    kind: 'name',
    name: 'nut',
    range: { start: { line: 9, character: 12 }, end: { line: 9, character: 15 } },
  });
  const { snapshot: other, file, position } = askedAt(holderWith('slacken nut', 'slacken n<|>ix'));
  const subject = renameSubjectAt(other, file, position);
  expect(subject.kind === 'refused' && english(subject.reason)).toMatch(/not declared anywhere/u);
});

test('references in all files, and highlights in one', () => {
  const position = at('procedure.rebuild', 'slacken n');
  const lines = (declarations: boolean) =>
    referencesAt(snapshot, 'procedure.rebuild', position, declarations).map(
      ({ file, range }) => `${file}:${range.start.line + 1}`,
    );
  expect(lines(false)).toEqual([
    'job.rebuild:4',
    'procedure.rebuild:10',
    'procedure.rebuild:11',
    'procedure.rebuild:12',
    'shared.rebuild:4',
    'shop.rebuild:12',
    'shop.rebuild:14',
    'sister.rebuild:6',
    'sister.rebuild:7',
  ]);
  expect(lines(true)).toContain('shop.rebuild:11');
  expect(highlightsAt(snapshot, 'procedure.rebuild', position).map(({ range }) => range.start.line)).toEqual([
    9, 10, 11,
  ]);
  expect(highlightsAt(snapshot, 'procedure.rebuild', at('procedure.rebuild', 'sla'))).toEqual([]);
});

test('a call without a list is a use, and no declaration', () => {
  const {
    snapshot: other,
    file,
    position,
  } = askedAt(`${holderWith('    slacken nut\n', '    loosen\n')}sequence loos<|>en {\n  slacken nut\n}\n`);
  expect(referencesAt(other, file, position, false).map(({ range }) => range.start.line)).toEqual([9]);
});

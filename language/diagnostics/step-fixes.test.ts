import { expect, test } from 'vitest';
import { edited } from '../db/fixes.ts';
import { english } from '../say/say.ts';
import { declared, fixStep, type StepFix } from './step-fixes.ts';

const text = `family valve "Relief valve" {
  part body  "Body"   held in "vice",
    "soft jaws"   // of aluminum
  part plug  "Plug"   on body {
    note "Left-hand"
  }
}
`;
const [body, plug] = ['body', 'plug'].map((name) => {
  const at = text.indexOf(`part ${name}`);
  const line = text.slice(0, at).split('\n').length - 1;
  return { file: 'f', range: { start: { line, character: 7 }, end: { line, character: 11 } } };
});

const after = (fix: StepFix) => edited(text, fixStep(fix).edits).split('\n');

test('a clause goes to the end of what is declared, before a remark and before its brace', () => {
  expect(after(declared(body!, 'marks …')).slice(1, 3)).toEqual([
    '  part body  "Body"   held in "vice",',
    '    "soft jaws" marks …   // of aluminum',
  ]);
  expect(after(declared(plug!, 'marks …'))[3]).toBe('  part plug  "Plug"   on body marks … {');
  expect(english(fixStep(declared(plug!, 'marks …')).title)).toBe('Write “marks "…"” where it is declared');
});

test('another declaration goes to a line of its own', () => {
  const fix: StepFix = { source: body!, text: 'joint plug to …', where: 'after its declaration' };
  expect(after(fix).slice(2, 4)).toEqual(['    "soft jaws"   // of aluminum', '    joint plug to …']);
  expect(english(fixStep(fix).title)).toBe('Write “joint plug to …” where it is declared');
});

test('words that are wrong are replaced, or deleted', () => {
  expect(after({ source: body!, text: 'barrel', where: 'instead' })[1]).toMatch(/^ {2}part barrel /u);
  expect(english(fixStep({ source: body!, text: '', where: 'instead' }).title)).toBe('Delete it');
});

test('a step elsewhere is named', () => {
  const fix: StepFix = { source: body!, text: 'torque nut to … with …', where: 'after', step: '8.8' };
  expect(english(fixStep(fix).title)).toBe('Write “torque nut to … with "…"” after step 8.8');
});

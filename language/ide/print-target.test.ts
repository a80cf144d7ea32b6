import { expect, test } from 'vitest';
import { askedAt, procedureText } from '../../tests/holder.ts';
import { readerOf } from '../i18n/translate.ts';
import { english } from '../say/say.ts';
import { countOf, sheetPage, specsPage } from './pages.ts';
import { printedFrom, printTargetAt, titleOf } from './print-target.ts';

const job = `job 7 "Two holders" of rebuild revision A at bench {
  unit 1 number A-250 serial 0001
}
`;

/** What prints at the marker. */
function printed(marked: string): string {
  const { snapshot, file, position } = askedAt(marked);
  const found = printTargetAt(snapshot.result, file, position);
  return found.kind === 'none' ? english(found.reason) : `${found.target.symbol.kind} ${titleOf(found.target)}`;
}

test('what holds the cursor prints, else what is above it, else the first', () => {
  expect(printed(`${procedureText}${job.replace('serial', 'se<|>rial')}`)).toBe('job Two holders');
  expect(printed(`${procedureText.replace('relieve', 'reli<|>eve')}${job}`)).toBe('procedure Rebuild and set');
  expect(printed(`${procedureText}\n// <|>\n${job}`)).toBe('procedure Rebuild and set');
  expect(printed(`// <|>\n${procedureText}${job}`)).toBe('procedure Rebuild and set');
});

test('without a procedure or a job there is a reason', () => {
  expect(printed('// <|>\n')).toMatch(/no procedure and no job/u);
  expect(printed(procedureText.replace('for holder', 'for ho<|>ldr'))).toMatch(/^Procedure rebuild has no sheet yet/u);
  expect(printed(job.replace('rebuild', 'reb<|>ld'))).toMatch(/^Job 7 has no sheet yet/u);
});

test('a printed sheet is found by the names on it', () => {
  const { snapshot, file } = askedAt(`${procedureText}${job}`);
  const files = new Set(['shop.rebuild', file]);
  const find = (names: { procedure: string; job: string }) => printedFrom(snapshot.result, names, files);
  expect(find({ procedure: 'rebuild', job: '' })).toMatchObject({ file, position: { line: 0 }, target: { job: null } });
  expect(find({ procedure: 'rebuild', job: '7' })).toMatchObject({ file, target: { job: { name: '7' } } });
  expect(find({ procedure: 'other', job: '7' })).toMatchObject({ file, target: null });
  expect(find({ procedure: 'other', job: '' })).toBeNull();
  expect(printedFrom(snapshot.result, { procedure: 'rebuild', job: '' }, new Set())).toBeNull();
});

test('pages say which lines they are of, and what is wrong with them', () => {
  const { snapshot, file } = askedAt(procedureText);
  const found = printTargetAt(snapshot.result, file);
  if (found.kind === 'none') throw new Error(english(found.reason));
  const sheet = sheetPage(found.target, snapshot.result, { hash: 'abcdef', fonts: [] });
  const lines = { first: 0, last: procedureText.trimEnd().split('\n').length - 1 };
  expect(sheet).toMatchObject({ title: 'Rebuild and set', lines, errors: countOf(found.target, 'error') });
  expect(sheet.errors).toBeGreaterThan(0);
  expect(sheet.html).toContain('data-source-line="9"');
  expect(sheet.html).not.toContain('Content-Security-Policy');
  const specs = specsPage(found.target, [], readerOf('en'));
  expect(specs).toMatchObject({ title: 'Rebuild and set', lines, missing: 1 });
  expect(specs.html).toContain('no step torques it');
});

/** Where a finding is, as a viewer of SARIF follows it. */
import { expect, test } from 'vitest';
import type { Checked } from './check.ts';
import { sarifReport } from './report-sarif.ts';

function uriOf(file: string): string {
  const at = { line: 0, character: 0 };
  const diagnostic = {
    rule: 'out-of-place',
    severity: 'error',
    message: 'x',
    source: { file, range: { start: at, end: at } },
  };
  const { runs } = JSON.parse(sarifReport({ diagnostics: [diagnostic] } as unknown as Checked));
  return runs[0].results[0].locations[0].physicalLocation.artifactLocation.uri;
}

test.each([
  ['shop/one.rebuild', 'shop/one.rebuild'],
  ['Düse #4?/100 %.rebuild', 'D%C3%BCse%20%234%3F/100%20%25.rebuild'],
])('%s is named %s from the folder of the run', (file, uri) => {
  expect(uriOf(file)).toBe(uri);
});

test.runIf(process.platform !== 'win32')('a file elsewhere is named in full', () => {
  expect(uriOf('/other/#4.rebuild')).toBe('file:///other/%234.rebuild');
});

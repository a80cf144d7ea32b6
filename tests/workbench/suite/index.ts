/** What the editor tests run: every test of the suite in turn, in one window, and a line with the count at the end. */
import { writeFileSync } from 'node:fs';
import { workspace } from 'vscode';
import { beginTests } from './begin.ts';
import { diagnosticsTests } from './diagnostics.ts';
import { languageTests } from './language.ts';
import { previewTests } from './preview.ts';
import { printTests } from './print.ts';
import { recordTests } from './records.ts';
import { taskTests } from './tasks.ts';
import type { Test } from './test.ts';

/** The longest that one test may take, ms. */
const timeLimit = 30_000;

/** Called by the extension host; throws when a test failed. */
export async function run(): Promise<void> {
  const tests: readonly Test[] = [
    ...beginTests,
    ...diagnosticsTests,
    ...languageTests,
    ...previewTests,
    ...printTests,
    ...recordTests,
    // The editor runs no task in a folder that is not trusted.
    ...(workspace.isTrusted ? taskTests : []),
  ];
  const wanted = process.env.ONLY;
  let failed = 0;
  let passed = 0;
  for (const test of tests) {
    if (wanted && !new RegExp(wanted, 'u').test(test.name)) continue;
    const begun = Date.now();
    try {
      await Promise.race([
        test.run(),
        new Promise<never>((_, reject) =>
          setTimeout(() => reject(new Error(`took more than ${timeLimit / 1000} s`)), timeLimit).unref(),
        ),
      ]);
      passed++;
      console.log(`ok   ${test.name} (${Date.now() - begun} ms)`);
    } catch (error) {
      failed++;
      console.error(`FAIL ${test.name}\n${error instanceof Error ? error.stack : String(error)}`);
    }
  }
  // The line that says how it went is the last one.
  const count = `${passed} passed, ${failed} failed`;
  console.log(count);
  // A desktop editor prints more behind it: whoever started it says the line again.
  if (process.env.HANDTIGHT_COUNT) writeFileSync(process.env.HANDTIGHT_COUNT, count);
  if (failed > 0) throw new Error(`${failed} of ${passed + failed} editor tests failed`);
}

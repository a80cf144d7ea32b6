/**
 * Runs the same suite in a desktop VS Code: `node tests/workbench/desktop.ts`.
 * VSCODE_EXECUTABLE names an installed one; without it one is downloaded.
 */
import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { runTests } from '@vscode/test-electron';
import { bundleSuite } from './bundle.ts';
import { root } from './host.ts';

const tests = await bundleSuite();
const workspace = mkdtempSync(join(tmpdir(), 'handtight-workspace-'));
cpSync(join(root, 'tests/workbench/workspace'), workspace, { recursive: true });
const count = join(workspace, '..', `${basename(workspace)}-count`);
try {
  const executable = process.env.VSCODE_EXECUTABLE;
  process.exitCode = await runTests({
    ...(executable ? { vscodeExecutablePath: executable } : {}),
    extensionDevelopmentPath: root,
    extensionTestsPath: tests,
    extensionTestsEnv: { HANDTIGHT_COUNT: count },
    launchArgs: [workspace, '--disable-extensions', '--skip-welcome', '--skip-release-notes'],
  });
} catch (error) {
  console.error(error);
  process.exitCode = 1;
} finally {
  console.log(existsSync(count) ? readFileSync(count, 'utf8') : '0 passed, 1 failed');
  rmSync(count, { force: true });
  rmSync(workspace, { recursive: true, force: true });
}

/** The command run in this process, for tests with many calls: what it writes, and its exit code. */
import { vi } from 'vitest';
import { run } from '../server/cli/run.ts';

export interface Answer {
  readonly status: number;
  readonly stdout: string;
  readonly stderr: string;
}

/** Runs `handtight ARGS` in a folder. */
export async function command(folder: string, ...args: string[]): Promise<Answer> {
  const before = process.cwd();
  const written = { stdout: '', stderr: '' };
  const spies = (['stdout', 'stderr'] as const).map((name) =>
    vi.spyOn(process[name], 'write').mockImplementation((text) => {
      written[name] += text;
      return true;
    }),
  );
  process.chdir(folder);
  try {
    return { status: await run(['node', 'handtight', ...args]), ...written };
  } finally {
    process.chdir(before);
    for (const spy of spies) spy.mockRestore();
  }
}

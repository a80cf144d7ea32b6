import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { LiveWorkspace } from '../../language/db/live-workspace.ts';
import { checkFiles, type SourceFile } from '../../language/db/workspace.ts';
import { libraryFiles, root } from '../../tests/library.ts';
import { digest } from '../host/cache/digest.ts';
import { ResultCache } from '../host/cache/result-cache.ts';
import { startThreads } from '../host/threads/check-threads.ts';
import { FirstCheck } from './first-check.ts';

/** The program of a thread, which starts faster than its source. */
const built = join(root, 'out/check-thread.mjs');

const files = libraryFiles(true);
const open = 'procedures/one-spring/procedure.rebuild';

/** A folder that is being opened, with the first check of it by threads. */
function opened(leastText = 1) {
  const store = new ResultCache(null, 'test');
  const workspace = new LiveWorkspace(null, { digest, store });
  workspace.isLoading = true;
  let done = () => {};
  const finished = new Promise<void>((resolve) => {
    done = resolve;
  });
  const check = new FirstCheck(
    workspace,
    {
      kept: { digest, store },
      keep: () => {},
      threads: (all, uris) =>
        startThreads(all, uris, (pack) => store.add(pack), { threads: 2, leastText, program: built }),
    },
    () => files,
    done,
  );
  workspace.helper = check;
  for (const { uri, text } of files) workspace.edit(uri, text, uri === open ? 'at once' : 'in time');
  return { workspace, check, finished };
}

const finish = (workspace: LiveWorkspace) => [...workspace.work([open])].flat();

function expectSame(workspace: LiveWorkspace, now: readonly SourceFile[] = files) {
  const { diagnostics } = checkFiles(now);
  for (const { uri } of now)
    expect(workspace.findingsIn(uri)).toEqual(diagnostics.filter(({ source }) => source.file === uri));
}

/** Files that a query was computed for here. */
function logged({ database: { log } }: LiveWorkspace, query: string): string[] {
  return log!.flatMap((line) => (line.startsWith(`${query} `) ? [line.slice(query.length + 1).split('\0')[0]!] : []));
}

describe('the first check of a folder by threads', () => {
  it('has the findings of one without, and only the open file is analyzed here', async () => {
    const { workspace, check, finished } = opened();
    workspace.database.log = [];
    finish(workspace);
    // What it needs has been taken over, and nothing else.
    expect(logged(workspace, 'outcome')).toEqual([open]);
    expect(logged(workspace, 'parsed').length).toBeLessThan(files.length / 2);
    workspace.isLoading = false;
    finish(workspace);
    expect(check.isWorking).toBe(true);
    await finished;
    expect(check.isWorking).toBe(false);
    finish(workspace);
    expect(logged(workspace, 'outcome')).toEqual([open]);
    expectSame(workspace);
  });

  it('has them where files are edited, come and go meanwhile', async () => {
    const { workspace, finished } = opened();
    const flawed = files.find(({ uri }) => uri.includes('flawed'))!;
    const gone = files.find(({ uri }) => uri.includes('jobs/'))!;
    workspace.edit(open, `${files.find(({ uri }) => uri === open)!.text}\nnonsense`, 'at once');
    workspace.edit(gone.uri, null, 'in time');
    workspace.isLoading = false;
    finish(workspace);
    const shop = files.find(({ uri }) => uri === 'procedures/shop.rebuild')!;
    workspace.edit(shop.uri, `\n${shop.text.replace(/fluid/u, 'fluit')}`, 'at once');
    workspace.edit(flawed.uri, `// A remark\n${flawed.text}`, 'in time');
    finish(workspace);
    await finished;
    finish(workspace);
    const now = files.flatMap(({ uri, text }) =>
      uri === gone.uri
        ? []
        : [
            {
              uri,
              text:
                uri === open
                  ? `${text}\nnonsense`
                  : uri === shop.uri
                    ? `\n${text.replace(/fluid/u, 'fluit')}`
                    : uri === flawed.uri
                      ? `// A remark\n${text}`
                      : text,
            },
          ],
    );
    expectSame(workspace, now);
  });

  it('is done here where there is little to do', async () => {
    const { workspace, check } = opened(100_000_000);
    workspace.isLoading = false;
    finish(workspace);
    expect(check.isWorking).toBe(false);
    expect(workspace.helper).toBeNull();
    expectSame(workspace);
  });

  it('is done here where it is ended before', async () => {
    const { workspace, check } = opened();
    workspace.isLoading = false;
    finish(workspace);
    check.end();
    finish(workspace);
    expectSame(workspace);
  });
});

/** A machine with a disk. What is in no file of it, such as a virtual folder of the editor, the client provides. */
import { existsSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { readSettings } from '../../language/config/config.ts';
import type { Sheet } from '../../language/documents/traveler/index.ts';
import { type Filling, say } from '../../language/say/say.ts';
import { digest } from './cache/digest.ts';
import { cachePlace, ResultCache } from './cache/result-cache.ts';
import { sha256 } from './files/content-hash.ts';
import { type Client, ClientFiles } from './files/files-of-client.ts';
import { excludedBy, FileFinder, settingsAt } from './files/find-files.ts';
import { packageRoot } from './files/package-root.ts';
import { readText } from './files/read-text.ts';
import { listName, recordsFolder } from './files/record-names.ts';
import { canonicalUri, pathOfUri, uriOfPath } from './files/uris.ts';
import type { Files, FoundFolder, FoundWorkspace, Host, Printer, PrintPlace } from './host.ts';
import { startThreads } from './threads/check-threads.ts';

export const nodeHost = (client: Client): Host => ({
  files: filesOf(client),
  hash: async (text) => sha256(text),
  // What only pages and prints need is loaded with the first one: an editor that starts waits for none of it.
  fonts: async () => (await import('./print/fonts.ts')).htmlFonts(),
  printer: (folder) => (pathOfUri(folder) === null ? null : { print }),
  results(folder) {
    const store = new ResultCache(cachePlace(), folder);
    return {
      kept: { digest, store },
      keep(workspace) {
        store.keep(workspace.database, (uri) => workspace.jobsOf(uri) !== null);
        store.release();
      },
      threads: (files, uris) => startThreads(files, uris, (pack) => store.add(pack)),
    };
  },
  visits(folder) {
    const path = pathOfUri(folder);
    return path === null
      ? null
      : {
          async of(serials) {
            const { visitsIn } = await import('./ledger/visits.ts');
            return visitsIn(join(path, 'records'), serials);
          },
        };
  },
  rulePages: () => uriOfPath(join(packageRoot(), 'language/diagnostics/areas')),
});

function filesOf(client: Client): Files {
  const others = new ClientFiles(client);
  /** Paths of the folders of the workspace that have records. */
  let archived: readonly string[] = [];
  return {
    canonical: canonicalUri,
    shown: (uri) => pathOfUri(uri) ?? others.shown(uri),
    async find(uris) {
      const [here, there] = [[], []] as [string[], string[]];
      for (const uri of uris) (pathOfUri(uri) === null ? there : here).push(uri);
      archived = here
        .flatMap((uri) => pathOfUri(uri) ?? [])
        .filter((path) => existsSync(join(path, recordsFolder, listName)));
      const found = [await findFiles(here)];
      if (there.length > 0) found.push(await others.find(there));
      return {
        folders: found.flatMap(({ folders }) => folders),
        files: found.flatMap(({ files }) => files),
        unread: found.flatMap(({ unread }) => unread),
      };
    },
    async read(uri) {
      const path = pathOfUri(uri);
      if (path === null) return others.read(uri);
      const read = await readText(path);
      const root = archived.find((one) => !relative(one, path).startsWith('..'));
      if (root === undefined || read.kind !== 'text') return read;
      const { declaresClosedJobs } = await import('./files/closed-jobs.ts');
      // It is looked into while it is open in the editor.
      return declaresClosedJobs(path, read.text, root) ? { kind: 'gone' } : read;
    },
  };
}

async function findFiles(uris: readonly string[]): Promise<FoundWorkspace> {
  const finder = new FileFinder();
  const folders: FoundFolder[] = [];
  const files: string[] = [];
  const unread: { uri: string; message: Filling }[] = [];
  for (const uri of uris) {
    const path = pathOfUri(uri);
    if (path === null) continue;
    // The settings may be above the folder.
    const settings = settingsAt(path);
    const read = settings === null ? null : await readText(settings);
    const exclude =
      settings !== null && read?.kind === 'text'
        ? readSettings({ uri: uriOfPath(settings), text: read.text }).exclude
        : [];
    const isExcluded = excludedBy(settings === null ? path : dirname(settings), exclude);
    folders.push({
      uri: `${canonicalUri(uri).replace(/\/$/u, '')}/`,
      exclude,
      isExcluded(file) {
        const ofFile = pathOfUri(file);
        return ofFile !== null && isExcluded(ofFile, 'file');
      },
    });
    const found = await finder.at(path, isExcluded);
    if ('problem' in found) unread.push({ uri: uriOfPath(path), message: found.problem });
    else files.push(...found.files);
    if (settings !== null) files.push(settings);
  }
  return {
    folders,
    files: [...new Set(files.map(uriOfPath))],
    unread: [...unread, ...finder.unread.map(({ path, message }) => ({ uri: uriOfPath(path), message }))],
  };
}

async function print(sheet: Sheet, to: PrintPlace): Promise<Awaited<ReturnType<Printer['print']>>> {
  const path = pathOfUri(to.folder);
  if (path === null) return { problem: say`There is no folder on this machine's disk behind ${to.folder}.` };
  const { printSheet, sheetNames, WriteError } = await import('./print/index.ts');
  const name = sheetNames(to.result)(to.printed, to.draft, sheet.form === 'card' ? '' : sheet.form);
  try {
    const { files, notes } = printSheet(sheet, { formats: ['pdf'], to: path, name });
    return { uri: uriOfPath(files[0]!), notes };
  } catch (error) {
    if (error instanceof WriteError) return { problem: error.said };
    return { problem: error instanceof Error ? error.message : String(error) };
  }
}

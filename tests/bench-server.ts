/**
 * How long the language server takes, over its standard streams and as it is built (`npm run build` first): from an edit to
 * its findings, requests right after an edit, the start, and its memory. Milliseconds and megabytes of this machine: compare
 * them with others of the same run. Arguments: how many procedures lie around the one that is edited (several numbers).
 */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { libraryFiles, root } from './library.ts';
import { LspDriver, percentiles } from './lsp-driver.ts';

const library = libraryFiles();
const one = library.find(({ uri }) => uri.endsWith('one-spring/procedure.rebuild'))!.text;
const around = library.filter(({ uri }) =>
  /(?:^procedures\/shop|one-spring\/family|shared\/sequences)\.rebuild$/u.test(uri),
);

/** The procedure with more steps, which measure the shim over and over. */
const withSteps = (more: number) =>
  one.replace(/(\n\s*stage \S+ .*\{\n)/u, `$1${'    measure shim with MIC-1\n'.repeat(more)}`);

function folderOf(procedures: number): string {
  const folder = mkdtempSync(join(tmpdir(), 'handtight-bench-'));
  const write = (name: string, text: string) => {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), text);
  };
  for (const { uri, text } of around) write(uri, text);
  for (let index = 0; index < procedures; index++)
    write(`procedures/many/${index}.rebuild`, one.replaceAll('rebuild-one-spring', `rebuild-one-spring-${index}`));
  return folder;
}

const start = () => new LspDriver(process.execPath, [join(root, 'out/server.cjs'), '--stdio']);
const elapsed = (from: number) => performance.now() - from;
const row = (what: string, value: string) => console.log(`${what.padEnd(66)} ${value}`);
const spread = (times: readonly number[]) => {
  const { median, p95 } = percentiles(times);
  return `${median.toFixed(1).padStart(8)} ms, 95th percentile ${p95.toFixed(1)}`;
};
const megabytes = (bytes: number) => `${(bytes / 1e6).toFixed(0).padStart(8)} MB`;

async function measureStart() {
  const times: number[] = [];
  for (let run = 0; run < 10; run++) {
    const begin = performance.now();
    const driver = start();
    await driver.initialize(null);
    // The first one writes the compile cache.
    if (run > 0) times.push(elapsed(begin));
    await driver.stop();
  }
  row('spawn → initialize answered', spread(times));
}

/** Edits one procedure of a folder, and asks about it in between. */
async function measureEdits(what: string, text: string, procedures: number, edits: number) {
  const folder = folderOf(procedures);
  const driver = start();
  await driver.initialize(pathToFileURL(folder).href);
  const initialized = performance.now();
  const uri = pathToFileURL(join(folder, 'procedures/many/edited.rebuild')).href;
  const checked = driver.next('handtight/checked');
  // A line that cannot be read: there is something to be found from the start.
  const slip = '    fit nowhere\n';
  const at = text.indexOf('\n', text.lastIndexOf('    torque ')) + 1;
  const line = text.slice(0, at).split('\n').length - 1;
  const isThere = ({ diagnostics }: { readonly diagnostics: readonly { readonly message: string }[] }) =>
    diagnostics.some(({ message }) => message.includes('nowhere'));
  const first = driver.findings(uri, isThere);
  driver.open(uri, 'rebuild', text.slice(0, at) + slip + text.slice(at));
  await first;
  row(`${what}: initialized → first findings of the open file`, `${elapsed(initialized).toFixed(0).padStart(8)} ms`);
  await checked;
  row(`${what}: initialized → everything`, `${elapsed(initialized).toFixed(0).padStart(8)} ms`);
  row(`${what}: memory after start`, megabytes(driver.memory()));
  const times: number[] = [];
  const asked = new Map<string, number[]>();
  let version = 1;
  let has = true;
  const edit = () => {
    has = !has;
    const end = { line: line + 1, character: 0 };
    const start = { line, character: 0 };
    driver.change(
      uri,
      ++version,
      has ? { range: { start, end: start }, text: slip } : { range: { start, end }, text: '' },
    );
  };
  for (let count = 0; count < edits; count++) {
    const found = driver.findings(uri, (published) => published.version === version && isThere(published) === has);
    const begin = performance.now();
    edit();
    await found;
    times.push(elapsed(begin));
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
  row(`${what}: edit → findings`, spread(times.slice(5)));
  row(`${what}: memory after ${edits} edits`, megabytes(driver.memory()));
  const textDocument = { uri };
  const position = { line: line - 1, character: 12 };
  const requests = {
    hover: { position },
    definition: { position },
    completion: { position },
    documentSymbol: {},
    codeAction: { range: { start: position, end: position }, context: { diagnostics: [] } },
    inlayHint: { range: { start: { line: 0, character: 0 }, end: position } },
  };
  for (let count = 0; count < 12; count++)
    for (const [method, params] of Object.entries(requests)) {
      const begin = performance.now();
      edit();
      await driver.request(`textDocument/${method}`, { textDocument, ...params });
      const known = asked.get(method) ?? [];
      asked.set(method, known);
      if (count > 1) known.push(elapsed(begin));
      await new Promise((resolve) => setTimeout(resolve, 20));
    }
  for (const [method, all] of asked) row(`${what}: ${method} right after an edit`, spread(all));
  await driver.stop();
  rmSync(folder, { recursive: true, force: true });
}

const counts = process.argv.slice(2).map(Number);
await measureStart();
await measureEdits('100 steps', one, 0, 45);
if (counts.length === 0) await measureEdits('10,000 steps', withSteps(10_000), 0, 15);
for (const count of counts.length > 0 ? counts : [1000])
  await measureEdits(`100 steps among ${count} procedures`, one, count, 45);

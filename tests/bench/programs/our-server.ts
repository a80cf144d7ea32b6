import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { LspDriver, Published } from '../../lsp-driver.ts';
import type { Checkout, Setting } from '../bench.ts';
import { slipIn, slipRule, type WorkloadFile, withSlip } from '../workload/procedures.ts';
import { startServer } from './started.ts';
import { inTime, pause, positionAt, type Question, type Typist } from './typist.ts';

/** Longest that anything is waited for, s. */
const patience = 900;

const isSlip = ({ code }: { readonly code?: unknown }) => code === slipRule;

/** Our language server with a folder, and one file of it open, with the slip in it. */
export class OurServer implements Typist {
  readonly name: string;
  /** From the start of the process to the answer to `initialize`, ms. */
  readonly start: number;
  /** From `initialized` to the findings of the open file, ms. */
  readonly firstFindings: number;
  /** From `initialized` to the last findings of the files that were to have some, ms. */
  readonly everything: number;
  readonly #driver: LspDriver;
  readonly #uri: string;
  readonly #right: string;
  readonly #wrong: string;
  /** End of the text as it is now. */
  #end: { line: number; character: number };
  #isWrong = true;
  #version = 1;

  private constructor(
    { name }: Checkout,
    driver: LspDriver,
    uri: string,
    text: string,
    times: Readonly<Record<'start' | 'firstFindings' | 'everything', number>>,
  ) {
    this.name = name;
    this.#driver = driver;
    this.#uri = uri;
    this.#right = text;
    this.#wrong = withSlip(text);
    this.#end = positionAt(this.#wrong, this.#wrong.length);
    this.start = times.start;
    this.firstFindings = times.firstFindings;
    this.everything = times.everything;
  }

  /**
   * Starts it and waits for its findings.
   * @param folder that has the file, and what it is checked with
   * @param file is opened, with the slip
   * @param wrong paths of other files with findings
   * @param cache where the user's programs keep what they can make again
   */
  static async started(
    { profiles }: Pick<Setting, 'profiles'>,
    checkout: Checkout,
    folder: string,
    file: WorkloadFile,
    cache: string,
    wrong: readonly string[] = [],
  ): Promise<OurServer> {
    const uriOf = (path: string) => pathToFileURL(join(folder, path)).href;
    const uri = uriOf(file.path);
    const profiling = profiles === null ? [] : ['--cpu-prof', `--cpu-prof-dir=${profiles}`];
    const program = join(checkout.root, 'out/server.cjs');
    const spawned = performance.now();
    const driver = startServer([...profiling, program], environment(cache));
    let initialized = spawned;
    const awaited = new Set(wrong.map(uriOf));
    const everywhere = new Promise<number>((resolve) => {
      if (awaited.size === 0) resolve(0);
      void driver.next<Published>('textDocument/publishDiagnostics', ({ uri: of, diagnostics }) => {
        if (diagnostics.some(isSlip)) awaited.delete(of);
        if (awaited.size === 0) resolve(performance.now() - initialized);
        return awaited.size === 0;
      });
    });
    const first = driver.findings(uri, ({ diagnostics }) => diagnostics.some(isSlip));
    await inTime('initialize', 60, driver.initialize(pathToFileURL(folder).href));
    initialized = performance.now();
    driver.open(uri, 'rebuild', withSlip(file.text));
    const { at } = await whileRunning(driver, 'first findings', first);
    const everything = await whileRunning(driver, 'all findings', everywhere);
    const firstFindings = at - initialized;
    const times = { start: initialized - spawned, firstFindings, everything: Math.max(firstFindings, everything) };
    return new OurServer(checkout, driver, uri, file.text, times);
  }

  edit(): Promise<number> {
    return this.#findings(() => this.#toggle());
  }

  /** The same, and declares a name that nobody has used before. */
  newName(): Promise<number> {
    return this.#findings(() => this.#toggle(`\nsequence name-${this.#version} {\n  wait 5 min\n}\n`));
  }

  askAfterEdit(question: Question): Promise<number> {
    return this.#askAfterEdit(`textDocument/${question}`, () => this.#at());
  }

  /** Types once and asks at once for what is shown beside the text; ms to the answer. */
  viewAfterEdit(view: 'sheet' | 'specs' | 'drawing' | 'state'): Promise<number> {
    return this.#askAfterEdit(`handtight/${view}`, () => ({ uri: this.#uri, position: this.#at().position }));
  }

  async #askAfterEdit(method: string, params: () => object): Promise<number> {
    let answered = 0;
    await this.#findings(() => {
      this.#toggle();
      const sent = performance.now();
      void this.#driver.request(method, params()).then(() => {
        answered = performance.now() - sent;
      });
    });
    while (answered === 0) await pause();
    return answered;
  }

  /** Closes the document with its slip, which is not on the disk, and opens it again; waits for the findings of both. */
  async reopen(): Promise<void> {
    if (!this.#isWrong) await this.edit();
    this.#isWrong = false;
    await this.#findings(() => this.#driver.close(this.#uri));
    this.#isWrong = true;
    await this.#findings(() => this.#driver.open(this.#uri, 'rebuild', this.#wrong, ++this.#version));
    this.#end = positionAt(this.#wrong, this.#wrong.length);
  }

  memory(): number {
    return this.#driver.memory() / 1e6;
  }

  processorTime(): number {
    return this.#driver.processorTime();
  }

  stop(): Promise<void> {
    return inTime('stop', 60, this.#driver.stop());
  }

  /** Does something, and waits until the slip is reported, or no more. */
  async #findings(act: () => void): Promise<number> {
    const sent = performance.now();
    act();
    const published = this.#driver.findings(this.#uri, ({ diagnostics }) => diagnostics.some(isSlip) === this.#isWrong);
    const { at } = await whileRunning(this.#driver, 'findings of an edit', published);
    await pause();
    return at - sent;
  }

  /** Makes the slip or corrects it; and puts something at the end. */
  #toggle(more = '') {
    const { from, to } = slipIn(this.#right);
    const start = positionAt(this.#right, from);
    const word = this.#right.slice(from, to);
    const end = this.#isWrong ? start : { ...start, character: start.character + word.length };
    const changes: object[] = [{ range: { start, end }, text: this.#isWrong ? word : '' }];
    if (more !== '') {
      changes.push({ range: { start: this.#end, end: this.#end }, text: more });
      this.#end = { line: this.#end.line + more.split('\n').length - 1, character: 0 };
    }
    this.#isWrong = !this.#isWrong;
    this.#driver.change(this.#uri, ++this.#version, ...changes);
  }

  #at() {
    return { textDocument: { uri: this.#uri }, position: positionAt(this.#right, slipIn(this.#right).from + 1) };
  }
}

/** What is kept between runs goes to a folder of its own, not to the user's. */
export const environment = (cache: string): NodeJS.ProcessEnv => ({ ...process.env, HANDTIGHT_CACHE: cache });

/** What is waited for, unless the server ends or time runs out. */
function whileRunning<T>(driver: LspDriver, what: string, waited: Promise<T>): Promise<T> {
  const ended = driver.exited.then((code): never => {
    throw new Error(`${what}: the server ended with exit code ${code}`);
  });
  return inTime(what, patience, Promise.race([waited, ended]));
}

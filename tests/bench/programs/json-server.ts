import { pathToFileURL } from 'node:url';
import type { LspDriver } from '../../lsp-driver.ts';
import type { Peers } from '../peers/install.ts';
import { jsonText, schema } from '../workload/records.ts';
import { startServer } from './started.ts';
import { inTime, pause, positionAt, type Question, type Typist } from './typist.ts';

export const jsonServerName = 'JSON server';

const right = '"verb": "torque"';
const wrong = '"verb": "twist"';

/** The JSON language server with one document and a schema; its findings are requested after each edit. */
export class JsonServer implements Typist {
  readonly name = jsonServerName;
  /** From the start of the process to the answer to `initialize`, ms. */
  readonly start: number;
  readonly #driver: LspDriver;
  readonly #uri: string;
  readonly #place: { readonly line: number; readonly character: number };
  #isWrong = false;
  #version = 1;

  private constructor(driver: LspDriver, uri: string, text: string, start: number) {
    this.#driver = driver;
    this.#uri = uri;
    this.#place = positionAt(text, text.indexOf(right, text.length / 2));
    this.start = start;
  }

  /** Starts it with a document of so many bytes in a folder. */
  static async started({ jsonServer }: Peers, folder: string, bytes: number): Promise<JsonServer> {
    const text = jsonText(bytes);
    const uri = `${pathToFileURL(folder).href}/records.json`;
    const spawned = performance.now();
    const driver = startServer([jsonServer]);
    await inTime(
      'initialize of the JSON server',
      60,
      driver.initialize(pathToFileURL(folder).href, { textDocument: { diagnostic: {} } }),
    );
    const start = performance.now() - spawned;
    driver.notify('workspace/didChangeConfiguration', {
      settings: { json: { validate: { enable: true }, schemas: [{ fileMatch: ['*.json'], schema }] } },
    });
    driver.open(uri, 'json', text);
    const server = new JsonServer(driver, uri, text, start);
    await server.#findings();
    return server;
  }

  async edit(): Promise<number> {
    const sent = performance.now();
    this.#toggle();
    await this.#findings();
    const took = performance.now() - sent;
    await pause();
    return took;
  }

  async askAfterEdit(question: Question): Promise<number> {
    this.#toggle();
    const sent = performance.now();
    const position = { ...this.#place, character: this.#place.character + right.indexOf('to') };
    await this.#driver.request(`textDocument/${question}`, { textDocument: { uri: this.#uri }, position });
    const took = performance.now() - sent;
    await this.#findings();
    await pause();
    return took;
  }

  processorTime(): number {
    return this.#driver.processorTime();
  }

  memory(): number {
    return this.#driver.memory() / 1e6;
  }

  stop(): Promise<void> {
    return inTime('stop of the JSON server', 60, this.#driver.stop());
  }

  #toggle() {
    const [old, text] = this.#isWrong ? [wrong, right] : [right, wrong];
    this.#isWrong = !this.#isWrong;
    const end = { ...this.#place, character: this.#place.character + old.length };
    this.#driver.change(this.#uri, ++this.#version, { range: { start: this.#place, end }, text });
  }

  /** What it finds has to be what was typed: a peer that does nothing is fast. */
  async #findings(): Promise<void> {
    const params = { textDocument: { uri: this.#uri } };
    const answer = this.#driver.request<{ readonly items: readonly unknown[] }>('textDocument/diagnostic', params);
    const { items } = await inTime('findings of the JSON server', 120, answer);
    if (items.length !== (this.#isWrong ? 1 : 0)) throw new Error(`The JSON server found ${JSON.stringify(items)}.`);
  }
}

import { Worker } from 'node:worker_threads';
import type { Failure, FuzzCase } from './case.ts';

/**
 * Runs cases in a thread that is ended when it takes too long or too much memory: then the case is reported with the
 * target that it was in. The time asserts nothing about a machine: it only limits how long to wait for an answer.
 */
export class Watched {
  private worker: Worker | null = null;
  private readonly patience: number;

  /** @param patience ms for one target; a busy machine gets the double before it is called a hang */
  constructor(patience: number) {
    this.patience = patience;
  }

  async failuresOf(one: FuzzCase): Promise<Failure[]> {
    const failures = await this.answerTo(one, this.patience);
    return failures.some(({ at }) => at === 'hang') ? this.answerTo(one, 2 * this.patience) : failures;
  }

  private async answerTo(one: FuzzCase, patience: number): Promise<Failure[]> {
    const known = this.worker;
    this.worker ??= new Worker(new URL('./worker.ts', import.meta.url), {
      resourceLimits: { maxOldGenerationSizeMb: 1500 },
      stderr: true,
    });
    const { worker } = this;
    let target = 'start';
    return await new Promise<Failure[]>((resolve) => {
      const end = (failures: Failure[], lost: boolean) => {
        clearTimeout(timer);
        worker.off('message', hear).off('error', broken).off('exit', leave);
        if (lost) {
          this.worker = null;
          void worker.terminate();
        }
        resolve(failures);
      };
      const hear = (message: { target?: string; failures?: Failure[] }) => {
        if (message.target !== undefined) {
          target = message.target;
          clearTimeout(timer);
          timer = wait(patience);
        }
        if (message.failures !== undefined) end(message.failures, false);
      };
      const broken = (error: Error & { code?: string }) => {
        const at = error.code === 'ERR_WORKER_OUT_OF_MEMORY' ? 'memory' : 'uncaught';
        end([{ target, at, what: String(error.stack).slice(0, 400) }], true);
      };
      const leave = (code: number) => end([{ target, at: 'exit', what: `ended with ${code}` }], true);
      const wait = (time: number) =>
        setTimeout(() => end([{ target, at: 'hang', what: `no answer after ${time / 1000} s` }], true), time);
      // A thread that starts is reading the program: on a busy machine that alone takes long, and is no hang.
      let timer = wait(worker === known ? patience : 10 * patience);
      worker.on('message', hear).on('error', broken).on('exit', leave);
      worker.postMessage(one);
    });
  }

  async close(): Promise<void> {
    await this.worker?.terminate();
    this.worker = null;
  }
}

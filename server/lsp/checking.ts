import { nextTurn } from './turn.ts';

/** How long the check works before messages are looked at again, ms: no answer waits longer for it. */
const sliceTime = 2;

/** Most turns that the check waits while messages come in: an editor that never stops asking must not keep it from starting. */
const mostTurnsWaited = 20;

export interface CheckingParts {
  /** Work to be done now, in pieces that each give the files in which findings are others. */
  readonly work: () => Iterator<readonly string[]>;
  /** Publishes the findings in a file. */
  readonly publish: (uri: string) => void;
  /** Findings in this file are shown: they are published before anything else is done. */
  readonly isUrgent: (uri: string) => boolean;
  /** More is about to come: what is there is checked, and that is not all. */
  readonly isWaiting: () => boolean;
  /** All is up to date, and published. */
  readonly done: () => void;
  readonly failed: (error: unknown) => void;
}

/**
 * Checks between messages: in slices of a few milliseconds, and from the start after each edit, which has the file in hand
 * checked first. Work that was done is kept by the workspace.
 */
export class Checking {
  readonly #parts: CheckingParts;
  #work: Iterator<readonly string[]> | null = null;
  /** There is something to check: work goes on with the next turn. */
  #isRunning = false;
  #isStopped = false;
  /** Files whose findings are to be published. */
  readonly #changed = new Set<string>();
  /** Messages so far. */
  #messages = 0;
  #waiting: (() => void)[] = [];

  constructor(parts: CheckingParts) {
    this.#parts = parts;
  }

  /** Something is another now: checks from the start, once the messages that are there already have been read. */
  restart(): void {
    this.#work = null;
    this.resume();
  }

  /** There is more to do; what is under way goes on. */
  resume(): void {
    this.#messages++;
    if (this.#isRunning || this.#isStopped) return;
    this.#isRunning = true;
    this.#listen(this.#messages, 0);
  }

  /** A request came in: others may be behind it. */
  notice(): void {
    this.#messages++;
  }

  /** Resolves when all is up to date. */
  settled(): Promise<void> {
    if (!this.#isRunning && !this.#parts.isWaiting()) return Promise.resolve();
    return new Promise((resolve) => this.#waiting.push(resolve));
  }

  stop(): void {
    this.#isStopped = true;
    this.#work = null;
    this.#release();
  }

  /** A connection handles one message a turn: as long as there are some, they go first. */
  #listen(before: number, turns: number): void {
    nextTurn(() =>
      nextTurn(() => {
        if (this.#messages === before || turns === mostTurnsWaited) this.#slice();
        else this.#listen(this.#messages, turns + 1);
      }),
    );
  }

  #slice(): void {
    if (this.#isStopped) return;
    try {
      const isDone = this.#proceed(performance.now() + sliceTime);
      if (isDone) this.#end();
      else this.#listen(this.#messages, 0);
    } catch (error) {
      // A defect of the checker must not end the session: what is typed next may check again.
      this.#parts.failed(error);
      this.#end();
    }
  }

  /** Works and publishes until a time; true when all is done. */
  #proceed(end: number): boolean {
    this.#work ??= this.#parts.work();
    const work = this.#work;
    let isDone = false;
    while (!isDone && performance.now() < end) {
      const piece = work.next();
      isDone = piece.done === true;
      for (const uri of piece.value ?? []) this.#changed.add(uri);
      if (piece.value?.some(this.#parts.isUrgent) === true) break;
    }
    for (const uri of this.#changed) {
      if (!isDone && performance.now() >= end && !this.#parts.isUrgent(uri)) continue;
      this.#changed.delete(uri);
      this.#parts.publish(uri);
    }
    return isDone && this.#work === work;
  }

  #end(): void {
    this.#work = null;
    this.#isRunning = false;
    if (this.#parts.isWaiting()) return;
    this.#parts.done();
    this.#release();
  }

  #release(): void {
    const waiting = this.#waiting;
    this.#waiting = [];
    for (const resolve of waiting) resolve();
  }
}

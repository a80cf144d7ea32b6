import type { Helper, LiveWorkspace } from '../../language/db/live-workspace.ts';
import type { SourceFile } from '../../language/db/workspace.ts';
import type { CheckThreads, SessionResults } from '../host/host.ts';
import { nextTurn } from './turn.ts';

/** How long files are looked through before messages are looked at again, ms. */
const sliceTime = 4;

/**
 * Has other threads do the first check of a large folder: its texts are parsed, and what is found in its files worked out. What they
 * find is taken over as what an earlier session has kept is, and only as far as it holds for the texts as they are by then.
 */
export class FirstCheck implements Helper {
  readonly #workspace: LiveWorkspace;
  readonly #results: SessionResults;
  readonly #files: () => readonly SourceFile[];
  readonly #done: () => void;
  #threads: CheckThreads | null = null;
  #isEnded = false;
  isWorking = false;

  /** @param done what was worked out can be taken over */
  constructor(workspace: LiveWorkspace, results: SessionResults, files: () => readonly SourceFile[], done: () => void) {
    this.#workspace = workspace;
    this.#results = results;
    this.#files = files;
    this.#done = done;
  }

  /** Resolves when all texts are parsed, or there are too few to have that done. */
  async parse(): Promise<void> {
    const unparsed: string[] = [];
    let end = performance.now() + sliceTime;
    for (const uri of this.#workspace.unparsed()) {
      if (uri !== null) unparsed.push(uri);
      if (performance.now() < end) continue;
      await new Promise<void>(nextTurn);
      end = performance.now() + sliceTime;
    }
    await this.#start(unparsed)?.workOut('parsed', unparsed);
  }

  begin(uris: readonly string[]): boolean {
    const threads = this.#start(uris);
    if (threads === null || uris.length === 0) {
      this.end();
      return false;
    }
    this.isWorking = true;
    void threads.workOut('checked', uris).then(() => {
      if (this.#isEnded) return;
      this.end();
      this.#done();
    });
    return true;
  }

  /** Nothing more is to be worked out. */
  end(): void {
    this.#isEnded = true;
    this.isWorking = false;
    this.#threads?.end();
    this.#threads = null;
    if (this.#workspace.helper === this) this.#workspace.helper = null;
  }

  /** Null where there are too few. */
  #start(uris: readonly string[]): CheckThreads | null {
    if (!this.#isEnded) this.#threads ??= this.#results.threads(this.#files(), uris);
    return this.#threads;
  }
}

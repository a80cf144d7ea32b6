import type { Helper, LiveWorkspace } from '../../language/db/live-workspace.ts';
import type { SourceFile } from '../../language/db/workspace.ts';
import type { CheckThreads, SessionResults } from '../host/host.ts';

/**
 * Has other threads do the first check of a large folder. What they find is taken over like what an earlier session has kept, and only
 * as far as it holds for the texts as they are by then.
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

  begin(uris: readonly string[]): boolean {
    const threads = this.#isEnded ? null : this.#results.threads(this.#files(), uris);
    if (threads === null) {
      this.end();
      return false;
    }
    this.isWorking = true;
    this.#threads = threads;
    void threads.workOut(uris).then(() => {
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
}

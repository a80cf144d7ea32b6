import { printedContent } from '../../language/db/printed-content.ts';
import type { CheckResult } from '../../language/db/workspace.ts';
import type { FoundTarget, PrintTarget } from '../../language/ide/print-target.ts';
import type { Host } from '../host/host.ts';
import type { DocumentStore } from './document-store.ts';

/** What is printed, of a state of the files that is still the last. */
export interface Hashed {
  readonly kind: 'hashed';
  readonly target: PrintTarget;
  readonly result: CheckResult;
  readonly hash: string;
}

/** What is to be printed, with its hash. Taken again where an edit came while the hash was made. */
export async function hashedTarget(
  store: DocumentStore,
  host: Host,
  uri: string,
  find: (result: CheckResult) => FoundTarget,
): Promise<Hashed | Extract<FoundTarget, { kind: 'none' }>> {
  for (;;) {
    const checked = store.checked(uri);
    const { result } = checked;
    const found = find(result);
    if (found.kind === 'none') return found;
    const hash = await host.hash(printedContent(found.target, checked));
    if (store.check(uri) === result) return { kind: 'hashed', target: found.target, result, hash };
  }
}

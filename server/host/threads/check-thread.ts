/** A thread that works out parts of a workspace, and sends them back as plain text. */
import { parentPort, workerData } from 'node:worker_threads';
import { Pack, packed } from '../../../language/db/pack.ts';
import { Workspace } from '../../../language/db/workspace.ts';
import { digest } from '../cache/digest.ts';
import { PackStore } from '../cache/pack-store.ts';
import { packVersion, type ThreadData, type ThreadTask } from './thread-messages.ts';

const { files } = workerData as ThreadData;
const store = new PackStore();
const workspace = new Workspace({ digest, store });
workspace.take(files.map(([uri, text]) => ({ uri, text })));

parentPort!.on('message', ({ part, uris, packs }: ThreadTask) => {
  for (const text of packs) store.add(Pack.of(text, packVersion, digest));
  workspace.workOut(part, uris);
  parentPort!.postMessage(packed(results(), packVersion, digest));
});

const sent = new Set<string>();

/** What was not sent before: the texts are the same. */
function* results() {
  for (const { query, key, result } of workspace.database.stored()) {
    const place = `${query}\n${key}`;
    if (result === null || sent.has(place)) continue;
    sent.add(place);
    yield { query, key, result, age: 0 };
  }
}

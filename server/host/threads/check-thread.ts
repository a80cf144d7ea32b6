/** A thread that works out what is found in parts of a workspace, and sends it back as plain text. */
import { parentPort, workerData } from 'node:worker_threads';
import { packed } from '../../../language/db/pack.ts';
import { Workspace } from '../../../language/db/workspace.ts';
import { digest } from '../cache/digest.ts';
import { packVersion, type ThreadData, type ThreadTask } from './thread-messages.ts';

const { files } = workerData as ThreadData;
const workspace = new Workspace({ digest });
workspace.take(files.map(([uri, text]) => ({ uri, text })));

parentPort!.on('message', (uris: ThreadTask) => {
  workspace.workOut(uris);
  parentPort!.postMessage(packed(results(), packVersion, digest));
});

function* results() {
  for (const { query, key, result } of workspace.database.stored())
    if (result !== null) yield { query, key, result, age: 0 };
}

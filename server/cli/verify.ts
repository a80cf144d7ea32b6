import { createHash, createPublicKey, verify } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import pc from 'picocolors';
import { type JobRecord, readRecord } from '../../language/archive/record.ts';
import { whyUnread } from '../host/files/read-text.ts';
import { listName } from '../host/files/record-names.ts';
import { fileHash, readList, recordNames, strayLines } from '../host/files/records.ts';
import { worded } from './messages.ts';
import { say } from './say.ts';
import { UsageError } from './usage-error.ts';

export interface VerifyOptions {
  /** File of the shop's public key, in PEM: each record has to be signed with it. */
  readonly key?: string | undefined;
}

/** Checks the records of a folder. Exit code: 0 all are as they were written; 1 not all. */
export function verifyCommand(folder: string, { key }: VerifyOptions): number {
  const wanted = key === undefined ? null : publicKey(key);
  const names = namesIn(folder);
  const list = readList(folder);
  const found: string[] = [];
  const keys = new Map<string, number>();
  let unsigned = 0;
  for (const name of names) {
    const bytes = readFileSync(join(folder, name));
    const record = readRecord(bytes.toString('utf8'));
    const listed = list.get(name);
    if (record === null || (listed !== undefined && listed !== fileHash(bytes)))
      found.push(worded`${name}: changed. It is not as it was written. Take it back from a backup.`);
    else if (listed === undefined)
      found.push(
        worded`${name}: new. It is whole, and not in ${listName}: its closing was interrupted, or somebody put it here. If job ${record.answers.job} was closed here, close it again, which completes the list.`,
      );
    else {
      const problem = signatureProblem(record, wanted);
      if (problem !== null) found.push(`${name}: ${problem}`);
      else if (record.signature === null) unsigned++;
      else keys.set(record.signature.key, (keys.get(record.signature.key) ?? 0) + 1);
    }
  }
  const there = new Set(names);
  for (const name of list.keys())
    if (!there.has(name)) found.push(worded`${name}: missing. It is in ${listName}. Take it back from a backup.`);
  const stray = strayLines(folder);
  if (stray > 0)
    found.push(
      stray === 1
        ? worded`${listName}: changed. One of its lines was not written so. Take it back from a backup.`
        : worded`${listName}: changed. ${stray} of its lines were not written so. Take it back from a backup.`,
    );
  for (const line of found) say(`${pc.red('✗')} ${line}\n`);
  for (const [one, count] of keys) say(`${worded`${count} signed with the key ${fingerprint(one)}`}\n`);
  if (unsigned > 0) say(`${worded`${unsigned} not signed`}\n`);
  const records = names.length === 1 ? worded`1 record` : worded`${names.length} records`;
  say(
    found.length === 0
      ? `${worded`${records}: all as they were written.`}\n`
      : `${worded`${records}: ${found.length} wrong.`}\n`,
  );
  return found.length === 0 ? 0 : 1;
}

function namesIn(folder: string): string[] {
  let names: string[];
  try {
    names = recordNames(folder);
  } catch (error) {
    throw new UsageError(worded`${folder} cannot be read: ${whyUnread(error)}`);
  }
  if (names.length === 0 && readList(folder).size === 0)
    throw new UsageError(worded`There is no record in ${folder}. Give the folder that npx handtight close writes to.`);
  return names;
}

function signatureProblem({ seal, signature }: JobRecord, wanted: string | null): string | null {
  if (signature === null) return wanted === null ? null : worded`not signed.`;
  if (wanted !== null && signature.key !== wanted)
    return worded`signed with another key, ${fingerprint(signature.key)}. See whether that key is the shop's too.`;
  try {
    const key = createPublicKey({ key: Buffer.from(signature.key, 'base64'), type: 'spki', format: 'der' });
    if (verify(null, Buffer.from(seal), key, Buffer.from(signature.value, 'base64'))) return null;
  } catch {
    // No key, or no signature.
  }
  return worded`changed. Its signature is not that of this record.`;
}

/** What people compare a key by. */
function fingerprint(key: string): string {
  const digest = createHash('sha256').update(Buffer.from(key, 'base64')).digest('hex');
  return digest.slice(0, 16).replace(/(.{4})(?=.)/gu, '$1 ');
}

function publicKey(path: string): string {
  try {
    const key = createPublicKey(readFileSync(path));
    if (key.asymmetricKeyType === 'ed25519') return key.export({ type: 'spki', format: 'der' }).toString('base64');
  } catch {
    // Reported below.
  }
  throw new UsageError(
    worded`${path} is no key of Ed25519 in PEM. Make the public one with: openssl pkey -in shop.pem -pubout -out shop.pub`,
  );
}

import { createPrivateKey, createPublicKey, type KeyObject, sign } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import pc from 'picocolors';
import { buildRecord } from '../../language/archive/build.ts';
import { readRecord, sealOf, type UnsealedRecord, writeRecord } from '../../language/archive/record.ts';
import { printedAs } from '../../language/config/config.ts';
import { sheetSettings } from '../../language/db/issued/draft.ts';
import { isIssuedFile } from '../../language/db/issued/format.ts';
import { cut } from '../../language/db/printed-content.ts';
import { findMissing, placeWords } from '../../language/documents/certificate/index.ts';
import { wordsIn } from '../../language/i18n/index.ts';
import type { Job } from '../../language/model/job.ts';
import manifest from '../../package.json' with { type: 'json' };
import { contentHash } from '../host/files/content-hash.ts';
import { whyUnread } from '../host/files/read-text.ts';
import {
  enterInList,
  fileHash,
  readList,
  recordBase,
  recordName,
  recordNames,
  writeRecordFile,
} from '../host/files/records.ts';
import { WriteError } from '../host/print/write.ts';
import { findingsOn } from './bearing.ts';
import { openJobIn } from './job.ts';
import { messageLanguage, worded, words } from './messages.ts';
import { say, tell } from './say.ts';
import { UsageError } from './usage-error.ts';
import type { CliWorkspace } from './workspace.ts';

export interface CloseOptions {
  readonly workspace: string;
  /** ISO date that stands for today. */
  readonly today: string;
  /** Folder of the records. */
  readonly to: string;
  /** Why a job that is closed is closed once more. */
  readonly reissue?: string | undefined;
  /** File of the shop's private key (Ed25519, PEM). */
  readonly key?: string | undefined;
}

/** Closes a job: writes its record. Exit code: 0 it is closed; 1 something is open, or it was closed before. */
export async function closeCommand(name: string, options: CloseOptions): Promise<number> {
  const { today, to, reissue } = options;
  const workspace = await openJobIn(name, options.workspace);
  const { job, result } = workspace;
  const open = whatIsOpen(workspace, options);
  if (open.length > 0) {
    tell(
      `${pc.red(worded`Job ${job.name} is not closed. What is open:`)}\n${open.map((line) => `  ${line}\n`).join('')}${worded`Add it to the job, or put a unit on hold.`}\n`,
    );
    return 1;
  }
  const key = options.key === undefined ? null : privateKey(options.key);
  const before = issuesOf(job.name, to);
  const last = before.at(-1);
  if (last !== undefined && !readList(to).has(last.name)) return finish(to, last, job.name);
  if (last !== undefined && reissue === undefined) {
    tell(
      `${worded`Job ${job.name} is closed: ${join(to, last.name)} of ${last.closed}. A record is never changed. Where its certificate has to be issued once more, give the reason: --reissue "…".`}\n`,
    );
    return 1;
  }
  if (last === undefined && reissue !== undefined)
    throw new UsageError(
      worded`Job ${job.name} was not closed before, so there is nothing to reissue. Leave --reissue out.`,
    );
  const issue = (last?.issue ?? 0) + 1;
  const { files } = workspace;
  const unsealed = buildRecord(job, {
    ...printedAs(sheetSettings(job, result), {}),
    today,
    issue,
    reason: reissue ?? null,
    replaces: last?.hash ?? null,
    hash: contentHash({ procedure: job.procedure, job }, { files, result }),
    texts: textsOf(workspace),
    version: manifest.version,
  });
  const record = recordName(job.name, issue);
  const text = writeRecord(unsealed, key === null ? null : signed(unsealed, key));
  // It is read as it will be read: what cannot be read back is not written.
  if (readRecord(text) === null) throw new Error(`The record of job ${job.name} does not read back.`);
  written(() => {
    if (!writeRecordFile(to, record, text))
      throw new UsageError(worded`${join(to, record)} was written in the meantime. See whether the job is closed now.`);
    enterInList(to, record, Buffer.from(text));
  });
  const place = join(to, record);
  say(
    `${key === null ? worded`Closed: job ${job.name}, ${place}` : worded`Closed: job ${job.name}, ${place}, signed`}\n`,
  );
  return 0;
}

type Opened = CliWorkspace & { readonly job: Job };

/** All that keeps a job from being closed, one to a line. */
function whatIsOpen({ job, result, settings }: Opened, { today }: CloseOptions): string[] {
  const words = wordsIn(messageLanguage());
  const { procedure } = job;
  const missing = findMissing(procedure, job, { diagnostics: findingsOn({ procedure, job }, result), today }).map(
    (one) => `${placeWords(words, one)}: ${one.say(words)}`,
  );
  const isIssued = isIssuedFile(procedure.source.file);
  return [
    ...(isIssued
      ? []
      : [
          worded`the procedure: revision ${procedure.revision ?? worded`(none)`} of ${procedure.name} is not issued, so it could be changed under the record. Issue it first: npx handtight issue ${procedure.name}.`,
        ]),
    ...(settings !== null && 'unreadable' in settings ? [worded`the settings: ${settings.unreadable}`] : []),
    ...missing,
  ];
}

/** The texts that the job was judged by. */
function textsOf({ job, files, result }: Opened) {
  const symbolsIn = (file: string) => result.symbols.get(file) ?? [];
  const text = (file: string) => files.find(({ uri }) => uri === file)?.text ?? '';
  const { file, range } = job.source;
  const own = symbolsIn(file).find(
    ({ kind, nameRange }) => kind === 'job' && nameRange.start.line === range.start.line,
  );
  const tools = job.procedure.shop.assets.flatMap(({ name, source }) => {
    const shop = symbolsIn(source.file).filter(({ kind }) => kind === 'shop');
    const tool = shop.flatMap(({ children }) => children).find((one) => one.name === name);
    return tool === undefined ? [] : cut(text(source.file), tool.range);
  });
  return {
    job: own === undefined ? '' : cut(text(file), own.range),
    issued: readFileSync(job.procedure.source.file, 'utf8'),
    tools: tools.join('\n'),
  };
}

interface FoundRecord {
  readonly name: string;
  readonly issue: number;
  readonly closed: string;
  readonly hash: string;
}

/** The records of a job, the first issue first. */
function issuesOf(job: string, folder: string): FoundRecord[] {
  return recordNames(folder)
    .filter((name) => name.startsWith(`${recordBase(job)}-`))
    .flatMap((name) => {
      const bytes = readFileSync(join(folder, name));
      const read = readRecord(bytes.toString('utf8'));
      if (read === null)
        throw new UsageError(
          worded`${join(folder, name)} is not as it was written, so nobody can say whether the job is closed. Take it back from a backup. npx handtight verify ${folder} lists all that was changed.`,
        );
      const { answers } = read;
      return answers.job === job ? [{ name, issue: answers.issue, closed: answers.closed, hash: fileHash(bytes) }] : [];
    })
    .sort((one, other) => one.issue - other.issue);
}

/** A closing that was interrupted after its record was written. */
function finish(folder: string, { name }: FoundRecord, job: string): number {
  written(() => enterInList(folder, name, readFileSync(join(folder, name))));
  say(`${worded`Closed: job ${job}, ${join(folder, name)}. Its closing was interrupted, and is complete now.`}\n`);
  return 0;
}

function written(write: () => void) {
  try {
    write();
  } catch (error) {
    throw error instanceof WriteError ? new UsageError(words(error.said)) : error;
  }
}

function privateKey(path: string): KeyObject {
  let pem: Buffer;
  try {
    pem = readFileSync(path);
  } catch (error) {
    throw new UsageError(worded`${path} cannot be read: ${whyUnread(error)}`);
  }
  try {
    const key = createPrivateKey(pem);
    if (key.asymmetricKeyType === 'ed25519') return key;
  } catch {
    // Reported below.
  }
  throw new UsageError(
    worded`${path} is no private key of Ed25519 in PEM. Make one with: openssl genpkey -algorithm ed25519 -out shop.pem`,
  );
}

function signed(record: UnsealedRecord, key: KeyObject) {
  return {
    key: createPublicKey(key).export({ type: 'spki', format: 'der' }).toString('base64'),
    value: sign(null, Buffer.from(sealOf(record)), key).toString('base64'),
  };
}

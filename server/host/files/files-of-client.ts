/** The files that a client has: all of them in a browser, those of virtual folders anywhere else. */
import * as z from 'zod';
import { readSettings } from '../../../language/config/config.ts';
import { isSettings, settingsName } from '../../../language/config/settings-name.ts';
import {
  type FindFilesParams,
  findFilesMethod,
  type ReadFileParams,
  type ReadFileResult,
  readFileMethod,
} from '../client-files.ts';
import type { Files, FoundFolder, FoundWorkspace } from '../host.ts';
import { isPassedOver, isRead, leftOutBy, mostFiles, tooManyFiles } from './which-files.ts';

/** At least those that end in `.rebuild`, and `handtight.json`. */
const findFilesResult = z.array(z.string().min(1).max(4096));

const readFileResult: z.ZodType<ReadFileResult> = z
  .union([z.object({ text: z.string() }), z.object({ problem: z.string() })])
  .nullable();

/** Provides the files. */
export interface Client {
  sendRequest(method: string, params: unknown): Promise<unknown>;
}

export class ClientFiles implements Files {
  readonly #client: Client;

  constructor(client: Client) {
    this.#client = client;
  }

  /** Documents and files come from one client, which spells both in the same way. */
  canonical(uri: string): string {
    return uri;
  }

  shown(uri: string): string {
    try {
      return decodeURI(uri);
    } catch {
      return uri;
    }
  }

  /** A client that has no files, or cannot list them, leaves those that are open. */
  async find(uris: readonly string[]): Promise<FoundWorkspace> {
    const found = await this.#ask(findFilesMethod, { folders: uris } satisfies FindFilesParams, findFilesResult);
    if (found === null) return { folders: [], files: [], unread: [] };
    const read = [...new Set(found)].filter(isRead).sort();
    const folders = await Promise.all(uris.map((uri) => this.#folder(`${uri.replace(/\/$/u, '')}/`, read)));
    const isLeftOut = (uri: string) =>
      folders.some(
        (folder) =>
          uri.startsWith(folder.uri) && (isPassedOver(uri.slice(folder.uri.length)) || folder.isExcluded(uri)),
      );
    const all = read.filter((uri) => !isLeftOut(uri));
    const beyond = all[mostFiles];
    return {
      folders,
      files: all.slice(0, mostFiles),
      unread: beyond === undefined ? [] : [{ uri: beyond, message: tooManyFiles }],
    };
  }

  /** A folder, and what the settings nearest to it leave out. */
  async #folder(uri: string, files: readonly string[]): Promise<FoundFolder> {
    const settings = files
      .filter((file) => isSettings(file) && uri.startsWith(file.slice(0, -settingsName.length)))
      .sort((one, other) => other.length - one.length)[0];
    const text = settings === undefined ? null : await this.read(settings);
    const exclude =
      settings !== undefined && text?.kind === 'text' ? readSettings({ uri: settings, text: text.text }).exclude : [];
    const base = settings === undefined ? uri : settings.slice(0, -settingsName.length);
    const leavesOut = leftOutBy(exclude);
    return {
      uri,
      exclude,
      isExcluded: (file) => file.startsWith(base) && leavesOut(this.shown(file.slice(base.length)), 'file'),
    };
  }

  async read(uri: string) {
    const read = await this.#ask(readFileMethod, { uri } satisfies ReadFileParams, readFileResult);
    if (read === null) return { kind: 'gone' } as const;
    if ('problem' in read) return { kind: 'unreadable', message: read.problem } as const;
    return { kind: 'text', text: read.text.replace(/^\uFEFF/u, '') } as const;
  }

  /** What the client says; null where it does not answer, or not in the form that was agreed. */
  async #ask<T>(method: string, params: unknown, form: { safeParse(value: unknown): { data?: T } }): Promise<T | null> {
    try {
      return form.safeParse(await this.#client.sendRequest(method, params)).data ?? null;
    } catch {
      return null;
    }
  }
}

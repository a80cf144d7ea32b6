/** A worker of a browser: there is no disk, so that the client is asked for the files, and no typesetter. */

import regular from '@expo-google-fonts/atkinson-hyperlegible-next/400Regular/AtkinsonHyperlegibleNext_400Regular.ttf';
import bold from '@expo-google-fonts/atkinson-hyperlegible-next/700Bold/AtkinsonHyperlegibleNext_700Bold.ttf';
import {
  type FindFilesParams,
  findFilesMethod,
  findFilesResult,
  type ReadFileParams,
  readFileMethod,
  readFileResult,
} from './client-files.ts';
import { isPassedOver, isRead, mostFiles, tooManyFiles } from './files/which-files.ts';
import type { Files, Host } from './host.ts';

/** Whoever is asked for files. */
interface Client {
  sendRequest(method: string, params: unknown): Promise<unknown>;
}

export function browserHost(client: Client): Host {
  return {
    files: new ClientFiles(client),
    async hash(text) {
      const digest = await crypto.subtle.digest('SHA-256', new TextEncoder().encode(text));
      return Array.from(new Uint8Array(digest), (byte) => byte.toString(16).padStart(2, '0')).join('');
    },
    fonts: async () => [
      { weight: 400, dataUrl: regular },
      { weight: 700, dataUrl: bold },
    ],
    printer: null,
    rulePages: () => null,
  };
}

class ClientFiles implements Files {
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
  async find(folders: readonly string[]) {
    const found = await this.#ask(findFilesMethod, { folders } satisfies FindFilesParams, findFilesResult);
    if (found === null) return { folders: [], files: [], unread: [] };
    const all = [...new Set(found)].filter((uri) => isRead(uri) && !folders.some((one) => isHidden(uri, one))).sort();
    const beyond = all[mostFiles];
    return {
      folders,
      files: all.slice(0, mostFiles),
      unread: beyond === undefined ? [] : [{ uri: beyond, message: tooManyFiles }],
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

/** A file that the walk over a disk would not come to. */
function isHidden(uri: string, folder: string): boolean {
  const base = `${folder.replace(/\/$/u, '')}/`;
  return uri.startsWith(base) && isPassedOver(uri.slice(base.length));
}

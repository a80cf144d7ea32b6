/** A worker of a browser: there is no disk, so the client provides the files, and no typesetter. */

import regular from '@expo-google-fonts/atkinson-hyperlegible-next/400Regular/AtkinsonHyperlegibleNext_400Regular.ttf';
import bold from '@expo-google-fonts/atkinson-hyperlegible-next/700Bold/AtkinsonHyperlegibleNext_700Bold.ttf';
import { type Client, ClientFiles } from './files/files-of-client.ts';
import type { Host } from './host.ts';

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
    printer: () => null,
    results: () => null,
    visits: () => null,
    rulePages: () => null,
  };
}

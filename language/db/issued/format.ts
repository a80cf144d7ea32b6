/**
 * The file of an issued revision: what a procedure was made of on the day of its issue. It is itself a text that the language
 * reads, with a head in remarks, so that it can be read and compared like every other.
 */
import * as z from 'zod';
import { kindsSchema, type SheetSettings } from '../../config/config.ts';
import type { Severity } from '../../model/diagnostic.ts';
import { hashOf } from './hash.ts';

/** How the names of such files end. They are read, and declare nothing outside themselves. */
const issuedEnding = '.issued.rebuild';

export function isIssuedFile(uri: string): boolean {
  return uri.endsWith(issuedEnding);
}

/** What the settings file said that a sheet or a verdict depends on. */
export interface IssuedSettings {
  readonly word: string | null;
  readonly kinds: SheetSettings['kinds'];
  /** By rule, sorted. */
  readonly severities: readonly (readonly [rule: string, severity: Severity | 'off'])[];
}

export interface IssuedRevision {
  readonly procedure: string;
  readonly revision: string;
  readonly approvedBy: string;
  /** ISO date. */
  readonly approvedOn: string | null;
  /** ISO date of the issue. */
  readonly issuedOn: string;
  readonly settings: IssuedSettings;
  /** Declarations of shop, family, sequences, bases and procedure. */
  readonly body: string;
}

export interface IssuedFile extends IssuedRevision {
  readonly uri: string;
  /** The file as a whole. */
  readonly text: string;
}

const head = z.object({
  procedure: z.string().min(1),
  revision: z.string().min(1),
  approvedBy: z.string(),
  approvedOn: z.iso.date().nullable(),
  issuedOn: z.iso.date(),
  settings: z.strictObject({
    word: z.string().nullable(),
    kinds: kindsSchema.default({}),
    severities: z.array(z.tuple([z.string(), z.enum(['error', 'warning', 'hint', 'off'])])),
  }),
});

const preamble = '// An issued revision. It does not change: jobs are judged by it, whatever the sources say later.\n';
const headWord = '// issued ';
const sealWord = '// seal ';

/** The file of an issued revision; the same for the same revision. */
export function writeIssued({ body, ...revision }: IssuedRevision): string {
  const lines = `${preamble}${headWord}${JSON.stringify(head.parse(revision))}\n`;
  return `${lines}${sealWord}${hashOf(`${lines}${body}`)}\n${body}`;
}

/** Reads such a file. Null: it is not as it was written; line ends do not count. Never throws. */
export function readIssued(uri: string, text: string): IssuedFile | null {
  const [, lines, seal, body] =
    /^(.*\n\/\/ issued .*\n)\/\/ seal ([0-9a-f]{64})\n([\s\S]*)$/u.exec(text.replaceAll('\r\n', '\n')) ?? [];
  if (lines === undefined || body === undefined || seal !== hashOf(`${lines}${body}`)) return null;
  try {
    const read = head.safeParse(JSON.parse(lines.slice(preamble.length + headWord.length)));
    return read.success && lines.startsWith(preamble) ? { ...read.data, body, uri, text } : null;
  } catch {
    return null;
  }
}

/** Name of the file of a revision, without its folder. */
export function issuedFileName(procedure: string, revision: string): string {
  return `${procedure}-${revision.replace(/[^\p{L}\p{N}._-]/gu, '-')}${issuedEnding}`;
}

/** The record of a closed job: all that is known of it, as one text that needs no other. */
import canonicalize from 'canonicalize';
import * as z from 'zod';
import { hashOf } from '../db/issued/hash.ts';
import type { Sheet } from '../documents/model.ts';
import { factWords } from '../model/job.ts';

/** How the names of such files end. */
export const recordEnding = '.record.json';

const figure = z.strictObject({ number: z.string(), unit: z.string() });

/** One thing that was read, with what it was held to. */
const resultSchema = z.strictObject({
  name: z.string(),
  /** `earlier`: what was read or judged as left before the last time, or with another shim. */
  role: z.enum(['as found', 'earlier', 'as left', 'words', 'torque', 'shim out', 'shim in']),
  /** Null: a verdict without a figure, or words. */
  value: figure.nullable(),
  passed: z.boolean().nullable(),
  limit: z.string().nullable(),
  /** How far inside its limit it was, in the unit of the value; less than zero: outside. Null: no figure, or no limit. */
  margin: z.string().nullable(),
  tool: z.string().nullable(),
  /** A gauge that was watched, beside the tool that showed the figure. */
  watched: z.string().nullable(),
  by: z.string().nullable(),
  /** ISO date. */
  on: z.string().nullable(),
  text: z.string().nullable(),
  /** How often it was read or judged as left until then, this one included. */
  tries: z.number().int().min(0),
});

const toolSchema = z.strictObject({
  name: z.string(),
  title: z.string(),
  kind: z.enum(['wrench', 'gauge', 'tool']),
  calibrated: z.string().nullable(),
  due: z.string().nullable(),
  certificate: z.string().nullable(),
});

/** What was written down besides results. */
const factSchema = z.strictObject({
  word: z.enum(factWords),
  name: z.string().nullable(),
  text: z.string().nullable(),
  label: z.string().nullable(),
  by: z.string().nullable(),
  on: z.string().nullable(),
});

const unitSchema = z.strictObject({
  place: z.string(),
  number: z.string(),
  serial: z.string().nullable(),
  noSerial: z.string().nullable(),
  onHold: z.string().nullable(),
  remarks: z.array(z.string()),
  /** With number and batch of the maker. */
  renewed: z.array(z.strictObject({ part: z.string(), number: z.string().nullable(), batch: z.string().nullable() })),
  facts: z.array(factSchema),
  /** In the order in which they were written. */
  results: z.array(resultSchema),
  done: z.array(z.strictObject({ by: z.string(), on: z.string().nullable() })),
});

const answersSchema = z.strictObject({
  job: z.string(),
  title: z.string(),
  customer: z.string().nullable(),
  received: z.string().nullable(),
  order: z.string().nullable(),
  intake: z.array(factSchema),
  closed: z.string(),
  procedure: z.string(),
  procedureTitle: z.string(),
  revision: z.string(),
  family: z.string(),
  shop: z.string(),
  issue: z.number().int().min(1),
  /** Why it was closed once more; null: the first issue. */
  reason: z.string().nullable(),
  /** Hash of the record that this one replaces. */
  replaces: z.string().nullable(),
  tools: z.array(toolSchema),
  /** What the masters of the shop read. */
  checks: z.array(
    z.strictObject({
      master: z.string(),
      value: figure,
      limit: z.string().nullable(),
      passed: z.boolean().nullable(),
      tool: z.string().nullable(),
      by: z.string().nullable(),
      on: z.string().nullable(),
    }),
  ),
  /** Which shim sets which reading: from these, what a shim brings can be learned. */
  choices: z.array(z.strictObject({ part: z.string(), test: z.string() })),
  units: z.array(unitSchema),
});

const recordSchema = z.strictObject({
  /** What questions are answered from. It is the first of its keys, so that nothing behind it need be read for that. */
  answers: answersSchema,
  content: z.strictObject({
    /** The sheet of the certificate: every word that is printed. */
    certificate: z.custom<Sheet>((value) => typeof value === 'object' && value !== null),
    /** The text of the job. */
    job: z.string(),
    /** The file of the issued revision. */
    issued: z.string(),
    /** The shop's tools as they were declared on the day of closing. */
    tools: z.string(),
  }),
  format: z.literal('handtight record 1'),
  /** SHA-256 of all other keys but the signature, in canonical form (RFC 8785). */
  seal: z.string(),
  /** Ed25519 of the seal, by the shop's key; both in base64, the key as SPKI in DER. Null: not signed. */
  signature: z.strictObject({ key: z.string(), value: z.string() }).nullable(),
  versions: z.strictObject({ handtight: z.string() }),
});

export type JobRecord = z.output<typeof recordSchema>;
export type RecordAnswers = JobRecord['answers'];
export type RecordResult = z.output<typeof resultSchema>;
export type UnsealedRecord = Omit<JobRecord, 'seal' | 'signature'>;

/** What a signature is made over. */
export function sealOf({ answers, content, format, versions }: UnsealedRecord): string {
  return hashOf(canonicalize({ answers, content, format, versions }) ?? '');
}

/** The file of a record: canonical JSON on one line. */
export function writeRecord(unsealed: UnsealedRecord, signature: JobRecord['signature']): string {
  return `${canonicalize({ ...unsealed, seal: sealOf(unsealed), signature })}\n`;
}

/** Reads the file of a record; null: it is none, or a byte of it is not as it was written. Never throws. */
export function readRecord(text: string): JobRecord | null {
  try {
    const read = recordSchema.safeParse(JSON.parse(text));
    if (!read.success) return null;
    const record = read.data;
    return record.seal === sealOf(record) && `${canonicalize(record)}\n` === text ? record : null;
  } catch {
    return null;
  }
}

/**
 * What questions are answered from, without the rest of the record; null: it is none. The form is not checked: it was when
 * the record was written, and the caller knows that it is as written. Throws where it is no JSON.
 */
export function parseAnswers(text: string): RecordAnswers | null {
  // Inside a string of JSON a quote is escaped, and no key within the answers has this name.
  const end = text.indexOf(',"content":');
  if (end < 0 || !text.startsWith('{"answers":')) return null;
  return (JSON.parse(`${text.slice(0, end)}}`) as { readonly answers: RecordAnswers }).answers;
}

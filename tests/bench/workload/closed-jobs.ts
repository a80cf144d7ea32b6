/** Records of closed jobs as a shop collects them over the years; the same ones for the same seed. */
import { createHash } from 'node:crypto';
import { appendFileSync, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { type RecordResult, type UnsealedRecord, writeRecord } from '../../../language/archive/record.ts';
import type { Sheet } from '../../../language/documents/model.ts';
import { listName } from '../../../server/host/files/record-names.ts';
import { numbersFrom } from '../../legal/walk.ts';

const customers = ['North quarry', 'River ferries', 'Hill farm', 'Port pilots', 'Road works'];
const hands = ['A. Hand', 'B. Bench', 'C. Turner'];
const gauges = ['PG-400', 'PG-250', 'PG-401'];

/** Kilobytes of text in each, about as much as the issued revision and the certificate take, unless said otherwise. */
const usualWeight = 4;

/** The record of the job of a number, of one to six units. */
export function closedJob(number: number, seed = 1, weight = usualWeight): UnsealedRecord {
  const random = numbersFrom(seed * 1_000_003 + number);
  const one = <T>(of: readonly T[]): T => of[Math.floor(random() * of.length)]!;
  const closed = new Date(Date.UTC(2016, 0, 1 + Math.floor(number / 30))).toISOString().slice(0, 10);
  const by = one(hands);
  const tool = one(gauges);
  const result = (name: string, role: RecordResult['role'], value: number, unit: string, low: number) => ({
    name,
    role,
    value: { number: String(value), unit },
    passed: role === 'as left' ? true : null,
    limit: role === 'shim in' ? null : `${low} ${unit} +8 −0`,
    margin: role === 'shim in' ? null : String(Math.min(value - low, low + 8 - value)),
    tool: role === 'shim in' ? 'MIC-1' : tool,
    watched: null,
    by,
    on: closed,
    text: null,
    tries: role === 'as left' ? 1 + Math.floor(random() * 3) : 1,
  });
  /** Read until it passes, up to three times. */
  const tried = (value: number) => {
    const last = result('opening', 'as left', value, 'bar', 250);
    const before = Array.from({ length: last.tries - 1 }, (_, index) => ({
      ...result('opening', 'earlier', 240 + index, 'bar', 250),
      passed: false,
      tries: index + 1,
    }));
    return [...before, last];
  };
  const units = Array.from({ length: 1 + Math.floor(random() * 6) }, (_, index) => ({
    place: String(index + 1),
    number: one(['A-220', 'A-250']),
    serial: `${number}-${index + 1}`,
    noSerial: null,
    onHold: null,
    remarks: [],
    renewed: random() < 0.3 ? [{ part: 'spring', number: null, batch: one(['L-7', 'L-8', 'L-9']) }] : [],
    facts:
      random() < 0.05
        ? [
            {
              word: 'comeback' as const,
              name: null,
              text: String(number - 1),
              label: one(['wear', 'workmanship', 'misuse']),
              by: null,
              on: null,
            },
          ]
        : [],
    results: [
      result('opening', 'as found', 200 + Math.floor(random() * 60), 'bar', 250),
      result('shim', 'shim in', Math.round((1.2 + random() / 2) * 100) / 100, 'mm', 0),
      ...tried(250 + Math.floor(random() * 9)),
    ],
    done: [{ by, on: closed }],
  }));
  return {
    answers: {
      job: String(number),
      title: `Set ${number}`,
      customer: one(customers),
      received: closed,
      order: null,
      intake: [],
      closed,
      procedure: 'rebuild-one-spring',
      procedureTitle: 'Rebuild',
      revision: one(['A', 'B', 'C']),
      family: 'one-spring',
      shop: 'bench-two',
      issue: 1,
      reason: null,
      replaces: null,
      checks: [],
      choices: [{ part: 'shim', test: 'opening' }],
      tools: [],
      units,
    },
    content: {
      certificate: { title: `Certificate ${number}` } as unknown as Sheet,
      job: `job ${number}`,
      issued: 'remove plug // a step\n'.repeat(Math.round((weight * 1024) / 2 / 22)),
      tools: '',
    },
    format: 'handtight record 1',
    versions: { handtight: '0.1.0' },
  };
}

/** Writes the records of some jobs into a folder, with their list. */
export function writeClosedJobs(folder: string, from: number, to: number, seed = 1): void {
  mkdirSync(folder, { recursive: true });
  const lines: string[] = [];
  for (let number = from; number <= to; number++) {
    const text = writeRecord(closedJob(number, seed), null);
    const name = `${number}-1.record.json`;
    writeFileSync(join(folder, name), text);
    lines.push(`${createHash('sha256').update(text).digest('hex')}  ${name}\n`);
  }
  appendFileSync(join(folder, listName), lines.join(''));
}

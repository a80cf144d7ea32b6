import { expect, test } from 'vitest';
import type { Sheet } from '../documents/model.ts';
import { parseAnswers, readRecord, sealOf, type UnsealedRecord, writeRecord } from './record.ts';

const unsealed: UnsealedRecord = {
  answers: {
    job: '9 "Ä"',
    title: 'Pair, "content":{ in a title',
    customer: null,
    received: '2026-10-01',
    order: null,
    intake: [],
    closed: '2026-10-20',
    procedure: 'rebuild',
    procedureTitle: 'Rebuild',
    revision: 'A',
    family: 'holder',
    shop: 'bench',
    issue: 1,
    reason: null,
    replaces: null,
    checks: [],
    choices: [{ part: 'shim', test: 'opening' }],
    tools: [
      { name: 'PG-1', title: 'PG-1', kind: 'gauge', calibrated: '2026-01-01', due: '2027-01-01', certificate: 'K-1' },
    ],
    units: [
      {
        place: '1',
        number: 'A-1',
        serial: '7',
        noSerial: null,
        onHold: null,
        remarks: [],
        renewed: [{ part: 'spring', number: null, batch: 'L-7' }],
        facts: [{ word: 'comeback', name: null, text: '12', label: 'wear', by: null, on: null }],
        results: [
          {
            name: 'opening',
            role: 'as left',
            value: { number: '254.0', unit: 'bar' },
            passed: true,
            limit: '250 bar +8 −0',
            margin: '4',
            tool: 'PG-1',
            watched: null,
            by: 'A. Hand',
            on: '2026-10-02',
            text: null,
            tries: 1,
          },
        ],
        done: [{ by: 'A. Hand', on: '2026-10-02' }],
      },
    ],
  },
  content: { certificate: { title: 'C' } as unknown as Sheet, job: 'job 9 {\n}', issued: 'shop s {\n}', tools: '' },
  format: 'handtight record 1',
  versions: { handtight: '0.1.0' },
};
const text = writeRecord(unsealed, null);

test('reads what it has written, and answers without the rest', () => {
  expect(readRecord(text)).toMatchObject(unsealed);
  expect(parseAnswers(text)).toEqual(unsealed.answers);
  expect(sealOf(readRecord(text)!)).toBe(readRecord(text)!.seal);
});

test('is the same text for the same record, whatever the order of its keys', () => {
  const turned = Object.fromEntries(Object.entries(unsealed).reverse()) as unknown as UnsealedRecord;
  expect(writeRecord(turned, null)).toBe(text);
});

test('finds a change of each single byte, and each byte too few or too many', () => {
  const bytes = Buffer.from(text);
  const reads = (changed: Buffer) => readRecord(changed.toString('utf8')) !== null;
  expect(reads(bytes)).toBe(true);
  const missed: string[] = [];
  for (let at = 0; at < bytes.length; at++) {
    for (const bit of [1, 32, 128]) {
      const changed = Buffer.from(bytes);
      changed[at]! ^= bit;
      if (reads(changed)) missed.push(`${at} ^ ${bit}`);
    }
    if (reads(Buffer.concat([bytes.subarray(0, at), bytes.subarray(at + 1)]))) missed.push(`without ${at}`);
    if (reads(Buffer.concat([bytes.subarray(0, at), Buffer.from(' '), bytes.subarray(at)])))
      missed.push(`blank at ${at}`);
    if (reads(bytes.subarray(0, at))) missed.push(`cut at ${at}`);
  }
  expect(missed).toEqual([]);
});

test('what is no record answers nothing', () => {
  for (const other of ['', '{}', '{"answers":', text.replace('"answers"', '"answer"')])
    expect(parseAnswers(other)).toBeNull();
});

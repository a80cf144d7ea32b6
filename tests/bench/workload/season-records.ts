/** Records of many years, of the size that closing writes: those of a season over and over, under numbers and days of their own. */
import { createHash } from 'node:crypto';
import { appendFileSync, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import canonicalize from 'canonicalize';
import type { RecordAnswers } from '../../../language/archive/record.ts';
import { listName } from '../../../server/host/files/record-names.ts';
import { closeSeason } from '../../season/closed-season.ts';
import { type Season, season } from '../../season/season.ts';

/** So many jobs are closed for real; the others are like them. */
const models = 60;

export interface Archive {
  /** Files of the workspace, its open jobs among them. */
  readonly files: readonly { readonly path: string; readonly text: string }[];
  /** Writes the records of the jobs of some numbers (the first is 1) behind those that are there. */
  write(folder: string, from: number, to: number): void;
}

export function archive(seed = 1): Archive {
  const { files, closed } = closeSeason(season(models, seed) satisfies Season);
  const records = closed.flatMap(({ record }) => (record === null ? [] : [record]));
  const parts = records.map(({ answers, content, ...rest }) => ({
    answers,
    behind: [`,"content":${canonicalize(content)}`, `,"format":${canonicalize(rest.format)}`],
    versions: `,"versions":${canonicalize(rest.versions)}}\n`,
  }));
  return {
    files: files.map(({ uri, text }) => ({ path: uri, text })),
    write(folder, from, to) {
      mkdirSync(folder, { recursive: true });
      const lines: string[] = [];
      for (let number = from; number <= to; number++) {
        const { answers, behind, versions } = parts[number % parts.length]!;
        const head = `{"answers":${canonicalize(numbered(answers, number))}${behind.join('')}`;
        const seal = hash(`${head}${versions.trimEnd()}`);
        const text = `${head},"seal":"${seal}","signature":null${versions}`;
        const name = `${number}-1.record.json`;
        writeFileSync(join(folder, name), text);
        lines.push(`${hash(text)}  ${name}\n`);
      }
      appendFileSync(join(folder, listName), lines.join(''));
    },
  };
}

/** The answers of a job as those of another: thirty are closed in a day. */
function numbered(answers: RecordAnswers, number: number): RecordAnswers {
  const closed = new Date(Date.UTC(2016, 0, 1 + Math.floor(number / 30))).toISOString().slice(0, 10);
  const moved = <T extends { readonly on: string | null }>(one: T): T => ({
    ...one,
    on: one.on === null ? null : closed,
  });
  return {
    ...answers,
    job: String(number),
    received: closed,
    closed,
    units: answers.units.map((unit) => ({
      ...unit,
      serial: unit.serial === null ? null : `${number}-${unit.place}`,
      results: unit.results.map(moved),
      done: unit.done.map(moved),
    })),
  };
}

function hash(text: string): string {
  return createHash('sha256').update(text).digest('hex');
}

/**
 * Results of a process as one text, to be kept on a disk or sent to another thread. One is read faster than a file for
 * each result: texts that occur often are in a table, and a result is read when it is needed.
 */

import type { Store, StoredRead, StoredResult } from './engine.ts';
import { plainJson } from './plain-json.ts';

export interface PackedResult {
  readonly query: string;
  readonly key: string;
  readonly result: StoredResult;
  /** How often it was kept since it was needed. */
  readonly age: number;
}

/** Changes with the form of the text. */
const form = 'handtight results 1';

/**
 * @param version of the program: another one reads none of it
 * @param digest of a text, which is its last line
 */
export function packed(results: Iterable<PackedResult>, version: string, digest: (text: string) => string): string {
  const table = new Table();
  const reads = new Table();
  const index: number[] = [];
  const lines: string[] = [];
  for (const { query, key, result, age } of results) {
    index.push(table.at(query), table.at(key), age);
    const read = result.reads.map((one) =>
      reads.at(`${table.at(one.query)} ${table.at(one.key)} ${table.at(one.digest)}`),
    );
    lines.push(plainJson([result.digest, read, result.text]));
  }
  const body = [form, version, plainJson(table.all), plainJson(reads.all), plainJson(index), ...lines, ''].join('\n');
  return `${body}${digest(body)}`;
}

class Table {
  readonly all: string[] = [];
  private readonly places = new Map<string, number>();

  at(text: string): number {
    const known = this.places.get(text);
    if (known !== undefined) return known;
    this.places.set(text, this.all.length);
    return this.all.push(text) - 1;
  }
}

/** What is in such a text. */
export class Pack implements Store {
  private readonly lines: readonly string[];
  private readonly table: readonly string[];
  private readonly reads: readonly StoredRead[];
  /** Line and age of each, by query and key. */
  private readonly places = new Map<string, { readonly line: number; readonly age: number }>();

  private constructor(lines: readonly string[]) {
    this.lines = lines;
    this.table = JSON.parse(lines[2]!);
    const reads: string[] = JSON.parse(lines[3]!);
    this.reads = reads.map((one) => {
      const [query, key, digest] = one.split(' ').map((at) => this.table[Number(at)]!);
      return { query: query!, key: key!, digest: digest! };
    });
    const index: number[] = JSON.parse(lines[4]!);
    for (let at = 0; at < index.length; at += 3)
      this.places.set(placeOf(this.table[index[at]!]!, this.table[index[at + 1]!]!), {
        line: 5 + at / 3,
        age: index[at + 2]!,
      });
  }

  /** Null where it is cut off, altered, in another form or of another version. Never throws. */
  static of(text: string, version: string, digest: (text: string) => string): Pack | null {
    const end = text.lastIndexOf('\n') + 1;
    if (!text.startsWith(`${form}\n${version}\n`) || digest(text.slice(0, end)) !== text.slice(end)) return null;
    try {
      return new Pack(text.slice(0, end).split('\n'));
    } catch {
      return null;
    }
  }

  get(query: string, key: string): StoredResult | null {
    const place = this.places.get(placeOf(query, key));
    return place === undefined ? null : this.at(place.line);
  }

  /** All of it. */
  *results(): Generator<PackedResult> {
    for (const [place, { line, age }] of this.places) {
      const end = place.indexOf('\n');
      const result = this.at(line);
      if (result !== null) yield { query: place.slice(0, end), key: place.slice(end + 1), result, age };
    }
  }

  private at(line: number): StoredResult | null {
    try {
      const [digest, reads, text] = JSON.parse(this.lines[line]!) as [string, number[], string | null];
      return { digest, reads: reads.map((one) => this.reads[one]!), text };
    } catch {
      return null;
    }
  }
}

function placeOf(query: string, key: string): string {
  return `${query}\n${key}`;
}

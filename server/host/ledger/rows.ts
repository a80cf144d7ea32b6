/** What one record becomes in the tables. */
import { parseAnswers, type RecordAnswers } from '../../../language/archive/record.ts';
import { shimSums } from './shim-sums.ts';
import type { Value } from './sqlite.ts';
import type { NamedKind, Table } from './tables.ts';

export type Values = readonly Value[];

export interface RecordRows {
  readonly rows: { readonly [table in Exclude<Table, 'named'>]: readonly Values[] };
  readonly named: readonly Named[];
  /** Hash of the record that it replaces. */
  readonly replaces: string | null;
}

export interface RecordPlace {
  readonly name: string;
  readonly hash: string;
  /** Those that its job and its first unit get. */
  readonly job: number;
  readonly unit: number;
}

/** Something that a job names, on a day on which that counts. */
export type Named = readonly [kind: NamedKind, name: string, day: string];

type UnitAnswers = RecordAnswers['units'][number];

const content = Buffer.from(',"content":');

/** Null: it is no record. Of what is as written the form was checked when it was. */
export function rowsOf(bytes: Buffer, place: RecordPlace): RecordRows | null {
  try {
    // Most of a record is behind its answers.
    const answers = parseAnswers(bytes.toString('utf8', 0, bytes.indexOf(content) + content.length));
    if (answers === null) return null;
    const made = rowsOfAnswers(answers, place);
    const isValue = (value: unknown) => value === null || typeof value === 'string' || typeof value === 'number';
    return Object.values(made.rows).every((table) => table.every((row) => row.every(isValue))) ? made : null;
  } catch {
    return null;
  }
}

function rowsOfAnswers(answers: RecordAnswers, place: RecordPlace): RecordRows {
  const { job, title, customer, received, closed, procedure, revision, issue, units } = answers;
  const judged = units.filter(({ onHold }) => onHold === null);
  const found = judged.flatMap(({ results }) => {
    const said = results.filter(({ role, passed }) => role === 'as found' && passed !== null);
    return said.length === 0 ? [] : [said.every(({ passed }) => passed)];
  });
  const head = [place.job, place.name, place.hash, job, title, customer, received, closed, procedure, revision, issue];
  const counts = [
    judged.length,
    judged.filter(({ results }) => passedAtOnce(results)).length,
    found.length,
    found.filter((passed) => passed).length,
    causesOf(judged),
  ];
  return {
    rows: {
      jobs: [[...head, ...counts, 0]],
      units: units.map((unit, index) => [place.unit + index, place.job, ...unitValues(unit, closed)]),
      rates: answers.choices.flatMap(({ part, test }) =>
        ratesOf(answers, part, test).map((row) => [place.job, ...row]),
      ),
    },
    named: namedIn(answers),
    replaces: answers.replaces,
  };
}

function unitValues(unit: UnitAnswers, closed: string): Value[] {
  const { place, number, serial, onHold, remarks, renewed, facts, done, results } = unit;
  const hands = done.map(({ by, on }) => (on === null ? by : `${by}, ${on}`));
  return [
    place,
    number,
    serial,
    onHold,
    remarks.join('; '),
    renewed.map(({ part }) => part).join(', '),
    renewed.flatMap(({ batch }) => batch ?? []).join(', '),
    facts.map(factText).join('; '),
    causeOf(unit),
    [...new Set(hands)].join('; '),
    JSON.stringify(
      results.map((one) => [
        one.role,
        one.name,
        one.value?.number ?? null,
        one.value?.unit ?? null,
        one.passed === null ? null : Number(one.passed),
        one.limit,
        one.margin === null ? null : Number(one.margin),
        one.tool,
        one.watched,
        one.by,
        one.on ?? closed,
        one.text,
        one.tries,
      ]),
    ),
  ];
}

/** What a job names, some of it more than once. Of a renewed part each day of its unit's results counts. */
function namedIn({ procedure, closed, units }: RecordAnswers): Named[] {
  const all: Named[] = [];
  const add = (kind: NamedKind, name: string | null, day: string) => {
    if (name !== null) all.push([kind, name, day]);
  };
  const ofJob = new Set([closed]);
  for (const { number, results, renewed } of units) {
    const ofUnit = new Set([closed]);
    let before: (typeof results)[number] | null = null;
    for (const one of results) {
      const day = one.on ?? closed;
      const isNew = one.on !== before?.on;
      if (isNew) ofUnit.add(day);
      // Most results are read on the tool, and by the hand, of the one before.
      if (isNew || one.tool !== before?.tool) add('tool', one.tool, day);
      if (isNew || one.watched !== before?.watched) add('tool', one.watched, day);
      if (isNew || one.by !== before?.by) add('by', one.by, day);
      before = one;
    }
    for (const day of ofUnit) {
      ofJob.add(day);
      for (const { part, batch } of renewed) {
        add('renewed part', part, day);
        add('batch', batch, day);
      }
      add('part number', number, day);
    }
  }
  for (const day of ofJob) add('procedure', procedure, day);
  return all;
}

function causeOf({ facts }: UnitAnswers): string | null {
  return facts.find(({ word }) => word === 'comeback')?.label ?? null;
}

/** The causes of all that came back, one for each unit; null: none did. */
function causesOf(units: readonly UnitAnswers[]): string | null {
  const all = units.flatMap((unit) => causeOf(unit) ?? []);
  return all.length === 0 ? null : all.sort().join(', ');
}

/** What the units of a job say of a shim, added up; of readings in several units of measure one row for each. */
function ratesOf({ units }: RecordAnswers, part: string, test: string): Value[][] {
  const sums = units.flatMap(({ results }) => shimSums(results, part, test) ?? []);
  return [...new Set(sums.map(({ unit }) => unit))].map((unit) => {
    const own = sums.filter((one) => one.unit === unit);
    const sum = (key: 'points' | 'xx' | 'xy' | 'yy' | 'blurX' | 'blurY') => own.reduce((all, one) => all + one[key], 0);
    const figures = [sum('points'), sum('xx'), sum('xy'), sum('yy'), sum('blurX'), sum('blurY')];
    return [part, test, unit, own.length, ...figures];
  });
}

/**
 * Nothing failed before it passed, and nothing left outside its limit by a concession. What was read with the shim that came out
 * is no try: it is read to choose the first one by.
 */
function passedAtOnce(results: UnitAnswers['results']): boolean {
  const first = results.findIndex(({ role }) => role === 'shim in');
  return !results.some(
    ({ role, passed }, index) => passed === false && (role === 'as left' || (role === 'earlier' && index > first)),
  );
}

function factText({ word, name, text, label, by, on }: RecordAnswers['intake'][number]): string {
  return [word, ...[name, text, label, by, on].filter((one) => one !== null)].join(' ');
}

/** The tables of the ledger. */

/** Version of the tables: a ledger of another one is made again. */
export const version = 5;

/** What a job names: questions about one of these begin with the jobs that name it. */
export type NamedKind = 'procedure' | 'tool' | 'by' | 'batch' | 'renewed part' | 'part number';

/**
 * The fewest rows that answer: to put a row in costs about as much as to read a result from a record. So the results of a unit
 * are one text (`resultColumns`), what a job adds to its month is in its own row, and `named` has the ids of many jobs in a
 * row, as JSON: those that were taken in together and name the same on the same day.
 */
export const tables = `
drop table if exists meta;
drop table if exists jobs;
drop table if exists units;
drop table if exists named;
drop table if exists rates;
create table meta (key text primary key, value) without rowid;
create table jobs (
  id integer primary key, record text, hash text, job text, title text, customer text, received text, closed text,
  procedure text, revision text, issue integer, units integer, at_once integer, found integer, found_passed integer, causes text,
  replaced integer);
create table units (
  id integer primary key, job integer, place text, number text, serial text, on_hold text, remarks text, renewed text,
  batches text, facts text, cause text, done text, results text);
create table named (kind text, name text, day text, jobs text);
create table rates (
  job integer, part text, test text, value_unit text, units integer, points integer, xx real, xy real, yy real, blur_x real, blur_y real,
  primary key (job, part, test, value_unit)) without rowid;
`;

/** They are made once the tables are filled. */
export const indexes = `
create index if not exists jobs_job on jobs (job);
create index if not exists jobs_record on jobs (record);
create index if not exists jobs_closed on jobs (closed);
create index if not exists units_job on units (job);
create index if not exists units_serial on units (serial);
create index if not exists named_name on named (kind, name, day);
`;

export const columnCounts = { jobs: 17, units: 13, named: 4, rates: 11 } as const;
export type Table = keyof typeof columnCounts;

/** What the text of a unit's results has of each, in this order. */
export const resultColumns = [
  'role',
  'name',
  'value',
  'value_unit',
  'passed',
  'limited',
  'margin',
  'tool',
  'watched',
  'person',
  'day',
  'note',
  'tries',
] as const;

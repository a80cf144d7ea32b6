/**
 * A season of invented jobs of the library's one-spring procedure, as a shop would write them: the same ones for the same
 * seed. Each unit has a rate and a scatter of its own, so that what the records show can be held to what went into them.
 */
import type { SourceFile } from '../../language/db/workspace.ts';
import { numbersFrom } from '../legal/walk.ts';
import { libraryFiles } from '../library.ts';

export const seasonProcedure = 'rebuild-one-spring';

/** What went into a season. */
export interface Season {
  /** The library with tools that are calibrated for as long as it lasts, without its own jobs. */
  readonly library: readonly SourceFile[];
  readonly jobs: readonly SeasonJob[];
}

export interface SeasonJob {
  readonly name: string;
  readonly file: SourceFile;
  /** ISO date of its last day. */
  readonly done: string;
  readonly units: readonly SeasonUnit[];
}

export interface SeasonUnit {
  readonly place: number;
  readonly serial: string;
  readonly onHold: boolean;
  /** How often the opening pressure was read as left. */
  readonly readings: number;
  /** Nothing failed before it passed, from the first shim that was fitted on. */
  readonly atOnce: boolean;
  /** Why it came back; null: it did not. */
  readonly cause: string | null;
}

/** What a millimeter of shim brings on the average, bar, and by how much units differ: one standard deviation. */
export const trueRate = { mean: 96, deviation: 4 };

const customers = ['Gravel works', 'River ferries', 'Hill farm', 'Port pilots', 'Road works', 'Quarry two'];
const hands = ['R. Abel', 'M. Ortiz', 'C. Turner'];
const causes = ['wear', 'wear', 'workmanship', 'misuse', 'not-ours', 'none-found'];
const remarks = ['Light rust, tip sound', 'Dribbles, spray streaky', 'Tip blued', 'Carbon on the tip'];

export function season(count: number, seed = 1): Season {
  const random = numbersFrom(seed);
  const jobs: SeasonJob[] = [];
  const known: { readonly serial: string; readonly job: string }[] = [];
  for (let index = 0; index < count; index++) {
    const job = seasonJob(index, random, known);
    jobs.push(job);
    known.push(...job.units.filter(({ onHold }) => !onHold).map(({ serial }) => ({ serial, job: job.name })));
  }
  return { library: seasonLibrary(), jobs };
}

/** Each tool is calibrated again before it is due, for ten years. */
function seasonLibrary(): SourceFile[] {
  return libraryFiles()
    .filter(({ uri }) => !uri.includes('/jobs/'))
    .map(({ uri, text }) => ({
      uri,
      text: text.replace(/calibrated (\d{4})(-\d\d-\d\d) due \d{4}-\d\d-\d\d/gu, (_, year: string, day: string) =>
        Array.from(
          { length: 10 },
          (_one, index) => `calibrated ${Number(year) + index}${day} due ${Number(year) + index + 1}${day}`,
        ).join(' '),
      ),
    }));
}

type Random = () => number;

function seasonJob(
  index: number,
  random: Random,
  known: readonly { readonly serial: string; readonly job: string }[],
): SeasonJob {
  const one = <T>(of: readonly T[]): T => of[Math.floor(random() * of.length)]!;
  const name = String(3001 + index);
  const received = dayAfter('2026-10-06', Math.floor(index * 1.2));
  const done = dayAfter(received, 1 + Math.floor(random() * 8));
  const by = one(hands);
  const used = new Set<string>();
  const units = Array.from({ length: 1 + Math.floor(random() * 6) }, (_, at) => {
    const back = known.length > 20 && random() < 0.06 ? one(known) : null;
    const isBack = back !== null && !used.has(back.serial);
    const serial = isBack ? back.serial : `${name}${String.fromCharCode(65 + at)}`;
    used.add(serial);
    return seasonUnit(at + 1, serial, { random, one, by, done, back: isBack ? back.job : null });
  });
  const text = `job ${name} "Set of ${units.length}" of ${seasonProcedure} revision C at bench-two
  customer "${one(customers)} (invented)"   received ${received}
{
  intake {
    taken-in by "${one(hands)}" on ${received}
    complaint "${one(['Smokes at idle', 'Hard to start', 'Knocks', 'Due for overhaul'])}"
    promised ${dayAfter(received, 14)}
  }
${units.map((unit) => unit.text).join('')}}
`;
  return { name, done, file: { uri: `jobs/${name}.rebuild`, text }, units: units.map(({ text: _, ...unit }) => unit) };
}

interface Setting {
  readonly random: Random;
  readonly one: <T>(of: readonly T[]) => T;
  readonly by: string;
  readonly done: string;
  /** The job that it was here for before. */
  readonly back: string | null;
}

function seasonUnit(place: number, serial: string, setting: Setting): SeasonUnit & { readonly text: string } {
  const { random, one, by, done, back } = setting;
  const cause = back === null ? null : one(causes);
  const head = `  unit ${place} number A-250 serial ${serial}`;
  const unit = { place, serial, cause };
  if (random() < 0.03)
    return { ...unit, cause: null, onHold: true, readings: 0, atOnce: false, text: `${head} on hold "Body cracked"\n` };
  const rate = trueRate.mean + trueRate.deviation * normal(random);
  let shim = 1.2 + 0.02 * Math.floor(random() * 10);
  let pressure = 190 + Math.floor(random() * 45);
  const lines = [`as found opening ${pressure} bar on PG-400${random() < 0.4 ? `, "${one(remarks)}"` : ''}`];
  if (back !== null) lines.unshift(`comeback "${back}" cause ${cause}`);
  lines.push(`shim out ${shim.toFixed(2)} mm with MIC-1`);
  if (random() < 0.3) lines.push(`renewed spring number "S 8-24" batch "L-${7 + Math.floor(random() * 3)}"`);
  let readings = 0;
  let failed = false;
  const read = (more = '') => {
    readings++;
    lines.push(`torque nut ${58 + Math.floor(random() * 5)} N·m with TW-80   opening ${pressure} bar on PG-400${more}`);
  };
  /** Fits what brings it to 254 bar by the rate that the procedure gives, and reads again. */
  const set = () => {
    const fitted = Math.min(1.98, Math.round((shim + (254 - pressure) / 96) / 0.02) * 0.02);
    pressure = Math.round(pressure + rate * (fitted - shim) + normal(random) * 0.6);
    shim = fitted;
    lines.push(`shim in ${shim.toFixed(2)} mm`);
    read();
    failed ||= pressure < 250 || pressure > 258;
  };
  pressure += Math.floor(random() * 7) - 2;
  if (random() < 0.5) read();
  set();
  while (Math.abs(pressure - 254) > 2 && readings < 6 && shim < 1.96) set();
  // Out of the drawer's reach it would be put on hold: a thinner step is found by turning to the next one.
  if (Math.abs(pressure - 254) > 2)
    return {
      ...unit,
      cause: null,
      onHold: true,
      readings: 0,
      atOnce: false,
      text: `${head} on hold "Cannot be set"\n`,
    };
  const leaks = random() < 0.08;
  if (leaks) {
    lines.push('seat-leak fail', 'renewed nozzle, needle');
    read(', "with the new nozzle"');
  }
  lines.push(
    'seat-leak pass   chatter pass   spray pass',
    `back-leak ${8 + Math.floor(random() * 11)} s on PG-400`,
    `done by "${by}" on ${done}`,
  );
  const text = `${head} {\n${lines.map((line) => `    ${line}\n`).join('')}  }\n`;
  return { ...unit, onHold: false, readings, atOnce: !failed && !leaks, text };
}

/** Of mean 0 and deviation 1 (Box and Muller 1958). */
function normal(random: Random): number {
  return Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}

function dayAfter(day: string, days: number): string {
  const date = new Date(`${day}T00:00:00Z`);
  date.setUTCDate(date.getUTCDate() + days);
  return date.toISOString().slice(0, 10);
}

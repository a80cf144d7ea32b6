import { shimChoices } from '../analysis/shims.ts';
import type { CertificateOptions } from '../documents/certificate/index.ts';
import { buildCertificate } from '../documents/certificate/index.ts';
import { judgeJob } from '../judgment/judge.ts';
import type { LimitVerdict } from '../judgment/judged.ts';
import type { DoneResult, FactResult, Job, Result, Unit } from '../model/job.ts';
import type { Procedure } from '../model/procedure.ts';
import { convert } from '../quantities/convert.ts';
import { exactText } from '../quantities/decimal.ts';
import { formatLimit } from '../quantities/index.ts';
import type { Limit, Quantity } from '../quantities/types.ts';
import { exactWindow } from '../quantities/window.ts';
import type { RecordResult, UnsealedRecord } from './record.ts';

export interface Closing extends Pick<CertificateOptions, 'paper' | 'language' | 'hash'> {
  /** ISO date. */
  readonly today: string;
  readonly issue: number;
  readonly reason: string | null;
  readonly replaces: string | null;
  readonly texts: { readonly job: string; readonly issued: string; readonly tools: string };
  readonly version: string;
}

/** The record of a job that can be certified: the caller has made sure of that. */
export function buildRecord(job: Job, closing: Closing): UnsealedRecord {
  const { procedure } = job;
  const { today, issue, reason, replaces, texts, version, paper, language, hash } = closing;
  const judged = judgeJob(procedure, job, today);
  const all = judged.units.flatMap(({ tools }) => tools);
  const used = all.filter(
    ({ asset, calibration }, index) =>
      all.findIndex((one) => one.asset === asset && one.calibration === calibration) === index,
  );
  const held = judged.onHold.map((unit) => ({
    ...unitHead(unit),
    remarks: [],
    renewed: [],
    facts: [],
    results: [],
    done: [],
  }));
  const certificate = buildCertificate(procedure, job, {
    paper,
    ...(language === undefined ? {} : { language }),
    hash,
    draft: false,
    diagnostics: [],
    today,
    issue: { number: issue, reason },
  });
  return {
    answers: {
      job: job.name,
      title: job.title,
      customer: job.customer,
      received: job.received,
      order: job.order,
      intake: job.intake.map(factOf),
      closed: today,
      procedure: procedure.name,
      procedureTitle: procedure.title,
      revision: procedure.revision ?? '',
      family: procedure.family.name,
      shop: procedure.shop.name,
      issue,
      reason,
      replaces,
      tools: used.map(({ asset: { name, title, kind }, calibration }) => ({
        name,
        title,
        kind,
        calibrated: calibration?.calibrated ?? null,
        due: calibration?.due ?? null,
        certificate: calibration?.certificate ?? null,
      })),
      checks: judged.checks.map(({ master, reading: { value, tool, done }, passed }) => ({
        master: master.name,
        value: figure(value),
        limit: master.limit === null ? null : formatLimit(master.limit),
        passed,
        tool,
        by: done?.by ?? null,
        on: done?.on ?? null,
      })),
      choices: choicesOf(procedure),
      units: [...judged.units.map(unitAnswers), ...held].sort((one, other) => Number(one.place) - Number(other.place)),
    },
    content: { certificate, ...texts },
    format: 'handtight record 1',
    versions: { handtight: version },
  };
}

/** Which single shim sets which reading. */
function choicesOf(procedure: Procedure) {
  const all = shimChoices(procedure).filter(({ parts }) => parts.length === 1);
  const pairs = all.map(({ parts, test }) => ({ part: parts[0]!.name, test }));
  return pairs.filter(
    ({ part, test }, index) => pairs.findIndex((one) => one.part === part && one.test === test) === index,
  );
}

function unitHead({ place, numberText, serial, noSerial, onHold }: Unit) {
  return { place, number: numberText, serial, noSerial, onHold };
}

function unitAnswers(verdict: LimitVerdict) {
  const { unit, remarks, renewed, facts, done } = verdict;
  return {
    ...unitHead(unit),
    remarks: [...remarks],
    renewed: renewed.map(({ part, number = null, batch = null }) => ({ part, number, batch })),
    facts: facts.map(factOf),
    results: resultsOf(verdict),
    done: done.map(({ by, on }) => ({ by, on })),
  };
}

/** All that was read, judged, fitted, tightened and written down, in the order in which it was written. */
function resultsOf({ unit, found, torques, outcomes }: LimitVerdict): RecordResult[] {
  const { results } = unit;
  const isRead = (one: Result): one is Read => one.form === 'reading' || one.form === 'verdict';
  const mine = (name: string, asFound: boolean) =>
    results.filter(isRead).filter((one) => one.name === name && one.asFound === asFound);
  const rows: { at: number; row: RecordResult }[] = [];
  const add = (result: Result | null, row: RecordResult) =>
    rows.push({ at: result === null ? results.length : results.indexOf(result), row });
  /** A verdict beside a figure is one result with it. */
  const said = new Set<Result>();
  const judged = [
    ...found.map((one) => ({ ...one, passed: one.verdict, role: 'as found' as const })),
    ...outcomes.map(({ asked, reading, held, failed, verdict }) => {
      const passed = failed ? false : (verdict ?? (reading !== null && held !== null ? true : null));
      return { name: asked.name, reading, held, passed, role: 'as left' as const };
    }),
  ];
  for (const { name, reading, held, passed, role } of judged) {
    const all = mine(name, role === 'as found');
    const words = all.findLast((one) => one.form === 'verdict') ?? null;
    const last = reading ?? words;
    // A figure that is worked out is written down where the second of the two is.
    const at = last === null || results.includes(last) ? last : (results.find((one) => isSameLine(one, last)) ?? null);
    for (const one of [last, words]) if (one !== null) said.add(one);
    add(at, {
      ...tested(unit, { name, role, passed, tries: all.length }, last, held?.limit ?? null),
      tool: reading?.tool ?? reading?.watched ?? words?.watched ?? null,
      ...doneBy(unit, at),
    });
    for (const [index, one] of all.entries()) {
      if (said.has(one)) continue;
      said.add(one);
      const row = tested(unit, { name, role: 'earlier', passed: null, tries: index + 1 }, one, held?.limit ?? null);
      const outside = row.margin?.startsWith('-') === true;
      add(one, { ...row, passed: one.form === 'verdict' ? one.passed : outside ? false : null });
    }
  }
  for (const one of results) {
    if (isRead(one) && !said.has(one))
      add(one, tested(unit, { name: one.name, role: 'earlier', passed: null, tries: 1 }, one, null));
    if (one.form === 'shim')
      add(one, { ...plainRow(unit, one), name: one.part, role: one.fitted ? 'shim in' : 'shim out', tool: one.tool });
    if (one.form === 'words') add(one, { ...plainRow(unit, one), name: one.name, role: 'words', text: one.text });
    if (one.form === 'torque') {
      const verdict = torques.find(({ torque }) => torque.part === one.part);
      const held = heldTo(verdict?.held?.limit ?? null, one.value);
      const passed = verdict?.torque === one ? true : null;
      add(one, { ...plainRow(unit, one), name: one.part, role: 'torque', passed, ...held, tool: one.tool });
    }
  }
  return rows.sort((one, other) => one.at - other.at).map(({ row }) => row);
}

type Read = Extract<Result, { form: 'reading' | 'verdict' }>;

function isSameLine(one: Result, { source }: Result): boolean {
  return one.source === source;
}

/** Without what differs by its form. */
function plainRow(unit: Unit, one: Result): RecordResult {
  return {
    name: '',
    role: 'words',
    value: 'size' in one ? figure(one.size) : 'value' in one ? figure(one.value) : null,
    passed: null,
    limit: null,
    margin: null,
    tool: null,
    watched: null,
    ...doneBy(unit, one),
    text: null,
    tries: 1,
  };
}

function tested(
  unit: Unit,
  what: Pick<RecordResult, 'name' | 'role' | 'passed' | 'tries'>,
  result: Read | null,
  limit: Limit | null,
): RecordResult {
  const value = result?.form === 'reading' ? result.value : null;
  const tool = result?.form === 'reading' ? (result.tool ?? result.watched) : (result?.watched ?? null);
  const watched = result?.form === 'reading' && result.tool !== null ? result.watched : null;
  return {
    value: value === null ? null : figure(value),
    ...heldTo(limit, value),
    tool,
    watched,
    ...doneBy(unit, result),
    text: result?.text ?? null,
    ...what,
  };
}

function figure({ number, unit }: Quantity) {
  return { number, unit };
}

/** The limit in words, and how far inside it a figure is, to six places. */
function heldTo(limit: Limit | null, value: Quantity | null): Pick<RecordResult, 'limit' | 'margin'> {
  if (limit === null) return { limit: null, margin: null };
  const said = formatLimit(limit);
  const ends = value === null ? null : exactWindow(limit, value.unit);
  const at = value === null ? null : convert(value, value.unit);
  if (ends === null || at === null) return { limit: said, margin: null };
  const margins = [ends.low === null ? null : at.sub(ends.low), ends.high === null ? null : ends.high.sub(at)];
  const least = margins.filter((one) => one !== null).sort((one, other) => one.compare(other))[0];
  return { limit: said, margin: least === undefined ? null : exactText(least.round(6)) };
}

/** Who had a result, and on which day: the next to sign behind it. */
function doneBy({ results }: Unit, result: Result | null): { readonly by: string | null; readonly on: string | null } {
  const own = result !== null && 'done' in result ? result.done : undefined;
  const done = results.filter((one): one is DoneResult => one.form === 'done');
  const at = result === null ? results.length : results.indexOf(result);
  const { by, on } = done.find((one) => results.indexOf(one) > at) ?? done.at(-1) ?? { by: null, on: null };
  return { by: own?.by ?? by, on: own?.on ?? on };
}

function factOf({ word, name, text, label, by, on }: FactResult) {
  return { word, name, text, label, by, on };
}

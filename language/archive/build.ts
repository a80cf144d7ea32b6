import type { CertificateOptions } from '../documents/certificate/index.ts';
import { buildCertificate } from '../documents/certificate/index.ts';
import { judgeJob } from '../judgment/judge.ts';
import type { LimitVerdict, TestVerdict, TorqueVerdict } from '../judgment/judged.ts';
import type { DoneResult, FactResult, Job, Result, ShimResult, Unit } from '../model/job.ts';
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
      units: [...judged.units.map(unitAnswers), ...held].sort((one, other) => Number(one.place) - Number(other.place)),
    },
    content: { certificate, ...texts },
    format: 'handtight record 1',
    versions: { handtight: version },
  };
}

function unitHead({ place, numberText, serial, noSerial, onHold }: Unit) {
  return { place, number: numberText, serial, noSerial, onHold };
}

function unitAnswers(verdict: LimitVerdict) {
  const { unit, found, outcomes, torques, shimsOut, shimsIn, remarks, renewed, facts, done } = verdict;
  return {
    ...unitHead(unit),
    remarks: [...remarks],
    renewed: renewed.map(({ part, number = null, batch = null }) => ({ part, number, batch })),
    facts: facts.map(factOf),
    results: [
      ...found.map((one) => tested(unit, one, 'as found')),
      ...shimsOut.map((one) => shim(unit, one, 'shim out')),
      ...shimsIn.map((one) => shim(unit, one, 'shim in')),
      ...torques.map((one) => torque(unit, one)),
      ...outcomes.map((one) => {
        const { asked, reading, held, failed, verdict } = one;
        const passed = failed ? false : (verdict ?? (reading !== null && held !== null ? true : null));
        return tested(unit, { name: asked.name, reading, held, verdict: passed }, 'as left');
      }),
    ],
    done: done.map(({ by, on }) => ({ by, on })),
  };
}

function tested(
  unit: Unit,
  { name, reading, verdict, held }: Pick<TestVerdict, 'name' | 'reading' | 'verdict' | 'held'>,
  role: 'as found' | 'as left',
): RecordResult {
  const said = unit.results.findLast(
    (one) => one.form === 'verdict' && one.name === name && one.asFound === (role === 'as found'),
  );
  const at = reading ?? said ?? null;
  return {
    name,
    role,
    value: reading === null ? null : figure(reading.value),
    passed: verdict,
    ...heldTo(held?.limit ?? null, reading?.value ?? null),
    tool: reading?.tool ?? reading?.watched ?? (said?.form === 'verdict' ? said.watched : null),
    ...doneBy(unit, at),
    text: reading?.text ?? null,
    tries: unit.results.filter(
      (one) =>
        (one.form === 'reading' || one.form === 'verdict') &&
        one.name === name &&
        one.asFound === (role === 'as found'),
    ).length,
  };
}

function torque(unit: Unit, { torque: one, held }: TorqueVerdict): RecordResult {
  return {
    name: one.part,
    role: 'torque',
    value: figure(one.value),
    passed: true,
    ...heldTo(held?.limit ?? null, one.value),
    tool: one.tool,
    ...doneBy(unit, one),
    text: null,
    tries: 1,
  };
}

function shim(unit: Unit, one: ShimResult, role: 'shim out' | 'shim in'): RecordResult {
  const { part: name, size, tool } = one;
  return {
    name,
    role,
    value: figure(size),
    passed: null,
    limit: null,
    margin: null,
    tool,
    ...doneBy(unit, one),
    text: null,
    tries: 1,
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

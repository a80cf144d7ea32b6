import { proofsFor, type RequiredTorque } from '../../analysis/held.ts';
import { factText, factTitle, makersWords } from '../../i18n/fact-words.ts';
import type { Words } from '../../i18n/index.ts';
import { limitWords } from '../../i18n/limit-words.ts';
import type { JudgedJob, LimitVerdict, Missing, TestVerdict, Verdict } from '../../judgment/judged.ts';
import { unitsWords } from '../../judgment/say.ts';
import { ownUnit } from '../../judgment/set-spread.ts';
import type { FactResult, FactWord, Job, RenewedResult, Unit } from '../../model/job.ts';
import type { Procedure, Step } from '../../model/procedure.ts';
import { testOf } from '../../model/reading-id.ts';
import type { Calibration } from '../../model/shop.ts';
import { capital, nameWords, partWords, titleOf } from '../../model/titles.ts';
import { limitText } from '../../quantities/index.ts';
import type { Quantity } from '../../quantities/types.ts';
import { acceptanceText } from '../acceptance.ts';
import { stepFigures } from '../figures/step-figures.ts';
import { testFacts } from '../figures/test-facts.ts';
import type { Block, TableBlock, TextBlock } from '../model.ts';
import { numberWords } from '../names.ts';
import type { PrintContext } from '../print-context.ts';
import { accuracyWords, assetWords } from '../tools.ts';

/** Most units side by side in the table of readings. */
const mostUnits = 6;

/** Shares of the width: what is read, its limit, and all units together. */
const shares = { what: 9, limit: 8.5, units: 28 };

/** Millimeters that all units together have on A4, and what a cell has at its sides. */
const widthOfUnits = (186 * shares.units) / (shares.what + shares.limit + shares.units);
const sides = 3;

/** About how wide a text is that does not break, bold and on the wide side. */
function widthOf(text: string): number {
  return [...text].reduce(
    (sum, letter) => sum + (/[mMW%]/u.test(letter) ? 2.8 : /[\s.,il]/u.test(letter) ? 0.9 : 1.75),
    0,
  );
}

/** Who the units are, how they came in, and what went in new. */
export function unitsTable(setting: PrintContext, judged: readonly LimitVerdict[]): TableBlock | null {
  const { words } = setting;
  if (judged.length === 0) return null;
  const { title, found, renewed, done } = words.certificate.units;
  return {
    kind: 'table',
    title,
    columns: [
      { head: words.units.place, share: 2 },
      { head: words.units.number, share: 4 },
      { head: words.units.serial, share: 3 },
      { head: found, share: 6 },
      { head: renewed, share: 5 },
      { head: done, share: 5 },
    ],
    rows: judged.map((one) => [
      { text: one.unit.place, strong: true },
      { text: numberWords(setting.procedure, one.unit.numberText), strong: true },
      { text: serialWords(words, one.unit), strong: true },
      { text: one.remarks.join('; ') },
      { text: capital(one.renewed.map((made) => renewedWords(setting, made)).join(', ')) },
      { text: doneWords(words, one) },
    ]),
  };
}

function renewedWords({ procedure, words }: PrintContext, renewed: RenewedResult): string {
  const makers = makersWords(renewed).join(', ');
  const name = words.inSentence(partWords(procedure, renewed.part));
  return makers === '' ? name : `${name} (${makers})`;
}

/** Matters of the house: they are on the traveler. */
const ofTheHouse: ReadonlySet<FactWord> = new Set(['brought', 'taken-in', 'promised', 'quote', 'waiting']);

/** What is written down besides results, for the job and for its units: complaint, concessions, deviations. */
export function factsTable(setting: PrintContext, job: Job, units: readonly LimitVerdict[]): TableBlock | null {
  const { procedure, words } = setting;
  const { title, where, what, conceded } = words.certificate.facts;
  const text = (fact: FactResult, verdict: LimitVerdict | null): string => {
    const out = verdict?.outcomes.find((one) => one.conceded === fact);
    if (out === undefined || out.reading === null || out.held === null)
      return factText(words, fact, (name) => nameWords(procedure, name));
    return conceded({
      name: nameWords(procedure, out.asked.name),
      reading: words.quantity(out.reading.value),
      limit: limitWords(words, out.held.limit, out.reading.value),
      by: fact.by ?? '',
      on: fact.on ?? '',
      reason: fact.text ?? '',
    });
  };
  const rowsOf = (place: string, facts: readonly FactResult[], verdict: LimitVerdict | null) =>
    facts
      .filter(({ word }) => !ofTheHouse.has(word))
      .map((fact) => [
        { text: place, strong: true },
        { text: capital(factTitle(words, fact)) },
        { text: text(fact, verdict) },
      ]);
  const rows = [
    ...rowsOf(words.certificate.missing.job, job.intake, null),
    ...units.flatMap((one) => rowsOf(words.certificate.oneUnit({ units: one.unit.place }), one.facts, one)),
  ];
  if (rows.length === 0) return null;
  return {
    kind: 'table',
    title,
    columns: [
      { head: where, share: 3 },
      { head: what, share: 4 },
      { head: '', share: 18 },
    ],
    rows,
  };
}

/** The serial, or that it has none and why. */
function serialWords({ certificate }: Words, { serial, noSerial }: Unit): string {
  return serial ?? (noSerial == null ? '' : certificate.noSerial({ reason: noSerial }));
}

function doneWords({ certificate: { units } }: Words, { done }: LimitVerdict): string {
  const said = done.map(({ by, on }) => (on === null ? by : units.doneOn({ by, on })));
  return [...new Set(said)].join('; ');
}

export function notCertifiedTable(setting: PrintContext, onHold: readonly Unit[]): TableBlock | null {
  const { words } = setting;
  if (onHold.length === 0) return null;
  const { title, reason } = words.certificate.notCertified;
  return {
    kind: 'table',
    title,
    columns: [
      { head: words.units.place, share: 2 },
      { head: words.units.number, share: 4 },
      { head: words.units.serial, share: 3 },
      { head: reason, share: 16 },
    ],
    rows: onHold.map((unit) => [
      { text: unit.place, strong: true },
      { text: numberWords(setting.procedure, unit.numberText) },
      { text: serialWords(words, unit) },
      { text: unit.onHold ?? '' },
    ]),
  };
}

/** A line of the table of readings: a thing, and for each unit that has it its limit and what was read. */
interface Row {
  readonly key: string;
  readonly label: string;
  readonly limits: ReadonlyMap<Unit, string>;
  readonly cells: ReadonlyMap<Unit, string>;
  /** The result of a proof. */
  readonly strong: boolean;
}

/**
 * What was read of each unit: as found, what was fitted, and as left. Units are side by side, six to a table, or as
 * many as there is room for.
 */
export function resultTables({ procedure, words }: PrintContext, { units }: JudgedJob): TableBlock[] {
  if (units.length === 0) return [];
  const texts = rowsOf(procedure, words, units).flatMap(({ cells }) => [...cells.values()]);
  // A quantity and its unit stay together.
  const widest = Math.max(...texts.flatMap((cell) => cell.split(' ').map(widthOf)));
  const across = Math.min(mostUnits, Math.max(1, Math.floor(widthOfUnits / (widest + sides))));
  const tables = Math.ceil(units.length / across);
  const each = Math.ceil(units.length / tables);
  const { title, what, limit } = words.certificate.results;
  return Array.from({ length: tables }, (_, index) => {
    const some = units.slice(index * each, (index + 1) * each);
    const of = some.map(({ unit }) => unit);
    return {
      kind: 'table',
      title,
      columns: [
        { head: what, share: shares.what },
        { head: limit, share: shares.limit },
        ...of.map(({ place }) => ({ head: `${words.units.place} ${place}`, share: shares.units / Math.max(each, 4) })),
      ],
      rows: rowsOf(procedure, words, some).map((row) => [
        { text: row.label, strong: row.strong },
        { text: limitCell(words, row, of) },
        ...of.map((unit) => ({ text: row.cells.get(unit) ?? '', strong: row.strong })),
      ]),
    };
  });
}

/** One limit for all of them, or with the units that each is for. */
function limitCell(words: Words, { limits }: Row, units: readonly Unit[]): string {
  const byText = new Map<string, string[]>();
  const having = units.filter((unit) => limits.has(unit));
  for (const unit of having) {
    const text = limits.get(unit)!;
    byText.set(text, [...(byText.get(text) ?? []), unit.place]);
  }
  if (byText.size === 1) return [...byText.keys()][0]!;
  return [...byText]
    .filter(([text]) => text !== '')
    .map(([limit, places]) => words.certificate.results.of({ units: places.join(', '), limit }))
    .join('; ');
}

function rowsOf(procedure: Procedure, words: Words, units: readonly LimitVerdict[]): Row[] {
  const { results } = words.certificate;
  const rows = new Map<string, Row & { limits: Map<Unit, string>; cells: Map<Unit, string> }>();
  const put = (key: string, label: string, unit: Unit, limit: string, cell: string, strong = false) => {
    const row = rows.get(key) ?? { key, label, limits: new Map(), cells: new Map(), strong };
    row.limits.set(unit, limit);
    row.cells.set(unit, cell);
    rows.set(key, row);
  };
  const name = (of: string) => nameWords(procedure, of);
  for (const { unit, found } of units)
    for (const one of found)
      put(
        `found ${one.name}`,
        results.asFound({ name: name(one.name) }),
        unit,
        one.held === null || one.reading === null
          ? ''
          : results.inService({ limit: limitWords(words, one.held.limit, one.reading.value) }),
        asFound(words, one),
      );
  for (const { unit, shimsOut } of units)
    for (const { part, size } of shimsOut)
      put(`out ${part}`, results.out({ part: capital(partWords(procedure, part)) }), unit, '', words.quantity(size));
  for (const { unit, shimsIn } of units)
    for (const { part, size } of shimsIn)
      put(`in ${part}`, results.in({ part: capital(partWords(procedure, part)) }), unit, '', words.quantity(size));
  for (const { unit, torques } of units)
    for (const { torque, held } of torques)
      put(
        `torque ${torque.part}`,
        results.torque({ part: capital(partWords(procedure, torque.part)) }),
        unit,
        held === null ? '' : limitText(held.limit, words.wording),
        words.quantity(torque.value),
      );
  const proofs = proofsOf(procedure, units);
  for (const proof of proofs)
    for (const { unit, outcomes } of units) {
      const one = outcomes.find(({ asked }) => asked.name === proof);
      if (one === undefined) put(`left ${proof}`, name(proof), unit, '', words.limits.notRequired, true);
      else put(`left ${proof}`, name(proof), unit, asLeftLimit(words, procedure, one), asLeft(words, one), true);
    }
  for (const { unit } of units)
    for (const one of unit.results)
      if (one.form === 'words') put(`words ${one.name}`, name(one.name), unit, '', one.text);
  for (const { unit, outcomes } of units)
    for (const one of outcomes)
      if (!proofs.includes(one.asked.name))
        put(
          `left ${one.asked.name}`,
          name(one.asked.name),
          unit,
          asLeftLimit(words, procedure, one),
          asLeft(words, one),
        );
  return [...rows.values()];
}

/** The readings that prove the units. */
function proofsOf(procedure: Procedure, units: readonly LimitVerdict[]): string[] {
  const all = [...new Set(units.flatMap(({ unit }) => proofsFor(procedure, unit)))];
  // A unit that needs none of the readings of another's test has no row of its own for that.
  return all.filter((id) => !all.some((other) => other !== id && testOf(other) === id));
}

/** `196 bar, fail`: as it came in, by the limit in service. */
function asFound({ certificate: { results }, quantity }: Words, { reading, verdict }: TestVerdict): string {
  const said = verdict === null ? null : verdict ? results.pass : results.fail;
  if (reading === null) return said ?? '';
  const value = quantity(reading.value);
  return said === null ? value : results.judged({ reading: value, verdict: said });
}

/** `254 bar, pass`; only a reading that has a limit passes by itself. */
function asLeft({ certificate: { results }, quantity }: Words, one: Verdict): string {
  const { reading, verdict, held, failed, problems } = one;
  if (reading === null) return verdict === null ? results.none : verdict ? results.pass : results.fail;
  const value = quantity(reading.value);
  if (held === null && verdict === null) return value;
  if (failed) return results.judged({ reading: value, verdict: results.fail });
  // With something missing nobody can say that it passes.
  return problems.length > 0 ? value : results.judged({ reading: value, verdict: results.pass });
}

function asLeftLimit(words: Words, procedure: Procedure, one: Verdict): string {
  const { step } = one.asked;
  const said = [
    one.held === null ? null : heldWords(words, procedure, one.held, one),
    step?.accept ?? null,
    step?.reject == null ? null : `${words.facts.reject}: ${step.reject}`,
  ];
  return said.filter((word) => word !== null).join('; ');
}

function heldWords(words: Words, procedure: Procedure, held: RequiredTorque, { reading, guarded }: Verdict): string {
  const { results } = words.certificate;
  const limit = limitWords(words, held.limit, reading?.value ?? null);
  const whole =
    held.newPart === null
      ? limit
      : results.withNew({ limit, part: words.inSentence(partWords(procedure, held.newPart)) });
  const tool = reading?.tool ?? null;
  if (guarded === null || tool === null) return whole;
  const { low, high } = guarded;
  const figure = (one: Quantity) => words.quantity(one);
  if (low === null) return high === null ? whole : results.guardedHigh({ limit: whole, high: figure(high), tool });
  return high === null
    ? results.guardedLow({ limit: whole, low: figure(low), tool })
    : results.guarded({ limit: whole, low: figure(low), high: figure(high), tool });
}

/** How far the units lie apart. */
export function spreadTexts({ procedure, words }: PrintContext, { spreads }: JudgedJob): TextBlock[] {
  const { certificate } = words;
  return spreads.map(({ name, units, spread, asRead, limit }) => {
    const said = {
      name: nameWords(procedure, name),
      units: unitsWords(words, units),
      spread: words.quantity(spread),
      limit: limitWords(words, limit, ownUnit(spread)),
    };
    const text =
      asRead === null
        ? certificate.spread(said)
        : certificate.spreadSettled({ ...said, asRead: words.quantity(asRead) });
    return { kind: 'text', text, strong: false };
  });
}

/** The decision rule with its source; where a spec has one of its own, that too. */
export function ruleText(setting: PrintContext, { units }: JudgedJob): TextBlock {
  const { procedure, words } = setting;
  const shop = procedure.shop.acceptance.rule;
  const own = units.flatMap(({ outcomes }) =>
    outcomes.flatMap(({ asked, held }) =>
      held === null || held.rule === shop
        ? []
        : [words.certificate.ownRule({ name: nameWords(procedure, asked.name), rule: words.acceptance[held.rule] })],
    ),
  );
  const { text, ...block } = acceptanceText(setting);
  // Nothing is kept between a reading and its limit: how sure a pass is then depends on the tool.
  const risk = shop === 'simple' ? [words.certificate.risk] : [];
  return { ...block, text: `${[text, ...risk, ...new Set(own)].join('. ')}.` };
}

/** Where each limit comes from: one source with all limits that it covers. */
export function sourcesText({ procedure, words }: PrintContext, judged: JudgedJob): TextBlock | null {
  const { certificate } = words;
  const bySource = new Map<string, Set<string>>();
  const note = (source: string | null, name: string) => {
    const text = source ?? certificate.sourceMissing;
    bySource.set(text, (bySource.get(text) ?? new Set()).add(words.inSentence(name)));
  };
  const noteHeld = (held: RequiredTorque | null, name: string) => {
    if (held === null) return;
    note(held.source, name);
    const { standing } = held;
    if (standing !== null) note(standing.sourceText, certificate.standing({ limit: words.limit(standing.limit) }));
  };
  for (const { found, torques, outcomes } of judged.units) {
    for (const { held, reading, name } of found)
      if (reading !== null) noteHeld(held, nameWords(procedure, testOf(name)));
    for (const { held, torque } of torques)
      noteHeld(held, certificate.results.torque({ part: partWords(procedure, torque.part) }));
    for (const { held, asked } of outcomes) {
      // Points and places of a test have its source.
      const name = nameWords(procedure, testOf(asked.name));
      noteHeld(held, name);
      if (held === null && asked.step?.sourceText != null) note(asked.step.sourceText, name);
    }
  }
  for (const { name, source } of judged.spreads)
    note(source, certificate.results.spreadOf({ name: words.inSentence(nameWords(procedure, name)) }));
  if (bySource.size === 0) return null;
  const sources = [...bySource].map(([source, names]) =>
    certificate.sourceOf({ source, names: [...names].join(', ') }),
  );
  return { kind: 'text', text: certificate.sources({ sources: sources.join('; ') }), strong: false };
}

/** The tools of what is certified, with what they are good for and until when. */
export function toolsTable({ procedure, words }: PrintContext, { units }: JudgedJob): TableBlock | null {
  const all = units.flatMap(({ tools }) => tools);
  const used = procedure.shop.assets.flatMap((asset) => {
    const own = all.filter((tool) => tool.asset === asset).map(({ calibration }) => calibration);
    return [...new Set(own)].map((calibration) => ({ asset, calibration }));
  });
  if (used.length === 0) return null;
  const { title, tool, number, accuracy, due, notStated } = words.certificate.tools;
  return {
    kind: 'table',
    title,
    columns: [
      { head: tool, share: 5 },
      { head: number, share: 2.5 },
      { head: accuracy, share: 4.5 },
      { head: due, share: 5 },
    ],
    rows: used.map(({ asset, calibration }) => [
      { text: assetWords(asset, words.tools.kinds) },
      { text: asset.name, strong: true },
      { text: accuracyWords(words, asset) || notStated },
      { text: calibrationWords(words, calibration) || notStated },
    ]),
  };
}

/** `2026-01-15 to 2027-01-15, K-113`. */
function calibrationWords({ names }: Words, calibration: Calibration | null): string {
  if (calibration === null) return '';
  const { calibrated, due, certificate } = calibration;
  const days = calibrated === null ? due : due === null ? calibrated : names.through({ from: calibrated, to: due });
  return [days, certificate].filter((word) => word !== null).join(', ');
}

/** At what the units were tested, as the procedure asks for it. */
export function conditionsTable(setting: PrintContext, { units }: JudgedJob): TableBlock | null {
  const { procedure, words } = setting;
  const tests = new Map<string, Step>();
  for (const { outcomes } of units)
    for (const { asked } of outcomes) if (asked.step !== null) tests.set(testOf(asked.name), asked.step);
  const rows = [...tests].flatMap(([name, step]) => {
    const place = procedure.stages.find(({ steps }) => steps.includes(step))!;
    const figures = stepFigures(setting, step, place);
    const points = (figures.plan?.points ?? []).flatMap(({ point, at }) =>
      point === null || at.length === 0 ? [] : [{ label: `${capital(titleOf(point))}:`, text: at.join(', ') }],
    );
    const facts = [...testFacts(setting, figures), ...points];
    const said = facts
      .map(({ label, text }, at) => {
        const whole = `${label} ${text}`;
        return at === 0 || label.endsWith(':') ? whole : words.inSentence(whole);
      })
      .join(points.length === 0 ? ', ' : '; ');
    return facts.length === 0 ? [] : [[{ text: nameWords(procedure, name), strong: true }, { text: said }]];
  });
  if (rows.length === 0) return null;
  const { title, test, conditions } = words.certificate.conditions;
  return {
    kind: 'table',
    title,
    columns: [
      { head: test, share: 4 },
      { head: conditions, share: 14 },
    ],
    rows,
  };
}

/** Standing words of the shop. */
export function termsText({ procedure }: PrintContext): TextBlock | null {
  const { terms } = procedure.shop.about;
  return terms === null ? null : { kind: 'text', text: terms, strong: false };
}

/** What shows that the testers were right on the day. */
export function checksTexts({ words }: PrintContext, { checks }: JudgedJob): TextBlock[] {
  return checks.map(({ master, reading: { value, tool, done } }) => ({
    kind: 'text',
    text: words.certificate.check({
      name: master.title,
      reading: words.quantity(value),
      limit: master.limit === null ? words.certificate.results.none : limitWords(words, master.limit, value),
      tool: tool ?? '',
      by: done?.by ?? '',
      on: done?.on ?? '',
    }),
    strong: false,
  }));
}

/** On a draft: what is in the way. */
export function missingTable({ words }: PrintContext, missing: readonly Missing[]): TableBlock | null {
  if (missing.length === 0) return null;
  const { title, where, what } = words.certificate.missing;
  return {
    kind: 'table',
    title,
    columns: [
      { head: where, share: 4 },
      { head: what, share: 12 },
    ],
    rows: missing.map((one) => [{ text: capital(placeWords(words, one)), strong: true }, { text: one.say(words) }]),
  };
}

/** `unit 3 A-250 0413`, `the set`, `the job`. */
export function placeWords({ certificate: { missing } }: Words, { unit, of }: Missing): string {
  if (unit === null) return of === 'set' ? missing.set : missing.job;
  const known = [unit.place, unit.number ?? unit.numberText, unit.serial].filter((word) => word !== null);
  return missing.unit({ unit: known.join(' ') });
}

/** Boxes for name, signature and date: of who did the work, and of who releases it. */
export function releaseTable({ words }: PrintContext, { units }: JudgedJob): Block {
  const { title, signature, what, work, released } = words.certificate.release;
  const { name, date } = words.lines;
  const people = [...new Set(units.flatMap(({ done }) => done.map(({ by }) => by)))];
  const row = (label: string, of: string) => [
    { text: label },
    { text: of, fill: of === '' },
    { text: '', fill: true },
    { text: '', fill: true },
  ];
  return {
    kind: 'table',
    title,
    columns: [
      { head: what, share: 3 },
      { head: name, share: 5 },
      { head: signature, share: 6 },
      { head: date, share: 3 },
    ],
    rows: [...people.map((by) => row(work, by)), row(released, '')],
  };
}

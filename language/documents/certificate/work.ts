/** What was done besides: new parts, what is looked at in every unit, and what did not pass at once. */
import type { Words } from '../../i18n/index.ts';
import type { JudgedJob, LimitVerdict, Verdict } from '../../judgment/judged.ts';
import type { Result } from '../../model/job.ts';
import type { Procedure } from '../../model/procedure.ts';
import { capital, nameWords, partWords } from '../../model/titles.ts';
import { compare, window } from '../../quantities/index.ts';
import type { TableBlock, TextBlock } from '../model.ts';
import { baseTitle } from '../names.ts';
import type { PrintContext } from '../print-context.ts';

/** All parts that went in new, with their count: those of every unit, then those of some. */
export function newParts({ procedure, words }: PrintContext, { units }: JudgedJob): TextBlock | null {
  const { newPart, newParts: all } = words.certificate.units;
  const always = new Map<string, number>();
  for (const part of procedure.family.parts)
    if (part.renewed) always.set(baseTitle(part), (always.get(baseTitle(part)) ?? 0) + units.length);
  const some = new Map<string, string[]>();
  for (const { unit, renewed } of units)
    for (const { part } of renewed) {
      const title = partWords(procedure, part);
      if (!always.has(title)) some.set(title, [...(some.get(title) ?? []), unit.place]);
    }
  const counted = [
    ...[...always].map(([title, count]) => ({ title, count, where: words.certificate.everyUnit })),
    ...[...some].map(([title, places]) => ({ title, count: places.length, where: placesWords(words, places) })),
  ].filter(({ count }) => count > 0);
  if (counted.length === 0) return null;
  const parts = counted.map(({ title, count, where }) =>
    newPart({ count: String(count), part: words.inSentence(title), where }),
  );
  return { kind: 'text', text: all({ parts: parts.join(', ') }), strong: false };
}

function placesWords({ certificate, list }: Words, places: readonly string[]): string {
  return certificate[places.length === 1 ? 'oneUnit' : 'severalUnits']({ units: list(places) });
}

/** What the procedure looks at or measures in every unit. */
export function inspected({ procedure, words }: PrintContext, { units }: JudgedJob): TextBlock | null {
  const parts = procedure.family.alwaysChecked.map(({ name }) => words.inSentence(partWords(procedure, name)));
  if (parts.length === 0 || units.length === 0) return null;
  const text = words.certificate.units.inspected({ parts: words.list([...new Set(parts)]) });
  return { kind: 'text', text, strong: false };
}

/** What was read and done before a unit passed: a row for each time on test but the last. */
export function correctedTable({ procedure, words }: PrintContext, { units }: JudgedJob): TableBlock | null {
  const { title, before, after } = words.certificate.corrected;
  const rows = units.flatMap((one) => {
    const tries = triesOf(one);
    return tries
      .slice(0, -1)
      .map(({ tested }, at) => [
        { text: one.unit.place, strong: true },
        { text: tested.map((result) => testedWords(procedure, words, one, result)).join('; ') },
        { text: capital(tries[at + 1]!.changed.map((result) => changedWords(procedure, words, result)).join('; ')) },
      ]);
  });
  if (rows.length === 0) return null;
  return {
    kind: 'table',
    title,
    columns: [
      { head: words.units.place, share: 2 },
      { head: before, share: 10 },
      { head: after, share: 13 },
    ],
    rows,
  };
}

interface Try {
  readonly changed: Result[];
  readonly tested: Result[];
}

/** A new try begins where something was changed after a test. */
function triesOf({ unit }: LimitVerdict): Try[] {
  const tries: Try[] = [{ changed: [], tested: [] }];
  for (const result of unit.results) {
    if (result.form === 'reading' || result.form === 'verdict') {
      if (!result.asFound) tries.at(-1)!.tested.push(result);
    } else if (result.form === 'shim' || result.form === 'torque' || result.form === 'renewed') {
      if (tries.at(-1)!.tested.length > 0) tries.push({ changed: [], tested: [] });
      tries.at(-1)!.changed.push(result);
    }
  }
  // What is tightened or measured after the last test begins no other.
  return tries.filter(({ tested }) => tested.length > 0);
}

/** `Opening pressure 246 bar ✗`: by the limit that the last reading of that name is held to. */
function testedWords(procedure: Procedure, words: Words, { outcomes }: LimitVerdict, result: Result): string {
  const { results } = words.certificate;
  if (result.form === 'verdict')
    return `${nameWords(procedure, result.name)} ${result.passed ? results.pass : results.fail}`;
  if (result.form !== 'reading') return '';
  const said = `${nameWords(procedure, result.name)} ${words.quantity(result.value)}`;
  const passed = insideLast(
    outcomes.find(({ asked }) => asked.name === result.name),
    result,
  );
  return passed === null ? said : results.judged({ reading: said, verdict: passed ? results.pass : results.fail });
}

function insideLast(last: Verdict | undefined, { value }: Extract<Result, { form: 'reading' }>): boolean | null {
  if (last?.held == null) return null;
  const { low, high } = window(last.held.limit);
  if (low === null && high === null) return null;
  const [over, under] = [low === null ? 1 : compare(value, low), high === null ? -1 : compare(value, high)];
  return over === null || under === null ? null : over !== -1 && under !== 1;
}

function changedWords(procedure: Procedure, words: Words, result: Result): string {
  const { results } = words.certificate;
  const part = 'part' in result ? words.inSentence(partWords(procedure, result.part)) : '';
  switch (result.form) {
    case 'renewed':
      return words.log.renewed({ part });
    case 'shim':
      return `${(result.fitted ? results.in : results.out)({ part })} ${words.quantity(result.size)}`;
    case 'torque':
      return `${results.torque({ part })} ${words.quantity(result.value)}`;
    default:
      return '';
  }
}

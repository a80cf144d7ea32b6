/**
 * Everything that an editor shows of a text, for a reader whose language has no letters: what is left of the answers comes from
 * the text, or is a word of the files' language. Whatever else is there went around the translator.
 */
import { describe, expect, it } from 'vitest';
import { calculations, usage, workOut } from '../../language/calculator/work-out.ts';
import { rules } from '../../language/diagnostics/index.ts';
import { de } from '../../language/i18n/de.ts';
import type { Reader } from '../../language/i18n/translate.ts';
import { callablesAt } from '../../language/ide/call-hierarchy.ts';
import { allSafeTitle } from '../../language/ide/code-actions.ts';
import { printTitle, usesTitle } from '../../language/ide/code-lenses.ts';
import { completionsAt } from '../../language/ide/completion/completions.ts';
import { documentLinksOf } from '../../language/ide/document-links.ts';
import { documentationOf } from '../../language/ide/documentation.ts';
import { hoverAt } from '../../language/ide/hover/hover.ts';
import { inlayHintsIn } from '../../language/ide/inlay-hints.ts';
import { drawnTargetAt, notFoundHere, printTargetAt } from '../../language/ide/print-target.ts';
import { refactoringsIn } from '../../language/ide/refactorings.ts';
import { renameAt, renameSubjectAt } from '../../language/ide/rename.ts';
import { signatureAt } from '../../language/ide/signature.ts';
import { snapshotOf } from '../../language/ide/snapshot.ts';
import { stateViewAt } from '../../language/ide/state-view.ts';
import { drawnAs } from '../../language/model/drawn-as.ts';
import { units } from '../../language/quantities/unit-table.ts';
import { rateLines } from '../../language/recommendations/rate-report.ts';
import { matchLines, shimLines } from '../../language/recommendations/report.ts';
import { type Filling, filled, rendered } from '../../language/say/say.ts';
import { scan } from '../../language/syntax/scan.ts';
import { typeOf } from '../../language/syntax/token.ts';
import { phrases } from '../../language/syntax/verbs/phrases.ts';
import { libraryFiles } from '../library.ts';

/** A language whose texts are their holes. */
const withoutLetters = {
  language: 'de',
  text: (template: string, fillings: readonly string[]) =>
    filled([...template.matchAll(/\{\d+\}/gu)].map(([hole]) => hole).join(' '), fillings),
  term: () => '·',
  and: (items: readonly string[]) => items.join(' '),
  or: (items: readonly string[]) => items.join(' '),
  lower: (title: string) => title,
};
const reader: Reader = {
  language: 'de',
  tell: (said: Filling) => (Array.isArray(said) && said[0] === '{in each}' ? '' : rendered(said, withoutLetters)),
};
const { tell } = reader;

const files = libraryFiles().filter(({ uri }) =>
  /^procedures\/(?:shared|one-spring|jobs)\/|^procedures\/shop/u.test(uri),
);
const snapshot = snapshotOf(files);
const uri = 'procedures/one-spring/procedure.rebuild';
const jobUri = 'procedures/jobs/job-2207.rebuild';
const text = files.find((file) => file.uri === uri)!.text;
const lines = text.split('\n');

const wordsOf = (texts: string) => texts.toLowerCase().match(/\p{L}{2,}/gu) ?? [];
const known = new Set([
  ...files.flatMap((file) => wordsOf(file.text)),
  ...[...typeOf.keys()].flatMap(wordsOf),
  ...phrases.flatMap(({ said, shown }) => [...said, shown ?? '']).flatMap(wordsOf),
  ...units.flatMap(({ name }) => wordsOf(name)),
  ...rules.flatMap(({ code }) => wordsOf(code)),
  ...drawnAs.flatMap(wordsOf),
  ...calculations.flatMap(({ name, inputs }) => [name, ...inputs.map((one) => one.name)]).flatMap(wordsOf),
  // Of formulas.
  ...['cos', 'µt', 'rt', 'µn', 'rn'],
  // What the sheet says too is said in its words.
  ...wordsOf(JSON.stringify(de)),
]);

/** Words that are in no language: without samples in the language of the files, and pictures. */
function untranslated(shown: string): string[] {
  const prose = shown.replace(/```[\s\S]*?```/gu, '').replace(/!\[[^\]]*\]\([^)]*\)/gu, '');
  return wordsOf(prose).filter((word) => !known.has(word));
}

/** Every place of the procedure where a word begins, each word twice at most. */
const places = (() => {
  const seen = new Map<string, number>();
  return scan(text).lines.flatMap(({ tokens, number }) =>
    tokens.flatMap(({ image, column }) => {
      const count = (seen.get(image) ?? 0) + 1;
      seen.set(image, count);
      return count > 2 || !/^[\p{L}\d]/u.test(image) ? [] : [{ line: number, character: column }];
    }),
  );
})();

const steps = lines.flatMap((line, index) => (/^ {4}[a-z]/u.test(line) ? [index] : [])).filter((_, at) => at % 4 === 0);

const surfaces: Readonly<Record<string, () => (Filling | null | undefined)[]>> = {
  hover: () => places.map((at) => hoverAt(snapshot, uri, at, reader)?.markdown),
  completion: () =>
    steps.flatMap((line) => {
      const words = [...lines[line]!.matchAll(/(?<=^ {4}|\S ) *(?=\S)/gu)].map(
        ({ index, 0: blank }) => index + blank.length,
      );
      return words
        .slice(0, 3)
        .flatMap((character) =>
          completionsAt(snapshot, uri, { line, character }, { snippets: true, onlyNames: false }).flatMap(
            ({ detail, description }) => [detail, description],
          ),
        );
    }),
  'documentation of a suggestion': () => {
    const all = new Map(
      steps
        .flatMap((line) => completionsAt(snapshot, uri, { line, character: 4 }, { snippets: true, onlyNames: false }))
        .concat(completionsAt(snapshot, uri, { line: steps[0]!, character: lines[steps[0]!]!.length }, all0))
        .map((one) => [one.label, one]),
    );
    return [...all.values()].map((one) => documentationOf(snapshot, one, tell));
  },
  'rules behind allow': () =>
    rules.map(({ code }) => documentationOf(snapshot, { label: code, kind: 'rule', about: code }, tell)),
  signature: () =>
    steps.flatMap((line) => {
      const found = signatureAt(snapshot, uri, { line, character: lines[line]!.length }, tell);
      return found === null ? [] : [found.label, found.documentation];
    }),
  hints: () =>
    [uri, jobUri].flatMap((file) =>
      inlayHintsIn(snapshot, file, everywhere, { shims: true, steps: true, limits: true }, reader).map(
        (one) => one.text,
      ),
    ),
  refactorings: () =>
    [...steps, lines.findIndex((line) => line.startsWith('procedure'))].flatMap((line) =>
      refactoringsIn(snapshot, uri, { start: { line, character: 12 }, end: { line, character: 14 } }).map(
        ({ title }) => title,
      ),
    ),
  'refusals to rename': () =>
    [
      ...places.map((at) => renameSubjectAt(snapshot, uri, at)),
      ...['', '1x', 'with', 'fit', 'opening', 'nozzle', 'a b'].flatMap((name) =>
        places.filter((_, at) => at % 25 === 0).map((at) => renameAt(snapshot, uri, at, name)),
      ),
    ].flatMap((one) => (one.kind === 'refused' ? [one.reason] : [])),
  'state of the unit': () =>
    steps.flatMap((line) => {
      const view = stateViewAt(snapshot, uri, { line, character: 6 });
      if (view.kind === 'none') return [view.reason];
      return view.groups.flatMap(({ items }) => items.flatMap(({ name, words }) => [name, words]));
    }),
  'no state, no sheet, no drawing': () =>
    [
      stateViewAt(snapshot, uri, { line: 0, character: 0 }),
      printTargetAt(snapshotOf([{ uri: 'x', text: '' }]).result, 'x'),
      drawnTargetAt(snapshotOf([{ uri: 'x', text: '' }]).result, 'x'),
      ...['family a "A" {\n}\n', 'job 7 of nothing at nowhere {\n}\n', 'procedure a for b at c {\n}\n'].map((one) =>
        drawnTargetAt(snapshotOf([{ uri: 'x', text: one }]).result, 'x'),
      ),
    ]
      .flatMap((one) => (one.kind === 'none' ? [one.reason] : []))
      .concat([notFoundHere({ procedure: 'first', job: '' }), notFoundHere({ procedure: 'first', job: '2207' })]),
  'lenses, links and hierarchy': () => [
    printTitle,
    ...[0, 1, 2].map(usesTitle),
    ...documentLinksOf(snapshot, uri).map(({ tooltip }) => tooltip),
    ...places.flatMap((at) => callablesAt(snapshot, uri, at).map(({ detail }) => detail)),
    allSafeTitle,
  ],
  calculations: () =>
    calculations.flatMap((one) => [
      one.title,
      usage(one),
      ...one.inputs.map(({ words }) => words),
      ...['', ...one.example.map((_, at) => at)].map((leftOut) => {
        const made = workOut(
          one,
          one.example.filter((_, at) => at !== leftOut),
          tell,
        );
        return 'problem' in made ? made.problem : made.text;
      }),
    ]),
  advice: () => snapshot.result.jobs.flatMap((job) => [...shimLines(job, reader), ...matchLines(job, reader)]),
  rates: () => snapshot.result.procedures.flatMap(({ procedure }) => rateLines(procedure, snapshot.result.jobs, tell)),
};

const all0 = { snippets: true, onlyNames: false };
const everywhere = { start: { line: 0, character: 0 }, end: { line: 10_000, character: 0 } };

describe('what an editor and the command show', () => {
  it.each(Object.entries(surfaces))('%s: all of it goes through the translator', (_, make) => {
    const shown = make().flatMap((one) => (one == null ? [] : [tell(one)]));
    expect(shown.length).toBeGreaterThan(0);
    // A text inside another that was put together as a text shows its bare template.
    expect(shown.filter((one) => /\{\d\}/u.test(one))).toEqual([]);
    const english = shown.flatMap((one) => untranslated(one).map((word) => `${word} in ${one}`));
    expect(english.slice(0, 10)).toEqual([]);
  });
});

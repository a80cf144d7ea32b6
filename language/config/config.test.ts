import { describe, expect, it } from 'vitest';
import { instead, procedureWith } from '../../tests/fixtures/sound-procedure.ts';
import { checkFiles } from '../db/workspace.ts';
import { fullMessage } from '../model/diagnostic.ts';
import { noSheetSettings, printedAs, readSettings } from './config.ts';

const problems = (text: string) =>
  readSettings({ uri: 'handtight.json', text }).problems.map(
    (one) => `${one.source.range.start.line + 1}:${one.source.range.start.character + 1} ${fullMessage(one)}`,
  );

const severities = (text: string) => [...readSettings({ uri: 'handtight.json', text }).severities];

/** Rule and severity of all that is found in a text beside a settings file. */
const found = (text: string, settings: string) =>
  checkFiles([{ uri: 'shop/example.rebuild', text }], { uri: 'shop/handtight.json', text: settings }).diagnostics.map(
    ({ rule, severity }) => `${rule} ${severity}`,
  );

const notLocated = procedureWith({
  build: instead('spacer located, nozzle located with needle', 'spacer, nozzle located with needle'),
});
const loose = procedureWith({ build: instead('      torque nut to nut-fit with TW-80\n', '') });

describe('how sheets are printed', () => {
  const sheet = (text: string) => readSettings({ uri: 'handtight.json', text: `{ "sheet": ${text} }` }).sheet;

  it('in this language, on this paper, under this word; each holds whatever is wrong with the others', () => {
    expect(sheet('{ "word": "Job card", "language": "es", "paper": "letter" }')).toEqual({
      word: 'Job card',
      language: 'es',
      paper: 'letter',
      form: null,
      kinds: {},
    });
    expect(sheet('{ "language": "fr", "paper": "letter", "form": "record" }')).toEqual({
      word: null,
      language: null,
      paper: 'letter',
      form: 'record',
      kinds: {},
    });
    expect(sheet('{ "kinds": { "shim": "suplemento" } }').kinds).toEqual({ shim: 'suplemento' });
    expect(sheet('{ "kinds": { "needle": "aguja" } }').kinds).toEqual({});
    expect(sheet('7')).toEqual(noSheetSettings);
    expect(problems('{ "sheet": { "language": "fr" } }')).toEqual([
      '1:26 Of the sheet a word, a language ("en", "es" or "de"), a paper ("a4" or "letter") and a form ("card", "record" or "instruction") can be said, and kinds: what shim, shims, spring and springs are called.',
    ]);
    expect(problems('{ "sheet": { "langage": "de" } }')).toEqual([
      '1:14 langage is no setting. Did you mean language?',
    ]);
  });

  it('as requested, else as the file says', () => {
    const said = sheet('{ "word": "Job card", "language": "es" }');
    expect(printedAs(said)).toEqual({ word: 'Job card', language: 'es', paper: 'a4', form: 'card', kinds: {} });
    expect(printedAs(said, { language: 'de', paper: 'letter', form: 'instruction' })).toEqual({
      word: 'Job card',
      language: 'de',
      paper: 'letter',
      form: 'instruction',
      kinds: {},
    });
  });
});

describe('what is not read', () => {
  const excluded = (exclude: unknown) => {
    const read = readSettings({ uri: 'handtight.json', text: JSON.stringify({ exclude }) });
    return { exclude: read.exclude, problems: read.problems.length };
  };

  it('is a list of patterns; each holds whatever is wrong with the others', () => {
    expect(excluded(['archive/', '**/old/**', '*.draft.rebuild', '!keep.rebuild'])).toEqual({
      exclude: ['archive/', '**/old/**', '*.draft.rebuild', '!keep.rebuild'],
      problems: 0,
    });
    expect(excluded(['archive/', 7, ''])).toEqual({ exclude: ['archive/'], problems: 2 });
    expect(excluded('archive/')).toEqual({ exclude: [], problems: 1 });
    expect(problems('{ "exclude": ["a", 7] }')).toEqual([
      '1:20 What is not read is a list of up to 100 patterns as in .gitignore, such as ["archive/", "*.draft.rebuild"]: each with at most 200 characters, two * between slashes, and two **.',
    ]);
    expect(problems('{ "exclud": [] }')).toEqual(['1:3 exclud is no setting. Did you mean exclude?']);
  });

  it('is bounded: a pattern that takes minutes to compare is not taken', () => {
    expect(excluded(['*a'.repeat(50), '**/a/**/b/**/c', 'a'.repeat(201)])).toEqual({ exclude: [], problems: 3 });
    expect(excluded(Array.from({ length: 101 }, (_, index) => `a${index}`)).exclude).toHaveLength(100);
  });
});

describe('a settings file', () => {
  it('raises and lowers severities, and turns a rule off', () => {
    expect(found(notLocated, '{}')).toEqual(['part-not-located warning']);
    expect(found(notLocated, '{ "severities": { "part-not-located": "error" } }')).toEqual(['part-not-located error']);
    expect(found(notLocated, '{ "severities": { "part-not-located": "hint" } }')).toEqual(['part-not-located hint']);
    expect(found(notLocated, '{ "severities": { "part-not-located": "off" } }')).toEqual([]);
  });

  it('cannot lower an error that makes the sheet unsafe', () => {
    const settings = '{\n  "severities": { "left-hand-tight": "off" }\n}';
    expect(found(loose, settings).sort()).toEqual(['left-hand-tight error', 'settings-unreadable error']);
    expect(problems(settings)).toEqual([
      '2:38 left-hand-tight keeps a sheet from being released that could hurt somebody: it stays an error. Where one step is right as it is, write allow left-hand-tight because "…" there; the reason prints on the sheet.',
    ]);
  });

  it('may have comments and a comma too many', () => {
    expect(severities('// ours\n{ "severities": { "part-not-located": "hint", }, }')).toEqual([
      ['part-not-located', 'hint'],
    ]);
  });

  it('says what is wrong at its place, and the rest holds', () => {
    const text =
      '{ "severities": { "part-not-locatd": "hint", "not-marked": "warning", "no-tolerance": "loud" }, "colour": 1 }';
    expect(problems(text)).toEqual([
      '1:87 A severity is "error", "warning", "hint" or "off".',
      '1:19 No rule is called part-not-locatd. Did you mean part-not-located?',
      '1:97 colour is no setting. Delete it.',
    ]);
    expect(severities(text)).toEqual([['not-marked', 'warning']]);
  });

  it('that is no JSON, or empty, is reported and not used', () => {
    expect(problems('{ "severities": ')).toHaveLength(1);
    expect(problems('')).toHaveLength(1);
    expect(problems('[1, 2]')).toHaveLength(1);
    expect(severities('{ "severities": { "not-marked": "off" } ')).toEqual([]);
  });
});

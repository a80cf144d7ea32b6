/**
 * Nothing that a procedure or a job says is lost on the way to paper: walked from the model, found in the words of the
 * PDF and of the HTML, in order. Many random ones: `npm run sheets -- 200 1`.
 */
import { describe, expect, it } from 'vitest';
import type { Sheet } from '../../language/documents/model.ts';
import { buildSheet } from '../../language/documents/traveler/index.ts';
import { lostOf, wordsInHtml, wordsInPdf } from './conservation.ts';
import { libraryPrints, type Print, papers } from './prints.ts';
import { randomPrint } from './random.ts';
import { spoiledSheets } from './spoiled.ts';
import type { Words } from './words.ts';

const byPaper = papers.map((paper) => ({ paper, prints: libraryPrints(paper) }));

describe.each(byPaper)(
  'the library on $paper: every step, limit, tool, caution, source and concession',
  ({ prints }) => {
    it.each(prints)('$name', async (print) => {
      expect(lostOf(print, wordsInHtml(print.sheet)), 'HTML').toEqual([]);
      expect(lostOf(print, await wordsInPdf(print.sheet)), 'PDF').toEqual([]);
    });
  },
);

describe('record and instruction', () => {
  const forms = libraryPrints('a4', 'record').map((record, at) => ({
    name: record.name,
    record,
    instruction: libraryPrints('a4', 'instruction')[at]!,
  }));
  // Each says its own part: what neither has is lost.
  it.each(forms)('say all between them: $name', async ({ record, instruction }) => {
    const both = async (words: (print: Print) => Words | Promise<Words>) => {
      const [one, other] = [lostOf(record, await words(record)), lostOf(instruction, await words(instruction))];
      return one.filter((what) => other.includes(what));
    };
    expect(await both((print) => wordsInHtml(print.sheet)), 'HTML').toEqual([]);
    expect(await both((print) => wordsInPdf(print.sheet)), 'PDF').toEqual([]);
  });
  it.each(forms)('the record has every box of the card: $name', ({ record }) => {
    const card = buildSheet(record.procedure, { ...record.options, form: 'card' });
    const names = ({ blocks }: Sheet) =>
      blocks.flatMap((block) =>
        block.kind === 'log'
          ? block.columns.map(({ step, name }) => `${step} ${name}`)
          : block.kind === 'step'
            ? [...block.rows, ...(block.set?.rows ?? []), ...(block.close === null ? [] : [block.close])].map(
                ({ name }) => name,
              )
            : block.kind === 'close'
              ? [block.row.name]
              : [],
      );
    expect(names(record.sheet)).toEqual(names(card));
    const sent = ({ blocks }: Sheet) =>
      blocks.flatMap((block) =>
        block.kind === 'step' && block.rows.length > 0 && block.fail !== null ? [block.number] : [],
      );
    expect(sent(record.sheet)).toEqual(sent(card));
  });
});

describe('random procedures with random words', () => {
  const seeds = Array.from({ length: 12 }, (_, index) => 20_261 + index);
  const prints = seeds.map((seed) => ({ seed, print: randomPrint(seed) }));

  it('are mostly made', () => {
    expect(prints.filter(({ print }) => print !== null).length).toBeGreaterThan(8);
  });

  it.each(prints)('seed $seed', async ({ print }) => {
    if (print === null) return;
    expect(lostOf(print, wordsInHtml(print.sheet)), 'HTML').toEqual([]);
    expect(lostOf(print, await wordsInPdf(print.sheet)), 'PDF').toEqual([]);
  });
});

describe('what is taken out of a sheet is missed', () => {
  /** The walk of the procedure alone misses what the procedure says about itself, each kind every time. */
  const certain = [
    'step',
    'place',
    'order',
    'caution',
    'sources',
    'note',
    'fail path',
    'lines',
    'only',
    'fact With',
    'fact Accept',
    'fact Thread',
    'fact Held by',
    'fact Takes',
    'fact Gauge',
    'fact Air',
    'hazard',
    'rule',
    'steps of a hazard',
    'triangle',
    'repairs',
    'step of a repair',
  ];
  const print = byPaper[0]!.prints.find(({ options }) => options.job !== null)!;
  const spoiled = spoiledSheets(print.sheet);
  const kinds = [...new Set(spoiled.map(({ kind }) => kind))];
  /** Each third of a kind: they are many, and of one build. */
  const sample = kinds.flatMap((kind) => spoiled.filter((one) => one.kind === kind).filter((_, at) => at % 3 === 0));
  const complaints = (one: Print, words: Parameters<typeof lostOf>[1]) => {
    const all = lostOf(one, words);
    return { all, ofModel: all.filter((text) => !text.startsWith("the sheet's")) };
  };

  it('in the HTML', () => {
    const judged = sample.map(({ kind, where, sheet }) => ({ kind, where, ...complaints(print, wordsInHtml(sheet)) }));
    expect(judged.filter(({ all }) => all.length === 0)).toEqual([]);
    expect(judged.filter(({ kind, ofModel }) => certain.includes(kind) && ofModel.length === 0)).toEqual([]);
    // A limit may be said a second time at the same step: as what the gauge may show, or in the table of what to hold.
    const limits = judged.filter(({ kind }) => kind === 'limit' || kind === 'figure');
    expect(limits.length).toBeGreaterThan(5);
    expect(limits.filter(({ ofModel }) => ofModel.length > 0).length / limits.length).toBeGreaterThan(0.6);
  });

  it.each(['step', 'limit', 'caution', 'order'])('in the PDF: %s', async (kind) => {
    const one = spoiled.findLast((other) => other.kind === kind);
    const { all, ofModel } = complaints(print, await wordsInPdf(one!.sheet));
    expect(all).not.toEqual([]);
    expect(ofModel, one!.where).not.toEqual([]);
  });
});

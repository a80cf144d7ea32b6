/** Labels: on paper of the size that is wanted, with a code that says what the words say. */
import { afterAll, describe, expect, it } from 'vitest';
import { buildLabels, type LabelKind, labelKinds } from '../../language/documents/labels/index.ts';
import { renderLabelsHtml } from '../../language/documents/renderers/label-html.ts';
import { languages } from '../../language/i18n/index.ts';
import { htmlFonts } from '../../server/host/print/fonts.ts';
import { labelsPdf } from '../../server/host/print/pdf.ts';
import { closeBrowser, inBrowser, noBrowser, printedPage } from './chromium.ts';
import { inkOf, millimetre } from './layout.ts';
import { paintedPages } from './paint.ts';
import { libraryPrints } from './prints.ts';
import { bones } from './words.ts';

afterAll(closeBrowser);

const prints = libraryPrints('a4');
const of = (name: string) => prints.find(({ options }) => options.job?.name === name)!;
const size = { width: 70, height: 36 };
const made = (kind: LabelKind, more: Partial<Parameters<typeof buildLabels>[2]> = {}) => {
  const { procedure, options } = of('2207');
  return buildLabels(procedure, options.job!, { kind, size, hash: options.hash, ...more });
};

describe.each(labelKinds)('%s', (kind) => {
  it.each(languages)('has every word in its code, and on its paper: %s', async (language) => {
    const sheet = made(kind, { language, size: { width: 80, height: 50 } });
    const pages = await paintedPages(labelsPdf(sheet)!.bytes);
    expect(pages.length).toBe(sheet.labels.length);
    for (const [at, { large, title, facts, qr }] of sheet.labels.entries()) {
      const page = pages[at]!;
      const words = bones(page.runs.map(({ text }) => text).join(''));
      for (const text of [large, title, ...facts.flatMap(({ label, text: value }) => [label, value])])
        expect(words).toContain(bones(text));
      expect(qr.text).toBe([title, ...facts.map(({ label, text }) => `${label}: ${text}`)].join('\n'));
      expect(qr.text).not.toContain('://');
      expect([page.width / millimetre, page.height / millimetre].map(Math.round)).toEqual([80, 50]);
      expect(Math.min(...page.runs.map(({ size: type }) => type))).toBeGreaterThanOrEqual(5.5);
      for (const run of page.runs) {
        const ink = inkOf(run);
        expect(ink.left >= 0 && ink.top >= 0 && ink.right <= page.width && ink.bottom <= page.height, run.text).toBe(
          true,
        );
      }
    }
  });
});

describe.skipIf(noBrowser !== null)('printed by a browser', () => {
  it.each(labelKinds)('has every word on its paper: %s', async (kind) => {
    for (const language of languages)
      for (const [width, height] of [
        [70, 36],
        [80, 50],
        [105, 74],
      ] as const) {
        const sheet = made(kind, { language, size: { width, height } });
        const page = renderLabelsHtml(sheet, { fonts: htmlFonts() })!;
        const pages = await paintedPages(await inBrowser(page, printedPage));
        expect(pages.length).toBe(sheet.labels.length);
        for (const [at, { large, title, facts }] of sheet.labels.entries()) {
          const { runs, width: wide, height: high } = pages[at]!;
          const words = bones(runs.map(({ text }) => text).join(''));
          for (const text of [large, title, ...facts.flatMap(({ label, text: value }) => [label, value])])
            expect(words).toContain(bones(text));
          expect([wide / millimetre, high / millimetre].map(Math.round)).toEqual([width, height]);
          expect(Math.min(...runs.map(({ size: type }) => type))).toBeGreaterThanOrEqual(5.49);
          for (const run of runs) {
            const ink = inkOf(run);
            expect(ink.left >= 0 && ink.top >= 0 && ink.right <= wide && ink.bottom <= high, run.text).toBe(true);
          }
        }
      }
  });
});

it('names unit, part number and serial', () => {
  const [first] = made('tag', { unit: '5' }).labels;
  expect(first!.large).toBe('2207 / 5');
  expect(first!.qr.text).toContain('Unit 5 of 6\nWork order: 2207\nPart number: A-220\nSerial: 0878');
  expect(made('tag').labels.length).toBe(6);
  expect(made('box').labels.map(({ facts }) => facts[1]!.text)).toEqual(['5 × A-250, 1 × A-220']);
});

it('has no label for a unit on hold among those certified', () => {
  const { procedure, options } = of('2207');
  const job = options.job!;
  const held = { ...job, units: job.units.map((unit) => (unit.place === '2' ? { ...unit, onHold: 'ask' } : unit)) };
  const places = (kind: LabelKind) =>
    buildLabels(procedure, held, { kind, size, hash: options.hash }).labels.map(({ large }) => large.split(' / ')[1]);
  expect(places('tag')).toEqual(['1', '2', '3', '4', '5', '6']);
  expect(places('certificate')).toEqual(['1', '3', '4', '5', '6']);
});

it('says a hyphen of a name once, where it is broken in Spanish too', async () => {
  const labels = made('certificate', { language: 'es', size: { width: 80, height: 50 } });
  const [page] = await paintedPages(labelsPdf(labels)!.bytes);
  expect(page!.runs.map(({ text }) => text).join('')).not.toContain('--');
});

it('is refused on paper that is too small for its words', () => {
  const sheet = made('tag', { size: { width: 30, height: 12 } });
  expect(labelsPdf(sheet)).toBeNull();
  expect(renderLabelsHtml(sheet)).toBeNull();
});

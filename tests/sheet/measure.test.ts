/** A card, not a book: what the sheets of the library cost the bench. `npm run sheets -- --measure` prints all of it. */
import { expect, it } from 'vitest';
import { buildSheet } from '../../language/documents/traveler/index.ts';
import { languages } from '../../language/i18n/index.ts';
import { measuresOf } from './measure.ts';
import { libraryPrints, papers } from './prints.ts';

const named = (name: string) => papers.map((paper) => libraryPrints(paper).find((print) => print.name.includes(name))!);

it.each(named('job 2207'))(
  'a job of six is a card of eight pages, on which a repair turns none: $name',
  async ({ sheet }) => {
    const { pages, cautions, turns, smallest } = await measuresOf(sheet);
    expect(pages).toBeLessThanOrEqual(8);
    expect(cautions).toBeLessThanOrEqual(20);
    expect(turns).toBe(0);
    expect(smallest).toBeGreaterThanOrEqual(9);
  },
);

it.each(named('job 2207'))(
  'its record has four pages, its instruction six at most: $name',
  async ({ procedure, options }) => {
    const pagesOf = async (form: 'record' | 'instruction') =>
      (await measuresOf(buildSheet(procedure, { ...options, form }))).pages;
    expect(await pagesOf('record')).toBeLessThanOrEqual(4);
    expect(await pagesOf('instruction')).toBeLessThanOrEqual(6);
  },
);

// Their words are longer.
it.each(named('job 2207').flatMap((print) => (['es', 'de'] as const).map((language) => ({ ...print, language }))))(
  'so it is with the fixed words of $language: $name',
  async ({ procedure, options, language }) => {
    const { pages, turns } = await measuresOf(buildSheet(procedure, { ...options, language }));
    expect(pages).toBeLessThanOrEqual(8);
    expect(turns).toBe(0);
    const record = (await measuresOf(buildSheet(procedure, { ...options, language, form: 'record' }))).pages;
    // Letter is 18 mm shorter, and German the longest.
    expect(record).toBeLessThanOrEqual(language === 'de' && options.paper === 'letter' ? 5 : 4);
  },
);

it.each(named('rebuild-one-spring, '))(
  'nor does it on a blank card of three part numbers: $name',
  async ({ sheet, procedure, options }) => {
    const { pages, turns } = await measuresOf(sheet);
    expect(pages).toBeLessThanOrEqual(8);
    expect(turns).toBe(0);
    for (const language of options.paper === 'a4' ? (['es', 'de'] as const) : []) {
      const other = await measuresOf(buildSheet(procedure, { ...options, language }));
      expect(other.pages, language).toBeLessThanOrEqual(8);
      expect(other.turns, language).toBe(0);
    }
  },
);

it.each(named('rebuild-pintle'))('nor where a screw is turned: $name', async ({ sheet }) => {
  const { pages, turns } = await measuresOf(sheet);
  expect(pages).toBeLessThanOrEqual(9);
  expect(turns).toBe(0);
});

// Thirty parts, three logs and an outside shop.
it.each(
  [...named('job 3101'), ...named('rebuild-turbo, ')].flatMap((print) =>
    languages.map((language) => ({ ...print, language })),
  ),
)('a turbocharger has ten pages at most, with the fixed words of $language: $name', async (print) => {
  const { procedure, options, language } = print;
  const { pages, turns } = await measuresOf(buildSheet(procedure, { ...options, language }));
  expect(pages).toBeLessThanOrEqual(10);
  expect(turns).toBe(0);
});

it('one unit that is added later has five', async () => {
  const [{ procedure, options }] = named('job 2207') as [ReturnType<typeof libraryPrints>[number]];
  expect((await measuresOf(buildSheet(procedure, { ...options, unit: '5' }))).pages).toBeLessThanOrEqual(5);
});

it.each(named('rebuild-two-spring'))('two springs have twelve: $name', async ({ sheet }) => {
  expect((await measuresOf(sheet)).pages).toBeLessThanOrEqual(12);
});

/** The PDF can be read aloud and searched, and is the same each time: tags, language, title, bookmarks, fonts, bytes. */
import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { pdfOf } from '../../server/host/print/pdf.ts';
import { root } from '../library.ts';
import { fontsOf } from './fonts.ts';
import { type Painted, painted } from './paint.ts';
import { allTags, outlineOf, pagesOf, type Tag, tagsOf, withPdf } from './pdf.ts';
import { libraryPrints, type Print, papers } from './prints.ts';
import { promisedBoxes } from './sizes.ts';
import { bones } from './words.ts';

const prints = papers.flatMap((paper) =>
  libraryPrints(paper).filter(({ options, name }) => options.job !== null || name.startsWith('rebuild-pintle')),
);

/** Heads of stages and repairs, as they are read. */
function headsOf({ sheet }: Print): { readonly number: string; readonly title: string }[] {
  return sheet.blocks.flatMap((block): { readonly number: string; readonly title: string }[] =>
    block.kind === 'place' ? [block] : block.kind === 'repairs' ? [...block.repairs] : [],
  );
}

/** Everything that these tests ask of a PDF, read once. */
async function readings({ sheet }: Print) {
  const { bytes, accessible } = pdfOf([sheet]);
  return withPdf(bytes, async (document) => {
    const pages = await pagesOf(document);
    const trees: (Tag | null)[] = [];
    const drawn: Painted[] = [];
    for (const page of pages) {
      trees.push(await tagsOf(page));
      drawn.push(await painted(page));
    }
    return {
      accessible,
      info: (await document.getMetadata()).info as Record<string, unknown>,
      marked: await document.getMarkInfo(),
      outline: await outlineOf(document),
      fonts: await fontsOf(pages),
      trees,
      painted: drawn,
      tags: trees.flatMap(allTags),
    };
  });
}

describe.each(prints)('$name', (print) => {
  const reading = readings(print);

  it('is tagged, and has a language and a title', async () => {
    const { accessible, info, marked, trees, painted: pages } = await reading;
    // By the check of PDF/UA-1 that Typst makes itself.
    expect(accessible).toBe(true);
    expect(marked).not.toBeNull();
    expect((marked as unknown as ReadonlyMap<string, boolean>).get('Marked')).toBe(true);
    // A page that is left blank before two that lie open has its head and foot alone, which are no part of what is read.
    const written = trees.filter((_, at) => pages[at]!.runs.some(({ artifact }) => !artifact));
    expect(trees.length - written.length).toBeLessThanOrEqual(1);
    expect(written.every((tree) => tree !== null && tree.children.length > 0)).toBe(true);
    expect(info.Language).toBe(print.sheet.language);
    expect(info.Title).toBe(print.sheet.title);
  });

  it('has a bookmark for each stage and repair, in order', async () => {
    const { outline } = await reading;
    const places = headsOf(print).map(({ number, title }) => `${number} ${title}`);
    expect(places.length).toBeGreaterThan(5);
    const titles = outline.map((title) => title.replaceAll('\u00a0', ' '));
    expect(titles.filter((title) => /^R?\d/u.test(title))).toEqual(places);
  });

  it('has a description of every figure, and a name for every box that is to be filled', async () => {
    const { tags, painted: pages } = await reading;
    const figures = tags.filter(({ role }) => role === 'Figure');
    expect(figures.filter(({ alt }) => (alt ?? '').trim() === '')).toEqual([]);
    const names = figures.map(({ alt }) => bones(alt ?? ''));
    const drawings = print.sheet.blocks.flatMap((block) => (block.kind === 'drawing' ? [bones(block.alt)] : []));
    expect(names).toEqual(expect.arrayContaining([...drawings, bones(print.sheet.header.qr.alt)]));
    const { boxes, cells } = promisedBoxes(print.sheet);
    expect(names.length).toBe(drawings.length + 1 + boxes + cells);
    const rows = print.sheet.blocks.flatMap((block) => (block.kind === 'step' ? block.rows : []));
    const wanted = rows.flatMap(({ name, boxes: values }) =>
      values.flatMap((value, at) => (value === '' ? [bones(`${name}, ${print.sheet.columns[at]?.place ?? ''}`)] : [])),
    );
    expect(wanted.length).toBeGreaterThan(10);
    expect(wanted.filter((name) => !names.includes(name))).toEqual([]);
    expect(pages.every(({ images }) => images === 0)).toBe(true);
  });

  it('has its steps as a list, each with its number', async () => {
    const { tags } = await reading;
    const numbers = tags.filter(({ role }) => role === 'Lbl').map(({ text }) => bones(text));
    const steps = print.sheet.blocks.flatMap((block) => (block.kind === 'step' ? [bones(block.number)] : []));
    // A step that goes on overleaf is there again, without its number.
    expect(numbers.filter((number) => number !== '')).toEqual(steps);
    expect(tags.filter(({ role }) => role === 'LI').length).toBeGreaterThanOrEqual(steps.length);
  });

  it('says first aid aloud where there is any: it is no artifact', async () => {
    const { tags } = await reading;
    const { pressed, blocks } = print.sheet;
    // Air, and balancing, call for none: then the safety page has none either, and nothing repeats it.
    const told = blocks.flatMap((block) => (block.kind === 'safety' ? [block.firstAid] : []));
    expect(told).toEqual([pressed?.firstAid ?? null]);
    const aid = pressed === null ? [] : tags.filter(({ text }) => bones(text).includes(bones(pressed.firstAid)));
    expect(aid.length > 0).toBe(pressed !== null);
  });

  it('has heads on its tables: every column that has words over it', async () => {
    const { tags } = await reading;
    const tables = tags.filter(({ role }) => role === 'Table');
    expect(tables.length).toBeGreaterThan(10);
    expect(tables.filter((table) => !allTags(table).some(({ role }) => role === 'TH'))).toEqual([]);
    const heads = new Set(tags.filter(({ role }) => role === 'TH').map(({ text }) => bones(text)));
    const wanted = print.sheet.blocks.flatMap((block) =>
      (block.kind === 'table' ? [block] : block.kind === 'tables' ? block.tables : []).flatMap(({ columns }) =>
        columns.map(({ head }) => head),
      ),
    );
    expect(wanted.filter((head) => !heads.has(bones(head)))).toEqual([]);
    const logs = print.sheet.blocks.flatMap((block) => (block.kind === 'log' ? block.columns : []));
    expect(logs.filter(({ step, name, unit }) => !heads.has(bones(step + name + unit)))).toEqual([]);
  });

  it('has stages as headings', async () => {
    const { tags } = await reading;
    const headings = tags.filter(({ role }) => /^H\d?$/u.test(role)).map(({ text }) => bones(text));
    const stages = headsOf(print).map(({ number, title }) => bones(number + title));
    expect(stages.filter((stage) => !headings.includes(stage))).toEqual([]);
  });

  it('carries its fonts, and of each only what it uses', async () => {
    const { fonts } = await reading;
    expect(fonts.length).toBeGreaterThan(1);
    for (const { name, embedded } of fonts) {
      expect(name).toMatch(/^[A-Z]{6}\+(Atkinson|DejaVu)/u);
      expect(embedded, name).toBe(true);
    }
  });
});

describe('the bytes', () => {
  it('are the same from two processes', () => {
    const script = `
      import { createHash } from 'node:crypto';
      import { pdfOf } from './server/host/print/pdf.ts';
      import { libraryPrints } from './tests/sheet/prints.ts';
      const hash = createHash('sha256');
      for (const { options, sheet } of libraryPrints('a4')) if (options.job !== null) hash.update(pdfOf([sheet]).bytes);
      process.stdout.write(hash.digest('hex'));`;
    const other = execFileSync(process.execPath, ['--input-type=module', '--no-warnings', '-e', script], {
      encoding: 'utf8',
      cwd: root,
    });
    const hash = createHash('sha256');
    for (const { options, sheet } of libraryPrints('a4')) if (options.job !== null) hash.update(pdfOf([sheet]).bytes);
    expect(other).toMatch(/^[0-9a-f]{64}$/u);
    expect(hash.digest('hex')).toBe(other);
  });
});

/**
 * The pages look as they did. `HANDTIGHT_PICTURES=update npm test -- sheet/pictures` takes the pictures again: look at each
 * before it is committed; `HANDTIGHT_PICTURES_IN` names another folder for them. On a difference the new page, the old one
 * and what differs go to a folder that the test names.
 */
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { pdfOf } from '../../server/host/print/pdf.ts';
import { emptyBoxes } from './boxes.ts';
import { paintedPages } from './paint.ts';
import { alike, differencePicture, type Picture, pictureIn, picturesOf, pngOf } from './picture.ts';
import { libraryPrints, type Print, papers } from './prints.ts';

const folder = process.env.HANDTIGHT_PICTURES_IN ?? join(import.meta.dirname, 'pictures');
const update = process.env.HANDTIGHT_PICTURES === 'update';

/** Sheets that have pictures, 43 pages: the job, the shortest on the other paper, the draft with findings. */
const named: Record<string, (print: Print) => boolean> = {
  'job-a4': ({ options }) => options.job !== null && options.paper === 'a4',
  'first-letter': ({ procedure, options }) => procedure.source.file.includes('first/') && options.paper === 'letter',
  'flawed-a4': ({ procedure, options }) => procedure.source.file.includes('flawed/') && options.paper === 'a4',
};
const library = papers.flatMap((paper) => libraryPrints(paper));
const sheets = Object.entries(named).map(([name, is]) => ({ name, sheet: library.find(is)!.sheet }));

/** File of a page. */
const fileOf = (name: string, index: number) => join(folder, `${name}-${String(index + 1).padStart(2, '0')}.png`);
const filesOf = (name: string) =>
  existsSync(folder) ? readdirSync(folder).filter((file) => new RegExp(`^${name}-\\d+\\.png$`, 'u').test(file)) : [];

const without = sheets.filter(({ name }) => filesOf(name).length === 0).map(({ name }) => name);
if (!update && without.length > 0)
  console.warn(
    `No pictures are committed of ${without.join(', ')}. HANDTIGHT_PICTURES=update npm test -- sheet/pictures takes them.`,
  );

describe.each(sheets)('the pages of $name', ({ name, sheet }) => {
  it.runIf(update)('are taken again', async () => {
    const pictures = await picturesOf(pdfOf([sheet]).bytes);
    for (const file of filesOf(name)) rmSync(join(folder, file));
    mkdirSync(folder, { recursive: true });
    for (const [index, picture] of pictures.entries()) writeFileSync(fileOf(name, index), pngOf(picture));
    expect(filesOf(name).length).toBe(pictures.length);
  });

  it.skipIf(update || without.includes(name))('look as they did', async () => {
    const pictures = await picturesOf(pdfOf([sheet]).bytes);
    const changed = pictures.flatMap((picture, index) => {
      const file = fileOf(name, index);
      const known = existsSync(file) ? pictureIn(readFileSync(file)) : null;
      return known !== null && alike(known, picture) ? [] : [{ index, known, picture }];
    });
    if (changed.length > 0 || pictures.length !== filesOf(name).length)
      expect.fail(
        `${changed.length} of ${pictures.length} pages differ (there were ${filesOf(name).length}): see ${shown(name, changed)}`,
      );
  });
});

/** Writes what differs where a person can look at it; hands back the folder. */
function shown(name: string, changed: readonly { index: number; known: Picture | null; picture: Picture }[]): string {
  const to = mkdtempSync(join(tmpdir(), 'handtight-pictures-'));
  for (const { index, known, picture } of changed) {
    const page = `${name}-${String(index + 1).padStart(2, '0')}`;
    writeFileSync(join(to, `${page}-new.png`), pngOf(picture));
    if (known === null) continue;
    writeFileSync(join(to, `${page}-old.png`), pngOf(known));
    if (known.width === picture.width && known.height === picture.height)
      writeFileSync(join(to, `${page}-difference.png`), differencePicture(known, picture));
  }
  return to;
}

describe('two pictures of a page', () => {
  const { sheet } = sheets[1]!;
  const bytes = pdfOf([sheet]).bytes;
  const taken = picturesOf(bytes);

  it('are alike through the file', async () => {
    for (const picture of await taken) {
      const again = pictureIn(pngOf(picture));
      expect(again).toEqual(picture);
      expect(alike(picture, again)).toBe(true);
    }
  });

  it('are alike where another machine draws edges softer, and a little lighter', async () => {
    for (const picture of await taken) expect(alike(picture, softened(picture))).toBe(true);
  });

  it('are not alike where one box has moved by a millimeter', async () => {
    const pages = await paintedPages(bytes);
    const pictures = await taken;
    const [box] = pages.flatMap(emptyBoxes);
    const scale = pictures[0]!.width / pages[0]!.width;
    const picture = pictures[box!.page - 1]!;
    expect(alike(picture, moved(picture, box!, scale, 2))).toBe(false);
  });

  it('are not alike where a word is another', async () => {
    const [first] = sheet.blocks.filter((block) => block.kind === 'step');
    const other = {
      ...sheet,
      blocks: sheet.blocks.map((block) =>
        block === first ? { ...first!, sentence: [{ text: 'Throw the unit away.' }] } : block,
      ),
    };
    const after = await picturesOf(pdfOf([other]).bytes);
    expect((await taken).every((picture, index) => alike(picture, after[index]!))).toBe(false);
  });
});

/** Each point a little of its neighbors', and all a shade lighter. */
function softened({ width, height, grey }: Picture): Picture {
  const soft = grey.map((value, at) => {
    const [left, right] = [grey[at - 1] ?? value, grey[at + 1] ?? value];
    return Math.min(255, 0.84 * value + 0.08 * left + 0.08 * right + 6);
  });
  return { width, height, grey: soft };
}

/** What is in and on the edge of a box, some points further down. */
function moved(
  { width, height, grey }: Picture,
  box: { left: number; top: number; right: number; bottom: number },
  scale: number,
  by: number,
): Picture {
  const out = Uint8Array.from(grey);
  const [left, top, right, bottom] = [
    box.left * scale - 2,
    box.top * scale - 2,
    box.right * scale + 2,
    box.bottom * scale + 2,
  ].map(Math.round);
  for (let y = top!; y <= bottom!; y++)
    for (let x = left!; x <= right!; x++) out[(y + by) * width + x] = grey[y * width + x]!;
  return { width, height, grey: out };
}

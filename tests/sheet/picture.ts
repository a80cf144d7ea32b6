/** Small gray pictures of pages, and how like two of them are. */
import { createCanvas } from '@napi-rs/canvas';
import pixelmatch from 'pixelmatch';
import { PNG } from 'pngjs';
import { pagesOf, withPdf } from './pdf.ts';

/** A gray picture: a byte for each point, 0 is black. */
export interface Picture {
  readonly width: number;
  readonly height: number;
  readonly grey: Uint8Array;
}

/** Enough to see a box, too little to read: the repository stays small. */
const dotsPerInch = 60;
/** Shades that are kept: fewer make smaller files. */
const shades = 16;

/** A picture of each page. */
export function picturesOf(bytes: Uint8Array): Promise<Picture[]> {
  return withPdf(bytes, async (document) => {
    const pictures: Picture[] = [];
    for (const page of await pagesOf(document)) {
      const viewport = page.getViewport({ scale: dotsPerInch / 72 });
      const [width, height] = [Math.round(viewport.width), Math.round(viewport.height)];
      const canvas = createCanvas(width, height);
      // The canvas is that of the library pdf.js itself draws with outside a browser.
      await page.render({ canvas: canvas as never, canvasContext: canvas.getContext('2d') as never, viewport }).promise;
      const { data } = canvas.getContext('2d').getImageData(0, 0, width, height);
      const step = 255 / (shades - 1);
      const grey = Uint8Array.from({ length: width * height }, (_, at) =>
        Math.round(Math.round(data[at * 4]! / step) * step),
      );
      pictures.push({ width, height, grey });
    }
    return pictures;
  });
}

/** As a file. */
export function pngOf({ width, height, grey }: Picture): Buffer {
  const png = new PNG({ width, height, colorType: 0, inputColorType: 0, bitDepth: 8 });
  png.data = Buffer.from(grey);
  return PNG.sync.write(png, { colorType: 0, inputColorType: 0, bitDepth: 8, deflateLevel: 9 });
}

/** From a file. */
export function pictureIn(file: Buffer): Picture {
  const { width, height, data } = PNG.sync.read(file);
  return { width, height, grey: Uint8Array.from({ length: width * height }, (_, at) => data[at * 4]!) };
}

/** Side of the squares in which differing points are counted. */
const square = 16;
/** Differing points in one square that are a change of the page: a moved word is many in one place, noise a few everywhere. */
const notable = 10;
/** How far two shades may be apart, of 1; edges of letters are left out of the count besides. */
const options = { threshold: 0.25, includeAA: false };

/** Whether two pictures are of one page, whatever machine drew them. */
export function alike(before: Picture, after: Picture): boolean {
  const { width, height } = before;
  if (width !== after.width || height !== after.height) return false;
  if (Buffer.compare(before.grey, after.grey) === 0) return true;
  const mask = new Uint8Array(width * height * 4);
  pixelmatch(colours(before), colours(after), mask, width, height, { ...options, diffMask: true });
  const counts = new Map<number, number>();
  for (let at = 0; at < width * height; at++) {
    if (mask[at * 4 + 3] === 0) continue;
    const key = Math.floor(at / width / square) * width + Math.floor((at % width) / square);
    counts.set(key, (counts.get(key) ?? 0) + 1);
  }
  return Math.max(0, ...counts.values()) < notable;
}

/** The old picture, pale, with what differs in color: a file for a person to look at. */
export function differencePicture(before: Picture, after: Picture): Buffer {
  const { width, height } = before;
  const out = new PNG({ width, height });
  pixelmatch(colours(before), colours(after), out.data, width, height, options);
  return PNG.sync.write(out);
}

function colours({ width, height, grey }: Picture): Uint8Array {
  const out = new Uint8Array(width * height * 4);
  for (let at = 0; at < grey.length; at++) out.set([grey[at]!, grey[at]!, grey[at]!, 255], at * 4);
  return out;
}

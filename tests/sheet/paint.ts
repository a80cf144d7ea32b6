/**
 * What a page of a PDF paints, from its own operators: runs of glyphs with their boxes, lines with their widths, colors.
 * Points, with the origin at the top left of the page.
 */
import { OPS, type PDFPageProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { at, identity, type Matrix, scaleOf, times } from './matrix.ts';
import { contentsOf, isFigure, pagesOf, withPdf } from './pdf.ts';
import { type Box, cutTo, fieldOf, shapeOf } from './shapes.ts';

/** Glyphs that follow each other on one line, of one font and size. */
export interface Run {
  readonly page: number;
  readonly text: string;
  readonly left: number;
  readonly right: number;
  readonly baseline: number;
  readonly size: number;
  readonly font: string;
  readonly bold: boolean;
  readonly colour: string;
  /** Head, foot or watermark. */
  readonly artifact: boolean;
  /** Which of the page's figures it is in; null: it is of the sheet itself. */
  readonly figure: number | null;
  readonly upright: boolean;
}

/** A line, straight and parallel to the page's edges. */
export interface Line {
  readonly page: number;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  readonly width: number;
  readonly figure: number | null;
}

/** A path that is no line: a filled field, a picture. In a figure: each path, whatever it is. */
export interface Field {
  readonly page: number;
  readonly figure: number | null;
  /** In a head, a foot or behind the page. */
  readonly artifact: boolean;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export interface Painted {
  readonly page: number;
  readonly width: number;
  readonly height: number;
  readonly runs: readonly Run[];
  readonly lines: readonly Line[];
  readonly fields: readonly Field[];
  /** Every color of a run or path, `#rrggbb`. */
  readonly colours: ReadonlySet<string>;
  /** Kinds of pictures that are not drawn as paths. */
  readonly images: number;
}

interface State {
  ctm: Matrix;
  /** What is painted outside it is not seen; null: the page. */
  clip: Box | null;
  fill: string;
  stroke: string;
  lineWidth: number;
  font: string;
  size: number;
  charSpace: number;
  wordSpace: number;
  rise: number;
}

interface Glyph {
  readonly unicode: string;
  readonly width: number;
  readonly isSpace: boolean;
}

/** Reads all that a page paints. */
export async function painted(page: PDFPageProxy): Promise<Painted> {
  const { fnArray, argsArray } = await page.getOperatorList();
  const { width, height } = page.getViewport({ scale: 1 });
  const runs: Run[] = [];
  const lines: Line[] = [];
  const fields: Field[] = [];
  const colours = new Set<string>();
  const stack: State[] = [];
  const marks: { readonly tag: string; readonly figure: number | null }[] = [];
  const figures = (await contentsOf(page, isFigure)).map((ids) => ids.map((id) => Number(id.replace(/^.*_mc/u, ''))));
  let images = 0;
  let state: State = {
    ctm: [1, 0, 0, -1, 0, height],
    clip: null,
    fill: '#000000',
    stroke: '#000000',
    lineWidth: 1,
    font: '',
    size: 0,
    charSpace: 0,
    wordSpace: 0,
    rise: 0,
  };
  let text: Matrix = identity;
  let line: Matrix = identity;
  /** A new text object begins a new run. */
  let fresh = true;
  /** The next path is what the page is cut to. */
  let clips = false;

  const inArtifact = () => marks.some(({ tag }) => tag === 'Artifact');
  const inFigure = () => marks.find(({ figure }) => figure !== null)?.figure ?? null;
  function mark([tag, content]: [string, number?]): void {
    const figure = figures.findIndex((contents) => content != null && contents.includes(content));
    marks.push({ tag, figure: figure < 0 ? null : figure });
  }

  const fontName = (id: string) => (page.commonObjs.get(id) as { readonly name?: string }).name ?? id;

  function show(glyphs: readonly (Glyph | number)[]): void {
    const outer = times(state.ctm, text);
    const font = fontName(state.font);
    let x = 0;
    let [words, from, to] = ['', null as number | null, 0];
    for (const glyph of glyphs) {
      if (typeof glyph === 'number') {
        x -= (glyph / 1000) * state.size;
        continue;
      }
      const advance = (glyph.width / 1000) * state.size;
      words += glyph.unicode;
      // A blank at the end of a line, and a place to break, have no ink.
      if (glyph.unicode.replace(/[\s\u200b]+/gu, '') !== '') {
        from ??= x;
        to = x + advance;
      }
      x += advance + state.charSpace + (glyph.isSpace ? state.wordSpace : 0);
    }
    text = times(text, [1, 0, 0, 1, x, 0]);
    const last = runs.at(-1);
    if (from === null) {
      if (last !== undefined && !fresh && words !== '') runs[runs.length - 1] = { ...last, text: last.text + words };
      return;
    }
    const [left, baseline] = at(outer, from, state.rise);
    const [right, end] = at(outer, to, state.rise);
    const run: Run = {
      page: page.pageNumber,
      text: words,
      left,
      right,
      baseline,
      size: state.size * scaleOf(outer),
      font,
      bold: /bold/iu.test(font),
      colour: state.fill,
      artifact: inArtifact(),
      figure: inFigure(),
      upright: Math.abs(baseline - end) < 0.01 && right > left,
    };
    colours.add(run.colour);
    // Words of a drawing are set letter by letter, kerned ones a little over each other.
    const spelled = run.figure !== null && last?.figure === run.figure && Math.abs(left - last.right) < run.size * 0.3;
    const goesOn =
      (!fresh || spelled) &&
      last !== undefined &&
      last.font === font &&
      Math.abs(last.baseline - baseline) < 0.01 &&
      left - last.right < last.size;
    if (goesOn) runs[runs.length - 1] = { ...last, text: last.text + words, right };
    else runs.push(run);
    fresh = false;
  }

  function path([paint, [data]]: readonly [number, readonly [ArrayLike<number> | null]]): void {
    const filled = paint === OPS.fill || paint === OPS.eoFill || paint === OPS.fillStroke || paint === OPS.eoFillStroke;
    const stroked =
      paint === OPS.stroke || paint === OPS.closeStroke || paint === OPS.fillStroke || paint === OPS.eoFillStroke;
    if (data === null) return;
    if (clips) {
      const own = fieldOf(data, state.ctm);
      state.clip = own === null || state.clip === null ? own : cutTo(own, state.clip);
      clips = false;
    }
    if (!filled && !stroked) return;
    colours.add(filled ? state.fill : state.stroke);
    const width = stroked ? state.lineWidth * scaleOf(state.ctm) : null;
    const shape = shapeOf(data, state.ctm, width);
    // White hides what is behind it, and is no line: a browser fills a shape first, and draws its outline by itself.
    const isHidden = width === null && state.fill === '#ffffff';
    const seen = (isHidden ? [] : shape.lines).flatMap((one) => {
      const box = state.clip === null ? one : cutTo(one, state.clip);
      return box === null ? [] : [{ page: page.pageNumber, figure: inFigure(), ...box, width: one.width }];
    });
    lines.push(...seen);
    // Slanting lines of a drawing are ink too.
    const drawn = inFigure() === null ? shape.field : fieldOf(data, state.ctm);
    const field = drawn === null || state.clip === null ? drawn : cutTo(drawn, state.clip);
    if (field !== null) fields.push({ page: page.pageNumber, artifact: inArtifact(), figure: inFigure(), ...field });
  }

  function move(x: number, y: number): void {
    line = times(line, [1, 0, 0, 1, x, y]);
    text = line;
  }

  const known: Record<number, (args: never) => void> = {
    [OPS.save]: () => stack.push({ ...state }),
    [OPS.restore]: () => {
      state = stack.pop() ?? state;
    },
    [OPS.transform]: (matrix: Matrix) => {
      state.ctm = times(state.ctm, matrix);
    },
    [OPS.paintFormXObjectBegin]: ([matrix]: [Matrix | null]) => {
      stack.push({ ...state });
      if (matrix !== null) state.ctm = times(state.ctm, matrix);
    },
    [OPS.paintFormXObjectEnd]: () => {
      state = stack.pop() ?? state;
    },
    [OPS.setFillRGBColor]: ([colour]: [string]) => {
      state.fill = colour;
    },
    [OPS.setStrokeRGBColor]: ([colour]: [string]) => {
      state.stroke = colour;
    },
    [OPS.setLineWidth]: ([width]: [number]) => {
      state.lineWidth = width;
    },
    [OPS.setGState]: ([entries]: [readonly (readonly [string, number])[]]) => {
      for (const [name, value] of entries) if (name === 'LW') state.lineWidth = value;
    },
    [OPS.beginText]: () => {
      text = line = identity;
      fresh = true;
    },
    [OPS.setFont]: ([font, size]: [string, number]) => {
      Object.assign(state, { font, size });
    },
    [OPS.setCharSpacing]: ([space]: [number]) => {
      state.charSpace = space;
    },
    [OPS.setWordSpacing]: ([space]: [number]) => {
      state.wordSpace = space;
    },
    [OPS.setTextRise]: ([rise]: [number]) => {
      state.rise = rise;
    },
    [OPS.setTextMatrix]: ([matrix]: [Matrix]) => {
      text = line = [...matrix] as unknown as Matrix;
    },
    [OPS.moveText]: ([x, y]: [number, number]) => move(x, y),
    [OPS.showText]: ([glyphs]: [readonly (Glyph | number)[]]) => show(glyphs),
    [OPS.clip]: () => {
      clips = true;
    },
    [OPS.eoClip]: () => {
      clips = true;
    },
    [OPS.constructPath]: path as (args: never) => void,
    [OPS.beginMarkedContent]: mark as (args: never) => void,
    [OPS.beginMarkedContentProps]: mark as (args: never) => void,
    [OPS.endMarkedContent]: () => marks.pop(),
    [OPS.paintImageXObject]: () => images++,
    [OPS.paintInlineImageXObject]: () => images++,
    [OPS.paintImageMaskXObject]: () => images++,
  };
  for (const [index, operator] of fnArray.entries()) known[operator]?.((argsArray[index] ?? []) as never);
  return { page: page.pageNumber, width, height, runs, lines, fields, colours, images };
}

/** What all pages of a PDF paint. */
export function paintedPages(bytes: Uint8Array): Promise<Painted[]> {
  return withPdf(bytes, async (document) => {
    const pages: Painted[] = [];
    for (const page of await pagesOf(document)) pages.push(await painted(page));
    return pages;
  });
}

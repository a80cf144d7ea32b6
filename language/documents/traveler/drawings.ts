import type { Words } from '../../i18n/index.ts';
import type { Family } from '../../model/family.ts';
import { annotate, buildExploded, type Drawing as Drawn, drawingWords, renderSvg, stripsOf } from '../drawing/index.ts';
import type { Block, DrawingBlock, Paper, SafetyBlock, TextBlock } from '../model.ts';
import type { SheetContext } from './context.ts';

/** A page under its head, and with no more than a title over the picture: millimeters. */
const room: Record<Paper, number> = { a4: 250, letter: 232 };
/** Of the safety messages: what is over and under them, a line, and letters in a line. */
const said = { frame: 30, row: 1.6, line: 4.1, letters: { a4: 95, letter: 99 } } as const;
/** The height that a picture can be drawn in; and how little room it is tried in. */
const least = { drawn: 80, tried: 60 } as const;

/** The unit taken apart; beside the safety messages that come before it where they leave room. */
export function explodedView(context: SheetContext, { rows }: Pick<SafetyBlock, 'rows'> = { rows: [] }): Block[] {
  const { procedure, words, options } = context;
  if (procedure.family.parts.length === 0) return [];
  const above = rows.reduce(
    (sum, { text, steps }) =>
      sum + said.row + said.line * Math.ceil((text.length + steps.length + 8) / said.letters[options.paper]),
    rows.length === 0 ? 0 : said.frame,
  );
  const page = room[options.paper];
  const drawn = buildExploded(procedure.family, {
    words: drawingWords(words),
    ...annotate(context, context.figures),
    maxHeight: page - above < least.tried ? page : Math.max(least.drawn, page - above),
  });
  return [pictureOf(words.drawing.title, drawn), ...cut(words, drawn)];
}

/** Which parts are on the unit at the end of each stage. */
export function stageStrips(context: SheetContext): Block[] {
  const { procedure, words, options } = context;
  if (procedure.family.parts.length === 0 || procedure.stages.length === 0) return [];
  const strips = stripsOf(procedure, { words: drawingWords(words), maxHeight: room[options.paper] });
  const shortened = [...new Set(strips.flatMap((strip) => strip.shortened))];
  return [
    ...strips.map((strip, index) => pictureOf(index === 0 ? words.drawing.strip : '', strip)),
    ...cut(words, { shortened }),
  ];
}

function pictureOf(title: string, drawn: Drawn): DrawingBlock {
  return { kind: 'drawing', title, svg: renderSvg(drawn), alt: drawn.alt, width: drawn.width, height: drawn.height };
}

function cut({ drawing }: Words, { shortened }: Pick<Drawn, 'shortened'>): TextBlock[] {
  return shortened.length === 0
    ? []
    : [{ kind: 'text', text: `${drawing.whole}: ${shortened.join('; ')}`, strong: false }];
}

/** The same picture of a family alone, for the editor. */
export function familyDrawing(family: Family, words: Words): [DrawingBlock, ...TextBlock[]] {
  const drawn = buildExploded(family, { words: drawingWords(words) });
  return [pictureOf('', drawn), ...cut(words, drawn)];
}

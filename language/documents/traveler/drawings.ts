import type { Words } from '../../i18n/index.ts';
import type { Family } from '../../model/family.ts';
import type { Step } from '../../model/procedure.ts';
import { buildExploded, type Drawing as Drawn, drawingWords, renderSvg, stripsOf } from '../drawing/index.ts';
import { byNumber } from '../figures/by-number.ts';
import type { StepFigures } from '../figures/step-figures.ts';
import type { Block, DrawingBlock, Paper, SafetyBlock, TextBlock } from '../model.ts';
import type { PrintContext } from '../print-context.ts';
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
    torques: torquesOf(context, context.figures),
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
export function familySvg(family: Family, words: Words): { readonly svg: string; readonly alt: string } {
  const drawn = buildExploded(family, { words: drawingWords(words) });
  return { svg: renderSvg(drawn), alt: drawn.alt };
}

/** What each joint is tightened to, by part number where they differ. */
function torquesOf(setting: PrintContext, figures: ReadonlyMap<Step, StepFigures>): Map<string, string> {
  const { words } = setting;
  const torques = new Map<string, string>();
  for (const { step, held } of figures.values()) {
    if ((step.verb !== 'torque' && step.verb !== 'lock') || step.limit === null) continue;
    const rebuilt = held.filter(({ which }) => which === 'rebuilt');
    const texts = byNumber(setting, (number) => {
      const own = rebuilt.find((one) => one.number === number || one.number === null)?.figure ?? null;
      return own === null ? null : words.limit(own.limit);
    });
    const told = texts.map(({ told: text, whose }) => (texts.length === 1 ? text : `${whose} ${text}`)).join('; ');
    for (const { name } of step.objects) if (!torques.has(name) && told !== '') torques.set(name, told);
  }
  return torques;
}

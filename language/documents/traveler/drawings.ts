import type { Words } from '../../i18n/index.ts';
import type { Family } from '../../model/family.ts';
import type { Step } from '../../model/procedure.ts';
import { annotate, buildExploded, type Drawing as Drawn, drawingWords, renderSvg, stripsOf } from '../drawing/index.ts';
import type { StepFigures } from '../figures/step-figures.ts';
import type { DrawingBlock, Paper, TextBlock } from '../model.ts';
import type { PrintContext } from '../print-context.ts';

/** What is left of a page under a long head and the title of the drawing, and over first aid at the foot, in millimeters. */
const room: Record<Paper, number> = { a4: 208, letter: 190 };

/** The unit taken apart, and which parts are on it at the end of each stage. What the pictures cut short is below, whole. */
export function buildDrawings(
  setting: PrintContext,
  figures: ReadonlyMap<Step, StepFigures>,
): (DrawingBlock | TextBlock)[] {
  const { procedure, words } = setting;
  if (procedure.family.parts.length === 0) return [];
  const said = drawingWords(words);
  const exploded = buildExploded(procedure.family, {
    words: said,
    ...annotate(setting, figures),
    maxHeight: room[setting.options.paper],
  });
  const pictures = [blockOf(words.drawing.title, exploded), ...cut(words, exploded)];
  if (procedure.stages.length === 0) return pictures;
  const strips = stripsOf(procedure, { words: said, maxHeight: room[setting.options.paper] });
  const shortened = [...new Set(strips.flatMap((strip) => strip.shortened))];
  return [
    ...pictures,
    ...strips.map((strip, index) => blockOf(index === 0 ? words.drawing.strip : '', strip)),
    ...cut(words, { shortened }),
  ];
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

function blockOf(title: string, drawn: Drawn): DrawingBlock {
  return { kind: 'drawing', title, svg: renderSvg(drawn), alt: drawn.alt, width: drawn.width, height: drawn.height };
}

import { brokenText } from './broken-text.ts';
import type { Scene } from './column.ts';
import type { TextLine } from './drawing.ts';
import { widthOf } from './text-width.ts';

/** The texts of a part, and those of them that were cut. */
export interface NameLines {
  readonly lines: readonly TextLine[];
  readonly cut: readonly string[];
}

/** The texts of a part: its title, then the facts about it. Each is set once for all ways that a page is tried. */
export function nameLines(scene: Scene, part: string, beside: readonly string[], width: number): NameLines {
  const { titleLines, detailLines } = scene.density;
  const key = JSON.stringify([part, beside, width, titleLines, detailLines, scene.tieWords.get(part) ?? []]);
  const before = scene.known.get(key);
  if (before !== undefined) return before;
  const cut: string[] = [];
  const made = { lines: linesOf(scene, part, beside, width, cut), cut };
  scene.known.set(key, made);
  return made;
}

function linesOf(scene: Scene, part: string, beside: readonly string[], width: number, cut: string[]): TextLine[] {
  const { facts, density } = scene;
  const take = (text: string, bold: boolean, most: number): TextLine[] => {
    const broken = brokenText(text, bold, width, most);
    if (broken.cut) cut.push(text);
    return broken.lines.map((line) => ({ text: line, bold }));
  };
  const heading = (): TextLine[] => {
    const whole = brokenText(facts.heading(part), true, width, density.titleLines);
    if (!whole.cut) return whole.lines.map((text) => ({ text, bold: true }));
    cut.push(facts.heading(part));
    // How many there are is not what is cut.
    const count = facts.count(part);
    const room = width - (count === '' ? 0 : widthOf(count, true));
    const lines = brokenText(facts.drawn.title(part), true, room, density.titleLines).lines;
    return lines.map((text, index) => ({ text: index + 1 === lines.length ? text + count : text, bold: true }));
  };
  const more = density.detailLines;
  const details: (TextLine & { readonly most: number })[] = [
    // If it is drawn straight on what it rests on, or a bracket or its thread leads there, the picture says it.
    ...(beside.length === 0 || facts.isShownOn(part, beside) ? [] : [facts.rests(part).join(', ')]),
    [...facts.renewed(part), ...facts.located(part)].join(', '),
    facts.thread(part).join(', '),
    ...facts.torque(part),
    ...facts.figures(part),
    facts.loose(part).join(', '),
  ].map((text) => ({ text, bold: false, most: more }));
  const ties = (scene.tieWords.get(part) ?? []).map((text) => ({ text, bold: false, most: more > 1 ? 3 : more }));
  // Turned the wrong way it breaks: said apart, and with weight.
  const leftHand = facts.leftHand(part).map((text) => ({ text, bold: true, most: 2 }));
  const all = [...details, ...leftHand, ...ties].filter(({ text }) => text !== '');
  cut.push(...all.filter(({ most }) => most === 0).map(({ text }) => text));
  return [
    ...heading(),
    ...all.filter(({ most }) => most > 0).flatMap(({ text, bold, most }) => take(text, bold, most)),
  ];
}

import { brokenText } from './broken-text.ts';
import { type Measures, type Scene, stepWidth } from './column.ts';
import type { Entry } from './entries.ts';
import { nameLines } from './name-lines.ts';
import { reserve } from './page.ts';
import { widthOf } from './text-width.ts';

/** Millimeters between two columns. */
const gutter = 4;

/** Widths of columns side by side, and their left edges. */
interface Widths {
  readonly measures: readonly Measures[];
  readonly offsets: readonly number[];
}

/**
 * Texts at the left get the width that they have, up to a good one; names share what is left, each column no more than it
 * needs. The rest is space around the columns.
 */
export function widthsOf(
  pageWidth: number,
  scene: Scene,
  columns: readonly (readonly Entry[])[],
  lanes: readonly number[],
): Widths {
  const isOne = columns.length === 1;
  const shapeWidth = (isOne ? 40 : 24) * Math.min(1, 0.55 + scene.density.scale * 0.45);
  const needs = columns.map((entries, index) => {
    const sideWidth = sideWidthOf(scene, entries, isOne ? 52 : 22);
    const left = sideWidth > 0 ? sideWidth + reserve.left : 2;
    const steps = stepsWidth(scene, entries);
    return {
      sideWidth,
      left,
      steps,
      fixed:
        left +
        steps +
        shapeWidth +
        reserve.right +
        (lanes[index]! > 0 ? reserve.tie + lanes[index]! * reserve.lane : 0),
      names: Math.max(18, naturalNames(scene, entries)),
    };
  });
  const room = pageWidth - gutter * (columns.length - 1) - needs.reduce((sum, { fixed }) => sum + fixed, 0);
  const given = shared(
    needs.map(({ names }) => names),
    room,
  );
  const over = (room - given.reduce((sum, one) => sum + one, 0)) / (columns.length + 1);
  const measures: Measures[] = [];
  const offsets: number[] = [];
  let x = over;
  for (const [index, { sideWidth, left, steps, fixed }] of needs.entries()) {
    const middle = left + shapeWidth / 2;
    offsets.push(x);
    measures.push({
      sideWidth,
      middle,
      shapeWidth,
      names: middle + shapeWidth / 2 + reserve.right,
      stepWidth: steps,
      namesWidth: given[index]!,
    });
    x += fixed + given[index]! + gutter + over;
  }
  return { measures, offsets };
}

/** Shares room out: none gets more than it needs, and those that need much get what the others leave. */
function shared(needs: readonly number[], room: number): number[] {
  const given = needs.map(() => 0);
  let left = room;
  const order = needs.map((_, index) => index).sort((a, b) => needs[a]! - needs[b]! || a - b);
  order.forEach((index, done) => {
    given[index] = Math.max(1, Math.min(needs[index]!, left / (needs.length - done)));
    left -= given[index]!;
  });
  return given;
}

export function partNames(entries: readonly Entry[]): string[] {
  return entries.flatMap(({ part, worn }) => [part, ...worn].map(({ name }) => name));
}

/** Width of the texts at the left when none is wider than `most`. */
function sideWidthOf({ facts, density }: Scene, entries: readonly Entry[], most: number): number {
  const { family } = facts.relations;
  const texts = entries
    .map(({ part }) => part.name)
    .flatMap((part) => [
      ...facts.relations
        .faces(part)
        .filter((face) => face.finish !== null || face.guardedBy !== null)
        .flatMap((face) => {
          const other = family.faces.find(({ id }) => id === face.meets) ?? null;
          return [facts.face(face, other).join(', '), ...(other === null ? [] : facts.pair(face, other))];
        }),
      ...facts.relations.ports(part).map((port) => facts.port(port)),
    ]);
  const lines = texts.flatMap((text) => brokenText(text, false, most, density.sideLines + 1).lines);
  return Math.max(0, ...lines.map((line) => widthOf(line, false)));
}

/** Width of the widest name or detail, unbroken. */
function naturalNames(scene: Scene, entries: readonly Entry[]): number {
  const lines = entries.flatMap(({ part, worn, under, beside, isInLine, stack }) => [
    ...nameLines(scene, part.name, isInLine ? [] : [...under, ...beside], Number.POSITIVE_INFINITY).lines,
    ...worn.flatMap(({ name }) => nameLines(scene, name, [part.name], Number.POSITIVE_INFINITY).lines),
    ...(stack.foot === null ? [] : [{ text: scene.facts.drawn.title(stack.foot), bold: false }]),
  ]);
  return Math.max(0, ...lines.map(({ text, bold }) => widthOf(text, bold)));
}

/** Width of the widest step number of a column, with the room behind it; 0: there are none. */
function stepsWidth({ facts }: Scene, entries: readonly Entry[]): number {
  const steps = partNames(entries).flatMap((name) => facts.step(name) ?? []);
  return steps.length === 0 ? 0 : Math.max(...steps.map(stepWidth)) + 1.6;
}

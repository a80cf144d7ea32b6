import { brokenText } from './broken-text.ts';
import { type Measures, type Scene, stepWidth } from './column.ts';
import type { Entry } from './entries.ts';
import { nameLines } from './name-lines.ts';
import { reserve } from './page.ts';
import { widthOf } from './text-width.ts';

/** Millimeters between two columns. */
const gutter = 4;
/** Of the widest shape, in millimeters at full size. */
const widest = 40;

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
  const scaled = Math.min(1, 0.55 + scene.density.scale * 0.45);
  const names = columns.map((entries) => Math.max(18, naturalNames(scene, entries)));
  const steps = columns.map((entries) => stepsWidth(scene, entries));
  const least = (isOne ? widest : 21) * scaled;
  const needsFor = (mostSide: number) =>
    columns.map((entries, index) => {
      const sideWidth = sideWidthOf(scene, entries, mostSide);
      const left = sideWidth > 0 ? sideWidth + reserve.left : 2;
      const ties = lanes[index]! > 0 ? reserve.tie + lanes[index]! * reserve.lane : 0;
      return {
        sideWidth,
        left,
        steps: steps[index]!,
        names: names[index]!,
        besides: left + steps[index]! + reserve.right + ties,
      };
    });
  const roomFor = (made: ReturnType<typeof needsFor>) =>
    pageWidth - gutter * (columns.length - 1) - made.reduce((sum, { besides }) => sum + besides + least, 0);
  const total = names.reduce((sum, one) => sum + one, 0);
  // Texts at the left take what the names leave, and then the shapes.
  const tried = (isOne ? [52] : [40, 30, 22, 20]).map(needsFor);
  const wanted = tried.find((made) => roomFor(made) >= total) ?? tried.at(-1)!;
  const more = Math.max(0, Math.min(widest * scaled - least, (roomFor(wanted) - total) / columns.length));
  const shapeWidth = least + more;
  const needs = wanted.map((one) => ({ ...one, fixed: one.besides + shapeWidth }));
  const room = roomFor(wanted) - more * columns.length;
  const given = shared(names, room);
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

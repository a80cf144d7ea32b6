import type { Measures, PlacedItem, Scene } from './column.ts';
import { type Mark, type Point, weights } from './drawing.ts';
import { strokes } from './lines.ts';
import { portPlaces } from './sides.ts';

/** The path of the fluid through lapped faces, from the part that carries all to the one at the end that has the openings. */
export function ductOf(scene: Scene, placed: readonly PlacedItem[], measures: Measures): Mark[] {
  const chain = chainOf(scene, placed);
  const [first, second] = chain;
  const last = chain.at(-1);
  if (first === undefined || second === undefined || last === undefined) return [];
  if (scene.facts.relations.ports(last.part).length === 0) return [];
  const isUp = second.box.y < first.box.y;
  // Inside all that it passes, outside their bores.
  const edges = chain.flatMap(({ upper, lower }, index) =>
    index === 0 ? [isUp ? upper : lower] : index + 1 === chain.length ? [isUp ? lower : upper] : [upper, lower],
  );
  const reach = Math.min(...edges.map((edge) => Math.max(...edge.map(([, right]) => right)) - measures.middle));
  const bore = Math.max(...edges.map((edge) => (edge.length > 1 ? edge[1]![0] - measures.middle : 0)));
  if (reach - bore < 1) return [];
  const x = measures.middle - (bore + reach) / 2;
  const end = endOf(last, isUp, x, measures.middle);
  const feed = feedOf(scene, first, placed);
  const start: Point[] =
    feed === null
      ? [{ x, y: first.box.y + first.box.height * (isUp ? 0.7 : 0.3) }]
      : [
          { x: first.box.x, y: feed },
          { x, y: feed },
        ];
  return [strokes('duct', [[...start, ...end]], { weight: weights.duct, dash: [1.7, 1.1] })];
}

/** Parts that lapped faces join, one to the next, from the one that carries all. */
function chainOf({ facts, carrier }: Scene, placed: readonly PlacedItem[]): PlacedItem[] {
  const at = new Map(placed.map((one) => [one.part, one]));
  const { faces } = facts.relations.family;
  const chain: PlacedItem[] = [];
  const seen = new Set<string>();
  for (let part: string | undefined = carrier; part !== undefined; ) {
    const item = at.get(part);
    if (item === undefined) break;
    seen.add(part);
    chain.push(item);
    const own: string = part;
    part = faces
      .filter((face) => face.part === own && face.finish === 'lapped')
      .map((face) => faces.find(({ id }) => id === face.meets)?.part)
      .find((other) => other !== undefined && !seen.has(other));
  }
  return chain;
}

/** Into the last part: straight in, then to its bore. */
function endOf({ box }: PlacedItem, isUp: boolean, x: number, middle: number): Point[] {
  const along = (share: number) => (isUp ? box.y + box.height * (1 - share) : box.y + box.height * share);
  return [
    { x, y: along(0.14) },
    { x: middle - box.width * 0.14, y: along(0.5) },
  ];
}

/** Height of the port that the fluid comes in by: one that a line is connected to. */
function feedOf({ facts }: Scene, first: PlacedItem, placed: readonly PlacedItem[]): number | null {
  const ports = portPlaces(first, facts.relations.ports(first.part), placed);
  return ports.find(({ port, isBore }) => !isBore && facts.feeds.has(port.name))?.y ?? null;
}

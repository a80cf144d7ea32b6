import type { Row } from '../../analysis/build-order.ts';
import { printable } from '../../i18n/printable.ts';
import type { Facts } from './facts.ts';

/** The drawing in words, in build order, with all that it shows and nothing cut: a sentence for each part. */
export function explodedAlt(facts: Facts, rows: readonly Row[]): string {
  const { words } = facts;
  const sentences = rows.flatMap(({ part, inner }) => [part, ...inner]).map(({ name }) => sentence(facts, name));
  return [words.alt.exploded(printable(facts.drawn.family.title || facts.drawn.family.name)), ...sentences].join(' ');
}

/** `Nozzle nut: on holder; M20x1.5; screwed to holder; holds nozzle.` */
function sentence(facts: Facts, name: string): string {
  const { words, relations } = facts;
  const part = relations.part(name);
  const joint = relations.joint(name);
  const said = [
    ...facts.rests(name),
    ...(part.bindsOver === null && part.drawnAs !== 'spring' ? [] : [words.alt.spring]),
    ...facts.renewed(name),
    ...facts.located(name),
    ...(part.bearsOn.length > 0 ? [words.alt.bearsOn(facts.list(part.bearsOn))] : []),
    ...(joint === undefined ? [] : [words.alt.joinedTo(facts.inText(joint.to))]),
    ...facts.thread(name),
    ...facts.torque(name),
    ...facts.leftHand(name),
    ...(part.holds.length > 0 ? [words.holds(facts.list(part.holds))] : []),
    ...(part.matchedTo.length > 0 ? [words.matchedTo(facts.list(part.matchedTo))] : []),
    ...(part.balancedWith.length > 0 ? [words.balancedWith(facts.list(part.balancedWith))] : []),
    ...facts.figures(name),
    ...facts.loose(name),
    ...relations
      .faces(name)
      .filter((face) => face.finish !== null || face.guardedBy !== null)
      .map((face) => facts.face(face, relations.family.faces.find(({ id }) => id === face.meets) ?? null).join(', ')),
    ...relations.ports(name).map((port) => facts.port(port)),
  ];
  const heading = facts.heading(name);
  return said.length === 0 ? `${heading}.` : `${heading}: ${said.join('; ')}.`;
}

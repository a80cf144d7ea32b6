import { propertyClasses } from '../engineering/proof-load.ts';
import type { Family, Part, SolidBolt } from '../model/family.ts';
import { say } from '../say/say.ts';
import type * as ast from '../syntax/generated/ast.ts';
import type { Context } from './context.ts';
import { lowerNumber } from './limits.ts';
import { readMetricThread } from './metric-thread.ts';

/** `solid class 8.8` of a joint: what its torque is judged by. Null: not said, or said so that nothing can be reckoned. */
export function lowerSolidBolt(
  context: Context,
  node: ast.Joint,
  turned: readonly Part[],
  family: Pick<Family, 'parts' | 'ports'>,
): SolidBolt | null {
  const [said, again] = node.traits.filter((trait): trait is ast.JointSolid => trait.$type === 'JointSolid');
  if (said === undefined) return null;
  if (again !== undefined)
    context.syntax('written-twice', say`The joint gives its class twice. Delete one.`, context.source(again));
  const propertyClass = lowerNumber(context, said, 'propertyClass', said.propertyClass);
  if (propertyClass === null) return null;
  if (!propertyClasses.includes(propertyClass)) {
    context.syntax(
      'impossible-figure',
      say`There is no property class ${propertyClass}: write the one marked on the head or the end of the bolt, ${propertyClasses.join(', ')}.`,
      context.source(said, 'propertyClass'),
    );
    return null;
  }
  if (node.thread === undefined) {
    context.syntax(
      'clause-without-meaning',
      say`What a bolt can take is calculated from its thread: write it before “solid class”, like "M8x1.25", or "M8" for the coarse pitch.`,
      context.source(said),
    );
    return null;
  }
  const thread = readMetricThread(node.thread);
  if (thread === null) {
    context.syntax(
      'clause-without-meaning',
      say`“${node.thread}” is not read as a metric thread, and only ISO metric threads are judged by their class: write it with its pitch, like "M8x1.25" ("M8" alone is the coarse one, M3 to M36). Leave “solid class” out for inch threads.`,
      context.source(node, 'thread'),
    );
    return null;
  }
  const inside = turned.flatMap((part) => insideOf(part, node.to.name, family)).at(0);
  if (inside !== undefined) {
    context.syntax(
      'clause-without-meaning',
      say`${node.part.name} has ${inside} in it, so it is hollow: it has less metal than its thread suggests, and its torque cannot be judged by the thread. Leave “solid class” out.`,
      context.source(said),
    );
    return null;
  }
  return { ...thread, propertyClass };
}

/** What the family puts into a part: other parts, but not the one that it is screwed to, and ports. */
function insideOf({ name }: Part, onto: string, { parts, ports }: Pick<Family, 'parts' | 'ports'>): string[] {
  return [
    ...parts.filter((other) => other.base !== onto && [...other.in, ...other.through].includes(name)),
    ...ports.filter((port) => port.part === name),
  ].map((one) => one.name);
}

import { lower } from '../../../analysis/prose.ts';
import { restsOn } from '../../../analysis/relations.ts';
import { joined, say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** Parts that rest on each other in a circle: none can be fitted first. Two that hold each other are no circle. */
export const circularFit: Rule = {
  code: 'circular-fit',
  severity: 'error',
  since: '0.1.0',
  title: 'Parts rest on each other in a circle.',
  family(family, report) {
    const parts = new Map(family.parts.map((part) => [part.name, part]));
    const done = new Set<string>();
    const visit = (name: string, trail: readonly string[]) => {
      const at = trail.indexOf(name);
      if (at >= 0) {
        const ring = trail.slice(at);
        const first = parts.get([...ring].sort()[0]!)!;
        const titles = ring.map((member) => lower(parts.get(member)!.title));
        report({
          at: first.source,
          rootCause: `ring:${[...ring].sort().join()}`,
          message: say`The ${titles[0]!} rests on the ${joined([...titles.slice(1), titles[0]!], say`, which rests on the `)}.`,
          why: say`none of them can be fitted first.`,
          help: say`Delete one “on”, “in” or “through”.`,
        });
        return;
      }
      if (done.has(name)) return;
      for (const under of restsOn(parts.get(name)!)) if (parts.has(under)) visit(under, [...trail, name]);
      done.add(name);
    };
    for (const part of family.parts) visit(part.name, []);
  },
};

import { lower } from '../../../analysis/prose.ts';
import { restsOn } from '../../../analysis/relations.ts';
import type { Rule } from '../../rule.ts';

/** Parts that rest on each other in a ring: none can be fitted first. Two that hold each other are no ring. */
export const circularFit: Rule = {
  code: 'circular-fit',
  severity: 'error',
  since: '0.1.0',
  title: 'Parts rest on each other in a ring.',
  family(family, report) {
    const parts = new Map(family.parts.map((part) => [part.name, part]));
    const done = new Set<string>();
    const visit = (name: string, trail: readonly string[]) => {
      const at = trail.indexOf(name);
      if (at >= 0) {
        const ring = trail.slice(at);
        const first = parts.get([...ring].sort()[0]!)!;
        report({
          at: first.source,
          cause: `ring:${[...ring].sort().join()}`,
          message: `${ring.map((member) => lower(parts.get(member)!.title)).join(' rests on ')} rests on ${lower(parts.get(name)!.title)}.`,
          why: 'none of them can be fitted first.',
          help: 'Take one on, in or through out.',
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

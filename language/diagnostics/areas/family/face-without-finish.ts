import { lower } from '../../../analysis/prose.ts';
import type { Rule } from '../../rule.ts';

/** A face that is neither lapped nor ground: it is written down, and nothing protects it. */
export const faceWithoutFinish: Rule = {
  code: 'face-without-finish',
  severity: 'warning',
  since: '0.2.0',
  title: 'A face is neither lapped nor ground, so nothing protects it.',
  family(family, report) {
    const told = new Set<string>();
    for (const face of family.faces) {
      if (face.finish !== null || (face.meets !== null && told.has(face.meets))) continue;
      told.add(face.id);
      const part = family.parts.find((other) => other.name === face.part)!;
      report({
        at: face.source,
        cause: `finish:${family.name}:${part.base}.${face.name}`,
        allow: part.allow,
        message: `Nothing says how the ${face.name} face of the ${lower(part.title)} is finished, so nobody asks that it is looked at, guarded and kept from the wheel.`,
        help: 'Write lapped or ground; a face that needs no care is not written down.',
      });
    }
  },
};

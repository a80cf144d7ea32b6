import { lower } from '../../../analysis/prose.ts';
import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** A face that is neither lapped nor ground: it is declared, but nothing protects it. */
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
        rootCause: `finish:${family.name}:${part.base}.${face.name}`,
        allow: part.allow,
        message: say`Nothing says how the ${face.name} face of the ${lower(part.title)} is finished.`,
        why: say`no rule makes sure that it is inspected, guarded and kept off the wheel.`,
        help: say`Write lapped or ground, or delete the face if it needs no care.`,
      });
    }
  },
};

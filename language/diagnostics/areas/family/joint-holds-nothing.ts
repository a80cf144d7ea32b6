import { lower } from '../../../analysis/prose.ts';
import { Relations, restsOn } from '../../../analysis/relations.ts';
import type { Family, Joint } from '../../../model/family.ts';
import { say } from '../../../say/say.ts';
import { blank } from '../../edits.ts';
import type { Rule } from '../../rule.ts';
import { declared, fixStep, type StepFix } from '../../step-fixes.ts';
import { carrierOf } from './rests-on-nothing.ts';

/**
 * A joint whose part holds nothing. A lock nut and its cap, an adjuster, a connector or a plug with its port, and a part
 * that carries others are left alone: they have work of their own.
 */
export const jointHoldsNothing: Rule<StepFix> = {
  code: 'joint-holds-nothing',
  severity: 'warning',
  since: '0.2.0',
  ofAbsence: true,
  title: 'A joint holds nothing.',
  family(family, report) {
    for (const joint of family.joints) {
      const part = family.parts.find((other) => other.name === joint.part)!;
      if (hasWork(joint, family)) continue;
      report({
        at: joint.source,
        rootCause: `joint-holds:${family.name}:${part.base}`,
        allow: part.allow,
        message: say`The ${lower(part.title)} is a joint but holds nothing.`,
        why: say`the parts that it keeps in could come out before it, and a test would still count after it was slackened.`,
        data: declared(part.source, `holds ${blank}`),
        help: say`Write “holds” and the parts at part ${part.base}; for a plug or a connector, write the port that is under it or on it.`,
      });
    }
  },
  fix: fixStep,
};

function hasWork(joint: Joint, family: Family): boolean {
  const relations = Relations.of(family);
  const part = relations.part(joint.part);
  return (
    joint.handTightIsFinal ||
    part.holds.length > 0 ||
    part.bearsOn.length > 0 ||
    family.ports.some((port) => port.part === part.name || port.under === part.name) ||
    // A seal on a nut does not give the nut its purpose.
    relations.onIt(part.name).some((other) => !other.renewed) ||
    isOfAdjuster(part.name, relations) ||
    hangs(part.name, relations)
  );
}

/** What it rests on is not declared: its own rule reports that. */
function hangs(name: string, relations: Relations): boolean {
  const body = carrierOf(relations.family);
  const below = new Set([name]);
  for (const one of below) for (const under of restsOn(relations.part(one))) below.add(under);
  return [...below].some((one) => restsOn(relations.part(one)).length === 0 && relations.part(one).base !== body?.base);
}

/** An adjuster, its lock, or what rests on these: its cap. */
function isOfAdjuster(name: string, relations: Relations, seen = new Set<string>()): boolean {
  if (seen.has(name)) return false;
  seen.add(name);
  if (relations.family.adjusters.some((adjuster) => adjuster.part === name || adjuster.lockedBy === name)) return true;
  return restsOn(relations.part(name)).some((under) => isOfAdjuster(under, relations, seen));
}

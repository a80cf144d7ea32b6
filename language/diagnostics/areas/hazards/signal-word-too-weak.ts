import { allSteps } from '../../../analysis/locations.ts';
import type { Hazard } from '../../../model/procedure.ts';
import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** An injury marked NOTICE, which is the signal word for property damage (ANSI Z535.4). */
export const signalWordTooWeak: Rule = {
  code: 'signal-word-too-weak',
  severity: 'error',
  since: '0.2.0',
  references: ['ANSI Z535.4'],
  title: 'A hazard that can hurt somebody is marked NOTICE.',
  procedure(procedure, report) {
    const hazards: readonly Hazard[] = [...procedure.hazards, ...allSteps(procedure).flatMap((step) => step.hazards)];
    for (const { word, text, source } of hazards) {
      if (word !== 'NOTICE' || !speaksOfInjury(text)) continue;
      report({
        at: source,
        message: say`This can hurt somebody, but NOTICE is only for damage to property.`,
        why: say`people who look for danger skip a NOTICE.`,
        help: say`Write CAUTION if it can cause a minor injury, WARNING if it can maim or kill, DANGER if it will.`,
      });
    }
  },
};

/** Words used only for people. “By eye”, “by hand”, a burnt tip or a cut face are not among them. */
const ofPeople =
  /\b(injur\w*|scald\w*|poison\w*|toxic|blind(s|ed|ness)|amputat\w*|electrocut\w*|electric shock|kill(s|ed)?|death|deadly|die|fatal|eye protection|goggles|face shield|first aid|hospital|suffocat\w*|chok(e|es|ing))\b/iu;
const body =
  '(?:eyes?|skin|hands?|fingers?|palms?|arms?|foot|feet|lungs?|blood|hair|hearing|your face|you|people|somebody|anybody)';
const harm =
  '(?:burn|harm|hurt|crush|cut|pinch|pierce|irritat|trap|nip|stab|sting|break|strik|hit|fl(?:y|ies)|throw|splash|go(?:es)? through|blow|drive|driven|shoot|flung|attack|damage|inject|catch|grab)';
const harmsBody = new RegExp(`\\b${harm}\\w*\\b(?:[ ,]+(?!by\\b)[\\w-]+){0,4}[ ,]+(?<!by )${body}\\b`, 'iu');
const burns = /\b(hot|caustic|acid|lye)\b.*\bburns?\b/iu;

function speaksOfInjury(text: string): boolean {
  return ofPeople.test(text) || harmsBody.test(text) || burns.test(text);
}

/** Phrases that the prose avoids, and what to write for them. One list for all texts. */
export interface Phrase {
  readonly pattern: RegExp;
  readonly instead: string;
  /** Uses that are right, such as a keyword of the language. They are cut out of a text before it is searched. */
  readonly except?: RegExp;
}

export const phrases: readonly Phrase[] = [
  { pattern: /\b(is|are|was|were) told\b/giu, instead: 'is reported' },
  {
    pattern: /\b(stands?|stood|standing)\b/giu,
    instead: 'is, appears, is written',
    // To stand aside, to be next to a machine; the shop's standing tolerances; what a name stands for.
    except: /\bstand aside\b|\bstanding tolerances?\b|\bstands? (for|in for|square)\b/giu,
  },
  { pattern: /\banew\b/giu, instead: 'again' },
  {
    pattern: /\bbears? on\b/giu,
    instead: 'affects',
    except: /`bears on`|\bpart bears on\b|\bbears on (\{parts\}|needle)/giu,
  },
  { pattern: /\bmend(s|ed|ing)?\b/giu, instead: 'correct, fix' },
  { pattern: /\bthe way of the\b/giu, instead: 'the path of the, the flow of the' },
  { pattern: /\b(what it|what they|what each \w+) (came|comes) to\b/giu, instead: 'the result' },
  { pattern: /\bcan come to\b|\bit is so since\b/giu, instead: 'reach; since' },
  { pattern: /\bof which\b/giu, instead: 'whose, one of them' },
  { pattern: /\b(goes|go|going) by\b/giu, instead: 'uses, knows' },
  { pattern: /\bno (other )?way (to|in which|but)\b/giu, instead: 'cannot' },
  { pattern: /\b(he|his|him)\b/giu, instead: 'they, the lead, the bench hand' },
  { pattern: /\blamps?\b/giu, instead: 'light, light bulb', except: /"Under the lamp"|a dropped lamp\b/giu },
  { pattern: /\bwants an?\b/giu, instead: 'needs a' },
  { pattern: /\btake (it|one|that|this|them|the line|the call) out\b/giu, instead: 'delete it' },
  { pattern: /\blook for a slip\b|\bsays more of\b/giu, instead: 'check; for more on' },
  {
    pattern:
      /\b(colou?r(?<=our)|neighbour|behaviour|vapour|favour|honour|flavour|centre|metre|millimetre|aluminium|grey|licence|defence)\w*/giu,
    instead: 'the American spelling',
  },
  {
    pattern:
      /\b\w+(minimis|maximis|recognis|organis|normalis|initialis|serialis)(e|ed|es|ing|ation)\b|\bminimis(e|ed|es|ing)\b/giu,
    instead: 'the American spelling',
  },
  { pattern: /\bper cent\b/giu, instead: 'percent' },
];

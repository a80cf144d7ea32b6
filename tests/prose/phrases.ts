/** Phrases that the prose avoids, and what to write for them. One list for all texts. */
export interface Phrase {
  readonly pattern: RegExp;
  readonly instead: string;
  /** Uses that are right, such as a keyword of the language. They are cut out of a text before it is searched. */
  readonly except?: RegExp;
}

export const phrases: readonly Phrase[] = [
  { pattern: /\btold\b/giu, instead: 'reported; to distinguish' },
  {
    pattern: /\b(stands?|stood|standing)\b/giu,
    instead: 'is, appears, is written',
    // To stand aside, to be next to a machine; the shop's standing tolerances; what a name stands for; names in code.
    except:
      /\bstand aside\b|\bstanding[- ]tolerances?\b|\bstands? (for|in for|square|alone)\b|\bstanding\.|limits\.standing|'standing'|`stands`/giu,
  },
  { pattern: /\banew\b/giu, instead: 'again' },
  {
    pattern: /\bbears? on\b/giu,
    instead: 'affects',
    // The clause of the language, and messages on it.
    except:
      /[`“']bears on(?: \w+)?[`”']|\bpart bears on\b|, which bears on\b|\bbears? on (\{parts\}|needle|nothing|another is under load)/giu,
  },
  { pattern: /\bmend(s|ed|ing)?\b/giu, instead: 'correct, fix' },
  { pattern: /\bhangs? on\b/giu, instead: 'depends on' },
  { pattern: /\b(speaks? of|spoken of)\b/giu, instead: 'mentions' },
  { pattern: /\b(says nothing of|sa(ys|id) of)\b/giu, instead: 'says about' },
  { pattern: /\bnobody says\b/giu, instead: 'nothing states', except: /nobody says stop/giu },
  { pattern: /\b(thereof|whereby|hence|lest|whilst|amongst)\b/giu, instead: 'a plainer word' },
  { pattern: /\b(made up of|in its turn|for ever|any more)\b/giu, instead: 'consists of; forever; anymore' },
  { pattern: /\bthe other way (about|round)\b/giu, instead: 'the other way around' },
  { pattern: /\basked for\b/giu, instead: 'required, wanted' },
  { pattern: /\bgood for (?=±|its (error|\d))/giu, instead: 'accurate to' },
  {
    pattern: /\b(misspelt|spelt|learnt|towards|spanners?|vices?)\b/giu,
    instead: 'misspelled, toward, wrench, vise',
    // Quoted text of an author.
    except: /vice versa|"[^"\n]*\bspanner[^"\n]*"/giu,
  },
  { pattern: /\bthe way of the\b/giu, instead: 'the path of the, the flow of the' },
  { pattern: /\bc[ao]mes? to\b/giu, instead: 'the result; reach; amounts to' },
  { pattern: /\b(it|as it|which|they) (is|are) so\b|\bis so since\b/giu, instead: 'since; applies' },
  { pattern: /\bof which\b/giu, instead: 'whose, one of them' },
  { pattern: /\b(goes|go|going) by\b/giu, instead: 'uses, knows' },
  { pattern: /\bno (other )?way (to|in which|but)\b/giu, instead: 'cannot' },
  { pattern: /\b(he|his|him)\b/giu, instead: 'they, the lead, the bench hand' },
  { pattern: /\blamps?\b/giu, instead: 'light, light bulb', except: /"Under the lamp"|a dropped lamp\b/giu },
  { pattern: /\bwants\b/giu, instead: 'needs' },
  { pattern: /\btake (it|one|that|this|them|the \w+) out\b/giu, instead: 'delete it' },
  { pattern: /\blook for a slip\b|\bsays more of\b/giu, instead: 'check; for more on' },
  {
    pattern:
      /\b(colou?r(?<=our)|neighbour|behaviour|vapour|favour|honour|flavour|centre|metre|millimetre|aluminium|grey|licence|defence)\w*/giu,
    instead: 'the American spelling',
    // The other spelling of a word of the language.
    except: /[`']aluminium[`']/giu,
  },
  {
    pattern:
      /\b\w+(minimis|maximis|recognis|organis|normalis|initialis|serialis)(e|ed|es|ing|ation)\b|\bminimis(e|ed|es|ing)\b/giu,
    instead: 'the American spelling',
  },
  { pattern: /\bper cent\b/giu, instead: 'percent' },
];

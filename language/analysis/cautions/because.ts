import type { Danger } from '../../model/danger.ts';
import type { Verb } from '../../model/verbs.ts';
import { joined, type Said, say, term } from '../../say/say.ts';

/** The fact that a usual caution follows from. */
export type Because =
  | { readonly from: 'verb'; readonly verb: Verb }
  /** A figure of the step or of its spec, as written. */
  | { readonly from: 'figure'; readonly figure: string }
  /** What the step reads (`read voltage`), or its `with air`. */
  | { readonly from: 'reading'; readonly what: string }
  | { readonly from: 'fluid'; readonly fluid: string; readonly trait: string }
  | { readonly from: 'station'; readonly station: string; readonly trait: string }
  | { readonly from: 'part'; readonly part: string; readonly trait: string }
  | { readonly from: 'step'; readonly danger: Danger }
  /** A word of the author's that sounds like it, where nobody declared it or said that it is not so. */
  | { readonly from: 'words'; readonly word: string; readonly danger: Danger; readonly of: WordsOf };

/** Whose words they are. */
export type WordsOf = { readonly kind: 'step' } | { readonly kind: 'station' | 'part'; readonly name: string };

/** Why a caution is printed, in a sentence for the lead. */
export function becauseText(because: Because): Said {
  switch (because.from) {
    case 'verb':
      return say`the step says ${because.verb}`;
    case 'figure':
      return say`the step works with ${because.figure}`;
    case 'reading':
      return say`the step says ${because.what}`;
    case 'fluid':
      return say`fluid ${because.fluid} is ${because.trait}`;
    case 'station':
      return say`station ${because.station} is ${because.trait}`;
    case 'part':
      return say`part ${because.part} ${because.trait}`;
    case 'step':
      return say`the step says ${because.danger}`;
    case 'words':
      return say`“${because.word}” in the words of ${ofWords(because.of)} sounds like it: write ${because.danger}, or not ${because.danger}`;
  }
}

function ofWords(of: WordsOf): Said {
  return of.kind === 'step' ? say`the step` : joined([term(of.kind), of.name]);
}

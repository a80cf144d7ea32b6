import type * as ast from '../syntax/generated/ast.ts';
import { type PhraseName, phrases } from '../syntax/verbs/phrases.ts';

const wordPhrases = phrases.filter(({ name }) => name.startsWith('words '));

/** The parser writes the words of a phrase together. */
const joined = (words: string) => words.replace(/\s+/gu, '');

/** How a clause is written: which phrases it may be, as the verb has it. None: it means nothing after any verb. */
export function phrasesOf(clause: Exclude<ast.Clause | ast.TestClause, ast.WithClause>): readonly PhraseName[] {
  switch (clause.$type) {
    case 'TextClause':
      return ['text'];
    case 'AmountClause':
      return ['amount'];
    case 'InClause':
      if (clause.pattern) return ['in cross pattern'];
      if (clause.limit !== undefined) return ['in time'];
      return [clause.text === undefined ? 'in fluid' : 'in text'];
    case 'AtClause':
      if (clause.places !== undefined) return ['at each'];
      return [clause.conditions.length === 0 ? 'at station' : 'at limit'];
    case 'ToClause':
      if (clause.objects.length > 0) return ['to parts'];
      return clause.limit === undefined ? ['to spec', 'to station', 'to parts'] : ['to limit'];
    case 'BringClause':
      return ['to bring'];
    case 'FromClause':
      return [clause.limit === undefined ? 'from place' : 'from'];
    case 'ByClause':
      if (clause.stretch) return ['by stretch'];
      if (clause.limit !== undefined) return [];
      return clause.text === undefined ? ['by spec', 'by adjuster'] : ['by text'];
    case 'ForClause':
      if (clause.trial) return ['for trial'];
      return [clause.limit === undefined ? 'for text' : 'for time'];
    case 'WithinClause':
      return ['within'];
    case 'AcceptClause':
      return ['accept'];
    case 'RejectClause':
      return ['reject'];
    case 'VerdictClause':
      return [clause.verdict === 'lap' ? 'verdict lap' : 'verdict'];
    case 'FailClause':
      return ['fail'];
    case 'NoteClause':
      return ['note'];
    case 'AllowClause':
      return ['allow'];
    case 'TakesClause':
      return ['takes'];
    case 'SourceClause':
      return ['source'];
    case 'HeldClause':
      return ['held'];
    case 'WordsClause':
      return wordPhrases
        .filter(({ name }) => name.slice('words'.length).replaceAll(' ', '') === joined(clause.words))
        .map(({ name }) => name);
    case 'PassesClause':
      return ['passes'];
    case 'SlidesClause':
      return ['moves'];
    case 'SpreadClause':
      return ['spread'];
    case 'ProvesClause':
      return ['proves'];
    case 'NeverClause':
      return ['never'];
    case 'ExceptClause':
      return ['except'];
    case 'DangerClause':
      return ['danger'];
    case 'OfClause':
      return ['of parts'];
    case 'ReadClause':
      return ['read'];
    case 'HoldClause':
      return ['hold'];
    case 'PointClause':
      return ['point'];
    case 'WorkedClause':
      return ['worked out'];
  }
}

/** How something behind `with` is written; null: a name, which the verb and what is declared decide on. */
export function phraseOfItem(item: ast.WithItem): PhraseName | null {
  switch (item.$type) {
    case 'WithGauge':
      return 'with gauge';
    case 'WithAir':
      return 'with air';
    case 'WithMarks':
      return 'with marks';
    case 'WithKind':
      return 'with kind';
    case 'WithWords':
      return 'with text';
    case 'WithObject':
      return null;
  }
}

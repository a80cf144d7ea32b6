/** What may go on in a step, by the words before it: read forward, with the table of verbs. */

import { dangers } from '../../model/danger.ts';
import { kindWords, stepWords } from '../../syntax/keywords.ts';
import { phrasesAfter, spellingOf, type Verb, verbIs, verbs, verbTable } from '../../syntax/verbs/index.ts';
import { clauseOf, type Follow, type Phrase, type PhraseName, repeats } from '../../syntax/verbs/phrases.ts';
import type { VerbObject } from '../../syntax/verbs/verb.ts';
import { names, nothing, type Slot, type Wanted, words } from './wanted.ts';

/** Kinds of declared names that each is a name of, as `DeclaredSymbol.kind` calls them. */
const kindsOf: Readonly<
  Record<Exclude<Follow, 'text' | 'figure' | 'limit' | 'kind' | 'rule'> | VerbObject, readonly string[]>
> = {
  part: ['part', 'assembly'],
  face: ['face'],
  port: ['port'],
  joint: ['joint'],
  adjuster: ['adjuster'],
  tool: ['wrench', 'gauge', 'tool'],
  fluid: ['fluid'],
  station: ['station'],
  spec: ['spec'],
  test: ['test'],
  repair: ['repair'],
  places: ['places'],
  reading: ['test', 'spec', 'master'],
  gate: ['test', 'spec'],
};

const spellings = verbs.map((verb) => ({ verb, said: [spellingOf(verb)] }));

/** A verb as it names a step elsewhere. */
const addresses = verbs.map((verb) => ({ verb, said: [verb.replace('clean-', 'clean ')] }));
export const addressVerbs = addresses.flatMap(({ said }) => said);

/** Clauses that take several, with commas between. */
const lists: ReadonlySet<string> = new Set(['with', 'except', 'proves', 'fail', 'passes']);

/** What means nothing in a step that has none of these words. */
const neededBy: Partial<Record<PhraseName, readonly string[]>> = { except: ['all'], again: ['point', 'each'] };

/** What a point says about itself, each once. */
const pointFacts = ['at', 'for', 'within', 'spread at most', 'above', 'below'];

/** Behind the limit of a test that is read at places. */
const inOrder = ['per', 'place', 'in', 'order'];

const firstWord = (said: string) => said.replace(/ .*/u, '');

/** All that a parameter of a sequence may stand for. */
const argumentKinds = ['part', 'face', 'port', 'adjuster', 'test', 'spec'];

/** What may follow these words of a statement in a block of steps. */
export function inStep(before: readonly string[]): Wanted {
  return new StepReader(before).wanted();
}

/** The verb of the last step in the words of a statement, and whether it is their last word. Null: there is none. */
export function verbIn(words: readonly string[]): { readonly verb: Verb; readonly isVerb: boolean } | null {
  if (words.length === 0) return null;
  const reader = new StepReader(words);
  reader.wanted();
  return reader.last;
}

/** Ways to say something that begin at a place, as far as the words go. */
interface Heard<T> {
  /** Said in full, all in as many words. */
  readonly full: readonly T[];
  readonly length: number;
  /** What is missing of those that the words break off in. */
  readonly open: readonly string[];
}

class StepReader {
  private readonly tokens: string[];
  private at = 0;
  /** The verb that was read last, and whether nothing follows it. */
  last: { readonly verb: Verb; readonly isVerb: boolean } | null = null;
  /** What the verb acts on, as far as it is read. */
  private named: string[] = [];
  /** Points of the test, as far as they are read. */
  private points: string[] = [];

  constructor(before: readonly string[]) {
    this.tokens = [...before];
  }

  /** Short steps may share a line: each is read by its verb, and the last says what may follow. */
  wanted(): Wanted {
    for (;;) {
      const first = this.tokens[this.at]!;
      if (first === 'only') return names('number');
      if (first === 'hazard') return this.hazard();
      const { full, length, open } = this.heard(spellings);
      if (full.length === 0) return open.length > 0 ? words(...open) : this.call();
      this.at += length;
      this.last = { verb: full[0]!.verb, isVerb: this.token === undefined };
      this.named = [];
      this.points = [];
      const found = this.objects(full[0]!.verb) ?? this.clauses(full[0]!.verb);
      if (found !== null) return found;
    }
  }

  private get token(): string | undefined {
    return this.tokens[this.at];
  }

  /** `hazard WARNING "…" for slacken nut`. */
  private hazard(): Wanted {
    const last = this.tokens.at(-1)!;
    if (last === 'hazard') return words('DANGER', 'WARNING', 'CAUTION', 'NOTICE');
    if (last === '"') return words('for');
    if (last === 'for') return words(...addressVerbs);
    this.at = this.tokens.lastIndexOf('for') + 1;
    const { full, length, open } = this.heard(addresses);
    this.at += length;
    return full[0] === undefined ? words(...open) : { ...(this.objects(full[0].verb) ?? nothing), words: [] };
  }

  /** A sequence is called. */
  private call(): Wanted {
    const last = this.tokens.at(-1)!;
    if (last === 'allow') return { ...nothing, rules: true };
    if (this.tokens.at(-2) === 'allow') return words('because');
    if (last === 'with' || last === ',' || last === ';') return names(...argumentKinds);
    return words(...(this.at === this.tokens.length - 1 ? ['with'] : []), 'note', 'allow');
  }

  /** Null: they are all read. */
  private objects(verb: Verb): Wanted | null {
    const { objects, all } = verbTable[verb];
    const kinds = objects.flatMap((kind) => kindsOf[kind]);
    // The ports of an assembly have its name.
    if (kinds.length > 0 && verbIs(verb, 'as one') && !kinds.includes('assembly')) kinds.push('assembly');
    if (kinds.length === 0) return null;
    // What is written down has the name that it gives itself.
    if (verb === 'record' && this.token === undefined) return nothing;
    const slot = (): Slot => ({ verb, clause: 'object', named: this.named });
    if (this.token === undefined) return { ...names(...kinds), words: all === undefined ? [] : ['all'], slot: slot() };
    if (this.token === 'all') {
      this.at++;
      return null;
    }
    for (;;) {
      this.named.push(this.token!);
      this.name();
      if (this.at > this.tokens.length) return nothing;
      if (this.token === 'located') {
        this.at += this.tokens[this.at + 1] === 'by' ? 3 : 1;
        if (this.at > this.tokens.length) return nothing;
      }
      if (this.token !== ',') return null;
      this.at++;
      if (this.token === undefined) return { ...names(...kinds), slot: slot() };
    }
  }

  /** Null: a step begins. */
  private clauses(verb: Verb): Wanted | null {
    const all = phrasesAfter(verb).filter(({ name }) => {
      const of = neededBy[name];
      return of === undefined || of.some((word) => this.tokens.includes(word));
    });
    const done = new Set<string>();
    let last: readonly string[] =
      this.tokens[this.at - 1] === 'located' || this.tokens[this.at - 1] === '"' ? [] : ['object'];
    for (;;) {
      const goesOn = ({ after, insteadOf }: Phrase) =>
        after?.some((name) => last.includes(name)) || last.includes(insteadOf ?? '');
      const here = all.filter((phrase) => (phrase.after ?? phrase.insteadOf) === undefined || goesOn(phrase));
      const must = here.filter((phrase) => phrase.must && goesOn(phrase));
      const ofPlaces = verb === 'test' && last.includes('within') && this.tokens.includes('each');
      const mayBegin = () => {
        const begin = offered(
          must.length > 0
            ? must
            : here.filter(
                ({ name, after, insteadOf }) =>
                  insteadOf === undefined && (after !== undefined || repeats(name) || !done.has(clauseOf(name))),
              ),
        );
        return ofPlaces ? { ...begin, words: [...begin.words, inOrder.join(' ')] } : begin;
      };
      if (this.token === undefined) {
        const begins = mayBegin();
        // What can hurt is said once, or denied.
        const isSaid = (word: string) =>
          (dangers as readonly string[]).includes(word.replace(/^not /u, '')) &&
          this.tokens.includes(word.replace(/^not /u, ''));
        return { ...begins, words: begins.words.filter((word) => !isSaid(word)) };
      }
      if (this.token === '"') {
        this.at++;
        last = [];
      } else if (this.token === ',') {
        this.at++;
        if (this.token === undefined) return offered(here.filter(({ name }) => name === 'passes' && !done.has(name)));
      } else if (this.limit()) {
        last = [];
        if (this.breaksOff()) return nothing;
      } else if (ofPlaces && this.token === 'per') {
        const said = this.tokens.slice(this.at, this.at + inOrder.length);
        if (said.length < inOrder.length) return words(inOrder.slice(said.length).join(' '));
        this.at += said.length;
        last = [];
      } else {
        const heard = this.heard(here);
        const next = heard.full.filter(goesOn);
        const full = next.length > 0 ? next : heard.full;
        const ends = this.at + heard.length === this.tokens.length;
        if (heard.open.length > 0 || (ends && full.some(({ follows }) => follows !== undefined))) {
          const least =
            this.token === 'at' && heard.length === 1 && all.some(({ name }) => name === 'amount')
              ? ['least', 'most']
              : [];
          // `spread at most`: a figure comes next.
          if (!ends || this.tokens.at(-1) === 'most') return words(...heard.open);
          const instead = all.filter(({ insteadOf }) => full.some(({ name }) => name === insteadOf));
          const follow = followed(full);
          // `with air` may be all that is said.
          const further = full.some(({ follows }) => follows === undefined) ? mayBegin().words : [];
          const named = full.find(({ follows }) => follows !== undefined);
          return {
            ...follow,
            ...(named === undefined ? {} : { slot: { verb, clause: named.name, named: this.named } }),
            words: [...follow.words, ...heard.open, ...least, ...offered(instead).words, ...further],
          };
        }
        if (full.length === 0) return stepWords.includes(this.token) ? null : nothing;
        const said = this.tokens.slice(this.at, this.at + heard.length);
        this.at += heard.length;
        for (const { name } of full) done.add(clauseOf(name));
        const start = this.at;
        const own = this.ofItsOwn(full[0]!.name, mayBegin);
        if (own !== null) return own;
        if (this.at > start) {
          last = [];
          continue;
        }
        const text = this.token === '"';
        last = full.filter(({ follows }) => !text || follows?.includes('text')).map(({ name }) => name);
        const found = this.filler(full, said, all);
        if (found !== null) return found;
      }
    }
  }

  /** Reads what only one phrase has behind its words, names that the author makes up among it. */
  private ofItsOwn(name: PhraseName, mayBegin: () => Wanted): Wanted | null {
    switch (name) {
      case 'point':
        return this.point(mayBegin);
      case 'worked out':
        return this.operand() ?? this.either('less', 'plus') ?? this.operand();
      case 'as words':
        return this.form(mayBegin);
      case 'at limit':
      case 'at station':
        return this.conditions();
      default:
        return null;
    }
  }

  /** `full "Full load" at 1000 rpm, rack 9.0 mm for 1000 strokes within 92 mL spread at most 1.5 mL above idle`. */
  private point(mayBegin: () => Wanted): Wanted | null {
    const name = this.token;
    const broken = this.operand();
    if (broken !== null) return broken;
    const open = new Set(pointFacts);
    for (;;) {
      if (this.token === undefined) {
        const begins = mayBegin().words.filter(
          (said) => !pointFacts.some((fact) => firstWord(fact) === firstWord(said)),
        );
        const facts = [...open].filter((fact) => this.points.length > 0 || (fact !== 'above' && fact !== 'below'));
        return words(...facts, ...begins);
      }
      if (this.token === ',' && this.at + 1 < this.tokens.length) {
        this.at++;
        continue;
      }
      const fact = pointFacts.find((one) => firstWord(one) === this.token);
      if (fact === undefined) break;
      this.at++;
      open.delete(fact);
      const found = this.pointFact(fact);
      if (found !== null) return found;
    }
    this.points.push(name!);
    return null;
  }

  /** What follows the first word of it. */
  private pointFact(fact: string): Wanted | null {
    if (fact === 'at') return this.token === undefined ? nothing : this.conditions();
    if (fact === 'above' || fact === 'below') {
      if (this.token === undefined) return words(...this.points);
      this.at++;
      return null;
    }
    if (this.token === undefined) {
      if (fact === 'spread at most') return words('at most');
      return fact === 'within' ? { ...names(...kindsOf.spec), words: limitWords } : nothing;
    }
    if (this.token === 'at' && this.at === this.tokens.length - 1)
      return fact === 'spread at most' ? words('most') : words('least', 'most');
    if (this.limit()) return this.breaksOff() ? nothing : null;
    this.at++;
    return null;
  }

  /** `1000 rpm, rack 9.0 mm`: figures, each but the first with a word of the author's. Null too: there are none. */
  private conditions(): Wanted | null {
    for (;;) {
      // A word is the author's where a figure follows it.
      const start = this.at;
      if (this.token !== undefined && /^\p{L}/u.test(this.token) && this.token !== 'at') this.at++;
      if (!this.limit()) {
        this.at = start;
        return null;
      }
      if (this.breaksOff()) return nothing;
      if (this.token !== ',') return null;
      this.at++;
      if (this.tokens.length - this.at < 2) return nothing;
    }
  }

  /** `6 letters or digits`, `"good", "worn"`. */
  private form(mayBegin: () => Wanted): Wanted | null {
    const further = (...said: readonly string[]) => words(...said, ...mayBegin().words);
    if (this.take('"')) {
      while (this.token !== undefined) {
        if (!this.take(',') && !this.take('or')) return null;
        if (!this.take('"')) return nothing;
      }
      return further('or');
    }
    if (this.token === undefined) return nothing;
    this.at++;
    if (this.token === undefined) return words('letters or digits', 'letters', 'digits');
    if (!this.take('letters')) {
      this.at++;
      return null;
    }
    if (this.token === undefined) return further('or digits');
    if (!this.take('or')) return null;
    return this.take('digits') ? null : words('digits');
  }

  private take(token: string): boolean {
    if (this.token !== token) return false;
    this.at++;
    return true;
  }

  /** A name that is made up here, and its title. */
  private operand(): Wanted | null {
    if (this.token === undefined) return nothing;
    this.at++;
    if (this.token === '"') this.at++;
    return null;
  }

  private either(...said: readonly string[]): Wanted | null {
    if (this.token === undefined) return words(...said);
    this.at++;
    return null;
  }

  /** Reads what follows the words of a phrase. */
  private filler(full: readonly Phrase[], said: readonly string[], all: readonly Phrase[]): Wanted | null {
    const follows = full.flatMap((phrase) => phrase.follows ?? []);
    if (this.token === '"') this.at++;
    else if (this.limit()) return this.breaksOff() ? nothing : null;
    else if (this.token === 'at' && this.at === this.tokens.length - 1 && follows.includes('limit'))
      return words('least', 'most');
    else if (follows.some((follow) => follow !== 'text' && follow !== 'limit' && follow !== 'figure')) {
      const instead = all.filter(({ insteadOf }) => full.some(({ name }) => name === insteadOf));
      if (this.heard(instead).full.length > 0) return null;
      this.name();
      if (this.at > this.tokens.length) return nothing;
    }
    const tries = this.tries();
    if (tries !== null) return tries;
    // After a comma the same is said again.
    if (this.token === ',' && full.some(({ after }) => after?.includes('fail')))
      this.tokens.splice(this.at, 1, 'on', 'fail');
    else if (this.token === ',' && full.some(({ name }) => lists.has(clauseOf(name)))) {
      const inside = full.some(({ insteadOf }) => insteadOf === 'fail') ? ['on', 'fail'] : [];
      this.tokens.splice(this.at, 1, ...inside, ...(said[0] === 'with' ? ['with'] : said));
    }
    return null;
  }

  /** `(2 times)` behind a repair. */
  private tries(): Wanted | null {
    if (this.token !== '(') return null;
    const end = this.tokens.indexOf(')', this.at);
    if (end >= 0) {
      this.at = end + 1;
      return null;
    }
    const last = this.tokens.at(-1)!;
    if (last === '(') return words('once', 'twice', 'without limit');
    return /^\d/u.test(last) ? words('times') : last === 'without' ? words('limit') : nothing;
  }

  /** `nozzle 3`, `body.end`. */
  private name() {
    this.at++;
    if (this.token === '.') this.at += 2;
    if (this.token === undefined) return;
    // `plunger 2 in solvent`: no inches.
    if (/^\d+\s+in$/u.test(this.token)) this.tokens.splice(this.at, 1, this.token.slice(0, -2), 'in');
    if (/^\d+\s*$/u.test(this.token)) this.at++;
  }

  /** Whether the words end in a figure that is not whole: its unit comes next. */
  private breaksOff(): boolean {
    const [before, last] = this.tokens.slice(-2);
    if (this.token !== undefined || last === undefined) return false;
    return /^\d+(?:[.,]\d+)?$/u.test(last) ? !/^[±+−/-]$/u.test(before ?? '') : !/^\d|^\)$/u.test(last);
  }

  /** Whether a limit was read. */
  private limit(): boolean {
    const start = this.at;
    for (;;) {
      const [now, next] = this.tokens.slice(this.at, this.at + 2);
      if (now === 'at' && (next === 'least' || next === 'most')) this.at += 2;
      else if (now === 'then' && start < this.at) this.at++;
      else if (now === '(' && start < this.at && next !== undefined && !/^\d+$/u.test(next)) this.at++;
      else if (now !== undefined && (/^[\d±+−./]/u.test(now) || now === '-' || (now === ')' && start < this.at)))
        this.at++;
      else return start < this.at;
    }
  }

  private heard<T extends { readonly said: readonly string[] }>(ways: readonly T[]): Heard<T> {
    const open: string[] = [];
    let full: T[] = [];
    let length = 0;
    for (const way of ways) {
      for (const said of way.said) {
        const wanted = said.split(' ');
        const there = this.tokens.slice(this.at, this.at + wanted.length);
        if (there.length === 0 || there.some((word, index) => word !== wanted[index])) continue;
        if (there.length < wanted.length) open.push(wanted.slice(there.length).join(' '));
        else if (wanted.length > length) [full, length] = [[way], wanted.length];
        else if (wanted.length === length) full.push(way);
      }
    }
    return { full, length, open };
  }
}

/** Phrases that may begin here. */
function offered(phrases: readonly Phrase[]): Wanted {
  return words(...phrases.flatMap(({ name, said }) => (name === 'amount' ? limitWords : said)));
}

const limitWords = ['at least', 'at most'];

/** What follows the words of these phrases. */
function followed(phrases: readonly Phrase[]): Wanted {
  const follows = phrases.flatMap((phrase) => phrase.follows ?? []);
  const kinds: string[] = [];
  const said: string[] = [];
  for (const follow of follows) {
    if (follow === 'limit') said.push(...limitWords);
    else if (follow === 'kind') said.push(...kindWords);
    else if (follow !== 'text' && follow !== 'figure' && follow !== 'rule') kinds.push(...kindsOf[follow]);
  }
  return { names: kinds, words: said, verbs: false, rules: follows.includes('rule') };
}

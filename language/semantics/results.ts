import { type FactWord, factWords, type ReadingResult, type Result } from '../model/job.ts';
import type { Wording } from '../model/plan.ts';
import { readingAt, readingId } from '../model/reading-id.ts';
import type { Master } from '../model/shop.ts';
import type { NameUse, Source } from '../model/source.ts';
import { formatQuantity, kindOfLimit, kindOfUnit } from '../quantities/index.ts';
import { kindAdmits } from '../quantities/kinds.ts';
import type { Kind, Quantity, UnitName } from '../quantities/types.ts';
import { either, type Said, say, term } from '../say/say.ts';
import type * as ast from '../syntax/generated/ast.ts';
import { nearest } from '../syntax/nearest.ts';
import { textOf } from '../syntax/place.ts';
import type { ProblemCode } from '../syntax/problem-code.ts';
import type { Context } from './context.ts';
import { factForms } from './fact-forms.ts';
import { partsNamed } from './family.ts';
import { lowerCount, lowerNumber, lowerQuantity } from './limits.ts';
import { addressIn, planFor } from './result-places.ts';
import { lowerDate } from './shop.ts';
import type { RecordSignature, Signature } from './signature.ts';

/** What was written down of a unit, and its notes. */
interface Written {
  readonly results: Result[];
  readonly notes: string[];
}

/**
 * Makes the lines of a unit plain data: the words of each tell what it is.
 * @param others what can be read besides
 */
export function lowerResults(
  context: Context,
  nodes: readonly ast.Result[],
  procedure: Signature,
  others: readonly Master[] = [],
): Written {
  const written: Written = { results: [], notes: [] };
  const reader = new ResultReader(context, procedure, written, others);
  for (const node of nodes) reader.read(node);
  reader.check();
  return written;
}

/** Words that make a result of a name. */
const resultWords = ['as', 'found', 'renewed', 'batch', 'torque', 'done', 'note', 'pass', 'fail', 'out'];

/** Where something was read: `at cylinder 3`, `at turbine`. */
interface Where {
  readonly place: ast.NameRef;
  readonly number: string | null;
}

/** What followed the names of a result. */
interface Facts {
  value: Quantity | null;
  /** A figure for each place. */
  series: readonly Quantity[] | null;
  /** `at cylinder 3`, `at turbine`. */
  place: Where | null;
  fitted: Quantity | null;
  /** `with MIC-1`. */
  tool: string | null;
  /** `on PG-400`. */
  gauge: string | null;
  by: string | null;
  on: string | null;
  text: string | null;
  /** `for spring`. */
  part: ast.NameRef | null;
}

const noFacts: Facts = {
  value: null,
  series: null,
  place: null,
  fitted: null,
  tool: null,
  gauge: null,
  by: null,
  on: null,
  text: null,
  part: null,
};

class ResultReader {
  private readonly context: Context;
  private readonly procedure: Signature;
  private readonly written: Written;
  private readonly readable: readonly NameUse[];
  private readonly others: readonly Master[];

  constructor(context: Context, procedure: Signature, written: Written, others: readonly Master[]) {
    this.context = context;
    this.procedure = procedure;
    this.written = written;
    this.readable = [...procedure.readable, ...others];
    this.others = others;
  }

  /** `seat-leak pass chatter pass back-leak 9 s` is one node: what follows the last name belongs to that. */
  read(node: ast.Result) {
    const names = [...node.names];
    if (this.goesOn(node, names) || this.fact(node, names)) return;
    let asFound = false;
    while (names.length > 0) {
      if (names[0]!.name === 'as' && names[1]?.name === 'found') {
        names.splice(0, 2);
        asFound = true;
        continue;
      }
      if (names[0]!.name === 'renewed' && names.length > 1) {
        names.shift();
        if (this.renewed(names, node) || (names.length === 0 && node.facts.length === 0)) return;
        continue;
      }
      const at = names.findIndex(({ name }) => name === 'pass' || name === 'fail');
      // `seat-leak pass`, or of a test with points and places `spray full turbine pass`.
      if (at < 1 || at > 1 + this.placedWords(names[0]!)) break;
      const about = names.splice(0, at + 1);
      this.verdict(about.slice(0, -1), about.at(-1)!.name === 'pass', asFound, names.length === 0 ? node : null);
      if (names.length === 0) return;
    }
    this.last(node, names, asFound);
  }

  /** `since 2026-11-03`, `paper "LS-881"`, `batch "L-7"`: goes on with what is before it. */
  private goesOn(node: ast.Result, names: readonly ast.NameRef[]): boolean {
    const last = this.written.results.at(-1);
    const [word, value, ...more] = names;
    if (last === undefined || word === undefined) return false;
    if (last.form === 'renewed' && (word.name === 'number' || word.name === 'batch') && names.length === 1) {
      const { text } = this.factsOf(node);
      if (text === null) this.refuse(node, say`Write what its maker calls it in quotes: ${word.name} "L-7".`);
      else this.with({ ...last, [word.name]: text });
      this.only(node, ['text']);
      return true;
    }
    if (last.form !== 'fact') return false;
    const { goesOn, labels, example } = factForms[last.word];
    if (goesOn?.word !== word.name || more.length > 0) return false;
    const facts = this.factsOf(node);
    this.only(node, goesOn.brings === 'on' ? ['on', 'text'] : ['text']);
    const label = labels === undefined ? facts.text : (value?.name ?? null);
    if (labels !== undefined && value !== undefined)
      this.context.find(value.name, 'cause', namesOf(labels, this.context.source(value)), this.context.source(value));
    const brought = goesOn.brings === 'on' ? facts.on : label;
    if (brought === null) this.refuse(node, say`Write all of it: ${example}.`);
    this.with(goesOn.brings === 'on' ? { ...last, on: facts.on } : { ...last, label });
    return true;
  }

  private with(result: Result) {
    this.written.results[this.written.results.length - 1] = result;
  }

  /** A line that is no result; false: it is one. */
  private fact(node: ast.Result, names: readonly ast.NameRef[]): boolean {
    const [first, second, ...more] = names;
    const word = factWords.find((one) => one === first?.name);
    const isName = [...this.readable, ...this.procedure.family.parts].some(({ name }) => name === first?.name);
    if (word === undefined) return false;
    const { needs, may, names: of, goesOn, example, several } = factForms[word];
    // A test or a part may be called so.
    if (isName && !(Array.isArray(of) && of.includes(second?.name ?? ''))) return false;
    const facts = this.factsOf(node);
    const takes = [...needs, ...may];
    const named = facts.part ?? (of === undefined ? undefined : second);
    if (of === 'readable' && second !== undefined && planFor(this.procedure, second.name) !== null)
      return this.conceded(node, word, names.slice(1), facts);
    if (several === true && of !== undefined && names.length > 2) {
      this.only(node, []);
      for (const one of names.slice(1)) this.named(node, word, this.nameOf(one, of));
      return true;
    }
    const name = named === undefined || of === undefined ? null : this.nameOf(named, of);
    const tied = goesOn !== undefined && second?.name === goesOn.word ? second : undefined;
    const stray = [second, ...more].find((one) => one !== undefined && one !== named && one !== tied);
    if (stray !== undefined) {
      this.refuse(stray, say`“${stray.name}” has no meaning after ${word}. Write ${example}.`);
      return true;
    }
    this.only(node, [
      ...(['text', 'by', 'on'] as const).filter((key) => takes.includes(key) || tied !== undefined),
      ...(of === 'parts' ? (['part'] as const) : []),
    ]);
    const label = tied === undefined ? null : facts.text;
    const text = tied === undefined ? facts.text : null;
    this.written.results.push({
      form: 'fact',
      word,
      name,
      text,
      label,
      by: facts.by,
      on: facts.on,
      source: this.context.source(node),
    });
    return true;
  }

  /** `concession delivery full at cylinder 3 by "…" on …`: of a test with points and places, one reading. */
  private conceded(node: ast.Result, word: FactWord, names: readonly ast.NameRef[], facts: Facts): true {
    const { text, by, on } = facts;
    this.only(node, ['text', 'by', 'on', 'place']);
    const test = this.find(names[0]!, 'test', this.readable)!;
    const where = addressIn(this.procedure, test, wordsOf(names, facts), facts.place?.number ?? null);
    if ('wrong' in where) this.refuse(where.at ?? node, where.wrong);
    else if (where.readings.length > 1)
      this.refuse(
        node,
        say`A concession is for one reading, and ${test} is read at each ${where.places}: write at which behind it.`,
      );
    else
      for (const at of where.readings)
        this.written.results.push({
          form: 'fact',
          word,
          name: readingId(at),
          text,
          label: null,
          by,
          on,
          source: this.context.source(node),
        });
    return true;
  }

  private named(node: ast.Result, word: FactWord, name: string | null) {
    const source = this.context.source(node);
    if (name !== null)
      this.written.results.push({ form: 'fact', word, name, text: null, label: null, by: null, on: null, source });
  }

  private nameOf(node: ast.NameRef, of: readonly string[] | 'parts' | 'readable'): string | null {
    if (of === 'parts') return this.find(node, 'part', this.procedure.family.parts);
    if (of === 'readable') return this.find(node, 'test', [...this.readable, ...this.procedure.family.parts]);
    const source = this.context.source(node);
    return this.context.find(node.name, 'word', namesOf(of, source), source)?.name ?? null;
  }

  /** What a fact has to say, once its line has been read. */
  check() {
    for (const result of this.written.results) {
      if (result.form !== 'fact') continue;
      const { needs, example } = factForms[result.word];
      if (needs.some((key) => result[key] === null || result[key]?.trim() === ''))
        this.context.syntax(
          'result-unreadable',
          say`Something is missing of ${result.word}. Write ${example}.`,
          result.source,
        );
    }
  }

  /** What follows the last name of a line belongs to that. */
  private verdict(names: readonly ast.NameRef[], passed: boolean, asFound: boolean, behind: ast.Result | null) {
    const parts = this.procedure.family.parts;
    const [node] = names;
    const name = this.find(node!, 'test', [...this.readable, ...parts]);
    const source = this.context.source(node!);
    const facts = behind === null ? noFacts : this.factsOf(behind);
    if (behind !== null) this.only(behind, ['tool', 'gauge', 'text', 'place', 'by', 'on']);
    const watched = facts.gauge ?? facts.tool;
    if (name === null) return;
    const where = addressIn(this.procedure, name, wordsOf(names, facts), facts.place?.number ?? null, true);
    if ('wrong' in where) return this.refuse(where.at ?? node!, where.wrong);
    for (const { point, place } of where.readings)
      this.written.results.push({
        form: 'verdict',
        name: readingId({ test: name, point, place }),
        asFound,
        passed,
        watched,
        text: facts.text,
        source,
        ...doneOf(facts),
      });
  }

  /** How many words may say where a test was read, behind its name. */
  private placedWords({ name }: ast.NameRef): number {
    const plan = planFor(this.procedure, name);
    return plan === null ? 0 : Number(plan.points.length > 0) + 2 * Number(plan.places !== null);
  }

  /**
   * Takes the parts that come next off the names. The first is one, whatever else may have its name. True: nothing of the
   * line is left.
   */
  private renewed(names: ast.NameRef[], node: ast.Result): boolean {
    const { parts } = this.procedure.family;
    const isPart = ({ name }: ast.NameRef) => partsNamed(parts, name).length > 0;
    const after = names.findIndex((name, index) => index > 0 && !isPart(name));
    if (
      after !== -1 &&
      (names[after]!.name === 'number' || names[after]!.name === 'batch') &&
      after === names.length - 1
    ) {
      for (const name of names.splice(0, after)) this.renew(name, null);
      return this.goesOn(node, names.splice(0));
    }
    // `renewed plunger at cylinder 3`
    if (after === -1 && node.facts.length > 0 && node.facts.every(({ $type }) => $type === 'ResultPlace')) {
      const { place } = this.factsOf(node);
      this.only(node, ['place']);
      for (const name of names.splice(0)) this.renew(name, place);
      return true;
    }
    const told =
      after === -1
        ? node.facts.some(({ $type }) => $type === 'ResultValue' || $type === 'ResultIn')
        : /^(?:out|pass|fail)$/u.test(names[after]!.name);
    // The last of them begins a result of its own: `renewed spring  shim out 1.30 mm`.
    const count = (after === -1 ? names.length : after) - (told ? 1 : 0);
    for (const name of names.splice(0, Math.max(1, count))) this.renew(name, null);
    return false;
  }

  private renew(name: ast.NameRef, at: Where | null) {
    for (const part of this.partsAt(name, at))
      this.written.results.push({ form: 'renewed', part, source: this.context.source(name) });
  }

  /** The names that are left, with what follows them. */
  private last(node: ast.Result, names: readonly ast.NameRef[], asFound: boolean) {
    const { context, procedure, written } = this;
    const facts = this.factsOf(node);
    const source = context.source(node);
    const [first, second, ...more] = names;
    const { value, fitted, text } = facts;
    if (first === undefined) {
      if (text === null)
        return this.refuse(node, say`Write what was found: as found opening 214 bar, or as found "…".`);
      this.only(node, ['text']);
      written.results.push({ form: 'remark', asFound, text, source });
      return;
    }
    if (first.name === 'note' && second === undefined) {
      if (text === null) return this.refuse(node, say`Write the note in quotes.`);
      this.only(node, ['text']);
      written.notes.push(text);
      return;
    }
    if (first.name === 'renewed') return this.refuse(node, say`Write what went in new: renewed spring, washer.`);
    if (first.name === 'done' && second === undefined) {
      if (facts.by === null || facts.by.trim() === '')
        return this.refuse(node, say`Write done by and a name in quotes.`);
      this.only(node, ['by', 'on']);
      written.results.push({ form: 'done', by: facts.by, on: facts.on, source });
      return;
    }
    if (first.name === 'torque' && second !== undefined && more.length === 0) {
      const parts = this.partsAt(second, facts.place);
      if (value === null) return this.refuse(node, say`Write the torque that was set: torque nut 60 N·m.`);
      const loose = parts.find((part) => !isTightened(procedure, part));
      if (loose !== undefined)
        return this.refuse(
          second,
          say`Nothing is tightened at ${loose}: it is not a joint of the family, and no step torques it. Name the part that is turned.`,
          'wrong-use-of-name',
        );
      this.only(node, ['value', facts.tool === null ? 'gauge' : 'tool', 'place', 'by', 'on']);
      if (parts.length === 0 || !this.isOf(value, only('torque'), node)) return;
      const tool = facts.tool ?? facts.gauge;
      for (const part of parts) written.results.push({ form: 'torque', part, value, tool, source, ...doneOf(facts) });
      return;
    }
    if (fitted !== null || (second?.name === 'out' && more.length === 0)) {
      if (fitted !== null && second !== undefined)
        return this.refuse(second, say`Write one part, “in” and its size: shim in 1.45 mm.`);
      const parts = this.partsAt(first, facts.place);
      const size = fitted ?? value;
      if (size === null) return this.refuse(node, say`Write the size: shim out 1.30 mm.`);
      this.only(node, [
        fitted === null ? 'value' : 'fitted',
        facts.tool === null ? 'gauge' : 'tool',
        'place',
        'by',
        'on',
      ]);
      if (parts.length === 0 || !this.isOf(size, only('length'), node)) return;
      const tool = facts.tool ?? facts.gauge;
      for (const part of parts)
        written.results.push({ form: 'shim', part, fitted: fitted !== null, size, tool, source, ...doneOf(facts) });
      return;
    }
    const record = procedure.records.find(({ name }) => name === first.name);
    if (record !== undefined && text !== null && value === null) return this.words(node, record, names, facts, text);
    const isPlanned = planFor(procedure, first.name) !== null;
    if (!isPlanned && this.isSlip(names)) return;
    if (second !== undefined && !isPlanned) return this.refuse(second, say`“${second.name}” is not a result here.`);
    const name = this.find(first, 'test', this.readable);
    const values = facts.series ?? (value === null ? null : [value]);
    if (values === null) return this.refuse(node, say`Write what was read, or pass or fail.`);
    this.only(node, [facts.series === null ? 'value' : 'series', 'tool', 'gauge', 'text', 'place', 'by', 'on']);
    if (name === null) return;
    const where = addressIn(procedure, name, wordsOf(names, facts), facts.place?.number ?? null);
    if ('wrong' in where) return this.refuse(where.at ?? node, where.wrong);
    const { readings, places } = where;
    if (readings.length !== values.length)
      return this.refuse(
        node,
        values.length === 1
          ? say`${first.name} is read at each ${places}: write one figure for each of ${readings.map(({ place }) => place).join(', ')}, separated by commas, or at which behind the figure.`
          : readings.length === 1
            ? say`${first.name} is one figure here, and these are ${values.length}.`
            : say`These are ${values.length} figures, and ${readings.length} are read: one for each ${places}, ${readings.map(({ place }) => place).join(', ')}.`,
      );
    for (const [index, { point, place }] of readings.entries()) {
      const id = readingId({ test: name, point, place });
      const read = values[index]!;
      if (!this.isOf(read, this.readableOf(id), node)) return;
      written.results.push({
        form: 'reading',
        name: id,
        asFound,
        value: read,
        ...this.readOn(facts, read),
        text,
        source,
        ...doneOf(facts),
      });
    }
  }

  /** `trim "A7K2Q9" at cylinder 3`. */
  private words(
    node: ast.Result,
    { name, wording }: RecordSignature,
    names: readonly ast.NameRef[],
    facts: Facts,
    text: string,
  ) {
    this.only(node, ['text', 'place']);
    const wrong = wrongWords(wording, text);
    if (wrong !== null) return this.refuse(node, wrong);
    const where = addressIn(this.procedure, name, wordsOf(names, facts), facts.place?.number ?? null);
    if ('wrong' in where) return this.refuse(where.at ?? node, where.wrong);
    const [at, second] = where.readings;
    if (at === undefined || second !== undefined)
      return this.refuse(
        node,
        say`${name} is written down at each ${where.places}: write at which behind it, one to a line.`,
      );
    this.find(names[0]!, 'test', this.readable);
    this.written.results.push({ form: 'words', name: readingId(at), text, source: this.context.source(node) });
  }

  /** Whether a word that makes a result is misspelled: reported, where no test or part is called so. */
  private isSlip(names: readonly ast.NameRef[]): boolean {
    const known = new Set([...this.readable, ...this.procedure.family.parts].map(({ name }) => name));
    for (const [index, node] of names.entries()) {
      // With such a word a line begins.
      const facts = index === 0 ? factWords : [];
      // What is nearer to a name is a slip in that, which has its own report.
      const [word] = known.has(node.name) ? [] : nearest(node.name, [...resultWords, ...facts, ...known]);
      if (word === undefined || word === node.name || known.has(word)) continue;
      this.refuse(node, say`“${node.name}” is not a result here. Did you mean ${word}?`);
      return true;
    }
    return false;
  }

  private factsOf(node: ast.Result): Facts {
    const facts: Facts = { ...noFacts };
    for (const fact of node.facts) {
      switch (fact.$type) {
        case 'ResultValue':
          facts.value ??= lowerQuantity(this.context, fact, 'value', fact.value, fact.sign);
          break;
        case 'ResultSeries':
          facts.series ??= this.series(fact);
          break;
        case 'ResultPlace':
          facts.place ??= this.place(fact);
          break;
        case 'ResultIn':
          facts.fitted ??= lowerQuantity(this.context, fact, 'value', fact.value, fact.sign);
          break;
        case 'ResultOn':
          if (fact.tool !== undefined) facts.gauge ??= this.tool(fact.tool);
          else if (fact.date !== undefined) facts.on ??= lowerDate(this.context, fact, 'date', fact.date);
          break;
        case 'ResultWith':
          facts.tool ??= this.tool(fact.tool);
          break;
        case 'ResultBy':
          facts.by ??= fact.person;
          break;
        case 'ResultText':
          facts.text ??= fact.text;
          break;
        case 'ResultFor':
          facts.part ??= fact.part;
          break;
        case 'ResultDate':
          facts.on ??= lowerDate(this.context, fact, 'date', fact.date);
          break;
      }
    }
    return facts;
  }

  private place(fact: ast.ResultPlace): Where | null {
    const { place, number } = fact;
    if (number === undefined) return { place, number: null };
    const count = lowerCount(this.context, fact, 'number', number, { least: 1, like: 'at cylinder 3' });
    return count === null ? null : { place, number: String(count) };
  }

  /** `92.1, 91.5, 92.0 mL`: all in the unit of the last. Null where a figure cannot be read (reported). */
  private series(fact: ast.ResultSeries): Quantity[] | null {
    const last = lowerQuantity(this.context, fact.last, 'value', fact.last.value, fact.last.sign);
    const numbers = fact.numbers.map((one) => {
      const number = lowerNumber(this.context, one, 'number', one.number);
      return number === null || one.sign === undefined ? number : `-${number}`;
    });
    if (last === null || numbers.includes(null)) return null;
    return [...numbers.map((number) => ({ number: number!, unit: last.unit })), last];
  }

  /** What follows a result and is not part of it, or is there twice, would be lost. */
  private only(node: ast.Result, takes: readonly (keyof Facts)[]) {
    for (const [index, fact] of node.facts.entries()) {
      const key = keyOf(fact);
      const first = node.facts.findIndex((other) => keyOf(other) === key) === index;
      if (key === null || (takes.includes(key) && first)) continue;
      this.refuse(
        fact,
        say`“${textOf(fact)}” belongs to no result here, and would be lost. Write the result that it belongs to before it, or delete it.`,
      );
    }
  }

  private tool(tool: ast.NameRef): string | null {
    return this.find(tool, 'tool', this.procedure.shop.assets);
  }

  /** `back-leak 9 s on PG-400 with SW-1`: the watch shows the seconds; the gauge, what they are counted between. */
  private readOn(facts: Facts, value: Quantity): Pick<ReadingResult, 'tool' | 'watched'> {
    const [shown, other = null] = [facts.tool, facts.gauge].filter((name) => name !== null);
    if (shown === undefined) return { tool: null, watched: null };
    const { kind, range } = this.procedure.shop.assets.find(({ name }) => name === shown)!;
    const showsTime = range === null ? kind === 'tool' : kindOfUnit(range.high.unit) === 'time';
    if (kindOfUnit(value.unit) === 'time' && !showsTime) return { tool: other, watched: shown };
    return { tool: shown, watched: other };
  }

  private readableOf(id: string): Readable {
    const master = this.others.find(({ name }) => name === id);
    if (master === undefined) return readableOf(this.procedure, id);
    return master.limit === null ? { kind: null, takes: () => true } : only(kindOfLimit(master.limit));
  }

  /** The parts of a name: `holder` is that of every cylinder, `holder … at cylinder 3` is one. What is not found is reported. */
  private partsAt(node: ast.NameRef, at: Where | null): string[] {
    const { parts } = this.procedure.family;
    const copies = partsNamed(parts, node.name);
    if (copies.length === 0 || (copies[0]!.name === node.name && at === null)) {
      const name = this.find(node, 'part', parts);
      return name === null ? [] : [name];
    }
    this.context.link(this.context.source(node), copies[0]!.source, node.name, 'part');
    const there = copies.filter(
      ({ position, side }) => at === null || (side === null ? String(position) === at.number : side === at.place.name),
    );
    if (there.length === 0)
      this.context.find(`${node.name}-${at!.number ?? at!.place.name}`, 'part', parts, this.context.source(at!.place));
    return there.map(({ name }) => name);
  }

  private find(node: ast.NameRef, what: string, among: readonly NameUse[]): string | null {
    return this.context.find(node.name, what, among, this.context.source(node))?.name ?? null;
  }

  private isOf(value: Quantity, { kind, takes }: Readable, node: ast.Result): boolean {
    const { unit } = value;
    if (takes(unit)) return true;
    this.refuse(
      node,
      say`${formatQuantity(value)} is a ${term(kindOfUnit(unit))}, and a ${term(kind!)} is read here. Check the unit.`,
      'unit-of-another-kind',
    );
    return false;
  }

  private refuse(
    node: ast.Result | ast.ResultFact | ast.NameRef,
    message: Said,
    code: ProblemCode = 'result-unreadable',
  ) {
    this.context.syntax(code, message, this.context.source(node));
  }
}

/** Who had a result, and when, where its line says so. */
function doneOf({ by, on }: Facts) {
  return by === null && on === null ? {} : { done: { by, on } };
}

function namesOf(names: readonly string[], source: Source): NameUse[] {
  return names.map((name) => ({ name, source }));
}

/** The words that say where: those behind the name of the test, and the place behind its figure. */
function wordsOf(names: readonly ast.NameRef[], { place }: Facts): ast.NameRef[] {
  return [...names.slice(1), ...(place === null ? [] : [place.place])];
}

function keyOf(fact: ast.ResultFact): keyof Facts | null {
  switch (fact.$type) {
    case 'ResultValue':
      return 'value';
    case 'ResultSeries':
      return 'series';
    case 'ResultPlace':
      return 'place';
    case 'ResultIn':
      return 'fitted';
    case 'ResultOn':
      return fact.tool !== undefined ? 'gauge' : fact.date !== undefined ? 'on' : null;
    case 'ResultWith':
      return 'tool';
    case 'ResultBy':
      return 'by';
    case 'ResultText':
      return 'text';
    case 'ResultFor':
      return 'part';
    case 'ResultDate':
      return 'on';
  }
}

/** A part that is turned: a joint, a screw or what locks it, or one that a step tightens. */
function isTightened({ family, tightened }: Signature, part: string): boolean {
  const { joints, adjusters } = family;
  return (
    joints.some((joint) => joint.part === part) ||
    adjusters.some((adjuster) => adjuster.part === part || adjuster.lockedBy === part) ||
    tightened.includes(part)
  );
}

/** Why words are none that a `record` takes, as a sentence; null: they are. */
function wrongWords(wording: Wording, text: string): Said | null {
  switch (wording.form) {
    case 'any':
      return text.trim() === '' ? say`Nothing is written between the quotes.` : null;
    case 'one of':
      return wording.words.includes(text)
        ? null
        : say`“${text}” is none of the words to choose from. Write ${either(wording.words.map((word) => `"${word}"`))}.`;
    case 'code': {
      const { count, signs } = wording;
      const sign = { letters: '[A-Za-z]', digits: '[0-9]', 'letters or digits': '[0-9A-Za-z]' }[signs];
      return new RegExp(`^${sign}{${count}}$`, 'u').test(text)
        ? null
        : say`“${text}” is no code of ${count} ${term(signs)}. Read it again and write it whole, without blanks.`;
    }
  }
}

/** What may be written as a reading. */
interface Readable {
  /** Null if it is not stated, and anything may. */
  readonly kind: Kind | null;
  readonly takes: (unit: UnitName) => boolean;
}

function only(...kinds: readonly Kind[]): Readable {
  return { kind: kinds[0]!, takes: (unit) => kinds.includes(kindOfUnit(unit)) };
}

/** What a test reads: every unit that the limits take which it is held to; without one, what its own words take. */
function readableOf({ specs, tests, numbers }: Signature, id: string): Readable {
  const { test: name, point } = readingAt(id);
  const all = tests.filter((test) => test.name === name);
  const at = all.flatMap(({ plan }) => plan?.points.find((one) => one.name === point) ?? []);
  const { limit: own = null, inTime = null, reads = null } = all[0] ?? {};
  const limit = at.find((one) => one.limit !== null)?.limit ?? own;
  if (inTime !== null) return only('time');
  if (limit?.form === 'limit') return only(kindOfLimit(limit.limit));
  const spec = specs.find((one) => one.name === (limit?.spec ?? name));
  const values = numbers.flatMap((number) => number.values.filter((value) => value.spec === spec?.name));
  const limits = [spec, ...values].flatMap((value) => [value?.rebuilt, value?.inService, value?.whenNew]);
  const kinds = limits.flatMap((limit) => (limit == null ? [] : kindOfLimit(limit)));
  if (kinds.length > 0) return only(...kinds);
  const kind = reads ?? spec?.kind ?? null;
  return { kind, takes: (unit) => kind === null || kindAdmits(kind, unit) };
}

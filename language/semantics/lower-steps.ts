import type { AstNode } from 'langium';
import { Relations, restsOn } from '../analysis/relations.ts';
import type { Family, Part } from '../model/family.ts';
import type {
  Action,
  FailEntry,
  Hazard,
  LimitUse,
  ObjectKind,
  Repair,
  Step,
  StepObject,
  ToolUse,
} from '../model/procedure.ts';
import type { Shop } from '../model/shop.ts';
import { type NameUse, type Source, sameSource } from '../model/source.ts';
import { readingOf } from '../model/steps.ts';
import type { Verb } from '../model/verbs.ts';
import { formatQuantity, kindOf, kindOfLimit, kindOfUnit } from '../quantities/index.ts';
import type { Quantity } from '../quantities/types.ts';
import { either, type Filling, listed, say } from '../say/say.ts';
import type * as ast from '../syntax/generated/ast.ts';
import { stepWords } from '../syntax/keywords.ts';
import { nearest } from '../syntax/nearest.ts';
import { textOf } from '../syntax/place.ts';
import { takesPhrase, verbIs, verbTable } from '../syntax/verbs/index.ts';
import { type PhraseName, repeats } from '../syntax/verbs/phrases.ts';
import { actionOf, none, type Said, sayNothing } from './action-of.ts';
import { lowerAllow } from './allows.ts';
import type { Context } from './context.ts';
import { withDanger } from './dangers.ts';
import { partsNamed } from './family.ts';
import { thingsNamed } from './family-names.ts';
import { firstNamed } from './first-named.ts';
import { lowerAmount, lowerCount, lowerLimit, lowerMeasure, lowerQuantity, lowerRange, lowerSpread } from './limits.ts';
import { keptLayout, type Layout, type Lookup, layoutOf, type Memo, sameLayout } from './memo.ts';
import { lowerPasses } from './passes.ts';
import { phraseOfItem, phrasesOf } from './phrase-of.ts';
import { checkPlan, lowerConditions, lowerEach, lowerFrom, lowerPoint, lowerWording, lowerWorkedOut } from './plans.ts';
import type { Scope, Sequences } from './scope.ts';
import { synonymMessage, synonyms } from './synonyms.ts';
import { unreadLine } from './unread.ts';

/** Names that the procedure declares for its steps. */
export interface StepNames {
  readonly specs: readonly NameUse[];
  readonly numbers: readonly NameUse[];
  readonly repairs: readonly NameUse[];
  /** Tests of the procedure and of the family. */
  readonly tests: readonly NameUse[];
  /** Tests and specs: what `read`, `set`, `choose`, `below` refer to. */
  readonly readings: readonly NameUse[];
  /** The same, and the masters of the shop. */
  readonly readable: readonly NameUse[];
}

/** Names that steps may use, declared outside them. */
export interface StepScope extends StepNames {
  readonly family: Family;
  readonly shop: Shop;
  readonly sequences: Sequences;
  readonly scope: Scope;
  /** The procedure that the steps are made for. */
  readonly procedure: ast.Procedure;
}

/** What its statements were made into the last time. */
export type StepMemo = Memo<keyof StepNames | 'sequence'>;

/** A step, and where its printed number comes from: one for each `group`, with the letters that a call adds. */
export interface LoweredStep {
  step: Step;
  group: number;
}

/** A hazard that names the step that it comes before. */
export interface AddressedHazard {
  readonly hazard: Hazard;
  readonly verb: string;
  readonly object: NameUse | null;
  readonly source: Source;
}

/** The steps of a block, and what comes of them. */
export interface LoweredLines {
  readonly steps: readonly LoweredStep[];
  /** Repairs that are written inside `on fail`. */
  readonly repairs: readonly Repair[];
  /** Files of the sequences that are called. */
  readonly files: readonly string[];
  readonly addressed: readonly AddressedHazard[];
}

/** What a statement is made into. */
interface LoweredStatement {
  /** Null: it cannot be read, nor what is behind it. */
  readonly steps: readonly LoweredStep[] | null;
  /** It takes a printed number, if it has no steps too. */
  readonly isNumbered: boolean;
  readonly repairs: readonly Repair[];
  readonly files: readonly string[];
}

type Statement = Exclude<ast.Step, ast.Unread | ast.OnlySteps | ast.Hazard>;
type PlainStatement = Exclude<Statement, ast.Call>;

/** Where a line is: inside which calls and which `only`. */
interface ExpansionContext {
  readonly only: readonly string[] | null;
  readonly call: { readonly name: string; readonly at: Source } | null;
  readonly bindings: ReadonlyMap<string, readonly ast.Subject[]>;
  /** Names of the sequences that are being written out. */
  readonly inside: readonly string[];
}

const top: ExpansionContext = { only: null, call: null, bindings: new Map(), inside: [] };

/** Makes steps out of the lines of a stage or repair. */
export class StepLowering {
  /** Of the block that is made now. */
  private inlineRepairs: Repair[] = [];
  private files: string[] = [];
  private addressed: AddressedHazard[] = [];
  private group = 0;
  private hazards: Hazard[] = [];
  /** Of the statement that is made now. */
  private repairs: Repair[] = [];
  private called: string[] = [];
  private isNumbered = false;
  /** Where sequences are, as far as they were called. */
  private readonly layouts = new Map<ast.Sequence, Layout>();
  /** Steps of the block before what is read now; what a hazard may name those by that are not among them anymore. */
  private passed: Action[] = [];
  private readonly passedAddresses = new Set<string>();

  private readonly context: Context;
  private readonly names: StepScope;
  private readonly memo: StepMemo;

  constructor(context: Context, names: StepScope, memo: StepMemo) {
    this.context = context;
    this.names = names;
    this.memo = memo;
  }

  /** The steps of a block, in order; sequences written out, `only` spread over its steps. */
  steps(lines: readonly ast.StepLine[]): LoweredLines {
    this.inlineRepairs = [];
    this.files = [];
    this.addressed = [];
    this.group = 0;
    this.hazards = [];
    this.passed = [];
    this.passedAddresses.clear();
    const steps = this.lines(lines, top);
    for (const { source } of this.hazards)
      this.context.problems.push({ kind: 'hazard-after-step', step: null, source });
    this.hazards = [];
    return { steps, repairs: this.inlineRepairs, files: this.files, addressed: this.addressed };
  }

  private lines(lines: readonly ast.StepLine[], place: ExpansionContext): LoweredStep[] {
    return lines.flatMap((line) => this.line(line, place));
  }

  private line(line: ast.StepLine, place: ExpansionContext): LoweredStep[] {
    const made: LoweredStep[] = [];
    for (const step of line.steps) {
      const steps = this.step(step, place);
      // After an unknown word the rest of its line is not guessed at.
      if (steps === null) break;
      made.push(...steps);
    }
    return made;
  }

  private step(node: ast.Step, place: ExpansionContext): LoweredStep[] | null {
    switch (node.$type) {
      case 'Unread':
        unreadLine(this.context, node, stepWords, this.names.sequences);
        return null;
      case 'OnlySteps':
        return this.lines(node.lines, { ...place, only: this.onlyNumbers(node, place) });
      case 'Hazard':
        this.hazard(node, place);
        return [];
      default:
        return place.call === null ? this.statement(node, place) : this.made(node, place);
    }
  }

  /** A statement of the block itself, with all that comes of it: what it was made into before, where that is the same. */
  private statement(node: Statement, place: ExpansionContext): LoweredStep[] | null {
    const inputs = [place.only === null ? null : place.only.join('\n'), ...this.hazards];
    let isNew = false;
    const make = (): LoweredStatement => {
      isNew = true;
      this.repairs = [];
      this.called = [];
      this.isNumbered = node.$type !== 'Call';
      const steps = this.made(node, place);
      return { steps, isNumbered: this.isNumbered, repairs: this.repairs, files: this.called };
    };
    const { steps, isNumbered, repairs, files } = this.memo.recall(this.context, node, inputs, make, this.isSame);
    if (isNumbered) this.group++;
    for (const repair of repairs) this.inlineRepairs.push(repair);
    for (const file of files) this.files.push(file);
    if (steps === null) return null;
    for (const one of steps) {
      one.group = this.group;
      if (!isNew) this.passed.push(one.step);
    }
    if (steps.length > 0) this.hazards = [];
    return [...steps];
  }

  /** Whether a name that a statement looked up leads where it did. */
  readonly isSame = ({ list, name, found }: Lookup<keyof StepNames | 'sequence'>): boolean => {
    if (list === 'sequence') {
      const sequence = this.names.sequences.get(name);
      return sequence !== undefined && sameLayout(this.layoutOf(sequence), found as Layout);
    }
    const now = firstNamed(this.names[list], name)?.source;
    return now !== undefined && sameSource(now, found as Source);
  };

  private layoutOf(sequence: ast.Sequence): Layout {
    let layout = this.layouts.get(sequence);
    if (layout === undefined) {
      layout = keptLayout(layoutOf(sequence, this.context.anchorAround(sequence)));
      this.layouts.set(sequence, layout);
    }
    return layout;
  }

  private made(node: Statement, place: ExpansionContext): LoweredStep[] | null {
    switch (node.$type) {
      case 'Call':
        return this.call(node, place);
      case 'ObjectStep':
        return [this.single(node, node.verb as Verb, node.clauses, node.objects, place, node.all)];
      case 'BareStep':
        return [this.single(node, node.verb as Verb, node.clauses, [], place)];
      case 'CleanOutside':
        return [this.single(node, 'clean-outside', node.clauses, [], place)];
      case 'CleanHoles':
        return [this.single(node, 'clean-holes', node.clauses, node.objects, place)];
      case 'TestStep':
        return [this.single(node, 'test', node.clauses, [], place)];
      case 'RecordStep':
        return [this.single(node, 'record', node.clauses, [], place)];
      case 'AcrossStep':
        return [this.single(node, 'across', node.clauses, [], place)];
    }
  }

  /** Whether a line is in the procedure itself, and not in the one that it is like or in a shared sequence. */
  private isOwn(node: AstNode): boolean {
    let at: AstNode | undefined = node;
    while (at !== undefined && at !== this.names.procedure) at = at.$container;
    return at !== undefined;
  }

  private onlyNumbers(node: ast.OnlySteps, place: ExpansionContext): string[] {
    const wanted = node.numbers.map(unquoted);
    const known = wanted.filter((name, index) => {
      const number = firstNamed(this.names.numbers, name);
      const source = this.context.source(node, 'numbers', index);
      if (number === undefined) this.memo.forget();
      else this.memo.note('numbers', name, number.source);
      if (number !== undefined) this.context.link(source, number.source, name, 'part number');
      // Of what is taken over by like, or shared, the numbers may be another procedure's.
      else if (this.isOwn(node) || !this.names.scope.isPartNumber(name))
        this.context.unknown(
          name,
          'part number',
          this.names.numbers.map((other) => other.name),
          source,
        );
      return number !== undefined;
    });
    return place.only === null ? known : known.filter((name) => place.only!.includes(name));
  }

  private call(node: ast.Call, place: ExpansionContext): LoweredStep[] | null {
    const name = node.name.name;
    const at = this.context.source(node.name);
    const sequence = this.names.sequences.get(name);
    if (sequence === undefined) {
      const { parts, ports } = this.names.family;
      const meant = synonyms.get(name);
      if (partsNamed(parts, name).length > 0 || ports.some((port) => port.name === name)) {
        this.context.syntax(
          'unknown-word',
          say`${name} is not a step: it is ${partsNamed(parts, name).length > 0 ? say`a part` : say`a port`} of the family. Put a comma before it if it belongs to the list, or a verb that says what to do with it.`,
          at,
        );
        return null;
      }
      const { specs, shop } = this.names;
      const among: readonly (readonly [readonly NameUse[], Filling])[] = [
        [specs, say`a spec: write “to ${name}” behind a torque, “within ${name}” behind what is read`],
        [shop.fluids, say`a fluid of the shop: write “in ${name}”`],
        [shop.assets, say`a tool of the shop: write “with ${name}”`],
        [shop.stations, say`a station of the shop: write “at ${name}”`],
      ];
      const [, said] = among.find(([names]) => names.some((one) => one.name === name)) ?? [];
      if (said !== undefined) {
        this.context.syntax('unknown-word', say`${name} is not a step: it is ${said}.`, at);
        return null;
      }
      if (meant !== undefined) this.context.syntax('unknown-word', synonymMessage(name), at, meant);
      else this.context.isUnknown(name, 'step or sequence', this.names.sequences.nearest(name, stepWords), at);
      return null;
    }
    this.memo.note('sequence', name, this.layoutOf(sequence));
    this.context.link(at, this.context.source(sequence, 'name'), name, 'sequence');
    if (place.inside.includes(name)) {
      this.context.syntax(
        'endless-steps',
        say`Sequence ${name} calls itself: it would never end. Delete the call.`,
        at,
      );
      return [];
    }
    this.called.push(this.context.anchorAround(sequence).id);
    if (node.arguments.length !== sequence.parameters.length) {
      const wanted = sequence.parameters.length === 0 ? say`nothing` : sequence.parameters.join('; ');
      this.context.syntax(
        'call-mismatch',
        say`Sequence ${name} is called with ${wanted}: give it ${sequence.parameters.length === 1 ? say`one list` : say`${sequence.parameters.length} lists, separated by ;`}.`,
        at,
      );
      return [];
    }
    const bindings = new Map(
      sequence.parameters.map((parameter, index) => [parameter, this.bound(node.arguments[index]!.objects, place)]),
    );
    const whole = place.call?.at ?? this.context.source(node);
    this.isNumbered = true;
    const inner = { only: place.only, call: { name, at: whole }, bindings, inside: [...place.inside, name] };
    const allow = node.clauses.flatMap((clause) =>
      clause.$type === 'AllowClause' ? [lowerAllow(this.context, clause.allow)] : [],
    );
    const steps = this.context.expand({ message: say`Sequence ${name} is called here.`, source: whole }, () =>
      this.lines(sequence.lines, inner),
    );
    const notes = node.clauses.flatMap((clause) => (clause.$type === 'NoteClause' ? [clause.text] : []));
    for (const [index, made] of steps.entries()) {
      const { step } = made;
      const said = [...(index === 0 ? notes : []), ...(step.note === null ? [] : [step.note])];
      const leads = [index === 0 ? sequence.title?.replace(/[.:]$/u, '') : null, step.lead];
      const note = said.join(' ') || null;
      const lead = leads.filter((one) => one != null).join(', ') || null;
      if (allow.length > 0 || note !== step.note || lead !== step.lead)
        made.step = { ...step, allow: [...step.allow, ...allow], note, lead };
    }
    return steps;
  }

  /** What a parameter stands for, through the calls around it. */
  private bound(subjects: readonly ast.Subject[], place: ExpansionContext): ast.Subject[] {
    return subjects.flatMap((subject) =>
      subject.path.tail === undefined ? (place.bindings.get(subject.path.head) ?? [subject]) : [subject],
    );
  }

  private hazard(node: ast.Hazard, { call }: ExpansionContext) {
    const lowered = () => lowerHazard(this.context, node);
    const hazard = call === null ? this.memo.recall(this.context, node, [], lowered) : lowered();
    // In a sequence it may be for a step behind its call, or come after one before it.
    if (call !== null) this.memo.forgetPart();
    if (node.step === undefined) this.hazards.push(hazard);
    else {
      const object = addressedObject(this.context, node.step);
      const verb = verbOf(node.step.verb);
      plainAddress(this.context, node.step);
      for (const step of this.passed) for (const address of addressesOf(step)) this.passedAddresses.add(address);
      this.passed = [];
      if (this.passedAddresses.has(addressOf(verb, object?.name ?? null))) {
        this.context.problems.push({
          kind: 'hazard-after-step',
          step: addressOf(verb, object?.name ?? null),
          source: hazard.source,
        });
      }
      this.addressed.push({ hazard, verb, object, source: hazard.source });
    }
  }

  private single(
    node: PlainStatement,
    verb: Verb,
    clauses: readonly (ast.Clause | ast.TestClause)[],
    subjects: readonly ast.Subject[],
    place: ExpansionContext,
    all = false,
  ): LoweredStep {
    const maker = new SingleStepLowering(this.context, this.names, this.memo, place, verb, node);
    const step = maker.make(clauses, subjects, all, this.hazards);
    for (const repair of maker.inlineRepairs) this.repairs.push(repair);
    this.passed.push(step);
    this.hazards = [];
    return { step, group: 0 };
  }
}

/** Makes one step of its objects and clauses. */
class SingleStepLowering {
  readonly inlineRepairs: Repair[] = [];
  private readonly seen: string[] = [];
  /** The clause that says the limit. */
  private limitedBy: string | null = null;

  private readonly context: Context;
  private readonly names: StepScope;
  private readonly memo: StepMemo;
  private readonly place: ExpansionContext;
  private readonly verb: Verb;
  private readonly node: AstNode;

  constructor(context: Context, names: StepScope, memo: StepMemo, place: ExpansionContext, verb: Verb, node: AstNode) {
    this.context = context;
    this.names = names;
    this.memo = memo;
    this.place = place;
    this.verb = verb;
    this.node = node;
  }

  /** In a sequence the place of a step is that of its call: what rules find of it is reported there. */
  private source(node: AstNode, property?: string): Source {
    return this.place.call?.at ?? this.context.source(node, property);
  }

  /** Looks a name up: a miss is reported at the call, a hit leads from where the name is written. */
  make(
    clauses: readonly (ast.Clause | ast.TestClause)[],
    subjects: readonly ast.Subject[],
    all: boolean,
    hazards: readonly Hazard[],
  ): Step {
    const { verb, place } = this;
    const reads = verbTable[verb].objects.includes('reading');
    const said = sayNothing(this.source(this.node));
    said.all = all;
    said.objects = all
      ? this.allOf(clauses)
      : reads
        ? none
        : this.objects(subjects, verbTable[verb].objects as ObjectKind[]);
    if (reads) said.reading = this.reading(subjects);
    for (const clause of clauses) this.clause(clause, said);
    checkPlan(this.context, this.node, said.plan);
    const proves = clauses.find((clause) => clause.$type === 'ProvesClause');
    if (proves !== undefined && said.through !== null && (said.hold !== null || said.reads === 'pressure'))
      this.closedOver(said.through, proves);
    const lapIf = clauses.find((clause) => clause.$type === 'VerdictClause' && clause.verdict === 'lap');
    if (lapIf?.$type === 'VerdictClause')
      said.onFail = [this.inlineRepair('lap', said.objects, { wash: lapIf.wash ?? null }, null), ...said.onFail];
    if (verb === 'test') said.reading = this.standsFor((this.node as ast.TestStep).name.name, this.node);
    if (verb === 'record') {
      const { name, title, form } = this.node as ast.RecordStep;
      said.reading = this.standsFor(name, this.node);
      said.title = title ?? null;
      said.wording = lowerWording(this.context, form);
    }
    if (verb === 'across') {
      const { name } = this.node as ast.AcrossStep;
      said.reading = this.found(name, 'test or spec', 'readings') ?? name.name;
    }
    const call = place.call === null ? null : { name: place.call.name, source: this.context.source(this.node) };
    return actionOf(verb, said, { hazards, only: place.only, call });
  }

  private reading(subjects: readonly ast.Subject[]): string {
    const [subject, second] = subjects;
    if (subject === undefined) return '';
    if (second !== undefined)
      this.context.syntax(
        'clause-without-meaning',
        say`${this.verb} takes one reading at a time: give ${pathText(second.path)} a step of its own.`,
        this.context.source(second),
      );
    const name = this.standsFor(pathText(subject.path), subject);
    const list = this.verb === 'read' ? 'readable' : 'readings';
    return this.find(name, 'test or spec', list, this.context.source(subject)) ?? name;
  }

  /** `all`: every part but those excepted; of caps every port. Where it would be a guess it is refused. */
  private allOf(clauses: readonly (ast.Clause | ast.TestClause)[]): StepObject[] {
    const source = this.source(this.node);
    const { parts, ports } = this.names.family;
    const made =
      (kind: ObjectKind) =>
      (named: { readonly name: string }): StepObject => ({
        kind,
        name: named.name,
        located: null,
        marksAligned: false,
        source,
      });
    const { all } = verbTable[this.verb];
    if (all === 'ports') return ports.map(made('port'));
    if (all === undefined) {
      this.context.syntax(
        'clause-without-meaning',
        say`all is too vague after ${this.verb}: name the parts, or the bench hand has to guess.`,
        this.context.source(this.node),
      );
      return [];
    }
    const excepted = clauses.flatMap((clause) =>
      clause.$type === 'ExceptClause' ? this.objects(clause.objects, ['part']) : [],
    );
    return parts.filter((part) => !excepted.some((object) => object.name === part.name)).map(made('part'));
  }

  /** Things that a step acts on: parameters of a sequence put in, copies of a part spread out. */
  private objects(
    subjects: readonly ast.Subject[],
    kinds: readonly ObjectKind[],
    written?: Source,
  ): readonly StepObject[] {
    if (subjects.length === 0) return none;
    const objects: StepObject[] = [];
    for (const subject of subjects) {
      const bound = subject.path.tail === undefined ? this.place.bindings.get(subject.path.head) : undefined;
      if (bound !== undefined) for (const inner of bound) objects.push(...this.object(located(inner, subject), kinds));
      else if (subjects.length === 1) return this.object(subject, kinds, written);
      else objects.push(...this.object(subject, kinds, written));
    }
    // A list that has grown keeps room for more.
    return objects.slice();
  }

  private object(
    subject: ast.Subject,
    kinds: readonly ObjectKind[],
    written: Source = this.context.source(subject.path),
  ): readonly StepObject[] {
    const { family } = this.names;
    const { path } = subject;
    const source = this.source(subject);
    if (subject.position !== undefined) {
      const position = lowerCount(this.context, subject, 'position', subject.position, { least: 1, like: 'plunger 3' });
      if (position === null) return [];
    }
    const text = pathText(path);
    for (const kind of kinds) {
      const named = thingsNamed(family, kind, path);
      const things =
        kind === 'part' && subject.position !== undefined
          ? named.filter(({ position }) => position === Number(subject.position))
          : named;
      if (things.length === 0) continue;
      if (kind === 'port') this.linkPartOf(path);
      if (things[0]?.assembly !== undefined && !verbIs(this.verb, 'as one')) return this.notAsOne(text, written);
      return things.map(({ id, source: target, locatedBy, assembly }): StepObject => {
        this.context.link(written, target, text, kind);
        const how = subject.located ? (subject.how ?? locatedBy ?? '') : null;
        const plain = { kind, name: id, located: how, marksAligned: false, source };
        return assembly === undefined ? plain : { ...plain, assembly };
      });
    }
    const candidates = [...this.candidates(kinds), ...this.place.bindings.keys()];
    if (this.hasNoPosition(subject, kinds)) return [];
    this.context.unknown(text, kinds.join(' or '), candidates, this.context.source(path));
    // A slip of the keyboard is one finding: the step is read as the one name that can be meant.
    const near = nearest(text, candidates);
    if (near.length !== 1 || text === near[0]) return [];
    const [head, tail] = near[0]!.split('.') as [ast.Name, ast.Name?];
    const { tail: misspelled, ...place } = path;
    const meant = { ...place, head, ...(tail === undefined ? {} : { tail }) };
    return this.objects([{ ...subject, path: meant }], kinds, written);
  }

  /** What cannot be done to an assembly without taking it apart. */
  private notAsOne(name: string, written: Source): StepObject[] {
    const inIt = this.names.family.assemblies.find((one) => one.name === name)!;
    this.context.syntax(
      'wrong-use-of-name',
      say`${name} is an assembly, and ${this.verb} is done to single parts: name those that are meant, of ${listed(inIt.parts)}.`,
      written,
    );
    return [];
  }

  /** A port is named by its part too: `pump.inlet`. */
  private linkPartOf(path: ast.Path) {
    const part = path.tail === undefined ? undefined : firstNamed(this.names.family.parts, path.head);
    if (part !== undefined) this.context.link(this.context.source(path, 'head'), part.source, path.head, 'part');
  }

  /** `nozzle 7` of six: the part is known, and not that one. Reported. */
  private hasNoPosition({ path, position }: ast.Subject, kinds: readonly ObjectKind[]): boolean {
    if (position === undefined || path.tail !== undefined || !kinds.includes('part')) return false;
    const copies = partsNamed(this.names.family.parts, path.head);
    const places = copies.flatMap((part) => part.position ?? []);
    if (copies.length === 0) return false;
    const sided = copies.filter(({ side }) => side !== null);
    this.context.syntax(
      'wrong-use-of-name',
      sided.length > 0
        ? say`${path.head} is distinguished by side, not by number. Write ${either(sided.map(({ name }) => name))}, or ${path.head} for all of them.`
        : places.length === 0
          ? say`There is only one ${path.head}: the family does not declare it “for each cylinder”. Write ${path.head} without ${position}.`
          : say`There is no ${path.head} ${position}: the family has ${path.head} ${Math.min(...places)} to ${Math.max(...places)}.`,
      this.context.source(path),
    );
    return true;
  }

  private candidates(kinds: readonly ObjectKind[]): string[] {
    const { family } = this.names;
    const named = {
      part: () => [...family.parts.map((part) => part.base), ...family.assemblies.map(({ name }) => name)],
      face: () => family.faces.map((face) => face.id),
      port: () => family.ports.map((port) => port.name),
      adjuster: () => family.adjusters.map((adjuster) => adjuster.name),
    } satisfies Record<ObjectKind, () => string[]>;
    return kinds.flatMap((kind) => named[kind]());
  }

  private clause(clause: ast.Clause | ast.TestClause, said: Said) {
    const { context } = this;
    if (clause.$type === 'WithClause') return this.with(clause, said);
    const phrase = phrasesOf(clause).find((one) => this.takes(one));
    if (phrase === undefined) {
      if (clause.$type === 'InClause' && clause.name !== undefined && this.takes('in text'))
        this.unquoted(clause.name, said);
      else this.meansNothing(clause);
      return;
    }
    if (!repeats(phrase) && this.seen.includes(clause.$type))
      context.syntax(
        'written-twice',
        say`${clauseWords(clause)} appears twice in this step. Delete one.`,
        context.source(clause),
      );
    this.seen.push(clause.$type);
    switch (clause.$type) {
      case 'TextClause':
        addText(said, clause.text);
        return;
      case 'AmountClause': {
        const limit = lowerLimit(context, clause.limit);
        if (limit === null) return;
        if (this.verb === 'prime' || this.verb === 'wait') said.count = limit;
        else this.limit({ form: 'limit', limit, source: this.source(clause) }, clause, said);
        return;
      }
      case 'InClause':
        if (clause.pattern) said.pattern = true;
        else if (clause.limit !== undefined) said.inTime = lowerLimit(context, clause.limit);
        else if (clause.text !== undefined) {
          if (this.verb === 'clamp') said.holder = clause.text;
          else addText(said, clause.text, 'in');
        } else if (clause.name !== undefined) said.fluid = this.found(clause.name, 'fluid', this.names.shop.fluids);
        return;
      case 'AtClause':
        if (clause.places !== undefined) said.plan.places = lowerEach(context, this.names.family, clause.places);
        else if (clause.conditions.length > 0) this.conditions(clause, said);
        else if (clause.name !== undefined) {
          said.station = this.found(clause.name, 'station', this.names.shop.stations);
          if (clause.text !== undefined) addText(said, clause.text);
        }
        return;
      case 'ToClause':
        if (phrase === 'to parts') said.objects = this.changed(clause);
        else if (this.verb === 'test') said.to = clause.limit === undefined ? null : lowerLimit(context, clause.limit);
        else if (phrase === 'to station')
          said.station =
            clause.name === undefined ? null : this.found(clause.name, 'station', this.names.shop.stations);
        else this.limit(this.limitUse(clause.limit, clause.name, clause), clause, said);
        return;
      case 'BringClause':
        said.choose = {
          test: this.found(clause.test, 'test', 'readings') ?? clause.test.name,
          target: this.limitUse(clause.limit, clause.spec, clause),
        };
        return;
      case 'ByClause':
        return this.by(clause, said);
      case 'FromClause':
        if (clause.limit === undefined) lowerFrom(context, this.names.family, clause, said.plan);
        else said.from = lowerLimit(context, clause.limit);
        return;
      case 'ForClause':
        if (clause.trial) said.forTrial = true;
        else if (clause.limit !== undefined) {
          if (this.verb === 'test') said.forTime = lowerLimit(context, clause.limit);
          else said.count = lowerLimit(context, clause.limit);
        } else addText(said, clause.text ?? '', 'for');
        return;
      case 'WithinClause':
        this.limit(this.limitUse(clause.limit, clause.name, clause), clause, said);
        if (clause.each) said.plan.perPlace = true;
        return;
      case 'AcceptClause':
        said.accept = clause.text ?? null;
        if (clause.limit !== undefined) this.limit(this.limitUse(clause.limit, undefined, clause), clause, said);
        return;
      case 'RejectClause':
        if (this.verb === 'check') said.verdicts = [...said.verdicts, { verdict: 'reject', text: clause.text }];
        else said.reject = clause.text;
        return;
      case 'VerdictClause':
        said.verdicts = [...said.verdicts, { verdict: clause.verdict, text: clause.text }];
        if (clause.verdict !== 'lap') this.noWash(clause.wash, clause.verdict);
        return;
      case 'FailClause':
        said.failWritten = true;
        said.onFail = [...said.onFail, ...clause.entries.flatMap((entry) => this.failEntry(entry) ?? [])];
        return;
      case 'NoteClause':
        said.note = said.note === null ? clause.text : `${said.note} ${clause.text}`;
        return;
      case 'AllowClause':
        said.allow = [...said.allow, lowerAllow(context, clause.allow)];
        return;
      case 'TakesClause':
        said.takes = lowerMeasure(context, clause, 'time', clause.time, {
          what: say`The time of a step`,
          why: say`the time for the job is added up from it`,
          like: 'takes 10 min',
          kind: 'time',
        });
        return;
      case 'SourceClause':
        said.sourceText = clause.text;
        return;
      case 'HeldClause':
        said.holder = clause.text;
        return;
      case 'WordsClause':
        return saidWords(phrase, said);
      case 'PassesClause':
        said.passes = lowerPasses(context, clause);
        return;
      case 'SlidesClause':
        addText(said, clause.text);
        said.moves = clause.moves;
        return;
      case 'SpreadClause':
        said.spread = lowerSpread(context, clause.limit);
        if (this.verb !== 'across') said.plan.spread = said.spread;
        return;
      case 'PointClause':
        said.plan.points = context.unique([...said.plan.points, this.point(clause, said)], 'point');
        return;
      case 'WorkedClause':
        said.plan.workedOut = lowerWorkedOut(context, clause);
        return;
      case 'ProvesClause':
        said.through = clause.names.flatMap((path) => this.provenThrough(path));
        // Where none of them is known, it proves what a gate proves that says nothing.
        if (said.through.length === 0) said.through = null;
        return;
      case 'NeverClause':
        said.neverAbove = this.ceiling(clause);
        return;
      case 'ExceptClause':
        if (!said.all)
          context.syntax(
            'clause-without-meaning',
            say`except goes with all: write wash all … except ….`,
            context.source(clause),
          );
        return;
      case 'OfClause':
        said.objects = this.objects(clause.objects, ['part']);
        return;
      case 'DangerClause':
        said.dangers = withDanger(context, said.dangers, clause.danger, this.source(clause));
        return;
      case 'ReadClause':
        said.reads = kindOf(clause.kind);
        return;
      case 'HoldClause': {
        const amount =
          clause.relation === undefined
            ? lowerLimit(context, clause.amount)
            : lowerAmount(context, clause.amount, say`A pressure difference`);
        if (amount !== null)
          said.hold = {
            amount,
            relation: clause.relation ?? 'at',
            of: clause.of === undefined ? null : (this.found(clause.of, 'test or spec', 'readings') ?? clause.of.name),
          };
        return;
      }
    }
  }

  /** What the author's own work changes: `do "…" to shaft, wheel`. */
  private changed(clause: ast.ToClause): readonly StepObject[] {
    const kinds = ['part', 'face', 'adjuster'] as const;
    const { name } = clause;
    if (name === undefined) return this.objects(clause.objects, kinds);
    const path = { ...name, $type: 'Path', head: name.name };
    const subject = { ...name, $type: 'Subject', located: false, path } as unknown as ast.Subject;
    return this.objects([subject], kinds, this.context.source(name));
  }

  /** The figures that a reading is taken at. The first that has no name is the speed, or the pressure, of the step. */
  private conditions(clause: ast.AtClause, said: Said) {
    const { context } = this;
    const [first] = clause.conditions;
    // `at tester at least 20 bar`: a station, and the limit of the step.
    const station = first?.name === undefined ? undefined : firstNamed(this.names.shop.stations, first.name.name);
    if (first?.name !== undefined && station !== undefined && this.takes('at station')) {
      context.link(context.source(first.name), station.source, station.name, 'station');
      said.station = station.name;
      if (this.takes('amount')) {
        const limit = lowerLimit(context, first.limit);
        if (this.verb === 'prime' || this.verb === 'wait') said.count = limit;
        else if (limit !== null) said.limit = { form: 'limit', limit, source: this.source(clause) };
      } else this.meansNothing(clause);
      return;
    }
    const conditions = lowerConditions(context, clause.conditions, (node) => this.source(node));
    if (!verbIs(this.verb, 'reads')) {
      said.bath = conditions[0]?.limit ?? null;
      const isBath = conditions.length === clause.conditions.length && first?.name === undefined;
      if (conditions.length > 1 || (said.bath !== null && !(isBath && kindOfLimit(said.bath) === 'temperature'))) {
        said.bath = null;
        this.meansNothing(clause);
      }
      return;
    }
    const plain = said.at === null ? conditions.find(({ name }) => name === null) : undefined;
    if (plain !== undefined) said.at = plain.limit;
    said.figures = [...said.figures, ...conditions.filter((one) => one !== plain)];
  }

  private point(clause: ast.PointClause, { plan }: Said) {
    return lowerPoint(
      this.context,
      clause,
      plan.points,
      (limit, name, at) => this.limitUse(limit, name, at),
      (node) => this.source(node),
    );
  }

  private with(clause: ast.WithClause, said: Said) {
    const { context } = this;
    for (const item of clause.items) {
      const phrase = phraseOfItem(item);
      if (phrase !== null && !this.takes(phrase)) {
        this.meansNothing(item);
        continue;
      }
      switch (item.$type) {
        case 'WithGauge':
          said.gauge = item.state;
          break;
        case 'WithAir':
          said.air = lowerAmount(context, item.limit, say`Air`);
          break;
        case 'WithMarks':
          said.objects = said.objects.map((object) => ({ ...object, marksAligned: true }));
          break;
        case 'WithKind':
          said.tools = [
            ...said.tools,
            { form: 'kind', kind: item.kind, range: lowerRange(context, item.range), source: this.source(item) },
          ];
          break;
        case 'WithWords':
          if (this.verb === 'test') said.conditions = [...said.conditions, item.text];
          else said.tools = [...said.tools, { form: 'words', text: item.text, source: this.source(item) }];
          break;
        case 'WithObject':
          this.withObject(item, said);
          break;
      }
    }
  }

  private withObject(item: ast.WithObject, said: Said) {
    const subject = item.object;
    const source = this.source(subject);
    const text = pathText(subject.path);
    const [bound] = this.place.bindings.get(text) ?? [];
    const use = this.context.source(bound?.path ?? subject);
    const name = this.standsFor(text, subject);
    if (this.takes('with marking') && (name === 'number' || name === 'serial')) {
      said.marking = [...said.marking, name];
      return;
    }
    if (this.takes('with part')) {
      const objects = this.objects([subject], ['part']);
      said.withObjects = [...said.withObjects, ...objects];
      return;
    }
    if (name === 'air' || name === 'vacuum') {
      said.gas = name;
      if (!verbIs(this.verb, 'reads') && this.verb !== 'blow-dry')
        said.tools = [...said.tools, { form: 'words', text: name, source }];
      return;
    }
    const fluid = firstNamed(this.names.shop.fluids, name);
    if (fluid !== undefined && this.takes('with fluid')) {
      this.context.link(use, fluid.source, name, 'fluid');
      said.fluid = name;
      return;
    }
    const asset = firstNamed(this.names.shop.assets, name);
    if (asset === undefined) this.context.unknown(name, 'tool', this.withNames(), use);
    else this.context.link(use, asset.source, name, 'tool');
    if (asset !== undefined)
      said.tools = [...said.tools, { form: 'asset', name, source, adapter: this.adapter(item) } satisfies ToolUse];
  }

  /** What may follow `with` where it is not a part. */
  private withNames(): string[] {
    const { assets, fluids } = this.names.shop;
    const own = this.takes('with marking') ? ['number', 'serial'] : ['air', 'vacuum'];
    return [...own, ...[...assets, ...fluids].map(({ name }) => name)];
  }

  private adapter(item: ast.WithObject) {
    if (item.length === undefined) return null;
    const length = lowerMeasure(this.context, item, 'length', item.length, {
      what: say`The length of an adapter`,
      why: say`what to set on the wrench is worked out from it`,
      like: 'and adapter 50 mm at 0°',
      kind: 'length',
    });
    if (length === null) return null;
    return { length, angle: item.angle === undefined ? null : this.adapterAngle(item, item.angle) };
  }

  /** From straight on (0°) to turned right back (180°). */
  private adapterAngle(item: ast.WithObject, text: string): Quantity | null {
    const angle = lowerQuantity(this.context, item, 'angle', text);
    if (angle === null || (kindOfUnit(angle.unit) === 'angle' && Number(angle.number) <= 180)) return angle;
    this.context.syntax(
      kindOfUnit(angle.unit) === 'angle' ? 'impossible-figure' : 'unit-of-another-kind',
      say`An adapter is at 0° to 180° to its wrench, but this says ${formatQuantity(angle)}: what to set cannot be worked out. Write, for example, at 90°.`,
      this.source(item, 'angle'),
    );
    return null;
  }

  /** A step is held to one limit, however it is written. */
  private limit(use: LimitUse | null, clause: ast.Clause, said: Said) {
    // Twice the same clause is reported as that.
    if (this.limitedBy !== null && this.limitedBy !== clause.$type) {
      this.context.syntax(
        'written-twice',
        say`${clauseWords(clause)} is a second limit of this step, which is held to one: it would be nowhere on the sheet. Delete one of the two, or give each a step of its own.`,
        this.context.source(clause),
      );
      return;
    }
    this.limitedBy = clause.$type;
    said.limit = use;
  }

  private ceiling(clause: ast.NeverClause): Quantity | null {
    return lowerMeasure(this.context, clause, 'limit', clause.limit, {
      what: say`A ceiling`,
      why: say`nothing could be done below it`,
      like: 'never above 140 bar',
      kind: null,
    });
  }

  private by(clause: ast.ByClause, step: Said) {
    if (clause.text !== undefined && this.verb === 'set') {
      // The words say by what it is set, not what.
      step.note = step.note === null ? clause.text : `${step.note} ${clause.text}`;
      return;
    }
    if (clause.text !== undefined) {
      addText(step, clause.text, 'by');
      return;
    }
    if (clause.stretch) {
      const limit = lowerAmount(this.context, clause.limit, say`A stretch`);
      if (limit !== null) step.stretch = limit;
      return;
    }
    if (clause.name === undefined) return;
    if (this.takes('by spec')) {
      step.rate = this.found(clause.name, 'spec', 'specs');
      return;
    }
    const { family } = this.names;
    const source = this.context.source(clause.name);
    const head = clause.name.name;
    const screws = thingsNamed(family, 'adjuster', { head });
    if (screws.length === 0) this.context.find(head, 'adjuster', family.adjusters, source);
    else this.context.link(source, screws[0]!.source, head, 'adjuster');
    const object = { located: null, marksAligned: false, source: this.source(clause.name) };
    step.objects = screws.map(({ id }) => ({ kind: 'adjuster', name: id, ...object }));
  }

  private takes(phrase: PhraseName): boolean {
    return takesPhrase(this.verb, phrase);
  }

  /** Where a fluid means nothing, and words in quotes do. */
  private unquoted(name: ast.NameRef, step: Said) {
    this.context.syntax(
      'quote-missing',
      say`Write what holds the unit in quotes: in "${name.name}".`,
      this.context.source(name),
      `"${name.name}"`,
    );
    step.holder = name.name;
  }

  /** A clause that would be read and then be nowhere: not in a check, and not on the sheet. */
  private meansNothing(node: ast.Clause | ast.TestClause | ast.WithItem) {
    const { context, verb } = this;
    context.syntax(
      'clause-without-meaning',
      say`${clauseWords(node)} has no meaning after ${verb}. Delete it.`,
      context.source(node),
    );
  }

  private limitUse(limit: ast.Limit | undefined, name: ast.NameRef | undefined, at: AstNode): LimitUse | null {
    if (limit !== undefined) {
      const read = lowerLimit(this.context, limit);
      return read === null ? null : { form: 'limit', limit: read, source: this.source(at) };
    }
    if (name === undefined) return null;
    const spec = this.found(name, 'spec', 'specs');
    return spec === null ? null : { form: 'spec', spec, source: this.source(name) };
  }

  /** Looks up the name of a clause, or what it stands for in a sequence. */
  private found(ref: ast.NameRef, what: string, among: keyof StepNames | readonly NameUse[]): string | null {
    const [bound] = this.place.bindings.get(ref.name) ?? [];
    const written = this.context.source(bound?.path ?? ref);
    return this.find(this.standsFor(ref.name, ref), what, among, written);
  }

  /** Looks a name up among those of the procedure, or in a list of family or shop. */
  private find(name: string, what: string, among: keyof StepNames | readonly NameUse[], use: Source): string | null {
    const isOwn = typeof among === 'string';
    const found = this.context.find(name, what, isOwn ? this.names[among] : among, use);
    if (found !== null && isOwn) this.memo.note(among, name, found.source);
    return found?.name ?? null;
  }

  /** The one name that a parameter of a sequence is called with; any other name itself. */
  private standsFor(name: string, node: AstNode): string {
    const [bound, second] = this.place.bindings.get(name) ?? [];
    if (second !== undefined)
      this.context.syntax(
        'call-mismatch',
        say`${name} stands for one name here, and the call gives it several. Give ${pathText(second.path)} a call of its own.`,
        this.context.source(node),
      );
    return bound === undefined ? name : pathText(bound.path);
  }

  /** What a gate proves through: a joint, an adjuster or a face that makes it stale when it is touched, or a part alone. */
  private provenThrough(path: ast.Path): string[] {
    const { faces, parts } = this.names.family;
    const places = [
      ...parts.map(({ name, base, source }) => ({ id: name, base, source })),
      ...faces.map(({ id, name, part, source }) => ({ id, base: `${baseOf(parts, part)}.${name}`, source })),
    ];
    const name = path.tail === undefined ? this.standsFor(path.head, path) : pathText(path);
    const found = places.filter(({ id, base }) => id === name || base === name);
    const use = this.context.source(path);
    if (found[0] === undefined) {
      const bases = places.map(({ base }) => base);
      this.context.unknown(name, 'joint, adjuster, part or face', bases, use);
      return [];
    }
    this.context.link(use, found[0].source, name, path.tail === undefined ? 'part' : 'face');
    return [...new Set(found.map(({ id }) => id))];
  }

  /** Pressure is proven through the joints that close over a part: one of them loose would not be seen. */
  private closedOver(through: readonly string[], clause: ast.ProvesClause) {
    const { family } = this.names;
    const relations = Relations.of(family);
    const isSeen = (name: string) =>
      !family.parts.some((part) => part.name === name) ||
      [...family.joints, ...family.adjusters].some(({ part }) => part === name);
    if (through.some(isSeen)) return;
    for (const name of through) {
      // It is shut in by the joint, is what the joint is on, or lies between the two.
      const joint =
        relations.closedBy(name)[0] ??
        family.joints.find(
          ({ part, to }) => to === name || family.parts.some((one) => one.name === part && restsOn(one).includes(name)),
        );
      if (joint === undefined) continue;
      const closing = baseOf(family.parts, joint.part);
      this.context.syntax(
        'wrong-use-of-name',
        say`${baseOf(family.parts, name)} is not a joint, and ${closing} closes over it: left loose, it would not be seen before this test. Write proves through ${closing}.`,
        this.context.source(clause),
      );
      return;
    }
  }

  private failEntry(entry: ast.FailEntry): FailEntry | null {
    const tries =
      entry.times !== undefined
        ? lowerCount(this.context, entry, 'times', entry.times, { least: 1, like: '(3 times)' })
        : entry.once
          ? 1
          : entry.twice
            ? 2
            : entry.unlimited
              ? Number.POSITIVE_INFINITY
              : null;
    if (entry.verb !== undefined) {
      const inline = this.inlineRepair(
        entry.verb as Verb,
        this.objects(entry.objects, entry.verb === 'lap' ? ['face', 'part'] : ['part']),
        { in: entry.fluid ?? null, wash: entry.wash ?? null },
        entry,
      );
      return { ...inline, tries: tries ?? inline.tries, furthestOut: entry.furthest, allAgain: entry.again };
    }
    if (entry.repair === undefined) return null;
    const repair = this.find(entry.repair.name, 'repair', 'repairs', this.context.source(entry.repair));
    return repair === null
      ? null
      : { repair, as: 'repair', tries, furthestOut: entry.furthest, allAgain: entry.again, source: this.source(entry) };
  }

  /** The paste of a lapped part is washed off, and the part wiped dry, so that it can be looked at. */
  private washed(
    fluid: ast.NameRef,
    lapped: readonly StepObject[],
    source: Source,
    around: Parameters<typeof actionOf>[2],
  ): Step[] {
    const { faces } = this.names.family;
    const names = new Set(lapped.map(({ kind, name }) => (kind === 'face' ? firstWith(faces, name)!.part : name)));
    const objects = [...names].map(
      (name): StepObject => ({ kind: 'part', name, located: null, marksAligned: false, source }),
    );
    const washing = { ...sayNothing(source), objects, fluid: this.found(fluid, 'fluid', this.names.shop.fluids) };
    return [actionOf('wash', washing, around), actionOf('wipe', { ...sayNothing(source), objects }, around)];
  }

  /** Only what was lapped has paste on it. */
  private noWash(wash: ast.NameRef | undefined, verb: string) {
    if (wash === undefined) return;
    this.context.syntax(
      'clause-without-meaning',
      say`“then wash in ${wash.name}” belongs to lapping, which leaves paste: it has no meaning after ${verb}. Delete it, or write a repair that washes.`,
      this.context.source(wash),
    );
  }

  /** `on fail renew needle`, `lap if "…"`: a repair named by its words, of one step; of three, where paste is washed off. */
  private inlineRepair(
    verb: Verb,
    objects: readonly StepObject[],
    { in: fluid = null, wash }: { readonly in?: ast.NameRef | null; readonly wash: ast.NameRef | null },
    entry: ast.FailEntry | null,
  ): FailEntry {
    const source = entry === null ? this.source(this.node) : this.source(entry);
    // With a wash behind it, it is another repair.
    const name = `${verb} ${objects.map((object) => object.name).join(', ')}${wash === null ? '' : ', wash'}`;
    const said = sayNothing(source);
    said.objects = objects;
    if (fluid !== null && takesPhrase(verb, 'in fluid'))
      said.fluid = this.found(fluid, 'fluid', this.names.shop.fluids);
    else if (fluid !== null)
      this.context.syntax(
        'clause-without-meaning',
        say`“in ${fluid.name}” has no meaning after ${verb}. Delete it.`,
        this.context.source(fluid),
      );
    const around = { hazards: [], only: this.place.only, call: null };
    const steps = [actionOf(verb, said, around)];
    if (wash !== null && verb === 'lap') steps.push(...this.washed(wash, objects, source, around));
    else this.noWash(wash ?? undefined, verb);
    this.inlineRepairs.push({
      name,
      title: name,
      source,
      station: null,
      steps,
      tries: null,
      inline: true,
      allow: [],
      eachOf: null,
    });
    const once = { furthestOut: false, allAgain: false };
    return entry === null
      ? { repair: name, as: 'verdict', tries: Number.POSITIVE_INFINITY, ...once, source }
      : { repair: name, as: 'at once', tries: null, ...once, source };
  }
}

/** A hazard is printed at every step of its verb and first object: what would choose among them is rejected. */
export function plainAddress(context: Context, address: ast.Address) {
  const { ordinal, place } = address;
  if (ordinal === undefined && place === undefined) return;
  context.syntax(
    'clause-without-meaning',
    say`A hazard names its step by verb and first object, and is printed at each of those: delete the rest. Put a hazard for a single step before that step, without “for”.`,
    place === undefined ? context.source(address, 'ordinal') : context.source(place),
  );
}

/** A hazard in the author's words; what it is about (`hazard spray`) comes before them. */
export function lowerHazard(context: Context, node: ast.Hazard): Hazard {
  if (node.about !== undefined) {
    const near = nearSignalWord(node.about);
    if (near !== null)
      context.syntax(
        'unknown-word',
        say`There is no signal word ${node.about}, and the hazard would print as a WARNING. Write ${near}.`,
        context.source(node, 'about'),
        near,
      );
  }
  const about = node.about === undefined ? '' : `${node.about.charAt(0).toUpperCase()}${node.about.slice(1)}: `;
  return { word: node.word ?? 'WARNING', text: `${about}${node.text}`, source: context.source(node) };
}

const signalWords = ['DANGER', 'WARNING', 'CAUTION', 'NOTICE'];

/** The signal word that is meant by the word in its place; null: it says what the hazard is of. */
function nearSignalWord(about: string): string | null {
  const near = nearest(about, signalWords, about === about.toUpperCase() ? 3 : 1)[0];
  return near ?? (/^[A-Z]{3,}$/u.test(about) && about.length > 5 ? signalWords.join(', ') : null);
}

/** What an address names besides the verb. */
export function addressedObject(context: Context, { object }: ast.Address): NameUse | null {
  return object === undefined ? null : { name: pathText(object), source: context.source(object) };
}

/** How a hazard names a step: by its verb, and by its object if it is not for all of the verb. */
export function addressOf(verb: string, object: string | null): string {
  return object === null ? verb : `${verb} ${object}`;
}

/** All ways in which a hazard may name a step. */
export function addressesOf(step: Action): string[] {
  return [step.verb, ...new Set(addressees(step).map((object) => addressOf(step.verb, object)))];
}

/** What an address may name a step by, besides its verb: its reading, or its first object. */
export function addressees(step: Action): string[] {
  const reading = step.verb === 'across' ? step.gate.test : readingOf(step);
  return [reading, step.objects[0]?.name].flatMap((name) => name ?? []);
}

const firstWith = <T extends { readonly id: string }>(all: readonly T[], id: string) =>
  all.find((one) => one.id === id);

/** The name that all copies of a part share. */
function baseOf(parts: readonly Part[], name: string): string {
  return parts.find((part) => part.name === name)?.base ?? name;
}

/** A located parameter makes what it stands for located. */
function located(inner: ast.Subject, outer: ast.Subject): ast.Subject {
  const how = outer.how ?? inner.how;
  return outer.located ? { ...inner, located: true, ...(how === undefined ? {} : { how }) } : inner;
}

export function pathText(path: ast.Path): string {
  return path.tail === undefined ? path.head : `${path.head}.${path.tail}`;
}

/** A label as written, without the quotes around it. */
export function unquoted(label: string): string {
  return label.replace(/^"|"$/gu, '');
}

/** The verb that an address names; its words may be written together by the parser. */
export function verbOf(words: string): string {
  return words.startsWith('clean') ? (words.includes('outside') ? 'clean-outside' : 'clean-holes') : words;
}

/** Words that say all that they say by themselves. */
function saidWords(phrase: PhraseName, step: Said) {
  if (phrase === 'words threads oiled') step.oiled = true;
  else if (phrase === 'words stop if fails') step.stopIfFails = true;
  else if (phrase === 'words ready to fit') step.readyToFit = true;
  else if (phrase === 'words as found') step.asFound = true;
  else if (phrase === 'words as left') step.asLeft = true;
}

/** The author's words for a step, all of them: none replaces another. */
/** @param after the clause whose words they are; null: words of their own */
function addText(step: Said, text: string, after: 'in' | 'for' | 'by' | null = null) {
  if (after !== null) step.wordsAfter = [...step.wordsAfter, after];
  step.text = step.text === null ? text : `${step.text}; ${text}`;
}

function clauseWords(clause: ast.Clause | ast.TestClause | ast.WithItem): string {
  const text = textOf(clause).replace(/\s+/gu, ' ');
  return `“${text.length > 40 ? `${text.slice(0, 39)}…` : text}”`;
}

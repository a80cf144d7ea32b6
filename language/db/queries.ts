import equal from 'fast-deep-equal';
import { buildStepStates, KeptStates, type StepStates } from '../analysis/step-states.ts';
import type { LostStatement } from '../diagnostics/consequences.ts';
import {
  concessionFindings,
  declarationFindings,
  idleConcessions,
  type Judged,
  ProcedureMemory,
  type ProcedureResult,
  problemFindings,
  procedureInPieces,
  unitFindings,
  unreadPlaces,
} from '../diagnostics/engine.ts';
import { attempt, internalError, isDefect } from '../diagnostics/not-checked.ts';
import type { Surroundings } from '../diagnostics/sink.ts';
import type { Diagnostic } from '../model/diagnostic.ts';
import type { Family } from '../model/family.ts';
import type { Job, NewerIssue } from '../model/job.ts';
import type { Procedure } from '../model/procedure.ts';
import type { Shop } from '../model/shop.ts';
import type { Allow, NameUse, Source } from '../model/source.ts';
import { type UnitInWork, unitsInWork } from '../model/unit-in-work.ts';
import { say } from '../say/say.ts';
import { allowsWithin } from '../semantics/allows.ts';
import { Context, type Defect, type Reference, type ResolveProblem } from '../semantics/context.ts';
import { type Declared, kindOfId, nameOfId, uriOfId } from '../semantics/declaration-id.ts';
import { lowerFamily } from '../semantics/family.ts';
import { familyUses, testsOf } from '../semantics/family-uses.ts';
import { type LoweredJob, lowerJob } from '../semantics/job.ts';
import { unquoted } from '../semantics/lower-steps.ts';
import { lowerParameters } from '../semantics/parameters.ts';
import { lowerProcedure } from '../semantics/procedure.ts';
import type { Scope } from '../semantics/scope.ts';
import { lowerShop } from '../semantics/shop.ts';
import { buildSignature, selectFacts } from '../semantics/signature.ts';
import { collectSymbols, type DeclaredSymbol, type SearchedName, searchedNames } from '../semantics/symbols.ts';
import { unreadLine } from '../semantics/unread.ts';
import type * as ast from '../syntax/generated/ast.ts';
import { declarationHeads, itemHeads, itemsWithin, namedItems, stepBlocks } from '../syntax/keywords.ts';
import { nearest } from '../syntax/nearest.ts';
import type { SyntaxProblem } from '../syntax/parse.ts';
import {
  buildFingerprint,
  buildIndex,
  type Declaration,
  declarationOf,
  jobsNamed,
  mayAllow,
  nameKey,
} from './declarations.ts';
import type { Database, Trace } from './engine.ts';
import { issuedShop } from './issued/content.ts';
import { damagedFinding, differing, editedFinding, settled } from './issued/findings.ts';
import { type IssuedFile, isIssuedFile, readIssued } from './issued/format.ts';
import { type DeclaredText, declarationsIn, declarationText } from './issued/made-of.ts';
import { jobHeads } from './job-heads.ts';
import { Neighbors } from './neighbors.ts';
import { plainHeads } from './plain-heads.ts';
import type { Trees } from './trees.ts';

/** Null where a declaration has no model of its own, or cannot have one (reported). */
export type Model = Shop | Family | Procedure | LoweredJob | null;

/** What is said while a declaration is lowered. Sources are relative to declarations. */
export interface Reported {
  readonly problems: readonly ResolveProblem[];
  readonly links: readonly Reference[];
  readonly defects: readonly Defect[];
}

interface Lowered extends Reported {
  readonly model: Model;
}

const nothing: Reported = { problems: [], links: [], defects: [] };

/** A file as it was parsed: plain data. */
export interface ParsedFile {
  readonly problems: readonly SyntaxProblem[];
  readonly declarations: readonly Declaration[];
  readonly fingerprints: ReadonlyMap<string, string>;
  /** Where each begins. */
  readonly lines: ReadonlyMap<string, number>;
}

interface UnreadFile {
  readonly jobs?: readonly string[] | undefined;
  readonly text: string;
}

interface Heads {
  /** Whether it declares jobs and nothing else. */
  readonly areJobs: boolean;
  readonly declarations: readonly Declaration[];
}

/** What a procedure tests, and the id of its family. */
interface TestsOf {
  readonly family: string | null;
  readonly uses: readonly NameUse[];
}

/** What is reported while the declarations of a file are lowered. */
export interface FileProblems {
  /** In whatever file they are; those of jobs, which are in their own file, apart. */
  readonly problems: readonly { readonly phase: number; readonly problem: ResolveProblem }[];
  readonly ofJobs: readonly ResolveProblem[];
  /** What could not be read because something threw. */
  readonly unmade: readonly Diagnostic[];
  /** Declarations that have names of others in their text linked: sequences that they call. */
  readonly reaches: readonly { readonly id: string; readonly others: readonly string[] }[];
}

/** What rules say of a procedure, worked out ahead, and what else that depends on. */
interface Prepared {
  readonly procedure: Procedure;
  readonly unread: readonly Source[];
  readonly lost: Surroundings['lost'];
  /** By file. */
  readonly concessions: ReadonlyMap<string, readonly Allow[]>;
  readonly result: ProcedureResult;
}

interface ProcedureFindings {
  readonly id: string;
  readonly diagnostics: readonly Diagnostic[];
}

/** What rules say of the declarations of a file. */
export interface FileResult {
  /** Of declarations as such. */
  readonly common: readonly Diagnostic[];
  /** Places of the concessions that silenced something there. */
  readonly used: readonly Source[];
  /** Of each procedure and the paths through it. */
  readonly own: readonly (ProcedureFindings & { readonly used: readonly Source[] })[];
  readonly allows: readonly Allow[];
}

/** What is found in a file, or comes of what it declares. Sources are relative to declarations. */
export interface FileFindings {
  /** Of the text, of its declarations as such, and of concessions. */
  readonly common: readonly Diagnostic[];
  readonly own: readonly ProcedureFindings[];
  /** Concessions that silence nothing. */
  readonly idle: readonly Diagnostic[];
  readonly unmade: readonly Diagnostic[];
}

/** A problem that a declaration of a file has, in that file or in another. */
export interface GatheredProblem {
  readonly from: string;
  readonly phase: number;
  readonly problem: ResolveProblem;
}

export type Queries = ReturnType<typeof buildQueries>;

/** The order in which declarations are lowered and their problems reported. */
export const phases: readonly Declared[] = ['Unread', 'Shop', 'Family', 'Sequence', 'Procedure', 'Job'];

/** Rank of the firewalls around what is declared. */
const declared = 1;

/**
 * The arrows from text to findings. Everything is computed in sources relative to declarations, by id, so that what moves
 * is not computed again.
 */
export function buildQueries(db: Database, trees: Trees, digest: (text: string) => string = (text) => text) {
  const texts = db.input<string>();
  /** Files that only the heads are known of so far: all in one, since there may be very many. */
  const unreadFiles = db.input<ReadonlyMap<string, UnreadFile>>();
  const unread = () => unreadFiles.get('') ?? noFiles;
  /** All files, in order. */
  const files = db.input<readonly string[]>();
  const uris = () => files.get('') ?? [];
  const textOf = db.query('text', (uri) => texts.get(uri) ?? unread().get(uri)?.text ?? '', {
    trace: { text: (text) => text, keeps: 'end' },
  });

  const parsed = db.query(
    'parsed',
    (uri): ParsedFile => {
      const text = textOf(uri);
      const tree = trees.tree(uri, text);
      const nodes = [...trees.nodes(uri, text).values()];
      return {
        problems: tree.problems,
        declarations: nodes.map(declarationOf),
        fingerprints: new Map(nodes.map((node) => [node.id, buildFingerprint(node, text, tree, digest)])),
        lines: new Map(nodes.map((node) => [node.id, node.line])),
      };
    },
    { trace: { text: parsedText, keeps: parsedOf } },
  );
  const symbols = db.query(
    'symbols',
    (uri): readonly DeclaredSymbol[] => collectSymbols(trees.tree(uri, textOf(uri)).ast),
    { held: { most: 64 } },
  );
  /** What can be searched for in a file: kept for all of them, so that a search parses none again. */
  const searched = db.query('searched', (uri): readonly SearchedName[] =>
    searchedNames(collectSymbols(trees.tree(uri, textOf(uri)).ast)),
  );
  /** What is declared in a file; by its heads alone where they are plain, so that it is not parsed for it. */
  const heads = db.query(
    'heads',
    (uri): Heads => {
      const jobs = unread().get(uri)?.jobs ?? jobHeads(textOf(uri));
      return jobs === null
        ? { areJobs: false, declarations: plainHeads(uri, textOf(uri)) ?? parsed(uri).declarations }
        : { areJobs: true, declarations: jobsNamed(uri, jobs) };
    },
    { equal, firewall: declared, trace: end },
  );
  /** Ids in a file as it is parsed. */
  const idsIn = db.query('ids in', (uri) => parsed(uri).declarations.map(({ id }) => id), {
    equal,
    firewall: declared,
    trace: end,
  });
  /** What a declaration is made of; null: there is none. */
  const fingerprint = db.query('declaration', (id) => parsed(uriOfId(id)).fingerprints.get(id) ?? null, {
    firewall: declared,
    trace: end,
  });
  /** Blanks that are left in a declaration: what follows from one is not reported beside it. */
  const blanks = db.query(
    'blanks',
    (id): readonly Source[] => {
      const { problems, lines } = parsed(uriOfId(id));
      const start = lines.get(id) ?? 0;
      const next = Math.min(...[...lines.values()].filter((line) => line > start), Number.POSITIVE_INFINITY);
      return problems
        .filter(({ code, range }) => code === 'blank-left' && range.start.line >= start && range.start.line < next)
        .map(({ range }) => ({
          file: id,
          range: {
            start: { ...range.start, line: range.start.line - start },
            end: { ...range.end, line: range.end.line - start },
          },
        }));
    },
    { equal, firewall: declared, trace: end },
  );
  /** An issued revision; null: the file is not as it was written. */
  const issue = db.query('issue', (uri): IssuedFile | null => readIssued(uri, textOf(uri)), { equal });
  /** The file of the issued revision of a procedure, by `issueKey`. */
  const issuedAs = db.query(
    'issued as',
    (key): string | null => {
      const all = uris().filter(isIssuedFile);
      return all.find((uri) => key === issueKeyOf(issue(uri))) ?? null;
    },
    { firewall: declared, trace: end },
  );
  /** The revision of a procedure that was issued last; null: none was, or two were on one day and nobody can say. */
  const newestIssue = db.query(
    'newest issue',
    (procedure): Omit<NewerIssue, 'at'> | null => {
      const all = uris().flatMap((uri) => (isIssuedFile(uri) ? (issue(uri) ?? []) : []));
      const own = all.filter((one) => one.procedure === procedure);
      const last = own
        .map(({ issuedOn }) => issuedOn)
        .sort()
        .at(-1);
      const [newest, second] = own.filter(({ issuedOn }) => issuedOn === last);
      return newest === undefined || second !== undefined
        ? null
        : { revision: newest.revision, issuedOn: newest.issuedOn };
    },
    { equal, firewall: declared, trace: end },
  );
  /** A world of names: the sources, or the file of an issued revision, which declares nothing outside of itself. */
  const worldOfFile = (uri: string) => (isIssuedFile(uri) ? uri : '');
  const worldOf = db.query('world', (id) => {
    const uri = uriOfId(id);
    if (isIssuedFile(uri) || kindOfId(id) !== 'Job') return worldOfFile(uri);
    const key = issueNamedBy(nodeOf(id) as ast.Job | null);
    return key === null ? '' : (issuedAs(key) ?? '');
  });
  const index = db.query(
    'index',
    (world) =>
      buildIndex(
        world === '' ? uris().flatMap((uri) => (isIssuedFile(uri) ? [] : declaredIn(uri))) : parsed(world).declarations,
      ),
    { firewall: declared },
  );
  const none: readonly string[] = [];
  function declaredIn(uri: string): readonly Declaration[] {
    const jobs = unread().get(uri)?.jobs;
    return jobs === undefined ? heads(uri).declarations : jobsNamed(uri, jobs);
  }
  const ids = db.query(
    'ids',
    inWorld((world, kind) => index(world).ids.get(kind) ?? none),
    {
      equal,
      firewall: declared,
      trace: end,
    },
  );
  /** Names that were looked up in the sources and are declared nowhere, by kind and name. */
  const missing = new Set<string>();
  const named = db.query(
    'named',
    inWorld((world, key) => {
      const found = index(world).named.get(key);
      if (world === '' && found === undefined) missing.add(key);
      else if (world === '') missing.delete(key);
      return found ?? none;
    }),
    { equal, firewall: declared, trace: end },
  );
  const isPartNumber = db.query(
    'part number',
    inWorld((world, name) => index(world).partNumbers.has(name)),
    {
      firewall: declared,
      trace: end,
    },
  );
  const isOneTooMany = db.query('one too many', (id) => index(worldOfFile(uriOfId(id))).tooMany.has(id), {
    firewall: declared,
    trace: end,
  });
  const forFamily = db.query(
    'for family',
    inWorld((world, name) => index(world).forFamily.get(name) ?? none),
    {
      equal,
      firewall: declared,
      trace: end,
    },
  );
  const withSteps = db.query('with steps', (id) => index(worldOfFile(uriOfId(id))).withSteps.get(id) ?? none, {
    equal,
    firewall: declared,
    trace: end,
  });
  const near = db.query(
    'nearest',
    inWorld((world, key) => {
      const [written, kind, ...more] = JSON.parse(key) as [string, string, ...string[]];
      return nearest(written, [...more, ...(index(world).names.get(kind) ?? none)]);
    }),
    { equal, firewall: declared, trace: end },
  );

  const first = (kind: Declared, name: string, world = '') => named(keyIn(world, nameKey(kind, name)))[0] ?? null;

  /** The tree of a declaration: reading it depends on what it is made of, and not on where it is. */
  function nodeOf(id: string): ast.Declaration | null {
    if (fingerprint(id) === null) return null;
    const uri = uriOfId(id);
    return trees.nodes(uri, textNow(uri)).get(id)!.node;
  }

  const memoOf = (id: string) => trees.memoOf(uriOfId(id), textNow(uriOfId(id)), id);

  /** Without recording that it is read: what is made of it is recorded. */
  function textNow(uri: string): string {
    return texts.peek(uri) ?? unreadFiles.peek('')?.get(uri)?.text ?? '';
  }

  const scopes = new Map<string, Scope>();
  function scopeOf(world: string): Scope {
    const known = scopes.get(world) ?? buildScope(world);
    scopes.set(world, known);
    return known;
  }

  function buildScope(world: string): Scope {
    return {
      shop: (name) => modelNamed<Shop>('Shop', name, world),
      family: (name) => modelNamed<Family>('Family', name, world),
      procedure: (name) => nodeNamed<ast.Procedure>('Procedure', name, world),
      sequence: (name) => nodeNamed<ast.Sequence>('Sequence', name, world),
      signature(name) {
        const id = first('Procedure', name, world);
        return id === null ? null : signature(id);
      },
      isDeclared: (kind, name) => first(kind, name, world) !== null,
      nearest: (written, kind, more = []) => near(keyIn(world, JSON.stringify([written, kind, ...more]))),
      isPartNumber: (name) => isPartNumber(keyIn(world, name)),
      isOneTooMany: (node) => isOneTooMany(trees.anchorOf(node).id),
      stocks: () => ids(keyIn(world, 'Shop')).flatMap((id) => (model(id) as Shop | null)?.stocks ?? []),
      testsFor(family) {
        const of = first('Family', family, world);
        function* inTurn() {
          for (const id of forFamily(keyIn(world, family))) {
            const one = tests(id);
            if (one.family === of) yield* one.uses;
          }
        }
        return {
          isEmpty: inTurn().next().done === true,
          find(name) {
            for (const use of inTurn()) if (use.name === name) return use;
            return null;
          },
          names: () => [...new Set([...inTurn()].map(({ name }) => name))],
        };
      },
    };
  }

  function modelNamed<T>(kind: Declared, name: string, world: string): T | null {
    const id = first(kind, name, world);
    return id === null ? null : (model(id) as T | null);
  }

  function nodeNamed<T>(kind: Declared, name: string, world: string): T | null {
    const id = first(kind, name, world);
    return id === null ? null : (nodeOf(id) as T | null);
  }

  const lowered = db.query(
    'lowered',
    (id): Lowered => {
      const node = nodeOf(id);
      const context = new Context((declaration) => trees.anchorOf(declaration));
      const made = node === null ? null : lower(context, node, id);
      const { problems, references: links, defects } = context;
      return { model: made, problems, links, defects };
    },
    { equal, held },
  );

  function lower(context: Context, node: ast.Declaration, id: string): Model {
    const world = worldOf(id);
    const scope = scopeOf(world);
    switch (node.$type) {
      case 'Unread':
        unreadLine(context, node, ['shop', 'family', 'procedure', 'job', 'sequence']);
        return null;
      case 'Shop':
        return context.attempt(say`reading this shop`, node, () => {
          const shop = lowerShop(context, node);
          return world === '' || shop === null ? shop : issuedShop(shop, modelNamed<Shop>('Shop', shop.name, ''));
        });
      case 'Family':
        return context.attempt(say`reading this family`, node, () => lowerFamily(context, node));
      case 'Sequence':
        return parameters(context, node);
      case 'Procedure':
        context.attempt(say`reading this procedure`, node, () => {
          for (const item of node.items) if (item.$type === 'Sequence') parameters(context, item);
        });
        if (first('Procedure', node.name, world) !== id) return null;
        return context.attempt(say`reading this procedure`, node, () =>
          context.readAs(node, () => lowerProcedure(context, node, scope, memoOf(id))),
        );
      case 'Job':
        return context.attempt(say`reading this job`, node, () => lowerJob(context, node, scope));
    }
  }

  function parameters(context: Context, node: ast.Sequence): null {
    context.attempt(say`reading this sequence`, node, () => lowerParameters(context, node));
    return null;
  }

  /** The model alone, without where its names are linked. */
  const model = db.query('model', (id) => lowered(id).model, {
    equal,
    held,
    trace: { text: plainText, keeps: 'digest', of: isBase },
  });
  const signature = db.query(
    'signature',
    (id) => {
      const procedure = model(id) as Procedure | null;
      return procedure === null ? null : buildSignature(procedure);
    },
    { equal, held: heldForJobs },
  );
  const facts = db.query('facts', (id) => selectFacts(model(id) as Procedure), { equal, held: heldForJobs });
  const tests = db.query(
    'tests',
    (id): TestsOf => {
      const procedure = model(id) as Procedure | null;
      return procedure === null
        ? { family: null, uses: [] }
        : { family: procedure.family.source.file, uses: testsOf(procedure) };
    },
    { equal, trace: asJson<TestsOf>() },
  );
  /** A family's names that only shops and procedures declare. */
  const uses = db.query(
    'uses',
    (id) => {
      const family = model(id) as Family | null;
      const context = new Context((declaration) => trees.anchorOf(declaration));
      const node = nodeOf(id) as ast.Family | null;
      if (node !== null && family !== null && first('Family', family.name) === id)
        context.attempt(say`reading this family`, node, () => familyUses(context, node, family, scopeOf('')));
      const { problems, references: links, defects } = context;
      return { problems, links, defects };
    },
    { equal },
  );
  /** A second declaration of a name. */
  const duplicate = db.query(
    'duplicate',
    (id): readonly ResolveProblem[] => {
      const node = nodeOf(id);
      if (node === null || node.$type === 'Unread' || isIssuedFile(uriOfId(id))) return [];
      const kind = node.$type;
      const name = nameOfId(id);
      // The head of a job may be none when its file is parsed.
      const before = named(nameKey(kind, name)).find((other) => other === id || fingerprint(other) !== null);
      if (before === undefined || before === id) return [];
      const context = new Context((declaration) => trees.anchorOf(declaration));
      const [one, other] = [nodeOf(before)!, node].map((each) => ({ name, source: context.source(each, 'name') }));
      context.unique([one!, other!], kind.toLowerCase());
      return context.problems;
    },
    { equal },
  );
  const concessions = db.query(
    'concessions',
    (id): readonly Allow[] => {
      // Most have none: the tree is not walked for it.
      if (fingerprint(id)?.startsWith(mayAllow) !== true) return [];
      const context = new Context((declaration) => trees.anchorOf(declaration));
      const node = nodeOf(id)!;
      return context.attempt(say`reading what is allowed`, node, () => allowsWithin(context, node)) ?? [];
    },
    { equal },
  );
  const unreadIn = db.query(
    'unread',
    (id) => [
      ...unreadPlaces([...lowered(id).problems, ...(kindOfId(id) === 'Family' ? uses(id).problems : [])]),
      ...blanks(id),
    ],
    { equal, trace: { ...asJson<Source[]>(), of: isBase } },
  );

  /** Statements with a part that is lost: those that the parser or the lowering of a declaration reports. Blanks are meant. */
  const lostIn = db.query(
    'lost',
    (id): readonly LostStatement[] => {
      const { problems, lines } = parsed(uriOfId(id));
      const start = lines.get(id) ?? 0;
      const next = Math.min(...[...lines.values()].filter((line) => line > start), Number.POSITIVE_INFINITY);
      const lineAt = (file: string, line: number) => wordsOf(textOf(uriOfId(file)).split('\n')[line] ?? '');
      const unparsed = problems
        .filter(({ code, range: { start: at } }) => code !== 'blank-left' && at.line >= start && at.line < next)
        .map(({ range }) => lostStatement(lineAt(id, range.start.line)));
      const made = [...lowered(id).problems, ...(kindOfId(id) === 'Family' ? uses(id).problems : [])];
      const unmade = made.flatMap((problem): LostStatement[] => {
        if (problem.kind === 'unknown-name' && problem.what !== 'step or sequence') return lostName(problem);
        if (problem.kind !== 'unknown-name' && problem.kind !== 'syntax') return [];
        if (problem.kind === 'syntax' && problem.code === 'blank-left') return [];
        const { file, range } = problem.source;
        return [lostStatement(lineAt(file, (parsed(uriOfId(file)).lines.get(file) ?? 0) + range.start.line))];
      });
      return [...unparsed, ...unmade];
    },
    { equal, trace: { ...asJson<readonly LostStatement[]>(), of: isBase } },
  );

  const surroundings = (...of: readonly string[]): Surroundings => ({
    concessionsIn: concessions,
    unread: of.flatMap(unreadIn),
    lost: of.flatMap(lostIn),
  });
  const around = (id: string, { family, shop }: Procedure) => surroundings(id, family.source.file, shop.source.file);

  const neighbors = new Neighbors();
  const memory = new ProcedureMemory();
  let prepared: Prepared | null = null;
  /**
   * What rules say of a procedure and the paths through it. Of the one that was checked last it is kept what the next edit may
   * leave as it is, the states among it; those of others are gone when the rules have reported.
   */
  const outcome = db.query('outcome', (id): ProcedureResult => {
    const procedure = model(id) as Procedure | null;
    if (procedure === null) return { diagnostics: [], used: [] };
    const surroundings = around(id, procedure);
    const known = prepared;
    prepared = null;
    // What was read while it was prepared is recorded now.
    return known !== null &&
      known.procedure === procedure &&
      equal(known.unread, surroundings.unread) &&
      equal(known.lost, surroundings.lost) &&
      [...known.concessions].every(([file, allows]) => concessions(file) === allows)
      ? known.result
      : neighbors.findings(id, procedure, surroundings);
  });

  /**
   * Has what rules say of the procedures of a file ready, in pieces: the longest there is in an edit. Questions may be
   * answered in between; after a change of an input it is no longer good.
   * @param from procedures with fewer lines are left out
   */
  function* prepare(uri: string, from = 0): Generator<undefined, void> {
    if (db.isUntouched('result in', uri)) return;
    for (const id of idsIn(uri)) {
      if (kindOfId(id) !== 'Procedure') continue;
      // Where an earlier process kept the result of the file, the procedure need not be looked at.
      const isKept = db.isReady('result in', uri) && !db.reads('result in', uri, 'outcome', id);
      if (isKept ? db.isCurrent('result in', uri) : db.isCurrent('outcome', id)) continue;
      const procedure = model(id) as Procedure | null;
      if (procedure === null) continue;
      const { start, end } = procedure.extent.range;
      if (end.line - start.line < from) continue;
      const { unread, lost } = around(id, procedure);
      const read = new Map<string, readonly Allow[]>();
      const concessionsIn = (file: string) => {
        const allows = read.get(file) ?? concessions(file);
        read.set(file, allows);
        return allows;
      };
      const result = yield* procedureInPieces(procedure, { concessionsIn, unread, lost }, undefined, memory);
      prepared = { procedure, unread, lost, concessions: read, result };
      outcome(id);
    }
  }

  const kept = new KeptStates();
  /** The states around the steps of a procedure, for questions of an editor about one of them. */
  const stepStates = db.query('step states', (id): StepStates | null => {
    const procedure = model(id) as Procedure | null;
    if (procedure === null) return null;
    const states = attempt(say`the check of its steps`, procedure.source, [], () =>
      buildStepStates(procedure, memory.flow),
    );
    if (states !== null) kept.keep(id, procedure, states);
    return states;
  });

  /** What rules say of a declaration as such. */
  const judged = db.query('judged', (id): ProcedureResult => {
    const allowed = concessionFindings(concessions(id), surroundings(id));
    const one = judgedOf(id);
    const own = one === null ? null : declarationFindings(one, surroundings(id));
    return own === null
      ? allowed
      : { diagnostics: [...allowed.diagnostics, ...own.diagnostics], used: [...allowed.used, ...own.used] };
  });

  function judgedOf(id: string): Judged | null {
    const kind = kindOfId(id);
    // Of a name that is declared twice the first counts.
    if ((kind === 'Shop' || kind === 'Family') && first(kind, nameOfId(id)) !== id) return null;
    if (kind !== 'Shop' && kind !== 'Family' && kind !== 'Job') return null;
    const made = model(id);
    if (made === null) return null;
    switch (kind) {
      case 'Shop':
        return { kind: 'shop', shop: made as Shop };
      case 'Family':
        return { kind: 'family', family: made as Family };
      case 'Job':
        return { kind: 'job', job: jobWith(id, made as LoweredJob)! };
    }
  }

  function jobWith(id: string, lowered: LoweredJob): Job | null {
    const procedure = first('Procedure', lowered.of, worldOf(id));
    return procedure === null ? null : jobOf(id, lowered, facts(procedure));
  }

  /** A job with its procedure, and with what was issued after the revision that it names. */
  function jobOf(id: string, { of, revisionAt, ...job }: LoweredJob, procedure: Procedure): Job {
    const newest = worldOf(id) === '' ? null : newestIssue(of);
    const isNewer = newest !== null && revisionAt !== null && newest.revision !== job.revision;
    return { ...job, procedure, ...(isNewer ? { newerIssue: { ...newest, at: revisionAt } } : {}) };
  }

  const declaredText = db.query(
    'declared text',
    (id): DeclaredText | null => {
      const node = nodeOf(id);
      return node === null ? null : declarationText(node, id, textNow(uriOfId(id)));
    },
    { equal },
  );
  /** What a procedure is made of, by kind and name, without the tools of the shop. */
  function madeOf(id: string): ReadonlyMap<string, string> {
    const uris = declarationsIn(model(id)).filter((one) => worldOfFile(uriOfId(one)) === worldOfFile(uriOfId(id)));
    const texts = uris.flatMap((one) => declaredText(one) ?? []);
    return new Map(texts.map(({ what, text }) => [what, text]));
  }
  /** A procedure in the sources that says an issued revision, and is not what was issued. */
  const edited = db.query(
    'edited',
    (id): readonly Diagnostic[] => {
      const procedure = model(id) as Procedure | null;
      if (procedure === null || procedure.revision === null) return [];
      const uri = issuedAs(issueKey(procedure.name, procedure.revision));
      const issued = uri === null ? null : issue(uri);
      const then = uri === null ? null : first('Procedure', procedure.name, uri);
      if (issued === null || then === null) return [];
      const what = differing(madeOf(id), madeOf(then));
      return what.length === 0 ? [] : [editedFinding(procedure, issued, what)];
    },
    { equal },
  );

  /** All that is said while a declaration is lowered, and of its name. */
  const reported = db.query(
    'reported',
    (id): Reported => {
      const { problems, links, defects } = lowered(id);
      const more = kindOfId(id) === 'Family' ? uses(id) : nothing;
      return {
        problems: [...problems, ...duplicate(id), ...more.problems],
        links: [...links, ...more.links],
        defects: [...defects, ...more.defects],
      };
    },
    { held },
  );

  const saidIn = db.query(
    'said in',
    (uri): FileProblems => {
      // What is wrong with it was dealt with at its issue: a rule that came later makes no old job red.
      if (isIssuedFile(uri)) return nothingSaid;
      const all = idsIn(uri).map((id) => ({ id, ...reported(id), phase: phases.indexOf(kindOfId(id)) }));
      return {
        problems: all.flatMap(({ id, problems, phase }) =>
          kindOfId(id) === 'Job' ? [] : problems.map((problem) => ({ phase, problem })),
        ),
        ofJobs: all.flatMap(({ id, problems }) => (kindOfId(id) === 'Job' ? problems : [])),
        unmade: all.flatMap(({ defects }) =>
          defects.map(({ what, source, error }) => internalError(what, source, error)),
        ),
        reaches: all.flatMap(({ id, links }) => {
          const others = [...new Set(links.map(({ use }) => use.file))].filter((other) => other !== id);
          return others.length === 0 ? [] : [{ id, others }];
        }),
      };
    },
    { equal, trace: asJson<FileProblems>(({ unmade }) => unmade.length === 0) },
  );
  const resultIn = db.query(
    'result in',
    (uri): FileResult => {
      if (isIssuedFile(uri))
        return { common: issue(uri) === null ? [damagedFinding(uri)] : [], used: [], own: [], allows: [] };
      const all = idsIn(uri);
      const common = all.map(judged);
      return {
        common: common.flatMap(({ diagnostics }) => diagnostics),
        used: common.flatMap((one) => one.used.map(({ source }) => source)),
        own: all.flatMap((id) => {
          if (kindOfId(id) !== 'Procedure') return [];
          const { diagnostics, used } = outcome(id);
          return [{ id, diagnostics: [...diagnostics, ...edited(id)], used: used.map(({ source }) => source) }];
        }),
        allows: all.flatMap(concessions),
      };
    },
    { trace: asJson(isSound) },
  );

  /** Files that declare more than jobs: nothing in a job counts in another file. */
  const isSource = (uri: string) => !isIssuedFile(uri) && !unread().has(uri) && !heads(uri).areJobs;
  const sources = db.query('sources', () => uris().filter(isSource), {
    equal,
    firewall: declared,
  });

  /** Problems that come of the declarations of a file, in whatever file they are. Those of a job are in its own. */
  const problemsFrom = db.query(
    'problems from',
    (uri): readonly GatheredProblem[] =>
      isSource(uri) ? saidIn(uri).problems.map((one) => ({ from: uri, ...one })) : [],
    { equal },
  );
  /** Those of a file that come of other files. */
  const problemsElsewhere = db.input<readonly GatheredProblem[]>();
  /** Names of a file whose own line cannot be read: that is reported, and not that nothing has the name. */
  const namesLost = db.query(
    'names lost',
    (uri): readonly string[] => {
      const { problems } = parsed(uri);
      if (problems.length === 0) return [];
      const text = textOf(uri).split('\n');
      return problems.flatMap(({ range }) => {
        const line = text[range.start.line] ?? '';
        return declaresName.exec(line)?.[1] ?? nameless.exec(line)?.[1] ?? [];
      });
    },
    { equal },
  );
  /** A declaration’s file, and those of the family and the shop that it is for. */
  const filesNear = db.query(
    'files near',
    (id): readonly string[] => {
      const own = kindOfId(id) === 'Procedure' ? (model(id) as Procedure | null) : null;
      const ids = own === null ? [id] : [id, own.family.source.file, own.shop.source.file];
      return [...new Set(ids.map(uriOfId))];
    },
    { equal, trace: asJson<readonly string[]>() },
  );
  const ofProblems = db.query('of problems', (uri): ProcedureResult => {
    const here = problemsFrom(uri).filter(({ problem }) => uriOfId(problem.source.file) === uri);
    const others = problemsElsewhere.get(uri) ?? [];
    const all = [...inOrder(here, others).map(({ problem }) => problem), ...saidIn(uri).ofJobs].filter(
      (problem) =>
        problem.kind !== 'unknown-name' ||
        !filesNear(problem.source.file)
          .flatMap(namesLost)
          .some((name) => name === problem.name || name === problem.what),
    );
    return problemFindings(all, { concessionsIn: concessions, unread: [] });
  });

  /** As if the files had been read one after the other, phase by phase: of problems at one place the first is kept. */
  function inOrder(here: readonly GatheredProblem[], others: readonly GatheredProblem[]): GatheredProblem[] {
    const places = new Map(others.length === 0 ? [] : uris().map((uri, index) => [uri, index]));
    const place = ({ from }: GatheredProblem) => places.get(from) ?? -1;
    return [...here, ...others].sort((a, b) => a.phase - b.phase || place(a) - place(b));
  }

  /** Other files in which names are written that a file's declarations read: in sequences, and in what a procedure is like. */
  const readsIn = db.query(
    'reads in',
    (uri): readonly string[] => {
      if (!isSource(uri)) return [];
      const others = new Set(saidIn(uri).reaches.flatMap((one) => one.others.map(uriOfId)));
      return [...others].filter((other) => other !== uri).sort();
    },
    { equal },
  );

  /** Concessions that silenced something in the procedures of a file, in whatever file they are. */
  const usedFrom = db.query(
    'used from',
    (uri) => (isSource(uri) ? resultIn(uri).own.flatMap(({ used }) => used) : []),
    { equal },
  );
  /** Those outside of procedures that silenced something anywhere, by `placeKey`. */
  const usedAnywhere = db.input<readonly string[]>();
  /** One in a procedure is heard in that and in those that are like it; others may be wherever they are used. */
  function isUsed({ source }: Allow): boolean {
    const key = placeKey(source);
    const { file } = source;
    return kindOfId(file) === 'Procedure'
      ? withSteps(file).some((id) =>
          resultIn(uriOfId(id)).own.some((one) => one.id === id && one.used.some((other) => placeKey(other) === key)),
        )
      : usedAnywhere.get(uriOfId(file))?.includes(key) === true;
  }

  /** Units of the jobs of a file, by serial. */
  const unitsIn = db.query(
    'units in',
    (uri): readonly UnitInWork[] =>
      isIssuedFile(uri)
        ? []
        : idsIn(uri).flatMap((id) => {
            const job = kindOfId(id) === 'Job' ? (model(id) as LoweredJob | null) : null;
            return job === null ? [] : unitsInWork(job);
          }),
    { equal, trace: asJson<readonly UnitInWork[]>() },
  );
  /** Units of the jobs of other files that have a serial of this file's. */
  const unitsElsewhere = db.input<readonly UnitInWork[]>();
  const ofUnits = db.query('of units', (uri): ProcedureResult => {
    const units = unitsIn(uri);
    return units.length === 0
      ? { diagnostics: [], used: [] }
      : unitFindings(units, unitsElsewhere.get(uri) ?? [], { concessionsIn: concessions, unread: [] });
  });

  /** Of a job that is judged by an issued revision: those of the day of its issue. Null: those of today. */
  function severitiesOf(id: string): IssuedFile['settings']['severities'] | null {
    const world = kindOfId(id) === 'Job' ? worldOf(id) : '';
    return world === '' ? null : (issue(world)?.settings.severities ?? null);
  }

  const findingsFrom = db.query('findings from', (uri): FileFindings => {
    const { diagnostics, used: heard } = ofProblems(uri);
    const units = ofUnits(uri);
    const { common, used, own, allows } = resultIn(uri);
    const usedHere = new Set(
      [...[...heard, ...units.used].map(({ source }) => source), ...used, ...own.flatMap((one) => one.used)].map(
        placeKey,
      ),
    );
    const idle = allows.filter((allow) => !usedHere.has(placeKey(allow.source)) && !isUsed(allow));
    return {
      common: settled([...diagnostics, ...common, ...units.diagnostics], severitiesOf),
      own,
      idle: settled(idleConcessions(idle), severitiesOf),
      unmade: saidIn(uri).unmade,
    };
  });

  return {
    texts,
    unreadFiles,
    files,
    heads,
    parsed,
    symbols,
    searched,
    idsIn,
    index,
    missing,
    issue,
    worldOf,
    jobOf,
    procedureNamed: (name: string, world: string) => first('Procedure', name, world),
    model,
    reported,
    concessions,
    sources,
    saidIn,
    resultIn,
    tests,
    problemsFrom,
    problemsElsewhere,
    unitsIn,
    unitsElsewhere,
    readsIn,
    usedFrom,
    usedAnywhere,
    stepStates,
    keptStates: (id: string, index: number) => {
      const procedure = model(id) as Procedure | null;
      return procedure === null ? null : kept.upTo(id, procedure, index);
    },
    findingsFrom,
    prepare,
    /** Drops the trees that were not used lately. */
    trimTrees: () => trees.trim(),
  };
}

const nothingSaid: FileProblems = { problems: [], ofJobs: [], unmade: [], reaches: [] };

/** A key of a name in a world of names; in the sources it is the name. */
function keyIn(world: string, key: string): string {
  return world === '' ? key : `${key}\n${world}`;
}

function inWorld<Value>(compute: (world: string, key: string) => Value): (key: string) => Value {
  return (whole) => {
    const [key, world = ''] = whole.split('\n');
    return compute(world, key!);
  };
}

function issueKey(procedure: string, revision: string): string {
  return `${procedure}\n${revision}`;
}

function issueKeyOf(issued: IssuedFile | null): string | null {
  return issued === null ? null : issueKey(issued.procedure, issued.revision);
}

/** What a job's head names. */
function issueNamedBy(node: ast.Job | null): string | null {
  let [of, revision]: (string | undefined)[] = [];
  for (const head of node?.heads ?? [])
    if (head.$type === 'OfProcedure') of ??= head.procedure?.name;
    else if (head.$type === 'InRevision') revision ??= head.revision;
  return of === undefined || revision === undefined ? null : issueKey(of, unquoted(revision));
}

const noFiles: ReadonlyMap<string, UnreadFile> = new Map();

/** Always computed: from the heads and the texts alone. */
const end = { text: plainText, keeps: 'end' } as const;

/** Most models of procedures and jobs that are held: of those that are open, and of what is looked at next. */
const held = { most: 64, always: isBase };
/** A procedure is read again for each of its jobs, which may come in any order. */
const heldForJobs = { most: 256 };

/** Few, and read by everybody. */
function isBase(id: string): boolean {
  const kind = kindOfId(id);
  return kind === 'Shop' || kind === 'Family';
}

function plainText(value: unknown): string {
  return JSON.stringify(value, (_, one: unknown) => (typeof one === 'bigint' ? `${one}n` : one)) ?? '';
}

/** Kept as JSON. @param mayBe whether a value may be kept */
function asJson<Value>(mayBe: (value: Value) => boolean = () => true): Trace<Value> {
  return {
    text: (value) => (mayBe(value) ? JSON.stringify(value) : null),
    keeps: (text) => JSON.parse(text) as Value,
  };
}

/** What a defect of the tool left out may be found the next time. */
function isSound({ common, own }: FileResult): boolean {
  return [common, ...own.map(({ diagnostics }) => diagnostics)].every((all) => all.every((one) => !isDefect(one)));
}

/** A family or a shop that has no name: what it is called by elsewhere is not unknown. */
const nameless = /^(family|shop)\s+"/u;

/** A line that gives something its name. */
const declaresName = new RegExp(
  `^\\s*(?:${[...new Set([...namedItems.values()].flat())].join('|')})\\s+(\\p{L}[\\p{L}\\p{N}_-]*)`,
  'u',
);

/** Begin a line that is no step, and no head of steps. */
const noSteps: ReadonlySet<string> = new Set([
  ...[...declarationHeads, ...itemHeads].filter((word) => !stepBlocks.includes(word)),
  ...[...namedItems.values(), ...itemsWithin.values()].flat().filter((word) => !stepBlocks.includes(word)),
  ...['revision', 'written', 'approved', 'language', 'like'],
]);

function lostStatement(words: readonly string[]): LostStatement {
  return { words, unknown: null, isStep: !noSteps.has(words[0] ?? '') };
}

/** A name that nothing has: what is near to it is meant. A test that is near to none may have to be written. */
function lostName({ name, what, near }: Extract<ResolveProblem, { kind: 'unknown-name' }>): LostStatement[] {
  if (near.length === 0 && what !== 'part') return [];
  return [{ words: ['', ...near], unknown: name, isStep: what === 'part' }];
}

/** The words of a line, those in quotes too, without its remark. */
function wordsOf(line: string): string[] {
  return line.replace(/\/\/.*/u, '').match(/\p{L}[\p{L}\p{N}_-]*/gu) ?? [];
}

function parsedText({ problems, declarations, fingerprints, lines }: ParsedFile): string {
  return JSON.stringify([problems, declarations, [...fingerprints], [...lines]]);
}

function parsedOf(text: string): ParsedFile {
  const [problems, declarations, fingerprints, lines] = JSON.parse(text);
  return { problems, declarations, fingerprints: new Map(fingerprints), lines: new Map(lines) };
}

export function placeKey({ file, range }: Source): string {
  return `${file}:${range.start.line}:${range.start.character}`;
}

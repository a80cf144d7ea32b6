import equal from 'fast-deep-equal';
import { buildStepStates, KeptStates, type StepStates } from '../analysis/step-states.ts';
import {
  concessionFindings,
  declarationFindings,
  idleConcessions,
  type Judged,
  type ProcedureResult,
  problemFindings,
  unreadPlaces,
} from '../diagnostics/engine.ts';
import { attempt, internalError, isDefect } from '../diagnostics/not-checked.ts';
import type { Surroundings } from '../diagnostics/sink.ts';
import type { Diagnostic } from '../model/diagnostic.ts';
import type { Family } from '../model/family.ts';
import type { Job } from '../model/job.ts';
import type { Procedure } from '../model/procedure.ts';
import type { Shop } from '../model/shop.ts';
import type { Allow, NameUse, Source } from '../model/source.ts';
import { allowsWithin } from '../semantics/allows.ts';
import { Context, type Defect, type Reference, type ResolveProblem } from '../semantics/context.ts';
import { type Declared, kindOfId, nameOfId, uriOfId } from '../semantics/declaration-id.ts';
import { lowerFamily } from '../semantics/family.ts';
import { familyUses, testsOf } from '../semantics/family-uses.ts';
import { type LoweredJob, lowerJob } from '../semantics/job.ts';
import { lowerParameters } from '../semantics/parameters.ts';
import { lowerProcedure } from '../semantics/procedure.ts';
import type { Scope } from '../semantics/scope.ts';
import { lowerShop } from '../semantics/shop.ts';
import { buildSignature, selectFacts } from '../semantics/signature.ts';
import { collectSymbols, type DeclaredSymbol } from '../semantics/symbols.ts';
import { unreadLine } from '../semantics/unread.ts';
import type * as ast from '../syntax/generated/ast.ts';
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
  const index = db.query('index', () => buildIndex(uris().flatMap(declaredIn)), {
    firewall: declared,
  });
  const none: readonly string[] = [];
  function declaredIn(uri: string): readonly Declaration[] {
    const jobs = unread().get(uri)?.jobs;
    return jobs === undefined ? heads(uri).declarations : jobsNamed(uri, jobs);
  }
  const ids = db.query('ids', (kind) => index('').ids.get(kind) ?? none, { equal, firewall: declared, trace: end });
  /** Names that were looked up and are declared nowhere, by kind and name. */
  const missing = new Set<string>();
  const named = db.query(
    'named',
    (key) => {
      const found = index('').named.get(key);
      if (found === undefined) missing.add(key);
      else missing.delete(key);
      return found ?? none;
    },
    { equal, firewall: declared, trace: end },
  );
  const isPartNumber = db.query('part number', (name) => index('').partNumbers.has(name), {
    firewall: declared,
    trace: end,
  });
  const isOneTooMany = db.query('one too many', (id) => index('').tooMany.has(id), {
    firewall: declared,
    trace: end,
  });
  const forFamily = db.query('for family', (name) => index('').forFamily.get(name) ?? none, {
    equal,
    firewall: declared,
    trace: end,
  });
  const withSteps = db.query('with steps', (id) => index('').withSteps.get(id) ?? none, {
    equal,
    firewall: declared,
    trace: end,
  });
  const near = db.query(
    'nearest',
    (key) => {
      const [written, kind, ...more] = JSON.parse(key) as [string, string, ...string[]];
      return nearest(written, [...more, ...(index('').names.get(kind) ?? none)]);
    },
    { equal, firewall: declared, trace: end },
  );

  const first = (kind: Declared, name: string) => named(nameKey(kind, name))[0] ?? null;

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

  const scope: Scope = {
    shop: (name) => modelNamed<Shop>('Shop', name),
    family: (name) => modelNamed<Family>('Family', name),
    procedure: (name) => nodeNamed<ast.Procedure>('Procedure', name),
    sequence: (name) => nodeNamed<ast.Sequence>('Sequence', name),
    signature(name) {
      const id = first('Procedure', name);
      return id === null ? null : signature(id);
    },
    isDeclared: (kind, name) => first(kind, name) !== null,
    nearest: (written, kind, more = []) => near(JSON.stringify([written, kind, ...more])),
    isPartNumber,
    isOneTooMany: (node) => isOneTooMany(trees.anchorOf(node).id),
    stocks: () => ids('Shop').flatMap((id) => (model(id) as Shop | null)?.stocks ?? []),
    testsFor(family) {
      const of = first('Family', family);
      function* inTurn() {
        for (const id of forFamily(family)) {
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

  function modelNamed<T>(kind: Declared, name: string): T | null {
    const id = first(kind, name);
    return id === null ? null : (model(id) as T | null);
  }

  function nodeNamed<T>(kind: Declared, name: string): T | null {
    const id = first(kind, name);
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
    switch (node.$type) {
      case 'Unread':
        unreadLine(context, node, ['shop', 'family', 'procedure', 'job', 'sequence']);
        return null;
      case 'Shop':
        return context.attempt('reading this shop', node, () => lowerShop(context, node));
      case 'Family':
        return context.attempt('reading this family', node, () => lowerFamily(context, node));
      case 'Sequence':
        return parameters(context, node);
      case 'Procedure':
        context.attempt('reading this procedure', node, () => {
          for (const item of node.items) if (item.$type === 'Sequence') parameters(context, item);
        });
        if (first('Procedure', node.name) !== id) return null;
        return context.attempt('reading this procedure', node, () =>
          context.readAs(node, () => lowerProcedure(context, node, scope, memoOf(id))),
        );
      case 'Job':
        return context.attempt('reading this job', node, () => lowerJob(context, node, scope));
    }
  }

  function parameters(context: Context, node: ast.Sequence): null {
    context.attempt('reading this sequence', node, () => lowerParameters(context, node));
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
        context.attempt('reading this family', node, () => familyUses(context, node, family, scope));
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
      if (node === null || node.$type === 'Unread') return [];
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
      return context.attempt('reading what is allowed', node, () => allowsWithin(context, node)) ?? [];
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

  const surroundings = (...of: readonly string[]): Surroundings => ({
    concessionsIn: concessions,
    unread: of.flatMap(unreadIn),
  });

  const neighbors = new Neighbors();
  /**
   * What rules say of a procedure and the paths through it. Its states are gone when they have spoken; of the one that was
   * checked last it is kept what did not depend on them, for the next edit of it, and for one that is much like it.
   */
  const outcome = db.query('outcome', (id): ProcedureResult => {
    const procedure = model(id) as Procedure | null;
    if (procedure === null) return { diagnostics: [], used: [] };
    const around = surroundings(id, procedure.family.source.file, procedure.shop.source.file);
    return neighbors.findings(id, procedure, around);
  });

  const kept = new KeptStates();
  /** The states around the steps of a procedure, for questions of an editor about one of them. */
  const stepStates = db.query('step states', (id): StepStates | null => {
    const procedure = model(id) as Procedure | null;
    if (procedure === null) return null;
    const states = attempt('the check of its steps', procedure.source, [], () => buildStepStates(procedure));
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
        return { kind: 'job', job: jobWith(made as LoweredJob)! };
    }
  }

  function jobWith({ of, ...job }: LoweredJob): Job | null {
    const id = first('Procedure', of);
    return id === null ? null : { ...job, procedure: facts(id) };
  }

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
      const all = idsIn(uri);
      const common = all.map(judged);
      return {
        common: common.flatMap(({ diagnostics }) => diagnostics),
        used: common.flatMap((one) => one.used.map(({ source }) => source)),
        own: all.flatMap((id) => {
          if (kindOfId(id) !== 'Procedure') return [];
          const { diagnostics, used } = outcome(id);
          return [{ id, diagnostics, used: used.map(({ source }) => source) }];
        }),
        allows: all.flatMap(concessions),
      };
    },
    { trace: asJson(isSound) },
  );

  /** Files that declare more than jobs: nothing in a job counts in another file. */
  const isSource = (uri: string) => !unread().has(uri) && !heads(uri).areJobs;
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
  const ofProblems = db.query('of problems', (uri): ProcedureResult => {
    const here = problemsFrom(uri).filter(({ problem }) => uriOfId(problem.source.file) === uri);
    const others = problemsElsewhere.get(uri) ?? [];
    const all = [...inOrder(here, others).map(({ problem }) => problem), ...saidIn(uri).ofJobs];
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

  const findingsFrom = db.query('findings from', (uri): FileFindings => {
    const { diagnostics, used: heard } = ofProblems(uri);
    const { common, used, own, allows } = resultIn(uri);
    const usedHere = new Set(
      [...heard.map(({ source }) => source), ...used, ...own.flatMap((one) => one.used)].map(placeKey),
    );
    const idle = allows.filter((allow) => !usedHere.has(placeKey(allow.source)) && !isUsed(allow));
    return { common: [...diagnostics, ...common], own, idle: idleConcessions(idle), unmade: saidIn(uri).unmade };
  });

  return {
    texts,
    unreadFiles,
    files,
    heads,
    parsed,
    symbols,
    idsIn,
    index,
    missing,
    model,
    reported,
    concessions,
    sources,
    saidIn,
    resultIn,
    tests,
    problemsFrom,
    problemsElsewhere,
    readsIn,
    usedFrom,
    usedAnywhere,
    stepStates,
    keptStates: (id: string, index: number) => {
      const procedure = model(id) as Procedure | null;
      return procedure === null ? null : kept.upTo(id, procedure, index);
    },
    findingsFrom,
    /** Drops the trees that were not used lately. */
    trimTrees: () => trees.trim(),
  };
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

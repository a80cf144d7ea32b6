import { type Analyzed, analyzeInPieces, finish, mostTransfers } from '../analysis/flow-analysis.ts';
import { FlowMemory } from '../analysis/flow-memory.ts';
import { either } from '../analysis/prose.ts';
import { within } from '../analysis/within.ts';
import { type Diagnostic, stated } from '../model/diagnostic.ts';
import type { Family } from '../model/family.ts';
import type { Job } from '../model/job.ts';
import type { Procedure } from '../model/procedure.ts';
import type { Shop } from '../model/shop.ts';
import type { Allow, Source } from '../model/source.ts';
import type { UnitInWork } from '../model/unit-in-work.ts';
import { oncePer } from '../quantities/memo.ts';
import { english, type Said, say } from '../say/say.ts';
import type { ResolveProblem } from '../semantics/context.ts';
import { nearest } from '../syntax/nearest.ts';
import { rules as allRules } from './index.ts';
import { attempt, internalError, tooManyWays } from './not-checked.ts';
import { PathPass, ShownBefore } from './path-pass.ts';
import type { AnyRule, Report } from './rule.ts';
import { DiagnosticSink, type Surroundings } from './sink.ts';
import type { StepFix } from './step-fixes.ts';
import { StepPass } from './step-pass.ts';

/** What rules report of something, and the concessions that silenced something there. */
export interface ProcedureResult {
  readonly diagnostics: readonly Diagnostic[];
  readonly used: readonly Allow[];
}

/** One declaration, as rules are shown it. */
export type Judged =
  | { readonly kind: 'shop'; readonly shop: Shop }
  | { readonly kind: 'family'; readonly family: Family }
  | { readonly kind: 'job'; readonly job: Job };

/** Where something is that could not be read: what rules miss there may be just that. */
export function unreadPlaces(problems: readonly ResolveProblem[]): Source[] {
  return problems.flatMap((problem) =>
    problem.kind === 'syntax' || problem.kind === 'unknown-name'
      ? [problem.source, ...(problem.from === undefined ? [] : [problem.from.source])]
      : [],
  );
}

/**
 * What rules say of the problems in one file. A rule that throws costs its own findings, and is reported as a defect at
 * the head of what it was shown; so everywhere below.
 */
export function problemFindings(
  problems: readonly ResolveProblem[],
  surroundings: Surroundings,
  rules: readonly AnyRule[] = allRules,
): ProcedureResult {
  const [first] = problems;
  if (first === undefined) return nothing;
  return collected(
    surroundings,
    (rule, report, defects) => attempt(ruleWords(rule), first.source, defects, () => rule.problems?.(problems, report)),
    rules,
  );
}

/** What rules say of the concessions in a declaration. */
export function concessionFindings(
  concessions: readonly Allow[],
  surroundings: Surroundings,
  rules: readonly AnyRule[] = allRules,
): ProcedureResult {
  if (concessions.length === 0) return nothing;
  return collected(
    surroundings,
    (rule, report, defects) => {
      for (const allow of concessions)
        attempt(ruleWords(rule), allow.source, defects, () => rule.concession?.(allow, report));
    },
    rules,
  );
}

/** What rules say of a shop, a family or a job. */
export function declarationFindings(
  judged: Judged,
  surroundings: Surroundings,
  rules: readonly AnyRule[] = allRules,
): ProcedureResult {
  return collected(
    surroundings,
    (rule, report, defects) => {
      switch (judged.kind) {
        case 'shop':
          return attempt(ruleWords(rule), judged.shop.source, defects, () => rule.shop?.(judged.shop, report));
        case 'family':
          return attempt(ruleWords(rule), judged.family.source, defects, () => rule.family?.(judged.family, report));
        case 'job':
          return attempt(ruleWords(rule), judged.job.source, defects, () => rule.job?.(judged.job, report));
      }
    },
    rules,
  );
}

/** What rules say of units beside those of other jobs. */
export function unitFindings(
  units: readonly UnitInWork[],
  elsewhere: readonly UnitInWork[],
  surroundings: Surroundings,
  rules: readonly AnyRule[] = allRules,
): ProcedureResult {
  const [first] = units;
  if (first === undefined) return nothing;
  return collected(
    surroundings,
    (rule, report, defects) =>
      attempt(ruleWords(rule), first.source, defects, () => rule.units?.(units, elsewhere, report)),
    rules,
  );
}

/** What is kept of the procedure that was checked last: of the same one after an edit, most is as it was. */
export class ProcedureMemory {
  readonly flow = new FlowMemory();
  private facts: FlowMemory['facts'] = null;
  private before = new ShownBefore();

  /** What its local rules were shown before, once it is analyzed. */
  shownBefore(): ShownBefore {
    // Nothing of it holds for other parts, specs or gates.
    if (this.facts !== this.flow.facts) this.before = new ShownBefore();
    this.facts = this.flow.facts;
    return this.before;
  }
}

/** What rules say of a procedure and of every path through it. */
export function procedureFindings(
  procedure: Procedure,
  surroundings: Surroundings,
  rules: readonly AnyRule[] = allRules,
  memory = new ProcedureMemory(),
): ProcedureResult {
  return finish(procedureInPieces(procedure, surroundings, rules, memory));
}

/**
 * The same in pieces of some tenths of a millisecond; may be left where it yields, or go on after another one with the same
 * memory.
 */
export function* procedureInPieces(
  procedure: Procedure,
  surroundings: Surroundings,
  rules: readonly AnyRule[] = allRules,
  memory = new ProcedureMemory(),
): Generator<undefined, ProcedureResult> {
  const used = new Set<Allow>();
  const collector = new DiagnosticSink(procedure, surroundings, used);
  const { source } = procedure;
  const defects: Diagnostic[] = [];
  const { onSteps, onPaths } = listening(rules);
  let analyzed: Analyzed | null = null;
  let before = new ShownBefore();
  try {
    const analysis = analyzeInPieces(procedure, memory.flow);
    let piece = analysis.next();
    // It has begun: what is remembered now is good for this procedure.
    before = memory.shownBefore();
    for (; piece.done !== true; piece = analysis.next()) yield;
    analyzed = piece.value;
  } catch (error) {
    defects.push(internalError(itsSteps, source, error));
    before = new ShownBefore();
  }
  const flows = analyzed?.flows ?? [];
  const steps = new StepPass(procedure, before.cleanSteps);
  for (const rule of onSteps) {
    try {
      const report = collector.reporter(rule);
      rule.procedure?.(procedure, report);
      steps.show(rule, report);
    } catch (error) {
      defects.push(internalError(ruleWords(rule), source, error));
    }
    yield;
  }
  // What a rule that has thrown would have reported is not known.
  if (defects.length === 0) steps.end();
  const cutOff = flows.find(({ isComplete: isWhole }) => !isWhole);
  if (cutOff !== undefined) defects.push(tooManyWays(procedure.name, source, mostTransfers(cutOff.graph)));
  else
    for (const one of flows) {
      const pass = new PathPass(one, before);
      for (const rule of onPaths) {
        try {
          const checks = rule.flow!(one, pass.noting(collector.reporter(rule, one)));
          pass.add(checks, (error) => void defects.push(internalError(ruleWords(rule), source, error)));
        } catch (error) {
          defects.push(internalError(ruleWords(rule), source, error));
        }
        yield;
      }
      try {
        yield* one.visitInPieces(pass);
      } catch (error) {
        defects.push(internalError(itsSteps, source, error));
      }
    }
  if (analyzed !== null) memory.flow.keep(flows, analyzed.facts);
  const diagnostics = [...collector.diagnostics(defects), ...defects].map((diagnostic) => moved(diagnostic, procedure));
  return { diagnostics, used: [...used] };
}

const itsSteps = say`the check of its steps`;

/** Of a list of rules, those that are shown a procedure or its steps, and those that are shown its paths. */
const listening = oncePer((rules: readonly AnyRule[]) => ({
  onSteps: rules.filter((rule) => rule.procedure !== undefined || rule.eachStep !== undefined),
  onPaths: rules.filter((rule) => rule.flow !== undefined),
}));

const nothing: ProcedureResult = { diagnostics: [], used: [] };

function collected(
  surroundings: Surroundings,
  show: (rule: AnyRule, report: (report: Report) => void, defects: Diagnostic[]) => void,
  rules: readonly AnyRule[],
): ProcedureResult {
  const used = new Set<Allow>();
  const collector = new DiagnosticSink(null, surroundings, used);
  const defects: Diagnostic[] = [];
  for (const rule of rules) show(rule, collector.reporter(rule), defects);
  return { diagnostics: [...collector.diagnostics(defects), ...defects], used: [...used] };
}

function ruleWords({ code }: AnyRule): Said {
  return say`the rule ${code}`;
}

/** Findings of shop and family count for the procedures that use them; those of a sequence for all that call it. */
export function touches(diagnostic: Diagnostic, procedure: Procedure): boolean {
  // A line that is lost in a sequence, or in the procedure that this one is like, may be a step that does not print.
  if (diagnostic.severity === 'error' && procedure.files.includes(diagnostic.source.file)) return true;
  const own = [procedure.source.file, procedure.family.source.file, procedure.shop.source.file];
  return [diagnostic.source, ...(diagnostic.related ?? []).map(({ source }) => source)].some(({ file }) =>
    own.includes(file),
  );
}

/** A finding in a step taken over from another procedure is reported where this one says `like`. */
function moved(diagnostic: Diagnostic, procedure: Procedure): Diagnostic {
  if (
    procedure.like === null ||
    within(diagnostic.source, procedure.extent) ||
    within(diagnostic.source, procedure.family.source)
  )
    return diagnostic;
  const taken = say`The step was taken over from ${procedure.like}.`;
  const related = [{ message: english(taken), said: taken, source: diagnostic.source }, ...(diagnostic.related ?? [])];
  const { fix: _, ...rest } = diagnostic;
  const said = rest.said!;
  const { step } = diagnostic;
  return {
    ...rest,
    ...(step === undefined
      ? {}
      : stated({ ...said, message: say`Step ${step}, taken over from ${procedure.like}: ${said.message}` })),
    source: procedure.likeSource ?? procedure.source,
    related,
  };
}

/** The findings on concessions that silence nothing, or name no rule. */
export function idleConcessions(idle: readonly Allow[], rules: readonly AnyRule[] = allRules): readonly Diagnostic[] {
  if (idle.length === 0) return [];
  const rule = rules.find((other) => other.code === 'allow-without-effect')!;
  const collector = new DiagnosticSink(null, { concessionsIn: () => [], unread: [] }, new Set());
  const report = collector.reporter(rule);
  const codes = rules.map(({ code }) => code);
  for (const allow of idle) {
    const near = nearest(allow.rule, codes);
    report({
      at: allow.source,
      ...(codes.includes(allow.rule)
        ? {
            message: say`This concession silences nothing: ${allow.rule} finds nothing here.`,
            why: say`it would print on the sheet for no reason.`,
            help: say`Delete it.`,
            data: { source: allow.source, text: '', where: 'instead' } satisfies StepFix,
          }
        : {
            message: say`No rule is called ${allow.rule}, so this concession silences nothing.`,
            why: say`the finding that it is meant for is still reported.`,
            help:
              near.length > 0
                ? say`Did you mean ${either(near)}?`
                : say`Copy the name from the finding that it is for.`,
            data:
              near.length === 1
                ? ({
                    source: allow.source,
                    text: `allow ${near[0]} because "${allow.because}"`,
                    where: 'instead',
                  } satisfies StepFix)
                : undefined,
          }),
    });
  }
  return collector.diagnostics([]);
}

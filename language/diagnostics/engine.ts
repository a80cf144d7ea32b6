import { mostPassed, type Replay, type Visitor } from '../analysis/flow-analysis.ts';
import { either } from '../analysis/prose.ts';
import { within } from '../analysis/within.ts';
import type { Finding } from '../model/diagnostic.ts';
import type { Procedure } from '../model/procedure.ts';
import type { Allow, Source } from '../model/source.ts';
import type { Resolved } from '../semantics/resolve.ts';
import { nearest } from '../syntax/nearest.ts';
import { rules as allRules } from './index.ts';
import { attempt, internalError, tooManyWays } from './not-checked.ts';
import type { AnyRule } from './rule.ts';
import { Collector } from './sink.ts';

/** The result of one procedure: what its paths are, and what the rules report. */
export interface Outcome {
  readonly replays: readonly Replay[];
  readonly findings: readonly Finding[];
  /** Concessions that silenced something. */
  readonly used: readonly Allow[];
}

/**
 * All findings of a workspace, and those of each procedure. `outcomeOf` returns the cached result of a procedure, or
 * computes it. A rule that throws costs its own findings, and is reported as a defect at the head of what it was shown.
 */
export function findingsOf(
  resolved: Resolved,
  outcomeOf: (procedure: Procedure, work: (replays: readonly Replay[]) => Omit<Outcome, 'replays'>) => Outcome,
  rules: readonly AnyRule[] = allRules,
) {
  const used = new Set<Allow>();
  const unread = resolved.problems.flatMap((problem) =>
    problem.kind === 'syntax' || problem.kind === 'unknown-name'
      ? [problem.source, ...(problem.from === undefined ? [] : [problem.from.source])]
      : [],
  );
  const collector = new Collector(null, resolved.concessions, used, unread);
  const defects: Finding[] = [];
  const somewhere = [...resolved.procedures, ...resolved.families, ...resolved.shops][0]?.source ?? nowhere;
  for (const rule of rules) {
    const report = collector.reporter(rule);
    const of = (source: Source, work: () => void) => attempt(ruleWords(rule), source, defects, work);
    of(somewhere, () => rule.workspace?.(resolved, report));
    for (const shop of resolved.shops) of(shop.source, () => rule.shop?.(shop, report));
    for (const family of resolved.families) of(family.source, () => rule.family?.(family, report));
  }
  const common = [...collector.findings(), ...defects];
  const byProcedure = new Map<Procedure, Finding[]>();
  for (const procedure of resolved.procedures) {
    const { findings: own, used: conceded } = outcomeOf(procedure, (replays) => {
      const here = new Set<Allow>();
      const findings = procedureFindings(rules, procedure, replays, resolved.concessions, here, unread);
      return { findings, used: [...here] };
    });
    for (const allow of conceded) used.add(allow);
    const around = common.filter((finding) => touches(finding, procedure));
    byProcedure.set(procedure, [...around, ...own.map((finding) => moved(finding, procedure))]);
  }
  const idle = idleConcessions(rules, resolved, used);
  const all = [...common, ...[...byProcedure.values()].flat().filter((finding) => !common.includes(finding)), ...idle];
  for (const [procedure, findings] of byProcedure)
    findings.push(...idle.filter((finding) => touches(finding, procedure)));
  return { all, byProcedure };
}

const nowhere: Source = {
  file: '',
  range: { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } },
};

function ruleWords({ code }: AnyRule): string {
  return `the rule ${code}`;
}

function procedureFindings(
  rules: readonly AnyRule[],
  procedure: Procedure,
  replays: readonly Replay[],
  concessions: readonly Allow[],
  used: Set<Allow>,
  unread: readonly Source[],
): Finding[] {
  const collector = new Collector(procedure, concessions, used, unread);
  const { source } = procedure;
  const defects: Finding[] = [];
  for (const rule of rules)
    attempt(ruleWords(rule), source, defects, () => rule.procedure?.(procedure, collector.reporter(rule)));
  const cutOff = replays.find(({ isWhole }) => !isWhole);
  if (cutOff !== undefined)
    return [...collector.findings(), ...defects, tooManyWays(procedure.name, source, mostPassed(cutOff.program))];
  for (const replay of replays) {
    const visitors = rules.flatMap((rule) => {
      const visitor = attempt(ruleWords(rule), source, defects, () =>
        rule.replay?.(replay, collector.reporter(rule, replay)),
      );
      return visitor == null
        ? []
        : guarded(visitor, (error) => defects.push(internalError(ruleWords(rule), source, error)));
    });
    attempt('the check of its steps', source, defects, () => replay.visit(together(visitors)));
  }
  return [...collector.findings(), ...defects];
}

/** Hooks of a visitor, each there or not. */
type Guarded = { readonly [Hook in keyof Visitor]: Visitor[Hook] | undefined };

/** A visitor that gets no more calls once it has thrown. */
function guarded(visitor: Visitor, thrown: (error: unknown) => void): Guarded {
  let works = true;
  const once = <A extends unknown[]>(hook: ((...args: A) => void) | undefined) =>
    hook &&
    ((...args: A) => {
      if (!works) return;
      try {
        hook.apply(visitor, args);
      } catch (error) {
        works = false;
        thrown(error);
      }
    });
  return {
    step: once(visitor.step),
    after: once(visitor.after),
    leave: once(visitor.leave),
    end: once(visitor.end),
    comeBack: once(visitor.comeBack),
  };
}

function together(visitors: readonly Guarded[]): Visitor {
  return {
    step(visit) {
      for (const visitor of visitors) visitor.step?.(visit);
    },
    after(visit, state) {
      for (const visitor of visitors) visitor.after?.(visit, state);
    },
    leave(leaving) {
      for (const visitor of visitors) visitor.leave?.(leaving);
    },
    end(ending) {
      for (const visitor of visitors) visitor.end?.(ending);
    },
    comeBack(coming) {
      for (const visitor of visitors) visitor.comeBack?.(coming);
    },
  };
}

/** Findings of shop and family count for the procedures that use them; those of a sequence for all that call it. */
function touches(finding: Finding, procedure: Procedure): boolean {
  // A line that is lost in a sequence, or in the procedure that this one is like, may be a step that does not print.
  if (finding.severity === 'error' && procedure.files.includes(finding.source.file)) return true;
  const own = [procedure.source.file, procedure.family.source.file, procedure.shop.source.file];
  return [finding.source, ...(finding.related ?? []).map(({ source }) => source)].some(({ file }) =>
    own.includes(file),
  );
}

/** A finding in a step taken over from another procedure is reported where this one says `like`. */
function moved(finding: Finding, procedure: Procedure): Finding {
  if (
    procedure.like === null ||
    within(finding.source, procedure.extent) ||
    within(finding.source, procedure.family.source)
  )
    return finding;
  const related = [
    { message: `The step was taken over from ${procedure.like}.`, source: finding.source },
    ...(finding.related ?? []),
  ];
  const { fix: _, ...rest } = finding;
  return {
    ...rest,
    message: `${finding.step === undefined ? '' : `Step ${finding.step}, taken over from ${procedure.like}: `}${finding.message}`,
    source: procedure.likeSource ?? procedure.source,
    related,
  };
}

/** Concessions that silence nothing, or name no rule. */
function idleConcessions(rules: readonly AnyRule[], resolved: Resolved, used: ReadonlySet<Allow>): Finding[] {
  const rule = rules.find((other) => other.code === 'allow-without-effect')!;
  const collector = new Collector(null, [], new Set());
  const report = collector.reporter(rule);
  const places = (allow: Allow) =>
    `${allow.source.file}:${allow.source.range.start.line}:${allow.source.range.start.character}`;
  const usedPlaces = new Set([...used].map(places));
  const codes = rules.map(({ code }) => code);
  for (const allow of resolved.concessions) {
    if (usedPlaces.has(places(allow))) continue;
    const near = nearest(allow.rule, codes);
    report({
      at: allow.source,
      ...(codes.includes(allow.rule)
        ? {
            message: `This concession silences nothing: ${allow.rule} finds nothing here.`,
            why: 'it would print on the sheet for no reason.',
            help: 'Delete it.',
          }
        : {
            message: `No rule is called ${allow.rule}, so this concession silences nothing.`,
            why: 'the finding that it is meant for is still reported.',
            help: near.length > 0 ? `Did you mean ${either(near)}?` : 'Copy the name from the finding that it is for.',
          }),
    });
  }
  return collector.findings();
}

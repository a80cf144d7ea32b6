import type { Outcome } from '../memory.ts';
import type { Finding } from '../model/finding.ts';
import type { Procedure } from '../model/procedure.ts';
import type { Allow, Source } from '../model/source.ts';
import type { Replay, Visitor } from '../replay/replay.ts';
import type { Resolved } from '../resolve/resolve.ts';
import { Collector } from './collector.ts';
import { rules } from './index.ts';
import { within } from './within.ts';

/**
 * All findings of a workspace, and those of each procedure. `outcomeOf` gives what a procedure came to before, or has it
 * worked out.
 */
export function findingsOf(
  resolved: Resolved,
  outcomeOf: (procedure: Procedure, work: (replays: readonly Replay[]) => Omit<Outcome, 'replays'>) => Outcome,
) {
  const used = new Set<Allow>();
  const unread = resolved.problems.flatMap(({ kind, source }) =>
    kind === 'syntax' || kind === 'unknown-name' ? [source] : [],
  );
  const collector = new Collector(null, resolved.concessions, used, unread);
  for (const rule of rules) {
    const report = collector.reporter(rule);
    rule.workspace?.(resolved, report);
    for (const shop of resolved.shops) rule.shop?.(shop, report);
    for (const family of resolved.families) rule.family?.(family, report);
  }
  const common = collector.findings();
  const byProcedure = new Map<Procedure, Finding[]>();
  for (const procedure of resolved.procedures) {
    const { findings: own, used: conceded } = outcomeOf(procedure, (replays) => {
      const here = new Set<Allow>();
      const findings = procedureFindings(procedure, replays, resolved.concessions, here, unread);
      return { findings, used: [...here] };
    });
    for (const allow of conceded) used.add(allow);
    const around = common.filter((finding) => touches(finding, procedure));
    byProcedure.set(procedure, [...around, ...own.map((finding) => moved(finding, procedure))]);
  }
  const idle = idleConcessions(resolved, used);
  const all = [...common, ...[...byProcedure.values()].flat().filter((finding) => !common.includes(finding)), ...idle];
  for (const [procedure, findings] of byProcedure)
    findings.push(...idle.filter((finding) => touches(finding, procedure)));
  return { all, byProcedure };
}

function procedureFindings(
  procedure: Procedure,
  replays: readonly Replay[],
  concessions: readonly Allow[],
  used: Set<Allow>,
  unread: readonly Source[],
): Finding[] {
  const collector = new Collector(procedure, concessions, used, unread);
  for (const rule of rules) rule.procedure?.(procedure, collector.reporter(rule));
  for (const replay of replays) {
    replay.visit(together(rules.flatMap((rule) => rule.replay?.(replay, collector.reporter(rule, replay)) ?? [])));
  }
  return collector.findings();
}

function together(visitors: readonly Visitor[]): Visitor {
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

/** Findings of shop and family count for the procedures that use them. */
function touches(finding: Finding, procedure: Procedure): boolean {
  const { file } = finding.source;
  // A line that is lost in a sequence, or in what this one is like, may be a step that does not print.
  if (finding.severity === 'error' && procedure.files.includes(file)) return true;
  return [procedure.source.file, procedure.family.source.file, procedure.shop.source.file].includes(file);
}

/** A finding in a step taken over from another procedure is told where this one says `like`. */
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
function idleConcessions(resolved: Resolved, used: ReadonlySet<Allow>): Finding[] {
  const rule = rules.find((other) => other.code === 'allow-without-effect')!;
  const collector = new Collector(null, [], new Set());
  const report = collector.reporter(rule);
  const places = (allow: Allow) =>
    `${allow.source.file}:${allow.source.range.start.line}:${allow.source.range.start.character}`;
  const usedPlaces = new Set([...used].map(places));
  for (const allow of resolved.concessions) {
    if (usedPlaces.has(places(allow))) continue;
    const known = rules.some((other) => other.code === allow.rule);
    report({
      at: allow.source,
      message: known
        ? `This concession silences nothing: ${allow.rule} finds nothing here. It would print on the sheet for no reason; take it out.`
        : `No rule is called ${allow.rule}, so this concession silences nothing. Take the name from the finding that it is for.`,
    });
  }
  return collector.findings();
}

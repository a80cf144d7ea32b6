import type { Finding } from '../model/finding.ts';
import type { Procedure, Step } from '../model/procedure.ts';
import type { Allow, Source } from '../model/source.ts';
import type { Replay, Visitor } from '../replay/replay.ts';
import type { Resolved } from '../resolve/resolve.ts';
import { rules } from './index.ts';
import type { Report, Rule } from './rule.ts';
import { wayWords } from './words.ts';

/** All findings of a workspace, and those of each procedure. */
export function findingsOf(resolved: Resolved, replays: ReadonlyMap<Procedure, readonly Replay[]>) {
  const common: Finding[] = [];
  const used = new Set<Allow>();
  for (const rule of rules) {
    const report = collector(rule, common, null, null, new Set(), used);
    rule.workspace?.(resolved, report);
    for (const shop of resolved.shops) rule.shop?.(shop, report);
    for (const family of resolved.families) rule.family?.(family, report);
  }
  const byProcedure = new Map<Procedure, Finding[]>();
  for (const procedure of resolved.procedures) {
    const own = procedureFindings(procedure, replays.get(procedure) ?? [], used);
    const around = common.filter((finding) => touches(finding, procedure));
    byProcedure.set(procedure, [...around, ...own.map((finding) => moved(finding, procedure))]);
  }
  const idle = idleConcessions(resolved, used);
  const all = [...common, ...[...byProcedure.values()].flat().filter((finding) => !common.includes(finding)), ...idle];
  for (const [procedure, findings] of byProcedure) findings.push(...idle.filter((finding) => touches(finding, procedure)));
  return { all, byProcedure };
}

function procedureFindings(procedure: Procedure, replays: readonly Replay[], used: Set<Allow>): Finding[] {
  const found: Finding[] = [];
  const causes = new Set<string>();
  for (const rule of rules) rule.procedure?.(procedure, collector(rule, found, procedure, null, causes, used));
  for (const replay of replays) {
    const visitors = rules.flatMap((rule) => rule.replay?.(replay, collector(rule, found, procedure, replay, causes, used)) ?? []);
    replay.visit(together(visitors));
  }
  return found;
}

function together(visitors: readonly Visitor[]): Visitor {
  return {
    step: (visit) => visitors.forEach((visitor) => visitor.step?.(visit)),
    after: (visit, state) => visitors.forEach((visitor) => visitor.after?.(visit, state)),
    leave: (leaving) => visitors.forEach((visitor) => visitor.leave?.(leaving)),
    end: (ending) => visitors.forEach((visitor) => visitor.end?.(ending)),
  };
}

/** Makes findings of one rule's reports: concessions, one per cause, the way, the place since which. */
function collector(rule: Rule, found: Finding[], procedure: Procedure | null, replay: Replay | null, causes: Set<string>, used: Set<Allow>) {
  return (report: Report) => {
    const step = isStep(report.at) ? report.at : null;
    const source = report.source ?? (isStep(report.at) ? report.at.source : report.at);
    const concessions = [...(report.allow ?? []), ...(step?.allow ?? []), ...blockConcessions(procedure, step), ...(procedure?.allow ?? [])];
    const conceded = concessions.find((allow) => allow.rule === rule.code);
    if (conceded !== undefined) {
      used.add(conceded);
      return;
    }
    const { start } = source.range;
    const place = report.cause ?? `${rule.code}@${source.file}:${start.line}:${start.character}`;
    if (causes.has(place)) return;
    causes.add(place);
    const related = [...(report.related ?? [])];
    const since = report.since === undefined || report.since < 0 ? undefined : replay?.program.points[report.since];
    if (since?.kind === 'step' && since.step !== step) related.push({ message: `It is so since step ${since.step.number}.`, source: since.step.source });
    if (step?.call != null) related.push({ message: `The step stands in sequence ${step.call.name}.`, source: step.call.source });
    const way = report.way === undefined || procedure === null ? '' : wayWords(procedure, report.way);
    const only = replay?.program.numbers == null || procedure === null || replay.program.numbers.length === procedure.numbers.length ? '' : ` Only for ${replay.program.numbers.join(', ')}.`;
    const fix = rule.fix === undefined || report.data === undefined ? null : rule.fix(report.data);
    found.push({
      rule: rule.code,
      severity: rule.severity,
      message: `${report.message}${way === '' ? '' : ` This happens ${way}.`}${only}`,
      source,
      ...(step === null ? {} : { step: step.number }),
      ...(related.length === 0 ? {} : { related }),
      ...(fix === null ? {} : { fix }),
    });
  };
}

function blockConcessions(procedure: Procedure | null, step: Step | null): readonly Allow[] {
  if (procedure === null || step === null) return [];
  return procedure.repairs.find((repair) => repair.steps.includes(step))?.allow ?? [];
}

function isStep(at: Step | Source): at is Step {
  return 'verb' in at;
}

/** Findings of shop and family count for the procedures that use them. */
function touches(finding: Finding, procedure: Procedure): boolean {
  const { file } = finding.source;
  return [procedure.source.file, procedure.family.source.file, procedure.shop.source.file].includes(file);
}

/** A finding in a step taken over from another procedure is told where this one says `like`. */
function moved(finding: Finding, procedure: Procedure): Finding {
  if (procedure.like === null || within(finding.source, procedure.extent) || within(finding.source, procedure.family.source)) return finding;
  const related = [{ message: `The step was taken over from ${procedure.like}.`, source: finding.source }, ...(finding.related ?? [])];
  const { fix: _, ...rest } = finding;
  return { ...rest, message: `${finding.step === undefined ? '' : `Step ${finding.step}, taken over from ${procedure.like}: `}${finding.message}`, source: procedure.likeSource ?? procedure.source, related };
}

function within(source: Source, extent: Source): boolean {
  if (source.file !== extent.file) return false;
  const { start } = source.range;
  return (
    (start.line > extent.range.start.line || (start.line === extent.range.start.line && start.character >= extent.range.start.character)) &&
    start.line <= extent.range.end.line
  );
}

/** Concessions that silence nothing, or name no rule. */
function idleConcessions(resolved: Resolved, used: ReadonlySet<Allow>): Finding[] {
  const rule = rules.find((other) => other.code === 'allow-without-effect')!;
  const found: Finding[] = [];
  const seen = new Set<string>();
  const report = collector(rule, found, null, null, seen, new Set());
  const all = resolved.procedures.flatMap((procedure) => [
    ...procedure.allow,
    ...procedure.specs.flatMap((spec) => spec.allow),
    ...procedure.numbers.flatMap((number) => number.allow),
    ...procedure.repairs.flatMap((repair) => repair.allow),
    ...[...procedure.stages, ...procedure.repairs].flatMap((block) => block.steps.flatMap((step) => step.allow)),
  ]);
  const places = (allow: Allow) => `${allow.source.file}:${allow.source.range.start.line}:${allow.source.range.start.character}`;
  const usedPlaces = new Set([...used].map(places));
  for (const allow of [...all, ...resolved.families.flatMap((family) => family.parts.flatMap((part) => part.allow))]) {
    if (usedPlaces.has(places(allow))) continue;
    const known = rules.some((other) => other.code === allow.rule);
    report({
      at: allow.source,
      message: known
        ? `This concession silences nothing: ${allow.rule} finds nothing here. It would print on the sheet for no reason; take it out.`
        : `No rule is called ${allow.rule}, so this concession silences nothing. Take the name from the finding that it is for.`,
    });
  }
  return found;
}

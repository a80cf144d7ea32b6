import { analyzeFlow, type FlowAnalysis, type Visitor } from '../../language/analysis/flow-analysis.ts';
import { allSteps } from '../../language/analysis/locations.ts';
import { resolve } from '../../language/db/resolve.ts';
import { rules } from '../../language/diagnostics/index.ts';
import type { Report } from '../../language/diagnostics/rule.ts';
import type { Source } from '../../language/model/source.ts';
import { english } from '../../language/say/say.ts';
import { parse } from '../../language/syntax/parse.ts';
import { visitorOf } from '../visitor.ts';
import { allDeviations, type Deviation } from './deviations.ts';
import { covered, interpret } from './interpreter.ts';
import { shopText } from './random.ts';

export interface Comparison {
  /** Found by a concrete run, not by the flow analysis. */
  readonly missed: readonly string[];
  /** Found by the flow analysis, by no concrete run, but by runs in which the tries are not counted. */
  readonly uncounted: readonly string[];
  /** Found by the flow analysis alone. */
  readonly replayOnly: readonly string[];
  readonly found: number;
  readonly steps: number;
  /** Syntax and names: such a text tests nothing about the flow analysis. */
  readonly unread: readonly string[];
  readonly complete: boolean;
}

const shopTree = { uri: 'shop.rebuild', ast: parse(shopText).ast };

/** What the rules say at each step that the flow analysis visits, one `rule step-key` each, causes not put together. */
function replayFindings(flows: readonly FlowAnalysis[]): Set<string> {
  const found = new Set<string>();
  for (const flow of flows) {
    const steps = allSteps(flow.graph.procedure);
    const numberAt = new Map(steps.map((step) => [placeOf(step.source), step.number]));
    const known = rules.filter((rule) => (covered as readonly string[]).includes(rule.code));
    // A rule may remember what it has reported, so that it reports a mistake once: each visit starts afresh.
    const each = (visit: (visitor: Visitor) => void) => {
      for (const rule of known) {
        const checks = rule.flow?.(flow, (report) => {
          for (const key of keysOf(rule.code, report, numberAt)) found.add(key);
        });
        if (checks !== undefined) visit(visitorOf(checks));
      }
    };
    flow.visit({
      step: (at) => each((visitor) => visitor.step?.(at)),
      leave: (leaving) => each((visitor) => visitor.leave?.(leaving)),
      end: (ending) => each((visitor) => visitor.end?.(ending)),
    });
  }
  return found;
}

function keysOf(rule: string, report: Report, numberAt: ReadonlyMap<string, string>): string[] {
  // Which step made a gate stale is kept beside the state and not merged: a stale gate is known by its own step.
  if (rule === 'gate-stale')
    return (report.related ?? []).map(({ source }) => `${rule} ${numberAt.get(placeOf(source))}`);
  return [`${rule} ${'verb' in report.at ? report.at.key : 'procedure'}`];
}

function placeOf({ range }: Source): string {
  return `${range.start.line}:${range.start.character}`;
}

export function compare(text: string, departures: ReadonlySet<Deviation> = allDeviations): Comparison {
  // As checkFiles does it, without the rules: most of them the oracle does not know, and they take the longest.
  const parsed = parse(text);
  const resolved = resolve([shopTree, { uri: 'random.rebuild', ast: parsed.ast }]);
  const unread = [
    ...parsed.problems.map(({ message }) => english(message)),
    ...resolved.problems.map(({ kind, source }) => `${kind} in line ${source.range.start.line + 1}`),
  ];
  const [procedure] = resolved.procedures;
  const blocks = procedure === undefined ? [] : [...procedure.stages, ...procedure.repairs];
  if (
    unread.length > 0 ||
    procedure === undefined ||
    blocks.some(({ steps }) => steps.length === 0) ||
    procedure.stages.length === 0
  )
    return {
      missed: [],
      uncounted: [],
      replayOnly: [],
      found: 0,
      steps: 0,
      unread: [...unread, 'no whole procedure'],
      complete: true,
    };
  const oracle = interpret(procedure, { deviations: departures, counts: true });
  const found = replayFindings(analyzeFlow(procedure));
  const more = oracle.complete ? [...found].filter((diagnostic) => !oracle.diagnostics.has(diagnostic)) : [];
  const loose = more.length === 0 ? null : interpret(procedure, { deviations: departures, counts: false });
  const explained = (diagnostic: string) => loose!.diagnostics.has(diagnostic) || !loose!.complete;
  return {
    missed: oracle.complete ? [...oracle.diagnostics].filter((diagnostic) => !found.has(diagnostic)) : [],
    uncounted: more.filter(explained),
    replayOnly: more.filter((diagnostic) => !explained(diagnostic)),
    found: oracle.diagnostics.size,
    steps: oracle.steps,
    unread,
    complete: oracle.complete,
  };
}

export type Side = 'missed' | 'uncounted' | 'replayOnly';

/** The smallest text, by taking out lines, pieces of lists and of clauses, in which the same rule differs the same way. */
export function shrink(
  text: string,
  rule: string,
  side: Side,
  departures: ReadonlySet<Deviation> = allDeviations,
): string {
  const holds = (candidate: string) => {
    const result = compare(candidate, departures);
    return result.unread.length === 0 && result[side].some((diagnostic) => diagnostic.startsWith(`${rule} `));
  };
  let best = text.split('\n');
  for (let again = true; again; ) {
    again = false;
    for (const candidate of smaller(best)) {
      if (!holds(candidate.join('\n'))) continue;
      best = candidate;
      again = true;
      break;
    }
  }
  return best.join('\n');
}

/** Texts with a block, a line or a piece of a line less. */
function* smaller(lines: readonly string[]): Generator<string[]> {
  for (let first = 0; first < lines.length; first++) {
    if (!/^\s*(stage|repair|family|procedure) .*\{$/u.test(lines[first]!)) continue;
    const indent = /^\s*/u.exec(lines[first]!)![0];
    const last = lines.findIndex((line, index) => index > first && line === `${indent}}`);
    yield lines.filter((_, index) => index < first || index > last);
  }
  for (let at = lines.length - 1; at >= 0; at--) yield lines.filter((_, index) => index !== at);
  for (let at = lines.length - 1; at >= 0; at--) {
    const line = lines[at]!;
    const instead = (text: string) => lines.map((other, index) => (index === at ? text : other));
    for (const match of line.matchAll(
      /, [\w-]+(?: \(\w+(?: times)?\))?| on fail .*$| \(\w+(?: times)?\)| with \w+| stop if fails| proves through \w+| guarded by \w+| renewed| bears on \w+| held by ".*"/gu,
    ))
      yield instead(line.slice(0, match.index) + line.slice(match.index + match[0].length));
    const first = /^(\s*[\w-]+(?: \w+)? )[\w.-]+(?: located)?, /u.exec(line);
    if (first !== null) yield instead(first[1]! + line.slice(first[0].length));
    const entry = / on fail [\w-]+(?: \(\w+(?: times)?\))?, /u.exec(line);
    if (entry !== null)
      yield instead(`${line.slice(0, entry.index)} on fail ${line.slice(entry.index + entry[0].length)}`);
  }
}

import type { FlowAnalysis } from '../analysis/flow-analysis.ts';
import { pathWords } from '../analysis/prose.ts';
import { within } from '../analysis/within.ts';
import { writtenAt } from '../analysis/written-at.ts';
import { type Diagnostic, fullMessage, stated } from '../model/diagnostic.ts';
import type { Block, Procedure, Step } from '../model/procedure.ts';
import type { Allow, Source } from '../model/source.ts';
import { english, joined, say } from '../say/say.ts';
import { Consequences, type LostStatement } from './consequences.ts';
import { attempt } from './not-checked.ts';
import type { AnyRule, Report } from './rule.ts';

interface Entry extends Reported {
  /** Part numbers that it was found for; null if it was not found by the flow analysis. */
  readonly numbers: Set<string> | null;
}

/** What a rule reported, where, and the flow analysis in which it did. */
interface Reported {
  readonly rule: AnyRule;
  readonly flow: FlowAnalysis | null;
  readonly report: Report;
  readonly step: Step | null;
  readonly source: Source;
}

/** What decides besides what a rule is shown whether it is heard. */
export interface Surroundings {
  /** Every concession in the file, or declaration, of a source. */
  readonly concessionsIn: (file: string) => readonly Allow[];
  /** Places where something could not be read. */
  readonly unread: readonly Source[];
  /** Statements with a part that is lost: nothing that may follow from one is reported beside it. */
  readonly lost?: readonly LostStatement[] | undefined;
}

/** The sink of reports: applies concessions, keeps one finding per cause, and adds the path and the place of origin. */
export class DiagnosticSink {
  /** By cause; null if it was conceded, so that the next place with the same cause is not reported either. */
  private readonly kept = new Map<string, Entry | null>();
  /** By message, place and origin in the source text: a sequence is written once, however often it is called. */
  private readonly slips = new Map<string, Entry | null>();
  private readonly procedure: Procedure | null;
  private readonly surroundings: Surroundings;
  private readonly consequences: Consequences;
  private readonly used: Set<Allow>;

  /** @param used gathers the concessions that silenced something */
  constructor(procedure: Procedure | null, surroundings: Surroundings, used: Set<Allow>) {
    this.procedure = procedure;
    this.surroundings = surroundings;
    this.consequences = new Consequences(procedure, surroundings.lost ?? []);
    this.used = used;
  }

  /** The sink that a rule reports to, from a flow analysis or from plain data. */
  reporter(rule: AnyRule, flow: FlowAnalysis | null = null): (report: Report) => void {
    return (report) => this.take(rule, flow, report);
  }

  /** What was reported, in words. @param defects gathers the rules whose fix throws */
  diagnostics(defects: Diagnostic[]): Diagnostic[] {
    return [...this.kept.values()].flatMap((one) => {
      if (one === null) return [];
      const { numbers, rule, source } = one;
      const diagnostic = attempt(say`the rule ${rule.code}`, this.procedure?.source ?? source, defects, () =>
        this.made(one),
      );
      if (diagnostic === null) return [];
      const only =
        numbers === null || numbers.size === 0 || numbers.size === this.procedure?.numbers.length
          ? undefined
          : say`Only for ${[...numbers].join(', ')}.`;
      const { said } = diagnostic;
      if (only === undefined || said === undefined) return [diagnostic];
      return [
        { ...diagnostic, ...stated({ ...said, when: said.when === undefined ? only : joined([said.when, only]) }) },
      ];
    });
  }

  private take(rule: AnyRule, flow: FlowAnalysis | null, report: Report) {
    const step = isStep(report.at) ? report.at : null;
    const source = report.source ?? (isStep(report.at) ? report.at.source : report.at);
    const { start } = source.range;
    const cause = report.rootCause ?? `${rule.code}@${source.file}:${start.line}:${start.character}`;
    if ((rule.ofAbsence ?? report.ofAbsence) === true && this.isUnread(step, source)) return;
    if (this.consequences.mayFollow(report, flow !== null)) return;
    const conceded = this.concessions(report, step, source).find((allow) => allow.rule === rule.code);
    if (conceded !== undefined) this.used.add(conceded);
    const slip = this.slipOf(rule, flow, report, source);
    const known = this.kept.has(cause) ? this.kept.get(cause) : this.slips.get(slip);
    for (const number of flow?.graph.numbers ?? []) known?.numbers?.add(number);
    if (known !== undefined) return;
    const numbers = flow === null ? null : new Set(flow.graph.numbers ?? []);
    const kept = conceded === undefined ? { rule, flow, report, step, source, numbers } : null;
    this.kept.set(cause, kept);
    this.slips.set(slip, kept);
  }

  private slipOf(rule: AnyRule, flow: FlowAnalysis | null, report: Report, source: Source): string {
    const { at, since } = report;
    const { start } = source.range;
    const place = isStep(at) && at.call !== null ? writtenAt(at) : `${source.file}:${start.line}:${start.character}`;
    const from = since === undefined || since < 0 ? undefined : flow?.graph.nodes[since];
    return `${rule.code}@${place}|${from?.kind === 'step' ? writtenAt(from.step) : ''}|${fullMessage(stated(report))}`;
  }

  /** Part of the step, or of the line, could not be parsed. */
  private isUnread(step: Step | null, source: Source): boolean {
    return this.surroundings.unread.some((at) =>
      step === null
        ? at.file === source.file && at.range.start.line === source.range.start.line
        : within(at, step.source) || isBehind(at, step.source),
    );
  }

  private blocks: ReadonlyMap<Step, Block> | null = null;

  private blockOf(step: Step): Block | undefined {
    const all = this.procedure === null ? [] : [...this.procedure.stages, ...this.procedure.repairs];
    this.blocks ??= new Map(all.flatMap((block) => block.steps.map((one) => [one, block] as const)));
    return this.blocks.get(step);
  }

  /**
   * Concessions on the statement of the finding, or around it; and those of the step, its block and its procedure,
   * which may be in another file (a sequence, `like`).
   */
  private concessions(report: Report, step: Step | null, source: Source): readonly Allow[] {
    const { procedure } = this;
    const block = step === null ? undefined : this.blockOf(step);
    return [
      ...this.surroundings.concessionsIn(source.file).filter((allow) => within(source, allow.extent)),
      ...(report.allow ?? []),
      ...(step?.allow ?? []),
      ...(block?.allow ?? []),
      ...(procedure?.allow ?? []),
    ];
  }

  private made({ rule, flow, report, step, source }: Reported): Diagnostic {
    const related = [...(report.related ?? [])];
    const since = report.since === undefined || report.since < 0 ? undefined : flow?.graph.nodes[report.since];
    if (since?.kind === 'step' && since.step !== step)
      related.push({ message: say`Since step ${since.step.number}.`, source: since.step.source });
    if (step?.call != null)
      related.push({ message: say`The step is part of sequence ${step.call.name}.`, source: step.call.source });
    const path = report.path === undefined || this.procedure === null ? null : pathWords(this.procedure, report.path);
    const { message, why, help } = report;
    const fix = rule.fix === undefined || report.data === undefined ? null : rule.fix(report.data);
    return {
      rule: rule.code,
      severity: rule.severity,
      ...stated({ message, why, help, when: path === null ? undefined : say`This happens ${path}.` }),
      source,
      ...(step === null ? {} : { step: step.number }),
      ...(related.length === 0
        ? {}
        : { related: related.map((place) => ({ ...place, message: english(place.message), said: place.message })) }),
      ...(fix === null ? {} : { fix: { ...fix, title: english(fix.title), said: fix.title } }),
    };
  }
}

function isStep(at: Step | Source): at is Step {
  return 'verb' in at;
}

/** On the line where something ends, behind it: a blank that was left out at the end of a step. */
function isBehind(at: Source, { file, range }: Source): boolean {
  const { line, character } = at.range.start;
  return at.file === file && line === range.end.line && character >= range.end.character;
}

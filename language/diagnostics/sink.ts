import type { Replay } from '../analysis/flow-analysis.ts';
import { wayWords } from '../analysis/prose.ts';
import { within } from '../analysis/within.ts';
import { writtenAt } from '../analysis/written-at.ts';
import { type Finding, fullMessage } from '../model/diagnostic.ts';
import type { Procedure, Step } from '../model/procedure.ts';
import type { Allow, Source } from '../model/source.ts';
import type { AnyRule, Report } from './rule.ts';

interface Kept {
  readonly finding: Finding;
  /** Part numbers that it was found for; null if it was not found by the flow analysis. */
  readonly numbers: Set<string> | null;
}

/** The sink of reports: applies concessions, keeps one finding per cause, and adds the path and the place of origin. */
export class Collector {
  /** By cause; null if it was conceded, so that the next place with the same cause is not reported either. */
  private readonly kept = new Map<string, Kept | null>();
  /** By message, place and origin in the source text: a sequence is written once, however often it is called. */
  private readonly slips = new Map<string, Kept | null>();
  private readonly procedure: Procedure | null;
  private readonly all: readonly Allow[];
  private readonly used: Set<Allow>;
  private readonly unread: readonly Source[];

  /**
   * `all`: every concession of the workspace. `used` collects those that silenced something. `unread`: places where
   * something could not be parsed.
   */
  constructor(procedure: Procedure | null, all: readonly Allow[], used: Set<Allow>, unread: readonly Source[] = []) {
    this.unread = unread;
    this.procedure = procedure;
    this.all = all;
    this.used = used;
  }

  /** The sink that a rule reports to, from a replay or from plain data. */
  reporter(rule: AnyRule, replay: Replay | null = null): (report: Report) => void {
    return (report) => this.take(rule, replay, report);
  }

  findings(): Finding[] {
    return [...this.kept.values()].flatMap((one) => {
      if (one === null) return [];
      const { finding, numbers } = one;
      const only =
        numbers === null || numbers.size === 0 || numbers.size === this.procedure?.numbers.length
          ? []
          : [`Only for ${[...numbers].join(', ')}.`];
      const when = [...(finding.when === undefined ? [] : [finding.when]), ...only].join(' ');
      return [when === '' ? finding : { ...finding, when }];
    });
  }

  private take(rule: AnyRule, replay: Replay | null, report: Report) {
    const step = isStep(report.at) ? report.at : null;
    const source = report.source ?? (isStep(report.at) ? report.at.source : report.at);
    const { start } = source.range;
    const cause = report.cause ?? `${rule.code}@${source.file}:${start.line}:${start.character}`;
    if ((rule.ofAbsence ?? report.ofAbsence) === true && this.isUnread(step, source)) return;
    const conceded = this.concessions(report, step, source).find((allow) => allow.rule === rule.code);
    if (conceded !== undefined) this.used.add(conceded);
    const slip = this.slipOf(rule, replay, report, source);
    const known = this.kept.has(cause) ? this.kept.get(cause) : this.slips.get(slip);
    for (const number of replay?.program.numbers ?? []) known?.numbers?.add(number);
    if (known !== undefined) return;
    const kept =
      conceded === undefined
        ? {
            finding: this.made(rule, replay, report, step, source),
            numbers: replay === null ? null : new Set(replay.program.numbers ?? []),
          }
        : null;
    this.kept.set(cause, kept);
    this.slips.set(slip, kept);
  }

  private slipOf(rule: AnyRule, replay: Replay | null, report: Report, source: Source): string {
    const { at, since } = report;
    const { start } = source.range;
    const place = isStep(at) && at.call !== null ? writtenAt(at) : `${source.file}:${start.line}:${start.character}`;
    const from = since === undefined || since < 0 ? undefined : replay?.program.points[since];
    return `${rule.code}@${place}|${from?.kind === 'step' ? writtenAt(from.step) : ''}|${fullMessage(report)}`;
  }

  /** Part of the step, or of the line, could not be parsed. */
  private isUnread(step: Step | null, source: Source): boolean {
    return this.unread.some((at) =>
      step === null
        ? at.file === source.file && at.range.start.line === source.range.start.line
        : within(at, step.source),
    );
  }

  /**
   * Concessions on the statement of the finding, or around it; and those of the step, its block and its procedure,
   * which may be in another file (a sequence, `like`).
   */
  private concessions(report: Report, step: Step | null, source: Source): readonly Allow[] {
    const { procedure } = this;
    const blocks = procedure === null ? [] : [...procedure.stages, ...procedure.repairs];
    const block = step === null ? undefined : blocks.find((other) => other.steps.includes(step));
    return [
      ...this.all.filter((allow) => within(source, allow.extent)),
      ...(report.allow ?? []),
      ...(step?.allow ?? []),
      ...(block?.allow ?? []),
      ...(procedure?.allow ?? []),
    ];
  }

  private made(rule: AnyRule, replay: Replay | null, report: Report, step: Step | null, source: Source): Finding {
    const related = [...(report.related ?? [])];
    const since = report.since === undefined || report.since < 0 ? undefined : replay?.program.points[report.since];
    if (since?.kind === 'step' && since.step !== step)
      related.push({ message: `Since step ${since.step.number}.`, source: since.step.source });
    if (step?.call != null)
      related.push({ message: `The step is part of sequence ${step.call.name}.`, source: step.call.source });
    const way = report.way === undefined || this.procedure === null ? '' : wayWords(this.procedure, report.way);
    const fix = rule.fix === undefined || report.data === undefined ? null : rule.fix(report.data);
    return {
      rule: rule.code,
      severity: rule.severity,
      message: report.message,
      ...(report.why === undefined ? {} : { why: report.why }),
      ...(report.help === undefined ? {} : { help: report.help }),
      ...(way === '' ? {} : { when: `This happens ${way}.` }),
      source,
      ...(step === null ? {} : { step: step.number }),
      ...(related.length === 0 ? {} : { related }),
      ...(fix === null ? {} : { fix }),
    };
  }
}

function isStep(at: Step | Source): at is Step {
  return 'verb' in at;
}

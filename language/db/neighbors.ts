import equal from 'fast-deep-equal';
import { ProcedureMemory, type ProcedureResult, procedureFindings } from '../diagnostics/engine.ts';
import { isNotChecked } from '../diagnostics/not-checked.ts';
import type { Surroundings } from '../diagnostics/sink.ts';
import type { Procedure } from '../model/procedure.ts';
import { type Allow, type Source, sameSource } from '../model/source.ts';
import { isSource, renamed, replaced, sharing } from './sharing.ts';

/** The procedure that was checked last, under the id that it was checked as, and what its findings depend on. */
interface Checked {
  readonly as: string;
  readonly procedure: Procedure;
  readonly unread: Surroundings['unread'];
  readonly lost: Surroundings['lost'];
  /** Concessions that were looked at, by the file of a source. */
  readonly concessions: ReadonlyMap<string, readonly Allow[]>;
  readonly result: ProcedureResult;
}

/**
 * Findings of procedures one after the other. Those of one family are much alike: each is checked as if it were an edit of the one
 * before it, under the id of that one and with its objects where they are the same, so that it costs what is other in it. The result
 * is what it would be by itself.
 */
export class Neighbors {
  private readonly memory = new ProcedureMemory();
  private readonly check: typeof procedureFindings;
  private last: Checked | null = null;

  constructor(check = procedureFindings) {
    this.check = check;
  }

  /** @param id of the procedure, which its sources have as their file */
  findings(id: string, given: Procedure, surroundings: Surroundings): ProcedureResult {
    const { last } = this;
    const isNear = last !== null && last.procedure.family === given.family && last.procedure.shop === given.shop;
    // One that has steps of the other has its id in them: it keeps its own.
    const as = isNear && !given.files.includes(last.as) ? last.as : id;
    // An edit of the same one has its objects already, from its lowering.
    const procedure = isNear && last.as !== id ? sharing(last.procedure, given, id, as) : given;
    const unread = renamed(surroundings.unread, id, as);
    const concessionsIn = (file: string) => renamed(surroundings.concessionsIn(file === as ? id : file), id, as);
    const { lost } = surroundings;
    if (isNear && as === last.as && equal(lost, last.lost) && saysTheSame(last, procedure, unread, concessionsIn)) {
      const result = atName(last.result, last.procedure.source, procedure.source);
      this.last = { ...last, procedure, result };
      return renamed(result, as, id);
    }
    const concessions = new Map<string, readonly Allow[]>();
    const noted = (file: string) => {
      const found = concessions.get(file) ?? concessionsIn(file);
      concessions.set(file, found);
      return found;
    };
    const result = this.check(procedure, { unread, lost, concessionsIn: noted }, undefined, this.memory);
    this.last = { as, procedure, unread, lost, concessions, result };
    return renamed(result, as, id);
  }
}

/** What is reported at the name of a procedure, at that of another. */
function atName(result: ProcedureResult, before: Source, now: Source): ProcedureResult {
  return before === now ? result : replaced(result, (one) => (isSource(one) && sameSource(one, before) ? now : one));
}

const head: ReadonlySet<keyof Procedure> = new Set(['name', 'title', 'source']);

/** Whether all that rules can read is the same: what a procedure is called, and where that is written, is shown and not read. */
function saysTheSame(
  { procedure: before, unread: unreadBefore, concessions, result }: Checked,
  procedure: Procedure,
  unread: Surroundings['unread'],
  concessionsIn: Surroundings['concessionsIn'],
): boolean {
  const keys = Object.keys(procedure) as (keyof Procedure)[];
  return (
    keys.length === Object.keys(before).length &&
    keys.every((key) => head.has(key) || procedure[key] === before[key]) &&
    // What is not checked names the procedure.
    !result.diagnostics.some(isNotChecked) &&
    equal(unread, unreadBefore) &&
    // All are looked at: that they are read is recorded.
    [...concessions].filter(([file, found]) => !equal(concessionsIn(file), found)).length === 0
  );
}

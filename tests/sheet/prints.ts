/** What the tests print: every procedure and job of the library, on both papers. */
import { type CheckResult, checkFiles } from '../../language/db/workspace.ts';
import type { Paper, Sheet, SheetForm } from '../../language/documents/model.ts';
import type { SheetOptions } from '../../language/documents/print-context.ts';
import { buildSheet } from '../../language/documents/traveler/index.ts';
import type { Job, Procedure } from '../../language/model/index.ts';
import { libraryFiles } from '../library.ts';

/** A sheet with all that it was made from. */
export interface Print {
  readonly name: string;
  readonly procedure: Procedure;
  readonly options: SheetOptions;
  readonly sheet: Sheet;
}

export const papers: readonly Paper[] = ['a4', 'letter'];

/** A hash like that of a real print: the foot shows its beginning. */
const hash = '0f1e2d3c4b5a69788796a5b4c3d2e1f00112233445566778899aabbccddeeff0';

interface PrintedAs {
  readonly job?: Job | null;
  readonly paper?: Paper;
  readonly number?: string | null;
  readonly form?: SheetForm;
}

/** A print of a procedure as the program would make it: its findings go with it. */
export function printOf(
  { procedures }: CheckResult,
  procedure: Procedure,
  { job = null, paper = 'a4', number = null, form = 'card' }: PrintedAs = {},
): Print {
  const diagnostics = procedures.find((one) => one.procedure.name === procedure.name)?.diagnostics ?? [];
  const options: SheetOptions = { job, number, paper, form, draft: false, diagnostics, hash };
  const name = [
    procedure.name,
    job === null ? '' : `job ${job.name}`,
    number ?? '',
    form === 'card' ? '' : form,
    paper,
  ].filter((word) => word !== '');
  return { name: name.join(', '), procedure, options, sheet: buildSheet(procedure, options) };
}

/** Every procedure, blank, and every job. The flawed one is among them: it prints as a draft. */
export function libraryPrints(paper: Paper, form: SheetForm = 'card'): Print[] {
  const checked = checkFiles(libraryFiles(true));
  return [
    ...checked.procedures.map(({ procedure }) => printOf(checked, procedure, { paper, form })),
    ...checked.jobs.map((job) => printOf(checked, job.procedure, { job, paper, form })),
  ];
}

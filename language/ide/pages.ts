/** What is shown beside the text in an editor, and what is printed from it: sheets and specifications. */
import { printedAs } from '../config/config.ts';
import { isDraft, sheetSettings } from '../db/issued/draft.ts';
import type { CheckResult } from '../db/workspace.ts';
import { type FontFace, renderDrawingsHtml, renderHtml, renderSpecsHtml } from '../documents/renderers/index.ts';
import { buildSpecs, missingCount } from '../documents/specs/index.ts';
import { familyDrawing } from '../documents/traveler/drawings.ts';
import { buildSheet, type Paper, type Sheet, type SheetForm } from '../documents/traveler/index.ts';
import { wordsIn } from '../i18n/index.ts';
import type { Reader } from '../i18n/translate.ts';
import { type DrawnTarget, type PrintTarget, titleOf } from './print-target.ts';

/** A page as a whole HTML document. Lines are zero-based. */
export interface Page {
  readonly html: string;
  readonly title: string;
  /** Lines of the declaration that the page is of; another place in it needs no other page. */
  readonly lines: { readonly first: number; readonly last: number };
}

export interface SheetPage extends Page {
  readonly form: SheetForm;
  readonly errors: number;
  readonly warnings: number;
}

export interface SpecsPage extends Page {
  /** How many things are missing, such as a source or a step that uses a figure. */
  readonly missing: number;
}

export interface PrintedAsked {
  /** Hash of `printedContent`, hex. */
  readonly hash: string;
  readonly draft: boolean;
  /** The size from the settings where none is given. */
  readonly paper?: Paper | undefined;
  /** The one from the settings where none is given. */
  readonly form?: SheetForm | undefined;
}

/** The sheet of a target as it is printed in its workspace. */
export function sheetFor(target: PrintTarget, result: CheckResult, { hash, draft, paper, form }: PrintedAsked): Sheet {
  const { procedure, job, diagnostics } = target;
  return buildSheet(procedure, {
    job,
    number: null,
    ...printedAs(sheetSettings(job, result), { paper, form }),
    draft: draft || isDraft(target, result),
    diagnostics,
    hash,
  });
}

/** The sheet as it would be printed now, errors or not: with errors it has the draft's mark. */
export function sheetPage(
  target: PrintTarget,
  result: CheckResult,
  {
    hash,
    fonts,
    form,
  }: { readonly hash: string; readonly fonts: readonly FontFace[]; readonly form?: SheetForm | undefined },
): SheetPage {
  return {
    // The view has a policy of its own, and this page is shown inside it.
    html: renderHtml(sheetFor(target, result, { hash, draft: false, form }), { fonts, policy: null }),
    ...aboutPage(target),
    form: printedAs(result.sheet, { form }).form,
    errors: countOf(target, 'error'),
    warnings: countOf(target, 'warning'),
  };
}

/** A sheet as a document of its own, for a browser to print. */
export function printedPage(sheet: Sheet, fonts: readonly FontFace[]): string {
  return renderHtml(sheet, { fonts });
}

/** The specifications of a procedure; a job has those of its procedure. */
export function specsPage(target: PrintTarget, fonts: readonly FontFace[], { language }: Reader): SpecsPage {
  const specs = buildSpecs(target.procedure, language);
  return {
    html: renderSpecsHtml(specs, { fonts, policy: null, language }),
    ...aboutPage(target),
    missing: missingCount(specs),
  };
}

/** The unit taken apart: of a family by itself; of a procedure with what that adds at its parts, and stage by stage. */
export function drawingPage(
  target: DrawnTarget,
  result: CheckResult,
  fonts: readonly FontFace[],
  { language }: Reader,
): Page {
  const title = titleOf(target);
  const blocks =
    'family' in target
      ? familyDrawing(target.family, wordsIn(language))
      : buildSheet(target.procedure, {
          ...printedAs(result.sheet, {}),
          job: null,
          number: null,
          part: 'drawing',
          draft: false,
          diagnostics: [],
          hash: '',
        }).blocks.filter((block) => block.kind === 'drawing' || block.kind === 'text');
  return { html: renderDrawingsHtml({ title, blocks }, { fonts, policy: null }), ...aboutPage(target) };
}

/** Findings of a target that are as grave. */
export function countOf({ diagnostics }: PrintTarget, severity: 'error' | 'warning'): number {
  return diagnostics.filter((diagnostic) => diagnostic.severity === severity).length;
}

function aboutPage(target: DrawnTarget): Pick<Page, 'title' | 'lines'> {
  const { start, end } = target.symbol.range;
  return { title: titleOf(target), lines: { first: start.line, last: end.line } };
}

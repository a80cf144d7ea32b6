/**
 * The requests and notifications that the protocol does not have. What comes in passes a schema at the door;
 * what goes out is typed here, for the client to share.
 */
import { z } from 'zod';

const position = z.strictObject({ line: z.int().min(0), character: z.int().min(0) });
const documentUri = z.string().min(1).max(4096);

/** The target of a sheet, or of the specifications: the procedure or job of `uri` that holds `position`; without one, the first. */
export const sheetQuestion = z.strictObject({ uri: documentUri, position: position.optional() });
export type SheetQuestion = z.infer<typeof sheetQuestion>;

/** Paper that sheets are laid out for. */
const paperSizes = ['a4', 'letter'] as const;

/** What is asked to print; `folder` is a file URI. A `draft` prints in spite of errors, with a watermark. */
export const printQuestion = z.strictObject({
  uri: documentUri,
  position: position.optional(),
  folder: documentUri,
  /** Without one as the settings file says, else A4. */
  paper: z.enum(paperSizes).optional(),
  draft: z.boolean().default(false),
});
export type PrintQuestion = z.input<typeof printQuestion>;

const name = z.string().max(400);

/** What the code on a sheet says: the procedure's name, the job's or nothing, the first digits of the hash. */
export const originQuestion = z.strictObject({ procedure: name, job: name, hash: z.string().max(64) });
export type OriginQuestion = z.infer<typeof originQuestion>;

/**
 * Options of `initialize`. `rulePages` is the URI of the folder that holds the pages of the rules, `explainCommand` a command
 * of the client that shows the page of the rule that it is given.
 */
export const initializationOptions = z
  .object({ rulePages: documentUri.optional(), explainCommand: z.string().max(200).optional() })
  .default({});

/** Settings under `handtight` that the server asks for. Others are the client's own. */
export const settings = z.object({
  problems: z.object({ scope: z.enum(['workspace', 'open']).default('workspace') }).default({ scope: 'workspace' }),
  hints: z.object({ shims: z.boolean().default(true) }).default({ shims: true }),
});

/** A page that is beside the editor, as a whole HTML document. Lines are zero-based. */
interface Page {
  readonly html: string;
  readonly title: string;
  /** The document, as `data-source-file` in the page spells it. */
  readonly file: string;
  /** Lines of the declaration that the page is of; another place in it needs no other page. */
  readonly lines: { readonly first: number; readonly last: number };
}

/** A sheet, or why there is none. */
export type SheetAnswer =
  | (Page & { readonly kind: 'sheet'; readonly errors: number; readonly warnings: number })
  | { readonly kind: 'none'; readonly reason: string };

/** The specifications of a procedure, or why there are none. */
export type SpecsAnswer =
  | (Page & { readonly kind: 'specs'; readonly missing: number })
  | { readonly kind: 'none'; readonly reason: string };

/** The file that was printed, or why it was not. */
export type PrintAnswer =
  | { readonly kind: 'printed'; readonly file: string; readonly draft: boolean; readonly notes: readonly string[] }
  | { readonly kind: 'errors'; readonly title: string; readonly errors: number }
  | { readonly kind: 'none'; readonly reason: string };

/** The place of the procedure or the job of a printed sheet, and whether its text is still what was printed. */
export type OriginAnswer =
  | {
      readonly kind: 'found';
      readonly uri: string;
      readonly position: z.infer<typeof position>;
      readonly same: boolean;
    }
  | { readonly kind: 'none'; readonly reason: string };

/** Findings over all files of the workspace, after a check. */
export interface CheckedNotification {
  readonly files: number;
  readonly errors: number;
  readonly warnings: number;
}

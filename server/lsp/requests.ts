/**
 * The requests and notifications that the protocol does not have. What comes in passes a schema at the door;
 * what goes out is typed here, for the client to share.
 */
import * as z from 'zod';
import type { FamilyChoice } from '../../language/ide/first-procedure.ts';
import type { Page, SheetPage, SpecsPage } from '../../language/ide/pages.ts';
import type { StateView } from '../../language/ide/state-view.ts';

const position = z.strictObject({ line: z.int().min(0), character: z.int().min(0) });
const documentUri = z.string().min(1).max(4096);

/** Parameters for what is shown of a place: the procedure, job or family of `uri` that holds `position`; without one, the first. */
export const placeParams = z.strictObject({ uri: documentUri, position: position.optional() });
export type PlaceParams = z.infer<typeof placeParams>;

const sheetForms = ['card', 'record', 'instruction'] as const satisfies readonly SheetPage['form'][];

/** Parameters for a sheet; without a form, as the settings file says, else the card. */
export const sheetParams = placeParams.extend({ form: z.enum(sheetForms).optional() });
export type SheetParams = z.infer<typeof sheetParams>;

/** Paper that sheets are laid out for. */
const paperSizes = ['a4', 'letter'] as const;

/** Parameters for a print; `folder` is where a PDF goes. A `draft` prints in spite of errors, with a watermark. */
export const printParams = z.strictObject({
  uri: documentUri,
  position: position.optional(),
  folder: documentUri,
  /** Without one as the settings file says, else A4. */
  paper: z.enum(paperSizes).optional(),
  form: z.enum(sheetForms).optional(),
  draft: z.boolean().default(false),
});
export type PrintParams = z.input<typeof printParams>;

const name = z.string().max(400);

/** What the code on a sheet says: the procedure's name, the job's or nothing, the first digits of the hash. */
export const printLinkParams = z.strictObject({ procedure: name, job: name, hash: z.string().max(64) });
export type PrintLinkParams = z.infer<typeof printLinkParams>;

/** Files of the library that comes with the extension, which the client can read. */
const samples = z.array(z.strictObject({ uri: name, text: z.string().max(1_000_000) })).max(200);

/** Parameters for the families that a procedure can begin from, in the workspace of `uri`. */
export const familyChoicesParams = z.strictObject({ uri: documentUri, samples });
export type FamilyChoicesParams = z.infer<typeof familyChoicesParams>;

/** Parameters for a first procedure; `reads` has the kind of each test that gives a figure. */
export const firstProcedureParams = familyChoicesParams.extend({
  family: name,
  name,
  title: z.string().max(1000),
  reads: z.record(name, name),
  /** A family of its own, instead of one that there is. */
  own: z.strictObject({ title: name, parts: z.array(name).min(2).max(200), tests: z.array(name).max(100) }).optional(),
});
export type FirstProcedureParams = z.infer<typeof firstProcedureParams>;

/** Families, those of the workspace first. */
export interface FamilyChoicesResult {
  readonly families: readonly FamilyChoice[];
}

/** The text, with `…` for each blank; null: there is no family of that name. */
export interface FirstProcedureResult {
  readonly text: string | null;
}

/**
 * Options of `initialize`. `rulePages` is the URI of the folder that holds the pages of the rules, `explainCommand` a command
 * of the client that shows the page of the rule that it is given. `printCommand` prints from a place, `usesCommand` shows
 * a list of places: without them there are no lenses for it.
 */
export const initializationOptions = z
  .object({
    rulePages: documentUri.optional(),
    explainCommand: z.string().max(200).optional(),
    printCommand: z.string().max(200).optional(),
    usesCommand: z.string().max(200).optional(),
  })
  .default({});

/** A switch for each kind of hint in the text. */
const hintSwitches = z.object({
  shims: z.boolean().default(true),
  steps: z.boolean().default(false),
  limits: z.boolean().default(false),
});

/** Settings under `handtight` that the server asks for. Others are the client's own. */
export const settings = z.object({
  problems: z.object({ scope: z.enum(['workspace', 'open']).default('workspace') }).default({ scope: 'workspace' }),
  hints: hintSwitches.default(hintSwitches.parse({})),
  /** Of what is said; anything else: that of the editor. */
  language: z.string().default('auto'),
});

export type Settings = z.infer<typeof settings>;
export type InitializationOptions = z.infer<typeof initializationOptions>;

interface OfDocument {
  /** The document, as `data-source-file` in the page spells it. */
  readonly file: string;
}

/** A sheet, or why there is none. */
export type SheetResult =
  | (SheetPage & OfDocument & { readonly kind: 'sheet' })
  | { readonly kind: 'none'; readonly reason: string };

/** The specifications of a procedure, or why there are none. */
export type SpecsResult =
  | (SpecsPage & OfDocument & { readonly kind: 'specs' })
  | { readonly kind: 'none'; readonly reason: string };

/** The drawing of a family or of a procedure, or why there is none. */
export type DrawingResult =
  | (Page & OfDocument & { readonly kind: 'drawing' })
  | { readonly kind: 'none'; readonly reason: string };

/** The state of the unit, or why none is known. The URIs of its sources are the client’s. */
export type StateResult = StateView;

/**
 * The file that was printed, or why it was not. Where no PDF can be made there, it is the same sheet as an HTML document that is
 * whole in itself, with a name for its file.
 */
export type PrintResult =
  | { readonly kind: 'printed'; readonly file: string; readonly draft: boolean; readonly notes: readonly string[] }
  | { readonly kind: 'page'; readonly name: string; readonly html: string }
  | { readonly kind: 'errors'; readonly title: string; readonly errors: number }
  | { readonly kind: 'none'; readonly reason: string };

/** Where the procedure or the job of a printed sheet is, and whether its text is still what was printed. */
export type PrintLinkResult =
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

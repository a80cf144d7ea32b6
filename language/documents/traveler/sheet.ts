import type { Procedure } from '../../model/index.ts';
import { buildHeader, documentTitle, shortHash } from '../header.ts';
import type { Sheet } from '../model.ts';
import { ownLanguage } from '../own-language.ts';
import type { SheetOptions } from '../print-context.ts';
import { buildSheetContext, type SheetContext } from './context.ts';
import { isDraft } from './draft.ts';
import { cardBlocks, instructionBlocks, partBlocks, recordBlocks } from './forms.ts';
import { pressedWords } from './safety.ts';
import { letterSources } from './sources.ts';
import { withTargets } from './targets.ts';

/**
 * What is printed of a procedure, for a job or blank: plain data, every word in the order in which it is read. Pure: the
 * same procedure and options give the same sheet.
 */
export function buildSheet(procedure: Procedure, options: SheetOptions): Sheet {
  const form = options.part == null ? (options.form ?? 'card') : 'part';
  // An instruction is for the wall for every job.
  const context = buildSheetContext(
    procedure,
    form === 'instruction' ? { ...options, job: null, unit: null } : options,
  );
  const { words } = context;
  const draft = isDraft(context);
  return {
    form,
    language: words.language,
    own: ownLanguage(procedure, context.options.job, words.language),
    paper: options.paper,
    title: documentTitle(context),
    watermark: draft ? words.draft : null,
    header: buildHeader(context),
    columns: form === 'card' || form === 'record' ? context.columns : [],
    pressed: pressedWords(context),
    foot: words.foot({ hash: shortHash(options.hash) }),
    pageWords: { page: words.page, of: words.of },
    blocks: letterSources(withTargets(blocksOf(context, form)), words),
  };
}

function blocksOf(context: SheetContext, form: Sheet['form']) {
  switch (form) {
    case 'record':
      return recordBlocks(context);
    case 'instruction':
      return instructionBlocks(context);
    case 'part':
      return partBlocks(context, context.options.part!);
    default:
      return cardBlocks(context);
  }
}

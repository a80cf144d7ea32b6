import type { PrintContext } from '../print-context.ts';

/** Requested as a draft, or made one by its errors. */
export function isDraft({ options }: Pick<PrintContext, 'options'>): boolean {
  return options.draft || options.diagnostics.some(({ severity }) => severity === 'error');
}

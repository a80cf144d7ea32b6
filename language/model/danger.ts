import type { Danger } from '../syntax/verbs/dangers.ts';
import type { Source } from './source.ts';

export { type Danger, dangers } from '../syntax/verbs/dangers.ts';

/** `live`, or `not live`: its words suggest it, and it is not. */
export interface DangerFact {
  readonly danger: Danger;
  readonly denied: boolean;
  readonly source: Source;
}

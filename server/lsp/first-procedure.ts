/** The requests for a first procedure: what it can begin from, and its text. */
import { type FirstProcedureRequest, familyChoices, writeFirstProcedure } from '../../language/ide/first-procedure.ts';
import { findStarters, ownStarter, type Starter } from '../../language/ide/starters.ts';
import type { DocumentStore } from './document-store.ts';
import type {
  FamilyChoicesParams,
  FamilyChoicesResult,
  FirstProcedureParams,
  FirstProcedureResult,
} from './requests.ts';

/** The samples of a client are the same each time. */
let kept: { readonly key: string; readonly starters: readonly Starter[] } | null = null;

export function choicesFor(store: DocumentStore, { uri, samples }: FamilyChoicesParams): FamilyChoicesResult {
  return { families: familyChoices(store.check(uri), startersIn(samples)) };
}

/** @param tell says the words of the draft */
export function firstProcedureFor(
  store: DocumentStore,
  params: FirstProcedureParams,
  tell: FirstProcedureRequest['tell'],
): FirstProcedureResult {
  const { uri, samples, reads, own, ...request } = params;
  const known = startersIn(samples);
  const starters = own === undefined ? known : [...known, ownStarter({ ...own, name: request.family, tell }, known)];
  const asked = new Map(Object.entries(reads));
  return { text: writeFirstProcedure(store.check(uri), starters, { ...request, reads: asked, tell }) };
}

function startersIn(samples: FamilyChoicesParams['samples']): readonly Starter[] {
  const key = samples.map(({ uri, text }) => `${uri} ${text.length}`).join();
  if (kept?.key !== key) kept = { key, starters: findStarters(samples) };
  return kept.starters;
}

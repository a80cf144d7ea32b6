/** What a first procedure can be written for, and its text. */
import type { CheckResult } from '../db/workspace.ts';
import { draftProcedure } from '../drafting/procedure.ts';
import type { Family } from '../model/family.ts';
import type { Said } from '../say/say.ts';
import { readsOf, type Starter, simplest } from './starters.ts';

/** A family to begin from. */
export interface FamilyChoice {
  readonly name: string;
  readonly title: string;
  /** What its remarks say, in a line; empty: nothing. */
  readonly note: string;
  readonly origin: 'workspace' | 'sample';
  /** What proves it, each with the kind of figure that it gives in another procedure; null: not known, or it is watched. */
  readonly tests: readonly { readonly name: string; readonly reads: string | null }[];
}

export interface FirstProcedureRequest {
  /** Name of a choice. */
  readonly family: string;
  readonly name: string;
  readonly title: string;
  /** Tests that give a figure, each with its kind; null: as another procedure of the family reads them. */
  readonly reads: ReadonlyMap<string, string> | null;
  /** Says the words of the draft. */
  readonly tell: (said: Said) => string;
}

/** Families of the workspace, and those that come with the program and have another name. */
export function familyChoices(result: CheckResult | null, starters: readonly Starter[]): FamilyChoice[] {
  const own = result?.resolved.families ?? [];
  const samples = starters.filter(({ family }) => own.every(({ name }) => name !== family.name));
  return [
    ...own.map((family) => choice(family, '', 'workspace', knownReads(family, result, undefined))),
    ...samples.map((starter) => choice(starter.family, starter.note, 'sample', starter.reads)),
  ];
}

function choice(
  { name, title, provenBy }: Family,
  note: string,
  origin: FamilyChoice['origin'],
  reads: ReadonlyMap<string, string>,
): FamilyChoice {
  return {
    name,
    title,
    note,
    origin,
    tests: provenBy.map((test) => ({ name: test.name, reads: reads.get(test.name) ?? null })),
  };
}

/**
 * A first procedure for a family of the workspace, or for one that comes with the program: then with that family, and
 * with a shop where the workspace has none. Null: there is no such family.
 */
export function writeFirstProcedure(
  result: CheckResult | null,
  starters: readonly Starter[],
  request: FirstProcedureRequest,
): string | null {
  const own = result?.resolved.families.find(({ name }) => name === request.family);
  const starter = own === undefined ? starters.find(({ family }) => family.name === request.family) : undefined;
  const family = own ?? starter?.family;
  if (family === undefined) return null;
  const ownShop = result?.resolved.shops[0];
  const sample = starter ?? simplest(starters);
  const shop = ownShop ?? sample.shop;
  const reads = request.reads ?? knownReads(family, result, starter);
  return [
    ...(ownShop === undefined ? [sample.shopText] : []),
    ...(starter === undefined ? [] : [starter.familyText]),
    draftProcedure({ ...request, family, shop, reads }),
  ].join('\n');
}

function knownReads(
  family: Family,
  result: CheckResult | null,
  starter: Starter | undefined,
): ReadonlyMap<string, string> {
  const like = result?.procedures.find(({ procedure }) => procedure.family.name === family.name)?.procedure;
  return like === undefined ? (starter?.reads ?? new Map()) : readsOf(like);
}

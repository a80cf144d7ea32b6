/** Families that come with the program, to begin from: each with the shop that its procedure is written at. */
import { type CheckResult, checkFiles, type SourceFile } from '../db/workspace.ts';
import { draftFamily, type FamilyRequest } from '../drafting/family.ts';
import type { Family } from '../model/family.ts';
import type { Shop } from '../model/shop.ts';

export interface Starter {
  readonly family: Family;
  readonly shop: Shop;
  /** What the remarks before it say, in a line; empty: nothing. */
  readonly note: string;
  /** The declarations as they are written, with the remarks before them. */
  readonly familyText: string;
  readonly shopText: string;
  /** Kinds of quantity that its tests read in the procedure that comes with it, by name of the test. */
  readonly reads: ReadonlyMap<string, string>;
}

/** @param files of the library that comes with the program */
export function findStarters(files: readonly SourceFile[]): Starter[] {
  const result = checkFiles(files);
  const texts = new Map(files.map(({ uri, text }) => [uri, text]));
  return result.procedures
    .map(({ procedure }) => procedure)
    .filter(({ family }, index, all) => all.findIndex((other) => other.family.name === family.name) === index)
    .map(({ family, shop, ...procedure }) => {
      const familyText = declarationText(result, texts, family.source.file, family.name);
      return {
        family,
        shop,
        note: noteIn(familyText),
        familyText,
        shopText: declarationText(result, texts, shop.source.file, shop.name),
        reads: readsOf({ ...procedure, family, shop }),
      };
    });
}

/** A family that an author begins with the names of its parts, beside those that come with the program. */
export function ownStarter(request: FamilyRequest, starters: readonly Starter[]): Starter {
  const familyText = draftFamily(request);
  const [family] = checkFiles([{ uri: 'family.rebuild', text: familyText }]).resolved.families;
  return { ...simplest(starters), family: family!, note: '', familyText, reads: new Map() };
}

/** The one with the smallest shop, which is the easiest to change into one's own. */
export function simplest(starters: readonly Starter[]): Starter {
  return [...starters].sort((a, b) => a.shopText.length - b.shopText.length)[0]!;
}

/** What each test of a procedure reads, and each setting that no test is called after. */
export function readsOf(procedure: CheckResult['procedures'][number]['procedure']): ReadonlyMap<string, string> {
  const steps = [...procedure.stages, ...procedure.repairs].flatMap(({ steps: all }) => all);
  const tested = steps.flatMap((step) =>
    step.verb === 'test' && step.test.reads !== null ? [[step.gate.test, step.test.reads] as const] : [],
  );
  const set = procedure.family.adjusters.flatMap(({ sets }) => {
    const spec = procedure.specs.find(({ name }) => name === sets);
    return spec?.kind == null ? [] : [[sets, spec.kind] as const];
  });
  return new Map([...tested, ...set, ...tested]);
}

/** A declaration with the remarks that are directly before it. */
function declarationText(result: CheckResult, texts: ReadonlyMap<string, string>, file: string, name: string): string {
  const symbol = result.symbols.get(file)?.find((one) => one.name === name);
  const lines = (texts.get(file) ?? '').split(/\r\n|\n|\r/u);
  if (symbol === undefined) return '';
  let first = symbol.range.start.line;
  while (first > 0 && /^\/\/|^\s*$/u.test(lines[first - 1]!)) first--;
  const text = lines.slice(first, symbol.range.end.line + 1).join('\n');
  return `${text.replace(/^\s+/u, '')}\n`;
}

function noteIn(text: string): string {
  const remarks = /^(?:\/\/.*\n)+/u.exec(text)?.[0] ?? '';
  return remarks
    .replaceAll(/^\/\/ ?/gmu, '')
    .replaceAll('\n', ' ')
    .trim();
}

/** Where a name leads: to what the procedure sees in whose text it is written, whoever else takes that text over. */
import { expect, test } from 'vitest';
import { within } from '../language/analysis/within.ts';
import { type CheckResult, checkFiles } from '../language/db/workspace.ts';
import { readerOf } from '../language/i18n/translate.ts';
import { definitionsAt } from '../language/ide/definition.ts';
import { hoverAt } from '../language/ide/hover/hover.ts';
import { snapshotOf } from '../language/ide/snapshot.ts';
import type { Position, Source } from '../language/model/source.ts';
import { buildHints } from '../language/recommendations/hints.ts';
import type { Reference } from '../language/semantics/context.ts';
import { libraryFiles } from './library.ts';

const library = libraryFiles();
const textOf = (uri: string) => library.find((file) => file.uri === uri)?.text ?? null;

function wordsAt({ file, range }: Source): string {
  const line = textOf(file)!.split('\n')[range.start.line]!;
  return line.slice(range.start.character, range.end.line === range.start.line ? range.end.character : undefined);
}

/** The declaration at the margin around a place. */
function declarationAt(result: CheckResult, { file, range }: Source) {
  return result.symbols.get(file)!.find((symbol) => within({ file, range }, { file, range: symbol.range }));
}

/** Declarations in which a name of some kind may be declared, seen from a procedure's own text. */
function visibleFrom(result: CheckResult, use: Source, what: string): string[] {
  const { procedure } = result.procedures.find(({ procedure: one }) => within(use, one.extent))!;
  switch (what) {
    case 'spec':
    case 'part number':
      return [procedure.name];
    case 'test':
    case 'test or spec':
      return [
        procedure.name,
        procedure.family.name,
        procedure.shop.name,
        ...(procedure.like === null ? [] : [procedure.like]),
      ];
    case 'repair':
    case 'stage':
    case 'parameter':
      return [procedure.name, ...(procedure.like === null ? [] : [procedure.like])];
    case 'part':
    case 'face':
    case 'port':
    case 'adjuster':
    case 'kind of places':
    case 'place':
      return [procedure.family.name];
    // What a patch or a hazard names its step by.
    case 'step':
      return [procedure.name, procedure.family.name, ...(procedure.like === null ? [] : [procedure.like])];
    case 'station':
    case 'fluid':
    case 'tool':
      return [procedure.shop.name];
    case 'family':
    case 'shop':
    case 'procedure':
      return [wordsAt(use)];
    case 'sequence':
      return [procedure.name, wordsAt(use), ...(procedure.like === null ? [] : [procedure.like])];
    default:
      throw new Error(`no such kind of name: ${what}`);
  }
}

const where = ({ use, what }: Reference) => `${use.file}:${use.range.start.line + 1}: ${what} ${wordsAt(use)}`;

test.each([
  ['as they come', library],
  ['the other way around', library.toReversed()],
])('each link of the library leads to what its procedure sees, files %s', (_, files) => {
  const result = checkFiles(files);
  let inProcedures = 0;
  for (const link of result.references) {
    expect(wordsAt(link.use), where(link)).toContain(link.name);
    expect(wordsAt(link.target), where(link)).toContain(link.name.split('.').at(-1)!);
    const writer = declarationAt(result, link.use)!;
    if (writer.kind !== 'procedure') continue;
    inProcedures++;
    expect(visibleFrom(result, link.use, link.what), where(link)).toContain(declarationAt(result, link.target)!.name);
  }
  expect(inProcedures).toBeGreaterThan(1_000);
});

test('definition and hover give the figure of the procedure that the text is written in', () => {
  const snapshot = snapshotOf(library);
  const specs = snapshot.result.procedures.flatMap(({ procedure }) =>
    procedure.specs.map((spec) => ({ procedure, spec, uri: procedure.extent.file })),
  );
  let uses = 0;
  for (const { procedure, spec, uri } of specs) {
    const lines = textOf(uri)!.split('\n');
    for (const [line, text] of lines.entries()) {
      const before = text.match(new RegExp(`\\b(?:within|to|by) (?=${spec.name}\\b(?!-))`, 'u'));
      const at: Position = { line, character: (before?.index ?? 0) + (before?.[0].length ?? 0) };
      if (before === null || text.slice(0, at.character).includes('"') || text.trimStart().startsWith('//')) continue;
      if (!within({ file: uri, range: { start: at, end: at } }, procedure.extent)) continue;
      uses++;
      const place = `${uri}:${line + 1} ${spec.name}`;
      expect(definitionsAt(snapshot, uri, at), place).toEqual([{ file: uri, range: spec.source.range }]);
      const written = lines[spec.source.range.start.line]!.trim();
      expect(JSON.stringify(hoverAt(snapshot, uri, at, readerOf('en'))), place).toContain(
        JSON.stringify(written).slice(1, -1),
      );
    }
  }
  expect(uses).toBeGreaterThan(30);
});

const shared = `shop bench "Bench" {
  station strip "Bench" dirty
  fluid oil "Oil" oil
}
family a "A" {
  part body "Body A"
  part nut "Nut" on body
  port inlet, outlet on body
}
family b "B" {
  part body "Body B"
  part nut "Nut" on body
  port inlet, outlet on body
}
sequence shut with ports {
  rinse body in oil
  cap ports
}
procedure one "One" for a at bench {
  spec fit torque 20 N·m ±2
  stage s "S" at strip {
    shut with inlet, outlet
    torque nut to fit
  }
}
procedure two "Two" for b at bench {
  stage s "S" at strip { shut with inlet, outlet }
}
procedure three "Three" for b at bench like one {
  spec fit torque 30 N·m ±3
}
`;

function leads(before: string, name: string): string[] {
  const snapshot = snapshotOf([{ uri: 'x', text: shared }]);
  const at = shared.indexOf(before + name) + before.length;
  const lines = shared.slice(0, at).split('\n');
  const position = { line: lines.length - 1, character: lines.at(-1)!.length };
  return definitionsAt(snapshot, 'x', position).map(({ range }) => shared.split('\n')[range.start.line]!.trim());
}

test('a name given to a sequence leads to what it names, and one in a shared sequence to all that it may mean', () => {
  expect(leads('shut with ', 'inlet')).toEqual(['port inlet, outlet on body']);
  expect(leads('shut with inlet, ', 'outlet')).toEqual(['port inlet, outlet on body']);
  expect(leads('rinse ', 'body')).toEqual(['part body "Body A"', 'part body "Body B"']);
  expect(leads('rinse body in ', 'oil')).toEqual(['fluid oil "Oil" oil']);
  expect(leads('torque nut to ', 'fit')).toEqual(['spec fit torque 20 N·m ±2']);
});

test('what a step of the drawer brings is said once beside each choice, with the figures of its own procedure', () => {
  const { resolved } = checkFiles(library);
  const places = buildHints(resolved.procedures, []).map(
    ({ source }) => `${source.file}:${source.range.start.line + 1}`,
  );
  expect(places.length).toBeGreaterThan(0);
  expect(places).toEqual([...new Set(places)]);
});

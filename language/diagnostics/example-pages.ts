import { readdirSync, readFileSync } from 'node:fs';
import { edited } from '../db/fixes.ts';
import { type CheckResult, checkFiles } from '../db/workspace.ts';
import type { Finding, Fix } from '../model/diagnostic.ts';
import { blank } from './edits.ts';
import { wholeExample } from './example-base.ts';
import { type Area, rulesByArea } from './index.ts';

/*
 * Test helper: reads the rule pages and checks the examples in them. A bad example marks the place of the finding with
 * a comment with carets under the line: `//   ^^^^ rule-name`.
 */

export interface Example {
  readonly kind: 'good' | 'bad';
  readonly text: string;
  /** Its line in the page, from 1, for the test's name. */
  readonly line: number;
  /** Marked places: zero-based line of the example, and character. */
  readonly expected: readonly { readonly rule: string; readonly line: number; readonly character: number }[];
}

export interface Page {
  readonly area: Area;
  /** Its file's name. */
  readonly code: string;
  readonly text: string;
  readonly examples: readonly Example[];
}

const folder = new URL('./areas/', import.meta.url);

/** Names of the files of an area with an ending, without it; tests and the list are no rules. */
export function filesOf(area: string, ending: string): string[] {
  return readdirSync(new URL(`${area}/`, folder))
    .filter((file) => file.endsWith(ending) && file !== 'index.ts' && !file.endsWith('.test.ts'))
    .map((file) => file.slice(0, -ending.length))
    .sort();
}

/** The folders of rules: one for each area. */
export function areaFolders(): string[] {
  return readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && !entry.name.startsWith('_'))
    .map((entry) => entry.name)
    .sort();
}

/** A file of the folder of rules. */
export function textBeside(path: string): string {
  return readFileSync(new URL(path, folder), 'utf8');
}

/** Every page, by area and name. */
export function pages(): Page[] {
  return (Object.keys(rulesByArea) as Area[]).flatMap((area) =>
    filesOf(area, '.md').map((code) => {
      const text = textBeside(`${area}/${code}.md`);
      return { area, code, text, examples: examplesOf(text) };
    }),
  );
}

function examplesOf(page: string): Example[] {
  return [...page.matchAll(/^```rebuild (good|bad)\n([\s\S]*?)^```$/gmu)].map((match) => {
    const text = match[2]!;
    return {
      kind: match[1] as Example['kind'],
      text,
      line: page.slice(0, match.index).split('\n').length,
      expected: marksOf(text),
    };
  });
}

/** The places that carets mark, in the line of text above them. */
function marksOf(text: string): Example['expected'] {
  let line = 0;
  return text.split('\n').flatMap((row, index) => {
    const mark = /^ *\/\/ *(\^+) ([a-z-]+)$/u.exec(row);
    if (mark === null) {
      line = index;
      return [];
    }
    return [{ rule: mark[2]!, line, character: row.indexOf('^') }];
  });
}

/** The marked places, as `line:character rule`, both from 1, in the whole file. */
export function expectedIn({ text, expected }: Example): string[] {
  const { lineOf } = wholeExample(text);
  return expected.map(({ rule, line, character }) => `${lineOf(line) + 1}:${character + 1} ${rule}`);
}

export function checkExample(text: string): CheckResult {
  return check(wholeExample(text).text);
}

/** Checks one file called `example`. */
export function check(text: string): CheckResult {
  return checkFiles([{ uri: 'example', text }]);
}

/** The findings in a text, without hints, which show only in the editor. */
export function told(text: string): readonly Finding[] {
  return check(text).findings.filter(({ severity }) => severity !== 'hint');
}

/** `line:character rule`, both from 1. */
export function placeOf({ rule, source }: Finding): string {
  return `${source.range.start.line + 1}:${source.range.start.character + 1} ${rule}`;
}

/** A text with a fix applied. */
export function applyFix(text: string, fix: Fix): string {
  return edited(text, fix.edits);
}

/** A text with the placeholders of its fix filled in, as an author might. */
export function filled(text: string): string {
  return text.replaceAll(`(${blank} times)`, '(2 times)').replaceAll(`with ${blank}`, 'with "Micrometer"');
}

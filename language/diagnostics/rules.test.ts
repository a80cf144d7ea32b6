import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { exampleFamily, exampleShop, wholeExample } from '../../tests/fixtures/example-base.ts';
import {
  applyFix,
  areaFolders,
  check,
  checkExample,
  expectedIn,
  filesOf,
  filled,
  pages,
  placeOf,
  textBeside,
} from '../../tests/fixtures/example-pages.ts';
import { fullMessage } from '../model/diagnostic.ts';
import { isProblemCode, problemCodes } from '../syntax/problem-code.ts';
import { areaOf, rules, rulesByArea } from './index.ts';

const all = pages();
const pageOf = (code: string) => all.find((page) => page.code === code)!;

describe('the rules', () => {
  it('are listed by area, one file each, one page each', () => {
    expect(Object.keys(rulesByArea).sort()).toEqual(areaFolders());
    for (const [area, list] of Object.entries(rulesByArea)) {
      const codes = list.map((rule) => rule.code).sort();
      expect(filesOf(area, '.ts'), `rule files in ${area}`).toEqual(codes);
      expect(filesOf(area, '.md'), `pages in ${area}`).toEqual(codes);
    }
  });

  it('have a name of their own, in lower case with hyphens', () => {
    const codes = rules.map((rule) => rule.code);
    expect(new Set(codes).size).toBe(codes.length);
    for (const code of codes) expect(code).toMatch(/^[a-z]+(-[a-z]+)*$/u);
  });

  it('of the text are one for each code, and no setting lowers them', () => {
    const ofText = rules.filter(({ code }) => isProblemCode(code));
    expect(ofText.map(({ code }) => code).sort()).toEqual([...problemCodes].sort());
    for (const { code, severity, unsafe } of ofText) expect([severity, unsafe], code).toEqual(['error', true]);
  });

  it('say since when there are, released or in the version that is worked on', () => {
    const changes = readFileSync(new URL('../../CHANGELOG.md', import.meta.url), 'utf8');
    const released = [...changes.matchAll(/^## (\d+\.\d+\.\d+)$/gmu)].map(([, version]) => version!);
    const [major, minor] = released[0]!.split('.').map(Number);
    for (const { code, since } of rules) expect([...released, `${major}.${minor! + 1}.0`], code).toContain(since);
    expect(rules.filter(({ since }) => since === '0.1.0').length).toBe(45);
  });

  it.each(rules.map((rule) => [rule.code, rule] as const))('%s is in the file of its name', async (code, rule) => {
    const module: Record<string, unknown> = await import(`./areas/${areaOf(code)}/${code}.ts`);
    expect(Object.values(module)).toContain(rule);
  });
});

describe.each(rules.map((rule) => [rule.code, rule] as const))('the page of %s', (code, rule) => {
  const page = pageOf(code);

  it('says what the rule finds and how grave it is, why it matters, what is wrong and what is right', () => {
    const [title, , what] = page.text.split('\n');
    expect(title).toBe(`# ${code}`);
    expect(what).toBe(`${rule.title} *${rule.severity.charAt(0).toUpperCase()}${rule.severity.slice(1)}.*`);
    const headings = [...page.text.matchAll(/^## (.+)$/gmu)].map((match) => match[1]);
    const optional = ['Left alone', 'If you mean it', 'Known problems'];
    expect(headings.filter((heading) => !optional.includes(heading!))).toEqual([
      'Why it matters at the bench',
      'Wrong',
      'Right',
    ]);
    expect(page.text.trimEnd().split('\n').at(-1)).toBe(
      'Examples use the shop and the family shown in [the list of rules](../README.md#the-example-shop-and-family).',
    );
  });

  it('names the standards that the rule goes back to, and says last what is known to be wrong with it', () => {
    const named =
      page.text.match(
        /\b(?:29 CFR \d+\.\d+(?:\(\w+\))*|(?:ANSI|ASME|DIN|EN|IEC|ISO|SAE|VDI) [A-Z]?\d[\w.-]*(?<=\w))/gu,
      ) ?? [];
    expect([...new Set(named)].sort()).toEqual([...(rule.references ?? [])].sort());
    const [, problems] = page.text.split('\n## Known problems\n');
    if (problems !== undefined) expect(problems).toMatch(/^\n[A-Z`][^\n]+\.\n(?!.*^## )/msu);
  });

  it('has a bad and a good example', () => {
    const kinds = page.examples.map((example) => example.kind);
    expect(kinds).toContain('bad');
    expect(kinds).toContain('good');
    // A fence with another word behind it would be shown and not tried.
    expect(page.text.match(/^```\S/gmu) ?? []).toHaveLength(page.examples.length);
  });

  it.each(page.examples.map((example) => [example.kind, example.line, example] as const))(
    'has a %s example in line %d that holds',
    (kind, _line, example) => {
      const { diagnostics } = checkExample(example.text);
      const own = diagnostics.filter((diagnostic) => diagnostic.rule === code);
      if (kind === 'bad') {
        expect(example.expected.length).toBeGreaterThan(0);
        expect(own.map(placeOf).sort()).toEqual(expectedIn(example).sort());
        if (!isProblemCode(code))
          expect(diagnostics.filter((diagnostic) => isProblemCode(diagnostic.rule)).map(placeOf)).toEqual([]);
      } else {
        const never = [code, ...problemCodes, 'unknown-name', 'allow-without-effect'];
        expect(
          diagnostics
            .filter((diagnostic) => never.includes(diagnostic.rule))
            .map((diagnostic) => `${placeOf(diagnostic)} ${fullMessage(diagnostic)}`),
        ).toEqual([]);
      }
    },
  );

  it('says what is wrong, why it matters and what to do, in parts that can be shown separately', () => {
    const bad = page.examples.filter((example) => example.kind === 'bad');
    for (const { rule: name, message, why, help } of bad.flatMap(({ text }) => checkExample(text).diagnostics)) {
      expect(message).toMatch(/[.?]$/u);
      // A misread line and an unknown name need no reason.
      if (!isProblemCode(name) && name !== 'unknown-name') expect([why, help], message).not.toContain(undefined);
      if (help !== undefined) expect(help).toMatch(/^[A-Z].*[.?]$/u);
      // Behind a colon.
      if (why !== undefined) expect(why).toMatch(/^(?![A-Z][a-z]+ ).*\.$/u);
    }
  });

  if (rule.fix === undefined) return;

  it('has a bad example that the fix corrects', () => {
    const bad = page.examples.filter((example) => example.kind === 'bad');
    const fixes = bad.flatMap((example) => {
      const { text } = wholeExample(example.text);
      return check(text).diagnostics.flatMap((diagnostic) =>
        diagnostic.rule === code && diagnostic.fix !== undefined ? [{ text, diagnostic, fix: diagnostic.fix }] : [],
      );
    });
    expect(fixes.length).toBeGreaterThan(0);
    for (const { text, diagnostic, fix } of fixes) {
      expect(fix.title).not.toBe('');
      const count = (diagnostics: readonly { rule: string }[], name: string) =>
        diagnostics.filter((other) => other.rule === name).length;
      const before = check(text).diagnostics;
      const after = check(filled(applyFix(text, fix))).diagnostics;
      expect(count(after, code), `${fullMessage(diagnostic)} → ${fix.title}`).toBe(count(before, code) - 1);
      if (!isProblemCode(code)) expect(after.filter(({ rule: other }) => isProblemCode(other))).toEqual([]);
    }
  });
});

describe('the list of rules', () => {
  const list = textBeside('README.md');

  it('shows the example shop and family as the examples use them', () => {
    expect(list).toContain(`\`\`\`rebuild\n${exampleShop}\n${exampleFamily}\`\`\``);
    expect(check(`${exampleShop}\n${exampleFamily}`).diagnostics).toEqual([]);
  });

  it('has every rule under its area, with severity and title', () => {
    const rows = Object.entries(rulesByArea).flatMap(([area, ofArea]) =>
      ofArea.map((rule) => `| [${rule.code}](${area}/${rule.code}.md) | ${rule.severity} | ${rule.title} |`),
    );
    expect(list.split('\n').filter((row) => row.startsWith('| ['))).toEqual(rows);
  });
});

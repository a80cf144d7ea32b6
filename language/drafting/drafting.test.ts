import { describe, expect, it } from 'vitest';
import { sampleFiles } from '../../server/host/files/samples.ts';
import { checkFiles } from '../db/workspace.ts';
import { inLanguage } from '../i18n/translate.ts';
import { findStarters } from '../ide/starters.ts';
import { english } from '../say/say.ts';
import { draftFamily } from './family.ts';
import { draftProcedure } from './procedure.ts';

const starters = findStarters(sampleFiles());

/** What a lead might write into the blanks of a draft; invented for the test. */
function filledIn(text: string, shop: string): string {
  const pressure =
    {
      'my-bench': '20 bar ±2',
      'mi-banco': '20 bar ±2',
      'ventil-werkstatt': '20 bar ±2',
      'manual-bench': '3750 psi ±60',
    }[shop] ?? '250 bar ±4';
  const [torque, wrench] = {
    'my-bench': ['40 N·m ±4', 'TW-60'],
    'mi-banco': ['40 N·m ±4', 'LD-60'],
    'ventil-werkstatt': ['40 N·m ±4', 'DM-60'],
    'manual-bench': ['33 lbf·ft ±3', 'TW-50'],
    'turbo-corner': ['8 N·m ±0.8', 'TW-15'],
  }[shop] ?? ['60 N·m ±6', 'TW-80'];
  return text
    .replace(/^(.*) pressure( +)…/gmu, `$1 pressure$2${pressure}`)
    .replace(/^(.*) length( +)…/gmu, `$1 length$2${shop === 'turbo-corner' ? '1.00 mm ±0.50' : '0.050 mm ±0.005'}`)
    .replace(/^(.*) time( +)…/gmu, '$1 time$26..20 s')
    .replace(/^(.*) torque( +)…/gmu, `$1 torque$2${torque}`)
    .replace(/^(.*) unbalance( +)…/gmu, '$1 unbalance$2at most 0.4 g·mm')
    .replace(/^(.*) rate( +)…/gmu, '$1 rate$296 bar per mm')
    .replace(/-fit with …/gu, `-fit with ${wrench}`)
    .replace(/\(… times\)/gu, '(2 times)')
    .replace(/ at … with/gu, ' at 20..60 strokes/min with')
    .replace(/spread at most …/gu, 'spread at most 5 bar')
    .replace(/ on …/gu, ' on 2026-01-05')
    .replace(/"…"/gu, '"As the maker says"');
}

const reported = (text: string, shopText: string) => {
  const { diagnostics } = checkFiles([
    { uri: 'shop.rebuild', text: shopText },
    { uri: 'draft.rebuild', text },
  ]);
  const lines = text.split('\n');
  return diagnostics
    .filter(({ severity, source }) => severity !== 'hint' && source.file === 'draft.rebuild')
    .map(({ rule, source }) => `${rule}: ${lines[source.range.start.line]!.trim()}`);
};

describe('a first procedure', () => {
  it.each(starters.map((starter) => [starter.family.name, starter] as const))(
    'for %s has nothing wrong but its blanks',
    (_, { family, shop, familyText, shopText, reads }) => {
      for (const language of ['en', 'es', 'de'] as const) {
        const tell: typeof english = (said) => inLanguage(said, language);
        const draft = draftProcedure({ family, shop, name: 'first-draft', title: 'Rebuild and test', reads, tell });
        const text = `${familyText}\n${draft}`;
        expect(text.split('…').length).toBeGreaterThan(8);
        expect(reported(text, shopText).filter((line) => !line.includes('…') && !/^not-approved/u.test(line))).toEqual(
          [],
        );
        const title = { en: 'Take in', es: 'Recepción', de: 'Annahme' }[language];
        expect(text).toContain(`stage receive "${title}"`);
      }
    },
  );

  it.each(starters.map((starter) => [starter.family.name, starter] as const))(
    'for %s checks clean when it is filled in',
    (_, { family, shop, familyText, shopText, reads }) => {
      const draft = draftProcedure({
        family,
        shop,
        name: 'first-draft',
        title: 'Rebuild and test',
        reads,
        tell: english,
      });
      const text = `${familyText}\n${filledIn(draft, shop.name)}`;
      expect(reported(text, shopText)).toEqual([]);
    },
  );
});

describe('a first family', () => {
  const request = {
    name: 'relief',
    title: 'Relief valve',
    parts: ['body', 'ball', 'spring', 'plug'],
    tests: ['opening'],
    tell: english,
  };

  it('has its parts one on the other, and the last screwed to the first', () => {
    expect(draftFamily(request)).toMatchInlineSnapshot(`
      "family relief "Relief valve" {
        // What does each part lie on, in or through? What holds it? Which parts are renewed every time?
        part body    "Body"    held in "…"
        part ball    "Ball"    in body
        part spring  "Spring"  on ball
        part plug    "Plug"    on body   holds spring

        // Ground and lapped faces, and what guards them: face body.end lapped meets nozzle.top guarded by nut
        port inlet, outlet on body
        joint plug to body

        proven by opening
      }
      "
    `);
  });

  it('can be drawn and drafted from at once, and what is left is its blanks', () => {
    const { shop, shopText } = starters.find(({ family }) => family.name === 'valve')!;
    const familyText = draftFamily(request);
    const { resolved } = checkFiles([{ uri: 'family.rebuild', text: familyText }]);
    const reads = new Map([['opening', 'pressure']]);
    const draft = draftProcedure({
      family: resolved.families[0]!,
      shop,
      name: 'first-draft',
      title: 'Rebuild',
      reads,
      tell: english,
    });
    const text = `${familyText}\n${draft}`;
    // Whether its spring is under load is the lead’s to say.
    const asked = ['danger-unsaid: part spring  "Spring"  on ball'];
    expect(reported(text, shopText).filter((line) => !/^(?:blank-left|not-approved)/u.test(line))).toEqual(asked);
    expect(reported(filledIn(text, shop.name), shopText)).toEqual(asked);
  });

  it('begins another stack where the body is named again', () => {
    const parts = ['body', 'ball', 'spring', 'plug', 'body', 'screen', 'union', 'body', 'drain'];
    const text = draftFamily({ ...request, parts });
    expect(text).toContain('part spring  "Spring"  on ball\n');
    expect(text).toMatch(
      /part screen +"Screen" +in body\n {2}part union +"Union" +on body +holds screen\n {2}part drain +"Drain" +on body\n/u,
    );
    expect(text).toContain('  joint plug to body\n  joint union to body\n  joint drain to body\n');
  });

  it('may have only two parts', () => {
    const { resolved } = checkFiles([
      { uri: 'f.rebuild', text: draftFamily({ ...request, parts: ['body', 'ball'], tests: [] }) },
    ]);
    expect(resolved.families[0]!.parts.map(({ name }) => name)).toEqual(['body', 'ball']);
  });
});

import { describe, expect, it } from 'vitest';
import { type Caution, usualCautions } from '../language/analysis/cautions/index.ts';
import { checkFiles, type SourceFile } from '../language/db/workspace.ts';
import type { Procedure } from '../language/model/index.ts';
import { namedIn, own } from '../language/model/steps.ts';
import { english } from '../language/say/say.ts';
import { isProblemCode } from '../language/syntax/problem-code.ts';
import { corpusFiles } from './corpus/files.ts';
import { libraryFiles } from './library.ts';

/** Topics by stage, repair and step of every procedure. */
function topicsOf(files: readonly SourceFile[]): Record<string, readonly string[]> {
  return Object.fromEntries(
    checkFiles(files).procedures.flatMap(({ procedure }) =>
      [...placesOf(procedure)].map(([at, list]) => [at, topics(list)]),
    ),
  );
}

const topics = (cautions: readonly Caution[]) => cautions.map(({ topic }) => topic);

function* placesOf(procedure: Procedure): Iterable<[string, readonly Caution[]]> {
  const { stages, repairs, steps } = usualCautions(procedure);
  for (const [name, cautions] of [...stages, ...repairs]) yield [`${procedure.name}/${name}`, cautions];
  for (const [step, { full, short }] of steps) yield [`${procedure.name}/${step.number}`, [...full, ...short]];
}

interface Texts {
  readonly stations?: string;
  readonly parts?: string;
  readonly specs?: string;
  readonly steps: string;
  readonly at?: string;
}

/** The cautions of a stage of these steps, with these lines in shop, family and specs. */
function cautionsOf({ stations = '', parts = '', specs = '', steps, at = 'bench' }: Texts): {
  readonly head: readonly Caution[];
  readonly bySteps: readonly (readonly Caution[])[];
  readonly problems: readonly string[];
  /** The rules that found something. */
  readonly found: readonly string[];
} {
  const text = `shop s {
    station bench "A"
    station tester "B" pressure
    ${stations}
    fluid suds "C" detergent
  }
  family f {
    part body "D"
    part lid "E" on body
    ${parts}
    port inlet on body
  }
  procedure p for f at s {
    ${specs}
    stage only at ${at} {
      receive
      ${steps}
    }
  }`;
  const { procedures, diagnostics } = checkFiles([{ uri: 'a.rebuild', text }]);
  const { procedure } = procedures[0]!;
  const { stages, steps: bySteps } = usualCautions(procedure);
  return {
    head: stages.get('only')!,
    bySteps: procedure.stages[0]!.steps.map((step) => [
      ...(bySteps.get(step)?.full ?? []),
      ...(bySteps.get(step)?.short ?? []),
    ]),
    found: diagnostics.map(({ rule }) => rule),
    problems: diagnostics.filter(({ rule }) => isProblemCode(rule)).map(({ message }) => plain(message)),
  };
}

/** With blanks that may break. */
const plain = (text: string) => text.replace(/\s/gu, ' ');

const head = (texts: Texts) => topics(cautionsOf(texts).head);
/** Of the last step. */
const last = (texts: Texts) => topics(cautionsOf(texts).bySteps.at(-1)!);

describe('no language loses a caution', () => {
  const files = libraryFiles();
  const inEnglish = topicsOf(files);

  it('the library in words of no language is warned of as it is in English', () => {
    let count = 0;
    const nonsense = files.map(({ uri, text }) => ({
      uri,
      // Labels and persons of jobs are no titles.
      text: uri.includes('/jobs/') ? text : text.replace(/"[^"\n]*"/gu, () => `"Xq${++count} vrrk"`),
    }));
    expect(count).toBeGreaterThan(400);
    expect(Object.values(inEnglish).flat().length).toBeGreaterThan(300);
    expect(topicsOf(nonsense)).toEqual(inEnglish);
  });

  it('the corpus too, but for what it asks', () => {
    const corpus = corpusFiles();
    const nonsense = corpus.map(({ uri, text }) => ({ uri, text: text.replace(/"[^"\n]*"/gu, '"Xq vrrk"') }));
    expect(topicsOf(nonsense)).toEqual(topicsOf(corpus));
  });

  it.each([
    ['a driven valve', 'electrical', ['Solenoid valve', 'Electroválvula', 'Magnetventil']],
    ['a coil', 'electrical', ['Coil', 'Bobina', 'Spule']],
    ['something hot', 'hot-cold', ['Bearing, heated', 'Rodamiento caliente', 'Lager, erwärmt']],
    ['an oven', 'hot-cold', ['Oven', 'Horno', 'Trockenofen']],
    ['dry ice', 'hot-cold', ['Bush in dry ice', 'Casquillo en hielo seco', 'Buchse in Trockeneis']],
    ['something heavy', 'lifting', ['Housing, heavy', 'Carcasa, pesada', 'Gehäuse, schweres']],
    ['a hoist', 'lifting', ['Hoist eye', 'Cáncamo', 'Hebeöse']],
    ['a spring', 'spring', ['Pressure spring', 'Muelle de presión', 'Druckfeder']],
    ['a ring under load', 'spring', ['Circlip', 'Anillo de retención', 'Sicherungsring']],
    ['an old lining', 'dust-fumes', ['Brake lining', 'Forro de freno', 'Bremsbelag']],
    ['a gasket', 'dust-fumes', ['Cover gasket', 'Junta de tapa', 'Deckeldichtung']],
    ['an accumulator', 'rail', ['Accumulator', 'Acumulador', 'Druckspeicher']],
    ['a wheel with blades', 'sharp', ['Turbine wheel', 'Rueda de la turbina', 'Turbinenrad']],
    ['an ultrasonic bath', 'ultrasonic', ['Ultrasonic basket', 'Cesta de ultrasonidos', 'Ultraschallkorb']],
  ])('undeclared, %s is asked about in English, Spanish and German, and not guessed', (_, topic, titles) => {
    for (const title of titles) {
      const made = cautionsOf({ parts: `part thing "${title}" on body`, steps: 'remove thing' });
      expect(topics(made.head), title).not.toContain(topic);
      expect(made.found, title).toContain('danger-unsaid');
    }
  });
});

describe('what English words called for in 0.1', () => {
  // The cautions at that time. Those that were wrong are named in `false`, and must not come back.
  const listened = {
    rail: /\b(common rail|fuel rail|rail pressure|accumulator)\b/iu,
    electrical: /\b(solenoid|piezo|coil|voltage|energi[sz]e|high.voltage)s?\b/iu,
    'dust-fumes': /\b(lining|asbestos|paint|weld|solder|braz|fume|gasket)(s|ing|ed|e)?\b/iu,
    ultrasonic: /ultra-?soni/iu,
    'hot-cold': /\b(hot|heat(ed|ing)?|oven|freez(e|er|ing)|chill(ed)?|dry ice|liquid nitrogen|quench)\b/iu,
    lifting: /\b(lift(ing|ed)? (with|by|on|out with|eyes?|points?|tackle)|hoist|heavy|crane|sling)\b/iu,
  } as const;
  const falsely = /copper gasket|gasket, copper|heat shield|paint pen/giu;

  it('is warned of still at the head of every stage that says it, or asked about', () => {
    // What an author denies is left to the words again.
    const undenied = [...libraryFiles(), ...corpusFiles()].map(({ uri, text }) => ({
      uri,
      text: text.replace(/ (not (live|hot|cold|heavy|toxic|ultrasonic|spring-loaded)|material [a-z]+)\b/gu, ''),
    }));
    let heard = 0;
    const { procedures, diagnostics } = checkFiles(undenied);
    const asked = new Set(diagnostics.filter(({ rule }) => rule === 'danger-unsaid').map(({ source }) => source.file));
    for (const { procedure } of procedures) {
      const { stages, repairs } = usualCautions(procedure);
      for (const place of [...procedure.stages, ...procedure.repairs]) {
        const names = place.steps.flatMap((step) => namedIn(step)).map(({ name }) => name);
        const words = [
          procedure.shop.stations.find(({ name }) => name === place.station)?.title,
          ...procedure.family.parts.filter(({ name }) => names.includes(name)).map(({ title }) => title),
          ...place.steps.flatMap((step) => [step.text, step.note, own(step, 'holder'), own(step, 'accept')]),
        ]
          .filter((word) => word != null)
          .join(' | ')
          .replace(falsely, '');
        const warned = topics((stages.get(place.name) ?? repairs.get(place.name))!);
        for (const [topic, pattern] of Object.entries(listened)) {
          if (!pattern.test(words)) continue;
          heard++;
          const isAsked = procedure.files.some((file) => asked.has(file));
          const said = `${procedure.name}/${place.name}: ${words.match(pattern)![0]}`;
          if (!isAsked) expect(warned, said).toContain(topic);
        }
      }
    }
    expect(heard).toBeGreaterThan(30);
  });
});

describe('a fact declares it, in any language', () => {
  it.each([
    ['live', 'test run accept "ok"', 'electrical'],
    ['hot', 'remove thing', 'hot-cold'],
    ['cold', 'fit thing', 'hot-cold'],
    ['heavy', 'remove thing', 'lifting'],
    ['spring-loaded', 'slacken thing', 'spring'],
    ['stored pressure', 'slacken thing', 'rail'],
    ['ultrasonic', 'wash thing in suds', 'ultrasonic'],
    ['toxic', 'wipe thing', 'dust-fumes'],
    ['sharp', 'remove thing', 'sharp'],
    ['rotating', 'blow-dry thing with air at most 1 bar', 'rotating'],
  ])('of a part, a station or a step: %s', (fact, step, topic) => {
    const parts = 'part thing "F" on body';
    expect(head({ parts, steps: step })).not.toContain(topic);
    const declared: Texts[] = [
      { parts, steps: `${step}   ${fact}` },
      ...(step.includes('thing') ? [{ parts: `${parts}   ${fact}`, steps: step }] : []),
      ...(fact === 'spring-loaded' ? [] : [{ parts, stations: `station other "G" ${fact}`, at: 'other', steps: step }]),
    ];
    for (const texts of declared) {
      expect(cautionsOf(texts).problems).toEqual([]);
      expect(head(texts), JSON.stringify(texts)).toContain(topic);
    }
  });

  it('a unit with a heavy part is heavy where it is taken in and packed', () => {
    const made = cautionsOf({ parts: 'part thing "F" on body   heavy', steps: 'pack' });
    expect(topics(made.head)).toContain('lifting');
    expect(topics(made.bySteps.at(-1)!)).toContain('lifting');
    expect(last({ parts: 'part thing "F" on body   heavy', steps: 'check thing "G"' })).not.toContain('lifting');
  });

  it('said or denied, the word is not asked about', () => {
    const found = (more: string, step = '') =>
      cautionsOf({ parts: `part thing "Solenoid" on body   ${more}`, steps: `remove thing   ${step}` }).found.filter(
        (rule) => rule === 'danger-unsaid',
      );
    expect(found('')).toHaveLength(1);
    expect(found('live')).toEqual([]);
    expect(found('not live')).toEqual([]);
    expect(found('live', '"Pull the coil straight"')).toEqual([]);
  });

  it('a step cannot deny what its part or station is', () => {
    const parts = 'part thing "F" on body   hot';
    expect(head({ parts, steps: 'remove thing   not hot' })).toContain('hot-cold');
  });

  it('said twice or both ways it is reported, and warned of', () => {
    expect(cautionsOf({ steps: 'do "Q" hot hot' }).problems).toEqual(['hot is written twice here. Delete one.']);
    const both = cautionsOf({ steps: 'do "Q" not hot hot' });
    expect(both.problems).toHaveLength(1);
    expect(topics(both.head)).toContain('hot-cold');
  });

  it('a part that is next to one that bears on another is under load, whatever it is called', () => {
    const parts = 'part muelle "F" on body\n part plato "G" on muelle bears on lid';
    const made = cautionsOf({ parts, steps: 'remove muelle' });
    expect(topics(made.head)).toContain('spring');
    expect(english(made.head.find(({ topic }) => topic === 'spring')!.because)).toBe(
      'part muelle is next to plato, which bears on lid',
    );
  });
});

describe('false ones are gone', () => {
  it.each([
    ['Heat shield', 'hot-cold'],
    ['Heat exchanger', 'hot-cold'],
    ['Copper gasket', 'dust-fumes'],
    ['Gasket, copper', 'dust-fumes'],
    ['Junta de cobre', 'dust-fumes'],
    ['Kupferdichtung', 'dust-fumes'],
    ['Coil spring', 'electrical', 'spring-loaded'],
    ['Heavy fuel oil filter', 'lifting'],
    ['Spring seat', 'spring'],
    ['Asiento del muelle', 'spring'],
    ['Federteller', 'spring'],
  ])('%s', (title, topic, fact = '') => {
    const made = cautionsOf({ parts: `part thing "${title}" on body   ${fact}`, steps: 'remove thing' });
    expect(topics(made.head)).not.toContain(topic);
    expect(made.found).not.toContain('danger-unsaid');
  });

  it('a live part handled dead is warned of once at the head, and not at each step', () => {
    const parts = 'part valve "Solenoid valve" on body   live\n joint valve to body';
    const made = cautionsOf({
      parts,
      steps: 'slacken valve\n remove valve\n wash valve in suds\n fit valve\n run-down valve',
    });
    expect(topics(made.head)).toContain('electrical');
    for (const cautions of made.bySteps) expect(topics(cautions)).not.toContain('electrical');
  });
});

describe('figures', () => {
  it('air at 1 bar goes through no skin; at 8 bar, or as a liquid, it does', () => {
    const at = 'tester';
    const gas = cautionsOf({ at, steps: 'connect inlet\n test tight hold 1 bar for 10 s with air accept "G"' });
    expect(topics(gas.head)).not.toContain('injection');
    expect(topics(gas.head)).toContain('hose');
    expect(head({ at, steps: 'test tight hold 8 bar for 10 s with air accept "G"' })).toContain('injection');
    expect(head({ at, steps: 'test tight hold 100 psi for 10 s with air accept "G"' })).not.toContain('injection');
    expect(head({ at, steps: 'test tight hold 102 psi for 10 s with air accept "G"' })).toContain('injection');
    expect(head({ at, steps: 'connect inlet\n test tight hold 1 bar for 10 s accept "G"' })).toContain('injection');
    // A liquid test at the same station: the line that is put on may be either.
    const both = cautionsOf({
      at,
      steps:
        'test tight hold 1 bar for 10 s with air accept "G"\n test oil hold 1 bar for 10 s accept "G"\n connect inlet',
    });
    expect(topics(both.bySteps.at(-1)!)).toContain('injection');
  });

  it('with air and no figure nobody knows', () => {
    expect(head({ at: 'tester', steps: 'test tight with air accept "G"' })).toContain('injection');
    expect(head({ at: 'tester', steps: 'test tight with vacuum accept "G"' })).not.toContain('injection');
  });

  it('a rail at 1,600 bar stores its pressure, also where it is let down', () => {
    const made = cautionsOf({ at: 'tester', steps: 'test leak hold 1600 bar for 60 s accept "G"\n relieve' });
    expect(topics(made.head)).toContain('rail');
    expect(topics(made.bySteps.at(-1)!)).toContain('rail');
    expect(english(made.head.find(({ topic }) => topic === 'rail')!.because)).toMatch(
      /^the step works with 1600.bar$/u,
    );
    expect(head({ at: 'tester', steps: 'test leak hold 230 bar for 60 s accept "G"' })).not.toContain('rail');
    const specs = 'spec full pressure 1550..1650 bar source "G"';
    expect(head({ at: 'tester', specs, steps: 'test full read pressure within full' })).toContain('rail');
  });

  it.each([
    ['60 °C', true],
    ['59 °C', false],
    ['140 °F', true],
    ['at least 60 °C', true],
    ['20..70 °C', true],
  ])('a bath at %s: hot %s', (warmth, hot) => {
    expect(head({ steps: `wash body in suds at ${warmth}` }).includes('hot-cold')).toBe(hot);
  });

  it('turns in a minute are a speed of something that takes in a sleeve, strokes of a lever are not', () => {
    expect(last({ at: 'tester', steps: 'read opening as found\n test run at 600 rpm accept "G"' })).toContain('drive');
    expect(head({ at: 'tester', steps: 'test run at 60 strokes/min accept "G"' })).not.toContain('drive');
  });

  it.each([
    'test drive read voltage within 11..13 V',
    'test drive read current within 1..2 A',
    'measure lid within 1..2 ohm',
  ])('electrical: %s', (steps) => {
    expect(head({ steps })).toContain('electrical');
  });
});

describe('what the model knows', () => {
  const rotor = 'part rotor "F" in body   drawn as shaft-and-wheel';

  it('a rotor must not be spun with the air line, and runs on after its test', () => {
    const air = 'with air at most 1 bar';
    expect(head({ parts: rotor, steps: `blow-dry rotor ${air}` })).toEqual(expect.arrayContaining(['rotor', 'sharp']));
    expect(head({ parts: rotor, steps: `blow-dry body ${air}` })).not.toContain('rotor');
    expect(head({ parts: `${rotor} not rotating not sharp`, steps: `blow-dry rotor ${air}` })).not.toEqual(
      expect.arrayContaining(['rotor']),
    );
    expect(head({ parts: rotor, steps: 'test balance read unbalance within at most 1 g·mm' })).toContain('rotor');
    expect(
      head({ parts: 'part a "F" in body  part b "G" in body  balanced with a', steps: `blow-dry a ${air}` }),
    ).toEqual(expect.not.arrayContaining(['rotor']));
  });

  it('a speed at one point of a plan calls for the guard of the drive', () => {
    const steps = 'test governor read length\n point full at 1000 rpm within 9.0 mm ±0.1\n on fail renew lid (once)';
    expect(head({ at: 'tester', steps })).toContain('drive');
  });

  it('a rail at 1,600 bar at one point stores its pressure', () => {
    const steps = 'test leak read volume\n point full at rail 1600 bar for 60 s within at most 9 mL';
    expect(head({ at: 'tester', steps })).toContain('rail');
  });

  it('a megohm is read with a voltage of its own, an ohm is not', () => {
    expect(head({ steps: 'test insulation read resistance within at least 10 MΩ' })).toContain('insulation');
    expect(head({ steps: 'test insulation read resistance within at least 10 MΩ' })).not.toContain('electrical');
    expect(head({ steps: 'test coil read resistance within 1..2 ohm' })).not.toContain('insulation');
  });

  it('air moves a rod, and its hose whips', () => {
    const at = 'tester';
    const parts = 'part rod "F" in body   slides';
    const leak = 'test tight hold 1 bar for 10 s with air accept "G"';
    expect(head({ at, parts, steps: leak })).toEqual(expect.arrayContaining(['rod', 'hose']));
    expect(head({ at, steps: leak })).not.toContain('rod');
    expect(head({ at, steps: 'test stroke read length at 1 bar with air within 4..5 mm' })).toContain('rod');
    expect(head({ at, parts, steps: 'test tight with vacuum accept "G"' })).toContain('rod');
    expect(head({ at, parts, steps: 'test tight with vacuum accept "G"' })).not.toContain('hose');
    expect(head({ at, parts, steps: 'test oil hold 1 bar for 10 s accept "G"' })).not.toContain('rod');
  });

  it.each([
    ['weight 22 kg', false],
    ['weight 23 kg', true],
    ['weight 50 lb', false],
    ['weight 51 lb', true],
  ])('a part of %s is lifted with a hoist: %s', (weight, heavy) => {
    expect(head({ parts: `part thing "F" on body   ${weight}`, steps: 'remove thing' }).includes('lifting')).toBe(
      heavy,
    );
  });

  it('a unit is as heavy as its parts together', () => {
    const parts = 'part a "F" on body   weight 12 kg\n part b "G" on body   weight 12 kg';
    expect(head({ parts, steps: 'pack' })).toContain('lifting');
    expect(head({ parts, steps: 'remove a' }).includes('lifting')).toBe(true);
    expect(last({ parts, steps: 'remove a' })).not.toContain('lifting');
  });

  it('what a gasket is made of says whether its dust harms', () => {
    const gasket = (material: string) => `part gasket "Gasket" on body   material ${material}`;
    expect(head({ parts: gasket('asbestos'), steps: 'remove gasket' })).toContain('dust-fumes');
    for (const material of ['copper', 'aluminium', 'rubber']) {
      const made = cautionsOf({ parts: gasket(material), steps: 'remove gasket' });
      expect(topics(made.head), material).not.toContain('dust-fumes');
      expect(made.found, material).not.toContain('danger-unsaid');
    }
  });

  it.each(['spring', 'circlip'])('a part drawn as a %s is under load', (shape) => {
    expect(head({ parts: `part thing "F" on body   drawn as ${shape}`, steps: 'remove thing' })).toContain('spring');
  });
});

describe('figures of what can hurt', () => {
  it.each([
    [
      'hot 120 bar',
      'What follows hot is a temperature, and 120 bar is a pressure. Write it before hot, if it belongs to the step.',
    ],
    ['toxic 3 bar', '3 bar has no meaning after toxic. Write it before, if it belongs to the step, or delete it.'],
    ['not hot 60 °C', '60 °C has no meaning after not hot. Write it before, if it belongs to the step, or delete it.'],
  ])('%s', (words, problem) => {
    expect(cautionsOf({ steps: `remove lid ${words}` }).problems).toEqual([problem]);
  });

  it.each(['hot 120 °C', 'cold -40 °C', 'live 160 V', 'rotating 3000 rpm', 'heavy 30 kg', 'stored pressure 1600 bar'])(
    '%s is read after a part, a station and a step',
    (words) => {
      const made = cautionsOf({
        parts: `part thing "F" on body   ${words}`,
        stations: `station other "G" ${words}, wet`,
        steps: `remove thing ${words} "H"`,
      });
      expect(made.problems).toEqual([]);
    },
  );

  it.each([
    [
      'weight 25 mm',
      'The weight of a part is a mass, and 25 mm is a length: it says whether the part is lifted by hand. Write, for example, weight 25 kg.',
    ],
    [
      'weight 0 kg',
      'The weight of a part cannot be 0 kg: it says whether the part is lifted by hand. Write, for example, weight 25 kg.',
    ],
    ['material alumnium', 'No material is called alumnium. Did you mean aluminum?'],
    [
      'material cheese',
      'No material is called cheese. Write one of aluminum, asbestos, brass, bronze, carbon, ceramic, copper, iron, lead, paper, plastic, rubber, steel, titanium, zinc, or delete it: nothing follows from another.',
    ],
  ])('%s', (words, problem) => {
    expect(cautionsOf({ parts: `part thing "F" on body   ${words}`, steps: 'remove thing' }).problems).toEqual([
      problem,
    ]);
  });
});

describe('every caution says what it follows from', () => {
  it.each([
    ['connect inlet', 'injection', 'the step says connect'],
    ['wash body in suds', 'disposal', 'fluid suds is detergent'],
    ['read opening', 'injection', 'station tester says pressure'],
    ['remove lid   hot', 'hot-cold', 'the step says hot'],
    ['remove lid   hot 120 °C', 'hot-cold', 'the step says hot 120 °C'],
  ])('%s', (steps, topic, text) => {
    const caution = cautionsOf({ at: 'tester', steps }).head.find((one) => one.topic === topic)!;
    expect(plain(english(caution.because))).toBe(text);
  });
});

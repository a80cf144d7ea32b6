import {
  isArgumentElement,
  isPluralElement,
  isTagElement,
  type MessageFormatElement,
  parse,
} from '@formatjs/icu-messageformat-parser';
import { describe, expect, test } from 'vitest';
import { de } from './de.ts';
import { en } from './en.ts';
import { es } from './es.ts';
import type { Span } from './message.ts';
import { type Catalogue, type Language, type Words, wordsIn } from './words.ts';

const english = flat(en);
const others: readonly (readonly [Language, Catalogue])[] = [
  ['es', es],
  ['de', de],
];
const all: readonly (readonly [Language, Catalogue])[] = [['en', en], ...others];

/** Every message by its keys: `boxes.verdicts.lap`. */
function flat(catalogue: object, above = ''): Map<string, string> {
  return new Map(
    Object.entries(catalogue).flatMap(([key, value]) =>
      typeof value === 'string' ? [[`${above}${key}`, value] as const] : [...flat(value, `${above}${key}.`)],
    ),
  );
}

interface Asks {
  readonly names: readonly string[];
  readonly counted: readonly string[];
  /** The text in each `<b>`. */
  readonly strong: readonly string[];
  readonly forms: readonly string[];
}

function asksOf(message: string): Asks {
  const names = new Set<string>();
  const counted = new Set<string>();
  const forms = new Set<string>();
  const strong: string[] = [];
  const walk = (elements: readonly MessageFormatElement[]) => {
    for (const element of elements) {
      if (isArgumentElement(element) || isPluralElement(element)) names.add(element.value);
      if (isPluralElement(element)) {
        counted.add(element.value);
        for (const [form, option] of Object.entries(element.options)) {
          forms.add(form);
          walk(option.value);
        }
      }
      if (isTagElement(element)) {
        const inside = element.children.map((child) => (isArgumentElement(child) ? child.value : '?'));
        strong.push(`${element.value}: ${inside.join(' ')}`);
        walk(element.children);
      }
    }
  };
  walk(parse(message));
  const sorted = (set: ReadonlySet<string>) => [...set].sort();
  return { names: sorted(names), counted: sorted(counted), strong: strong.sort(), forms: sorted(forms) };
}

/** A message of `wordsIn`, filled. */
function said(words: Words, key: string, fillings: Readonly<Record<string, string | number>>): string {
  const [group, last] = [key.split('.')[0]!, key.split('.').at(-1)!];
  if (group === 'steps') return textOf(words.step(last as keyof typeof en.steps, fillings));
  if (group === 'pieces') return textOf(words.piece(last as keyof typeof en.pieces, fillings));
  const found = key.split('.').reduce<unknown>((inside, part) => (inside as Record<string, unknown>)[part], words);
  return typeof found === 'function' ? found(fillings) : String(found);
}

const textOf = (spans: readonly Span[]) => spans.map(({ text }) => text).join('');

/** Not translated, and why. */
const untranslated: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  es: {
    'names.side': 'a comma and names',
    'names.sides': 'names and brackets',
    'pieces.changes': 'names and brackets',
    document: 'names only',
    'certificate.units.doneOn': 'names only',
    'certificate.results.judged': 'names only',
    'certificate.results.of': 'names only',
    'certificate.sourceOf': 'names only',
    'certificate.ownRule': 'names only',
    'drawing.times': 'a sign and a count',
    'drawing.stage': 'a colon and names',
    'pieces.more': 'a colon and a name',
    'pieces.counted': 'names and brackets',
    'diagnostics.error': 'the same word',
    'tools.digital': 'the same word',
    'boxes.passed': 'a mark',
    'boxes.failed': 'a mark',
    'certificate.results.pass': 'a mark',
    'certificate.results.fail': 'a mark',
    'certificate.units.newPart': 'a count and names',
    'boxes.marks.reuse': 'the same letter: usar',
    'boxes.marks.lap': 'the same letter: lapear',
    'boxes.marks.reject': 'the same letter: rechazar',
  },
  de: {
    'names.side': 'a comma and names',
    'names.sides': 'names and brackets',
    'pieces.changes': 'names and brackets',
    'specs.revision': 'the same word',
    'specs.what.inTime': 'the same words',
    document: 'names only',
    'certificate.units.doneOn': 'names only',
    'certificate.results.judged': 'names only',
    'certificate.results.of': 'names only',
    'certificate.sourceOf': 'names only',
    'certificate.ownRule': 'names only',
    'drawing.times': 'a sign and a count',
    'drawing.stage': 'a colon and names',
    'pieces.more': 'a colon and a name',
    'pieces.counted': 'names and brackets',
    'header.revision': 'the same word',
    documentRevision: 'the same word, which German writes large in a sentence too',
    'tools.digital': 'the same word',
    'lines.name': 'the same word',
    'people.name': 'the same word',
    'sign.name': 'the same word',
    'boxes.passed': 'a mark',
    'boxes.failed': 'a mark',
    'certificate.results.pass': 'a mark',
    'certificate.results.fail': 'a mark',
    'certificate.units.newPart': 'a count and names',
    'boxes.marks.lap': 'the same letter: läppen',
  },
};

describe.each(others)('%s beside English', (language, catalogue) => {
  const messages = flat(catalogue);

  test('has the same keys, in the same order', () => {
    expect([...messages.keys()]).toEqual([...english.keys()]);
  });

  test('asks for the same in each message, and has the same in bold', () => {
    const asked = (all: ReadonlyMap<string, string>) =>
      [...all].map(([key, message]) => ({ key, ...asksOf(message), forms: [] }));
    expect(asked(messages)).toEqual(asked(english));
  });

  test('has a form for one and for others, and none that the language does not know', () => {
    const known = new Intl.PluralRules(language).resolvedOptions().pluralCategories;
    for (const { counted, forms } of [...messages.values()].map(asksOf)) {
      if (counted.length === 0) continue;
      expect(forms).toEqual(expect.arrayContaining(['one', 'other']));
      expect(known).toEqual(expect.arrayContaining([...forms].filter((form) => form !== '=0')));
    }
  });

  test('leaves nothing in English but what is the same', () => {
    const same = [...messages].filter(([key, message]) => message === english.get(key)).map(([key]) => key);
    const listed = Object.keys(untranslated[language]!).filter((key) => messages.get(key) === english.get(key));
    expect(same.sort()).toEqual(listed.sort());
  });

  test('ends a step as English does: with a full stop of its own, or with what is put in', () => {
    const end = (message: string) => /(\.|\{more\})$/u.exec(message)?.[0];
    for (const key of Object.keys(en.steps) as (keyof typeof en.steps)[])
      expect(end(catalogue.steps[key]), key).toBe(end(en.steps[key]));
  });

  test('begins a piece with its own blank or mark where English does', () => {
    const joins = (message: string) => /^[ ,;:]/u.test(message);
    for (const key of Object.keys(en.pieces) as (keyof typeof en.pieces)[])
      expect(joins(catalogue.pieces[key]), key).toBe(joins(en.pieces[key]));
  });
});

describe.each(all)('%s filled', (language, catalogue) => {
  const words = wordsIn(language);
  const messages = [...flat(catalogue)];
  const odd = [
    'spring {old}, {count, plural, other {#}}',
    '{',
    '}} {',
    'a <b>bold</b> one, </b> and <',
    `it's "round", 'bright' and '{'`,
    '# | \\ &amp; „ñ“ 😀',
    '  ',
    '',
  ];

  test.each(odd)('with %j everywhere: it is found unchanged', (filling) => {
    for (const [key, message] of messages) {
      const { names, counted } = asksOf(message);
      const plain = names.filter((name) => !counted.includes(name));
      const own = (name: string) => (filling === '' ? '' : `${filling}~${name}`);
      const fillings = Object.fromEntries(names.map((name) => [name, counted.includes(name) ? 2 : own(name)]));
      const text = said(words, key, fillings);
      for (const name of plain) expect(text, key).toContain(own(name));
      if (filling === '') expect(text, key).not.toMatch(/[{}<>]/u);
    }
  });

  test('counts one and several', () => {
    for (const [key, message] of messages) {
      const { counted } = asksOf(message);
      if (counted.length === 0) continue;
      // What else it asks for, such as the numbers of the units, is put in as nothing.
      const others = Object.fromEntries(asksOf(message).names.map((name) => [name, '']));
      const [one, two] = [1, 2].map((count) => said(words, key, { ...others, [counted[0]!]: count }));
      // A sentence, and no count with its noun.
      if (asksOf(message).names.length > 1 || asksOf(message).forms.includes('=0')) {
        expect(one, key).not.toBe(two);
        continue;
      }
      expect(one, key).toMatch(/^1 \p{L}+$/u);
      expect(two, key).toMatch(/^2 \p{L}+( max\.)?$/u);
      expect(two!.slice(1), key).not.toBe(one!.slice(1));
    }
  });

  test('keeps what is strong in a piece strong in the step', () => {
    const spans = words.step('wash', {
      things: '<b>{body}</b>',
      fluid: words.piece('fluid', { fluid: 'clean <oil>' }),
      bath: '',
      at: '',
      lasting: words.piece('lasting', { count: '15 min' }),
      more: '.',
    });
    expect(spans.filter(({ strong }) => strong).map(({ text }) => text)).toEqual(['15 min']);
    expect(textOf(spans)).toMatch(/<b>\{body\}<\/b>.*clean <oil>.*15 min.*\.$/u);
  });
});

describe.each(all)('%s cautions', (language, { cautions, firstAid, first }) => {
  const said: Readonly<Record<Language, { codes: RegExp; maker: RegExp; sheet: RegExp; hospital: RegExp }>> = {
    en: {
      codes: /local codes/iu,
      maker: /manufacturer['’]s data/iu,
      sheet: /safety data sheet/iu,
      hospital: /hospital at once.*does not hurt.*high-pressure injection.*fluid's data sheet/iu,
    },
    es: {
      codes: /normas locales/iu,
      maker: /datos del fabricante/iu,
      sheet: /fichas? de datos de seguridad/iu,
      hospital: /hospital de inmediato.*aunque no duela.*inyección a alta presión.*ficha de datos del fluido/iu,
    },
    de: {
      codes: /örtlichen Vorschriften/iu,
      maker: /Angaben des Herstellers/iu,
      sheet: /Sicherheitsdatenblatt/iu,
      hospital:
        /sofort ins Krankenhaus.*auch wenn es nicht wehtut.*Hochdruck-Injektion.*Sicherheitsdatenblatt der Flüssigkeit/iu,
    },
  };
  const { codes, maker, sheet, hospital } = said[language];

  test("name local codes and the maker's data where English does; all leave the last word to them", () => {
    for (const [topic, { text }] of Object.entries(cautions)) {
      const original = en.cautions[topic as keyof typeof en.cautions].text;
      expect(codes.test(text), `${topic}: local codes`).toBe(said.en.codes.test(original));
      expect(maker.test(text), `${topic}: maker's data`).toBe(said.en.maker.test(original));
      expect(sheet.test(text), `${topic}: data sheet`).toBe(said.en.sheet.test(original));
    }
    for (const last of [codes, maker, sheet]) expect(first).toMatch(last);
  });

  test('each says as many sentences as English, in as few words as can be read', () => {
    const sentences = (text: string) => text.split(/\.(?: |$)/u).length;
    for (const [topic, caution] of Object.entries(cautions)) {
      const original = en.cautions[topic as keyof typeof en.cautions];
      expect(sentences(caution.text), topic).toBe(sentences(original.text));
      expect(caution.text.split(' ').length, topic).toBeLessThanOrEqual(60);
      expect('short' in caution ? caution.short.length : 0, topic).toBeLessThanOrEqual(100);
    }
  });

  test('first aid sends to the hospital at once', () => expect(firstAid).toMatch(hospital));

  test('the signal words are four', () => {
    expect(Object.values(wordsIn(language).signals)).toEqual(
      {
        en: ['DANGER', 'WARNING', 'CAUTION', 'NOTICE'],
        es: ['PELIGRO', 'ADVERTENCIA', 'PRECAUCIÓN', 'AVISO'],
        de: ['GEFAHR', 'WARNUNG', 'VORSICHT', 'HINWEIS'],
      }[language],
    );
  });
});

test.each(all)('%s: heads of tables and labels of boxes are short', (_, { tools, fluids, place, facts, ...rest }) => {
  const { kinds: _kinds, called: _called, ...ofTools } = tools;
  const { kinds: _fluids, ...ofFluids } = fluids;
  const { together: _together, backText: _back, ...ofPlaces } = place;
  // The words under these keys are values, not the labels before them.
  const values = new Set<string>(['oilThreadText', 'leftHandTighten', 'leftHandSlacken', 'nothingPasses']);
  const labels = {
    header: rest.header,
    diagnostics: rest.diagnostics,
    units: rest.units,
    renew: rest.renew,
    lookup: rest.lookup,
    boxes: { ...rest.boxes, legend: '' },
    lines: rest.lines,
    places: rest.places,
    limits: rest.limits,
    people: { ...rest.people, title: '' },
    route: { ...rest.route, stages: '' },
    sign: { ...rest.sign, statement: '', statementOne: '' },
    concessions: rest.sections.concessions,
    where: rest.sections.where,
    rule: rest.sections.rule,
    reason: rest.sections.reason,
    tools: ofTools,
    fluids: ofFluids,
    place: ofPlaces,
    facts: Object.fromEntries(Object.entries(facts).filter(([key]) => !values.has(key))),
  };
  const long = [...flat(labels)].filter(([, label]) => asksOf(label).names.length === 0 && label.length > 28);
  expect(long).toEqual([]);
});

describe('figures and lists', () => {
  const words = { en: wordsIn('en'), es: wordsIn('es'), de: wordsIn('de') };

  test('a quantity has the decimal mark of the language, and a no-break blank', () => {
    const quantity = { number: '1.30', unit: 'mm' } as const;
    expect(words.en.quantity(quantity)).toBe('1.30\u00A0mm');
    expect(words.es.quantity(quantity)).toBe('1,30\u00A0mm');
    expect(words.de.quantity(quantity)).toBe('1,30\u00A0mm');
  });

  test('long numbers are grouped with a narrow blank, in every language', () => {
    expect(words.en.number('12345.6')).toBe('12\u202F345.6');
    expect(words.es.number('12345.6')).toBe('12\u202F345,6');
    expect(words.de.number('-12345.6')).toBe('−12\u202F345,6');
    expect(words.de.number('1234.5')).toBe('1234,5');
  });

  test('units that are words, of one and of several', () => {
    const figures = (number: string) =>
      (['en', 'es', 'de'] as const).map((language) =>
        (['strokes', 'drops', 'turns'] as const)
          .map((unit) => words[language].quantity({ number, unit }))
          .join(' ')
          .replaceAll('\u00A0', ' '),
      );
    expect(figures('1')).toEqual([
      '1 stroke 1 drop 1 turn',
      '1 embolada 1 gota 1 vuelta',
      '1 Hub 1 Tropfen 1 Umdrehung',
    ]);
    expect(figures('6')).toEqual([
      '6 strokes 6 drops 6 turns',
      '6 emboladas 6 gotas 6 vueltas',
      '6 Hübe 6 Tropfen 6 Umdrehungen',
    ]);
    expect(words.de.quantity({ number: '96.5', unit: 'bar per mm' })).toBe('96,5\u00A0bar\u00A0je\u00A0mm');
  });

  test('limits', () => {
    const bar = (number: string) => ({ number, unit: 'bar' }) as const;
    const limits = (language: Language) =>
      [
        words[language].limit({ form: 'range', low: bar('250'), high: bar('258') }),
        words[language].limit({ form: 'at least', least: bar('2.5') }),
        words[language].limit({ form: 'at most', most: bar('2.5') }),
      ].map((text) => text.replaceAll('\u00A0', ' '));
    expect(limits('es')).toEqual(['250 a 258 bar', 'al menos 2,5 bar', 'como máximo 2,5 bar']);
    expect(limits('de')).toEqual(['250 bis 258 bar', 'mindestens 2,5 bar', 'höchstens 2,5 bar']);
  });

  test('lists', () => {
    const three = ['a', 'b', 'c'];
    expect(words.en.list(three)).toBe('a, b and c');
    expect(words.es.list(three)).toBe('a, b y c');
    expect(words.de.list(three)).toBe('a, b und c');
    expect(words.es.list(['aguja', 'inyector'])).toBe('aguja e inyector');
    expect(words.de.list([])).toBe('');
    expect(words.de.list(['a'])).toBe('a');
    const withCommas = ['nut', 'holder, cylinder 1', 'shim {1}'];
    expect(words.en.list(withCommas)).toBe('nut; holder, cylinder 1; and shim {1}');
    expect(words.es.list(withCommas)).toBe('nut; holder, cylinder 1; así como shim {1}');
    expect(words.de.list(withCommas)).toBe('nut; holder, cylinder 1; und shim {1}');
  });

  test('a title inside a sentence stays large in German', () => {
    expect(words.en.inSentence('Setting shim')).toBe('setting shim');
    expect(words.es.inSentence('Laina de ajuste')).toBe('laina de ajuste');
    expect(words.es.inSentence('O-ring')).toBe('O-ring');
    expect(words.de.face('top')).toBe('Oberseite');
    expect(words.es.names.face({ face: words.es.face('end'), part: 'cuerpo' })).toBe('cara frontal de cuerpo');
    expect(words.de.face('stepped-rim')).toBe('Fläche stepped rim');
    expect(words.de.face('constructor')).toBe('Fläche constructor');
    expect(words.de.thread('M20x1.5')).toBe('M20x1,5');
    expect(words.es.thread('M20 × 1.5-6g, G 1/2, 0.5-20 UNF')).toBe('M20 × 1,5-6g, G 1/2, 0.5-20 UNF');
    expect(words.en.thread('M20x1.5')).toBe('M20x1.5');
    expect(words.de.inSentence('Einstellscheibe')).toBe('Einstellscheibe');
  });

  test('steps read as the bench says them', () => {
    const de = textOf(words.de.step('clamp', { parts: 'Düsenhalter', held: '', more: '.' }));
    expect(de).toBe('Düsenhalter einspannen.');
    const es = textOf(
      words.es.step('remove', {
        parts: 'tuerca de tobera',
        with: words.es.piece('with', { parts: 'tobera' }),
        at: '',
        more: words.es.piece('more', { text: 'No girar el cuerpo' }),
      }),
    );
    expect(es).toBe('desmontar tuerca de tobera con tobera: No girar el cuerpo');
  });
});

describe('kinds of part', () => {
  const own = wordsIn('es', { shim: 'suplemento', shims: 'suplementos' });

  test('are called as the shop calls them', () => {
    expect([own.log.shimOut, own.log.shimIn, own.facts.forSet]).toEqual([
      'Sale suplemento',
      'Entra suplemento',
      'Suplementos para el juego',
    ]);
    expect(own.advice.empty).toBe('No quedan suplementos en el cajón.');
    expect(own.advice.tooThin({ nearest: '1,20 mm' })).toContain('Revisar: resorte');
    expect(wordsIn('es').log.shimOut).toBe('Sale laina');
  });
  test('in no language are left as they are looked up', () => {
    for (const [language] of all) {
      const text = JSON.stringify(flatWords(wordsIn(language)));
      expect(text).not.toMatch(/\[(shim|spring)s?\]/iu);
    }
  });
  test('are words, whatever is in them', () => {
    expect(wordsIn('en', { shim: "setter's ring" }).log.shimOut).toBe("Setter's ring out");
  });
});

/** Every text, those to be filled with nothing filled in. */
function flatWords(value: unknown): unknown {
  if (typeof value === 'function') return '';
  return value !== null && typeof value === 'object' ? Object.values(value).map(flatWords) : value;
}

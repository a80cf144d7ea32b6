import type {
  Action,
  Asset,
  Family,
  Job,
  Part,
  Procedure,
  Shop,
  Source,
  Step,
  StepObject,
  StepOf,
  Verb,
} from '../../model/index.ts';
import { actionOf, type Said, sayNothing } from '../../semantics/action-of.ts';
import type { Figure, Limit, Quantity } from '../../quantities/types.ts';

/** A one-spring nozzle holder written by hand: what the language's example is after names are resolved. */

let line = 0;
const here = (): Source => ({
  file: 'injector-17.rebuild',
  range: { start: { line, character: 2 }, end: { line, character: 40 } },
});
const next = (): Source => {
  line++;
  return here();
};

/** `q('250 bar')` */
export function q(text: string): Figure {
  const [number, ...unit] = text.split(' ');
  return { number: number!, unit: unit.join(' ') as Quantity['unit'] };
}

export const range = (low: string, high: string): Extract<Limit, { form: 'range' }> => ({
  form: 'range',
  low: { ...q(high), number: low },
  high: q(high),
});
export const nominal = (text: string, plus: string | null = null, minus: string | null = plus, pair?: Limit): Limit => {
  const value = q(text);
  const side = (number: string | null) => (number === null ? null : { number, unit: value.unit });
  return {
    form: 'nominal',
    nominal: value,
    plus: side(plus),
    minus: side(minus),
    ...(pair === undefined ? {} : { pair }),
  };
};
export const atLeast = (text: string): Limit => ({
  form: 'at least',
  least: q(text),
});
export const atMost = (text: string): Limit => ({
  form: 'at most',
  most: q(text),
});

const named = (name: string, title = name) => ({ name, title, source: next() });

function part(name: string, title: string, more: Partial<Part> = {}): Part {
  return {
    ...named(name, title),
    base: name,
    baseTitle: title,
    position: null,
    on: [],
    in: [],
    through: [],
    bearsOn: [],
    holds: [],
    matchedTo: [],
    balancedWith: [],
    locatedBy: null,
    marks: null,
    chosenFrom: null,
    renewed: false,
    heldIn: null,
    suppliedLoose: false,
    readyToFit: false,
    moves: null,
    bindsOver: null,
    dangers: [],
    allow: [],
    ...more,
  };
}

function asset(kind: Asset['kind'], name: string, more: Partial<Asset>): Asset {
  return {
    ...named(name),
    kind,
    range: null,
    within: null,
    accuracyClass: null,
    graduated: null,
    at: null,
    calibrated: null,
    due: null,
    damped: false,
    digital: false,
    length: null,
    ...more,
  };
}

const trait = {
  clean: false,
  dirty: false,
  abrasive: false,
  wet: false,
  pressure: false,
  dangers: [],
  wear: null,
};

export const shop: Shop = {
  ...named('bench-two', 'Injector bench two'),
  stations: [
    {
      ...named('strip', 'Strip-down bench'),
      ...trait,
      dirty: true,
      wear: 'safety glasses, gloves',
    },
    {
      ...named('tank', 'Wash tank'),
      ...trait,
      wet: true,
      wear: 'face shield, solvent gloves, apron',
    },
    {
      ...named('wheel', 'Polishing wheel'),
      ...trait,
      abrasive: true,
      dirty: true,
      wear: 'face shield',
    },
    { ...named('clean-room', 'Clean room'), ...trait, clean: true },
    {
      ...named('tester', 'Nozzle tester'),
      ...trait,
      clean: true,
      pressure: true,
      wear: 'face shield, long sleeves',
    },
  ],
  assets: [
    asset('wrench', 'TW-80', {
      range: range('16', '80 N·m'),
      within: q('4 %'),
      due: '2027-03-01',
    }),
    asset('gauge', 'PG-400', {
      range: range('0', '400 bar'),
      accuracyClass: '0.25',
      graduated: q('1 bar'),
      at: 'tester',
      due: '2027-01-15',
    }),
    asset('tool', 'MIC-1', {
      range: range('0', '25 mm'),
      within: q('0.003 mm'),
      due: '2027-02-01',
    }),
  ],
  fluids: [
    {
      ...named('solvent', 'Cleaning solvent'),
      kind: 'solvent',
      flammable: q('62 °C'),
    },
    {
      ...named('cal-oil', 'Calibration fluid to ISO 4113'),
      kind: 'test-oil',
      flammable: null,
    },
  ],
  stocks: [
    {
      ...named('shims-8'),
      sizes: [q('1.00 mm'), q('1.05 mm'), q('1.10 mm')],
      counts: [null, null, null],
      stacks: false,
    },
  ],
  unlessStated: [
    {
      kind: 'torque',
      limit: { form: 'tolerance', plus: q('10 %'), minus: q('10 %') },
      sourceText: 'Shop standard',
      source: next(),
    },
  ],
  airBelow: null,
  acceptance: { rule: 'simple', sourceText: null },
  masters: [],
  allow: [],
};

const face = (on: string, name: string, meets: string, guardedBy: string | null = null) => ({
  ...named(name, `${on === 'body' ? 'Holder' : on === 'spacer' ? 'Spacer disc' : 'Nozzle'}, ${name} face`),
  id: `${on}.${name}`,
  part: on,
  finish: 'lapped' as const,
  meets,
  guardedBy,
});
const port = (name: string, on: string, under: string | null = null) => ({
  ...named(name, `${name} port`),
  base: name,
  part: on,
  under,
  openInTransit: false,
});

export const family: Family = {
  ...named('injector-17', '17 mm-shank injector, hole nozzle, one spring'),
  parts: [
    part('body', 'Holder', { heldIn: 'holding fixture' }),
    part('shim', 'Setting shim', { in: ['body'], chosenFrom: 'shims-8' }),
    part('spring', 'Pressure spring', { on: ['shim'] }),
    part('seat', 'Spring seat', { on: ['spring'], bearsOn: ['needle'] }),
    part('spacer', 'Spacer disc', { on: ['body'], locatedBy: 'two dowels' }),
    part('nozzle', 'Nozzle', { on: ['spacer'], locatedBy: 'two dowels' }),
    part('needle', 'Needle', { in: ['nozzle'], matchedTo: ['nozzle'] }),
    part('nut', 'Nozzle nut', { on: ['body'], holds: ['nozzle'] }),
    part('washer', 'Sealing washer', { on: ['nut'], renewed: true }),
    part('dust-seal', 'Dust seal', { on: ['body'], renewed: true }),
  ],
  faces: [
    face('body', 'end', 'spacer.top', 'nut'),
    face('spacer', 'top', 'body.end'),
    face('spacer', 'bottom', 'nozzle.top'),
    face('nozzle', 'top', 'spacer.bottom'),
  ],
  ports: [port('inlet', 'body'), port('return', 'body'), port('bore', 'body', 'spacer'), port('tip', 'nozzle')],
  joints: [
    {
      ...named('nut', 'Nozzle nut to holder'),
      part: 'nut',
      to: 'body',
      thread: 'M20x1.5',
      oiled: true,
      leftHand: false,
      handTightIsFinal: false,
      solid: null,
    },
  ],
  adjusters: [],
  provenBy: ['opening', 'seat-leak', 'chatter', 'spray', 'back-leak'].map((name) => ({ name, source: next() })),
  provenAcrossSet: [{ name: 'opening', source: next() }],
  alwaysChecked: [],
  allow: [],
};

/** `nut`, `body.end`, `port:inlet` */
function object(id: string): StepObject {
  const [name, kind] = id.startsWith('port:')
    ? [id.slice(5), 'port' as const]
    : [id, id.includes('.') ? ('face' as const) : ('part' as const)];
  return { kind, name, located: null, marksAligned: false, source: here() };
}

const objects = (ids: string) => (ids === '' ? [] : ids.split(' ').map(object));

/** A step of which the clauses that matter are said. */
export function step<V extends Verb>(verb: V, ids = '', more: Partial<Said & Around> = {}): StepOf<V> {
  const { hazards = [], only = null, call = null, ...said } = more;
  const all = { ...sayNothing(next()), objects: objects(ids), ...said };
  const first = ids.split(' ')[0] ?? '';
  return { ...actionOf(verb, all, { hazards, only, call }), number: '', key: `${verb} ${first}`.trim() } as StepOf<V>;
}

type Around = Pick<Action, 'hazards' | 'only' | 'call'>;

/** `on fail reshim (3 times)` */
const onFail = (...fails: [string, number | null][]): Pick<Said, 'onFail' | 'failWritten'> => ({
  onFail: fails.map(([repair, tries]) => ({ repair, as: 'repair', tries, furthestOut: false, source: here() })),
  failWritten: true,
});
const use = (spec: string) => ({ form: 'spec' as const, spec, source: here() });
const tool = (name: string) => ({
  form: 'asset' as const,
  adapter: null,
  name,
  source: here(),
});

const value = {
  rebuilt: null,
  rateFrom: null,
  inService: null,
  whenNew: null,
  whenNewPart: null,
  isUnread: false,
  acceptance: null,
  settling: null,
  notRequired: false,
  sourceText: null,
};
const stage = (name: string, title: string, station: string | null, steps: Step[], together = false) => ({
  ...named(name, title),
  station,
  together,
  allow: [],
  steps,
});
const numbered = <T extends { readonly steps: readonly Step[] }>(places: readonly T[], prefix: string): T[] =>
  places.map((place, index) => ({
    ...place,
    steps: place.steps.map((one, at) => ({
      ...one,
      number: `${prefix}${index + 1}.${at + 1}`,
    })),
  }));

const open = () => [
  step('relieve'),
  step('disconnect', 'port:inlet'),
  step('clamp', 'body', { holder: 'holding fixture' }),
  step('slacken', 'nut'),
  step('remove', 'nut nozzle needle spacer seat spring shim'),
];
const fitStack = () =>
  step('fit', 'shim spring seat spacer nozzle', {
    withObjects: [object('needle')],
  });
const close = () => [
  fitStack(),
  step('run-down', 'nut'),
  step('torque', 'nut', { limit: use('nut-fit'), tools: [tool('TW-80')] }),
  step('unclamp', 'body'),
  step('connect', 'port:inlet'),
  step('prime', '', { count: { form: 'nominal', nominal: q('6 strokes'), plus: null, minus: null }, gauge: 'shut' }),
];
const test = (
  name: string,
  figures: Partial<Said>,
  fails: [string, number | null][],
  more: Partial<Said> = {},
) => step('test', '', { reading: name, ...onFail(...fails), ...figures, ...more });

const thorough: [string, number | null][] = [
  ['clean-seat', null],
  ['renew-nozzle', null],
];

export const procedure: Procedure = {
  ...named('rebuild-injector-17', 'Rebuild and set'),
  family,
  shop,
  revision: 'B',
  writtenBy: 'Shop lead',
  approvedBy: 'Works manager',
  approvedOn: '2026-10-05',
  specs: [
    {
      ...named('opening', 'Opening pressure'),
      ...value,
      rebuilt: nominal('250 bar', '8', '0'),
      inService: atLeast('200 bar'),
      kind: 'pressure',
      per: null,
      allow: [],
      sourceText: "Maker's test sheet, page 4",
    },
    {
      ...named('nut-fit'),
      ...value,
      rebuilt: nominal('60 N·m', '5'),
      kind: 'torque',
      per: null,
      allow: [],
      sourceText: "Maker's test sheet, page 2",
    },
    {
      ...named('shim-rate'),
      ...value,
      rebuilt: nominal('3 bar'),
      per: q('0.001 in'),
      kind: 'setting rate',
      allow: [
        {
          rule: 'rate-not-measured',
          because: 'Shop rule; the prediction is checked by the re-test',
          source: next(),
          extent: next(),
        },
      ],
      sourceText: 'Common practice',
    },
  ],
  numbers: [
    { ...named('A-250'), values: [], allow: [] },
    {
      ...named('A-220'),
      values: [
        {
          ...value,
          spec: 'opening',
          rebuilt: nominal('220 bar', '8', '0'),
          inService: atLeast('175 bar'),
          source: next(),
        },
      ],
      allow: [],
    },
  ],
  stages: numbered(
    [
      stage('receive', 'Receive', 'strip', [
        step('receive', '', { text: 'photograph as found' }),
        step('tag'),
        step('cap', 'port:inlet port:return port:tip'),
        step('clean-outside'),
      ]),
      stage('as-found', 'As found', 'tester', [
        step('uncap', 'port:inlet port:return port:tip'),
        step('connect', 'port:inlet'),
        step('read', '', {
          reading: 'opening',
          asFound: true,
          note: 'One stroke a second; write down the highest figure',
        }),
        step('relieve'),
        step('disconnect', 'port:inlet'),
      ]),
      stage('teardown', 'Teardown', 'strip', [
        step('clamp', 'body', { holder: 'holding fixture' }),
        step('discard', 'dust-seal washer'),
        step('slacken', 'nut', {
          hazards: [
            {
              word: 'CAUTION',
              text: 'The nut may be seized: a long bar slips. Push down, never pull toward the face.',
              source: next(),
            },
          ],
          takes: q('5 min'),
        }),
        step('remove', 'nut nozzle needle spacer seat spring shim'),
        step('measure', 'shim', { tools: [tool('MIC-1')]}),
        step('keep', 'nozzle needle spacer seat spring shim', {
          station: 'tank',
          text: 'Own basket, own number',
        }),
        step('guard', 'body.end', { withObjects: [object('nut')] }),
        step('cap', 'port:bore port:inlet port:return'),
        step('unclamp', 'body'),
      ]),
      stage('dress', 'Dress and mark', 'wheel', [
        step('buff', 'body'),
        step('mark', 'body', {
          marking: ['number', 'serial'],
          text: 'On the flat, away from the faces',
        }),
      ]),
      stage('clean', 'Clean', 'tank', [
        step('uncap', 'port:bore port:inlet port:return'),
        step('remove', 'nut'),
        step('wash', 'body nut spacer seat spring shim', { fluid: 'solvent' }),
        step('clean-holes', 'nozzle', {
          tools: [{ form: 'words', text: 'pin vice and wires', source: here() }],
        }),
        step('wash', 'nozzle needle', { fluid: 'solvent' }),
        step('blow-dry', '', {
          all: true,
          objects: objects('body shim spring seat spacer nozzle needle nut washer dust-seal'),
          air: atMost('2 bar'),
        }),
      ]),
      stage('build', 'Build', 'clean-room', [
        step('rinse', 'body nut spacer nozzle needle seat spring shim', {
          fluid: 'cal-oil',
        }),
        step('check', 'needle', {
          text: 'Falls by its own weight from one third out',
          ...onFail(['renew nozzle, needle', null]),
        }),
        step('check', 'body.end spacer.top spacer.bottom nozzle.top', {
          verdicts: [
            { verdict: 'reuse', text: 'bright, even, no line' },
            { verdict: 'lap', text: 'stained' },
            { verdict: 'reject', text: 'scored or pitted' },
          ],
          ...onFail(['lap body.end', Number.POSITIVE_INFINITY]),
        }),
        step('clamp', 'body', { holder: 'holding fixture' }),
        fitStack(),
        step('run-down', 'nut'),
        step('torque', 'nut', {
          limit: use('nut-fit'),
          tools: [tool('TW-80')],
          passes: [q('50 %'), q('100 %')],
        }),
        step('unclamp', 'body'),
        step('do', '', {
          text: 'Blank the return with the long plug',
          only: ['A-220'],
        }),
      ]),
      stage('prove', 'Prove', 'tester', [
        step('connect', 'port:inlet'),
        step('prime', '', {
          count: { form: 'nominal', nominal: q('6 strokes'), plus: null, minus: null },
          gauge: 'shut',
        }),
        test('opening', { reads: 'pressure', gauge: 'open' }, [['reshim', 3]], {
          limit: use('opening'),
          allow: [
            {
              rule: 'gauge-too-coarse',
              because: 'Gauge of class 0.1 is on order',
              source: next(),
              extent: next(),
            },
          ],
        }),
        test(
          'seat-leak',
          {
            hold: {
              amount: nominal('20 bar'),
              relation: 'below',
              of: 'opening',
            },
            forTime: nominal('10 s'),
            gauge: 'open',
          },
          thorough,
          { accept: 'no drop; a wet tip is allowed' },
        ),
        test('chatter', { at: range('20', '60 strokes/min'), gauge: 'shut' }, thorough, { accept: 'even chatter' }),
        test('spray', { gauge: 'shut' }, thorough, {
          accept: 'even, fine',
          reject: 'streak or drip',
        }),
        test(
          'back-leak',
          {
            from: nominal('150 bar'),
            to: nominal('100 bar'),
            inTime: range('6', '20 s'),
            conditions: ['fluid at 20 °C'],
          },
          [['renew-nozzle', null]],
        ),
        step('relieve'),
        step('disconnect', 'port:inlet'),
      ]),
      stage(
        'match',
        'Match the set',
        'tester',
        [
          step('across', '', {
            reading: 'opening',
            onFail: [{ repair: 'reshim', as: 'repair', tries: null, furthestOut: true, source: here() }],
            failWritten: true,
            spread: atMost('5 bar'),
          }),
        ],
        true,
      ),
      stage('finish', 'Finish', 'clean-room', [
        step('fit', 'dust-seal washer'),
        step('cap', 'port:tip port:inlet port:return'),
        step('sign-off', '', { text: 'Bench lead' }),
      ]),
    ],
    '',
  ),
  repairs: numbered(
    [
      {
        ...stage('reshim', 'reshim', null, [
          ...open(),
          step('choose', 'shim', {
            choose: { test: 'opening', target: { form: 'limit', limit: nominal('254 bar'), source: here() } },
            rate: 'shim-rate',
          }),
          ...close(),
        ]),
        tries: 3,
        inline: false,
        allow: [],
      },
      {
        ...stage('clean-seat', 'clean-seat', null, [
          ...open(),
          step('clean-holes', 'nozzle'),
          step('rinse', 'nozzle needle', { fluid: 'cal-oil' }),
          ...close(),
        ]),
        tries: 1,
        inline: false,
        allow: [],
      },
      {
        ...stage('renew-nozzle', 'renew-nozzle', null, [
          ...open(),
          step('renew', 'nozzle needle'),
          step('rinse', 'nozzle needle', { fluid: 'cal-oil' }),
          ...close(),
        ]),
        tries: 1,
        inline: false,
        allow: [],
      },
      {
        ...stage('renew nozzle, needle', 'renew nozzle, needle', null, [step('renew', 'nozzle needle')]),
        tries: 1,
        inline: true,
        allow: [],
      },
      {
        ...stage('lap body.end', 'lap body.end', null, [step('lap', 'body.end')]),
        tries: Number.POSITIVE_INFINITY,
        inline: true,
        allow: [],
      },
    ],
    'R',
  ),
  hazards: [],
  allow: [],
  like: null,
  likeSource: null,
  extent: here(),
  files: [],
};

/** A job of so many units, of which the fourth is another part number and the last is on hold. */
export function jobOf(count: number): Job {
  return {
    ...named('2207', 'Set of six, harbour tug'),
    procedure,
    revision: 'B',
    customer: 'Harbour tug company',
    received: '2026-11-03',
    units: Array.from({ length: count }, (_, index) => {
      const odd = index === 3;
      return {
        place: String(index + 1),
        number: odd ? 'A-220' : 'A-250',
        numberText: odd ? 'A-220' : 'A-250',
        serial: String(411 + index).padStart(4, '0'),
        noSerial: null,
        onHold: index > 0 && index === count - 1 ? 'cracked at the flat' : null,
        note: index === 1 ? 'came without caps' : null,
        results: [],
        source: next(),
      };
    }),
  };
}

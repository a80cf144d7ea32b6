/** Prints with more in every place than anybody would write: what does not fit must still stay in its box. */

import type { SheetOptions } from '../../language/documents/print-context.ts';
import { buildSheet } from '../../language/documents/traveler/index.ts';
import type { Job, PartNumber, Procedure, Step } from '../../language/model/index.ts';
import type { Point } from '../../language/model/plan.ts';
import { isGate, own } from '../../language/model/steps.ts';
import type { Limit } from '../../language/quantities/index.ts';
import type { Print } from './prints.ts';

/** One word of so many letters. */
const word = (letters: number) =>
  'Unterwasserschneidbrennerhalterungsschraube'.repeat(Math.ceil(letters / 43)).slice(0, letters);
const long = word(300);
const capitals = word(300).toUpperCase();
/** About five lines of a sheet. */
const lines =
  'Look at it in good light, turn it once round, and write down what was found before anything is done to it. '
    .repeat(5)
    .trim();
/** Letters that no font of the sheet has. */
const foreign = '喷油嘴 針の先を触るな رأس الحاقن';

/** The name of the stress with them. */
export const noFont = 'letters that no font has';

/** Changes to a print that a person may bring about. */
export interface Stress {
  readonly name: string;
  readonly change: (procedure: Procedure, job: Job) => { readonly procedure?: Procedure; readonly job?: Job | null };
}

const steps = (procedure: Procedure, change: (step: Step, index: number) => Step): Procedure => {
  let count = 0;
  const places = <P extends { readonly steps: readonly Step[] }>(all: readonly P[]) =>
    all.map((place) => ({ ...place, steps: place.steps.map((step) => change(step, count++)) }));
  return { ...procedure, stages: places(procedure.stages), repairs: places(procedure.repairs) };
};

/** A text in every place where an author may write one. */
function everywhere(procedure: Procedure, text: string): Procedure {
  const titled = <T extends object>(all: readonly T[]) => all.map((one) => ({ ...one, title: text }));
  const allow = [{ rule: 'some-rule', because: text, source: procedure.source, extent: procedure.source }];
  const hazards = (['DANGER', 'WARNING', 'CAUTION', 'NOTICE'] as const).map((signal) => ({
    word: signal,
    text,
    source: procedure.source,
  }));
  const { family, shop } = procedure;
  return steps(
    {
      ...procedure,
      title: text,
      revision: text,
      writtenBy: text,
      approvedBy: text,
      hazards,
      allow,
      family: {
        ...family,
        title: text,
        parts: titled(family.parts).map((part) => ({ ...part, baseTitle: text })),
        ports: titled(family.ports),
        places: titled(family.places).map((of) => ({ ...of, places: titled(of.places) })),
        joints: family.joints.map((joint) => ({ ...joint, thread: text })),
      },
      shop: {
        ...shop,
        title: text,
        stations: shop.stations.map((one) => ({ ...one, title: text, wear: text })),
        assets: titled(shop.assets),
        fluids: titled(shop.fluids),
        acceptance: { ...shop.acceptance, sourceText: text },
      },
      specs: procedure.specs.map((one) => ({ ...one, title: text, sourceText: text })),
      numbers: procedure.numbers.map((one) => ({
        ...one,
        title: text,
        values: one.values.map((value) => ({ ...value, sourceText: text })),
      })),
      stages: procedure.stages.map((one) => ({ ...one, title: text, allow })),
      repairs: procedure.repairs.map((one) => ({ ...one, title: text, allow })),
    },
    (step, index) => ({
      ...step,
      note: index % 3 === 0 ? text : step.note,
      hazards: index % 4 === 0 ? hazards : step.hazards,
      allow: index % 4 === 1 ? allow : step.allow,
      text: step.text === null ? null : text,
      ...(own(step, 'accept') != null ? { accept: text } : {}),
      ...(own(step, 'reject') != null ? { reject: text } : {}),
      ...(own(step, 'holder') != null ? { holder: text } : {}),
      sourceText: step.sourceText === null ? null : text,
      ...('verdicts' in step ? { verdicts: step.verdicts.map((one) => ({ ...one, text })) } : {}),
      tools: index % 5 === 0 ? [...step.tools, { form: 'words', text, source: step.source }] : step.tools,
    }),
  );
}

const units = (job: Job, count: number, more: (index: number) => Partial<Job['units'][number]> = () => ({})): Job => ({
  ...job,
  units: Array.from({ length: count }, (_, index) => ({
    ...job.units[index % job.units.length]!,
    place: String(index + 1),
    ...more(index),
  })),
});

/** Part numbers with a limit of their own each, so that none can be put together with another. */
function manyNumbers(procedure: Procedure, count: number, name: (index: number) => string): Procedure {
  const pattern = procedure.numbers.find(({ values }) => values.some(({ rebuilt }) => rebuilt != null))!;
  const numbers = Array.from(
    { length: count },
    (_, index): PartNumber => ({
      ...pattern,
      name: name(index),
      title: name(index),
      values: pattern.values.map((value) => ({ ...value, rebuilt: value.rebuilt && ofItsOwn(value.rebuilt, index) })),
    }),
  );
  return { ...procedure, numbers };
}

function ofItsOwn(limit: Limit, index: number): Limit {
  const number = String(200 + index);
  if (limit.form === 'nominal') return { ...limit, nominal: { ...limit.nominal, number } };
  return limit.form === 'range' ? { ...limit, high: { ...limit.high, number } } : limit;
}

/** A family with that many more parts; each is measured, checked and taken off one by one. */
function manyParts(procedure: Procedure, count: number): Procedure {
  const { family } = procedure;
  const [first] = family.parts;
  const parts = Array.from({ length: count }, (_, index) => ({
    ...first!,
    name: `plate-${index}`,
    base: `plate-${index}`,
    title: `Retaining plate of the governor housing ${index}`,
    renewed: index % 2 === 0,
  }));
  const each: ReadonlySet<string> = new Set(['measure', 'check', 'remove', 'renew']);
  return steps({ ...procedure, family: { ...family, parts: [...family.parts, ...parts] } }, (step) =>
    each.has(step.verb)
      ? {
          ...step,
          objects: parts.map(({ name }) => ({
            kind: 'part',
            name,
            located: null,
            marksAligned: false,
            source: step.source,
          })),
        }
      : step,
  );
}

export const stresses: readonly Stress[] = [
  {
    name: 'words of 300 letters in every place',
    change: (procedure, job) => ({
      procedure: everywhere(procedure, long),
      job: {
        ...units(job, 6, () => ({ numberText: long, serial: long, onHold: long, note: long })),
        title: long,
        customer: long,
      },
    }),
  },
  {
    name: 'capitals of 300 letters in every place',
    change: (procedure) => ({ procedure: everywhere(procedure, capitals) }),
  },
  {
    // One letter more, and places to break are put in.
    name: 'words of 20 capitals in every place',
    change: (procedure, job) => ({
      procedure: everywhere(procedure, word(20).toUpperCase()),
      job: units(job, 6, () => ({ numberText: word(20).toUpperCase(), serial: word(20).toUpperCase() })),
    }),
  },
  {
    name: 'five lines of text in every place',
    change: (procedure, job) => ({
      procedure: everywhere(procedure, lines),
      job: units(job, 6, () => ({ onHold: lines, note: lines })),
    }),
  },
  {
    name: '40 part numbers, blank',
    change: (procedure) => ({ procedure: manyNumbers(procedure, 40, (index) => `K-${1000 + index}`), job: null }),
  },
  {
    name: '40 part numbers of 40 letters, blank',
    change: (procedure) => ({
      procedure: manyNumbers(procedure, 40, (index) => `${word(36)}-${100 + index}`),
      job: null,
    }),
  },
  {
    name: '30 parts, each with a box, and 12 units',
    change: (procedure, job) => ({ procedure: manyParts(procedure, 30), job: units(job, 12) }),
  },
  { name: '12 units', change: (_, job) => ({ job: units(job, 12) }) },
  {
    name: '12 units of 12 long numbers',
    change: (procedure, job) => ({
      procedure: manyNumbers(procedure, 12, (index) => `DLLA-150-P-${1000 + index}`),
      job: units(job, 12, (index) => ({
        number: `DLLA-150-P-${1000 + index}`,
        numberText: `DLLA-150-P-${1000 + index}`,
      })),
    }),
  },
  {
    name: '31 units, half of them on hold',
    change: (_, job) => ({ job: units(job, 31, (index) => ({ onHold: index % 2 === 0 ? 'cracked' : null })) }),
  },
  {
    name: '40 tools at each step',
    change: (procedure) => ({
      procedure: steps(procedure, (step) => ({
        ...step,
        tools: Array.from({ length: 40 }, (_, index) => ({
          form: 'words',
          text: `special tool of the maker, number ${index}`,
          source: step.source,
        })),
      })),
    }),
  },
  { name: noFont, change: (procedure) => ({ procedure: everywhere(procedure, foreign) }) },
];

/** Every test at places is read at so many points, at so many places. */
function manyReadings(procedure: Procedure, points: number, count: number): Procedure {
  const { family } = procedure;
  const places = family.places.map((of) => ({
    ...of,
    places: Array.from({ length: count }, (_, index) => ({
      ...of.places[0]!,
      name: `plane-${index + 1}`,
      title: `Plane ${index + 1}`,
    })),
  }));
  return steps({ ...procedure, family: { ...family, places } }, (step) => {
    if (step.verb !== 'test' || step.plan === null) return step;
    const { limit, source } = step;
    const read = Array.from(
      { length: points },
      (_, index): Point => ({
        name: `point-${index + 1}`,
        title: `Point ${index + 1}`,
        conditions: [],
        amount: null,
        limit,
        spread: null,
        beyond: null,
        source,
      }),
    );
    return { ...step, plan: { ...step.plan, points: read } };
  });
}

/** Of a procedure with a test at places. */
export const planStresses: readonly Stress[] = [
  {
    name: '24 points at 6 places',
    change: (procedure) => ({ procedure: manyReadings(procedure, 24, 6) }),
  },
  {
    name: '24 points at 6 places, six units',
    change: (procedure, job) => ({ procedure: manyReadings(procedure, 24, 6), job: units(job, 6) }),
  },
  {
    name: '12 places, six units',
    change: (procedure, job) => ({ procedure: manyReadings(procedure, 0, 12), job: units(job, 6) }),
  },
];

/** A sheet of each verb once and of every test: what is long is long in every place, but not the whole run of pages. */
function shortened(procedure: Procedure): Procedure {
  const seen = new Set<string>();
  const first = (step: Step) => {
    const known = seen.has(step.verb);
    seen.add(step.verb);
    return !known || isGate(step) || step.hazards.length > 0 || own(step, 'choose') != null;
  };
  const places = <P extends { readonly steps: readonly Step[] }>(all: readonly P[]) =>
    all.map((place) => ({ ...place, steps: place.steps.filter(first) })).filter(({ steps: left }) => left.length > 0);
  return { ...procedure, stages: places(procedure.stages), repairs: places(procedure.repairs) };
}

/** A print under stress. */
export function stressed({ procedure, options, sheet }: Print, { name, change }: Stress): Print {
  const changed = change(shortened(procedure), options.job!);
  const now = changed.procedure ?? shortened(procedure);
  const job = changed.job === undefined ? options.job : changed.job;
  const all: SheetOptions = { ...options, job: job === null ? null : { ...job, procedure: now } };
  return { name: `${name}, ${sheet.paper}`, procedure: now, options: all, sheet: buildSheet(now, all) };
}

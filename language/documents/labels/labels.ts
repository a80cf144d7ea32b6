import type { Language, Words } from '../../i18n/index.ts';
import type { Job, Procedure, Unit } from '../../model/index.ts';
import { named, shortHash } from '../header.ts';
import type { Fact, QrCode } from '../model.ts';
import { buildPrintContext, type SheetOptions } from '../print-context.ts';
import { buildQr } from '../qr.ts';

/** `tag`: on each unit, from the day it comes in; `box`: on the box of the set; `certificate`: on each unit that is certified. */
export const labelKinds = ['tag', 'box', 'certificate'] as const;
export type LabelKind = (typeof labelKinds)[number];

/** Label paper, in millimeters. */
export interface LabelSize {
  readonly width: number;
  readonly height: number;
}

/** What is stuck on: large words, small ones, and a code that says the same. */
export interface Label {
  /** Read across the bench: `2207 / 5`. */
  readonly large: string;
  readonly title: string;
  readonly facts: readonly Fact[];
  readonly qr: QrCode;
}

/** Labels of one kind, one to a page. */
export interface LabelSheet {
  readonly language: Language;
  readonly title: string;
  readonly size: LabelSize;
  readonly labels: readonly Label[];
}

export interface LabelOptions extends Pick<SheetOptions, 'language' | 'kinds' | 'unit' | 'hash'> {
  readonly kind: LabelKind;
  readonly size: LabelSize;
}

/** The labels of a job; of a certificate those of the units only that are not on hold. */
export function buildLabels(procedure: Procedure, job: Job, options: LabelOptions): LabelSheet {
  const { kind, size } = options;
  const { words, units } = buildPrintContext(procedure, {
    ...options,
    job,
    number: null,
    paper: 'a4',
    draft: false,
    diagnostics: [],
  });
  const of = { procedure, job, words, hash: options.hash };
  const labels =
    kind === 'box'
      ? [boxLabel(of, units)]
      : units
          .filter(({ onHold }) => kind === 'tag' || onHold === null)
          .map((unit) => (kind === 'tag' ? tagLabel(of, unit) : certificateLabel(of, unit)));
  return { language: words.language, title: words.labels.title({ order: job.name }), size, labels };
}

interface Of {
  readonly procedure: Procedure;
  readonly job: Job;
  readonly words: Words;
  readonly hash: string;
}

function tagLabel({ procedure, job, words }: Of, unit: Unit): Label {
  const { header, labels } = words;
  return labelOf(words, {
    large: `${job.name} / ${unit.place}`,
    title: labels.unitOf({ place: unit.place, count: String(job.units.length) }),
    facts: [
      { label: header.order, text: job.name },
      ...unitFacts(words, unit),
      ...said(header.customer, job.customer),
      ...said(header.received, job.received),
      { label: header.shop, text: procedure.shop.title },
    ],
  });
}

function boxLabel({ procedure, job, words }: Of, units: readonly Unit[]): Label {
  const { header, labels } = words;
  const counts = new Map<string, number>();
  for (const { numberText } of units) counts.set(numberText, (counts.get(numberText) ?? 0) + 1);
  return labelOf(words, {
    large: job.name,
    title: named(job.name, job.title),
    facts: [
      ...said(header.customer, job.customer),
      { label: labels.contents, text: [...counts].map(([number, count]) => `${count} × ${number}`).join(', ') },
      { label: words.units.serial, text: units.map(({ place, serial }) => `${place}: ${serial ?? '–'}`).join(', ') },
      ...units.flatMap(({ place, onHold }) =>
        onHold === null ? [] : [{ label: words.boxes.onHoldColumn, text: `${place}: ${onHold}` }],
      ),
      { label: header.shop, text: procedure.shop.title },
    ],
  });
}

function certificateLabel({ procedure, job, words, hash }: Of, unit: Unit): Label {
  const { header, labels, certificate } = words;
  const done = unit.results.findLast((result) => result.form === 'done');
  return labelOf(words, {
    large: `${job.name} / ${unit.place}`,
    title: labels.certified,
    facts: [
      { label: header.order, text: job.name },
      { label: words.units.place, text: unit.place },
      ...unitFacts(words, unit),
      {
        label: header.procedure,
        text: `${procedure.name}, ${header.revision} ${procedure.revision ?? header.noRevision}`,
      },
      ...(done === undefined
        ? []
        : said(certificate.units.done, [done.by, done.on].filter((one) => one !== null).join(', '))),
      { label: header.shop, text: procedure.shop.title },
      { label: labels.from, text: shortHash(hash) },
    ],
  });
}

function unitFacts(words: Words, { numberText, serial }: Unit): Fact[] {
  return [{ label: words.units.number, text: numberText }, ...said(words.units.serial, serial)];
}

const said = (label: string, text: string | null): Fact[] => (text === null || text === '' ? [] : [{ label, text }]);

/** The code says what the words say, so that any scanner reads the label aloud. */
function labelOf({ code }: Words, { large, title, facts }: Omit<Label, 'qr'>): Label {
  const text = [title, ...facts.map(({ label, text: value }) => `${label}: ${value}`)].join('\n');
  return { large, title, facts, qr: buildQr(text, code({ code: title })) };
}

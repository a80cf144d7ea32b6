import type { FactWord } from '../model/job.ts';

/** What may follow a word that writes down a fact. */
export interface FactForm {
  /** As it is written. */
  readonly example: string;
  /** What has to be there. */
  readonly needs: readonly ('text' | 'by' | 'on' | 'name' | 'label')[];
  /** What may be there as well. */
  readonly may: readonly ('text' | 'by' | 'on' | 'label')[];
  /** The word that its name is one of; a part, or what can be read, where nothing is said. */
  readonly names?: readonly string[] | 'parts' | 'readable';
  /** A word on the same line, and what it brings. */
  /** It may have several names, and is then as many facts. */
  readonly several?: true;
  readonly goesOn?: { readonly word: string; readonly brings: 'label' | 'on' };
  /** The label is one of these. */
  readonly labels?: readonly string[];
}

const causes = ['workmanship', 'part', 'wear', 'misuse', 'not-ours', 'none-found'];

export const factForms: { readonly [word in FactWord]: FactForm } = {
  brought: { example: 'brought by "…"', needs: ['by'], may: ['on', 'text'] },
  'taken-in': { example: 'taken-in by "…" on 2026-11-03', needs: ['by'], may: ['on', 'text'] },
  complaint: { example: 'complaint "smokes at idle"', needs: ['text'], may: [] },
  missing: { example: 'missing "two return banjos"', needs: ['text'], may: [] },
  photo: {
    example: 'photo "tip.jpg" hash "3f9a…"',
    needs: ['text', 'label'],
    may: [],
    goesOn: { word: 'hash', brings: 'label' },
  },
  promised: { example: 'promised 2026-11-20', needs: ['on'], may: ['text'] },
  quote: { example: 'quote "1,240" on 2026-11-04', needs: ['text'], may: ['on', 'by'] },
  approved: { example: 'approved by "…" on 2026-11-05 "by telephone"', needs: ['by', 'on'], may: ['text'] },
  waiting: {
    example: 'waiting for spring since 2026-11-03',
    needs: ['name', 'on'],
    may: ['text'],
    names: 'parts',
    goesOn: { word: 'since', brings: 'on' },
  },
  'sent-out': {
    example: 'sent-out "plating" on 2026-11-03 paper "LS-881"',
    needs: ['text', 'on', 'label'],
    may: ['by'],
    goesOn: { word: 'paper', brings: 'label' },
  },
  'booked-in': {
    example: 'booked-in on 2026-11-05 paper "WE-12"',
    needs: ['on', 'label'],
    may: ['by', 'text'],
    goesOn: { word: 'paper', brings: 'label' },
  },
  exchange: {
    example: 'exchange serial "B-77"',
    needs: ['label'],
    may: ['text'],
    goesOn: { word: 'serial', brings: 'label' },
  },
  core: {
    example: 'core returned',
    needs: ['name'],
    may: ['by', 'on', 'text'],
    names: ['returned', 'scrapped', 'kept'],
  },
  comeback: {
    example: 'comeback "2107" cause workmanship',
    needs: ['text', 'label'],
    may: [],
    goesOn: { word: 'cause', brings: 'label' },
    labels: causes,
  },
  'shop-serial': { example: 'shop-serial "S-0412"', needs: ['text'], may: [] },
  concession: {
    example: 'concession opening by "…" on 2026-11-05 "customer agreed by telephone"',
    needs: ['name', 'by', 'on', 'text'],
    may: [],
    names: 'readable',
  },
  deviation: {
    example: 'deviation "step 3.4: rinsed, not washed" by "…" on 2026-11-05',
    needs: ['text', 'by'],
    may: ['on'],
  },
  moved: {
    example: 'moved "B" by "…" on 2026-11-06 reason "limit of back leak changed"',
    needs: ['text', 'by', 'on', 'label'],
    may: [],
    goesOn: { word: 'reason', brings: 'label' },
  },
  again: { example: 'again opening, chatter', needs: ['name'], may: [], names: 'readable', several: true },
};

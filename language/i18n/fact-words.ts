import type { FactResult, FactWord, RenewedResult } from '../model/job.ts';
import type { Words } from './index.ts';

const needsPerson: ReadonlySet<FactWord> = new Set(['brought', 'taken-in', 'approved']);

/** What a fact is called: `complaint`. */
export function factTitle(words: Words, { word }: FactResult): string {
  return words.certificate.facts.words[word];
}

/** What it says, without what it is called. @param nameOf what a part or a test is called */
export function factText({ certificate }: Words, fact: FactResult, nameOf: (name: string) => string): string {
  const { name, text, label, by, on } = fact;
  const labels: Readonly<Record<string, string>> = certificate.facts.labels;
  const what = [
    name === null ? null : (labels[name] ?? nameOf(name)),
    text,
    label === null ? null : (labels[label] ?? label),
  ];
  // Of some the person is what it is about: `taken in by R. A.`
  const said = needsPerson.has(fact.word) ? [by, on, ...what] : [...what, by, on];
  return said.filter((one) => one !== null).join(', ');
}

/** Number and batch of a part, as its maker gave them. */
export function makersWords({ number, batch }: RenewedResult): string[] {
  return [number, batch].filter((one) => one !== undefined);
}

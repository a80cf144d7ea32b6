import type { Span } from '../../i18n/index.ts';
import { spanText } from '../../i18n/message.ts';
import type { Step, StepObject, StepOf } from '../../model/procedure.ts';
import { isOfAll, own, readingOf } from '../../model/steps.ts';
import { capital } from '../../model/titles.ts';
import { letterAt } from '../letters.ts';
import { baseTitle, fluidTitle, type ObjectWords, objectWords, specTitle, stationTitle } from '../names.ts';
import { findPaths } from './paths.ts';
import { isEach } from './rows.ts';
import { stockWords } from './stock.ts';

/**
 * A step as one imperative sentence in the author's names. Limits, tools and what is recorded are not in it: they are
 * under it, larger.
 * @param these a word for its objects where they were just named
 */
export function buildSentence(told: ObjectWords, step: Step, these: string | null = null): Span[] {
  const [first, ...others] = spansOf(told, step, these);
  if (first === undefined) return [];
  const lead: Span[] = step.lead === null ? [] : [{ text: `${step.lead}. `, strong: true }];
  return [...lead, { ...first, text: capital(first.text) }, ...others];
}

/** The sentence in runs; the first letter is made large afterwards. */
function spansOf(told: ObjectWords, step: Step, these: string | null): Span[] {
  const { procedure, words } = told;
  const { inSentence, list, piece, limit } = words;
  if (step.verb === 'do') {
    const changed = list(objectWords(told, step.objects));
    return [{ text: step.text ?? '' }, ...(changed === '' ? [] : piece('changes', { parts: changed }))];
  }
  const text = step.text ?? '';
  const [at, from, said, bath] = [own(step, 'station'), own(step, 'fluid'), own(step, 'count'), own(step, 'bath')];
  const station = at == null ? null : inSentence(stationTitle(procedure, at));
  const fluid = from == null ? null : inSentence(fluidTitle(procedure, from));
  const count = said == null ? null : limit(said);
  const holder = heldIn(told, step);
  const fitting = step.verb === 'fit';
  // The head of the repair says for which of them.
  const oneByOne = procedure.repairs.some(({ eachOf, steps }) => eachOf !== null && steps.includes(step));
  const named = these === null ? objectWords(told, objectsLeft(told, step), { fitting, oneByOne }) : [these];
  // A box has room for a letter.
  const parts = list(
    step.verb === 'check' && isEach(step) ? named.map((name, at) => `(${letterAt(at)}) ${name}`) : named,
  );
  const others = list(objectWords(told, own(step, 'withObjects') ?? [], { fitting, oneByOne }));
  const the = (things: string) =>
    things === '' || things === these ? things : spanText(piece('the', { parts: things }));
  const none: Span[] = [];
  return words.step(keyOf(step, parts), {
    // `Hold for the customer: …`; who signs off is called as the author calls them.
    text: step.verb === 'hold-for' ? inSentence(text) : text,
    parts: the(parts),
    things: isOfAll(step) ? allWords(told, step) : the(parts),
    reading: readingWords(told, step),
    count: count ?? '',
    /** The author's words after a colon. */
    more: text === '' ? [{ text: '.' }] : piece('more', { text: inSentence(text) }),
    with: others === '' ? none : piece('with', { parts: the(others) }),
    held: holder === null ? none : piece('held', { holder }),
    at: station === null ? none : piece('at', { station }),
    to: station === null ? none : piece('to', { station }),
    fluid: fluid === null ? none : piece('fluid', { fluid }),
    oil: fluid === null ? none : piece('oil', { fluid }),
    bath: bath == null ? none : piece('bath', { temperature: limit(bath) }),
    lasting: count === null ? none : piece('lasting', { count }),
    ready: own(step, 'readyToFit') === true ? piece('ready') : none,
    trial: step.verb === 'fit' && step.forTrial ? piece('trial') : none,
    cross: step.verb === 'torque' && step.pattern ? piece('cross') : none,
    marking:
      step.verb !== 'mark' || step.marking.length === 0
        ? none
        : piece('marking', { marks: list(markWords(told, step)) }),
    stock: stockOf(told, step),
  });
}

/** The message for a step: that of its verb, or another where more is said. */
function keyOf(step: Step, parts: string) {
  const { verb, text } = step;
  switch (step.verb) {
    case 'read':
      return step.asFound ? 'readFound' : step.asLeft ? 'readLeft' : 'read';
    case 'prime':
      return step.count === null ? 'prime' : 'primeWith';
    case 'wait':
      return step.count === null ? 'wait' : 'waitFor';
    case 'set':
      return parts === '' ? 'set' : 'setBy';
    case 'sign-off':
      return text === null ? 'sign-off' : 'signOffBy';
    case 'send-out':
      return parts === '' ? 'send-out' : 'sendOutOf';
    case 'book-in':
      return parts === '' ? 'book-in' : 'bookInOf';
    case 'hold-for':
      return text === null ? 'hold-for' : 'holdFor';
    default:
      return verb as Exclude<typeof verb, 'do'>;
  }
}

/** The reading that a step mentions. */
function readingWords({ procedure, words }: ObjectWords, step: Step): string {
  const name = step.verb === 'across' ? step.gate.test : readingOf(step);
  return name === null ? '' : words.inSentence(specTitle(procedure, name));
}

/** What a step acts on; `all` is every part that was not thrown away before. */
function objectsLeft({ procedure }: ObjectWords, step: Step): readonly StepObject[] {
  const gone = isOfAll(step) ? findPaths(procedure).gone.get(step) : undefined;
  return gone === undefined ? step.objects : step.objects.filter(({ name }) => !gone.has(name));
}

/** `all parts`, or `all parts except …`. Parts thrown away are no longer there. */
function allWords({ procedure, words }: ObjectWords, step: Step): string {
  const named = new Set(step.objects.map(({ name }) => name));
  const gone = findPaths(procedure).gone.get(step);
  const left = procedure.family.parts
    .filter(({ name }) => !named.has(name) && gone?.has(name) !== true)
    .map((part) => words.inSentence(baseTitle(part)));
  const spans =
    left.length === 0 || named.size === 0
      ? words.piece('all')
      : words.piece('allExcept', { parts: words.list([...new Set(left)]) });
  return spans.map(({ text }) => text).join('');
}

function markWords({ words }: ObjectWords, { marking }: StepOf<'mark'>): string[] {
  return marking.map((mark) => (mark === 'number' ? words.names.partNumber : words.names.serialNumber));
}

/** ` from shims, 1.00 to 1.95 mm by 0.05 mm` */
function stockOf({ procedure, words }: ObjectWords, step: Step): Span[] {
  const [object] = step.objects;
  const part = procedure.family.parts.find(({ name }) => name === object?.name);
  const stock = procedure.shop.stocks.find(({ name }) => name === part?.chosenFrom);
  if (step.verb !== 'choose' || stock === undefined) return [];
  const title = stock.title === stock.name ? words.piece('aStock') : words.inSentence(stock.title);
  return words.piece('stock', { stock: title, sizes: stockWords(words, stock) });
}

/** What the unit is clamped in, as the step says or the family. */
function heldIn({ procedure }: ObjectWords, step: Step): string | null {
  const [first] = step.objects;
  return own(step, 'holder') ?? procedure.family.parts.find(({ name }) => name === first?.name)?.heldIn ?? null;
}

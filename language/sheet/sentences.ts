import type { Procedure, Step } from '../model/procedure.ts';
import { formatQuantity } from '../quantities/index.ts';
import type { Span } from './model.ts';
import { baseTitle, capital, fluidTitle, inSentence, list, objectWords, specTitle, stationTitle } from './names.ts';

/**
 * A step as one imperative sentence in the author's names. Limits, tools and what is recorded are not in it: they stand
 * under it, larger.
 */
export function sentenceOf(procedure: Procedure, step: Step): Span[] {
  const words = wordsOf(procedure, step);
  const spans = words.map((word): Span => (typeof word === 'string' ? { text: word } : word));
  const joined = spans.filter(({ text }) => text !== '');
  return joined.map((span, index) => (index === 0 ? { ...span, text: capital(span.text) } : span));
}

const strong = (text: string): Span => ({ text, strong: true });

/** The sentence in pieces; the first letter is made large afterwards. */
function wordsOf(procedure: Procedure, step: Step): (string | Span)[] {
  const objects = list(objectWords(procedure, step.objects));
  const text = step.text === null ? '' : step.text;
  /** The author's words after a colon. */
  const more = text === '' ? '.' : `: ${text}`;
  const fluid = step.fluid === null ? '' : ` in ${inSentence(fluidTitle(procedure, step.fluid))}`;
  const lasting: Span[] = step.count === null ? [] : [{ text: ' for ' }, strong(formatQuantity(step.count))];
  const things = step.all ? allWords(procedure, step) : objects;
  switch (step.verb) {
    case 'receive':
      return [`receive the unit${more}`];
    case 'tag':
      return [`tag the unit${more}`];
    case 'photo':
      return [`photograph the unit${more}`];
    case 'clamp':
      return [`clamp ${objects}${heldIn(procedure, step)}${more}`];
    case 'unclamp':
      return [`unclamp ${objects}${more}`];
    case 'slacken':
      return [`slacken ${objects}${more}`];
    case 'back-off':
      return [`back off ${objects}${more}`];
    case 'remove':
      return [`take off ${objects}${withWords(procedure, step)}${more}`];
    case 'discard':
      return [`take off ${objects} and throw away${more}`];
    case 'keep':
      return [
        `keep ${objects}${withWords(procedure, step)}${step.station === null ? '' : ` at ${inSentence(stationTitle(procedure, step.station))}`}${more}`,
      ];
    case 'send':
      return [
        `send ${objects}${step.station === null ? '' : ` to ${inSentence(stationTitle(procedure, step.station))}`}${more}`,
      ];
    case 'guard':
      return [`guard ${objects}${withWords(procedure, step)}, hand-tight${more}`];
    case 'cap':
      return [`cap ${objects}${more}`];
    case 'uncap':
      return [`take the cap off ${objects}${more}`];
    case 'compress':
      return [`compress ${objects}${more}`];
    case 'release':
      return [`let the load off ${objects}, slowly${more}`];
    case 'press':
      return [`press ${objects}${more}`];
    case 'wash':
      return [`wash ${things}${fluid}`, ...lasting, more];
    case 'rinse':
      return [`rinse ${things}${fluid}`, ...lasting, more];
    case 'soak':
      return [`soak ${things}${fluid}`, ...lasting, more];
    case 'blow-dry':
      return [`blow dry ${things}${more}`];
    case 'wipe':
      return [`wipe ${things}${fluid}${more}`];
    case 'blast':
      return [`blast ${things}${more}`];
    case 'buff':
      return [`buff ${objects}${more}`];
    case 'clean-outside':
      return [`clean the unit outside${fluid}${more}`];
    case 'clean-holes':
      return [`clean the holes of ${objects}${more}`];
    case 'lap':
      return [`lap ${objects}${more}`];
    case 'check':
      return [`check ${objects}${more}`];
    case 'measure':
      return [`measure ${objects}${more}`];
    case 'read':
      return [`read ${reading(procedure, step)}${step.asFound ? ', as found' : ''}.`];
    case 'renew':
      return [`renew ${objects}${withWords(procedure, step)}${step.readyToFit ? ', ready to fit' : ''}${more}`];
    case 'fit':
      return [`fit ${fitted(procedure, step)}${step.forTrial ? ', for trial' : ''}${more}`];
    case 'line-up':
      return [`line up ${objects}${more}`];
    case 'run-down':
      return [`run down ${objects}, hand-tight${more}`];
    case 'torque':
      return [`torque ${objects}${step.pattern ? ', in cross pattern' : ''}${more}`];
    case 'lock':
      return [`lock ${objects}${more}`];
    case 'oil':
      return [
        `oil ${objects}${step.fluid === null ? '' : ` with ${inSentence(fluidTitle(procedure, step.fluid))}`}${more}`,
      ];
    case 'connect':
      return [`connect ${objects}${more}`];
    case 'prime':
      return step.count === null ? [`prime${more}`] : ['prime with ', strong(formatQuantity(step.count)), more];
    case 'relieve':
      return [`let the pressure down and see the gauge at zero${more}`];
    case 'disconnect':
      return [`disconnect ${objects}${more}`];
    case 'test':
      return ['test ', strong(inSentence(specTitle(procedure, step.gate?.name ?? ''))), more];
    case 'set':
      return ['set ', strong(reading(procedure, step)), objects === '' ? '.' : ` by turning ${objects}.`];
    case 'choose':
      return [`choose ${objects}${chosen(procedure, step)}${more}`];
    case 'across':
      return [
        'across the set, compare ',
        strong(inSentence(specTitle(procedure, (step.gate?.name ?? '').replace(/^across /u, '')))),
        more,
      ];
    case 'mark':
      return [
        `mark ${objects}${step.marking.length === 0 ? '' : ` with ${list(step.marking.map((mark) => (mark === 'number' ? 'part number' : 'serial number')))}`}${more}`,
      ];
    case 'seal':
      return [`seal ${objects}${more}`];
    case 'pack':
      return [`pack the unit${more}`];
    case 'sign-off':
      return [text === '' ? 'sign off.' : `sign off by ${text}.`];
    case 'hold-for':
      return [text === '' ? 'hold the unit.' : `hold for ${text}. Go on only when signed.`];
    case 'wait':
      return step.count === null ? [`wait${more}`] : ['wait ', strong(formatQuantity(step.count)), more];
    case 'send-out':
      return [`send the unit out${more}`];
    case 'book-in':
      return [`book the unit in${more}`];
    case 'do':
      return [text];
  }
}

/** The reading that a `read` or `set` speaks of. */
function reading(procedure: Procedure, step: Step): string {
  return inSentence(specTitle(procedure, step.text ?? ''));
}

/** ` with needle` */
function withWords(procedure: Procedure, step: Step): string {
  return step.withObjects.length === 0 ? '' : ` with ${list(objectWords(procedure, step.withObjects))}`;
}

/** What is fitted, each with what locates it; what is fitted together comes last. */
function fitted(procedure: Procedure, step: Step): string {
  const together =
    step.withObjects.length === 0 ? '' : ` with ${list(objectWords(procedure, step.withObjects, { fitting: true }))}`;
  return list(objectWords(procedure, step.objects, { fitting: true })) + together;
}

/** `all parts`, or `all parts except …`. Parts thrown away are not there any more. */
function allWords(procedure: Procedure, step: Step): string {
  const named = new Set(step.objects.map(({ name }) => name));
  const left = procedure.family.parts.filter(({ name }) => !named.has(name)).map((part) => inSentence(baseTitle(part)));
  return left.length === 0 || named.size === 0 ? 'all parts' : `all parts except ${list([...new Set(left)])}`;
}

/** ` from 1.00 to 1.95 mm by 0.05 mm` */
function chosen(procedure: Procedure, step: Step): string {
  const [object] = step.objects;
  const part = procedure.family.parts.find(({ name }) => name === object?.name);
  const stock = procedure.shop.stocks.find(({ name }) => name === part?.chosenFrom);
  if (stock === undefined) return '';
  const stacks = stock.stacks ? '; two may lie on each other' : '';
  return ` from ${inSentence(stock.title === stock.name ? 'stock' : stock.title)}, ${stock.text}${stacks}`;
}

/** What the unit is clamped in, as the step says or the family. */
function heldIn(procedure: Procedure, step: Step): string {
  const [first] = step.objects;
  const holder = step.holder ?? procedure.family.parts.find(({ name }) => name === first?.name)?.heldIn ?? null;
  return holder === null ? '' : ` in ${holder}`;
}

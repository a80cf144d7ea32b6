/** Holds a print to its claims: what the procedure says and the print does not. */
import type { Claim, SheetClaims, StepClaims } from './claims.ts';
import { limitWords, saysLimit } from './limit-claims.ts';
import { bones, lowBones, type Piece, type Words } from './words.ts';

/** Everything that was lost, in words; empty: nothing was. */
export function lost(claims: SheetClaims, print: Words): string[] {
  const text = print.body.map((piece) => piece.text).join(' ');
  const pages = print.furniture.map(lowBones);
  const anchors = anchorsOf(claims, print.body);
  const stood = anchors.flatMap(({ at }) => at ?? []);
  const outside = lowBones(`${text.slice(0, stood[0])} ${text.slice(stood.at(-1))}`);
  const complaints = [
    ...claims.lists.filter((one) => !outside.includes(lowBones(one.text))).map(named),
    ...fewerCautions(claims, lowBones(text)),
    ...claims.furniture.flatMap((one) =>
      pages.flatMap((page, index) => (page.includes(lowBones(one.text)) ? [] : [`page ${index + 1}: ${named(one)}`])),
    ),
  ];
  for (const [index, { place, step, at }] of anchors.entries()) {
    if (at === null) {
      complaints.push(`${where(place, step)}: not there, or out of order`);
      continue;
    }
    const before = anchors.slice(0, index).findLast((one) => one.at !== null)?.at ?? 0;
    const after = anchors.slice(index + 1).find((one) => one.at !== null)?.at ?? text.length;
    const missing =
      step === null
        ? lostOfPlace(claims.places[place]!, text.slice(at, after))
        : lostOfStep(step, text.slice(before, after), untilCautions(text.slice(at, after), anchors[index + 1]?.step));
    complaints.push(...missing.map((what) => `${where(place, step)}: ${what}`));
  }
  return complaints;

  function where(place: number, step: StepClaims | null): string {
    const { number } = claims.places[place]!;
    return step === null ? `place ${number}` : `step ${step.number}`;
  }
}

const named = ({ kind, text }: Claim) => `${kind} “${text}”`;

/** A caution appears as often as it is given: the same one at the next step does not count for this one. */
function fewerCautions({ places, lists }: SheetClaims, whole: string): string[] {
  const counts = new Map<string, number>();
  const all = [
    ...lists,
    ...places.flatMap(({ head, steps }) => [...head, ...steps.flatMap(({ cautions }) => cautions)]),
  ];
  for (const { kind, text } of all) if (kind === 'caution') counts.set(text, (counts.get(text) ?? 0) + 1);
  return [...counts].flatMap(([text, count]) => {
    const found = whole.split(lowBones(text)).length - 1;
    return found < count ? [`caution “${text}” appears ${found} times, not ${count}`] : [];
  });
}

interface Anchor {
  readonly place: number;
  /** Null: the head of the place. */
  readonly step: StepClaims | null;
  /** Where its number is in the text; null: nowhere after the one before. */
  readonly at: number | null;
}

/**
 * Finds the numbers of places and steps in order, each the first word of a piece: within others they mean little. The
 * head of a place is a heading: route and fail paths say numbers and titles too.
 */
function anchorsOf({ places }: SheetClaims, body: readonly Piece[]): Anchor[] {
  let end = 0;
  const starts = body.map((piece) => {
    end += piece.text.length + 1;
    return end - piece.text.length - 1;
  });
  const numbers = places.flatMap((place, index) => [
    { place: index, step: null, number: place.number, title: place.title },
    ...place.steps.map((step) => ({ place: index, step, number: step.number, title: '' })),
  ]);
  let from = 0;
  return numbers.map(({ place, step, number, title }) => {
    // With its title, as far as there is one: the heading of a list may begin with a number.
    const begins = lowBones(number + title).slice(0, 30);
    const found = body.findIndex(
      (piece, index) =>
        index >= from &&
        piece.heading === (step === null) &&
        (title === ''
          ? firstWord(piece.text) === number
          : piece.text.trimStart().startsWith(number) &&
            lowBones(
              body
                .slice(index, index + 30)
                .map(({ text }) => text)
                .join(''),
            ).startsWith(begins)),
    );
    if (found < 0) return { place, step, at: null };
    from = found + 1;
    return { place, step, at: starts[found]! };
  });
}

function firstWord(piece: string): string {
  return /[^ \t\r\n]+/u.exec(piece)?.[0] ?? '';
}

function lostOfPlace({ title, head }: { title: string; head: readonly Claim[] }, text: string): string[] {
  const own = lowBones(text);
  return [...(title === '' ? [] : [{ kind: 'title', text: title }]), ...head]
    .filter((one) => !own.includes(lowBones(one.text)))
    .map(named);
}

/** The text without the cautions of the step after it, which may be before that one's number. */
function untilCautions(text: string, next: StepClaims | null | undefined): string {
  const first = lowBones(
    (next?.cautions ?? [])
      .slice(0, 2)
      .map((one) => one.text)
      .join(''),
  );
  const at = first === '' ? -1 : lowBones(text).lastIndexOf(first);
  return at < 0 ? text : text.slice(0, placeOf(text, at));
}

/** `around` reaches from the number of the step before to that of the step after, `text` from its own number. */
function lostOfStep(step: StepClaims, around: string, text: string): string[] {
  const complaints = step.cautions.filter((one) => !lowBones(around).includes(lowBones(one.text))).map(named);
  const own = lowBones(text);
  let at = 0;
  for (const one of step.sentence) {
    const wanted = lowBones(one.text);
    const found = own.indexOf(wanted, at);
    if (found < 0) complaints.push(`${named(one)}${own.includes(wanted) ? ', in its order' : ''}`);
    else at = found + wanted.length;
  }
  // What comes before the end of the sentence is no limit.
  const behind = text.slice(placeOf(text, at));
  complaints.push(
    ...step.limits.filter((limit) => !saysLimit(behind, limit)).map((limit) => `limit ${limitWords(limit)}`),
  );
  complaints.push(...step.others.filter((one) => !own.includes(lowBones(one.text))).map(named));
  return complaints;
}

/** Where in a text so many of its bones are passed. */
function placeOf(text: string, count: number): number {
  let [low, high] = [0, text.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (bones(text.slice(0, middle)).length < count) low = middle + 1;
    else high = middle;
  }
  return low;
}

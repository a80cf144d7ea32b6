/** Holds a print to its claims: what the procedure says and the print does not. */
import type { Claim, PlaceClaims, SheetClaims, StepClaims } from './claims.ts';
import { limitWords, saysLimit } from './limit-claims.ts';
import { bones, lowBones, type Piece, type Words } from './words.ts';

/** Everything that was lost, in words, each once; empty: nothing was. */
export function lost(claims: SheetClaims, print: Words): string[] {
  const text = print.body.map((piece) => piece.text).join(' ');
  const whole = lowBones(text);
  const pages = print.furniture.map(lowBones);
  const found = anchorsOf(claims, print.body);
  const complaints = [
    ...claims.lists.filter((one) => !whole.includes(lowBones(one.text))).map(named),
    ...claims.furniture.flatMap((one) =>
      pages.flatMap((page, index) => (page.includes(lowBones(one.text)) ? [] : [`page ${index + 1}: ${named(one)}`])),
    ),
    ...lostHazards(claims, text),
  ];
  for (const place of claims.places) {
    const at = found.places.get(place.number);
    const own = at === undefined ? '' : text.slice(at, found.after(at, true));
    const where = `place ${place.number}`;
    const missing = [...(place.title === '' ? [] : [{ kind: 'title', text: place.title }]), ...place.head].filter(
      (one) => !lowBones(own).includes(lowBones(one.text)),
    );
    complaints.push(...missing.map((one) => `${where}: ${named(one)}`));
    // A repair is printed with tests whose head may have the line.
    const around = place.number.startsWith('R') ? whole : lowBones(own);
    complaints.push(
      ...place.lines
        .filter((one) => !around.includes(lowBones(one.text)) && !inFull(claims, one.text, around))
        .map((one) => `${where}: ${named(one)}`),
    );
    for (const step of place.steps) {
      const from = found.steps.get(step.number);
      const words = from === undefined ? '' : text.slice(from, found.after(from, false));
      complaints.push(...lostOfStep(step, place, words, text).map((what) => `step ${step.number}: ${what}`));
    }
  }
  return [...new Set(complaints)];
}

const named = ({ kind, text }: Claim) => `${kind} “${text}”`;

/** The worst is in full at the head of its stage, and needs no line there. */
function inFull({ hazards }: SheetClaims, line: string, around: string): boolean {
  return hazards.some(
    ({ word, text }) => word === 'DANGER' && around.includes(lowBones(text)) && sameStart(text, line),
  );
}

const sameStart = (text: string, line: string) =>
  bones(text).slice(0, 5).toLowerCase() === bones(line).slice(0, 5).toLowerCase();

/** Each hazard once in full, under its signal word, with all the steps that it holds for. */
function lostHazards({ hazards, places }: SheetClaims, text: string): string[] {
  const order = places.flatMap(({ steps }) => steps.map(({ number }) => number));
  return hazards.flatMap(({ topic, word, text: said, rule }) => {
    const at = placeAfter(text, said);
    if (at === null) return [`hazard “${said}”`];
    if (rule) return [];
    const before = bones(text.slice(0, at)).slice(0, -bones(said).length).toLowerCase();
    const step = /R?\d[\d.]*[a-z]*/u.source;
    const list = new RegExp(`^\\s*Steps\\s+((?:${step}(?:\\s*–\\s*${step})?(?:,\\s*)?)+)`, 'u');
    const listed = list.exec(text.slice(at))?.[1] ?? '';
    const covered = numbersIn(listed, order, places);
    const missing = places.flatMap(({ number, steps }) =>
      steps.filter(
        ({ alerts, number: step }) =>
          alerts.some((one) => one.topic === topic) && !covered.has(step) && !covered.has(number),
      ),
    );
    return [
      ...(before.endsWith(word.toLowerCase()) ? [] : [`signal word “${word}” of ${topic}`]),
      ...missing.map(({ number }) => `step ${number}: among the steps of ${topic}`),
    ];
  });
}

/** `2.2–2.5, R1–R3` as all that it names. */
function numbersIn(list: string, order: readonly string[], places: readonly PlaceClaims[]): ReadonlySet<string> {
  const all = [...order, ...places.map(({ number }) => number)];
  return new Set(
    list.split(',').flatMap((token) => {
      const [from, to = from] = token
        .trim()
        .split('–')
        .map((word) => word.trim());
      const scale =
        all.indexOf(from!) < order.length && all.includes(from!) ? order : places.map(({ number }) => number);
      const [first, last] = [scale.indexOf(from!), scale.indexOf(to!)];
      return first < 0 || last < first ? [] : scale.slice(first, last + 1);
    }),
  );
}

/** Where a text ends in another; null: it is not there. */
function placeAfter(whole: string, text: string): number | null {
  const at = lowBones(whole).indexOf(lowBones(text));
  return at < 0 ? null : placeOf(whole, at + bones(text).length);
}

interface Anchors {
  readonly places: ReadonlyMap<string, number>;
  readonly steps: ReadonlyMap<string, number>;
  /** Where the next begins: a place, or a step too. */
  readonly after: (at: number, placesOnly: boolean) => number;
}

/** Where places and steps begin. A head of a place is a heading by its tag; the number of a step is a piece of its own. */
function anchorsOf({ places }: SheetClaims, body: readonly Piece[]): Anchors {
  let end = 0;
  const starts = body.map((piece) => {
    end += piece.text.length + 1;
    return end - piece.text.length - 1;
  });
  const heads = new Map<string, number>();
  for (const { number, title, within } of places) {
    if (within !== null) continue;
    const begins = lowBones(number + title).slice(0, 30);
    const index = body.findIndex(
      (piece, at) =>
        piece.heading &&
        piece.text.trimStart().startsWith(number) &&
        lowBones(
          body
            .slice(at, at + 30)
            .map(({ text }) => text)
            .join(''),
        ).startsWith(begins),
    );
    if (index >= 0) heads.set(number, index);
  }
  const indexes = [...heads.values()].sort((a, b) => a - b);
  const steps = new Map<string, number>();
  const edges = new Set<number>(indexes);
  for (const { number, within, steps: own } of places) {
    if (within !== null) continue;
    const isRepair = number.startsWith('R');
    const head = heads.get(number);
    // A record has no heads of stages, and its steps in their order.
    if (head === undefined && isRepair) continue;
    const from = head ?? -1;
    // Repairs beside each other have their heads first.
    const to =
      head === undefined
        ? body.length
        : (indexes.find((at) => at > from && !(isRepair && body[at]!.text.trimStart().startsWith('R'))) ?? body.length);
    let at = from + 1;
    for (const step of own) {
      const index = isRepair
        ? sharedIndex(body, from, to, step.number)
        : head === undefined
          ? lastIndex(body, step.number)
          : exactIndex(body, at, to, step.number);
      if (index === null) continue;
      if (!isRepair && head !== undefined) at = index + 1;
      steps.set(step.number, starts[index]!);
      edges.add(index);
    }
  }
  for (const { number, within, steps: own } of places) {
    const from = within === null ? undefined : steps.get(within);
    if (from === undefined) continue;
    heads.set(number, -1);
    for (const step of own) steps.set(step.number, from);
  }
  const sorted = [...edges].sort((a, b) => a - b);
  return {
    places: new Map(
      places.flatMap(({ number, within }) => {
        const at = within === null ? starts[heads.get(number) ?? -1] : steps.get(within);
        return at === undefined ? [] : [[number, at]];
      }),
    ),
    steps,
    after: (at, placesOnly) =>
      starts[(placesOnly ? indexes : sorted).find((index) => starts[index]! > at) ?? body.length] ?? end,
  };
}

function exactIndex(body: readonly Piece[], from: number, to: number, number: string): number | null {
  const index = body.findIndex((piece, at) => at >= from && at < to && !piece.heading && piece.text.trim() === number);
  return index < 0 ? null : index;
}

/** Findings, before all else, name steps by their numbers too. */
function lastIndex(body: readonly Piece[], number: string): number | null {
  const index = body.findLastIndex((piece) => !piece.heading && piece.text.trim() === number);
  return index < 0 ? null : index;
}

/** A step that several repairs share is called by a letter under their numbers, by what follows them, or by all of them. */
function sharedIndex(body: readonly Piece[], from: number, to: number, number: string): number | null {
  const own = exactIndex(body, from, to, number);
  if (own !== null) return own;
  const titles = body.flatMap(({ text }, at) =>
    at >= from && at < to && /^(?:\w+: )?(?:R[\d.]+ ?)+$/u.test(text.trim()) && text.trim() !== number ? [at] : [],
  );
  for (const [nth, title] of titles.entries()) {
    const stems = body[title]!.text.replace(/^\w+: /u, '')
      .trim()
      .split(' ');
    const stem = stems.find((one) => number.startsWith(one) && number !== one);
    const rest = stem === undefined ? null : number.slice(stem.length).replace(/^\./u, '');
    const found = rest === null ? null : exactIndex(body, title + 1, titles[nth + 1] ?? to, rest);
    if (found !== null) return found;
  }
  const all = body.findIndex(
    ({ text }, at) => at >= from && at < to && /^R/u.test(text.trim()) && text.trim().split(' ').includes(number),
  );
  return all < 0 ? null : all;
}

/** `text` reaches from its number to that of the next. */
function lostOfStep(step: StepClaims, place: PlaceClaims, text: string, whole: string): string[] {
  const own = lowBones(text);
  const complaints = [
    ...step.cautions.filter((one) => !own.includes(lowBones(one.text))).map(named),
    ...(step.alerts.some(({ repeats }) => repeats) && !text.includes('⚠') ? ['the triangle'] : []),
  ];
  let at = 0;
  for (const one of step.sentence) {
    // What the check has just named is not named again.
    if (place.within !== null && one.kind === 'object') continue;
    const wanted = lowBones(one.text);
    const found = place.within === null ? own.indexOf(wanted, at) : own.indexOf(wanted);
    if (found < 0) complaints.push(`${named(one)}${own.includes(wanted) ? ', in its order' : ''}`);
    else if (place.within === null) at = found + wanted.length;
  }
  // What comes before the end of the sentence is no limit.
  const behind = text.slice(placeOf(text, at));
  complaints.push(
    ...step.limits.filter((limit) => !saysLimit(behind, limit)).map((limit) => `limit ${limitWords(limit)}`),
  );
  complaints.push(...step.others.filter((one) => !own.includes(lowBones(one.text))).map(named));
  complaints.push(...step.sources.filter((one) => !refersTo(text, whole, one.text)).map(named));
  return complaints;
}

/** The letter under which a source is listed is at the step. */
function refersTo(text: string, whole: string, source: string): boolean {
  const list = lowBones(whole);
  for (let at = list.indexOf(lowBones(source)); at >= 0; at = list.indexOf(lowBones(source), at + 1)) {
    const letter = /\[([a-z]+)\](?:[^[\]]*:)?$/u.exec(list.slice(Math.max(0, at - 200), at))?.[1];
    if (letter !== undefined && lowBones(text).includes(`[${letter}]`)) return true;
  }
  return false;
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

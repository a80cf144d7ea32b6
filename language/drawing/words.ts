/**
 * The fixed words of drawings. Whoever prints in another language gives others; authors' words never pass through here but as
 * arguments, and `inText` says how a title stands inside a sentence.
 */
export interface DrawingWords {
  /** A title inside a line of words. */
  readonly inText: (title: string) => string;
  /** `a, b and c`. */
  readonly list: (titles: readonly string[]) => string;
  /** Behind a title: drawn once, there so many times. */
  readonly times: (count: number) => string;
  readonly on: (host: string) => string;
  readonly in: (host: string) => string;
  readonly through: (host: string) => string;
  readonly locatedBy: (what: string) => string;
  readonly leftHand: string;
  readonly torque: (torque: string) => string;
  readonly holds: (titles: string) => string;
  readonly lapped: string;
  readonly ground: string;
  /** A face that is neither lapped nor ground. */
  readonly face: string;
  readonly meets: (title: string) => string;
  readonly guardedBy: (title: string) => string;
  readonly capped: (port: string) => string;
  readonly coveredBy: (port: string, part: string) => string;
  readonly openInTransit: (port: string) => string;
  readonly matched: string;
  readonly balanced: string;
  readonly matchedTo: (title: string) => string;
  readonly balancedWith: (title: string) => string;
  readonly suppliedLoose: string;
  /** Where a column ends and its stack goes on in the next one. */
  readonly goesOn: string;
  readonly alt: {
    /** First sentence of the description. */
    readonly exploded: (title: string) => string;
    readonly strip: (title: string) => string;
    readonly faceOf: (part: string) => string;
    readonly bearsOn: (titles: string) => string;
    readonly joinedTo: (title: string) => string;
    readonly ports: string;
    readonly spring: string;
    readonly allOn: (stage: string) => string;
    readonly stage: (stage: string, facts: string) => string;
  };
  readonly strip: {
    readonly on: string;
    readonly off: string;
    readonly guard: string;
    readonly discarded: string;
    readonly some: string;
    readonly received: string;
  };
}

/** A list of titles; semicolons where one has a comma of its own. */
function listed(titles: readonly string[]): string {
  if (titles.length < 2) return titles.join('');
  const comma = titles.some((title) => title.includes(',')) ? ';' : ',';
  return `${titles.slice(0, -1).join(`${comma} `)}${comma === ';' ? ';' : ''} and ${titles.at(-1)}`;
}

/** `Setting shim` → `setting shim`; `O-ring` and `TDC mark` stay. */
function inSentence(title: string): string {
  const [first = '', second = ''] = [...title];
  const isWord = second !== '' && second === second.toLowerCase() && /\p{L}|\s/u.test(second);
  return first !== first.toLowerCase() && isWord ? first.toLowerCase() + title.slice(first.length) : title;
}

export const englishWords: DrawingWords = {
  inText: inSentence,
  list: listed,
  times: (count) => `× ${count}`,
  on: (host) => `on ${host}`,
  in: (host) => `in ${host}`,
  through: (host) => `through ${host}`,
  locatedBy: (what) => `located by ${what}`,
  leftHand: 'left-hand thread',
  torque: (torque) => torque,
  holds: (titles) => `holds ${titles}`,
  lapped: 'lapped',
  ground: 'ground',
  face: 'face',
  meets: (title) => `meets ${title}`,
  guardedBy: (title) => `guarded by ${title}`,
  capped: (port) => `${port}, capped`,
  coveredBy: (port, part) => `${port}, under ${part}`,
  openInTransit: (port) => `${port}, open`,
  matched: 'matched',
  balanced: 'balanced',
  matchedTo: (title) => `matched to ${title}`,
  balancedWith: (title) => `balanced with ${title}`,
  suppliedLoose: 'supplied loose',
  goesOn: 'goes on at the right',
  alt: {
    exploded: (title) => `${title}, taken apart, from the bottom up in the order of building.`,
    strip: (title) => `${title}: which parts are off the unit at the end of each stage.`,
    faceOf: (part) => `face of ${part}`,
    bearsOn: (titles) => `bears on ${titles}`,
    joinedTo: (title) => `screwed to ${title}`,
    ports: 'Ports',
    spring: 'spring',
    allOn: (stage) => `${stage}: all parts on.`,
    stage: (stage, facts) => `${stage}: ${facts}.`,
  },
  strip: {
    on: 'on',
    off: 'off',
    guard: 'on as a guard',
    discarded: 'discarded',
    some: 'some on, some off',
    received: 'As received',
  },
};

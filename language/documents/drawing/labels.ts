import { type Words, wordsIn } from '../../i18n/index.ts';

/**
 * The fixed words of drawings. Whoever prints in another language gives others; authors' words never pass through here but as
 * arguments, and `inText` says how a title looks inside a sentence.
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
  /** Always renewed. */
  readonly renewed: string;
  readonly oiled: string;
  /** @param face the name of the face */
  readonly faceOf: (face: string, part: string) => string;
  readonly thread: (thread: string) => string;
  /** Between the names of two faces that close against each other: `lapped to`. */
  readonly meetsFace: (finish: string) => string;
  /** Under the drawing: which end is up, and what its broken line is. */
  readonly builtUp: (part: string) => string;
  readonly twoEnds: (upper: string, lower: string) => string;
  readonly duct: string;
  /** Where a column ends and its stack goes on in the next one. */
  readonly goesOn: string;
  readonly alt: {
    /** First sentence of the description. */
    readonly exploded: (title: string) => string;
    readonly strip: (title: string) => string;
    readonly bearsOn: (titles: string) => string;
    readonly joinedTo: (title: string) => string;
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
    /** Stages from one to another, between which nothing changes. */
    readonly span: (first: string, last: string) => string;
  };
}

const made = new WeakMap<Words, DrawingWords>();

/** The words of drawings, of a language; the same object for the same words. */
export function drawingWords(words: Words): DrawingWords {
  const before = made.get(words);
  if (before !== undefined) return before;
  const drawing = buildWords(words);
  made.set(words, drawing);
  return drawing;
}

function buildWords(words: Words): DrawingWords {
  const { drawing: said } = words;
  return {
    inText: words.inSentence,
    list: words.list,
    times: (count) => said.times({ count }),
    on: (host) => said.on({ host }),
    in: (host) => said.in({ host }),
    through: (host) => said.through({ host }),
    locatedBy: (what) => said.locatedBy({ what }),
    leftHand: said.leftHand,
    torque: (torque) => torque,
    holds: (parts) => said.holds({ parts }),
    lapped: said.lapped,
    ground: said.ground,
    face: said.face,
    meets: (part) => said.meets({ part }),
    guardedBy: (part) => said.guardedBy({ part }),
    capped: (port) => said.capped({ port }),
    coveredBy: (port, part) => said.coveredBy({ port, part }),
    openInTransit: (port) => said.openInTransit({ port }),
    matched: said.matched,
    balanced: said.balanced,
    matchedTo: (part) => said.matchedTo({ part }),
    balancedWith: (part) => said.balancedWith({ part }),
    suppliedLoose: said.suppliedLoose,
    goesOn: said.goesOn,
    renewed: said.renewed,
    oiled: said.oiled,
    faceOf: (face, part) => said.faceOf({ face: words.face(face), part }),
    thread: words.thread,
    meetsFace: (finish) => said.meetsFace({ finish }),
    builtUp: (part) => said.builtUp({ part }),
    twoEnds: (upper, lower) => said.twoEnds({ upper, lower }),
    duct: said.duct,
    alt: {
      exploded: (family) => said.taken({ family }),
      strip: (family) => said.stages({ family }),
      bearsOn: (parts) => said.bearsOn({ parts }),
      joinedTo: (part) => said.joinedTo({ part }),
      spring: words.kinds.spring,
      allOn: (stage) => said.allOn({ stage }),
      stage: (stage, facts) => said.stage({ stage, facts }),
    },
    strip: {
      on: said.cellOn,
      off: said.cellOff,
      guard: said.cellGuard,
      discarded: said.cellDiscarded,
      some: said.cellSome,
      received: said.received,
      span: (first, last) => said.span({ first, last }),
    },
  };
}

export const englishWords = drawingWords(wordsIn('en'));

import { noType } from './token.ts';

/*
 * Which way to go on: the parser never goes back, so it looks ahead until one way is left. Where the first token decides, a
 * table says so. Elsewhere all ways are followed at once, token by token, through the states of the grammar: ALL(*) without the
 * context of the caller, which is what Langium's parser does. What is found is kept as an automaton, so that the same words are
 * followed only once.
 */

/** A place in a rule, before one of its tokens, before a call of another rule, where it forks, or at its end. */
export class State {
  private static count = 0;
  readonly id: number = State.count++;
  /** Types of the tokens that can be read here, and where it goes on. */
  types: Uint8Array | null = null;
  next: State | null = null;
  /** Where the rule that is called begins, and where it goes on behind it. */
  callee: RuleStates | null = null;
  /** Where it goes on without a token. */
  ways: readonly State[] = [];
  /** The rule that ends here. */
  ends: RuleStates | null = null;
}

/** Where a rule begins and ends, and where those go on that call it. */
export class RuleStates {
  readonly start: State = new State();
  readonly end: State = new State();
  readonly callers: State[] = [];

  constructor() {
    this.end.ends = this;
  }
}

/** What a piece of the grammar can begin with. */
export interface First {
  readonly types: ReadonlySet<number>;
  /** It can be nothing at all. */
  readonly isEmpty: boolean;
}

/** One of the ways that are followed: which one it was, where it is now, and where the rules that it is in go on. */
interface Config {
  readonly way: number;
  readonly state: State;
  readonly stack: readonly State[];
}

type Configs = ReadonlyMap<string, Config>;

/** What is known after some tokens: the ways that are left, and for each next token the one way, or what is known then. */
interface Ahead {
  readonly configs: Configs;
  readonly after: Map<number, Ahead | number>;
}

/** The tokens that come next. */
export interface Coming {
  /** Type of the next token; none after an error. */
  readonly type: number;
  /** Type of the token that many tokens behind it. */
  ahead(count: number): number;
}

/** None of the ways. */
const noWay = -1;

/** A place where the grammar forks. */
export class Fork {
  private readonly ways: readonly State[];
  private readonly firsts: () => readonly First[];
  /** The way for a type of token, where the first token decides; unset before the fork is first used. */
  private table: Int16Array | null | undefined;
  private start: Ahead | undefined;
  private readonly known = new Map<string, Ahead>();

  /** `firsts`: what each way can begin with, computed once, when all rules are made. */
  constructor(ways: readonly State[], firsts: () => readonly First[]) {
    this.ways = ways;
    this.firsts = firsts;
  }

  /** The way that the next tokens take, or none. */
  choose(coming: Coming): number {
    let { type } = coming;
    if (type === noType) return noWay;
    if (this.table === undefined) this.table = tableOf(this.firsts());
    if (this.table !== null) return this.table[type] ?? noWay;
    this.start ??= { configs: closed(this.ways.map((state, way) => ({ way, state, stack: [] }))), after: new Map() };
    let from = this.start;
    for (let count = 1; ; count++) {
      const found = from.after.get(type) ?? this.follow(from, type);
      if (typeof found === 'number') return found;
      from = found;
      type = coming.ahead(count);
    }
  }

  private follow(ahead: Ahead, type: number): Ahead | number {
    const reached = reach(ahead.configs, type);
    const decided = decision(reached);
    let found: Ahead | number;
    if (decided !== null) found = decided;
    else {
      const key = [...reached.keys()].join(' ');
      found = this.known.get(key) ?? { configs: reached, after: new Map() };
      this.known.set(key, found);
    }
    ahead.after.set(type, found);
    return found;
  }
}

/** The way for each type of token, where no type begins two of them and none can be nothing; else null. */
function tableOf(firsts: readonly First[]): Int16Array | null {
  const table = new Int16Array(1 + Math.max(0, ...firsts.flatMap(({ types }) => [...types]))).fill(noWay);
  for (const [way, { types, isEmpty }] of firsts.entries()) {
    if (isEmpty) return null;
    for (const type of types) {
      if (table[type] !== noWay) return null;
      table[type] = way;
    }
  }
  return table;
}

/** What can follow a state, also behind the end of its rule wherever that is called. */
export function following(state: State): First {
  const types = new Set<number>();
  const seen = new Set<State>([state]);
  for (const one of seen) {
    one.types?.forEach((isIn, type) => {
      if (isIn === 1) types.add(type);
    });
    for (const next of one.callee === null ? (one.ends?.callers ?? one.ways) : [one.callee.start]) seen.add(next);
  }
  return { types, isEmpty: false };
}

function keyOf({ state, stack }: Config): string {
  return `${state.id}:${stack.map(({ id }) => id).join('_')}`;
}

/** All that is reached without a token. */
function closed(configs: Iterable<Config>): Map<string, Config> {
  const all = new Map<string, Config>();
  const add = (config: Config) => {
    const { way, state, stack } = config;
    if (state.types !== null || (state.ends !== null && stack.length === 0)) {
      const key = `${way}/${keyOf(config)}`;
      if (!all.has(key)) all.set(key, config);
    } else if (state.ends !== null) add({ way, state: stack.at(-1)!, stack: stack.slice(0, -1) });
    else if (state.callee !== null) add({ way, state: state.callee.start, stack: [...stack, state.next!] });
    else for (const next of state.ways) add({ way, state: next, stack });
  };
  for (const config of configs) add(config);
  return all;
}

/** Where a token leads. A way whose rule has ended stays, as long as no other one reaches its end. */
function reach(configs: Configs, type: number): Configs {
  const moved: Config[] = [];
  const ended: [string, Config][] = [];
  for (const [key, config] of configs) {
    if (config.state.ends !== null) ended.push([key, config]);
    else if (config.state.types![type] === 1) moved.push({ ...config, state: config.state.next! });
  }
  const reached = closed(moved);
  if (![...reached.values()].some(({ state }) => state.ends !== null))
    for (const [key, config] of ended) reached.set(key, config);
  return reached;
}

/**
 * As many places are followed at once. What somebody writes has fewer than a hundred and fifty; `1 mm then 2 mm (…)` in one another
 * has twice as many with each bracket.
 */
const mostConfigs = 1000;

/** The one way that is left, or the first where more tokens cannot tell them apart; null: more tokens are needed. */
function decision(configs: Configs): number | null {
  const ways = new Set<number>();
  const byPlace = new Map<string, Set<number>>();
  let allEnd = true;
  for (const config of configs.values()) {
    ways.add(config.way);
    allEnd &&= config.state.ends !== null;
    const key = keyOf(config);
    byPlace.set(key, (byPlace.get(key) ?? new Set()).add(config.way));
  }
  if (ways.size === 0) return noWay;
  const isSame = [...byPlace.values()].every(({ size }) => size > 1);
  return ways.size === 1 || allEnd || isSame || configs.size > mostConfigs ? Math.min(...ways) : null;
}

import { describe, expect, it } from 'vitest';
import { Database, type Store } from './engine.ts';

/** A number in each file; whether it is even; a word for that; the sum of all. */
function numbers(firewall?: number) {
  const db = new Database();
  const input = db.input<number>();
  const isEven = db.query('even', (key) => (input.get(key) ?? 0) % 2 === 0, firewall === undefined ? {} : { firewall });
  const word = db.query('word', (key) => (isEven(key) ? 'even' : 'odd'));
  const sum = db.query('sum', () => (input.get('a') ?? 0) + (input.get('b') ?? 0));
  const words = db.query('words', () => `${word('a')}, ${word('b')}, ${sum('')}`);
  const log = () => {
    const before = db.log ?? [];
    db.log = [];
    return before;
  };
  return { db, input, isEven, word, words, log };
}

describe.each([[undefined], [1]])('a query database, with a firewall of rank %s', (firewall) => {
  it('computes once, and again only what has read what changed', () => {
    const { input, words, log } = numbers(firewall);
    input.set('a', 1);
    input.set('b', 2);
    log();
    expect(words('')).toBe('odd, even, 3');
    expect(words('')).toBe('odd, even, 3');
    expect(log().sort()).toEqual(['even a', 'even b', 'sum ', 'word a', 'word b', 'words ']);
    input.set('b', 5);
    expect(words('')).toBe('odd, odd, 6');
    expect(log().sort()).toEqual(['even b', 'sum ', 'word b', 'words ']);
  });

  it('stops where a result comes out equal', () => {
    const { input, word, log } = numbers(firewall);
    input.set('a', 1);
    log();
    expect(word('a')).toBe('odd');
    log();
    input.set('a', 3);
    expect(word('a')).toBe('odd');
    expect(log()).toEqual(['even a']);
    input.set('a', 3);
    expect(word('a')).toBe('odd');
    expect(log()).toEqual([]);
  });

  it('knows again what changed and changed back before it was asked', () => {
    const { input, word, words } = numbers(firewall);
    input.set('a', 1);
    expect(word('a')).toBe('odd');
    input.set('a', 2);
    input.set('a', 1);
    expect(words('')).toBe('odd, even, 1');
    input.delete('a');
    expect(words('')).toBe('even, even, 0');
  });
});

describe('a query database', () => {
  it('reads other things when it goes another way, and forgets the first', () => {
    const db = new Database();
    const input = db.input<number>();
    const chosen = db.query('chosen', () => input.get(input.get('which') === 1 ? 'a' : 'b'));
    input.set('which', 1);
    expect(chosen('')).toBeUndefined();
    input.set('which', 2);
    input.set('b', 7);
    expect(chosen('')).toBe(7);
    db.log = [];
    input.set('a', 1);
    expect(chosen('')).toBe(7);
    expect(db.log).toEqual([]);
  });

  it('refuses a query that depends on itself, and a firewall behind another of its rank', () => {
    const db = new Database();
    const ring: (key: string) => number = db.query('ring', (key) => ring(key) + 1);
    expect(() => ring('x')).toThrow('ring of x depends on itself');
    const wall = db.query('wall', () => 1, { firewall: 1 });
    const behind = db.query('behind', () => wall('') + 1);
    expect(() => db.query('second', () => behind(''), { firewall: 1 })('')).toThrow(
      'second is a firewall of rank 1, and reads behind',
    );
    expect(db.query('third', () => behind(''), { firewall: 2 })('')).toBe(2);
  });

  it('has a firewall of a higher rank see what changed behind a lower one', () => {
    const db = new Database();
    const input = db.input<number>();
    const wall = db.query('wall', () => Math.floor((input.get('') ?? 0) / 10), { firewall: 1 });
    const behind = db.query('behind', () => `${wall('')} tens`);
    const gathered = db.query('gathered', () => `about ${behind('')}`, { firewall: 2 });
    const last = db.query('last', () => `${gathered('')}.`);
    expect(last('')).toBe('about 0 tens.');
    input.set('', 25);
    expect(last('')).toBe('about 2 tens.');
    db.log = [];
    input.set('', 26);
    expect(last('')).toBe('about 2 tens.');
    expect(db.log).toEqual(['wall ']);
  });

  it('sweeps out what nothing reads now, and not what is read from outside', () => {
    const db = new Database();
    const input = db.input<string>();
    const leaf = db.query('leaf', (key) => key.length);
    const asked = db.query('asked', () => leaf(input.get('') ?? ''));
    for (const word of ['a', 'bb', 'ccc']) {
      input.set('', word);
      asked('');
    }
    expect(db.size).toBe(4);
    db.sweep(() => (query) => query === 'asked', 0);
    expect(db.size).toBe(2);
    db.log = [];
    input.set('', 'bb');
    expect(asked('')).toBe(2);
    expect(db.log).toEqual(['asked ', 'leaf bb']);
    input.set('', 'ccc');
    expect(asked('')).toBe(3);
  });
});

describe('values that are large', () => {
  const database = () => {
    const db = new Database();
    const input = db.input<number>();
    const large = db.query('large', (key) => ({ of: input.get(key) ?? 0 }), {
      held: { most: 2, always: (key) => key === 'kept' },
    });
    const word = db.query('word', (key) => `${large(key).of}`);
    db.log = [];
    return { db, input, large, word };
  };
  const keys = Array.from({ length: 20 }, (_, index) => `k${index}`);

  it('are dropped where they were not used lately, and who read them stays valid', () => {
    const { db, input, large, word } = database();
    for (const key of ['kept', ...keys]) word(key);
    expect(db.heldOf('large')).toBeLessThanOrEqual(5);
    db.log = [];
    for (const key of ['kept', ...keys]) word(key);
    large('kept');
    expect(db.log).toEqual([]);
    // Needed again, it is computed again, and nothing that reads it.
    expect(large('k0')).toEqual({ of: 0 });
    word('k0');
    expect(db.log).toEqual(['large k0']);
    db.log = [];
    input.set('k1', 7);
    expect(word('k1')).toBe('7');
    expect(word('k2')).toBe('0');
    expect(db.log.sort()).toEqual(['large k1', 'word k1']);
  });
});

describe('what was kept', () => {
  /** A sum of numbers, by way of whether each is even: as JSON, by its digest, and not at all. */
  const database = (values: Readonly<Record<string, number>>, store?: Store) => {
    const db = new Database((text) => `digest of ${text}`, store);
    const input = db.input<number>();
    for (const [key, value] of Object.entries(values)) input.set(key, value);
    const number = db.query('number', (key) => input.get(key) ?? 0, { trace: { text: String, keeps: 'end' } });
    const half = db.query('half', (key) => ({ half: Math.floor(number(key) / 2) }), {
      trace: { text: JSON.stringify, keeps: 'digest' },
    });
    const between = db.query('between', (key) => half(key).half);
    const sum = db.query('sum', (key) => ({ sum: between(key) + between('b') }), {
      trace: { text: JSON.stringify, keeps: JSON.parse },
    });
    db.log = [];
    return { db, input, sum };
  };
  const storeOf = (db: Database): Store => {
    const all = new Map([...db.stored()].map(({ query, key, result }) => [`${query} ${key}`, result]));
    return { get: (query, key) => all.get(`${query} ${key}`) ?? null };
  };
  const first = database({ a: 4, b: 6 });
  first.sum('a');
  const store = storeOf(first.db);

  it('names what was read, without what is between', () => {
    expect(store.get('sum', 'a')).toEqual({
      text: '{"sum":5}',
      digest: '{"sum":5}',
      reads: [
        { query: 'half', key: 'a', digest: '{"half":2}' },
        { query: 'half', key: 'b', digest: '{"half":3}' },
      ],
    });
    expect(store.get('half', 'a')).toEqual({
      text: null,
      digest: '{"half":2}',
      reads: [{ query: 'number', key: 'a', digest: '4' }],
    });
    expect([store.get('number', 'a'), store.get('between', 'a')]).toEqual([null, null]);
  });

  it('is taken over where all of that is the same', () => {
    const { db, sum } = database({ a: 4, b: 6 }, store);
    expect(sum('a')).toEqual({ sum: 5 });
    expect(db.log!.sort()).toEqual(['number a', 'number b']);
    expect([...db.stored()].map(({ result }) => result)).toEqual([null, null, null]);
  });

  it('is computed again where it is not, up to where it comes out the same', () => {
    const same = database({ a: 5, b: 6 }, store);
    expect(same.sum('a')).toEqual({ sum: 5 });
    expect(same.db.log!.sort()).toEqual(['half a', 'number a', 'number b']);
    const other = database({ a: 8, b: 6 }, store);
    expect(other.sum('a')).toEqual({ sum: 7 });
    expect(other.db.log!.sort()).toEqual([
      'between a',
      'between b',
      'half a',
      'half b',
      'number a',
      'number b',
      'sum a',
    ]);
  });

  it('changes with the inputs from then on', () => {
    const { db, input, sum } = database({ a: 4, b: 6 }, store);
    sum('a');
    db.log = [];
    input.set('b', 7);
    expect(sum('a')).toEqual({ sum: 5 });
    expect(db.log).toEqual(['number b', 'half b']);
    input.set('b', 9);
    expect(sum('a')).toEqual({ sum: 6 });
    expect(storeOf(db).get('sum', 'a')!.text).toBe('{"sum":6}');
  });

  it('says whether it can be taken over, and computes it not', () => {
    const { db } = database({ a: 4, b: 6 }, store);
    expect([db.isReady('sum', 'a'), db.isReady('sum', 'c')]).toEqual([true, false]);
    expect(db.log!.filter((line) => line.startsWith('sum'))).toEqual([]);
  });
});

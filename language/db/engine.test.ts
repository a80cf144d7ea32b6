import { describe, expect, it } from 'vitest';
import { Database } from './engine.ts';

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

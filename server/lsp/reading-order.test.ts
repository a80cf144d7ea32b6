import { expect, test } from 'vitest';
import { readingOrder } from './reading-order.ts';

test('what the open file needs is read first: beside it, then from the top, then the families of others', () => {
  const files = ['many/1/family', 'many/1/p', 'many/2/family', 'many/2/q', 'shared/sequences', 'shop'];
  const uris = files.map((file) => `file:///work/${file}.rebuild`);
  const order = readingOrder(uris, ['file:///work/many/2/q.rebuild']).map((uri) =>
    uri.slice('file:///work/'.length, -8),
  );
  expect(order).toEqual(['many/2/family', 'shop', 'shared/sequences', 'many/1/family', 'many/1/p', 'many/2/q']);
});

test('folders with thousands of files come last', () => {
  const jobs = Array.from({ length: 50 }, (_, index) => `file:///work/jobs/${index}.rebuild`);
  const order = readingOrder([...jobs, 'file:///work/p.rebuild']);
  expect(order[0]).toBe('file:///work/p.rebuild');
  expect(order).toHaveLength(51);
});

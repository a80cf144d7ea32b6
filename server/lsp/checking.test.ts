import { expect, test } from 'vitest';
import { Checking } from './checking.ts';
import { nextTurn } from './turn.ts';

/** A check whose pieces are the given lists of files, over and over; what happened, in order. */
function checkOf(
  pieces: readonly (readonly string[])[],
  during?: (piece: number, checking: Checking) => void,
  isWaiting = () => false,
) {
  const events: string[] = [];
  const checking = new Checking({
    *work() {
      for (const [index, changed] of pieces.entries()) {
        events.push(`piece ${index}`);
        during?.(index, checking);
        yield changed;
      }
    },
    publish: (uri) => events.push(`publish ${uri}`),
    isUrgent: (uri) => uri.startsWith('open'),
    isWaiting,
    done: () => events.push('done'),
    failed: (error) => events.push(`failed: ${(error as Error).message}`),
  });
  return { checking, events };
}

const turns = async (count: number) => {
  for (let turn = 0; turn < count; turn++) await new Promise<void>((resolve) => nextTurn(resolve));
};

test('what is open is published before anything else is worked on', async () => {
  const { checking, events } = checkOf([['open'], ['closed'], []]);
  checking.restart();
  await checking.settled();
  expect(events).toEqual(['piece 0', 'publish open', 'piece 1', 'piece 2', 'publish closed', 'done']);
});

test('edits that come together are checked once', async () => {
  const { checking, events } = checkOf([['open']]);
  for (let edit = 0; edit < 3; edit++) {
    checking.restart();
    await turns(1);
  }
  await checking.settled();
  expect(events).toEqual(['piece 0', 'publish open', 'done']);
});

test('messages that never end do not keep it from checking', async () => {
  const { checking, events } = checkOf([['open']]);
  checking.restart();
  for (let message = 0; message < 100; message++) {
    checking.notice();
    await turns(1);
  }
  expect(events).toContain('done');
});

test('an edit in the middle has it start over', async () => {
  let edits = 0;
  const { checking, events } = checkOf([['open'], ['closed']], (piece, one) => {
    if (piece === 1 && edits++ === 0) one.restart();
  });
  checking.restart();
  await checking.settled();
  expect(events.filter((event) => event === 'piece 0')).toHaveLength(2);
  expect(events.at(-1)).toBe('done');
});

test('a defect ends one check, and not the session', async () => {
  let fails = true;
  const { checking, events } = checkOf([['open']], () => {
    if (fails) throw new Error('broken');
  });
  checking.restart();
  await checking.settled();
  fails = false;
  checking.restart();
  await checking.settled();
  expect(events).toEqual(['piece 0', 'failed: broken', 'done', 'piece 0', 'publish open', 'done']);
});

test('it is not done before all has been read', async () => {
  let isReading = true;
  const { checking, events } = checkOf([['open']], undefined, () => isReading);
  checking.restart();
  const settled = checking.settled().then(() => events.push('settled'));
  await turns(10);
  expect(events).toEqual(['piece 0', 'publish open']);
  isReading = false;
  checking.restart();
  await settled;
  expect(events.slice(2)).toEqual(['piece 0', 'publish open', 'done', 'settled']);
});

test('nothing happens once it is stopped', async () => {
  const { checking, events } = checkOf([['open']]);
  checking.restart();
  checking.stop();
  await turns(10);
  expect(events).toEqual([]);
});

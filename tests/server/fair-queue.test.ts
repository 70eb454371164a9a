import { describe, expect, test } from 'vitest';
import { FairQueue } from '../../src/lib/server/fair-queue';

const of = (space: string, address: string) => ({ space, address });

/** Everything that waits, in the order in which it is taken, each done as it is taken. */
function order(queue: FairQueue<string>): string[] {
  const taken: string[] = [];
  for (let next = queue.take(0); next; next = queue.take(0)) taken.push(next.work);
  return taken;
}

describe('what waits to be worked out', () => {
  test.each([
    ['a space with many addresses', (i: number) => of('crowd', `address ${i}`)],
    ['an address with many spaces', (i: number) => of(`space ${i}`, 'crowd')]
  ])('%s keeps nobody else waiting for more than one of its own', (_, crowd) => {
    const queue = new FairQueue<string>(Infinity);
    for (let i = 0; i < 50; i++) queue.put(crowd(i), 1, `crowd ${i}`, 0);
    queue.take(0);
    queue.put(of('reed', 'home'), 1, 'a', 0);
    queue.put(of('sedge', 'office'), 1, 'b', 0);
    expect(order(queue).slice(0, 3)).toEqual(['a', 'b', 'crowd 1']);
  });

  test('of one hall is done in the order in which it came', () => {
    const queue = new FairQueue<string>(Infinity);
    for (let i = 0; i < 5; i++) queue.put(of('hall', 'door'), 2, `${i}`, 0);
    expect(order(queue)).toEqual(['0', '1', '2', '3', '4']);
  });

  test('is taken by what it costs, not by how many they are', () => {
    const queue = new FairQueue<string>(Infinity);
    for (let i = 0; i < 3; i++) queue.put(of('long', 'a'), 9, `long ${i}`, 0);
    for (let i = 0; i < 3; i++) queue.put(of('short', 'b'), 1, `short ${i}`, 0);
    expect(order(queue)).toEqual([
      ...['long 0', 'short 0', 'short 1', 'short 2'],
      ...['long 1', 'long 2']
    ]);
  });

  test('a minute later counts half: a space that was busy before is soon as good as another', () => {
    const queue = new FairQueue<string>(Infinity);
    queue.charge(of('before', 'a'), 8, 0);
    queue.charge(of('just now', 'b'), 3, 120);
    queue.put(of('just now', 'b'), 1, 'just now', 120);
    queue.put(of('before', 'a'), 1, 'before', 120);
    expect(queue.take(120)?.work).toBe('before');
  });

  test('when it is full the newest of whoever asks for most makes way, and nobody else', () => {
    const queue = new FairQueue<string>(10);
    for (let i = 0; i < 9; i++) expect(queue.put(of('crowd', 'a'), 1, `${i}`, 0)).toEqual([]);
    expect(queue.put(of('reed', 'b'), 1, 'reed', 0)).toEqual([]);
    expect(queue.put(of('sedge', 'c'), 2, 'sedge', 0)).toEqual(['8', '7']);
    expect(queue.put(of('crowd', 'd'), 1, '9', 0)).toEqual(['9']);
    expect(queue.waiting_s).toBe(10);
  });
});

import { expect, test } from 'vitest';
import { oneAtATime } from '../../src/lib/connection/one-at-a-time';

test('a second tap while the first is under way does nothing; one after it does it again', async () => {
  const made: string[] = [];
  let finish = () => {};
  const make = oneAtATime(async (name: string) => {
    made.push(name);
    await new Promise<void>((done) => (finish = done));
  });
  const first = make('one');
  await make('two');
  expect(made).toEqual(['one']);
  finish();
  await first;
  const third = make('three');
  finish();
  await third;
  expect(made).toEqual(['one', 'three']);
});

test('what fails lets the next one through, and its fault out', async () => {
  let isBroken = true;
  const make = oneAtATime(async () => {
    if (isBroken) throw new Error('no connection');
  });
  await expect(make()).rejects.toThrow('no connection');
  isBroken = false;
  await expect(make()).resolves.toBeUndefined();
});

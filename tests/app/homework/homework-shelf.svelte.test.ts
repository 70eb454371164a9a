import { expect, test } from 'vitest';
import { Shelf, type Home } from '../../../src/lib/app/homework/shelf';
import { drag } from '../../practice/drag';

test('homework that a phone kept before there were questions and a phase opens offline', async () => {
  const told = {
    ...{ title: 'Before Saturday', note: '', lessons: [], challenges: [drag], tries: 3, due: null },
    ...{ isClosed: false, answer: 'Half as fast.' }
  };
  const share = 'share-of-an-old-homework';
  const before = { share, token: 'token', name: 'Ina', told, opened: '2030-05-01T08:00:00.000Z' };
  const shelf = await Shelf.open();
  await shelf.keepHome(before as unknown as Home);
  const [home] = await shelf.homes();
  expect(home).toEqual({
    ...before,
    told: { ...told, from: '', objectives: [], questions: 1, phase: drag.visibility }
  });
  await shelf.forget(share);
  expect(await shelf.homes()).toEqual([]);
  shelf.close();
});

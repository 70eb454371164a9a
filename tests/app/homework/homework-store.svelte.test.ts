import { expect, test } from 'vitest';
import { HomeworkStore, type KeptHomework } from '../../../src/lib/app/homework/homework-store';
import { drag } from '../../practice/drag';

test('homework that a phone kept before there were questions and a phase opens offline', async () => {
  const told = {
    ...{ title: 'Before Saturday', note: '', lessons: [], challenges: [drag], tries: 3, due: null },
    ...{ isClosed: false, answer: 'Half as fast.' }
  };
  const share = 'share-of-an-old-homework';
  const before = { share, token: 'token', name: 'Ina', told, opened: '2030-05-01T08:00:00.000Z' };
  const store = await HomeworkStore.open();
  await store.keepHome(before as unknown as KeptHomework);
  const [home] = await store.homes();
  expect(home).toEqual({
    ...before,
    told: { ...told, from: '', objectives: [], questions: 1, phase: drag.visibility }
  });
  await store.forget(share);
  expect(await store.homes()).toEqual([]);
  store.close();
});

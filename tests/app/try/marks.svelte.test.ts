import { flushSync } from 'svelte';
import { expect, test } from 'vitest';
import { findLesson, loadLessons } from '../../../src/lib/course';
import { gradeTry } from '../../../src/lib/scoring';
import { Marks } from '../../../src/lib/app/try/marks.svelte';
import { aTry } from '../../practice/samples';

const challenges = findLesson('one-foot', loadLessons())?.challenges.slice(0, 2) ?? [];
const [first, second] = challenges;

/** A hand that turns the rod at an even rate from the challenge's start. */
function swept(id: string, challenge: string, by_deg: number) {
  const azimuth_deg = Array.from({ length: 301 }, (_, i) => 60 + (by_deg * i) / 300);
  const input = { kind: 'rod_input', rate_Hz: 100, elevation_deg: 0, azimuth_deg } as const;
  return aTry(id, { challenge, input, at: `2030-05-01T08:15:0${id.slice(-1)}.000Z` });
}

test('tries are graded from their rod input, each challenge for itself, with the best kept', async () => {
  const tries = [
    swept('m1', first.id, 10),
    swept('m2', first.id, 20),
    swept('m3', second.id, 10),
    swept('m4', 'no-such-challenge', 10)
  ];
  const marks = new Marks(challenges);
  marks.follow(tries);
  await expect.poll(() => marks.all.map(({ stored }) => stored.id)).toEqual(['m1', 'm2', 'm3']);
  const byHand = tries.slice(0, 2).map(({ input }) => gradeTry(first, input).grade.marks);
  expect(marks.at(first).map(({ graded }) => graded.grade.marks)).toEqual(byHand);
  expect(byHand[0]).toBeGreaterThan(byHand[1]);
  flushSync();
  expect(marks.best.get(first.id)).toBe(byHand[0]);
  expect(marks.at(second)).toHaveLength(1);
});

test('a pass given by an older model stays one', async () => {
  const older = { ...swept('m9', first.id, 1), marks: 92, model: '1.3.0' };
  expect(gradeTry(first, older.input).grade.passed).toBe(false);
  const marks = new Marks(challenges);
  marks.follow([older]);
  await expect.poll(() => marks.all.length).toBe(1);
  flushSync();
  expect(marks.best.get(first.id)).toBe(92);
});

test('a try that the model cannot run has no marks and stops nothing', async () => {
  const broken = aTry('m5', { challenge: first.id });
  broken.input = { ...broken.input, elevation_deg: 3, azimuth_deg: 4 };
  const marks = new Marks(challenges);
  marks.follow([broken, swept('m6', first.id, 10)]);
  await expect.poll(() => marks.all.map(({ stored }) => stored.id)).toEqual(['m6']);
  await expect.poll(() => marks.leftOut).toBe(1);
});

test('a try that another place on the page grades meanwhile is not left out', async () => {
  const tries = [swept('m7', second.id, 10), swept('m8', first.id, 10)];
  const ofPage = new Marks(challenges);
  const ofSecond = new Marks([second]);
  ofPage.follow(tries);
  ofSecond.follow(tries);
  await expect.poll(() => ofPage.all.map(({ stored }) => stored.id)).toEqual(['m7', 'm8']);
});

import { expect, test } from 'vitest';
import { allLessons } from '../../src/lib/course';
import { byHand } from '../../src/lib/course/hand';
import { describeTry, gradeTry, PASS_MARK, type Challenge } from '../../src/lib/scoring';
import { HAIR } from '../../src/lib/scoring/fading';
import { shareOf, travelGoalOf, type TravelGoal } from '../../src/lib/scoring/goals';
import { sampled } from '../samples';
import { challengeOf, gradedAs, oneFootGoals, overLevel, resultOf } from './results';

const DRAGS = allLessons()
  .flatMap(({ challenges }) => challenges)
  .flatMap((challenge) => {
    const goal = travelGoalOf(challenge);
    return goal ? [{ challenge, goal }] : [];
  });

/** About where a drag passes and where it does not. */
const NEAR = [-0.2, 0.2, 0.3];

const byReach = (challenge: Challenge, reach: number) =>
  gradeTry(
    challenge,
    byHand(challenge.reference, challenge.start, { reach, pace: 0, isEven: false })
  );

test('no drag passes that came out farther outside what was asked than a tenth of what may be off', () => {
  expect(DRAGS.length).toBeGreaterThan(20);
  const wrong = DRAGS.flatMap(({ challenge, goal }) =>
    sampled([-0.4, -0.3, -0.2, 0.2, 0.3, 0.4, 0.6], 3, NEAR).flatMap((reach) => {
      const { grade } = byReach(challenge, reach);
      const { value } = grade.goals.find((one) => one.goal.kind === 'travel') ?? { value: NaN };
      const outside_m = Math.abs(value - goal.target_m) - goal.band_m;
      const isFalse = grade.passed && outside_m > HAIR * goal.band_m;
      return isFalse ? [`${challenge.id}: ${outside_m} outside, ${grade.marks}`] : [];
    })
  );
  expect(wrong).toEqual([]);
});

test('the same part of the way that was asked is worth the same in every challenge', () => {
  const at = (goal: TravelGoal, travel_m: number) =>
    shareOf(goal, overLevel(resultOf({ travel_m })));
  const shares = DRAGS.flatMap(({ goal }) => [
    at(goal, 0.75 * (goal.target_m - goal.band_m)),
    at(goal, (goal.target_m + goal.band_m) / 0.75)
  ]);
  expect(shares).toEqual(shares.map(() => expect.closeTo((0.75 * PASS_MARK) / 100, 9) as unknown));
});

test('nothing makes up for what was not done, and how it was done costs its own weight', () => {
  const drag = challengeOf(oneFootGoals);
  const marks = (travel_m: number, on: number) => {
    const contact = Array.from({ length: 41 }, (_, i): 0 | 1 => (i <= on ? 1 : 0));
    return gradedAs(drag, resultOf({ travel_m, contact })).grade.marks;
  };
  const clean = marks(0.3, 40);
  // Off the bottom for a moment: contact has 30 of the marks.
  expect(clean - marks(0.3, 34)).toBeGreaterThan(5);
  expect(clean - marks(0.3, 0)).toBe(30);
  expect(marks(0.24, 40)).toBeLessThan(PASS_MARK);
  expect(marks(0.4, 40)).toBeLessThan(PASS_MARK);
});

test('what was made keeps its part where something else was not done at all, and passes nothing', () => {
  const task = allLessons()
    .flatMap(({ challenges }) => challenges)
    .find(({ id }) => id === 'reel-takes-slack');
  if (!task) throw new Error('no such challenge');
  // A clean drag, and no reel.
  const { grade } = gradeTry(task, task.beginner);
  expect(grade.goals.map(({ met }) => met)).toEqual([1, 0, 1]);
  // As half of what was asked of one thing: three quarters of that part. Each of three goals is rounded.
  expect(Math.abs(grade.marks - (34 / 67) * PASS_MARK)).toBeLessThanOrEqual(1.5);
  const still = gradeTry(task, {
    kind: 'sweep',
    from_deg: 60,
    to_deg: 60,
    duration_s: 4,
    elevation_deg: 8
  });
  expect(still.grade.marks).toBe(0);
});

test('what passes a hair outside is told as a hair over what may be off, never as more', () => {
  const three = DRAGS.find(({ challenge }) => challenge.id === 'exactly-three-feet');
  if (!three) throw new Error('no such challenge');
  const told = Array.from({ length: 60 }, (_, i) => byReach(three.challenge, 0.005 * i)).flatMap(
    (graded) =>
      graded.grade.passed ? [describeTry(three.challenge, graded, 'imperial', null).did] : []
  );
  const off = told.filter((did) => did.includes('too far'));
  expect(off.length).toBeGreaterThan(0);
  expect(off.filter((did) => !did.includes('a hair over 6\u00a0in too far'))).toEqual([]);
});

test('a distance that was right is not called wrong where something else was not done', () => {
  const rocks = DRAGS.find(({ challenge }) => challenge.id === 'contact-over-rocks');
  if (!rocks) throw new Error('no such challenge');
  const graded = gradeTry(rocks.challenge, rocks.challenge.beginner);
  expect(graded.grade.goals.find(({ goal }) => goal.kind === 'travel')?.met).toBe(1);
  const { did } = describeTry(rocks.challenge, graded, 'imperial', null);
  expect(did).toMatch(
    /the jig 3\sft.*: on the mark, give or take 6\sin; it touched 1 of 3 rocks\.$/
  );
});

test('what else was asked is told of, too: how far it strayed, the slack, the rests', () => {
  const told = (id: string) => {
    const asked = allLessons()
      .flatMap(({ challenges }) => challenges)
      .find((one) => one.id === id);
    if (!asked) throw new Error(`no challenge ${id}`);
    return describeTry(asked, gradeTry(asked, asked.reference), 'imperial', null).why;
  };
  expect(told('shake-in-place')).toMatch(/^The jig went \d\sin; within 6\sin was asked\.$/);
  expect(told('reel-takes-slack')).toMatch(/^The reel took up \d\sft.* of slack\.$/);
  expect(told('cold-water')).toMatch(/^It rested 11\ss, then 11\ss\.$/);
});

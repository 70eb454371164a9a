import { expect, test } from '@playwright/test';
import { loadLessons, type Lesson } from '../../src/lib/course';
import { goalSchemas } from '../../src/lib/scoring/goals';
import {
  expectKeysIn,
  failures,
  forSwitch,
  openLesson,
  sayIfAsked,
  takeRod,
  verdictOf
} from './by-ear';
import { GOAL_PLANS } from './goal-plans';
import { doByEar, type Step } from './listener';
import { litStart } from './on-screen';

const LESSONS = loadLessons();
const goalsOf = (lessons: readonly Lesson[], ids?: readonly string[]) =>
  new Set(
    lessons
      .flatMap(({ challenges }) => challenges)
      .filter(({ id }) => ids?.includes(id) ?? true)
      .flatMap(({ goals }) => goals.map(({ kind }) => kind))
  );

test('what is done by ear and by switch holds every kind of goal', { tag: '@any-width' }, () => {
  const done = goalsOf(
    LESSONS,
    GOAL_PLANS.map(({ challenge }) => challenge)
  );
  expect(done).toEqual(goalsOf(LESSONS));
  const kinds = goalSchemas.map(({ entries }) => entries.kind.literal);
  // No lesson asks for these two: a guide may, in homework.
  expect(kinds.filter((kind) => !done.has(kind))).toEqual(['peak_height', 'tight']);
});

const HOW = { keys: 'keys', switch: 'one switch' } as const;

// `npm test` does none of these: what is passed unseen, by keys and by the switch, is done and told likewise.
for (const how of ['keys', 'switch'] as const) {
  for (const plan of GOAL_PLANS) {
    test(
      `${plan.challenge} is passed by ${HOW[how]} and by what is told alone`,
      { tag: ['@any-width', '@long'] },
      async ({ page }) => {
        test.slow();
        await openLesson(page, plan.lesson);
        const place = await takeRod(page, plan.challenge);
        expect(await failures(place, plan, how)).toEqual([]);
      }
    );
  }
}

/** A little of what any task asks, well or not. */
const A_LITTLE: Step[] = [{ hold: 'up', ms: 600 }, { press: 'done' }];

/** What hangs over the water is dropped first. */
const DROPPED: Step[] = [{ press: 'start', ms: 0 }];

for (const { id, challenges } of LESSONS.filter((lesson) => lesson.challenges.length > 0)) {
  test(
    `every try of ${id} is done by one switch, from its rod to what is said of it`,
    { tag: ['@any-width', '@long'] },
    async ({ page }) => {
      test.setTimeout(90_000 * challenges.length);
      await openLesson(page, id);
      for (const [i, challenge] of challenges.entries()) {
        const place = await takeRod(page, challenge.id);
        const start: Step[] = (await litStart(place).isVisible()) ? DROPPED : [];
        const before = i === 0 ? forSwitch([]) : [];
        await doByEar(place, [...before, ...start, ...A_LITTLE], 'switch');
        await sayIfAsked(place);
        await verdictOf(place);
        await expectKeysIn(place);
        await place.getByRole('button', { name: 'Close', exact: true }).first().press('Enter');
      }
    }
  );
}

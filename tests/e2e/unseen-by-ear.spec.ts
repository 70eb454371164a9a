import { expect, test } from '@playwright/test';
import { loadLessons } from '../../src/lib/course';
import { failures, openLesson, takeRod } from './by-ear';
import { UNSEEN_PLANS } from './unseen-plans';

test(
  'what is done unseen, by ear, is every challenge of the lessons whose jig is hidden',
  { tag: '@any-width' },
  () => {
    const hidden = loadLessons()
      .flatMap(({ challenges }) => challenges)
      .filter(({ visibility }) => visibility === 'unseen');
    expect(UNSEEN_PLANS.map(({ challenge }) => challenge)).toEqual(hidden.map(({ id }) => id));
  }
);

/** `npm test` does a drag by keys and a count by the switch, `npm run test:long` all, both ways. */
const IN_SHORT = { keys: 'one-foot-unseen', switch: 'count-a-lighter-one' };

const HOW = { keys: 'keys', switch: 'one switch' } as const;

for (const how of ['keys', 'switch'] as const) {
  for (const plan of UNSEEN_PLANS) {
    test(
      `${plan.challenge} is passed unseen, by ${HOW[how]} and by what is told alone`,
      { tag: IN_SHORT[how] === plan.challenge ? ['@any-width'] : ['@any-width', '@long'] },
      async ({ page }) => {
        test.slow();
        await openLesson(page, plan.lesson);
        const place = await takeRod(page, plan.challenge);
        expect(await failures(place, plan, how)).toEqual([]);
      }
    );
  }
}

import { expect, test, type Locator, type Page } from '@playwright/test';
import { loadLessons, type Lesson } from '../../src/lib/course';
import { goalSchemas } from '../../src/lib/scoring/goals';
import { beginLesson } from './begin';
import { GOAL_PLANS, setSpeed, type GoalPlan } from './goal-plans';
import { doByEar, type How, type Step } from './listener';
import { visit } from './page';

/** Tries until one is passed: bites come at another time in each, and advice is to be heard first. */
const MOST_TRIES = 4;

async function openLesson(page: Page, lesson: string): Promise<void> {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await visit(page, `/lessons/${lesson}`);
  await beginLesson(page);
  const asked = page.locator('#predict');
  if ((await asked.getByRole('radio').count()) > 0) await asked.getByRole('radio').first().check();
  else await asked.getByRole('button', { name: 'More' }).click();
  await asked.getByRole('button', { name: 'Lock it in' }).click();
}

async function takeRod(page: Page, challenge: string): Promise<Locator> {
  const step = page.locator(`#${challenge}`);
  await step.getByRole('button', { name: 'Take the rod' }).click();
  const place = step.getByRole('dialog');
  // The screen is there before the water is, and the rod has the keys once both are.
  await expect(place.getByRole('slider')).toBeFocused();
  return place;
}

/** What is said of the try where it is said: the live region of its result. */
async function verdictOf(place: Locator): Promise<string> {
  const said = place.locator('.result[aria-live="polite"]');
  await expect(said).toContainText('of 100');
  await expect(said.locator('.change')).not.toBeEmpty();
  return ((await said.textContent()) ?? '').replace(/\s+/g, ' ');
}

/** Keys and switches go on from where they are: that is never nowhere. */
async function expectKeysIn(place: Locator): Promise<void> {
  const isIn = (dialog: Element) =>
    dialog !== document.activeElement && dialog.contains(document.activeElement);
  expect(await place.evaluate(isIn), 'something in the dialog has the keys').toBe(true);
}

/** For a switch: it can hold nothing, and the speeds are unfolded. */
const forSwitch = (speed: Step[]): Step[] => [
  { press: 'more', ms: 0 },
  { press: 'latch', ms: 0 },
  ...speed,
  { press: 'more', ms: 0 }
];

/** Tries it until it is passed. @returns what was said of the tries, if none was */
async function failures(place: Locator, plan: GoalPlan, how: How): Promise<string[]> {
  const { speed, steps } = (how === 'switch' ? plan.bySwitch : null) ?? plan;
  const said: string[] = [];
  for (let n = 1; n <= MOST_TRIES; n++) {
    const first = n === 1 ? forSwitch(setSpeed(speed)) : [];
    const before = how === 'switch' ? first : setSpeed(speed);
    const told = await doByEar(place, [...before, ...steps], how);
    const verdict = await verdictOf(place);
    await expectKeysIn(place);
    if (/ Passed /.test(verdict)) return [];
    said.push(`${verdict}, after: ${told.map(({ text }) => text).join(', ')}`);
    await place.getByRole('button', { name: 'Try again' }).press('Enter');
    await expect(place.getByRole('slider')).toBeFocused();
  }
  return said;
}

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

/** `npm test` does one of them each way, `npm run test:lessons` all. */
const tagsOf = ({ challenge }: GoalPlan) =>
  challenge === 'contact-over-rocks' ? ['@any-width'] : ['@any-width', '@all-lessons'];

for (const plan of GOAL_PLANS) {
  test(
    `${plan.challenge} is passed by keys and by what is told alone`,
    { tag: tagsOf(plan) },
    async ({ page }) => {
      test.slow();
      await openLesson(page, plan.lesson);
      const place = await takeRod(page, plan.challenge);
      expect(await failures(place, plan, 'keys')).toEqual([]);
    }
  );
}

for (const plan of GOAL_PLANS.filter(({ bySwitch }) => bySwitch !== null)) {
  test(
    `${plan.challenge} is passed by one switch and by what is told alone`,
    { tag: tagsOf(plan) },
    async ({ page }) => {
      test.slow();
      await openLesson(page, plan.lesson);
      const place = await takeRod(page, plan.challenge);
      expect(await failures(place, plan, 'switch')).toEqual([]);
    }
  );
}

/** A little of what any task asks, well or not. */
const A_LITTLE: Step[] = [{ hold: 'up', ms: 600 }, { press: 'done' }];

async function sayIfAsked(place: Locator): Promise<void> {
  const guess = place.getByRole('form', { name: 'Your guess' });
  await expect(guess.or(place.locator('.grade')).first()).toBeVisible();
  if (!(await guess.isVisible())) return;
  // The keys come to it by themselves.
  await expectKeysIn(guess);
  const length = guess.getByRole('textbox');
  if (await length.isVisible()) await length.fill('9');
  const option = guess.getByRole('radio').first();
  if (await option.isVisible()) await option.check();
  await guess.getByRole('button', { name: 'Call it' }).press('Enter');
}

for (const { id, challenges } of LESSONS.filter((lesson) => lesson.challenges.length > 0)) {
  test(
    `every try of ${id} is done by one switch, from its rod to what is said of it`,
    { tag: ['@any-width', '@all-lessons'] },
    async ({ page }) => {
      test.setTimeout(90_000 * challenges.length);
      await openLesson(page, id);
      for (const [i, challenge] of challenges.entries()) {
        const place = await takeRod(page, challenge.id);
        await doByEar(place, [...(i === 0 ? forSwitch([]) : []), ...A_LITTLE], 'switch');
        await sayIfAsked(place);
        await verdictOf(place);
        await expectKeysIn(place);
        await place.getByRole('button', { name: 'Close', exact: true }).first().press('Enter');
      }
    }
  );
}

import { expect, type Locator, type Page } from '@playwright/test';
import { beginLesson } from './begin';
import { setSpeed, type GoalPlan } from './goal-plans';
import { TOLD } from './hand';
import { doByEar, type How, type Step } from './listener';
import { visit } from './page';

/** Tries until one is passed: bites come at another time in each, and advice is to be heard first. */
const MOST_TRIES = 4;

export async function openLesson(page: Page, lesson: string): Promise<void> {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await visit(page, `/lessons/${lesson}`);
  await beginLesson(page);
  const asked = page.locator('#predict');
  if ((await asked.getByRole('radio').count()) > 0) await asked.getByRole('radio').first().check();
  else await asked.getByRole('button', { name: 'More' }).click();
  await asked.getByRole('button', { name: 'Lock it in' }).click();
}

export async function takeRod(page: Page, challenge: string): Promise<Locator> {
  const step = page.locator(`#${challenge}`);
  await step.getByRole('button', { name: 'Take the rod' }).click();
  const place = step.getByRole('dialog');
  // The screen is there before the water is, and the rod has the keys once both are.
  await expect(place.getByRole('slider')).toBeFocused();
  return place;
}

/** What is said of the try where it is said: the live region of its result. */
export async function verdictOf(place: Locator): Promise<string> {
  const said = place.locator('.result[aria-live="polite"]');
  // Of a look no marks are told.
  await expect(said).toContainText(/of 100|Not counted/);
  await expect(said.locator(TOLD).or(said.getByText('Not counted')).first()).not.toBeEmpty();
  return ((await said.textContent()) ?? '').replace(/\s+/g, ' ');
}

/** Keys and switches go on from where they are: that is never nowhere. */
export async function expectKeysIn(place: Locator): Promise<void> {
  const isIn = (dialog: Element) =>
    dialog !== document.activeElement && dialog.contains(document.activeElement);
  expect(await place.evaluate(isIn), 'something in the dialog has the keys').toBe(true);
}

/** For a switch: it can hold nothing, and the speeds are unfolded. */
export const forSwitch = (speed: Step[]): Step[] => [
  { press: 'more', ms: 0 },
  { press: 'latch', ms: 0 },
  ...speed,
  { press: 'more', ms: 0 }
];

/** Tries it until it is passed. @returns what was said of the tries, if none was */
export async function failures(place: Locator, plan: GoalPlan, how: How): Promise<string[]> {
  const { speed, steps } = (how === 'switch' ? plan.bySwitch : null) ?? plan;
  const said: string[] = [];
  for (let n = 1; n <= MOST_TRIES; n++) {
    const first = n === 1 ? forSwitch(setSpeed(speed)) : [];
    const before = how === 'switch' ? first : setSpeed(speed);
    // A switch does not wait until the try ends by itself.
    const after: Step[] = how === 'switch' ? [{ press: 'done', ms: 0 }] : [];
    const told = await doByEar(place, [...before, ...steps, ...after], how);
    await sayIfAsked(place, plan.calls_in);
    const verdict = await verdictOf(place);
    await expectKeysIn(place);
    if (/ Passed /.test(verdict)) return [];
    said.push(`${verdict}, after: ${told.map(({ text }) => text).join(', ')}`);
    await place
      .getByRole('button', {
        name: /^(Try again|Try it with the jig showing|Now with the jig hidden)$/
      })
      .press('Enter');
    await expect(place.getByRole('slider')).toBeFocused();
  }
  return said;
}

/** Calls what the jig did, where that is asked: so far, and that it stayed down. */
export async function sayIfAsked(place: Locator, length_in = 9): Promise<void> {
  const guess = place.getByRole('form', { name: 'Your guess' });
  await expect(guess.or(place.locator('.grade')).first()).toBeVisible();
  if (!(await guess.isVisible())) return;
  // The keys come to it by themselves.
  await expectKeysIn(guess);
  const length = guess.getByRole('textbox');
  if (await length.isVisible()) await length.fill(`${length_in}`);
  const option = guess.getByRole('radio').first();
  if (await option.isVisible()) await option.check();
  await guess.getByRole('button', { name: 'Call it' }).press('Enter');
}

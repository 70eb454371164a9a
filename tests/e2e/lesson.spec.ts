import { expect, test, type Locator, type Page } from '@playwright/test';
import { watchAtRest } from './at-rest';
import { beginLesson } from './begin';
import { turnByButton } from './hand';
import { coveredByHint } from './on-screen';
import { faultsWideByNight, spillOf, visit } from './page';
import { keepSaid } from './said-over-time';
import { LANDSCAPE, SCREENS, SHARP } from './screens';

const ADDRESS = '/lessons/one-foot';
/** Twice what one foot asks for: a hand that a busy machine stops late goes farther, and fails all the more. */
const TOO_FAR_DEG = 20;
/** A third of a foot, where two feet and more are asked for. */
const TOO_LITTLE_DEG = 3;

const station = (page: Page, id: string): Locator => page.locator(`section#${id}`);
const first = (page: Page) => station(page, 'exactly-one-foot');
const marks = (page: Page) => first(page).locator('.grade .number');

async function predict(page: Page): Promise<void> {
  await visit(page, ADDRESS);
  await beginLesson(page);
  const asked = station(page, 'predict');
  await asked.getByRole('radio').nth(1).check();
  await asked.getByRole('button', { name: 'Lock it in' }).click();
  await expect(asked.getByText('right, by the model')).toBeVisible();
}

/** Waters are put up near the window only, so the way there is the learner's. */
async function reachChallenge(page: Page): Promise<void> {
  await predict(page);
  await page.getByRole('button', { name: 'Next: See it' }).click();
  await page.getByRole('button', { name: 'Next: Drag it one foot' }).click();
  await first(page).getByRole('button', { name: 'Take the rod' }).click();
}

async function sweepByHold(page: Page, turn_deg: number): Promise<void> {
  const button = first(page).getByRole('button', { name: 'Sweep', exact: true });
  await turnByButton(first(page).getByRole('slider', { name: /^Rod/ }), button, turn_deg);
}

test('nothing is shown before it was predicted', { tag: '@any-width' }, async ({ page }) => {
  await visit(page, ADDRESS);
  await expect(station(page, 'see')).toContainText('Opens once you’ve made your call.');
  await expect(page.getByRole('group', { name: 'Replay' })).toHaveCount(0);
  await predict(page);
  await expect(page.getByRole('group', { name: 'Replay' })).toHaveCount(1);
});

test(
  'on a phone the bright button leads from the call through both runs to the first try',
  { tag: ['@narrow', '@long'] },
  async ({ page }) => {
    await page.setViewportSize({ width: 390, height: 780 });
    await visit(page, ADDRESS);
    await predict(page);
    const bright = (id: string) => station(page, id).locator('button.main');
    await expect(bright('predict')).toHaveText('Next: See it');
    // One bright button at a time: the next step’s waits until it is come to.
    await expect(bright('see')).toHaveCount(0);
    await bright('predict').click();
    // What shows the point is not the first, and is not to be missed.
    await expect(bright('see')).toHaveText('Then: Fast');
    await expect(bright('see')).toBeInViewport({ ratio: 1 });
    await expect(page.getByRole('button', { name: 'Pause' })).toBeInViewport();
    await bright('see').click();
    await expect(page.getByText('it lifts. The dot is a ring while it’s up.')).toBeVisible();
    await expect(bright('see')).toHaveText('Next: Drag it one foot');
  }
);

test.describe('by its pixels', () => {
  test.use(SHARP);

  test(
    'how the rod is taken is written clear of rod, line, dial and angler, from the side and from above',
    { tag: ['@narrow', '@long'] },
    async ({ page }) => {
      await visit(page, '/lessons/slack');
      await beginLesson(page);
      await page.locator('#predict').getByRole('textbox').fill('12');
      await page.getByRole('button', { name: 'Lock it in' }).click();
      for (const [id, way] of [
        ['through-the-slack', 'Drag the rod to the right'],
        ['shake-in-place', 'Drag up, then down']
      ]) {
        const step = page.locator(`#${id}`);
        await step.getByRole('button', { name: 'Take the rod' }).click();
        await expect(step.locator('.caption')).toContainText(way);
        for (const size of [...SCREENS, LANDSCAPE]) {
          await page.setViewportSize(size);
          const named = `${id} on ${size.width}×${size.height}`;
          await expect.poll(() => step.evaluate(coveredByHint), named).toEqual([]);
        }
        await step.getByRole('button', { name: 'Close', exact: true }).click();
      }
    }
  );
});

test(
  'a lesson that was opened goes on without a connection, before the app is kept',
  { tag: '@any-width' },
  async ({ page, context }) => {
    const isAllHere = await watchAtRest(page);
    await visit(page, ADDRESS);
    await expect.poll(isAllHere).toBe(true);
    await context.setOffline(true);
    await beginLesson(page);
    const asked = station(page, 'predict');
    await asked.getByRole('radio').nth(1).check();
    await asked.getByRole('button', { name: 'Lock it in' }).click();
    await page.getByRole('button', { name: 'Next: See it' }).click();
    await expect(page.getByRole('group', { name: 'Replay' })).toBeVisible();
    await page.getByRole('button', { name: 'Next: Drag it one foot' }).click();
    await first(page).getByRole('button', { name: 'Take the rod' }).click();
    await expect(first(page).getByRole('slider', { name: /^Rod/ })).toBeFocused();
  }
);

test(
  'what was picked in one lesson is not picked in the next',
  { tag: '@any-width' },
  async ({ page }) => {
    await predict(page);
    await page.evaluate(() => {
      const link = Object.assign(document.createElement('a'), {
        href: '/lessons/weight-and-depth'
      });
      document.body.append(link);
      link.click();
    });
    await expect(page).toHaveURL(/weight-and-depth/);
    await beginLesson(page);
    await expect(page.getByRole('button', { name: 'Lock it in' }).first()).toBeDisabled();
  }
);

/** Presses of the speed buttons, from the task’s own pace on. */
async function setSpeed(page: Page, name: 'Slower' | 'Faster', presses: number): Promise<void> {
  await first(page).getByText('More', { exact: true }).click();
  for (let i = 0; i < presses; i++) await first(page).getByRole('button', { name }).click();
  await first(page).getByText('More', { exact: true }).click();
}

/**
 * Holds the key until the page says that the tip has gone so many inches, and lets go in the page
 * itself: a busy machine brings a key press from outside too late.
 */
async function sweepUntil(page: Page, tip_in: number): Promise<void> {
  await first(page).getByRole('slider', { name: /^Rod/ }).focus();
  await page.keyboard.down('ArrowUp');
  await first(page)
    .locator('figure.rod figcaption b')
    .evaluate(async (readout, enough) => {
      const inches = () => {
        const [, feet, whole] =
          /^(?:(\d+)\sft)?\s?(?:(\d+)[^/]*\sin)?/.exec(readout.textContent) ?? [];
        return 12 * Number(feet ?? 0) + Number(whole ?? 0);
      };
      while (inches() < enough) await new Promise(requestAnimationFrame);
      const up = new KeyboardEvent('keyup', { key: 'ArrowUp', bubbles: true });
      document.activeElement?.dispatchEvent(up);
    }, tip_in);
  await page.keyboard.up('ArrowUp');
}

test(
  'a slow foot passes by keys, one too far by mouse does not; it is replayed, and a reload keeps it',
  { tag: '@any-width' },
  async ({ page }) => {
    await reachChallenge(page);
    await sweepUntil(page, 12);
    await expect(marks(page)).toBeVisible();
    await expect(first(page).locator('.grade')).toContainText('Passed');
    await first(page).locator('.result').getByRole('button', { name: 'again' }).click();
    await sweepByHold(page, TOO_FAR_DEG);
    await expect(first(page).locator('.grade')).toContainText('Not yet');
    await expect(first(page).locator('.grade .words')).toContainText('You moved the tip');
    const got = parseInt((await marks(page).textContent()) ?? '');
    await first(page).getByRole('button', { name: 'Replay', exact: true }).click();
    await first(page).getByRole('slider', { name: 'Moment of the replay' }).fill('0');
    await expect(first(page).locator('figure.bottom')).toBeInViewport({ ratio: 0.95 });
    await first(page).getByRole('button', { name: 'Back to the result' }).click();
    await expect(marks(page)).toBeVisible();
    const words = first(page).locator('.result .words');
    const told = await words.textContent();
    await page.reload();
    await expect(words).toHaveText(told ?? '');
    const kept = first(page).getByRole('button', { name: `Try 2: ${got} marks. Replay` });
    await expect(kept).toBeVisible();
    await first(page).getByRole('button', { name: 'Close', exact: true }).first().click();
    // Passed, one goes on: the rod is there to be taken, and does not call for it.
    await expect(first(page).locator('button.main')).toHaveText(/^Next: /);

    // Opened again, the bright button names the step that is next, and none before it; what was passed
    // is never called missed, for a try that is read before it.
    const said = await keepSaid(page, {
      bright: '#about button.main',
      flag: 'nav li a[href="#exactly-one-foot"] small',
      marks: '#exactly-one-foot .grade .marks'
    });
    await visit(page, ADDRESS);
    await expect(first(page).locator('.grade .marks')).toContainText('Passed');
    const onward = 'Go on: Drag it two feet';
    await expect(station(page, 'about').locator('button.main')).toHaveText(onward);
    expect(await said()).toEqual({
      bright: [onward],
      flag: [],
      marks: [expect.stringContaining('Passed')]
    });
  }
);

test(
  'a fast yard fails, and the advice says how far and how slowly',
  { tag: ['@narrow', '@long'] },
  async ({ page }) => {
    await reachChallenge(page);
    await setSpeed(page, 'Faster', 5);
    // With the rod's 1.75 m from hand to tip, a yard and a little.
    await sweepByHold(page, 34);
    await expect(marks(page)).toBeVisible();
    await expect(first(page).locator('.grade')).toContainText('Not yet');
    await expect(first(page).locator('.grade .change')).toContainText('1 ft');
    await expect(first(page).locator('.grade .words')).toContainText(/too far|left the bottom/);
    await first(page).getByRole('button', { name: 'Try again' }).click();
    await expect(first(page).getByRole('slider', { name: /^Rod/ })).toBeFocused();
    await expect(first(page).locator('.task')).toBeInViewport();
    await expect(first(page).getByRole('button', { name: 'Sweep', exact: true })).toBeVisible();
  }
);

test(
  'a lesson has no end while a try is left, and one that failed is marked apart from one not made',
  { tag: ['@any-width', '@long'] },
  async ({ page }) => {
    await reachChallenge(page);
    await sweepByHold(page, TOO_FAR_DEG);
    await expect(marks(page)).toBeVisible();
    await first(page).getByRole('button', { name: 'Close', exact: true }).first().click();
    const rail = page.getByRole('navigation', { name: 'Steps of the lesson' });
    const failed = rail.getByRole('link', { name: 'Drag it one foot , not passed yet' });
    await expect(failed).toBeVisible();
    await expect(rail.getByRole('link', { name: 'Drag it two feet', exact: true })).toBeVisible();
    // Read on to its end, past the tries.
    await page.getByRole('button', { name: 'Next: With a real rod' }).click();
    const end = station(page, 'field');
    await expect(end.getByText('Not passed yet:')).toContainText(
      'Drag it one foot, Drag it two feet, Drag it three feet, Keep contact over rocks.'
    );
    await visit(page, '/');
    await expect(page.getByText(/^Finish “One foot”/)).toBeVisible();
    await visit(page, ADDRESS);
    await end.getByRole('link', { name: 'Skip to: Lesson 2, Your hand’s ruler' }).click();
    await expect(page).toHaveURL(/your-hands-ruler/);
    await visit(page, '/lessons');
    await expect(page.getByText('1 not passed yet, 3 skipped')).toBeVisible();
    await visit(page, '/');
    await expect(page.getByText(/“One foot”/)).toHaveCount(0);
  }
);

test(
  'a reload with the rod in hand comes back to that try; one that was missed is tried again from the end',
  { tag: ['@narrow', '@long'] },
  async ({ page }) => {
    const rod = first(page).getByRole('slider', { name: /^Rod/ });
    await reachChallenge(page);
    await expect(first(page).locator('.bar')).toBeVisible();
    await page.reload();
    // Nobody has pressed a key yet: no frame stands round the rod.
    await expect(rod).toBeFocused();
    await expect(rod).toHaveCSS('outline-style', 'none');
    // Of one foot a hand falls short only if the machine stops it in time: this one goes too far, the others not far enough.
    for (const [id, turn_deg] of [
      ['exactly-one-foot', TOO_FAR_DEG],
      ['exactly-two-feet', TOO_LITTLE_DEG],
      ['exactly-three-feet', TOO_LITTLE_DEG],
      ['contact-over-rocks', TOO_LITTLE_DEG]
    ] as const) {
      const here = station(page, id);
      await expect(here.getByRole('dialog')).toBeVisible();
      const button = here.getByRole('button', { name: 'Sweep', exact: true });
      await turnByButton(here.getByRole('slider', { name: /^Rod/ }), button, turn_deg);
      await here.locator('.result').getByRole('button', { name: 'Next: ' }).click();
    }
    const result = station(page, 'result');
    await result.locator('button.main').click();
    await expect(first(page).getByRole('dialog')).toBeVisible();
    await first(page).getByRole('button', { name: 'Close', exact: true }).first().click();
    await page.reload();
    await expect(first(page).getByRole('button', { name: 'Take the rod' })).toBeInViewport();
    await expect(page.getByRole('dialog')).toHaveCount(0);
  }
);

test(
  'Back closes a try, also one opened again by a reload, and one more leaves the lesson',
  { tag: '@narrow' },
  async ({ page }) => {
    const dialog = first(page).getByRole('dialog');
    const leave = async () => {
      await page.goBack();
      await expect(dialog).toBeHidden();
      await expect(first(page).getByRole('button', { name: 'Take the rod' })).toBeInViewport();
      expect(new URL(page.url()).pathname).toBe(ADDRESS);
    };
    await visit(page, '/lessons');
    await reachChallenge(page);
    await expect(dialog).toBeVisible();
    await leave();
    await first(page).getByRole('button', { name: 'Take the rod' }).click();
    await expect(dialog).toBeVisible();
    await page.reload();
    await expect(dialog).toBeVisible();
    await leave();
    await page.goBack();
    await expect(page).toHaveURL(/\/lessons$/);
  }
);

// By day, pages are looked at where all are opened, and marks where each state of a result is.
test(
  'is accessible by night from first sight to the marks',
  { tag: ['@narrow', '@long'] },
  async ({ page }) => {
    test.slow();
    await page.emulateMedia({ reducedMotion: 'reduce' });
    await visit(page, ADDRESS);
    expect(await faultsWideByNight(page)).toEqual([]);
    await reachChallenge(page);
    await sweepByHold(page, 5);
    await expect(marks(page)).toBeVisible();
    expect(await spillOf(page)).toBeLessThanOrEqual(0);
    expect(await faultsWideByNight(page)).toEqual([]);
  }
);

import { expect, test, type Page } from '@playwright/test';
import { beginLesson } from './begin';
import { visit } from './page';
import { SCREENS } from './screens';

test(
  'what to notice in an example, the example, what plays it and what comes next share one view of a phone',
  { tag: '@narrow' },
  async ({ page }) => {
    await page.emulateMedia({ reducedMotion: 'reduce' });
    await page.setViewportSize(SCREENS[0]);
    await visit(page, '/lessons/one-foot');
    await beginLesson(page);
    await page.locator('#predict').getByRole('radio').first().check();
    await page.getByRole('button', { name: 'Lock it in' }).click();
    const see = page.locator('#see');
    const told = async (move: string) => {
      await see.getByRole('radio', { name: move, exact: true }).check();
      await expect(see.getByRole('group', { name: 'Replay' })).toBeVisible();
      return see.locator('figure.bottom figcaption').innerText();
    };
    const [slow, fast] = [await told('Slow'), await told('Fast')];
    // They end alike: what happened on the way tells them apart.
    expect(slow).not.toContain('up');
    expect(fast).toMatch(/on the bottom, was .* up/);
    // On a busy machine what is above may still be laid out: then it is scrolled to anew.
    await expect(async () => {
      const soon = { timeout: 1000 };
      const said = see.getByText('Fast: it lifts.');
      // Not to the fraction of a pixel.
      await said.evaluate((top) => {
        top.scrollIntoView();
        scrollBy(0, -1);
      });
      await expect(said).toBeInViewport({ ratio: 1, ...soon });
      await expect(see.locator('figure.whole')).toBeInViewport({ ratio: 0.99, ...soon });
      await expect(see.getByRole('button', { name: 'Replay' })).toBeInViewport({
        ratio: 1,
        ...soon
      });
      await expect(see.getByRole('button', { name: /^Next: / })).toBeInViewport({
        ratio: 1,
        ...soon
      });
    }).toPass();
  }
);

/** Into a lesson and past its call, whatever is called. */
async function toExamples(page: Page, id: string): Promise<void> {
  await visit(page, `/lessons/${id}`);
  await beginLesson(page);
  const asked = page.locator('#predict');
  await asked.getByRole('radio').first().check();
  await asked.getByRole('button', { name: 'Lock it in' }).click();
  // What is answered must not push it below the edge.
  const next = asked.getByRole('button', { name: /^Next: / });
  await expect(next).toBeInViewport({ ratio: 1 });
  // Names wrap otherwise once their font is there.
  await page.evaluate(async () => void (await document.fonts.ready));
  await next.click();
}

for (const id of ['your-hands-ruler', 'from-the-boat'])
  test(
    `come to from the call, the examples of ${id} and what comes next are in one view of a phone`,
    { tag: ['@narrow', '@long'] },
    async ({ page }) => {
      await page.emulateMedia({ reducedMotion: 'reduce' });
      await page.setViewportSize({ width: 390, height: 780 });
      await toExamples(page, id);
      const see = page.locator('#see');
      await expect(see.getByRole('button', { name: /^Then: / })).toBeInViewport({ ratio: 1 });
      await expect(see.getByRole('button', { name: /^Next: / })).toBeInViewport({ ratio: 1 });
    }
  );

test(
  'an answer that comes late pushes nothing away from who has gone on',
  { tag: '@narrow' },
  async ({ page }) => {
    // A phone that takes long over the model.
    await page.addInitScript(() => {
      const listen = Worker.prototype.addEventListener;
      Worker.prototype.addEventListener = function (
        this: Worker,
        type: string,
        heard: (event: Event) => void
      ) {
        listen.call(this, type, (event) => setTimeout(() => heard.call(this, event), 2500));
      };
    });
    await page.emulateMedia({ reducedMotion: 'reduce' });
    await page.setViewportSize({ width: 360, height: 640 });
    await toExamples(page, 'the-clock');
    const see = page.locator('#see');
    await see.getByRole('button', { name: /^Then: / }).click();
    const top = () => see.evaluate((step) => Math.round(step.getBoundingClientRect().top));
    const before = await top();
    await expect(page.locator('#predict .reply')).toBeAttached();
    await expect.poll(top).toBe(before);
    await expect(see.locator('button.main')).toHaveText(/Then: /);
  }
);

test(
  'the last move that is asked for is seen, where a day is to be picked for below it',
  { tag: ['@narrow', '@long'] },
  async ({ page }) => {
    await page.emulateMedia({ reducedMotion: 'reduce' });
    await page.setViewportSize({ width: 390, height: 780 });
    await toExamples(page, 'season-and-mood');
    const see = page.locator('#see');
    const then = see.getByRole('button', { name: /^Then: / });
    while (await then.count()) await then.click();
    const picture = see.getByRole('img').first();
    await expect(picture).toBeInViewport({ ratio: 0.9 });
    // Nor is it scrolled away a little later.
    await page.waitForTimeout(1000);
    await expect(picture).toBeInViewport({ ratio: 0.9 });
  }
);

/** What is told above the picture is longest here. `npm test` looks at one of them, on the phone with the least room. */
for (const id of ['speed', 'the-clock', 'reading-bottoms'])
  for (const screen of SCREENS.slice(0, 2))
    test(
      `each example of ${id} stands where the one before did, and the bright button is in view, ${screen.width} px wide`,
      { tag: id === 'the-clock' && screen === SCREENS[0] ? ['@narrow'] : ['@narrow', '@long'] },
      async ({ page }) => {
        await page.emulateMedia({ reducedMotion: 'reduce' });
        await page.setViewportSize(screen);
        await toExamples(page, id);
        const see = page.locator('#see');
        const bright = see.locator('button.main');
        // Within its step: what is above may still be laid out.
        const top = () =>
          see.evaluate((step) => {
            const said = step.querySelector('.noticed')?.getBoundingClientRect().top ?? NaN;
            return Math.round(said - step.getBoundingClientRect().top);
          });
        await expect(bright).toHaveText(/Then: /);
        const first = await top();
        while (await see.getByRole('button', { name: /^Then: / }).count()) {
          await expect(bright).toBeInViewport({ ratio: 1 });
          await bright.click();
          expect(await top()).toBe(first);
        }
        await expect(bright).toHaveText(/^\s*Next: /);
        await expect(bright).toBeInViewport({ ratio: 1 });
      }
    );

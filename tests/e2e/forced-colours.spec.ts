import { expect, test, type Locator } from '@playwright/test';
import { beginLesson } from './begin';
import { failures, openLesson, sayIfAsked, takeRod, verdictOf } from './by-ear';
import { setSpeed } from './goal-plans';
import { turnByKey } from './hand';
import { goToQuestion, openClinic, options, phoneIn } from './in-clinic';
import { doByEar } from './listener';
import { visit } from './page';
import { SHARP } from './screens';
import { changeBy, contrastWithin } from './seen-pixels';
import { UNSEEN_PLANS } from './unseen-plans';

/** WCAG 2.2, 1.4.11: of what tells a state, or is a sign. */
const LEAST = 3;
/** Of a disc, what lies well within its edge: there is nothing but the disc and what is drawn on it. */
const INSIDE = { x: 0.25, y: 0.25, width: 0.5, height: 0.5 };
/** Of a line of words, where its letters hang down. */
const FOOT = { x: 0, y: 0.8, width: 1, height: 0.2 };

test.use({ ...SHARP, contextOptions: { forcedColors: 'active', reducedMotion: 'reduce' } });

/** Every pixel of the lower sheet is painted: nothing of it is left to the colours that are forced. */
const isPainted = (figure: Locator) =>
  figure
    .locator('canvas')
    .first()
    .evaluate((canvas: HTMLCanvasElement) => {
      const context = canvas.getContext('2d') as CanvasRenderingContext2D;
      const { data } = context.getImageData(0, 0, canvas.width, canvas.height);
      return data.every((value, i) => i % 4 !== 3 || value === 255);
    });

test(
  'with forced colors the place one is at and what has the keys can be seen',
  { tag: ['@narrow', '@long'] },
  async ({ page }) => {
    await visit(page, '/lessons');
    const place = page
      .getByRole('navigation', { name: 'Main' })
      .getByRole('link', { name: 'Lessons' });
    expect(await changeBy(place, () => visit(page, '/quiz'))).toBeGreaterThan(LEAST);
    await visit(page, '/explore');
    const tab = page.getByText('Lift', { exact: true });
    expect(
      await changeBy(tab, () => page.getByRole('radio', { name: 'Lift' }).check({ force: true }))
    ).toBeGreaterThan(LEAST);
    await visit(page, '/gear');
    const controls = ['button', 'combobox', 'textbox', 'link'] as const;
    for (const control of controls.map((role) => page.getByRole('main').getByRole(role).first())) {
      expect(await changeBy(control, () => control.focus()), `${control}`).toBeGreaterThan(LEAST);
    }
  }
);

test(
  'with forced colors of night a chart can be read by who once chose the day here, and of day by who chose the night',
  { tag: ['@narrow', '@long'] },
  async ({ page }) => {
    const chosen = { dark: 'Day', light: 'Night' } as const;
    for (const forced of ['dark', 'light'] as const) {
      await page.emulateMedia({ colorScheme: forced });
      await visit(page, '/explore');
      await page.getByRole('radio', { name: chosen[forced] }).check({ force: true });
      const label = page.getByRole('main').locator('svg text').first();
      expect(await contrastWithin(label), chosen[forced]).toBeGreaterThan(LEAST);
      await visit(page, '/tests/club');
      const name = page.getByRole('main').locator('svg text').first();
      expect(await contrastWithin(name), chosen[forced]).toBeGreaterThan(LEAST);
    }
  }
);

test(
  'with forced colors a question, a try and its result show what was picked, right, asked and reached',
  { tag: '@narrow' },
  async ({ page }) => {
    await visit(page, '/lessons/one-foot');
    await beginLesson(page);
    const asked = page.locator('section#predict');
    const wrong = asked.getByRole('radio').first();
    expect(await changeBy(wrong, () => wrong.check())).toBeGreaterThan(LEAST);
    await asked.getByRole('button', { name: 'Lock it in' }).click();
    for (const says of ['your answer', 'right, by the model']) {
      const mark = asked.getByText(says);
      await expect(mark).toBeVisible();
      expect(await contrastWithin(mark.locator('svg')), says).toBeGreaterThan(LEAST);
    }
    const tick = asked.getByText('right, by the model').locator('svg');
    for (const colorScheme of ['dark', 'light'] as const) {
      await page.emulateMedia({ colorScheme });
      expect(await contrastWithin(tick, INSIDE), colorScheme).toBeGreaterThan(LEAST);
    }
    const step = page.locator('#exactly-one-foot');
    await step.getByRole('button', { name: 'Take the rod' }).click();
    const bottom = step.locator('figure.bottom');
    // The goal, the track and the bait are drawn, ground and all, in colors of the picture's own.
    await expect.poll(() => isPainted(bottom)).toBe(true);
    await turnByKey(step.getByRole('slider', { name: /^Rod/ }), 12);
    const sign = step.locator('.grade .sign');
    await expect(sign).toBeVisible();
    expect(await contrastWithin(sign)).toBeGreaterThan(LEAST);
    expect(await isPainted(bottom)).toBe(true);
    const jig = bottom.getByText('The jig', { exact: true });
    expect(await contrastWithin(jig, FOOT)).toBeGreaterThan(LEAST);
    const again = step.getByRole('button', { name: 'Try again' });
    expect(await changeBy(again, () => again.focus())).toBeGreaterThan(LEAST);
    await step.getByRole('button', { name: 'Send it' }).click();
    const box = page.getByRole('dialog', { name: 'Send this try' });
    await expect(box).toBeVisible();
    const edge = () => box.evaluate((dialog) => (dialog.style.borderColor = 'Canvas'));
    expect(await changeBy(box, edge)).toBeGreaterThan(LEAST);
  }
);

test(
  'with forced colors of night and of day a call shows where one is and what one says, and a try that it passed',
  { tag: ['@narrow', '@long'] },
  async ({ page }) => {
    test.slow();
    const plan = UNSEEN_PLANS[0];
    await openLesson(page, plan.lesson);
    const place = await takeRod(page, plan.challenge);
    await doByEar(place, [...setSpeed(plan.speed), ...plan.steps], 'keys');
    const guess = place.getByRole('form', { name: 'Your guess' });
    await expect(guess).toBeVisible();
    for (const colorScheme of ['dark', 'light'] as const) {
      await page.emulateMedia({ colorScheme });
      const [down, lifted] = await guess.getByRole('radio').all();
      await lifted.check();
      expect(await changeBy(down, () => down.check()), colorScheme).toBeGreaterThan(LEAST);
      const length = guess.getByRole('textbox');
      expect(await changeBy(length, () => length.focus()), colorScheme).toBeGreaterThan(LEAST);
      const call = guess.getByRole('button', { name: 'Call it' });
      await down.focus();
      const go = () => page.keyboard.press('Tab');
      expect(await changeBy(call, go), colorScheme).toBeGreaterThan(LEAST);
      await expect(call).toBeFocused();
    }
    await sayIfAsked(place, plan.calls_in);
    await verdictOf(place);
    await place.getByRole('button', { name: 'Try again' }).press('Enter');
    await expect(place.getByRole('slider')).toBeFocused();
    expect(await failures(place, plan, 'keys')).toEqual([]);
    const sign = place.locator('.grade .sign');
    for (const colorScheme of ['dark', 'light'] as const) {
      await page.emulateMedia({ colorScheme });
      expect(await contrastWithin(sign), colorScheme).toBeGreaterThan(LEAST);
      expect(await contrastWithin(sign, INSIDE), colorScheme).toBeGreaterThan(LEAST);
    }
  }
);

test(
  'with forced colors a phone in a clinic shows what it voted for, and the big screen how many did',
  { tag: ['@any-width', '@long'] },
  async ({ page, browser }) => {
    const code = await openClinic(page);
    const phone = await phoneIn(browser, code);
    await phone.emulateMedia({ forcedColors: 'active', reducedMotion: 'reduce' });
    await goToQuestion(page);
    const option = options(phone).nth(1);
    const vote = async () => {
      await option.click();
      await expect(option).toHaveAttribute('aria-pressed', 'true');
      await phone.mouse.move(0, 0);
    };
    expect(await changeBy(option, vote)).toBeGreaterThan(LEAST);
    const last = options(phone).last();
    expect(await changeBy(last, () => phone.keyboard.press('Tab'))).toBeGreaterThan(LEAST);
    await expect(last).toBeFocused();
    // And the big screen, how many voted for what: by the bars, not by the stroke at their ends.
    await page.emulateMedia({ forcedColors: 'active', reducedMotion: 'reduce' });
    const stop = page.getByRole('button', { name: 'Stop voting' });
    await page.getByRole('button', { name: 'Previous' }).focus();
    expect(await changeBy(stop, () => page.keyboard.press('Tab'))).toBeGreaterThan(LEAST);
    await expect(stop).toBeFocused();
    await stop.click();
    await page.getByRole('button', { name: 'Reveal' }).click();
    for (const place of [page, phone]) {
      const right = place.getByText('right', { exact: true });
      await expect(right).toBeVisible();
      expect(await contrastWithin(right)).toBeGreaterThan(LEAST);
    }
    await page.addStyleTag({ content: '.line span { border: 0 !important; }' });
    const bar = page.locator('.line span[style*="100%"]');
    const hide = () => bar.evaluate((span) => (span.style.visibility = 'hidden'));
    expect(await changeBy(bar, hide)).toBeGreaterThan(LEAST);
    await phone.context().close();
  }
);

import { expect, test, type Locator, type Page } from '@playwright/test';
import { beginLesson } from './begin';
import { turnByKey } from './hand';
import { faultsOf, spillOf } from './page';

/** The model works a question out in a second or two; on a busy machine in many more. */
const WORKED_OUT = { timeout: 40_000 };

/** One question of every kind, and which control or option answers it. */
const KINDS = [
  { kind: 'mark', ask: 'mark-drag', slider: 'Your mark' },
  { kind: 'order', ask: 'order-paces', moved: /.: down$/ },
  { kind: 'choose', ask: 'near-or-far', option: 1 },
  { kind: 'trace', ask: 'pull-over-rock', option: 1 },
  { kind: 'felt', ask: 'felt-stems', option: 1 },
  { kind: 'fault', ask: 'fault-of-drag', option: 1 }
] as const;
type Kind = (typeof KINDS)[number];

/** What is shown with the question, by role and name. */
const SHOWN: Partial<Record<Kind['kind'], [role: 'img' | 'button', name: string]>> = {
  trace: ['img', 'Pull at the rod’s tip over time'],
  felt: ['button', 'Feel it come up the line'],
  fault: ['button', 'Show me']
};

const reports = (page: Page) => page.getByRole('group', { name: /press how you got it:$/ });
const report = (page: Page, name: string) => reports(page).getByRole('button', { name });
const told = (page: Page) => page.locator('.told');

async function open(page: Page, { kind, ask }: Kind): Promise<void> {
  await page.goto(`/quiz?ask=${ask}&seed=7`);
  await expect(report(page, 'I knew it')).toBeVisible(WORKED_OUT);
  await expect(reports(page).getByRole('button')).toHaveText([
    'I knew it',
    'I figured it out',
    'I guessed'
  ]);
  const shown = SHOWN[kind];
  if (shown) await expect(page.getByRole(shown[0], { name: shown[1] })).toBeVisible();
}

/** What takes the answer, found as a screen reader finds it. */
function control(page: Page, kind: Kind): Locator {
  if ('slider' in kind) return page.getByRole('slider', { name: kind.slider });
  if ('moved' in kind) return page.getByRole('button', { name: kind.moved }).first();
  const options = page.getByRole('group', { name: 'Your answer' });
  return options.getByRole('radio').nth(kind.option);
}

/** Goes there as a hand on the keyboard does. */
async function tabTo(page: Page, there: Locator): Promise<void> {
  for (let i = 0; i < 40; i++) {
    if (await there.evaluate((node) => node === document.activeElement)) return;
    await page.keyboard.press('Tab');
  }
  await expect(there).toBeFocused();
}

/**
 * Four kinds are answered by options: `npm test` answers one of them by keys and one by touch, each of which shows
 * something with them. It marks a place by touch, and puts things in order by keys; `npm run test:long` does all
 * both ways.
 */
const IN_SHORT = {
  '@any-width': ['order', 'fault'],
  '@narrow': ['mark', 'trace']
};
const tagsOf = (width: keyof typeof IN_SHORT, { kind }: Kind) =>
  IN_SHORT[width].includes(kind) ? [width] : [width, '@long'];

for (const kind of KINDS) {
  test(`${kind.kind}: answered by keys`, { tag: tagsOf('@any-width', kind) }, async ({ page }) => {
    await open(page, kind);
    // Things to order stand in one from the start, which may be thought right: that answers too.
    await expect(report(page, 'I knew it')).toBeEnabled({ enabled: 'moved' in kind });
    const group = page.getByRole('group', { name: 'Your answer' });
    // A group of options is one stop of the Tab key: its first; arrows go on from there.
    await tabTo(page, 'option' in kind ? group.getByRole('radio').first() : control(page, kind));
    await page.keyboard.press('slider' in kind ? 'PageUp' : 'Space');
    if ('slider' in kind) {
      await expect(control(page, kind)).toHaveAttribute('aria-valuetext', /^\d/);
    }
    if ('option' in kind) {
      for (let i = 0; i < 3 && !(await control(page, kind).isChecked()); i++) {
        await page.keyboard.press('ArrowDown');
      }
      await expect(control(page, kind)).toBeChecked();
    }
    // Each of the three answers, and none is the one to press: as wide as each other, and not bright.
    const looks = () =>
      reports(page)
        .getByRole('button')
        .evaluateAll((all) => {
          const ink = getComputedStyle(document.body).color;
          return all.map((one) => {
            const isBright = getComputedStyle(one).backgroundColor === ink;
            return `${Math.round(one.getBoundingClientRect().width)} px${isBright ? ', bright' : ''}`;
          });
        });
    await expect.poll(async () => new Set(await looks()).size).toBe(1);
    expect((await looks())[0]).not.toContain('bright');
    await tabTo(page, report(page, 'I knew it'));
    await page.keyboard.press('Enter');
    await expect(told(page)).toBeFocused();
    await page.keyboard.press('Tab');
    await expect(page.getByRole('button', { name: 'Next', exact: true })).toBeFocused();
    await page.keyboard.press('Enter');
    await expect(page.getByText('That’s it.')).toBeVisible();
  });

  test(`${kind.kind}: answered by touch`, { tag: tagsOf('@narrow', kind) }, async ({ page }) => {
    await open(page, kind);
    await control(page, kind).tap();
    await report(page, 'I guessed').tap();
    await expect(told(page)).toBeFocused();
    expect(await faultsOf(page)).toEqual([]);
    expect(await spillOf(page)).toBeLessThanOrEqual(0);
    await page.getByRole('button', { name: 'Next', exact: true }).tap();
    await expect(page.getByText('That’s it.')).toBeVisible();
  });
}

test.describe('without a connection', () => {
  test.use({ serviceWorkers: 'allow' });

  test(
    'a question of the day is answered without a network, and is not asked again that day',
    { tag: '@any-width' },
    async ({ page, context }) => {
      await page.goto('/quiz');
      await expect(page.getByText('Questions come after your first lesson.')).toBeVisible();
      await expect(page.getByRole('link', { name: 'Begin: One foot' })).toBeVisible();
      // The try of the front page is one of that lesson's.
      await page.goto('/');
      await page.locator('main[data-awake]').waitFor();
      await turnByKey(page.getByRole('slider', { name: /^Rod/ }), 5);
      await page.getByRole('link', { name: 'Next: Lesson 1' }).click();
      await beginLesson(page);
      await page.locator('section#predict').getByRole('radio').nth(1).check();
      await page.getByRole('button', { name: 'Lock it in' }).click();
      await page.getByRole('link', { name: 'Skip to: Lesson 2, Your hand’s ruler' }).click();
      await page.goto('/quiz');
      await page.evaluate(() => navigator.serviceWorker.ready);
      await context.setOffline(true);
      await page.reload();
      await expect(page.getByText(/^1 of \d/)).toBeVisible(WORKED_OUT);
      await expect(report(page, 'I guessed')).toBeVisible(WORKED_OUT);
      const option = page.getByRole('group', { name: 'Your answer' }).getByRole('radio').first();
      const mark = page.getByRole('slider', { name: 'Your mark' });
      const down = page.getByRole('button', { name: /: down$/ }).first();
      await option.or(mark).or(down).click();
      await report(page, 'I guessed').click();
      await expect(told(page)).toBeFocused();
      await page.reload();
      // The day's count goes on, with what is left of it.
      await expect(page.getByText(/^2 of \d/)).toBeVisible(WORKED_OUT);
      await page.goto('/standing');
      await expect(page.getByText(/[01] of 1 right/)).toBeVisible();
    }
  );
});

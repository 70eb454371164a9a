import { expect, test, type Page } from '@playwright/test';
import { findChallenge, loadLessons } from '../../src/lib/course';
import type { Challenge } from '../../src/lib/scoring';
import { aRecord, aTry } from '../practice/samples';
import { openSpace, postHomework } from './in-guide';
import { post, tryBy } from './made-tries';
import { cutOffAtTwice, faultsByDayAndNight, faultsOf, spillOf, visit } from './page';
import { takeOver } from './take-over';

const task = findChallenge('exactly-one-foot', loadLessons()) as Challenge;

async function comeIn(page: Page, share: string, clients: number): Promise<void> {
  for (let n = 0; n < clients; n++) {
    const key = { share, token: `phone-${n}-`.padEnd(24, '0') };
    await post(page.request, '/api/homework/enter', { ...key, name: `Client ${n + 1}` });
    const made = tryBy([n / 50, 0], task, `try-${n}-`);
    const sent = { ...made, challenge: task.id, at: '2031-05-08T12:00:00.000Z' };
    await post(page.request, '/api/homework/send', { ...key, sent });
  }
}

/** Everything that a long list keeps behind a button. */
async function unfold(page: Page): Promise<void> {
  const more = page.getByRole('main').getByRole('button', { name: 'More', exact: true });
  while (await more.isVisible()) await more.click();
}

test.use({ contextOptions: { reducedMotion: 'reduce' } });

/**
 * A list shows twenty at first. `npm test` has some more tries, `npm run test:long` of each list some more and as many
 * as there may be, by night as well.
 */
const LISTS = [
  {
    ...{ homeworks: 23, clients: 6, sessions: 23, tries: 23 },
    tag: ['@narrow'],
    faults: faultsOf
  },
  {
    ...{ homeworks: 100, clients: 30, sessions: 200, tries: 200 },
    tag: ['@narrow', '@long'],
    faults: faultsByDayAndNight
  }
];

for (const { homeworks, clients, sessions, tries, tag, faults } of LISTS) {
  async function expectOpenToAll(page: Page, list: string): Promise<void> {
    expect.soft(await faults(page), list).toEqual([]);
    expect.soft(await spillOf(page), list).toBeLessThanOrEqual(0);
    expect.soft(await cutOffAtTwice(page), `${list}, letters of twice the size`).toEqual([]);
  }

  test(
    `a guide with ${homeworks} homeworks and ${clients} clients has lists that are open to all`,
    { tag: ['@long', ...tag] },
    async ({ page }) => {
      test.setTimeout(240_000);
      await openSpace(page);
      const asked = { tries: 2, challenges: [task] };
      let last = '';
      for (let n = 1; n <= homeworks; n++)
        last = await postHomework(page, { ...asked, title: `Homework ${n}` });
      await visit(page, last);
      const [, share] = /task#([\w-]{22,64})/.exec(await page.content()) ?? [];
      await comeIn(page, share, clients);
      await visit(page, '/guide');
      await unfold(page);
      await expect(page.getByRole('link', { name: /^Homework \d/ })).toHaveCount(homeworks);
      await expectOpenToAll(page, 'homeworks');
      await visit(page, last);
      await expect(page.getByRole('link', { name: /^Client \d/ })).toHaveCount(clients);
      await expectOpenToAll(page, 'clients');
      await page.goto('/guide/clients');
      await expect(page.getByRole('row', { name: /^Homework \d/ }).first()).toBeVisible();
      await expectOpenToAll(page, 'clients at a glance');
    }
  );

  test(
    `a space that is open in ${sessions} browsers says so in a list that is open to all, and each can be ended`,
    { tag: ['@long', ...tag] },
    async ({ page }) => {
      test.setTimeout(240_000);
      const { secret } = await post(page.request, '/api/guide/space', { name: 'Reedmere Guiding' });
      // The last is this one.
      for (let n = 1; n < sessions; n++) await post(page.request, '/api/guide/session', { secret });
      await visit(page, '/guide');
      await page.getByText('Key and space', { exact: true }).click();
      const ends = page.getByRole('button', { name: /^End session/ });
      await expect(page.getByText('this one')).toBeVisible();
      await expect(ends).toHaveCount(19);
      await unfold(page);
      await expect(ends).toHaveCount(sessions - 1);
      await expectOpenToAll(page, 'sessions');
      page.on('dialog', (dialog) => void dialog.accept());
      await ends.last().click();
      await expect(ends).toHaveCount(sessions - 2);
    }
  );

  test(
    `${tries} tries are listed and measured on pages that are open to all`,
    { tag },
    async ({ page }) => {
      test.setTimeout(240_000);
      const made = Array.from({ length: tries }, (_, n) => {
        const { input } = tryBy([(n % 9) / 20, 0], task, `try-${n}`);
        const at = new Date(Date.UTC(2030, 4, 1, 8, n)).toISOString();
        return aTry(`t${n}`, { challenge: task.id, input, at });
      });
      await takeOver(page, aRecord({ tries: made }));
      await expect(page.getByText(`${tries} tries kept`)).toBeVisible();
      await unfold(page);
      await expect(page.getByRole('row').nth(20)).toBeVisible();
      await expectOpenToAll(page, 'a record');
      await visit(page, '/ruler');
      await expect(page.getByRole('main').locator('svg').first()).toBeVisible();
      await expectOpenToAll(page, 'a ruler');
    }
  );
}

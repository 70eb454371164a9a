import { expect, test, type APIRequestContext, type Page } from '@playwright/test';
import { readFile } from 'node:fs/promises';
import { findChallenge, loadLessons } from '../../src/lib/course';
import type { Challenge } from '../../src/lib/scoring';
import { linkFor, openSpace, postHomework } from './in-guide';
import { post, rowsOf, tryBy, type Hand } from './made-tries';
import { sheetsOf, visit } from './page';
import { expectPrintReadable, expectReadable } from './smallest-text';

const lessons = loadLessons();

const EXACT: Hand = [0, 0];
const TOO_MUCH: Hand = [0.5, 0];
const TOO_LATE: Hand = [0, -0.7];
const ABOUT = [0, 0.05, 0.1, 0.02];

/** One task of each kind: the hand, what the guide reads of it, and the unit of its figure in a table. */
const KINDS: [id: string, hand: Hand, says: RegExp, figure: string, unit: string][] = [
  [
    'exactly-one-foot',
    TOO_MUCH,
    /\d.in too far on average.*Aim .* shorter/,
    'How far the jig went',
    'in'
  ],
  [
    'three-hops-even',
    TOO_MUCH,
    /in too high on average.*Aim .*in lower\./,
    'How high it hopped',
    'in'
  ],
  [
    'count-it-down',
    TOO_LATE,
    /\d.s too late on average.*Move .*s sooner after it touches\./,
    'Wait after it touched bottom',
    's'
  ],
  [
    'light-and-slow',
    TOO_MUCH,
    /ft\/s too fast on average.*Go .*ft\/s slower\./,
    'How fast it went',
    'ft/s'
  ],
  ['swim-at-a-height', EXACT, /ft\/s on average.*Reel evenly/, 'How fast it swam', 'ft/s'],
  ['shake-in-place', EXACT, /\d on target: tries differ by 0\..*In the band/, 'Twitches', ''],
  // Rests, a drag and bottom contact: its way is its figure, as its name says nothing of rests alone.
  ['cold-water', TOO_MUCH, /too far on average.*Aim .* shorter/, 'How far the jig went', 'in'],
  ['free-a-snag', EXACT, /marks on average.*In the band/, 'Marks of 100', 'marks']
];
const tasks = KINDS.map(([id]) => findChallenge(id, lessons) as Challenge);

/** Every task four times; the last try of each after the last day. */
async function handIn(request: APIRequestContext, share: string): Promise<void> {
  const key = { share, token: 'phone-of-bo'.padEnd(24, '0') };
  await post(request, '/api/homework/enter', { ...key, name: 'Bo' });
  for (const [i, challenge] of tasks.entries())
    for (const [n, more] of ABOUT.entries()) {
      const [reach, pace] = KINDS[i][1];
      const made = tryBy(
        [reach && reach + more, pace && pace + more],
        challenge,
        `${challenge.id}-${n}`
      );
      const at = `2031-05-${n === ABOUT.length - 1 ? '10' : '08'}T12:00:0${n}.000Z`;
      await post(request, '/api/homework/send', {
        ...key,
        sent: { ...made, challenge: challenge.id, at }
      });
    }
}

test(
  'homework of every kind is told in the figure of its task: in the list, on the client’s page, in a table file',
  { tag: ['@any-width', '@long'] },
  async ({ page, request }) => {
    await openSpace(page);
    const asked = { title: 'All kinds', tries: 4, due: '2031-05-09', challenges: tasks };
    const address = await postHomework(page, asked);
    await visit(page, address);
    const link = await linkFor(page);
    await handIn(request, link.split('#')[1]);
    await visit(page, address);
    await expect(page.getByRole('heading', { name: /^Bo done, late$/ })).toBeVisible();
    for (const [i, [id, , says]] of KINDS.entries()) {
      const standing = page.locator('.standing').filter({ hasText: `${tasks[i].title},` });
      await expect(standing, id).toContainText(says);
      if (!/shorter/.test(says.source)) await expect(standing, id).not.toContainText('shorter');
    }

    const saved = page.waitForEvent('download');
    await page.getByRole('link', { name: 'Save as a table' }).click();
    const file = await saved;
    expect(file.suggestedFilename()).toMatch(/^all-kinds-\d{4}-\d\d-\d\d\.csv$/);
    const text = await readFile(await file.path(), 'utf8');
    expect(text.charCodeAt(0)).toBe(0xfeff);
    const rows = rowsOf(text);
    for (const [i, [id, , , figure, unit]] of KINDS.entries()) {
      const own = rows.filter(({ Task }) => Task.replaceAll('"', '') === tasks[i].title);
      expect(
        own.map((row) => [row.Figure, row.Unit]),
        id
      ).toEqual(ABOUT.map(() => [figure, unit]));
      expect(
        own.filter(({ Late }) => Late === 'yes'),
        id
      ).toHaveLength(1);
      expect(
        own.map(({ Reached }) => Number.parseFloat(Reached)),
        id
      ).not.toContain(NaN);
    }

    const past = { change: 'extend', due: '2020-01-01' };
    const refused = await page.request.patch(
      `/api${address.replace('/guide/', '/guide/homework/')}`,
      {
        data: past
      }
    );
    expect(refused.status()).toBe(422);
    await page.getByLabel('Last day').fill(past.due);
    await page.getByRole('button', { name: 'Extend' }).click();
    await page.reload();
    await expect(page.getByLabel('Last day')).toHaveValue('2031-05-09');

    await page.getByRole('link', { name: 'Bo' }).click();
    for (const [i, [id, , says]] of KINDS.entries()) {
      const told = page.locator('section').filter({ hasText: tasks[i].ask.split(/[{.:]/)[0] });
      await expect(told.filter({ hasText: says }), id).not.toHaveCount(0);
    }
  }
);

/** In a room: its first challenges, with the name of the axis and what is asked. */
const ROOM: Record<string, [name: string, asked: RegExp, tick: RegExp]> = {
  'count-it-down': ['Wait after it touched bottom', /^asked: 0.s to 2\.5.s$/, /^0$|.s$/],
  'one-hop': ['How high it hopped', /^asked: 3.in to 8.in$/, /^0$|.in$/],
  'free-a-snag': ['Marks of 100', /^asked: 75 to 100.marks$/, /^\d+$/],
  'cold-water': ['How far the jig went', /^asked: 2.ft.4.in to 3.ft.8.in$/, /^0$|.ft$/]
};
const LESSONS = ['from-the-boat', 'hops', 'snags', 'season-and-mood'];
const HANDS: Hand[] = [EXACT, [-0.1, 0], [0.6, 0], [-0.5, 0]];
const PHONES = HANDS.map((_, i) => `phone-${i}`.padEnd(24, '0'));

/** The marks of an axis, in the order in which they stand. */
const ticksOf = (page: Page) =>
  page
    .locator('svg[role="group"] path.tick')
    .evaluateAll((ticks) =>
      ticks.map((tick) => Number(/^M([\d.]+)/.exec(tick.getAttribute('d') ?? '')?.[1]))
    );

/** Of a phone's page no figure of a plot is smaller; by hand, as the pictures of the bottom have it. */
const LEAST_PX = 12;

/** The height of the smallest words in the plots on a phone's width, CSS px. The page is left as it was. */
async function smallestOf(page: Page): Promise<number> {
  const before = page.viewportSize();
  await page.setViewportSize({ width: 360, height: 740 });
  const smallest = await page.locator('main svg text:visible').evaluateAll((texts) =>
    Math.min(
      ...texts.map((text) => {
        const drawn = (text as SVGTextElement).getScreenCTM()?.a ?? 0;
        return Number.parseFloat(getComputedStyle(text).fontSize) * drawn;
      })
    )
  );
  if (before) await page.setViewportSize(before);
  return smallest;
}

test(
  'ninety minutes for a club: each task is plotted by its own figure, and summary and handout are a sheet each',
  { tag: ['@any-width', '@long'] },
  async ({ page, request }) => {
    test.setTimeout(240_000);
    await openSpace(page);
    const wanted = { name: 'June meeting', minutes: 90, lessons: LESSONS };
    const { id } = await post(page.request, '/api/guide/clinic', wanted);
    await visit(page, `/clinic/${id}`);
    const code = await page.locator('.code').innerText();
    const room = `/api/clinic/${code}`;
    const act = (action: object) => post(page.request, `/api/guide/clinic/${id}`, action);
    const isIn = (token: string) => post(request, `${room}/join`, { token });
    for (const token of PHONES) await isIn(token);
    for (let at = 1, of = 2; at < of; at++) {
      await act({ do: 'go', to: at });
      const view = await isIn(PHONES[0]);
      of = view.of;
      if (view.shown.kind === 'talk') continue;
      for (const [i, token] of PHONES.entries()) {
        const { shown, part } = view;
        const own = `${at}-${i}`;
        const answer = shown.challenge
          ? tryBy(HANDS[i], shown.challenge, own)
          : { kind: 'vote', id: own.padEnd(24, '0'), option: shown.options[i % 2].id };
        await post(request, `${room}/answer`, { token, answer: { ...answer, part } });
      }
      await act({ do: 'hold' });
      await act({ do: 'reveal' });
      if (view.shown.kind !== 'try') continue;
      const [name, asked, tick] = ROOM[view.shown.challenge.id];
      const plot = page.getByRole('group', { name: new RegExp(`^${name}, one mark a try`) });
      await expect(plot.getByRole('button', { name: 'Replay one try' })).toHaveCount(HANDS.length);
      await expect(plot.locator('.axis')).toHaveText(name);
      await expect(plot.locator('.over')).toHaveText(asked);
      const labels = await plot.locator('.value').allTextContents();
      expect(labels.length, name).toBeGreaterThan(2);
      expect(labels.filter((label) => !tick.test(label))).toEqual([]);
      expect(await smallestOf(page), name).toBeGreaterThanOrEqual(LEAST_PX);
      const places = await ticksOf(page);
      const gaps = places.slice(1).map((x, i) => x - places[i]);
      expect(Math.max(...gaps) - Math.min(...gaps), name).toBeLessThan(1e-3);
    }
    await act({ do: 'end' });
    await expect(page.getByRole('heading', { name: 'The clinic is over' })).toBeVisible();
    expect(await smallestOf(page), 'the end').toBeGreaterThanOrEqual(LEAST_PX);
    await expectReadable(page, 'the end of five rounds');
    await page.setViewportSize({ width: 1280, height: 740 });
    const last = await page.getByText('The steps are on the handout.').boundingBox();
    const bar = await page.locator('.bar.only-on-screen').boundingBox();
    expect((last?.y ?? 0) + (last?.height ?? 0), 'drills above the bar').toBeLessThanOrEqual(
      bar?.y ?? 0
    );
    await visit(page, `/clinic/${id}/summary`);
    const hands = page.locator('svg.wide .of');
    await expect(hands.first()).toBeVisible();
    for (const [name] of Object.values(ROOM)) {
      await expect(hands.filter({ hasText: name }), name).not.toHaveCount(0);
    }
    expect(await sheetsOf(page)).toEqual([1, 1]);
    await expectPrintReadable(page, 'the summary');
    await page.getByRole('button', { name: 'Print a handout' }).click();
    expect(await sheetsOf(page)).toEqual([1, 1]);
    await expectPrintReadable(page, 'the handout');
  }
);

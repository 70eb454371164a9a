import { expect, test, type Locator, type Page } from '@playwright/test';
import { setTimeout as pause } from 'node:timers/promises';
import { loadLessons, type Lesson } from '../../src/lib/course';
import { lessonStations, type StationPart, type Station } from '../../src/lib/practice';
import { emptyRecord } from '../../src/lib/wire';
import { visit } from './page';

/** How a learner works the page: by keys alone, or with a finger. */
interface Learner {
  /** Does what a button or a choice is for. */
  press(target: Locator): Promise<void>;
  choose(option: Locator): Promise<void>;
  write(field: Locator, text: string): Promise<void>;
  /** Moves the rod a little, and is done. */
  makeTry(water: Locator): Promise<void>;
}

/** So many tabs are under way at once: each waits for the page to be drawn. */
const TABS = 4;
/** From this turn on one by one: in a dialog with few stops, four at once may pass the same one by for ever. */
const ROUNDS_BY_FOUR = 30;
/** A key whose echo is lost is not waited for any longer: where the keys are is looked up anyway. */
const ECHO_MS = 2_000;

/** Tabs from where the keys are, as one must without a pointer, and back where it went too far. */
async function tabTo(page: Page, target: Locator): Promise<void> {
  for (let i = 0; i < 60; i++) {
    const where = await target.first().evaluate(whereFocusIs);
    if (where === 'there') return;
    if (where === 'past') await page.keyboard.press('Shift+Tab');
    else {
      const tabs = Array.from({ length: i < ROUNDS_BY_FOUR ? TABS : 1 }, () =>
        page.keyboard.press('Tab')
      );
      await Promise.race([Promise.all(tabs), pause(ECHO_MS)]);
    }
  }
  await expect(target).toBeFocused();
}

/** Run in the page. A choice is reached by any of its group: keys go there together. */
function whereFocusIs(target: Element): 'there' | 'before' | 'past' {
  const now = document.activeElement ?? document.body;
  const isGroup = now instanceof HTMLInputElement && now.type === 'radio';
  if (now === target || (isGroup && now.name === target.getAttribute('name'))) return 'there';
  const order = target.compareDocumentPosition(now);
  return order & Node.DOCUMENT_POSITION_FOLLOWING ? 'past' : 'before';
}

const underWay = (water: Locator): Locator => water.locator('[data-phase="moving"]');

function byKeys(page: Page): Learner {
  return {
    async press(target) {
      await tabTo(page, target);
      await page.keyboard.press('Enter');
    },
    async choose(option) {
      await tabTo(page, option);
      await page.keyboard.press('Space');
    },
    async write(field, text) {
      await tabTo(page, field);
      await page.keyboard.type(text);
    },
    async makeTry(water) {
      await tabTo(page, water.getByRole('slider', { name: /^Rod/ }));
      // What hangs over the water is dropped first.
      const start = water.getByRole('button', { name: 'Start', exact: true });
      if (await start.isVisible()) await page.keyboard.press('Space');
      // The rod is still turning when the try is ended, so that it cannot end by itself before.
      await page.keyboard.down('ArrowUp');
      await expect(underWay(water)).toBeVisible();
      await page.keyboard.press('Space');
      await page.keyboard.up('ArrowUp');
    }
  };
}

/** Ends a try that has not ended by itself. A tap misses now and then: once more. */
async function end(water: Locator): Promise<void> {
  await expect(async () => {
    if (await underWay(water).isVisible()) {
      await water.getByRole('button', { name: 'Done', exact: true }).tap({ timeout: 1_000 });
    }
    await expect(underWay(water)).toHaveCount(0, { timeout: 2_000 });
  }).toPass();
}

function byTouch(page: Page): Learner {
  return {
    press: (target) => target.tap(),
    choose: (option) => option.tap(),
    write: (field, text) => field.fill(text),
    async makeTry(water) {
      // What hangs over the water is dropped first: there Start is lit.
      const start = water.locator('button.main', { hasText: /^Start$/ });
      if (await start.isVisible()) await start.tap();
      const dial = water.getByRole('slider', { name: /^Rod/ });
      // Waits until the page has come to rest under it.
      await dial.tap({ trial: true });
      const box = await dial.boundingBox();
      if (!box) throw new Error('no rod to be seen');
      const devtools = await page.context().newCDPSession(page);
      const send = (type: 'touchStart' | 'touchMove' | 'touchEnd', moved?: number) => {
        const x = box.x + box.width * (0.35 + (moved ?? 0));
        const y = box.y + box.height * (0.3 - (moved ?? 0));
        const touchPoints = moved === undefined ? [] : [{ x, y }];
        return devtools.send('Input.dispatchTouchEvent', { type, touchPoints });
      };
      await send('touchStart', 0);
      for (const moved of [0.02, 0.04, 0.06]) await send('touchMove', moved);
      await expect(underWay(water)).toBeVisible();
      await send('touchEnd');
      await devtools.detach();
      await end(water);
    }
  };
}

type Visit = (here: Locator, learner: Learner, part: StationPart) => Promise<void>;

async function predict(here: Locator, learner: Learner): Promise<void> {
  const number = here.getByRole('textbox');
  const isSaid = await number.isVisible();
  if (isSaid) await learner.press(here.getByRole('button', { name: 'More' }));
  else await learner.choose(here.getByRole('radio').first());
  await learner.press(here.getByRole('button', { name: 'Lock it in' }));
  await expect(here.getByText(/by the model|most guides/)).toBeVisible();
}

async function watch(here: Locator, learner: Learner): Promise<void> {
  await learner.press(here.getByRole('button', { name: /^(Replay|Pause)$/ }));
  await expect(here.locator('figure.bottom canvas').first()).toBeVisible();
}

async function attempt(here: Locator, learner: Learner): Promise<void> {
  await learner.press(here.getByRole('button', { name: 'Take the rod' }));
  await learner.makeTry(here);
  const guess = here.getByRole('form', { name: 'Your guess' });
  const marks = here.locator('.grade .number');
  await expect(marks.or(guess)).toBeVisible();
  if (await guess.isVisible()) await say(guess, learner);
  await expect(marks).toBeVisible();
  await learner.press(here.getByRole('button', { name: 'Close', exact: true }).first());
  await expect(here.getByRole('dialog')).toHaveCount(0);
}

async function say(guess: Locator, learner: Learner): Promise<void> {
  const length = guess.getByRole('textbox');
  if (await length.isVisible()) await learner.write(length, '9');
  const option = guess.getByRole('radio').first();
  if (await option.isVisible()) await learner.choose(option);
  await learner.press(guess.getByRole('button', { name: 'Call it' }));
}

const VISITS: Partial<Record<StationPart['kind'], Visit>> = {
  predict,
  see: watch,
  try: attempt,
  result: async (here, _, part) => {
    expect(part.kind).toBe('result');
    await expect(
      here.getByText(/^in one (hidden )?try|not tried hidden yet|nothing has bitten yet/).first()
    ).toBeVisible();
  },
  field: async (here) => {
    await expect(here.getByRole('heading', { name: 'Write down' })).toBeVisible();
  }
};

/** Advice comes when it is worked out and moves the page: then a finger goes there once more. */
async function goTo(button: Locator, { id, name }: Station, learner: Learner): Promise<void> {
  const heading = button.page().locator(`section#${id}`).getByRole('heading', { name, level: 2 });
  await expect(async () => {
    await learner.press(button);
    await expect(heading).toBeFocused({ timeout: 3_000 });
  }).toPass();
}

/** As `goTo`, from the last station on to another page. */
async function leave(link: Locator, { id }: Lesson, learner: Learner): Promise<void> {
  await expect(async () => {
    await learner.press(link);
    await expect(link.page()).not.toHaveURL(new RegExp(`${id}$`), { timeout: 3_000 });
  }).toPass();
}

/** Down a lesson from its first station to its end, and home. */
async function walk(page: Page, learner: Learner, lesson: Lesson): Promise<void> {
  await visit(page, `/lessons/${lesson.id}`);
  const [, ...way] = lessonStations(lesson, emptyRecord(), new Map());
  await goTo(page.getByRole('button', { name: /^Begin: / }), way[0], learner);
  for (const [i, station] of way.entries()) {
    const here = page.locator(`section#${station.id}`);
    await VISITS[station.part.kind]?.(here, learner, station.part);
    const below: Station | undefined = way[i + 1];
    if (below) {
      // A try is skipped until it is passed.
      const [onward, skipped] = ['Next', 'Skip to'].map((says) =>
        here.locator('.on').getByRole('button', { name: `${says}: ${below.name}`, exact: true })
      );
      await goTo(station.part.kind === 'try' ? onward.or(skipped) : onward, below, learner);
    } else await leave(here.locator('.on').getByRole('link'), lesson, learner);
  }
  await visit(page, '/lessons');
  const entry = page.getByRole('listitem').filter({ hasText: lesson.title });
  // Gone through, and of its tries those are counted that were passed, that failed and that were skipped.
  const counted = /^(done|begun|\d of \d passed|\d not passed yet|\d skipped)/;
  await expect(entry.getByText(counted).first()).toBeVisible();
}

/** Each lesson is walked one way, in turn by keys on a wide window and by touch on a phone. */
const HOWS = ['by keys alone', 'by touch'] as const;
const TAGS = { 'by keys alone': '@any-width', 'by touch': '@narrow' };
const howOf = (i: number) => HOWS[i % HOWS.length];
/** What is done at a station, as far as it is done otherwise than elsewhere. */
function kindOf(part: StationPart): string {
  if (part.kind === 'predict')
    return `predict ${part.section.question.say ? 'a number' : 'by options'}`;
  return part.kind === 'try' && part.says !== null ? 'try and say' : part.kind;
}
const kindsIn = (lesson: Lesson) =>
  lessonStations(lesson, emptyRecord(), new Map()).map(({ part }) => kindOf(part));
const LESSONS = loadLessons();

/** As in its turn, and the other way, too, where no lesson whose turn that is has some kind of its stations. */
function waysOf(lesson: Lesson, i: number): (typeof HOWS)[number][] {
  return HOWS.filter((how) => {
    const others = LESSONS.filter((_, k) => howOf(k) === how).flatMap(kindsIn);
    return howOf(i) === how || kindsIn(lesson).some((kind) => !others.includes(kind));
  });
}

/**
 * Those that npm test walks, short ones: all that is done at a station is done in one of them, by keys or by touch.
 * The others are walked by a command of their own, npm run test:long, where all of it is done both ways.
 */
const IN_SHORT: Record<(typeof HOWS)[number], string> = {
  'by keys alone': 'from-the-boat',
  'by touch': 'rigging'
};
const isInShort = (lesson: Lesson, how: (typeof HOWS)[number]) => IN_SHORT[how] === lesson.id;

test('every kind of station is walked by keys, and by touch', { tag: '@any-width' }, () => {
  const isDoneIn = (kind: string) => Object.keys(VISITS).some((done) => kind.startsWith(done));
  const kindsOf = (lessons: readonly Lesson[]) => new Set(lessons.flatMap(kindsIn));
  const walked = (how: (typeof HOWS)[number]) =>
    LESSONS.filter((lesson, i) => waysOf(lesson, i).includes(how));
  const all = kindsOf(LESSONS);
  for (const how of HOWS) expect(kindsOf(walked(how))).toEqual(all);
  const short = HOWS.flatMap((how) => walked(how).filter((lesson) => isInShort(lesson, how)));
  expect(short).toHaveLength(HOWS.length);
  expect([...kindsOf(short)]).toEqual(expect.arrayContaining([...all].filter(isDoneIn)));
});

for (const [i, lesson] of LESSONS.entries()) {
  for (const how of waysOf(lesson, i)) {
    const tag = isInShort(lesson, how) ? [TAGS[how]] : [TAGS[how], '@long'];
    test(`${lesson.id} is walked from end to end ${how}`, { tag }, async ({ page }) => {
      test.slow();
      await page.emulateMedia({ reducedMotion: 'reduce' });
      await walk(page, (how === 'by touch' ? byTouch : byKeys)(page), lesson);
    });
  }
}

import { expect, test, vi } from 'vitest';
import { render } from 'vitest-browser-svelte';
import { page, userEvent } from 'vitest/browser';
import '../../../src/app.css';
import { Attempt } from '../../../src/lib/app/try';
import { recordTable, TryList } from '../../../src/lib/app/record';
import { marksSoFar, Readings } from '../../../src/lib/app/ruler';
import { shownOf } from '../../../src/lib/app/ruler/shown';
import { findChallenge, loadLessons } from '../../../src/lib/course';
import { idsOf } from '../../../src/lib/course/drills';
import { Run } from '../../../src/lib/model';
import type { Challenge } from '../../../src/lib/scoring';
import { aRecord } from '../../practice/samples';
import type { StoredTry } from '../../../src/lib/wire';

/** A try ends by itself 1.2 s after the last movement. */
const LONG = { timeout: 50_000 };

const lessons = loadLessons();
const [dragId] = idsOf({ drill: 'drag', phase: 'seen', seed: 0 });
const drag = findChallenge(dragId, lessons) as Challenge;

test('a try is run once, from the hand to result, film, plots, advice, ruler, schedule, list and table', async () => {
  await page.viewport(1000, 900);
  const ticks = vi.spyOn(Run.prototype, 'tick');
  /** Runs of the model in this thread; the correction is solved in another. */
  const runs = () => new Set(ticks.mock.contexts).size;
  let kept: StoredTry[] = [];
  const props = {
    challenge: drag,
    says: '',
    units: 'metric' as const,
    tries: kept,
    ontried: (made: Omit<StoredTry, 'id' | 'at'>) => {
      kept = [{ ...made, id: 'once', at: '2030-05-01T08:15:00.000Z', phase: 'seen' }];
      void shown.rerender({ tries: kept });
    }
  };
  const shown = await render(Attempt, props);
  await page.getByRole('button', { name: 'Take the rod' }).click();
  const rod = page.getByRole('slider', { name: /^Rod/ });
  await expect.element(rod).toBeVisible();
  // The drawing on the page is the reference's own run.
  ticks.mockClear();
  (rod.element() as HTMLElement).focus();
  await userEvent.keyboard('{ArrowRight>}');
  await new Promise((resolve) => setTimeout(resolve, 700));
  await userEvent.keyboard('{/ArrowRight}');

  await expect.element(page.getByText('How the marks add up'), LONG).toBeVisible();
  await page.getByRole('button', { name: 'Replay', exact: true }).click();
  await expect.element(page.getByRole('slider', { name: 'Moment of the replay' })).toBeVisible();
  await userEvent.keyboard('{Escape}');
  await expect.element(page.getByRole('button', { name: /^Try 1: .* Replay/ })).toBeVisible();
  expect(runs()).toBe(1);

  await page.getByRole('button', { name: /^Try 1: .* Replay/ }).click();
  await expect.element(page.getByRole('region', { name: 'Replay of the try' })).toBeVisible();

  const find = (id: string) => findChallenge(id, lessons);
  const onfound = vi.fn();
  marksSoFar(kept, find, onfound);
  expect(onfound.mock.lastCall?.[0].marks).toHaveLength(1);
  const readings = new Readings();
  readings.follow(kept);
  expect(readings.of(kept[0])).toMatchObject({ asks: 'travel' });
  expect(shownOf(drag, 'seen', 0, kept[0])?.isTold).toBe(true);
  const table = await recordTable(aRecord({ tries: kept }), '2030-05-01T08:15:00.000Z');
  expect(await table.text()).toContain(`${dragId},seen`);
  shown.unmount();

  // After a journey through the store it is another object, and the same try.
  const read = JSON.parse(JSON.stringify(kept)) as StoredTry[];
  await render(TryList, { tries: read, units: 'metric' });
  await page.getByRole('button', { name: /^Show this try/ }).click();
  await expect.element(page.getByRole('region', { name: 'Replay of the try' })).toBeVisible();
  expect(runs()).toBe(1);
  ticks.mockRestore();
});

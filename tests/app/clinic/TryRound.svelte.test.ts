import { expect, test } from 'vitest';
import { render } from 'vitest-browser-svelte';
import { page } from 'vitest/browser';
import '../../../src/app.css';
import TryRound from '../../../src/lib/app/clinic/lead/TryRound.svelte';
import { findChallenge, loadLessons } from '../../../src/lib/course';
import { byHand } from '../../../src/lib/course/hand';
import type { Challenge } from '../../../src/lib/scoring';
import type { ScreenView } from '../../../src/lib/wire';

const challenge = findChallenge('exactly-one-foot', loadLessons()) as Challenge;
const { reference, start, goals } = challenge;
const input = byHand(reference, start, { reach: -0.5, pace: 0, isEven: false });

/** Both pictures of the bottom beside each other, once they are drawn. */
async function bottomsOf(asked: Challenge): Promise<string[]> {
  const replay = { challenge: asked, input };
  const view = { phase: 'revealed', tries: [], replay } as unknown as ScreenView;
  const props = { view, challenge: asked, units: 'metric' as const, onshow: () => {} };
  const { unmount } = await render(TryRound, { props });
  const pictures = page.getByRole('img', { name: /^Close-up of the jig on the bottom/ });
  await expect.element(pictures.nth(1)).toBeVisible();
  await new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn)));
  const sheetsOf = (picture: Element) => [...picture.querySelectorAll('canvas')];
  const drawn = pictures.elements().map((picture) =>
    sheetsOf(picture)
      .map((sheet) => sheet.toDataURL())
      .join()
  );
  await unmount();
  return drawn;
}

test('what was asked is drawn beside a replayed try and beside the reference', async () => {
  const withoutWay = { ...challenge, goals: goals.filter(({ kind }) => kind !== 'travel') };
  const [tried, good] = await bottomsOf(challenge);
  const [plainTried, plainGood] = await bottomsOf(withoutWay);
  // The same picture twice is the same: what differs is the target.
  expect(await bottomsOf(withoutWay)).toEqual([plainTried, plainGood]);
  expect(tried).not.toBe(plainTried);
  expect(good).not.toBe(plainGood);
});

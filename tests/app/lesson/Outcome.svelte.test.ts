import { expect, test } from 'vitest';
import { render } from 'vitest-browser-svelte';
import Outcome from '../../../src/lib/app/lesson/Outcome.svelte';
import { correctionOf, type Marks } from '../../../src/lib/app/try';
import { gradedNow } from '../../../src/lib/app/try/run-try';
import type { TryRun } from '../../../src/lib/app/try/try-runs';
import { loadLessons, type Lesson } from '../../../src/lib/course';
import type { RodInput } from '../../../src/lib/model';
import { byHand } from '../../../src/lib/course/hand';
import { describeTry, formatLength, guessWords, type Challenge } from '../../../src/lib/scoring';

test('how it went says of a missed try what its own result said to do, in the same words', async () => {
  const first = loadLessons().find(({ challenges }) => challenges.length > 0) as Lesson;
  const [challenge] = first.challenges;
  const lesson = { ...first, challenges: [challenge] };
  const { azimuth_deg } = challenge.start;
  const swept = Array.from({ length: 300 }, (_, i) => azimuth_deg + i / 10);
  const input: RodInput = {
    kind: 'rod_input',
    rate_Hz: 100,
    elevation_deg: challenge.start.elevation_deg,
    azimuth_deg: swept
  };
  const graded = gradedNow(challenge, { input }) as TryRun;
  const stored = { id: 'far', at: '2030-05-01T08:15:00.000Z', challenge: challenge.id, input };
  const kept = { marks: graded.grade.marks, passed: graded.grade.passed };
  expect(kept.passed).toBe(false);
  const marks = { isAll: true, at: () => [{ stored, kept, graded }] } as unknown as Marks;
  const screen = await render(Outcome, { lesson, marks, units: 'imperial', onretry: () => {} });
  const correction = await correctionOf(challenge);
  const { change } = describeTry(challenge, graded, 'imperial', correction);
  await expect.element(screen.getByText(change, { exact: true })).toBeVisible();
});

/** A try of a lesson's challenge by a hand that goes so much too far. */
function triedAs(challenge: Challenge, id: string, reach: number, called = {}) {
  const input = byHand(challenge.reference, challenge.start, { reach, pace: 1, isEven: true });
  const graded = gradedNow(challenge, { input, ...called }) as TryRun;
  const { marks, passed } = graded.grade;
  const at = '2030-05-01T08:15:00.000Z';
  const stored = { id, at, challenge: challenge.id, input, ...called };
  return { stored, graded, kept: { marks, passed } };
}

test('beside the best try stands what the first hidden one did, where a way was asked for', async () => {
  const ruler = loadLessons().find(({ id }) => id === 'your-hands-ruler') as Lesson;
  const [challenge] = ruler.challenges;
  const lesson = { ...ruler, challenges: [challenge] };
  const called = { guess_m: 0.3048 };
  const tries = [triedAs(challenge, 'first', 0.8, called), triedAs(challenge, 'told', 0, called)];
  expect(tries[1].kept.marks).toBeGreaterThan(tries[0].kept.marks);
  const marks = { isAll: true, at: () => tries } as unknown as Marks;
  const props = { lesson, units: 'imperial', onretry: () => {} } as const;
  const screen = await render(Outcome, { ...props, marks });
  const went = formatLength(tries[0].graded.result.travel_m, 'imperial');
  const said = screen.getByText(/Your first hidden try went /);
  await expect.element(said).toBeVisible();
  expect(said.element().textContent).toContain(`Your first hidden try went ${went}.`);
  await screen.unmount();
  const once = { isAll: true, at: () => [tries[0]] } as unknown as Marks;
  const alone = await render(Outcome, { ...props, marks: once });
  await expect.element(alone.getByText('in one hidden try')).toBeVisible();
  expect(alone.getByText(/Your first/).elements()).toEqual([]);
});

test('the call and the fix that are told are those of the try whose marks stand there, not of the last', async () => {
  const ruler = loadLessons().find(({ id }) => id === 'your-hands-ruler') as Lesson;
  const [challenge] = ruler.challenges;
  const lesson = { ...ruler, challenges: [challenge] };
  const called = { guess_m: 0.3048 };
  const tries = [
    triedAs(challenge, 'far', 0.25, called),
    triedAs(challenge, 'short', -0.7, called)
  ];
  expect(tries[0].kept.marks).toBeGreaterThan(tries[1].kept.marks);
  const [best, last] = tries.map(({ graded }) =>
    guessWords(
      { kind: 'travel', travel_m: called.guess_m },
      graded.result,
      'imperial',
      challenge.goals
    )
  );
  expect(best).not.toBe(last);
  const marks = { isAll: true, at: () => tries } as unknown as Marks;
  const screen = await render(Outcome, { lesson, marks, units: 'imperial', onretry: () => {} });
  await expect.element(screen.getByText(best, { exact: true })).toBeVisible();
  expect(screen.getByText(last, { exact: true }).elements()).toEqual([]);
  const correction = await correctionOf(challenge);
  const [fix, lastFix] = tries.map(
    ({ graded }) => describeTry(challenge, graded, 'imperial', correction).change
  );
  expect(fix).not.toBe(lastFix);
  await expect.element(screen.getByText(fix, { exact: true })).toBeVisible();
  expect(screen.getByText(lastFix, { exact: true }).elements()).toEqual([]);
});

test('each try with the jig hidden is called a hidden one, whichever way it is hidden', async () => {
  const given = loadLessons().find(({ id }) => id === 'weight-and-depth') as Lesson;
  const hidden = given.challenges.filter(({ visibility }) => visibility !== 'seen');
  expect(new Set(hidden.map(({ visibility }) => visibility)).size).toBe(2);
  const lesson = { ...given, challenges: hidden };
  const stored = { id: 'a', at: '2030-05-01T08:15:00.000Z', guess_down: true };
  const trace = { tip_x_m: [0], tip_z_m: [0], t_s: [0] };
  const graded = { challenge: hidden[0], result: { events: [], trace } };
  const made = { stored, kept: { marks: 80, passed: true }, graded };
  const at = () => [made, made];
  const marks = { isAll: true, at } as unknown as Marks;
  const screen = await render(Outcome, { lesson, marks, units: 'imperial', onretry: () => {} });
  expect(screen.getByText('the best of 2 hidden tries').elements()).toHaveLength(2);
});

import { expect, test } from 'vitest';
import { render } from 'vitest-browser-svelte';
import Outcome from '../../../src/lib/app/lesson/Outcome.svelte';
import { correctionOf, type Marks } from '../../../src/lib/app/try';
import { gradedNow } from '../../../src/lib/app/try/run-try';
import type { TryRun } from '../../../src/lib/app/try/try-runs';
import { loadLessons, type Lesson } from '../../../src/lib/course';
import type { RodInput } from '../../../src/lib/model';
import { describeTry } from '../../../src/lib/scoring';

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

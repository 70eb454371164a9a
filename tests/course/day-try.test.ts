import { describe, expect, test } from 'vitest';
import { DAY_RETRIEVES, dayOf, type DayReason } from '../../src/lib/course/day-choice';
import { dayTry } from '../../src/lib/course/day-try';
import { bearsOut, handWords, type JigReason } from '../../src/lib/course/day-verdict';
import { onScreen } from '../../src/lib/course/screen-try';
import { voiceFaults } from '../../src/lib/course/voice';

/** Shallow and deep, coldest and warmest, with and without a sign of the fish. */
const days = [1, 2, 3, 4, 7, 8, 16].map(dayOf);
const tries = DAY_RETRIEVES.flatMap((retrieve) =>
  days.map((day) => ({ retrieve, day, challenge: dayTry(day, retrieve) }))
);

describe('the retrieve picked for a day', () => {
  test('is tried in that day’s water, and the task names no other', () => {
    for (const { day, challenge } of tries) {
      expect(challenge.setup.water.depth_m).toBe(day.depth_m);
      expect(challenge.ask).not.toMatch(/°F/);
      expect(voiceFaults(challenge.ask)).toEqual([]);
    }
    expect(new Set(tries.map(({ challenge }) => challenge.id)).size).toBeGreaterThan(12);
  });

  test.each(tries)(
    'passes by its reference and not by a beginner: $challenge.id',
    ({ challenge }) => {
      expect(onScreen(challenge, challenge.reference).grade.passed).toBe(true);
      expect(onScreen(challenge, challenge.beginner).grade.passed).toBe(false);
    }
  );

  // What the model bears out of the retrieve it bears out of a hand that does it well.
  const defended: Record<(typeof DAY_RETRIEVES)[number], JigReason[]> = {
    drag: ['near', 'down'],
    'drag-hop': ['near', 'rises'],
    strokes: ['rises', 'covers'],
    shake: ['near', 'down'],
    swim: ['rises', 'covers']
  };
  test.each(tries)('does what defends it: $challenge.id', ({ retrieve, challenge }) => {
    const { result } = onScreen(challenge, challenge.reference);
    for (const reason of defended[retrieve]) expect(bearsOut(reason, result), reason).toBe(true);
  });

  test('hears whether the hand did what its defense said', () => {
    const said = (reason: DayReason, travel_m: number, peak_height_m: number) =>
      handWords(reason, { travel_m, peak_height_m }, 'imperial').replaceAll('\u00a0', ' ');
    expect(said('near', 0.6096, 0)).toBe(
      'You said: It stays close to one spot. Yours came 2 ft and never left bottom. It did what you said.'
    );
    expect(said('near', 3.048, 0.3048)).toBe(
      'You said: It stays close to one spot. Yours came 10 ft and got 1 ft off bottom. It didn’t do what you said.'
    );
    expect(said('empty', 0.6, 0)).toBe('');
  });
});

import { expect, test } from 'vitest';
import { ROD_RATE_HZ, simulate } from '../../src/lib/model';
import { findLesson, loadLessons } from '../../src/lib/course';

const challenges = findLesson('snags', loadLessons())?.challenges ?? [];
/** As a held button turns the rod: evenly, and no quicker at its middle. */
const evenly = (from_deg: number, by_deg: number, time_s: number) =>
  Array.from(
    { length: time_s * ROD_RATE_HZ + 1 },
    (_, i) => from_deg + (by_deg * i) / (time_s * ROD_RATE_HZ)
  );

// A sweep of the tip's 2½ ft is 22 degrees; raised, the tip first crosses the line. A hand may be quick, or as slow as a drag is elsewhere.
test.each([1, 3, 8])('a pull into the rock hangs, be it made in %i s', (time_s) => {
  for (const { setup, plane, start } of challenges) {
    const isLift = plane === 'lift';
    const turned = evenly(
      isLift ? start.elevation_deg : start.azimuth_deg,
      isLift ? 45 : 22,
      time_s
    );
    const still = turned.map(() => (isLift ? start.azimuth_deg : start.elevation_deg));
    const { events } = simulate({
      ...setup,
      move: {
        kind: 'rod_input',
        rate_Hz: ROD_RATE_HZ,
        elevation_deg: isLift ? turned : still,
        azimuth_deg: isLift ? still : turned
      },
      hold_s: 2
    });
    expect(events.map(({ kind }) => kind)).toContain('snag');
  }
});

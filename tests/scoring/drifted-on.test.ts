import { describe, expect, test } from 'vitest';
import { allLessons, findChallenge } from '../../src/lib/course';
import { ROD_RATE_HZ, type RodInput } from '../../src/lib/model';
import {
  adviceFor,
  aimWords,
  gradeTry,
  solveCorrection,
  type Challenge
} from '../../src/lib/scoring';

const away = findChallenge('drifting-away', allLessons()) as Challenge;

/** A button that turns the rod so far at one pace, and a hand that then waits before it presses Done. */
function swept(turn_deg: number, held_s: number, waits_s: number): RodInput {
  const { elevation_deg, azimuth_deg } = away.start;
  const ticks = ROD_RATE_HZ * (held_s + waits_s);
  const turned = (i: number) => Math.min(1, i / (ROD_RATE_HZ * held_s)) * turn_deg;
  return {
    kind: 'rod_input',
    rate_Hz: ROD_RATE_HZ,
    elevation_deg,
    azimuth_deg: Array.from({ length: ticks + 1 }, (_, i) => azimuth_deg + turned(i))
  };
}

function told(turn_deg: number, held_s: number, waits_s: number) {
  const graded = gradeTry(away, swept(turn_deg, held_s, waits_s));
  const correction = solveCorrection(away);
  const advice = adviceFor(away, graded, 'imperial', correction);
  return {
    ...advice,
    passed: graded.grade.passed,
    next: aimWords(away, graded, 'imperial', correction)
  };
}

const PRESS_DONE = /^Press Done as the rod stops: the boat keeps dragging the jig\.$/;

describe('from a boat that drifts away', () => {
  test('Done as the rod stops passes', () => {
    expect(told(10, 3, 0).passed).toBe(true);
    expect(told(10, 3, 0.6).passed).toBe(true);
  });

  test.each([5, 8, 15])(
    'who rests the rod for %d s is told to press Done, and no move that it made',
    (waits_s) => {
      const { passed, words, next } = told(10, 3, waits_s);
      expect(passed).toBe(false);
      expect(words).toMatch(PRESS_DONE);
      expect(next).toBe(words);
    }
  );

  test('who moves the rod too far itself is told of the rod', () => {
    expect(told(25, 5, 0.5).words).toMatch(/^Stop sooner/);
  });
});

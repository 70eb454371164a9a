import { expect, test } from 'vitest';
import { findChallenge, loadLessons } from '../../src/lib/course';
import type { Challenge } from '../../src/lib/scoring';
import { byLights } from './by-lights';

/** A finger that lets go half a second after the light has moved on is slow, and follows it. */
const SLOW_S = 0.5;

test('two strokes by a slow finger that follows the lights are both as high as asked', () => {
  const strokes = findChallenge('two-strokes', loadLessons()) as Challenge;
  for (const reaction_s of [SLOW_S / 2, SLOW_S]) {
    expect(byLights(strokes, reaction_s).grade.marks, `${reaction_s} s`).toBe(100);
  }
});

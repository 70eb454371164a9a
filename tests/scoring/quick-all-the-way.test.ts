import { expect, test } from 'vitest';
import { allLessons, findChallenge } from '../../src/lib/course';
import { byHand } from '../../src/lib/course/hand';
import { inTurn, pause, sweep } from '../../src/lib/course/retrieves/moves';
import { describeTry, gradeTry, solveCorrection, type Challenge } from '../../src/lib/scoring';

const boulder = findChallenge('over-one-boulder', allLessons()) as Challenge;
const solved = solveCorrection(boulder);

test.each([
  [76, 0.3],
  [76, 0.8],
  [76, 1.5],
  [85, 1],
  [66, 1]
])(
  'who was quick all the way is told to go slower, a stop between or not: at %d° for %d s',
  (at, rest_s) => {
    const pace = (from: number, to: number) => sweep(from, to, (to - from) / 33);
    const move = inTurn(pace(60, at), pause(rest_s), pace(at, 92.5));
    const hand = byHand(move, boulder.start, { reach: 0, pace: 0, isEven: true });
    const graded = gradeTry(boulder, hand);
    const { did, change } = describeTry(boulder, graded, 'imperial', solved);
    expect(change, did).toMatch(/^(Go slower|Move less, and slower)/);
  }
);

import { describe, expect, test } from 'vitest';
import { allLessons, findChallenge } from '../../src/lib/course';
import { byHand } from '../../src/lib/course/hand';
import { sweep } from '../../src/lib/course/retrieves/moves';
import { INCH_M, type Move } from '../../src/lib/model';
import {
  adviceFor,
  aimWords,
  gradeTry,
  PASS_MARK,
  solveCorrection,
  tipTravel,
  type Challenge
} from '../../src/lib/scoring';

const slack = findChallenge('through-the-slack', allLessons()) as Challenge;
const solved = solveCorrection(slack);
if (!solved) throw new Error('one pull does it');

/** As far as this, in so many seconds, at an even pace: as a button turns it. */
function pulled(to_deg: number, time_s: number) {
  const even = { reach: 0, pace: 0, isEven: true };
  return gradeTry(slack, byHand(sweep(60, to_deg, time_s), slack.start, even));
}

function told(to_deg: number, time_s: number) {
  const graded = pulled(to_deg, time_s);
  const { words, move } = adviceFor(slack, graded, 'imperial', solved);
  const plain = (said: string) => said.replaceAll('\u00a0', ' ');
  return {
    marks: graded.grade.marks,
    tip_m: tipTravel(graded.result),
    words: plain(words),
    move,
    aim: plain(aimWords(slack, graded, 'imperial', solved))
  };
}

describe('on a slack line, who pulled as far as it takes and took longer', () => {
  test.each([
    [74.8, 3],
    [75.2, 4],
    [75.6, 8],
    [76, 4]
  ])('is told the pace, and no way that was gone already: to %d° in %d s', (to_deg, time_s) => {
    const { marks, tip_m, words, move, aim } = told(to_deg, time_s);
    expect(marks).toBeLessThan(PASS_MARK);
    expect(Math.abs(tip_m - solved.tipTravel_m)).toBeLessThan(INCH_M);
    expect(words).toBe('Same pull, quicker: in about 2 s.');
    expect(aim).toBe('Aim: tip 1 ft 8 in, quicker, in about 2 s.');
    // Obeyed by that hand, and by one that makes the move that is meant.
    expect(pulled(to_deg, 2).grade.marks).toBe(100);
    expect(gradeTry(slack, move as Move).grade.marks).toBe(100);
  });

  test('is told the pace, where the jig never stirred, too', () => {
    const { marks, words } = told(75.2, 60);
    expect(marks).toBeLessThan(PASS_MARK);
    expect(words).toMatch(/^Same pull, quicker: /);
  });

  test('is told both, where it went farther still', () => {
    const { words } = told(78, 8);
    expect(words).toMatch(
      /^Go quicker: the tip took 7\.9 s\. Move the tip 1 ft 8 in, in about 2 s/
    );
  });
});

test('who pulled slowly and stopped short of it is told both, beside the next try as well', () => {
  const { words, aim } = told(72, 4);
  expect(words).toBe('Keep going, and pull quicker. Move the tip 1 ft 8 in, in about 2 s.');
  expect(aim).toBe('Aim: tip 1 ft 8 in, quicker, in about 2 s.');
});

test('who pulled in time and stopped short is told the way alone', () => {
  expect(told(70, 1.5).words).toMatch(/^Keep going\. Move the tip 1 ft 8 in/);
});

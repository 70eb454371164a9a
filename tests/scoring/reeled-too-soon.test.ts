import { expect, test } from 'vitest';
import { allLessons, findChallenge } from '../../src/lib/course';
import { inTurn, pause, reel, sweep } from '../../src/lib/course/retrieves/moves';
import type { Move } from '../../src/lib/model';
import { adviceFor, gradeTry, solveCorrection, type Challenge } from '../../src/lib/scoring';

const task = findChallenge('reel-takes-slack', allLessons()) as Challenge;

function told(move: Move): string {
  const graded = gradeTry(task, move);
  expect(graded.grade.passed).toBe(false);
  const { words } = adviceFor(task, graded, 'imperial', solveCorrection(task));
  return words.replaceAll('\u00a0', ' ');
}

test('who reels on a tight line is told that the rod goes forward first, and how far', () => {
  const tight = told(inTurn(sweep(60, 78, 4), pause(0.5), reel(0.4, 1.5)));
  expect(tight).toBe(
    'After the sweep, swing the tip forward 2 ft, in 2 s, then hold Reel in until the next button lights.'
  );
});

test('who reels before the rod has moved is told to move the rod first', () => {
  const rightAfter = [sweep(60, 78, 4), pause(0.5), sweep(78, 60, 2), reel(0.52, 2)];
  const first = told(inTurn(sweep(60, 60, 0.1), reel(0.4, 1.5), ...rightAfter));
  expect(first).toBe('Move the rod first: there’s no slack to reel yet.');
});

test('who reels on past the slack is told to stop at a tight line', () => {
  const past = told(inTurn(sweep(60, 78, 4), pause(0.5), sweep(78, 60, 2), reel(1, 3.8)));
  expect(past).toBe('Stop reeling as soon as the line is tight.');
});

test('who only swings forward is told to pull away, however far the reel then drags the jig', () => {
  for (const reeled_s of [1, 2.1, 2.6]) {
    const forward = told(inTurn(sweep(60, 42, 2), pause(0.5), reel(0.26 * reeled_s, reeled_s)));
    expect(forward, `${reeled_s} s`).toMatch(/^Pull away from the jig: hold Sweep, not Forward\./);
  }
});

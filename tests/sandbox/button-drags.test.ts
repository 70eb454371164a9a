import { expect, test } from 'vitest';
import { allLessons } from '../../src/lib/course';
import { parseSetup } from '../../src/lib/model';
import { FIRST_KEY_SPEED } from '../../src/lib/sandbox/grip';
import { firstKeySpeed, taskStepsOf } from '../../src/lib/sandbox/task-steps';
import { gradeTry, solveCorrection, type Challenge } from '../../src/lib/scoring';
import { byButtons } from './by-buttons';

/** Tasks that one turn does, found by running the model backwards. */
const drags = allLessons()
  .flatMap(({ challenges }) => challenges)
  .flatMap((challenge) => {
    const move = solveCorrection(challenge)?.move;
    return move ? [{ id: challenge.id, challenge, move }] : [];
  });

const paceOf = (challenge: Challenge) =>
  firstKeySpeed(taskStepsOf(challenge), parseSetup(challenge.setup).rod.length_m);

test('there are drags to be made by the button', () => {
  expect(drags.length).toBeGreaterThanOrEqual(15);
});

test.each(drags)('$id is passed by its button, held as far as is told', ({ challenge, move }) => {
  const input = byButtons(challenge, move, paceOf(challenge), 0);
  expect(gradeTry(challenge, input).grade.passed).toBe(true);
});

test('light and slow was not, at the pace of open water', () => {
  const slow = drags.find(({ id }) => id === 'light-and-slow');
  if (!slow) throw new Error('one turn does it');
  const input = byButtons(slow.challenge, slow.move, FIRST_KEY_SPEED, 0);
  expect(gradeTry(slow.challenge, input).grade.passed).toBe(false);
});

test('where nothing is pulled the buttons begin as in open water', () => {
  expect(firstKeySpeed([], 2.1)).toBe(FIRST_KEY_SPEED);
});

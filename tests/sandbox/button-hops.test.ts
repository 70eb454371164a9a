import { expect, test } from 'vitest';
import { allLessons } from '../../src/lib/course';
import type { RodInput } from '../../src/lib/model';
import { SET_HOOK_M_S } from '../../src/lib/scoring/key-speeds';
import { isDragAndSnap, isSnapAlone, taskStepsOf } from '../../src/lib/sandbox/task-steps';
import { advisedMove, gradeTry, type Challenge } from '../../src/lib/scoring';
import { byButtons } from './by-buttons';

/** Tasks whose rod snaps and never drags, without the reel; what a fish decides is another matter. */
const hops = allLessons()
  .flatMap(({ challenges }) => challenges)
  .filter(({ goals }) => goals.some(({ kind }) => kind === 'hops'))
  .filter((challenge) => {
    const steps = taskStepsOf(challenge);
    return isSnapAlone(steps) && steps.every(({ does }) => does === 'up' || does === 'down');
  })
  .map((challenge) => ({ id: challenge.id, challenge }));

/** The advised move by held buttons at the task's own pace, each lift held so much longer than its way takes, s. */
function pressed(challenge: Challenge, late_s: number): RodInput {
  const { move } = advisedMove(challenge) ?? { move: challenge.reference };
  return byButtons(challenge, move, SET_HOOK_M_S, late_s);
}

test('there are hops to be made by the button', () => {
  expect(hops.length).toBeGreaterThanOrEqual(6);
});

/** A finger lets go so much too late or too soon, s. A design value. */
const FINGER_S = 0.03;
/** What one finds by trying: how long to hold beside the way alone, s. */
const HOLDS_S = [-0.04, 0, 0.03, 0.06, 0.09];

test.each(hops)(
  '$id has a hold of its button that passes, let go of a little late or soon',
  (one) => {
    const passes = (late_s: number) =>
      gradeTry(one.challenge, pressed(one.challenge, late_s)).grade.passed;
    const found = HOLDS_S.find((hold_s) =>
      [-FINGER_S, 0, FINGER_S].every((off_s) => passes(hold_s + off_s))
    );
    expect(found).toBeDefined();
  }
);

test('a task with a drag and a snap has a button for each; hops alone have the snap’s pace', () => {
  const stepsOf = (id: string) => {
    const found = allLessons()
      .flatMap(({ challenges }) => challenges)
      .find((one) => one.id === id);
    return taskStepsOf(found as Challenge);
  };
  expect(['drag-wait-hop', 'strike-a-tap'].map((id) => isDragAndSnap(stepsOf(id)))).toEqual([
    true,
    true
  ]);
  expect(['one-hop', 'reel-down-and-sweep'].map((id) => isSnapAlone(stepsOf(id)))).toEqual([
    true,
    true
  ]);
  const drags = ['exactly-one-foot', 'reel-takes-slack', 'count-it-down', 'shake-in-place'];
  expect(drags.filter((id) => stepsOf(id).some(({ isSnap }) => isSnap))).toEqual([]);
});

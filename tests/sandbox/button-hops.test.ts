import { expect, test } from 'vitest';
import { allLessons } from '../../src/lib/course';
import { parseSetup, ROD_RATE_HZ, type RodInput } from '../../src/lib/model';
import { KEY_SPEEDS_M_S, SNAP_KEY_SPEED } from '../../src/lib/sandbox/grip';
import { Hand } from '../../src/lib/sandbox/hand';
import { ROD_LIMITS } from '../../src/lib/sandbox/rod-angles';
import { isDragAndSnap, isSnapAlone, taskStepsOf } from '../../src/lib/sandbox/task-steps';
import { advisedMove, gradeTry, type Challenge } from '../../src/lib/scoring';

/** Tasks whose rod snaps and never drags, without the reel; what a fish decides is another matter. */
const hops = allLessons()
  .flatMap(({ challenges }) => challenges)
  .filter(({ goals }) => goals.some(({ kind }) => kind === 'hops'))
  .filter((challenge) => {
    const steps = taskStepsOf(challenge);
    return isSnapAlone(steps) && steps.every(({ does }) => does === 'up' || does === 'down');
  })
  .map((challenge) => ({ id: challenge.id, challenge }));

/** From one button to the other a finger takes so long, s. A design value. */
const OTHER_BUTTON_S = 0.15;
const STEP_S = 1 / ROD_RATE_HZ;

/** The advised move by held buttons at the task's own pace, each lift held so much longer than its way takes, s. */
function pressed(challenge: Challenge, late_s: number): RodInput {
  const { plane, start } = challenge;
  const { length_m } = parseSetup(challenge.setup).rod;
  const deg_s = ((KEY_SPEEDS_M_S[SNAP_KEY_SPEED] / length_m) * 180) / Math.PI;
  const angle = plane === 'lift' ? 'elevation_deg' : 'azimuth_deg';
  const hand = new Hand(start[angle], ROD_LIMITS[plane]);
  hand.keySpeed_deg_s = deg_s;
  const angles = [start[angle]];
  const now_ms = () => (angles.length - 1) * STEP_S * 1000;
  const hold = (time_s: number, direction: number) => {
    hand.turn(now_ms(), direction);
    for (let t_s = 0; t_s < time_s; t_s += STEP_S) angles.push(hand.advance(now_ms(), STEP_S));
  };
  const { move } = advisedMove(challenge) ?? { move: challenge.reference };
  for (const turn of move.kind === 'sequence' ? move.moves : [move]) {
    if (turn.kind === 'pause') hold(turn.duration_s, 0);
    if (turn.kind !== 'lift' && turn.kind !== 'sweep') continue;
    const way_deg = turn.to_deg - turn.from_deg;
    if (way_deg < 0) hold(OTHER_BUTTON_S, 0);
    hold(Math.abs(way_deg) / deg_s + (way_deg > 0 ? late_s : 0), Math.sign(way_deg));
  }
  hold(1, 0);
  const { elevation_deg, azimuth_deg } = start;
  const moved = { elevation_deg, azimuth_deg, [angle]: angles };
  return { kind: 'rod_input', rate_Hz: ROD_RATE_HZ, ...moved };
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

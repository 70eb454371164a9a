import { describe, expect, test } from 'vitest';
import { allLessons, findChallenge } from '../../src/lib/course';
import { inTurn, lift, pause, sweep } from '../../src/lib/course/retrieves/moves';
import { gradeTry, type Challenge, type Goal } from '../../src/lib/scoring';
import { bottomFirst } from '../../src/lib/scoring/goals/bottom-first';
import { cameTight } from '../../src/lib/scoring/goals/came-tight';
import { contact } from '../../src/lib/scoring/goals/contact';
import { dragFirst } from '../../src/lib/scoring/goals/drag-first';
import { follow } from '../../src/lib/scoring/goals/follow';
import { lowered } from '../../src/lib/scoring/goals/lowered';
import { pace } from '../../src/lib/scoring/goals/pace';
import { peakHeight } from '../../src/lib/scoring/goals/peak-height';
import { rhythm } from '../../src/lib/scoring/goals/rhythm';
import { speed } from '../../src/lib/scoring/goals/speed';
import { stayed } from '../../src/lib/scoring/goals/stayed';
import { strike } from '../../src/lib/scoring/goals/strike';
import { swim } from '../../src/lib/scoring/goals/swim';
import { swing } from '../../src/lib/scoring/goals/swing';
import { tight } from '../../src/lib/scoring/goals/tight';
import { tipSpeed } from '../../src/lib/scoring/goals/tip-speed';
import { travel } from '../../src/lib/scoring/goals/travel';
import { challengeOf, gradedAs, overLevel, resultOf } from './results';
import { swept } from './swept';

/** Marks fall by no more than this from one step of a sweep to the next, see docs/scoring.md. */
const MOST_JUMP = 4;
/** Each a hundredth of its reach or less. */
const STEPS = 1000;

/** Where neighbours of a sweep from `from` to `to` lie more than that apart. */
function jumpsOf(from: number, to: number, marksAt: (at: number) => number, most = MOST_JUMP) {
  const marks = Array.from({ length: STEPS + 1 }, (_, i) => {
    const at = from + ((to - from) * i) / STEPS;
    return { at, marks: marksAt(at) };
  });
  return marks
    .slice(1)
    .map((one, i) => ({ ...one, before: marks[i].marks }))
    .filter(({ marks, before }) => Math.abs(marks - before) > most);
}

type Share = (goal: never, value: number, run: never) => number;
const run = overLevel(resultOf({}));
/** Kind, a goal of it, the sweep of what is reached, and the thresholds that docs/scoring.md names. */
const SWEPT: [name: string, share: unknown, goal: object, to: number, named?: number[]][] = [
  ['bottom_first', bottomFirst.share, { within_s: 2.5 }, 6],
  ['came_tight', cameTight.share, { least_N: 0.06 }, 0.3],
  ['contact', contact.share, { least: 0.9 }, 1],
  ['drag_first', dragFirst.share, { least_m: 0.3 }, 1],
  ['follow', follow.share, { least: 0.5 }, 1],
  ['lowered', lowered.share, { least: 0.6 }, 1],
  ['peak_height', peakHeight.share, { most_m: 0.1 }, 0.4],
  ['rhythm', rhythm.share, { even: true }, 4, [0]],
  ['speed', speed.share, { most_m_s: 0.4 }, 1.2],
  ['stayed', stayed.share, { most_m: 0.15 }, 0.5],
  ['strike', strike.share, { within_s: 2 }, 6, [0.15]],
  ['swim', swim.share, { height_m: [0.1, 0.9], least: 0.75 }, 1],
  ['swing', swing.share, { most_m: 0.6 }, 2],
  ['tight', tight.share, { least_N: 1 }, 3],
  ['tip_speed', tipSpeed.share, { most_m_s: 4 }, 12],
  ['travel', travel.share, { target_m: 0.3048, band_m: 0.05 }, 0.45]
];

describe('marks fall smoothly with the miss', () => {
  test.each(SWEPT)('of %s', (_, share, goal, to, named = []) => {
    const at = (value: number) => 100 * (share as Share)(goal as never, value, run as never);
    const jumps = jumpsOf(0, to, at);
    const unnamed = jumps.filter(
      (jump) => !named.some((one) => Math.abs(one - jump.at) < to / 100)
    );
    expect(unnamed).toEqual([]);
    expect(jumps).toHaveLength(named.length);
  });

  test('of a wait that was too short', () => {
    const at = (value: number) =>
      100 * bottomFirst.share({ kind: 'bottom_first', within_s: 2 }, value, run);
    expect(jumpsOf(-2, 1, at)).toEqual([]);
  });

  test('of a pace that is too fast in its fast part and too slow in its slow one', () => {
    const goal = { kind: 'pace', m_s: [0.06, 0.3] } as const;
    const at = (fast_m_s: number) => {
      const result = resultOf({ contact: Array.from({ length: 1600 }, () => 1 as const) });
      let x = 10;
      const bait_x_m = result.trace.t_s.map((_, i) => (x -= (i < 1400 ? 0.02 : fast_m_s) / 100));
      const paced = overLevel({ ...result, trace: { ...result.trace, bait_x_m } });
      return (
        100 *
        pace.share(
          { ...goal, m_s: [...goal.m_s] },
          pace.measure({ ...goal, m_s: [...goal.m_s] }, paced),
          paced
        )
      );
    };
    expect(jumpsOf(0.2, 0.4, at)).toEqual([]);
  });

  const hopGoals = (count: number): (Goal & { weight: number })[] => [
    { kind: 'hops', count, height_m: [0.08, 0.2], weight: 60 },
    { kind: 'contact', least: 0.9, weight: 40 }
  ];
  test.each([
    ['alone', 1, []],
    ['beside one that was right', 2, [0.12]],
    ['that was not asked', 1, [0.12]]
  ])('of a hop %s', (_, count, hops) => {
    const challenge = challengeOf(hopGoals(count));
    const at = (height_m: number) =>
      gradedAs(challenge, resultOf({ hopHeights_m: [...hops, height_m] })).grade.marks;
    expect(jumpsOf(0.03, 0.25, at)).toEqual([]);
  });
});

/** The model itself: so many runs, each a hair more than the one before: a tenth of an inch of tip, a hundredth of a second. */
const RUNS = 240;
function jumpsOfRuns(challenge: Challenge, moveAt: (part: number) => Challenge['reference']) {
  const marksAt = (part: number) => gradeTry(challenge, moveAt(part)).grade.marks;
  const { marks, jumps } = swept(RUNS, marksAt, MOST_RUN_JUMP);
  // The sweep goes from nothing much to all of it.
  expect(Math.min(...marks)).toBeLessThan(50);
  expect(Math.max(...marks)).toBe(100);
  return jumps;
}
/** Some four times the steps above. */
const MOST_RUN_JUMP = 12;

function named(id: string): Challenge {
  const found = findChallenge(id, allLessons());
  if (!found) throw new Error(`no challenge ${id}`);
  return found;
}

/** When it touches down, s. */
function fallOf(challenge: Challenge): number {
  const { events } = gradeTry(challenge, challenge.reference).result;
  return events.find(({ kind }) => kind === 'bottom')?.t_s ?? 0;
}

describe('marks of runs of the model fall smoothly', () => {
  test('with the distance of a drag', () => {
    const challenge = named('exactly-one-foot');
    expect(jumpsOfRuns(challenge, (part) => sweep(60, 62 + 14 * part, 4))).toEqual([]);
  });

  test('with the height of a hop', () => {
    const challenge = named('one-hop');
    const hop = (part: number) =>
      inTurn(lift(30, 36 + 10 * part, 0.25), lift(36 + 10 * part, 30, 0.6));
    expect(jumpsOfRuns(challenge, hop)).toEqual([]);
  });

  test('with how long after the touch, or before it, the rod is moved', () => {
    const challenge = named('count-it-down');
    const after = (wait_s: number) => inTurn(lift(45, 45, 0.1), pause(wait_s), lift(45, 20, 1));
    const fall_s = fallOf(challenge);
    expect(jumpsOfRuns(challenge, (part) => after(fall_s - 1.5 + 3 * part))).toEqual([]);
  });
});

import { describe, expect, test } from 'vitest';
import type { Hop, Result, RunEvent } from '../../src/lib/model';
import { describeTry, type Goal } from '../../src/lib/scoring';
import { shareOf, valueOf } from '../../src/lib/scoring/goals';
import { runToGrade } from '../../src/lib/scoring/run-to-grade';
import { tied } from '../tied';
import { challengeOf, gradedAs, overLevel, plainChallenge, resultOf, withLifts } from './results';

interface Way {
  bait_x_m?: number[];
  /** Height above the bottom. */
  bait_up_m?: number[];
  tip_x_m?: number[];
  pull_N?: number[];
  events?: RunEvent[];
  hops?: Hop[];
}

/** A run of as many ticks as the longest list; what is not said keeps still. */
function run({ bait_x_m = [10], bait_up_m = [0], tip_x_m = [2], ...rest }: Way): Result {
  const ticks = Math.max(bait_x_m.length, bait_up_m.length, tip_x_m.length);
  const all = (values: number[]) =>
    Array.from({ length: ticks }, (_, i) => values[Math.min(i, values.length - 1)]);
  const up = all(bait_up_m);
  const made = resultOf({});
  const { depth_m } = plainChallenge.setup.water;
  const result = {
    ...made,
    events: rest.events ?? [],
    hops: rest.hops ?? [],
    trace: {
      t_s: Array.from({ length: ticks }, (_, i) => i / 100),
      tip_x_m: all(tip_x_m),
      tip_z_m: all([1]),
      bait_x_m: all(bait_x_m),
      bait_z_m: up.map((height) => height - depth_m),
      tip_tension_N: all(rest.pull_N ?? [0]),
      bait_tension_N: all([0]),
      contact: up.map((height): 0 | 1 => (height > 0 ? 0 : 1))
    }
  };
  return withLifts(result, -depth_m);
}

/** `n` values from the first to the last, evenly. */
function from(first: number, last: number, n: number): number[] {
  return Array.from({ length: n }, (_, i) => first + ((last - first) * i) / (n - 1));
}

/** Still for so many ticks. */
function still(at: number, ticks: number): number[] {
  return new Array<number>(ticks).fill(at);
}

function hopsAt(...starts_s: number[]): Hop[] {
  return starts_s.map((t_s) => ({ t_s, length_m: 0.1, height_m: 0.2, duration_s: 0.5 }));
}

const touch: RunEvent = { t_s: 1, kind: 'bottom' };
const snag: RunEvent = { t_s: 1, kind: 'snag', stone: 0 };
const deeper: RunEvent = { t_s: 2, kind: 'set deeper' };
const freed: RunEvent = { t_s: 3, kind: 'freed', by: 'shake' };
const bite: RunEvent = { t_s: 1, kind: 'bite', bite: 'tap' };
const twitch = [...from(2, 1.9, 20), ...from(1.9, 2, 20), ...still(2, 30)];
const rested = (ticks: number) => [
  ...from(10, 9.8, 50),
  ...still(9.8, ticks),
  ...from(9.79, 9.5, 50)
];

const pace: Goal = { kind: 'pace', m_s: [0.1, 0.3] };
const swim: Goal = { kind: 'swim', height_m: [0.2, 0.5], least: 0.8 };
const stayed: Goal = { kind: 'stayed', most_m: 0.05 };
const twitches: Goal = { kind: 'twitches', count: 2 };
const rests: Goal = { kind: 'rests', count: 1, least_s: 4 };
const even: Goal = { kind: 'rhythm', even: true };
const uneven: Goal = { kind: 'rhythm', even: false };
const bottomFirst: Goal = { kind: 'bottom_first', within_s: 2 };
const tight: Goal = { kind: 'tight', least_N: 0.1 };
const swing: Goal = { kind: 'swing', most_m: 0.2 };
const free: Goal = { kind: 'freed' };
const strike: Goal = { kind: 'strike', within_s: 2 };
const tipSpeed: Goal = { kind: 'tip_speed', most_m_s: 2 };
const lowered: Goal = { kind: 'lowered', least: 0.6 };
const follow: Goal = { kind: 'follow', least: 0.5 };
const dragFirst: Goal = { kind: 'drag_first', least_m: 0.1 };
const sweepAfter = (ticks: number) => ({
  tip_x_m: [...still(2, ticks), ...from(2, 1.4, 31), ...still(1.4, 400)]
});

/** Not met, and half way to where nothing is earned: half of three quarters. */
const LESS = 0.375;

describe('a retrieve’s goal', () => {
  const cases: [string, Goal, Way, number][] = [
    ['pace within its range is full', pace, { bait_x_m: from(10, 9.8, 101) }, 1],
    ['pace a quarter too quick does not pass', pace, { bait_x_m: from(10, 9.625, 101) }, LESS],
    ['pace of half the slowest is nothing', pace, { bait_x_m: from(10, 9.95, 101) }, 0],
    ['a bait that never moved has no pace', pace, {}, 0],
    [
      'a pace that is right on the whole and made of jerks is nothing',
      pace,
      {
        bait_x_m: [
          ...from(10, 9.8, 21),
          ...still(9.8, 80),
          ...from(9.8, 9.6, 21),
          ...still(9.6, 80)
        ]
      },
      0
    ],
    [
      'time at rest does not slow the pace',
      pace,
      { bait_x_m: [...from(10, 9.8, 101), ...still(9.8, 300)] },
      1
    ],
    [
      'a swim at its height is full',
      swim,
      { bait_x_m: from(10, 8, 101), bait_up_m: [0, ...still(0.3, 100)] },
      1
    ],
    ['a swim along the bottom is nothing', swim, { bait_x_m: from(10, 8, 101) }, 0],
    [
      'a swim too high is nothing',
      swim,
      { bait_x_m: from(10, 8, 101), bait_up_m: [0, ...still(0.6, 100)] },
      0
    ],
    ['a bait that stayed is full', stayed, { bait_x_m: from(10, 9.96, 20) }, 1],
    ['a bait half as far again does not pass', stayed, { bait_x_m: from(10, 9.925, 20) }, LESS],
    ['a bait that came back has not stayed', stayed, { bait_x_m: [...from(10, 9.8, 20), 10] }, 0],
    ['two twitches are full', twitches, { tip_x_m: [...twitch, ...twitch] }, 1],
    ['one twitch of two does not pass', twitches, { tip_x_m: twitch }, LESS],
    [
      'a wiggle without a rest is no twitch',
      twitches,
      { tip_x_m: [...twitch.slice(0, 40), ...twitch.slice(0, 40), ...from(2, 1.9, 20)] },
      0
    ],
    ['one long pull is no twitch', twitches, { tip_x_m: from(2, 1, 50) }, 0],
    ['a rest long enough is full', rests, { bait_x_m: rested(420) }, 1],
    ['a rest three quarters as long does not pass', rests, { bait_x_m: rested(296) }, LESS],
    [
      'the rest before the first move is none',
      rests,
      { bait_x_m: [...still(10, 500), ...from(10, 9.5, 50)] },
      0
    ],
    [
      'the rest after the last move is none',
      rests,
      { bait_x_m: [...from(10, 9.5, 50), ...still(9.5, 500)] },
      0
    ],
    ['hops evenly apart are even', even, { hops: hopsAt(0, 2, 4.2) }, 1],
    ['hops evenly apart are not uneven', uneven, { hops: hopsAt(0, 2, 4.2) }, 0],
    ['hops far and near are uneven', uneven, { hops: hopsAt(0, 2, 7) }, 1],
    ['two hops have no rhythm', even, { hops: hopsAt(0, 2) }, 0],
    [
      'a rod moved a second after touch is full',
      bottomFirst,
      { events: [touch], ...sweepAfter(200) },
      1
    ],
    [
      'a rod moved early is nothing',
      bottomFirst,
      { events: [{ ...touch, t_s: 4 }], ...sweepAfter(100) },
      0
    ],
    [
      'a rod moved half as late again does not pass',
      bottomFirst,
      { events: [touch], ...sweepAfter(393) },
      LESS
    ],
    [
      'a tight line at the end is full',
      tight,
      { pull_N: still(0.12, 100), tip_x_m: still(2, 100) },
      1
    ],
    [
      'half the pull at the end does not pass',
      tight,
      { pull_N: still(0.05, 100), tip_x_m: still(2, 100) },
      LESS
    ],
    [
      'a fall straight down does not swing',
      swing,
      { bait_up_m: [0, 0.1, 0.6, 0.3, 0], bait_x_m: [10, 9.5, 9, 9, 9] },
      1
    ],
    [
      'a fall that swings half as far again does not pass',
      swing,
      { bait_up_m: [0, 0.1, 0.6, 0.3, 0], bait_x_m: [10, 9.5, 9, 8.9, 8.7] },
      LESS
    ],
    ['a snag that let go is full', free, { events: [snag, freed] }, 1],
    [
      'a snag freed after it was driven home is half',
      free,
      { events: [snag, deeper, { ...freed, by: 'angle' }] },
      0.5
    ],
    ['a snag that holds is nothing', free, { events: [snag] }, 0],
    [
      'a snag that let go and caught again later was freed',
      free,
      { events: [snag, freed, snag] },
      1
    ],
    [
      'a broken line is nothing',
      free,
      { events: [snag, freed, { t_s: 4, kind: 'break', at: 'bait' }] },
      0
    ],
    ['no snag at all is nothing', free, {}, 0],
    ['a sweep soon after the bite is full', strike, { events: [bite], ...sweepAfter(200) }, 1],
    ['a sweep before the bite is nothing', strike, { events: [bite], ...sweepAfter(20) }, 0],
    [
      'a sweep too quick to have felt it is nothing',
      strike,
      { events: [bite], ...sweepAfter(80) },
      0
    ],
    ['no sweep is nothing', strike, { events: [bite], tip_x_m: still(2, 700) }, 0],
    ['no sweep where nothing bit is full', strike, { tip_x_m: still(2, 700) }, 1],
    ['a sweep where nothing bit is nothing', strike, sweepAfter(200), 0],
    [
      'a rod that never moves after the touch is nothing',
      bottomFirst,
      { events: [touch], tip_x_m: still(2, 250) },
      0
    ],
    ['a gentle lift is no jerk', tipSpeed, { tip_x_m: from(2, 1.9, 11) }, 1],
    ['a lift at half as much again is too quick', tipSpeed, { tip_x_m: from(2, 1.7, 11) }, LESS],
    [
      'a rod lowered as far as it was lifted is full',
      lowered,
      { tip_x_m: [...from(2, 1.5, 20), ...from(1.5, 2, 20)] },
      1
    ],
    [
      'a lift that is held is nothing',
      lowered,
      { tip_x_m: [...from(2, 1.5, 20), ...still(1.5, 20)] },
      0
    ],
    [
      'a rod that goes down as the bait does is full',
      follow,
      { bait_up_m: [0, ...from(1, 0, 101)], tip_x_m: [1, ...from(1, 2, 101)] },
      1
    ],
    ['a rod held through the fall is nothing', follow, { bait_up_m: [0, ...from(1, 0, 101)] }, 0],
    [
      'a rod dropped before the fall is nothing',
      follow,
      { bait_up_m: [0, 0, ...from(1, 0, 101)], tip_x_m: [1, 1, 1, 2] },
      0
    ],
    [
      'a drag three quarters as long before the bite does not pass',
      dragFirst,
      { events: [bite], bait_x_m: [...from(10, 9.925, 100), ...from(9.92, 9, 100)] },
      LESS
    ]
  ];
  // Ticks of 1/100 s cut the way and the times asked for, which moves a share of a half by a few hundredths.
  test.each(cases)('%s', (_, goal, way, share) => {
    const reached = shareOf(goal, overLevel(run(way)));
    expect(reached).toBeGreaterThan(share - 0.06);
    expect(reached).toBeLessThan(share + 0.06);
  });

  test('swims at a height above the bottom under the bait, also where that rises', () => {
    // Level flight at 1.5 m above the deep end; the shelf comes up to half a metre under it.
    const rising = { profile: { x_m: [0, 6, 9, 12], z_m: [-2, -2, -3.1, -3.1] } };
    const setup = { ...plainChallenge.setup, bottom: rising };
    const result = run({ bait_x_m: from(9, 6, 301), bait_up_m: [0, ...still(1.5, 300)] });
    const over = runToGrade(setup, plainChallenge.reference, result);
    const at = (low: number, high: number) =>
      valueOf({ kind: 'swim', height_m: [low, high], least: 0.8 }, over);
    // Clearance falls evenly from 1.5 m to 0.4 m over the 3 m.
    expect(at(1.45, 1.55)).toBeCloseTo(0.05 / 1.1, 1);
    expect(at(0.4, 0.95)).toBeCloseTo(0.5, 2);
  });

  test('that a still rod would meet earns nothing from a still rod', () => {
    const challenge = challengeOf([
      { ...stayed, weight: 60 },
      { ...twitches, weight: 40 }
    ]);
    expect(gradedAs(challenge, run({})).grade.marks).toBe(0);
  });

  test('says what was reached, what was asked, and the one thing to change', () => {
    const challenge = challengeOf([
      { kind: 'travel', target_m: 0.5, band_m: 0.1, weight: 10 },
      { ...rests, weight: 90 }
    ]);
    const result = { ...run({ bait_x_m: rested(200) }), travel_m: 0.5 };
    const { why, change } = describeTry(challenge, gradedAs(challenge, result), 'metric');
    expect(why).toContain(tied('It never rested 4~s or longer'));
    expect(change).toBe('Let it lie longer between your moves.');
  });

  test('measures a firm sweep from the bite on', () => {
    expect(valueOf(strike, overLevel(run({ events: [bite], ...sweepAfter(200) })))).toBeCloseTo(
      1.26,
      1
    );
  });
});

import { describe, expect, test } from 'vitest';
import { allLessons, findLesson } from '../../src/lib/course';
import { parseSetup, simulate } from '../../src/lib/model';
import { Hand } from '../../src/lib/sandbox/hand';
import { LiveTry } from '../../src/lib/sandbox/live-try';
import { Reel } from '../../src/lib/sandbox/reel';
import { ROD_LIMITS } from '../../src/lib/sandbox/rod-angles';
import { gradeRun, PASS_MARK, type Challenge } from '../../src/lib/scoring';
import { smallWater } from './waters';

function turned(direction: 1 | -1, held_ms: number): Reel {
  const reel = new Reel();
  reel.turn(0, direction);
  reel.turn(held_ms, 0);
  for (let t_ms = 0; t_ms < held_ms + 1000; t_ms += 10) reel.advance(t_ms, 0.01);
  return reel;
}

describe('the reel', () => {
  test.each([1, -1] as const)('takes as much as it is turned for, way %i', (direction) => {
    // 0.8 m/s for 700 ms: starting and stopping late by the same take the same.
    expect(turned(direction, 700).taken_m).toBeCloseTo(direction * 0.56, 2);
  });

  test('stands when it is let go', () => {
    const reel = turned(1, 300);
    const before_m = reel.taken_m;
    reel.advance(5000, 0.01);
    expect(reel.taken_m).toBeCloseTo(before_m, 5);
  });
});

describe('a try with the reel', () => {
  function tried() {
    const start = { elevation_deg: 0, azimuth_deg: 0 };
    const live = new LiveTry(smallWater(), 'lift', start, new Hand(0, ROD_LIMITS.lift));
    live.reel.turn(0, 1);
    live.reel.turn(900, 0);
    for (let t_ms = 10; live.stage !== 'still' && t_ms < 20_000; t_ms += 10) live.tick(t_ms);
    return live.finish(1);
  }

  test('begins with the crank, and the bait comes', () => {
    expect(tried().run.result.travel_m).toBeGreaterThan(0.2);
  });

  test('comes out the same to the last bit when its stored input is run again', () => {
    const { input, run } = tried();
    // 0.8 m/s over the 89 ticks from 10 to 890 ms.
    expect(Math.max(...(input.line_in_m ?? []))).toBeCloseTo(0.712, 3);
    const stored = JSON.parse(JSON.stringify(input));
    expect(simulate({ ...smallWater(), move: stored, hold_s: 1 })).toEqual(run.result);
  });

  test('keeps no line where the reel was not used', () => {
    const start = { elevation_deg: 0, azimuth_deg: 0 };
    const live = new LiveTry(smallWater(), 'lift', start, new Hand(0, ROD_LIMITS.lift));
    live.begin();
    for (let t_ms = 10; live.stage !== 'still'; t_ms += 10) live.tick(t_ms);
    expect(live.finish(1).input).not.toHaveProperty('line_in_m');
  });
});

describe('a jig that swims', () => {
  const challenge = findLesson('season-and-mood', allLessons())?.challenges.find(
    ({ id }) => id === 'swim-at-a-height'
  ) as Challenge;

  /** As asked: the rod is raised as the crank begins, and the crank goes on. */
  function swum(raised_ms: number, speed_deg_s: number): number {
    const setup = parseSetup(challenge.setup);
    const hand = new Hand(challenge.start.elevation_deg, ROD_LIMITS.lift);
    hand.keySpeed_deg_s = speed_deg_s;
    const live = new LiveTry(setup, 'lift', challenge.start, hand, challenge.longest_pause_s);
    live.reel.turn(0, 1);
    hand.turn(0, 1);
    hand.turn(raised_ms, 0);
    live.reel.turn(8000, 0);
    for (let t_ms = 10; live.stage !== 'still' && t_ms < 30_000; t_ms += 10) live.tick(t_ms);
    const { input, run } = live.finish(challenge.hold_s);
    return gradeRun(challenge, { move: input, result: run.result }).marks;
  }

  test.each([
    [700, 75],
    [900, 60],
    [1100, 50]
  ])('is kept at its height by a hand that raises the rod for %i ms at %i°/s', (ms, speed) => {
    expect(swum(ms, speed)).toBeGreaterThanOrEqual(PASS_MARK);
  });

  test('is not, where the rod is hardly raised', () => {
    expect(swum(200, 50)).toBeLessThan(PASS_MARK);
  });
});

import { describe, expect, test } from 'vitest';
import { Hand } from '../../src/lib/sandbox/hand';

const LIMITS = { least_deg: -10, most_deg: 90 };
const TICK_MS = 10;

/** Angles at each tick up to `end_ms`, after `tell` has said when the pointer was where. */
function path(hand: Hand, end_ms: number, tell: (t_ms: number) => void = () => {}): number[] {
  const angles: number[] = [];
  for (let t_ms = 0; t_ms <= end_ms; t_ms += TICK_MS) {
    tell(t_ms);
    angles.push(hand.advance(t_ms, TICK_MS / 1000));
  }
  return angles;
}

const drag = Array.from({ length: 20 }, (_, i) => ({ t_ms: 8 + 16 * i, angle_deg: 1.5 * i }));

describe('the hand', () => {
  test('comes to where the pointer wants the rod and stays there', () => {
    const hand = new Hand(5, LIMITS);
    hand.pointAt(0, 42);
    const angles = path(hand, 1000);
    expect(angles[angles.length - 1]).toBeCloseTo(42, 6);
    expect(Math.max(...angles)).toBeLessThanOrEqual(42);
  });

  test('is at rest where it was told to go, not while a key is held or before it is there', () => {
    const hand = new Hand(5, LIMITS);
    expect(hand.isAtRest).toBe(true);
    hand.pointAt(50, 42);
    expect(hand.isAtRest, 'told').toBe(false);
    path(hand, 100);
    expect(hand.isAtRest, 'on the way').toBe(false);
    path(hand, 1000);
    expect(hand.isAtRest, 'there').toBe(true);
    hand.turn(1010, 1);
    path(hand, 6000);
    expect(hand.isAtRest, 'held at its limit').toBe(false);
    hand.turn(6010, 0);
    path(hand, 6100);
    expect(hand.isAtRest, 'let go').toBe(true);
  });

  test('takes the same way whether events come one by one or in the bundles of a slow frame', () => {
    const prompt = new Hand(0, LIMITS);
    const bundled = new Hand(0, LIMITS);
    const AHEAD_MS = 25;
    const byOne = path(prompt, 600, (t_ms) => {
      for (const each of drag) {
        if ((t_ms === 0 || each.t_ms > t_ms - TICK_MS + AHEAD_MS) && each.t_ms <= t_ms + AHEAD_MS) {
          prompt.pointAt(each.t_ms, each.angle_deg);
        }
      }
    });
    drag.forEach((each) => bundled.pointAt(each.t_ms, each.angle_deg));
    const atOnce = path(bundled, 600);
    byOne.forEach((angle, i) => expect(angle).toBeCloseTo(atOnce[i], 9));
  });

  test('makes no jerk of a mouse that creeps pixel by pixel', () => {
    const hand = new Hand(0, LIMITS);
    // A pixel at 130 px from the pivot, five times a second: 2.2 °/s on the whole.
    const PIXEL_DEG = 0.44;
    for (let i = 1; i <= 20; i++) hand.pointAt(200 * i, PIXEL_DEG * i);
    const angles = path(hand, 4800);
    const fastest = Math.max(...angles.slice(1).map((a, i) => (a - angles[i]) / 0.01));
    // A pixel within one tick would be 44 °/s.
    expect(fastest).toBeLessThan(4);
    expect(angles[angles.length - 1]).toBeCloseTo(20 * PIXEL_DEG, 3);
  });

  test('does not begin a move before the pointer has moved', () => {
    const hand = new Hand(10, LIMITS);
    hand.pointAt(1000, 30);
    const angles = path(hand, 1000);
    expect(angles[95]).toBe(10);
  });

  test('turns at the speed of held keys, and stops when they are released', () => {
    const hand = new Hand(0, LIMITS);
    hand.keySpeed_deg_s = 30;
    hand.turn(0, 1);
    hand.turn(1000, 0);
    const angles = path(hand, 2000);
    expect((angles[90] - angles[60]) / 0.3).toBeCloseTo(30, 1);
    expect(angles[200]).toBeCloseTo(30, 3);
  });

  test.each([
    ['above', 1, LIMITS.most_deg],
    ['below', -1, LIMITS.least_deg]
  ])('goes no further than the rod can %s', (_name, direction, limit) => {
    const hand = new Hand(20, LIMITS);
    hand.keySpeed_deg_s = 200;
    hand.turn(0, direction);
    const angles = path(hand, 3000);
    expect(angles[angles.length - 1]).toBeCloseTo(limit, 4);
    hand.pointAt(3000, 10 * limit);
    expect(path(hand, 4000).pop()).toBeCloseTo(limit, 4);
  });
});

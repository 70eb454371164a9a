import { describe, expect, test } from 'vitest';
import challenges from '../../src/lib/course/lessons/01-one-foot/challenges';
import { parseSetup, simulate } from '../../src/lib/model';
import { parseChallenge, tipTravel } from '../../src/lib/scoring';
import type { Plane } from '../../src/lib/sandbox/rod-angles';
import {
  Grip,
  gripOn,
  isPulledUp,
  keyDirection,
  pullFor,
  dragWayOf,
  PX_PER_M,
  type Spot
} from '../../src/lib/sandbox/grip';

const LENGTH_M = 2;
const REACH = LENGTH_M * PX_PER_M;
/** Where a pointer is that holds the tip of a rod at this angle, the bait to the left. */
const atTip = (deg: number) => ({
  x: -REACH * Math.cos((deg * Math.PI) / 180),
  y: -REACH * Math.sin((deg * Math.PI) / 180)
});
const moved = (from: Spot, by: Spot) => ({ x: from.x + by.x, y: from.y + by.y });

/** A pointer that follows the tip round from one angle to another. */
function led(plane: Plane, from_deg: number, to_deg: number): number {
  const grip = new Grip(atTip(from_deg), plane, LENGTH_M, from_deg);
  const steps = 200;
  const way = Array.from({ length: steps }, (_, i) => ((i + 1) * (to_deg - from_deg)) / steps);
  return way.map((deg) => grip.moveTo(atTip(from_deg + deg)))[steps - 1];
}

describe('a pointer on the rod', () => {
  test.each(['lift', 'sweep'] as const)('leads the tip of a %s round, there and back', (plane) => {
    // Within half a degree, a twentieth of an hour: chords are shorter than the arc, and corners are cut.
    for (const [from, to] of [
      [20, 90],
      [60, 100],
      [90, 20],
      [10, -15],
      [100, 60]
    ]) {
      expect(Math.abs(led(plane, from, to) - to)).toBeLessThan(0.5);
    }
  });

  test('takes the tip as far wherever it took hold', () => {
    const turned = [
      { x: 0, y: 0 },
      { x: 40, y: 200 }
    ].map((from) => new Grip(from, 'sweep', LENGTH_M, 60).moveTo(moved(from, { x: 32, y: 5 })));
    expect(turned[0]).toBe(turned[1]);
  });

  test('goes back as it came, and as far in one long step as in many short ones', () => {
    const grip = new Grip({ x: 0, y: 0 }, 'lift', LENGTH_M, 30);
    grip.moveTo({ x: 3, y: -90 });
    expect(grip.moveTo({ x: 0, y: 0 })).toBeCloseTo(30, 1);
    const [at, far] = [new Grip({ x: 0, y: 0 }, 'sweep', LENGTH_M, 50), 150];
    const slow = Array.from({ length: far }, (_, i) => at.moveTo({ x: i + 1, y: 0 }))[far - 1];
    const quick = new Grip({ x: 0, y: 0 }, 'sweep', LENGTH_M, 50).moveTo({ x: far, y: 0 });
    expect(Math.abs(quick - slow)).toBeLessThan(0.05);
  });
});

describe('an arrow key', () => {
  test.each([
    ['ArrowUp', 'lift', 20, 1],
    ['ArrowDown', 'lift', 20, -1],
    ['ArrowRight', 'lift', -5, 1],
    ['ArrowLeft', 'lift', 20, -1],
    ['ArrowUp', 'sweep', -20, 1],
    ['ArrowRight', 'sweep', 20, 1],
    ['ArrowRight', 'sweep', -20, -1],
    ['ArrowLeft', 'sweep', -20, 1],
    ['Enter', 'lift', 20, 0]
  ] as const)('%s in a %s at %i° turns the rod by %i', (key, plane, angle, direction) => {
    expect(keyDirection(key, plane, angle)).toBe(direction);
  });
});

describe('the arrow that tells how far a foot of tip is', () => {
  const FOOT_M = 0.3048;
  const [flat, out] = ['exactly-one-foot', 'exactly-three-feet'].map((id) =>
    parseChallenge(challenges.find((one) => one.id === id))
  );
  const rods = [
    { ...flat, hour: 60 },
    { ...out, hour: 60 },
    { ...flat, hour: 50 },
    { ...flat, hour: 40 },
    { ...flat, plane: 'lift' as const, hour: 0 },
    { ...flat, plane: 'lift' as const, hour: 10 },
    { ...flat, plane: 'lift' as const, hour: 30 },
    { ...flat, plane: 'lift' as const, hour: 45 }
  ].map(({ setup, plane, hour }) => ({
    setup: parseSetup(setup),
    plane,
    hour,
    start:
      plane === 'lift'
        ? { elevation_deg: hour, azimuth_deg: 0 }
        : { elevation_deg: 0, azimuth_deg: hour }
  }));

  test.each(rods)(
    'is as long as the pull that does it, and so is twice to four times of it, $plane from $hour°',
    (given) => {
      for (const isFromDeck of [true, false]) {
        const rod = { ...given, isFromDeck };
        const arrow_px = pullFor(rod, FOOT_M) ?? NaN;
        for (const feet of [1, 2, 3, 4]) {
          const px = feet * arrow_px;
          const to = isPulledUp(rod) ? { x: 7, y: 9 - px } : { x: 7 + px, y: 9 };
          const to_deg = gripOn(rod, { x: 7, y: 9 }, given.hour).moveTo(to);
          // What the page counts of that turn, made slowly: within half an inch, which the loaded tip's bend leaves open.
          const turn = { from_deg: given.hour, to_deg, duration_s: 4 };
          const move =
            given.plane === 'lift'
              ? { kind: 'lift' as const, ...turn }
              : { kind: 'sweep' as const, ...turn, elevation_deg: 0 };
          const counted_m = tipTravel(simulate({ ...given.setup, move, hold_s: 2 }));
          const off_m = Math.abs(counted_m - feet * FOOT_M);
          expect(off_m, `${feet} ft`).toBeLessThan(0.0127);
        }
      }
    }
  );

  test('points up for a lift, and right for a sweep', () => {
    expect((['lift', 'sweep'] as const).map((plane) => isPulledUp({ plane }))).toEqual([
      true,
      false
    ]);
  });

  test('points down where the task begins by lowering, and is as long', () => {
    const rod = { ...rods[7], isFromDeck: false, isLowered: true };
    expect(dragWayOf(rod)).toBe('down');
    const px = pullFor(rod, FOOT_M) ?? NaN;
    const to_deg = gripOn(rod, { x: 7, y: 9 }, rod.hour).moveTo({ x: 7, y: 9 + px });
    const turn_rad = ((rod.hour - to_deg) * Math.PI) / 180;
    expect(turn_rad * rod.setup.rod.length_m).toBeCloseTo(FOOT_M, 3);
  });

  test('is none for a way that no straight pull gives', () => {
    const [rod] = rods;
    expect(pullFor({ ...rod, isFromDeck: false }, 3 * rod.setup.rod.length_m)).toBeNull();
  });
});

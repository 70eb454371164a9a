import { describe, expect, test } from 'vitest';
import challenges from '../../src/lib/course/lessons/01-one-foot/challenges';
import { parseSetup, simulate } from '../../src/lib/model';
import { parseChallenge, tipTravel } from '../../src/lib/scoring';
import {
  DeckGrip,
  Grip,
  gripOn,
  isPulledUp,
  keyDirection,
  pullFor,
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

describe('a pointer on the rod', () => {
  test.each([0, 30, 90, 135, -45])('leads the tip round, to %i°', (deg) => {
    expect(new Grip(atTip(20), LENGTH_M, 20).moveTo(atTip(deg))).toBeCloseTo(deg, 9);
  });

  test('takes the tip as far wherever it took hold, and about as far from the deck', () => {
    // A tenth of a radian is 0.2 m of a two-metre rod's tip.
    const by = moved(atTip(60 + 18 / Math.PI), { x: -atTip(60).x, y: -atTip(60).y });
    for (const from of [atTip(60), { x: 0, y: 0 }, { x: 40, y: 200 }]) {
      const turned = new Grip(from, LENGTH_M, 60).moveTo(moved(from, by)) - 60;
      expect((turned * Math.PI) / 180).toBeCloseTo(0.1, 9);
    }
    const way = Math.hypot(by.x, by.y);
    expect(way).toBeCloseTo(0.2 * PX_PER_M, 1);
    const fromDeck = new DeckGrip({ x: 9, y: 9 }, 'sweep', LENGTH_M, 60).moveTo({
      x: 9 + way,
      y: 9
    });
    expect(((fromDeck - 60) * Math.PI) / 180).toBeCloseTo(0.1, 3);
  });

  test('turns it on past the far side without a jump', () => {
    const grip = new Grip(atTip(170), LENGTH_M, 170);
    expect(grip.moveTo(atTip(190))).toBeCloseTo(190, 9);
    expect(grip.moveTo(atTip(165))).toBeCloseTo(165, 9);
  });

  test('does not spin the rod on crossing its butt', () => {
    const grip = new Grip(atTip(20), LENGTH_M, 20);
    expect(grip.moveTo({ x: 3, y: -4 })).toBe(20);
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
    { ...flat, hour: 20 },
    { ...flat, hour: 8 },
    { ...flat, plane: 'lift' as const, hour: 10 },
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

  test.each(rods)('is as long as the pull that does it, $plane from $hour°', (given) => {
    for (const isFromDeck of [true, false]) {
      const rod = { ...given, isFromDeck };
      const px = pullFor(rod, FOOT_M) ?? NaN;
      const to = isPulledUp(rod) ? { x: 7, y: 9 - px } : { x: 7 + px, y: 9 };
      const to_deg = gripOn(rod, { x: 7, y: 9 }, given.hour).moveTo(to);
      // What the page counts of that turn, made slowly: within half an inch, which the loaded tip's bend leaves open.
      const turn = { from_deg: given.hour, to_deg, duration_s: 4 };
      const move =
        given.plane === 'lift'
          ? { kind: 'lift' as const, ...turn }
          : { kind: 'sweep' as const, ...turn, elevation_deg: 0 };
      const counted_m = tipTravel(simulate({ ...given.setup, move, hold_s: 2 }));
      expect(Math.abs(counted_m - FOOT_M)).toBeLessThan(0.0127);
    }
  });

  test('points up where the rod points at the bait, and right where it is across', () => {
    const [rod] = rods;
    const at = (azimuth_deg: number, isFromDeck = false) =>
      isPulledUp({ ...rod, start: { elevation_deg: 0, azimuth_deg }, isFromDeck });
    expect([at(8), at(60), at(8, true)]).toEqual([true, false, false]);
  });

  test('is none for a way that no straight pull gives', () => {
    const [rod] = rods;
    expect(pullFor({ ...rod, isFromDeck: false }, 3 * rod.setup.rod.length_m)).toBeNull();
  });
});

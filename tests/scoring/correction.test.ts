import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Move } from '../../src/lib/model';
import { gradeTry, solveCorrection, tipTravel, type Challenge } from '../../src/lib/scoring';
import { regulaFalsi } from '../../src/lib/scoring/regula-falsi';
import { fewer } from '../samples';
import { challengeOf, oneFootGoals, plainChallenge } from './results';

type Turn = Extract<Move, { kind: 'lift' | 'sweep' }>;

function marksOf(challenge: Challenge, move: Move): number {
  return gradeTry(challenge, move).grade.marks;
}

const waters = fc.record({
  depth_m: fc.double({ min: 2.2, max: 6, noNaN: true }),
  bait_x_m: fc.double({ min: 7, max: 20, noNaN: true }),
  mass_kg: fc.double({ min: 0.01, max: 0.03, noNaN: true }),
  slack_m: fc.double({ min: 0, max: 0.12, noNaN: true }),
  target_m: fc.double({ min: 0.2, max: 0.6, noNaN: true }),
  isLift: fc.boolean()
});

function challengeIn(water: typeof waters extends fc.Arbitrary<infer T> ? T : never): Challenge {
  const { depth_m, bait_x_m, mass_kg, slack_m, target_m, isLift } = water;
  const turn = { from_deg: isLift ? 10 : 55, to_deg: 70, duration_s: 2 };
  const move: Move = isLift
    ? { kind: 'lift', ...turn }
    : { kind: 'sweep', ...turn, elevation_deg: 0 };
  return challengeOf(
    [
      { kind: 'travel', target_m, band_m: 0.05, weight: 60 },
      { kind: 'contact', least: 0.9, weight: 40 }
    ],
    {
      setup: {
        ...plainChallenge.setup,
        water: { depth_m },
        bait: { mass_kg },
        start: { bait_x_m, slack_m }
      },
      plane: isLift ? 'lift' : 'sweep',
      start: isLift ? { elevation_deg: 10, azimuth_deg: 0 } : { elevation_deg: 0, azimuth_deg: 55 },
      reference: move,
      beginner: move
    }
  );
}

describe('the advised move', () => {
  test('gets full marks when it is made, at its pace, slower, and a tenth quicker', () => {
    fc.assert(
      fc.property(waters, (water) => {
        const challenge = challengeIn(water);
        const advice = solveCorrection(challenge);
        expect(advice).not.toBeNull();
        if (!advice) return;
        const move = advice.move as Turn;
        for (const pace of advice.isSlowToo ? [0.9, 1, 1.5, 2.5] : [0.9, 1]) {
          const slower = { ...move, duration_s: move.duration_s * pace };
          expect({ pace, marks: marksOf(challenge, slower) }).toEqual({ pace, marks: 100 });
        }
        expect(tipTravel(advice.result)).toBe(advice.tipTravel_m);
        expect(Math.abs(advice.result.travel_m - water.target_m)).toBeLessThan(0.0051);
      }),
      { numRuns: fewer(12, 8) }
    );
  });

  test('is the shortest in half seconds: half a second less loses marks', () => {
    const drag = challengeOf(oneFootGoals);
    const advice = solveCorrection(drag);
    const move = advice?.move as Turn;
    // The margin of a tenth that a quick hand gets is taken off, too.
    const shorter = { ...move, duration_s: (move.duration_s - 0.5) * 0.9 };
    expect(marksOf(drag, move)).toBe(100);
    expect(marksOf(drag, shorter)).toBeLessThan(100);
  });

  test('is said in half seconds and is longer for a lighter bait that must keep contact', () => {
    const needed = (mass_kg: number) => {
      const setup = {
        ...plainChallenge.setup,
        bait: { mass_kg },
        start: { bait_x_m: 7, slack_m: 0 }
      };
      const goals: Challenge['goals'] = [
        { kind: 'travel', target_m: 0.9, band_m: 0.1, weight: 50 },
        { kind: 'contact', least: 0.95, weight: 50 }
      ];
      return solveCorrection(challengeOf(goals, { setup }))?.duration_s ?? NaN;
    };
    const [light, heavy] = [needed(0.007), needed(0.028)];
    expect(light).toBeGreaterThan(heavy);
    expect(light % 0.5).toBe(0);
    expect(heavy % 0.5).toBe(0);
  });

  test('carries a band that grows with the slack nobody can see', () => {
    const bands = [0, 0.03, 0.1].map((slack_m) => {
      const setup = { ...plainChallenge.setup, start: { bait_x_m: 9, slack_m } };
      return solveCorrection(challengeOf(oneFootGoals, { setup }))?.band_m ?? NaN;
    });
    expect(bands[0]).toBeLessThan(0.005);
    expect(bands[1]).toBeGreaterThan(bands[0] + 0.01);
    expect(bands[2]).toBeGreaterThan(bands[1] + 0.03);
  });

  test('can be solved for another water than the challenge’s own', () => {
    const drag = challengeOf(oneFootGoals);
    const slacker = { ...plainChallenge.setup, start: { bait_x_m: 9, slack_m: 0.12 } };
    const own = solveCorrection(drag)?.tipTravel_m ?? NaN;
    expect(solveCorrection(drag, slacker)?.tipTravel_m).toBeGreaterThan(own + 0.04);
  });

  test('does not exist where nothing is to travel, or further than the rod reaches', () => {
    const still = challengeOf([{ kind: 'contact', least: 0.9, weight: 100 }]);
    const far = challengeOf([{ kind: 'travel', target_m: 5, band_m: 0.2, weight: 100 }]);
    expect(solveCorrection(still)).toBeNull();
    expect(solveCorrection(far)).toBeNull();
  });
});

describe('looking for a root', () => {
  const low = { x: 0, y: -2 };

  test('finds it where the function bends', () => {
    const f = (x: number) => x ** 3 - 2;
    expect(regulaFalsi(f, low, { x: 3, y: f(3) }, 1e-9)).toBeCloseTo(Math.cbrt(2), 9);
  });

  test('gives up where the function jumps over it', () => {
    const f = (x: number) => (x < 1 ? -2 : 3);
    expect(regulaFalsi(f, low, { x: 3, y: 3 }, 0.1)).toBeNull();
  });
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { LiveRun, parseSetup, ROD_RATE_HZ } from '../../src/lib/model';
import { costsOf, gradeRun, gradeTry, PASS_MARK, type Challenge } from '../../src/lib/scoring';
import { challengeOf, gradedAs, oneFootGoals, resultOf } from './results';

const drag = challengeOf(oneFootGoals);

const goals = fc
  .tuple(
    fc.double({ min: 0.1, max: 3, noNaN: true }),
    fc.double({ min: 0.01, max: 0.09, noNaN: true }),
    fc.integer({ min: 1, max: 97 })
  )
  .map(([target_m, band_m, weight]): Challenge['goals'] => [
    { kind: 'travel', target_m, band_m, weight },
    { kind: 'peak_height', most_m: 0.05, weight: 99 - weight },
    { kind: 'contact', least: 0.8, weight: 1 }
  ]);

const madeUp = fc.record({
  travel_m: fc.double({ min: -3, max: 6, noNaN: true }),
  peak_height_m: fc.double({ min: 0, max: 2, noNaN: true }),
  contact: fc.array(fc.constantFrom<0 | 1>(0, 1), { minLength: 12, maxLength: 40 })
});

describe('marks', () => {
  test('lie between 0 and 100, are whole, and are the sum of the goals’ marks', () => {
    fc.assert(
      fc.property(goals, madeUp, (aims, made) => {
        const grade = gradedAs(challengeOf(aims), resultOf(made)).grade;
        const sum = grade.goals.reduce((all, { marks }) => all + marks, 0);
        expect(grade.marks).toBe(sum);
        expect(Number.isInteger(grade.marks)).toBe(true);
        expect(grade.marks).toBeGreaterThanOrEqual(0);
        expect(grade.marks).toBeLessThanOrEqual(100);
        expect(grade.passed).toBe(grade.marks >= PASS_MARK);
      })
    );
  });

  test('never fall when the bait ends nearer to the target from the same side', () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(goals, madeUp, share, fc.boolean(), (aims, made, part, isOver) => {
        const challenge = challengeOf(aims);
        const target_m = aims[0].kind === 'travel' ? aims[0].target_m : NaN;
        const off_m = Math.abs(made.travel_m - target_m) * (isOver ? 1 : -1);
        const at = (miss_m: number) =>
          gradedAs(challenge, resultOf({ ...made, travel_m: target_m + miss_m })).grade.marks;
        expect(at(off_m * part)).toBeGreaterThanOrEqual(at(off_m));
      })
    );
  });

  test('a third of the way at the right pace, on the bottom, earns a third of what nearness gives', () => {
    const paced = challengeOf([
      { kind: 'travel', target_m: 0.9, band_m: 0.13, weight: 34 },
      { kind: 'pace', m_s: [0.05, 0.27], weight: 33 },
      { kind: 'contact', least: 0.9, weight: 33 }
    ]);
    const going = (travel_m: number) => {
      const made = resultOf({ travel_m, contact: new Array(101).fill(1) });
      const bait_x_m = made.trace.bait_x_m.map((_, i) => 10 - i * 0.01 * 0.15);
      return gradedAs(paced, { ...made, trace: { ...made.trace, bait_x_m } }).grade;
    };
    expect(going(0.9).marks).toBe(100);
    // 0.3 / (0.9 − 0.13) of three quarters, rounded three times.
    expect(Math.abs(going(0.3).marks - (0.3 / 0.77) * PASS_MARK)).toBeLessThanOrEqual(1.5);
  });

  test('never fall when the bait rises less', () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(goals, madeUp, share, (aims, made, part) => {
        const at = (peak_height_m: number) =>
          gradedAs(challengeOf(aims), resultOf({ ...made, peak_height_m })).grade.marks;
        expect(at(made.peak_height_m * part)).toBeGreaterThanOrEqual(at(made.peak_height_m));
      })
    );
  });

  test('are none for a rod held still, though contact and speed are kept', () => {
    expect(gradedAs(drag, resultOf({})).grade.marks).toBe(0);
  });

  test('that a goal cost sum to what is missing of 100, none for what was kept', () => {
    fc.assert(
      fc.property(goals, madeUp, (aims, made) => {
        const { grade } = gradedAs(challengeOf(aims), resultOf(made));
        const costs = costsOf(grade);
        expect(costs.reduce((all, { cost }) => all + cost, 0)).toBe(100 - grade.marks);
        for (const { met, cost, most } of costs) {
          if (met === 1) expect(cost).toBe(0);
          else expect(cost).toBeGreaterThan(0);
          expect(cost).toBeLessThanOrEqual(most);
        }
      })
    );
  });

  test('that a goal can cost are the same for every try', () => {
    fc.assert(
      fc.property(goals, madeUp, (aims, made) => {
        const { grade } = gradedAs(challengeOf(aims), resultOf(made));
        const [travel, height, contact] = aims;
        expect(costsOf(grade).map(({ goal, most }) => [goal.kind, most])).toEqual([
          [travel.kind, 100],
          [height.kind, height.weight],
          [contact.kind, contact.weight]
        ]);
      })
    );
  });

  test('are lost to the rod left up, and not to a hop as high as asked', () => {
    const hop = challengeOf([
      { kind: 'hops', count: 1, height_m: [0.3, 0.6], weight: 34 },
      { kind: 'lowered', least: 0.6, weight: 33 },
      { kind: 'tip_speed', most_m_s: 7, weight: 33 }
    ]);
    const made = resultOf({ hopHeights_m: [0.4] });
    const { grade } = gradedAs(hop, made);
    const [hops, lowered] = costsOf(grade);
    expect(hops.cost).toBe(0);
    expect(lowered).toMatchObject({ cost: 100 - grade.marks, most: 100 });
    expect(grade.marks).toBeGreaterThan(0);
  });

  test('for contact are earned by the way that was asked for', () => {
    const at = (travel_m: number) =>
      gradedAs(drag, resultOf({ travel_m, contact: [1, 1, 1] })).grade.goals[1].marks;
    const half = Math.round((0.75 / 2) * 30);
    expect(at(0.13)).toBe(half);
    expect(at(0.26)).toBe(30);
    // Twice the farthest that was asked is as wrong as half of the least.
    expect(at(0.68)).toBe(half);
    const done = (travel_m: number) => gradedAs(drag, resultOf({ travel_m })).grade.done;
    const parts = [-0.3, 0, 0.13, 0.26, 0.3, 0.68, 1.36].map(done);
    const asked = [0, 0, 0.75 / 2, 1, 1, 0.75 / 2, 0.75 / 4];
    expect(parts).toEqual(asked.map((part) => expect.closeTo(part, 9) as unknown));
  });

  test('for keeping still are full where nothing else is asked', () => {
    const still = challengeOf([{ kind: 'speed', most_m_s: 0.1, weight: 100 }]);
    expect(gradedAs(still, resultOf({})).grade.marks).toBe(100);
  });
});

describe('a try', () => {
  /** A hand's angles as a slow random walk outwards, a second to three long. */
  const hand = fc.array(fc.double({ min: -0.05, max: 0.35, noNaN: true }), {
    minLength: ROD_RATE_HZ,
    maxLength: 3 * ROD_RATE_HZ
  });

  test('graded again from its rod input gets the same result and the same marks', () => {
    const setup = parseSetup(drag.setup);
    fc.assert(
      fc.property(hand, (steps) => {
        const live = new LiveRun(setup, drag.start);
        let { azimuth_deg } = drag.start;
        for (const step of steps)
          live.push({ elevation_deg: 0, azimuth_deg: (azimuth_deg += step) });
        const input = JSON.parse(JSON.stringify(live.input()));
        const { result: seen } = live.finish(drag.hold_s);
        const again = gradeTry(drag, input);
        expect(again.result).toEqual(seen);
        expect(again.grade).toEqual(gradeRun(drag, { move: input, result: seen }));
      }),
      { numRuns: 12 }
    );
  });
});

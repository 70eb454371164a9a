import { expect, test } from 'vitest';
import { AXES } from '../../../src/lib/app/explore/axes';
import type { ChartWanted } from '../../../src/lib/app/explore/chart';
import { curvesOf, stagesOf } from '../../../src/lib/app/explore/curves';
import { contactLimits } from '../../../src/lib/compute/jobs/limits';
import { seededRandom, simulate, type Scenario } from '../../../src/lib/model';
import { cornersOf } from '../../../src/lib/scoring';
import { ask, base, firstBanded, made, wanted } from './asked-chart';

/** A bell-shaped number (Box and Muller 1958). */
const bell = (random: () => number) =>
  Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());

test('nine random hands in ten, and nine random jigs in ten, lie inside their bands', async () => {
  const { at, readings } = await firstBanded(stagesOf(wanted, curvesOf(wanted)));
  const here = AXES.depth.set(base, at);
  const { hand, ends } = readings.travel_m ?? {};
  if (!hand || !ends) throw new Error('no bands');
  const random = seededRandom(1604);
  const count = 120;
  const share = (draw: () => Scenario, [low, high]: readonly [number, number]) => {
    const inside = Array.from({ length: count }, () => simulate(draw()).travel_m).filter(
      (m) => m >= low && m <= high
    );
    return inside.length / count;
  };
  // 0.25 is nine in ten of a bell-shaped hand with this deviation.
  const sd = 0.25 / 1.6449;
  const hands = share(() => made({ ...here, tip_m: here.tip_m * (1 + sd * bell(random)) }), hand);
  // Three deviations of a share of 0.9 among 120: 0.082.
  expect(Math.abs(hands - 0.9)).toBeLessThan(0.082);

  const scenario = made(here);
  const jigs = share(() => {
    const { bait } = scenario;
    return {
      ...scenario,
      bait: {
        ...bait,
        drag_area_m2: bait.drag_area_m2 * 2 ** (2 * random() - 1),
        lift_to_drag: 0.4 * random()
      }
    };
  }, ends);
  expect(jigs).toBeGreaterThanOrEqual(0.9);
});

test('nine in ten of what an outfit’s own tests leave open lie inside its band', async () => {
  // Invented: slack 10 cm, give or take 5, and a drag area known to a third, each at nine in ten.
  const middle = { slack_m: 0.1, drag_area_m2: 6e-4 };
  const ends = [0.05, 0.15].map((slack_m) => ({ ...middle, slack_m }));
  const areas = [0.75, 4 / 3].map((times) => ({ ...middle, drag_area_m2: times * 6e-4 }));
  const spread = { middle, ends: [...ends, ...areas] };
  const own = { ...wanted, base: AXES.slack.set({ ...base, spread, hand: null }, 0.1) };
  const { at, readings } = await firstBanded(stagesOf(own, curvesOf(own)));
  const [low, high] = readings.travel_m?.ends ?? [0, 0];
  const scenario = made(AXES.depth.set(own.base, at));
  const random = seededRandom(1606);
  const draws = Array.from({ length: 120 }, () => {
    const [slack, area] = [bell(random) / 1.6449, bell(random) / 1.6449];
    const drawn = { slack_m: 0.1 + 0.05 * slack, drag_area_m2: 6e-4 * (4 / 3) ** area };
    return simulate(cornersOf(scenario, { middle, ends: [drawn] })[0]).travel_m;
  });
  const share = draws.filter((m) => m >= low && m <= high).length / draws.length;
  // Three deviations of a share of 0.9 among 120: 0.082.
  expect(Math.abs(share - 0.9)).toBeLessThan(0.082);
});

test('nine random hands in ten have their limit inside that of the own hand', async () => {
  const limits: ChartWanted = { ...wanted, kind: 'limits', axis: AXES.weight };
  const [, , deep] = curvesOf(limits);
  const [, , light] = stagesOf(limits, [deep]);
  const [{ at, readings }] = await light.make(ask);
  const { value = NaN, hand, ends } = readings.limit_m_s ?? {};
  if (!hand || !ends) throw new Error('no bands');
  expect(hand[0]).toBeLessThan(value);
  expect(hand[1]).toBeGreaterThan(value);
  const random = seededRandom(1605);
  const sd = 0.25 / 1.6449;
  const here = AXES.weight.set(deep.base, at);
  const drags = Array.from({ length: 60 }, () =>
    made({ ...here, kind: 'sweep', tip_m: here.tip_m * (1 + sd * bell(random)) })
  );
  const own = contactLimits({ drags, tip_m: here.tip_m, grain: 'fine' });
  const inside = own.filter((one) => one && one.pace_m_s >= hand[0] && one.pace_m_s <= hand[1]);
  // Three deviations of a share of 0.9 among 60: 0.116. A limit is told in steps, which widen no more.
  expect(inside.length / drags.length).toBeGreaterThanOrEqual(0.9 - 0.116);
  expect(inside.length).toBeLessThan(drags.length);
});

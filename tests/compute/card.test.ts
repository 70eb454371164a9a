import { expect, test } from 'vitest';
import { cardFigures, type CardWanted } from '../../src/lib/compute/jobs/card';
import { fallTimes } from '../../src/lib/compute/jobs/falls';
import { fall, shownDrag } from '../../src/lib/course/items/moves';
import { waterWith } from '../../src/lib/course/lessons/fathomley';
import { isOffBottom, parseScenario, simulate, type SetupInput } from '../../src/lib/model';
import { cornersOf } from '../../src/lib/scoring';

/** A quarter of the way: its runs are short. */
const wanted: CardWanted = {
  depths_m: [3, 4.5],
  out_m: 9,
  temperature_C: 16,
  bottom: 'sand',
  units: 'metric'
};
const setupAt = (depth_m: number, out_m: number): SetupInput =>
  waterWith({
    depth_m,
    temperature_C: 16,
    bottom: { ground: { kind: 'sand', seed: 11 } },
    start: { bait_x_m: out_m, slack_m: 0.0254 }
  });
const runOf = ({ setup, move, hold_s }: ReturnType<typeof shownDrag>) =>
  parseScenario({ ...setup, move, hold_s });

test('a card says what single runs of the model say, and its limit is the quickest count that stays down', () => {
  const shares: number[] = [];
  const { moves, limits } = cardFigures(wanted, (share) => shares.push(share));
  expect(shares.at(-1)).toBe(1);
  const drag = moves.find((one) => one.kind === 'drag' && one.tip_m === 0.6);
  const lone = simulate(runOf(shownDrag(setupAt(4.5, 9), 0.6, 4))).travel_m;
  // A card's lengths are whole millimetres.
  expect(drag?.came[1]?.[0]).toBeCloseTo(lone, 2);

  const count_s = limits.count_s[0][0]!;
  const lifted = (s: number) => {
    const scenario = runOf(shownDrag(setupAt(3, 9), 0.6, s));
    return [scenario, ...cornersOf(scenario)].some((one) =>
      isOffBottom(simulate(one).peak_height_m)
    );
  };
  expect(lifted(count_s)).toBe(false);
  expect(lifted(count_s - 1)).toBe(true);
}, 120_000);

test('one fall into deep water passes each depth when a fall that ends there ends', () => {
  const setup = setupAt(6, 9);
  const [three, six] = fallTimes({ setup, depths_m: [3, 6] });
  const { setup: shallow, move, hold_s } = fall(setupAt(3, 9), 12);
  const { events } = simulate(parseScenario({ ...shallow, move, hold_s }));
  const down_s = events.find(({ kind }) => kind === 'bottom')?.t_s ?? 0;
  // Half of what a voice counts by; the water below changes nothing above it.
  expect(Math.abs(three.fall_s - down_s)).toBeLessThan(0.5);
  expect(six.fall_s).toBeGreaterThan(three.fall_s);
  expect(three.half_s).toBeGreaterThan(0);
}, 60_000);

import { expect, test } from 'vitest';
import { cardFigures, type CardWanted } from '../../src/lib/compute/jobs/card';
import { fallTimes } from '../../src/lib/compute/jobs/falls';
import { movesForPlan, weightForPlan } from '../../src/lib/compute/jobs/plan';
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
  wind: 'calm',
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
  const lone = simulate(runOf(shownDrag(setupAt(4.5, 0.7 * 9), 0.6, 4))).travel_m;
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
});

test('a card and a plan of the same day say the same: the counts far and near, the drag and the hop, in its wind', () => {
  const asked = {
    depth_m: 4.572,
    ground: 'sand',
    temperature_C: 16,
    wind: 'strong',
    fish: 'unknown',
    light: 'clouds',
    out_m: 9,
    minutes: 120,
    clients: 0
  } as const;
  const given = { asked, mass_kg: 0.01417, units: 'imperial' } as const;
  const card = cardFigures({
    ...{ ...wanted, units: 'imperial', mass_kg: given.mass_kg, wind: 'strong' },
    depths_m: [2.286, 4.572]
  });
  const { limit, fall: planned } = weightForPlan(given);
  const deep_s = card.limits.count_s[1];
  expect([deep_s[0], deep_s[2]]).toEqual(limit.count_s);
  // Both waters asked for are in the table, each once, by depth.
  const depths_m = card.falls.map(([m]) => m);
  expect(depths_m).toEqual([...new Set(depths_m)].sort((a, b) => a - b));
  expect(depths_m).toEqual(expect.arrayContaining([2.286, 4.572]));
  const fallen = card.falls.find(([m]) => m === 4.572);
  expect(fallen?.[1]).toBeCloseTo(planned[0], 0);
  const [drag, hop] = movesForPlan({ ...given, retrieves: ['drag', 'hop'] });
  const hopped = card.moves.find((one) => one.kind === 'lift' && one.duration_s === 0.25);
  expect(hopped?.came[1]).toEqual(hop.came);
  expect(hopped?.kind === 'lift' && hopped.high[1]).toEqual(hop.high);
  const dragged = card.moves.find((one) => one.kind === 'drag' && one.duration_s === 4);
  expect(dragged?.came[1]).toEqual(drag.came);
});

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
});

import { expect, test } from 'vitest';
import { movesForPlan, weightForPlan, type DayWanted } from '../../src/lib/compute/jobs/plan';
import { allLessons, findChallenge } from '../../src/lib/course';
import { movedIn, readingsOf } from '../../src/lib/compute/jobs/moved';
import { shownDrag, shownLift } from '../../src/lib/course/items/moves';
import { shownHop } from '../../src/lib/course/plan';
import { waterWith } from '../../src/lib/course/lessons/fathomley';
import { isOffBottom, OUNCE_KG, parseScenario, simulate } from '../../src/lib/model';
import { bandsOf, cornersOf } from '../../src/lib/scoring';

/** Shallow and near: its runs are short. */
const wanted: DayWanted = {
  asked: {
    depth_m: 3,
    ground: 'sand',
    temperature_C: 16,
    wind: 'breeze',
    fish: 'unknown',
    light: 'clouds',
    out_m: 10,
    minutes: 120,
    clients: 0
  },
  mass_kg: 0.01417,
  units: 'metric'
};
const setupAt = (out_m: number, wind_m_s: number) =>
  waterWith({
    depth_m: 3,
    temperature_C: 16,
    mass_kg: 0.01417,
    bottom: { ground: { kind: 'sand', seed: 11 } },
    start: { bait_x_m: out_m, slack_m: 0.0254 },
    more: { wind_m_s }
  });

test('the limit of a plan is the quickest count that stays down in either wind, near as far', () => {
  const { limit, fall, name, outfit } = weightForPlan(wanted);
  expect(limit.out_m).toEqual([10, 4]);
  expect([name.replace('\u00a0', ' '), outfit]).toEqual(['14 g', undefined]);
  expect(fall[0]).toBeGreaterThan(fall[1]);
  const lifts = (count_s: number, wind_m_s: number) => {
    const { setup, move, hold_s } = shownDrag(setupAt(4, wind_m_s), limit.tip_m, count_s);
    const scenario = parseScenario({ ...setup, move, hold_s });
    return [scenario, ...cornersOf(scenario)].some((one) =>
      isOffBottom(simulate(one).peak_height_m)
    );
  };
  const near_s = limit.count_s[1]!;
  expect([lifts(near_s, 3), lifts(near_s, -3)]).toEqual([false, false]);
  expect(lifts(near_s - 1, 3) || lifts(near_s - 1, -3)).toBe(true);
});

test('stones are left out: a jig that climbs one is not lifted by the hand', () => {
  const asked = { ...wanted.asked, wind: 'calm', ground: 'gravel' } as const;
  const [far_s] = weightForPlan({ ...wanted, asked }).limit.count_s;
  // Of sand it is 2 or 3; on stones laid out no count at all would do.
  expect(far_s).toBeLessThanOrEqual(4);
});

test('on mud a slow drag stays down but for the jump as it lets go, and a quick one does not', () => {
  const cold = { depth_m: 9.144, out_m: 18.3, temperature_C: 8, ground: 'mud' } as const;
  const asked = { ...wanted.asked, ...cold, wind: 'calm' } as const;
  const [light, half] = [OUNCE_KG / 4, OUNCE_KG / 2].map(
    (mass_kg) => weightForPlan({ ...wanted, asked, mass_kg, units: 'imperial' }).limit.count_s
  );
  expect([...light, ...half]).not.toContain(null);
  // In 4 s one skirt of the half ounce flies an inch higher than mud alone makes it jump.
  expect(half[1]).toBeGreaterThan(4);
});

test('the hop of a plan and of a card is the lesson’s hop', () => {
  const lesson = findChallenge('one-hop', allLessons());
  const { move, start, plane } = shownHop(setupAt(7, 0));
  expect([move, start, plane]).toEqual([lesson?.reference, lesson?.start, lesson?.plane]);
});

test('a jig that leaves the bottom and goes farther than the tip has no distance to carry', () => {
  const lifted = (depth_m: number, out_m: number) => {
    const setup = waterWith({ depth_m, start: { bait_x_m: out_m, slack_m: 0.0254 } });
    const { move, hold_s, ...shown } = shownLift(setup, 9, 10, 1.5);
    return bandsOf(parseScenario({ ...shown.setup, move, hold_s }), movedIn);
  };
  const steep = lifted(8.5, 12.8);
  expect(steep.travel_m.nominal).toBeGreaterThan(steep.tip_m.nominal);
  expect(readingsOf(steep)).toMatchObject({ came: null });
  expect(readingsOf(steep).high?.[0]).toBeGreaterThan(0.1);
  // On a long, flat line it is drawn along, and less far than the tip.
  expect(readingsOf(lifted(3, 20)).came?.[0]).toBeLessThan(0.9);
});

test('a retrieve’s move is the single run of it, and one that the rod cannot do has no reading', () => {
  const [drag, hop] = movesForPlan({ ...wanted, retrieves: ['hop', 'drag', 'dead-stick'] });
  const { setup, move, hold_s } = shownHop(setupAt(7, 3));
  const lone = simulate(parseScenario({ ...setup, move, hold_s }));
  expect([drag.retrieve, hop.retrieve]).toEqual(['drag', 'hop']);
  // Lengths of a plan are whole millimetres.
  expect(hop.came?.[0]).toBeCloseTo(lone.travel_m, 2);
  expect(hop.high?.[0]).toBeCloseTo(lone.peak_height_m, 2);

  const short = {
    outfit: 'o1',
    name: 'Short rod',
    bait: { mass_kg: 0.01417 },
    line: { material: 'fluorocarbon' as const, diameter_m: 0.0003 },
    rod: { length_m: 0.3 }
  };
  const [none] = movesForPlan({ ...wanted, gear: short, retrieves: ['drag'] });
  expect(none).toEqual({ retrieve: 'drag', came: null, high: null });
});

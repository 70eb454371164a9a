import { expect, test } from 'vitest';
import { fit, outfitGearOf, parseSession, stiffnessOf } from '../../src/lib/fit';
import { parseScenario, simulateScenario } from '../../src/lib/model';
import { bandOf } from '../../src/lib/scoring';
import { withOutfitGear, type OwnNumbers } from '../../src/lib/wire';
import { anOutfit } from '../practice/samples';
import { madeUp, NOMINAL } from './sessions';

const few = madeUp(5);
const { unknowns, spread } = fit(
  parseSession({ ...few.session, tests: few.session.tests.slice(0, 6) })
);
const own: OwnNumbers = {
  unknowns: JSON.parse(JSON.stringify(unknowns)),
  spread,
  session: 'session-of-one-day',
  model: '1',
  at: '2030-05-01T09:00:00.000Z'
};

test('an outfit as labelled is what its labels say, from the hand to the tip', () => {
  const { bait, line, rod, spread: none } = outfitGearOf(anOutfit('o1'));
  expect(bait).toEqual({ mass_kg: 0.0142 });
  // 12 lb of 4.448 N.
  expect(line).toMatchObject({ diameter_m: 0.00028, material: 'fluorocarbon' });
  expect(line.breaking_load_N).toBeCloseTo(53.38, 2);
  expect(rod.length_m).toBeCloseTo(1.8, 9);
  expect(none).toBeUndefined();
});

test('a tip that goes down 10 cm under 100 g has a stiffness of 9.8 N/m', () => {
  expect(stiffnessOf({ hung_kg: 0.1, down_m: 0.1 })).toBeCloseTo(9.80665, 9);
});

test('a fitted outfit has its own reach and drag, and as published they are laid aside', () => {
  const gear = outfitGearOf(anOutfit('o1', { own }));
  expect(gear.rod.length_m).toBe(unknowns.reach_m?.estimate);
  expect(gear.bait.drag_area_m2).toBeCloseTo(unknowns.drag_area_m2?.estimate ?? NaN, 12);
  expect(gear.spread?.ends).toHaveLength(10);
  expect(outfitGearOf(anOutfit('o1', { own, asPublished: true }))).toEqual(
    outfitGearOf(anOutfit('o1'))
  );
});

test('a timed drop alone gives the drag area, with its band', () => {
  const drop = { distance_m: 3, times_s: [3.1, 3.0, 3.2], temperature_C: 15 };
  const gear = outfitGearOf(anOutfit('o1', { jig: { ...anOutfit('o1').jig, drop } }));
  expect(gear.bait.drag_area_m2).toBeGreaterThan(1e-4);
  expect(gear.spread?.ends).toHaveLength(6);
});

test('gear of one’s own keeps the water, the bottom and the start', () => {
  const inIt = withOutfitGear(NOMINAL, outfitGearOf(anOutfit('o1')));
  expect(inIt.water).toEqual(NOMINAL.water);
  expect(inIt.start).toEqual(NOMINAL.start);
  expect(inIt.rod).toMatchObject({ length_m: 1.8000000000000003, pivot_height_m: 1.2 });
});

test('the band of tested gear is narrower than of any gear, and holds the truth of its session', () => {
  const move = { kind: 'sweep', from_deg: 0, to_deg: 45, duration_s: 1 } as const;
  const gear = outfitGearOf(anOutfit('o1', { own }));
  const setup = withOutfitGear(
    { ...NOMINAL, start: { bait_x_m: 12, slack_m: few.truth.slack_m } },
    gear
  );
  const travel = (one: Parameters<typeof simulateScenario>[0]) => simulateScenario(one).travel_m;
  const scenario = parseScenario({ ...setup, move, hold_s: 3 });
  const [tested, any] = [bandOf(scenario, travel, gear.spread), bandOf(scenario, travel)];
  expect(tested.corners).toHaveLength(10);
  expect(tested.half).toBeLessThan(any.half);
});

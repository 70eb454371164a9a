import { describe, expect, test } from 'vitest';
import {
  FOOT_M,
  GROUND_KINDS,
  INCH_M,
  LiveRun,
  OUNCE_KG,
  ScenarioError
} from '../../src/lib/model';
import { faultText } from '../../src/lib/sandbox/fault';
import {
  diameterFor,
  FIRST_GEAR,
  gearOf,
  lineName,
  LINES,
  offeredWith,
  RANGES,
  setupOf,
  type Gear
} from '../../src/lib/sandbox/gear';
import { SHAPES } from '../../src/lib/sandbox/shape';
import { tied } from '../tied';
import { smallWater } from './waters';

const OTHER: Gear = {
  mass_kg: 0.75 * OUNCE_KG,
  material: 'braid',
  diameter_m: 0.28e-3,
  depth_m: 9.5,
  cast_m: 31,
  rod_m: 2.2,
  slack_m: 0.3,
  friction: 0.25,
  ground: 'brush',
  seed: 7,
  shape: 'ledge',
  snags: true,
  wind_m_s: -4,
  drift_m_s: 0.2,
  leader_m: 1.8,
  begin: 'free fall'
};

describe('gear', () => {
  test.each([FIRST_GEAR, OTHER])('is found again in its setup', (gear) => {
    const again = gearOf(setupOf(gear));
    for (const key of Object.keys(gear) as (keyof Gear)[]) {
      if (typeof gear[key] === 'number') expect(again[key]).toBeCloseTo(gear[key], 12);
      else expect(again[key]).toBe(gear[key]);
    }
  });

  test('leaves stones and water as they were', () => {
    const rocky = smallWater({
      water: { depth_m: 3.1, temperature_C: 9 },
      bottom: { stones: [{ x_m: 12, width_m: 0.3, height_m: 0.1 }] }
    });
    const changed = setupOf({ ...gearOf(rocky), mass_kg: 0.021 }, rocky);
    expect(changed.bottom.stones).toEqual(rocky.bottom.stones);
    expect(changed.water.temperature_C).toBe(9);
    expect(changed.bait.mass_kg).toBe(0.021);
  });

  test('we start with is not what the trade’s observations were made with', () => {
    expect(Math.abs(FIRST_GEAR.depth_m - 13 * FOOT_M)).toBeGreaterThan(FOOT_M);
    expect(Math.abs(FIRST_GEAR.rod_m - 88 * INCH_M)).toBeGreaterThan(INCH_M);
    expect(LINES.find((line) => line.diameter_m === FIRST_GEAR.diameter_m)?.strength_lb).not.toBe(
      15
    );
  });

  test('is named in the learner’s units', () => {
    expect(lineName(LINES[2], 'imperial')).toBe(tied('12~lb fluorocarbon'));
    expect(lineName(LINES[2], 'metric')).toBe(tied('0.28~mm fluorocarbon'));
  });

  test('parts at the strength on its label', () => {
    expect(setupOf(FIRST_GEAR).line.breaking_load_N).toBeCloseTo(53.38, 2);
  });

  test('leaves a profile that is not ours as it is', () => {
    const profile = { x_m: [5, 20], z_m: [-4, -3] };
    const setup = smallWater({ water: { depth_m: 4 }, bottom: { profile } });
    expect(gearOf(setup).shape).toBe('given');
    expect(setupOf({ ...gearOf(setup), mass_kg: 0.021 }, setup).bottom.profile).toEqual(profile);
  });

  const lies = [null, ...GROUND_KINDS].flatMap((ground) =>
    SHAPES.map((shape) => [ground ?? 'plain', ground, shape] as const)
  );
  test.each(lies)('can be laid out over %s, %j, %s, in wind and drift', (_name, ground, shape) => {
    for (const begin of ['bottom', 'free fall', 'tight fall'] as const) {
      const setup = setupOf({ ...FIRST_GEAR, ground, shape, begin, wind_m_s: 6, drift_m_s: 0.3 });
      const live = new LiveRun(setup, { elevation_deg: 0, azimuth_deg: 0 });
      live.push({ elevation_deg: 0, azimuth_deg: 0 });
      expect(Math.abs(live.run.tipTension_N)).toBeLessThan(2);
    }
  });

  const ends = (['least', 'most'] as const).flatMap((depth) =>
    (['least', 'most'] as const).flatMap((cast) =>
      (['least', 'most'] as const).map((slack) => [depth, cast, slack] as const)
    )
  );
  test.each(ends)(
    'at the ends of its sliders (%s, %s, %s) can be laid out',
    (depth, cast, slack) => {
      const { depth_m, cast_m, slack_m } = RANGES.imperial;
      const setup = setupOf({
        ...FIRST_GEAR,
        depth_m: depth_m[depth],
        cast_m: cast_m[cast],
        slack_m: slack_m[slack]
      });
      const { nodes, record } = new LiveRun(setup, { elevation_deg: 0, azimuth_deg: 0 }).run;
      const [first] = record.events;
      // 150 ft of line without any slack pull harder than the bottom holds, and draw the bait in by inches.
      const isDrawn = cast === 'most' && slack === 'least';
      const by_m = first?.kind === 'pulled in' ? first.by_m : 0;
      expect(by_m > 0).toBe(isDrawn);
      expect(by_m).toBeLessThan(FOOT_M);
      expect(nodes.x[nodes.x.length - 1]).toBeCloseTo(cast_m[cast] - by_m, 2);
    }
  );
});

test.each([
  [{ slack_m: 50 }, 'slack'],
  [{ depth_m: 200 }, 'depth'],
  [{ mass_kg: -1 }, 'bait']
])('what cannot be is said with the control to change: %o', (change, name) => {
  let fault: unknown;
  try {
    setupOf({ ...FIRST_GEAR, ...change });
  } catch (error) {
    fault = error;
  }
  expect(fault).toBeInstanceOf(ScenarioError);
  expect(faultText(fault as ScenarioError)).toContain(`change the ${name}`);
});

test('what is chosen is among what is offered, once', () => {
  expect(offeredWith([1.52, 3.353, 6.1], 3.35)).toEqual([1.52, 3.35, 6.1]);
  expect(offeredWith([1.52, 3.353], 2)).toEqual([1.52, 2, 3.353]);
  expect(offeredWith([1.52, 3.353], null)).toEqual([1.52, 3.353]);
});

test('a line has the diameter of its pound test, between the table’s lines and beyond them', () => {
  for (const { material, strength_lb, diameter_m } of LINES) {
    expect(diameterFor(material, strength_lb)).toBeCloseTo(diameter_m, 9);
  }
  const [twelve, fifteen, sixteen] = [12, 15, 16].map((lb) => diameterFor('fluorocarbon', lb));
  expect(fifteen).toBeGreaterThan(twelve);
  expect(fifteen).toBeLessThan(sixteen);
  // Four times the strength of 20 lb: twice the diameter.
  expect(diameterFor('nylon', 80)).toBeCloseTo(2 * 0.43e-3, 9);
  expect(diameterFor('braid', 5)).toBeCloseTo(0.5 * 0.23e-3, 9);
});

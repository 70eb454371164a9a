import { describe, expect, test } from 'vitest';
import {
  fallSpeed,
  GRAVITY_M_S2,
  simulate,
  waterAt,
  type ScenarioInput
} from '../../src/lib/model';

const HELD = { kind: 'tip_path' as const, t_s: [0, 1], x_m: [1.9, 1.9], z_m: [1.2, 1.2] };
const BASE: ScenarioInput = {
  water: { depth_m: 4 },
  line: { diameter_m: 0.0003 },
  bait: { mass_kg: 0.0177, submerged_weight_fraction: 0.91 },
  start: { bait_x_m: 16, slack_m: 0.1 },
  move: HELD,
  hold_s: 10
};
/** Next to no line: thin, as heavy as water, without drag. */
const THREAD = {
  diameter_m: 2e-5,
  density_kg_m3: waterAt(15).density_kg_m3,
  normal_drag: 0,
  tangential_drag: 0,
  youngs_modulus_Pa: 1e11
};

const touchdown = (scenario: ScenarioInput): number =>
  simulate(scenario).events.find(({ kind }) => kind === 'bottom')?.t_s ?? NaN;

describe('a fall from the splash', () => {
  test('on a free spool takes the time of a free fall: depth = v²/g′ · ln cosh(g′t/v)', () => {
    const scenario: ScenarioInput = {
      ...BASE,
      line: THREAD,
      bait: { ...BASE.bait, drag_area_m2: 6e-4, added_mass_fraction: 0 },
      start: { bait_x_m: 16, line: 'splash', spool: 'free', slack_m: 0.2 }
    };
    const gravity = 0.91 * GRAVITY_M_S2;
    const v = fallSpeed(0.0177 * gravity, 6e-4, waterAt(15).density_kg_m3);
    const depth = 4 - 0.02;
    const exact = (v / gravity) * Math.acosh(Math.exp((depth * gravity) / (v * v)));
    expect(Math.abs(touchdown(scenario) / exact - 1)).toBeLessThan(0.01);
  });

  test.each([3, 30, 200, 1231])(
    'on a free spool pulls on no spring: EA of %s N takes the same time straight down',
    (axial_N) => {
      const diameter_m = 1e-4;
      const result = simulate({
        water: { depth_m: 6 },
        line: {
          ...THREAD,
          diameter_m,
          youngs_modulus_Pa: axial_N / ((Math.PI / 4) * diameter_m ** 2)
        },
        bait: {
          mass_kg: 0.0142,
          submerged_weight_fraction: 0.91,
          drag_area_m2: 6e-4,
          added_mass_fraction: 0
        },
        start: { bait_x_m: 15, line: 'splash', spool: 'free' },
        move: { kind: 'tip_path', t_s: [0, 12], x_m: [1.9, 1.9], z_m: [1.2, 1.2] },
        hold_s: 0
      });
      const gravity = 0.91 * GRAVITY_M_S2;
      const v = fallSpeed(0.0142 * gravity, 6e-4, waterAt(15).density_kg_m3);
      const exact = (v / gravity) * Math.acosh(Math.exp((5.98 * gravity) / (v * v)));
      const down = result.events.find(({ kind }) => kind === 'bottom')?.t_s ?? NaN;
      // Half a per cent: three ticks, and the swing that a soft line allows.
      expect(Math.abs(down / exact - 1)).toBeLessThan(0.005);
      // The dry thread has a weight, a few grams to the metre: it sags, and takes the bait inches along.
      expect(Math.abs(result.trace.bait_x_m[Math.round(down * 100)] - 15)).toBeLessThan(0.1);
    }
  );

  test('of a light jig on braid draws no more line than the way down, and goes on after it in numbers', () => {
    const ounce_kg = 0.028349523125;
    const fallOf = (drag_area_m2: number) =>
      simulate({
        water: { depth_m: 9.4488 },
        line: { material: 'braid', diameter_m: 0.00023 },
        bait: { mass_kg: ounce_kg / 4, drag_area_m2 },
        rod: { length_m: 1.75, tip_stiffness_N_per_m: 20 },
        start: { bait_x_m: 12.192, line: 'splash', spool: 'free' },
        move: { kind: 'lift', from_deg: 10, to_deg: 10, duration_s: 0.1 },
        hold_s: 30
      });
    const areas_m2 = [6.5e-4, 7e-4, 7.5e-4];
    const results = areas_m2.map(fallOf);
    for (const { trace } of results) expect([...trace.bait_z_m].every(Number.isFinite)).toBe(true);
    const [less, down, more] = results.map(
      ({ events }) => events.find(({ kind }) => kind === 'bottom')?.t_s ?? NaN
    );
    // A fall goes with the root of the drag area: between its neighbours to what slack braid whips, half a per cent.
    expect(Math.abs((2 * down) / (less + more) - 1)).toBeLessThan(0.01);
  });

  test('asked for until the bottom is the same run, and ends with the tick that touches it', () => {
    const scenario: ScenarioInput = {
      ...BASE,
      start: { bait_x_m: 16, line: 'splash', spool: 'free', slack_m: 0.05 }
    };
    const whole = simulate(scenario);
    const { events, trace } = simulate({ ...scenario, until: 'bottom' });
    const down_s = touchdown(scenario);
    expect(events.at(-1)).toEqual({ t_s: down_s, kind: 'bottom' });
    expect(trace.t_s.at(-1)).toBeCloseTo(Math.ceil(down_s * 100 - 1e-9) / 100, 9);
    expect([...trace.bait_z_m]).toEqual([...whole.trace.bait_z_m.slice(0, trace.t_s.length)]);
  });

  test('goes straight down on a free spool and swings in on a closed one', () => {
    const fall = (spool: 'free' | 'closed') =>
      simulate({ ...BASE, start: { bait_x_m: 16, line: 'splash', spool, slack_m: 0.05 } });
    expect(fall('free').travel_m).toBeLessThan(0.4);
    expect(fall('closed').travel_m).toBeGreaterThan(1.2);
  });

  test('takes longer on a real line than the bait alone would, and longer still on a closed spool', () => {
    const alone = 4 / fallSpeed(0.0177 * 0.91 * GRAVITY_M_S2, 6e-4, waterAt(15).density_kg_m3);
    const on = (spool: 'free' | 'closed') =>
      touchdown({ ...BASE, start: { bait_x_m: 16, line: 'splash', spool, slack_m: 0.05 } });
    expect(on('free')).toBeGreaterThan(alone);
    expect(on('closed')).toBeGreaterThan(1.1 * on('free'));
  });

  test('thick line slows a swing on a tight line by its sideways drag, and hardly a fall on a free spool', () => {
    const down = (spool: 'free' | 'closed', diameter_m: number) =>
      touchdown({
        ...BASE,
        water: { depth_m: 6 },
        line: { material: 'nylon', diameter_m },
        start: { bait_x_m: 14, line: 'splash', spool, slack_m: 0.05 },
        hold_s: 30
      });
    const slower = (spool: 'free' | 'closed') => down(spool, 0.00055) / down(spool, 0.00026) - 1;
    // Hardly: less than a counting voice is off, a twentieth (common practice, no source).
    expect(slower('free')).toBeLessThan(0.05);
    expect(slower('closed')).toBeGreaterThan(0.1);
  });

  test('as a pendulum keeps its radius and has the speed its drop gives it: v² = 2g′ · drop', () => {
    const result = simulate({
      ...BASE,
      line: { ...THREAD, diameter_m: 1e-4 },
      bait: {
        mass_kg: 0.0177,
        submerged_weight_fraction: 0.91,
        drag_area_m2: 0,
        added_mass_fraction: 0
      },
      start: { bait_x_m: 9, line: 'splash' },
      move: { kind: 'tip_path', t_s: [0, 0.8], x_m: [1, 1], z_m: [0.5, 0.5] },
      hold_s: 0,
      numerics: { segments: 10, step_s: 0.00125 }
    });
    const { bait_x_m, bait_z_m, t_s } = result.trace;
    const radius = Math.hypot(bait_x_m[0] - 1, bait_z_m[0] - 0.5);
    const i = t_s.length - 2;
    expect(bait_z_m[i]).toBeGreaterThan(-4);
    expect(Math.hypot(bait_x_m[i] - 1, bait_z_m[i] - 0.5)).toBeCloseTo(radius, 2);
    const speed =
      Math.hypot(bait_x_m[i + 1] - bait_x_m[i - 1], bait_z_m[i + 1] - bait_z_m[i - 1]) /
      (t_s[i + 1] - t_s[i - 1]);
    const exact = Math.sqrt(2 * 0.91 * GRAVITY_M_S2 * (bait_z_m[0] - bait_z_m[i]));
    expect(Math.abs(speed / exact - 1)).toBeLessThan(0.01);
  });
});

describe('the reel', () => {
  const there = { kind: 'sweep' as const, from_deg: 0, to_deg: 60, duration_s: 3 };
  const back = { kind: 'sweep' as const, from_deg: 60, to_deg: 0, duration_s: 2 };

  test('recovers the slack that a sweep has made, and leaves the bait where it is', () => {
    const swept = simulate({ ...BASE, move: { kind: 'sequence', moves: [there, back] } });
    const reeled = simulate({
      ...BASE,
      move: {
        kind: 'sequence',
        moves: [there, back, { kind: 'reel', line_m: 0.85 * swept.travel_m, duration_s: 2 }]
      }
    });
    expect(Math.abs(reeled.travel_m - swept.travel_m)).toBeLessThan(0.03);
    const last = reeled.trace.tip_tension_N.at(-1) ?? 0;
    expect(last).toBeGreaterThan(1.5 * (swept.trace.tip_tension_N.at(-1) ?? 0));
  });

  test('moves the bait when there is no slack left: line taken in ÷ the cosine of its angle', () => {
    const reel = (line_m: number) =>
      simulate({
        ...BASE,
        start: { bait_x_m: 16, slack_m: 0.02 },
        move: {
          kind: 'sequence',
          moves: [
            { kind: 'lift', from_deg: 0, to_deg: 0.01, duration_s: 0.1 },
            { kind: 'reel', line_m, duration_s: 8 }
          ]
        }
      }).travel_m;
    // The line stands at about 20° by then; it is bowed, so the chord's angle is only about right.
    const cosine = Math.cos(Math.atan2(5.2, 12.6));
    expect(Math.abs((reel(2) - reel(1)) * cosine - 1)).toBeLessThan(0.03);
  });

  test('swims the bait up when it is wound fast', () => {
    const swim = simulate({
      ...BASE,
      move: {
        kind: 'sequence',
        moves: [
          { kind: 'lift', from_deg: 20, to_deg: 20.01, duration_s: 0.1 },
          { kind: 'reel', line_m: 8, duration_s: 8 }
        ]
      },
      hold_s: 0
    });
    expect(swim.peak_height_m).toBeGreaterThan(0.3);
  });

  test('is part of a recorded hand', () => {
    const samples = 300;
    const lineIn = Array.from({ length: samples }, (_, i) => (i / samples) * 1.5);
    const run = (line_in_m?: number[]) =>
      simulate({
        ...BASE,
        move: {
          kind: 'rod_input',
          rate_Hz: 100,
          elevation_deg: new Array<number>(samples).fill(5),
          azimuth_deg: 0,
          ...(line_in_m && { line_in_m })
        }
      }).travel_m;
    expect(run()).toBe(0);
    expect(run(lineIn)).toBeGreaterThan(1);
  });

  test('list of another length than the rod is refused', () => {
    const move = {
      kind: 'rod_input',
      rate_Hz: 100,
      elevation_deg: [0, 1, 2],
      azimuth_deg: 0,
      line_in_m: [0, 0]
    };
    expect(() => simulate({ ...BASE, move })).toThrow(/line_in_m must have one entry a sample/);
  });
});

describe('a leader', () => {
  test('a leader of the same stuff as the line changes nothing', () => {
    const stuff = { material: 'fluorocarbon' as const, diameter_m: 0.0003 };
    const move = { kind: 'lift' as const, from_deg: 0, to_deg: 50, duration_s: 0.6 };
    const plain = simulate({ ...BASE, line: stuff, move });
    const led = simulate({ ...BASE, line: { ...stuff, leader: { ...stuff, length_m: 2 } }, move });
    expect(led.travel_m).toBeCloseTo(plain.travel_m, 9);
    expect(led.peak_tip_tension_N).toBeCloseTo(plain.peak_tip_tension_N, 9);
  });

  test('a leader on braid lies between all braid and all leader', () => {
    const braid = { material: 'braid' as const, diameter_m: 0.00025 };
    const leader = { material: 'fluorocarbon' as const, diameter_m: 0.0003, length_m: 6 };
    const move = { kind: 'lift' as const, from_deg: 0, to_deg: 50, duration_s: 0.6 };
    const peak = (line: ScenarioInput['line']) =>
      simulate({ ...BASE, line, move }).peak_tip_tension_N;
    const both = peak({ ...braid, leader });
    expect(both).toBeLessThan(peak(braid));
    expect(both).toBeGreaterThan(peak({ material: 'fluorocarbon', diameter_m: 0.0003 }));
  });
});

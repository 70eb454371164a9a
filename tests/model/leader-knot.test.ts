import { describe, expect, test } from 'vitest';
import { GRAVITY_M_S2, simulate, waterAt, type ScenarioInput } from '../../src/lib/model';

const LEADER_M = 2;
const BRAID = { material: 'braid' as const, diameter_m: 0.0003 };
const LEADER = { material: 'fluorocarbon' as const, diameter_m: 0.00035, length_m: LEADER_M };

/** A weight that nothing moves, two kilos on rough ground, and a reel that draws slowly against it. */
const held = (line: ScenarioInput['line']): ScenarioInput => ({
  water: { depth_m: 3 },
  bottom: { friction: 2 },
  line,
  bait: { mass_kg: 1, drag_area_m2: 2e-3 },
  start: { bait_x_m: 12, slack_m: 0.02 },
  move: {
    kind: 'sequence',
    moves: [
      { kind: 'lift', from_deg: 10, to_deg: 10.01, duration_s: 0.1 },
      { kind: 'reel', line_m: 0.5, duration_s: 6 }
    ]
  },
  hold_s: 1
});

const parted = (line: ScenarioInput['line']) => {
  const result = simulate(held(line));
  const event = result.events.find(({ kind }) => kind === 'break');
  if (event?.kind !== 'break') throw new Error('nothing parted');
  return { result, event };
};

describe('a leader', () => {
  test('whose knot is the weakest parts there, at its share of the weaker of the two', () => {
    const { result, event } = parted({
      ...BRAID,
      breaking_load_N: 20,
      leader: { ...LEADER, breaking_load_N: 10, knot_strength: 0.6 }
    });
    expect(event.at).toBe('leader knot');
    // At rest the pull of a line grows by its weight times the height: T_tip = T_knot + ∫ w dz.
    const { tip_tension_N, tip_z_m } = result.trace;
    const before = Math.floor(event.t_s * 100);
    const area = (Math.PI / 4) * BRAID.diameter_m ** 2;
    const braid_kg_m3 = 970;
    const up_N =
      area * GRAVITY_M_S2 * braid_kg_m3 * tip_z_m[before] +
      area * GRAVITY_M_S2 * (braid_kg_m3 - waterAt(15).density_kg_m3) * 2.5;
    // What the reel adds in a tick, and the wave of the knot's own length, are less than 0.1 N.
    expect(Math.abs(tip_tension_N[before] - 0.6 * 10 - up_N)).toBeLessThan(0.1);
    // What is left of the line pulls nothing, at neither end.
    expect(result.trace.bait_tension_N.at(-1)).toBeLessThan(0.05);
    expect(tip_tension_N.at(-1)).toBeLessThan(0.1);
  });

  test('weaker than its line parts at the bait, as a line without a leader does', () => {
    const leader = { ...LEADER, breaking_load_N: 5 };
    const { result, event } = parted({ ...BRAID, breaking_load_N: 20, leader });
    expect(event.at).toBe('bait');
    // The leader is pulled most at its upper end; the line above it weighs a few hundredths of a newton.
    expect(Math.abs(result.peak_tip_tension_N - 5)).toBeLessThan(0.1);
  });

  test('stronger than its line leaves the line to part by itself', () => {
    const leader = { ...LEADER, breaking_load_N: 30 };
    const { result, event } = parted({ ...BRAID, breaking_load_N: 7, leader });
    expect(event.at).toBe('line');
    expect(Math.abs(result.peak_tip_tension_N - 7)).toBeLessThan(0.1);
  });

  test('that nothing is said to break never does', () => {
    const { events } = simulate(held({ ...BRAID, leader: LEADER }));
    expect(events.filter(({ kind }) => kind === 'break')).toEqual([]);
  });
});

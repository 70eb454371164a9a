import { describe, expect, test } from 'vitest';
import { bottomOf, GROUND, type Contact } from '../../src/lib/model/bottom';
import { parseSetup, simulate, type ScenarioInput } from '../../src/lib/model';

const RADIUS_M = 0.008;

function bottomWith(bottom: ScenarioInput['bottom']) {
  const setup = parseSetup({
    water: { depth_m: 3 },
    bottom,
    line: { diameter_m: 0.0003 },
    bait: { mass_kg: 0.02 },
    start: { bait_x_m: 15 }
  });
  return bottomOf(setup, RADIUS_M);
}

const SLOW_DRAG: ScenarioInput = {
  water: { depth_m: 3 },
  line: { diameter_m: 0.0003 },
  bait: { mass_kg: 0.02 },
  start: { bait_x_m: 15, slack_m: 0.05 },
  move: { kind: 'sweep', from_deg: 0, to_deg: 80, duration_s: 6 },
  hold_s: 2
};

describe('the bottom', () => {
  test('without stones or profile is level', () => {
    const bottom = bottomWith({});
    expect(bottom.isFlat).toBe(true);
    expect(bottom.heightAt(7)).toBe(-3);
  });

  test('carries stones: their tops and flanks are its surface', () => {
    const bottom = bottomWith({ stones: [{ x_m: 10, width_m: 0.4, height_m: 0.2 }] });
    expect(bottom.heightAt(9.79)).toBe(-3);
    expect(bottom.heightAt(10)).toBeCloseTo(-2.8, 12);
    expect(bottom.heightAt(10.19)).toBeGreaterThan(-3);
    expect(bottom.highest_m).toBeCloseTo(-2.8, 12);
  });

  test('lifts line over a stone that is away from the bait, and leads it beside one that is near', () => {
    const bottom = bottomWith({ stones: [{ x_m: 10, width_m: 0.4, height_m: 0.2 }] });
    const away = { x: 14, z: -3 };
    expect(bottom.bedAt(10, away)).toBeCloseTo(-2.8, 12);
    expect(bottom.bedAt(9.8, away)).toBeCloseTo(-2.8 - (0.2 - 0.056), 12);
    const against = { x: 10.21, z: -3 };
    expect(bottom.bedAt(10, against)).toBeCloseTo(-3 + 0.3 * 0.21, 12);
  });

  test('under the line is even enough for a slope: its mean and that mean’s own derivative', () => {
    const bottom = bottomWith({ stones: [{ x_m: 10, width_m: 0.4, height_m: 0.2 }] });
    const away = { x: 14, z: -3 };
    const by = 1e-6;
    for (const x of [9.7, 9.81, 9.93, 10, 10.1]) {
      const rise = bottom.evenedBedAt(x + by, away) - bottom.evenedBedAt(x - by, away);
      // Simpson's rule is not the mean itself where the surface has an edge: up to a third of the edge.
      expect(Math.abs(rise / (2 * by) - bottom.evenedSlopeAt(x, away))).toBeLessThan(0.34);
    }
  });

  test('follows a profile and goes on level beyond its ends', () => {
    const bottom = bottomWith({ profile: { x_m: [5, 10, 20], z_m: [-2, -3, -4] } });
    expect([0, 5, 7.5, 10, 15, 20, 40].map((x) => bottom.heightAt(x))).toEqual([
      -2, -2, -2.5, -3, -3.5, -4, -4
    ]);
  });

  const contactAt = (bottom: ReturnType<typeof bottomWith>, x: number, z: number) => {
    const out: Contact[] = [];
    bottom.contactsNear(x, z, out);
    return out.map((c) => ({ ...c }));
  };

  test('meets a bait on a slope square to the slope', () => {
    const bottom = bottomWith({ profile: { x_m: [0, 20], z_m: [-2, -4] } });
    const slope = Math.atan2(-2, 20);
    // Centre one radius off the plane: the lowest point is a little below that.
    const x = 10 - RADIUS_M * Math.sin(slope);
    const z = -3 + RADIUS_M * Math.cos(slope) - RADIUS_M;
    const [contact] = contactAt(bottom, x, z);
    expect(contact.gap_m).toBeCloseTo(0, 9);
    expect(contact.nx).toBeCloseTo(-Math.sin(slope), 9);
    expect(contact.nz).toBeCloseTo(Math.cos(slope), 9);
    expect(contact.stone).toBe(GROUND);
  });

  test('meets a bait on top of a stone from below, and beside it also from the side', () => {
    const bottom = bottomWith({ stones: [{ x_m: 10, width_m: 0.4, height_m: 0.2 }] });
    const onTop = contactAt(bottom, 10, -2.799);
    expect(onTop).toHaveLength(1);
    expect(onTop[0]).toMatchObject({ stone: 0 });
    expect(onTop[0].nz).toBeCloseTo(1, 6);
    expect(onTop[0].gap_m).toBeCloseTo(0.001, 6);
    const inCorner = contactAt(bottom, 10.206, -3);
    expect(inCorner.map((c) => c.stone).sort()).toEqual([GROUND, 0]);
    expect(inCorner.find((c) => c.stone === 0)?.nx).toBeGreaterThan(0.5);
  });

  test('is out of reach a hand above it', () => {
    const bottom = bottomWith({ stones: [{ x_m: 10, width_m: 0.4, height_m: 0.2 }] });
    expect(contactAt(bottom, 10, -2.7)).toEqual([]);
  });
});

describe('a bait dragged slowly', () => {
  test('over a stone touches it, climbs it and comes down on the other side', () => {
    const bottom = { stones: [{ x_m: 14.4, width_m: 0.3, height_m: 0.06 }] };
    const result = simulate({ ...SLOW_DRAG, bottom });
    const highest = Math.max(...result.trace.bait_z_m);
    expect(result.stones).toEqual([{ index: 0, touched: true }]);
    expect(highest + 3).toBeGreaterThan(0.055);
    expect(highest + 3).toBeLessThan(0.1);
    expect(result.travel_m).toBeGreaterThan(0.8);
    expect(result.trace.bait_z_m.at(-1)).toBeCloseTo(-3, 6);
  });

  test('past nothing touches nothing: the stone further off is left alone', () => {
    const bottom = { stones: [{ x_m: 9, width_m: 0.3, height_m: 0.06 }] };
    const result = simulate({ ...SLOW_DRAG, bottom });
    expect(result.stones).toEqual([{ index: 0, touched: false }]);
    expect(result.contact_fraction).toBe(1);
  });

  test('against a wall of rough stone stays before it, and the pull grows', () => {
    const start = { bait_x_m: 15, slack_m: 0.4 };
    const bottom = { friction: 1.5, stones: [{ x_m: 14.4, width_m: 0.3, height_m: 0.5 }] };
    const held = simulate({ ...SLOW_DRAG, start, bottom });
    const free = simulate({ ...SLOW_DRAG, start, bottom: { friction: 1.5 } });
    expect(held.trace.bait_x_m.at(-1)).toBeGreaterThan(14.4);
    expect(held.peak_tip_tension_N).toBeGreaterThan(3 * free.peak_tip_tension_N);
  });

  test('never goes into the ground, on a rough bottom of any shape', () => {
    const bottom = {
      profile: { x_m: [13, 13.6, 14, 14.3, 15.5], z_m: [-2.6, -2.9, -2.85, -3.1, -3] },
      stones: [
        { x_m: 14.6, width_m: 0.1, height_m: 0.05 },
        { x_m: 13.8, width_m: 0.2, height_m: 0.1 }
      ]
    };
    const result = simulate({ ...SLOW_DRAG, bottom });
    const ground = bottomWith(bottom);
    result.trace.bait_x_m.forEach((x, i) => {
      // The lowest point of a round bait may stand beside a flank that its side touches.
      expect(result.trace.bait_z_m[i]).toBeGreaterThan(ground.heightAt(x) - 2 * RADIUS_M);
    });
    expect(result.travel_m).toBeGreaterThan(0.5);
    expect(Number.isFinite(result.peak_tip_tension_N)).toBe(true);
  });
});

describe('a line at rest', () => {
  test('lies over a stone, not through it', () => {
    const result = simulate({
      ...SLOW_DRAG,
      bottom: { stones: [{ x_m: 12, width_m: 2, height_m: 0.6 }] },
      start: { bait_x_m: 15, slack_m: 0.4 },
      move: { kind: 'tip_path', t_s: [0, 3], x_m: [1.9, 1.9], z_m: [1.2, 1.2] }
    });
    expect(Math.abs(result.travel_m)).toBeLessThan(1e-3);
  });

  test('stays at rest: nothing creeps when the rod is held', () => {
    for (const slack_m of [0.02, 0.15, 0.5]) {
      const result = simulate({
        ...SLOW_DRAG,
        start: { bait_x_m: 20, slack_m },
        move: { kind: 'tip_path', t_s: [0, 3], x_m: [1.9, 1.9], z_m: [1.2, 1.2] }
      });
      const [first] = result.trace.tip_tension_N;
      expect(result.travel_m).toBe(0);
      // A line lying on the bottom may settle by the hundredth of a millimetre its bed gives.
      for (const pull of result.trace.tip_tension_N) {
        expect(Math.abs(pull - first)).toBeLessThan(1e-3 * first);
      }
    }
  });

  test('bends a rod that bends by its pull over the stiffness, and stays at rest', () => {
    const result = simulate({
      ...SLOW_DRAG,
      rod: { tip_stiffness_N_per_m: 4 },
      move: { kind: 'tip_path', t_s: [0, 2], x_m: [1.9, 1.9], z_m: [1.2, 1.2] }
    });
    const give = Math.hypot(result.trace.tip_x_m[0] - 1.9, result.trace.tip_z_m[0] - 1.2);
    // Beside the pull the tip carries the line's first node: half of a piece of 0.6 m in air.
    const node_N = 0.3 * 1780 * Math.PI * 0.000165 ** 2 * 9.81;
    const byPull = result.trace.tip_tension_N[0] / 4;
    expect(give).toBeGreaterThan(byPull);
    expect(give).toBeLessThan(byPull + node_N / 4);
    expect(result.trace.tip_x_m.at(-1)).toBeCloseTo(result.trace.tip_x_m[0], 5);
  });
});

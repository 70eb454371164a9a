import { describe, expect, test } from 'vitest';
import { Stems } from '../../src/lib/model/stems';
import {
  GROUND_KINDS,
  parseSetup,
  simulate,
  stemsOf,
  stonesOf,
  type Bite,
  type GroundKind,
  type ScenarioInput,
  type SetupInput
} from '../../src/lib/model';

const SETUP: SetupInput = {
  water: { depth_m: 4 },
  line: { diameter_m: 0.0003 },
  bait: { mass_kg: 0.0177 },
  start: { bait_x_m: 16, slack_m: 0.08 }
};
const DRAG = { kind: 'sweep' as const, from_deg: 0, to_deg: 70, duration_s: 4 };

const on = (kind: GroundKind, more: Partial<ScenarioInput> = {}) =>
  simulate({ ...SETUP, bottom: { ground: { kind, seed: 5 } }, move: DRAG, hold_s: 2, ...more });
const count = (result: ReturnType<typeof on>, kind: string) =>
  result.events.filter((event) => event.kind === kind).length;

describe('each kind of bottom', () => {
  test.each(GROUND_KINDS)(
    '%s lets a slow drag through, and the same seed lays the same',
    (kind) => {
      const result = on(kind);
      expect(result.travel_m).toBeGreaterThan(0.8);
      expect(on(kind)).toEqual(result);
    }
  );

  test('gravel ticks often, chunk rock knocks less often and higher, boulders seldom', () => {
    const highest = (kind: GroundKind) => Math.max(...on(kind).trace.bait_z_m) + 4;
    expect(count(on('gravel'), 'stone')).toBeGreaterThan(10);
    expect(count(on('chunk rock'), 'stone')).toBeLessThan(count(on('gravel'), 'stone'));
    expect(count(on('boulders'), 'stone')).toBeLessThan(count(on('chunk rock'), 'stone'));
    expect(highest('chunk rock')).toBeGreaterThan(3 * highest('gravel'));
  });

  test('a shell bed knocks more often than chunk rock, lower than it and higher than gravel', () => {
    const highest = (kind: GroundKind) => Math.max(...on(kind).trace.bait_z_m) + 4;
    expect(count(on('shell bed'), 'stone')).toBeGreaterThan(count(on('chunk rock'), 'stone'));
    expect(highest('shell bed')).toBeGreaterThan(highest('gravel'));
    expect(highest('chunk rock')).toBeGreaterThan(1.5 * highest('shell bed'));
  });

  test('mud sucks: the first pull is far above that which follows', () => {
    const peakAndMean = (kind: GroundKind) => {
      const { bait_tension_N, t_s } = on(kind, { move: { ...DRAG, duration_s: 12 } }).trace;
      const late = bait_tension_N.filter((_, i) => t_s[i] > 6 && t_s[i] < 9);
      return Math.max(...bait_tension_N) / (late.reduce((a, b) => a + b) / late.length);
    };
    expect(peakAndMean('mud')).toBeGreaterThan(1.5 * peakAndMean('sand'));
  });

  test('a stem behind the bait holds nothing until the bait has been beyond it', () => {
    const stem = { x_m: 16.2, height_m: 0.3, stiffness_N_per_m: 10, slip_N: 2 };
    const stems = new Stems([stem], 16);
    stems.follow(15.9, 0);
    expect(stems.loaded).toBe(0);
    stems.follow(16.3, 0);
    stems.follow(16.1, 0);
    expect(stems.loaded).toBe(1);
  });

  test('brush loads and slips a few times, grass many times and softly', () => {
    expect(count(on('brush'), 'stem slips')).toBeGreaterThanOrEqual(1);
    expect(count(on('grass'), 'stem slips')).toBeGreaterThan(3 * count(on('brush'), 'stem slips'));
    expect(on('grass').peak_tip_tension_N).toBeLessThan(on('brush').peak_tip_tension_N);
  });

  test('has its own friction unless the scenario names one', () => {
    const friction = (bottom: SetupInput['bottom']) =>
      parseSetup({ ...SETUP, bottom }).bottom.friction;
    expect(friction({})).toBe(0.4);
    expect(friction({ ground: { kind: 'mud' } })).toBe(0.2);
    expect(friction({ ground: { kind: 'mud' }, friction: 0.7 })).toBe(0.7);
  });

  test('lays other stones from another seed, none under the bait', () => {
    const laid = (seed: number) =>
      stonesOf(parseSetup({ ...SETUP, bottom: { ground: { kind: 'chunk rock', seed } } }));
    expect(laid(1)).not.toEqual(laid(2));
    for (let seed = 0; seed < 50; seed++) {
      for (const { x_m, width_m } of laid(seed)) {
        expect(Math.abs(x_m - 16)).toBeGreaterThan(width_m / 2);
      }
    }
  });

  test('has stems only where things grow', () => {
    for (const kind of GROUND_KINDS) {
      const stems = stemsOf(parseSetup({ ...SETUP, bottom: { ground: { kind } } }));
      expect(stems.length > 0).toBe(kind === 'brush' || kind === 'grass');
    }
  });
});

describe('a snag', () => {
  const rock = { stones: [{ x_m: 15.5, width_m: 0.3, height_m: 0.15 }], snags: true };
  const sweepTo = (to_deg: number, duration_s: number) => ({
    kind: 'sweep' as const,
    from_deg: 0,
    to_deg,
    duration_s
  });
  const snagged = (moves: ScenarioInput['move'], more: Partial<ScenarioInput> = {}) =>
    simulate({ ...SETUP, bottom: rock, move: moves, hold_s: 2, ...more });
  const kinds = (result: ReturnType<typeof snagged>) =>
    result.events.map((event) => ('by' in event ? `${event.kind} by ${event.by}` : event.kind));
  /** Hard enough to hook the rock, not hard enough to drive the hook home. */
  const hooks = sweepTo(60, 1.2);

  test('comes of a fast hand on a steep flank; a slow one climbs over', () => {
    expect(kinds(snagged(sweepTo(70, 1)))).toContain('snag');
    const slow = snagged(sweepTo(70, 6));
    expect(kinds(slow)).not.toContain('snag');
    expect(slow.stones[0].touched).toBe(true);
    expect(slow.travel_m).toBeGreaterThan(0.8);
  });

  test('holds the bait while the line is pulled', () => {
    const result = snagged(sweepTo(70, 1));
    expect(result.travel_m).toBeLessThan(0.5);
  });

  test('never happens where stones take no hooks', () => {
    const result = snagged(sweepTo(70, 1), { bottom: { ...rock, snags: false } });
    expect(kinds(result)).not.toContain('snag');
  });

  test('is freed by slack and shaking, if it was not driven home', () => {
    const back = { kind: 'sweep' as const, from_deg: 60, to_deg: 5, duration_s: 1 };
    const shake = [0, 1, 2, 3].flatMap(() => [
      { kind: 'pause' as const, duration_s: 0.6 },
      { kind: 'sweep' as const, from_deg: 5, to_deg: 50, duration_s: 0.5 },
      { kind: 'sweep' as const, from_deg: 50, to_deg: 5, duration_s: 0.5 }
    ]);
    const freed = snagged({ kind: 'sequence', moves: [hooks, back, ...shake] });
    expect(kinds(freed)).toContain('freed by shake');
    const pulled = snagged(sweepTo(85, 1));
    expect(kinds(pulled)).toContain('set deeper');
    expect(kinds(pulled)).not.toContain('freed by shake');
  });

  test('is freed by a pull from above, and does not hang again on the stone it left', () => {
    const up = { kind: 'lift' as const, from_deg: 0, to_deg: 75, duration_s: 4 };
    const back = { kind: 'sweep' as const, from_deg: 60, to_deg: 0, duration_s: 2 };
    const found = kinds(snagged({ kind: 'sequence', moves: [hooks, back, up] }));
    expect(found.filter((kind) => kind !== 'stone')).toEqual(['snag', 'freed by angle']);
  });

  test('parts the line when it is pulled beyond its strength, and the bait stays', () => {
    const line = { diameter_m: 0.0003, breaking_load_N: 12 };
    const result = snagged(sweepTo(85, 0.8), { line });
    expect(kinds(result)).toContain('break');
    expect(result.travel_m).toBeLessThan(0.5);
    expect(result.trace.bait_tension_N.at(-1)).toBe(0);
  });

  test.each([
    ['bait', { breaking_load_N: 12 }],
    [
      'leader knot',
      {
        breaking_load_N: 30,
        leader: { material: 'fluorocarbon', diameter_m: 0.0003, length_m: 1, knot_strength: 0.4 }
      }
    ]
  ] as const)('keeps its hook in the rock when the line parts at the %s', (at, strength) => {
    const result = snagged(sweepTo(85, 0.8), { line: { diameter_m: 0.0003, ...strength } });
    const broke = result.events.find(({ kind }) => kind === 'break');
    expect(broke).toMatchObject({ at });
    const { t_s, bait_x_m, bait_z_m } = result.trace;
    const after = t_s.findIndex((t) => t >= (broke?.t_s ?? NaN));
    // Not to the last bit: the bait is put back on its stone by rounding.
    expect(Math.abs(bait_x_m[bait_x_m.length - 1] - bait_x_m[after])).toBeLessThan(1e-9);
    expect(Math.abs(bait_z_m[bait_z_m.length - 1] - bait_z_m[after])).toBeLessThan(1e-9);
  });
});

describe('a bite', () => {
  const held = { kind: 'tip_path' as const, t_s: [0, 1], x_m: [1.9, 1.9], z_m: [1.2, 1.2] };
  const pullsWith = (...bites: Bite[]) =>
    simulate({ ...SETUP, start: { bait_x_m: 16, slack_m: 0.02 }, bites, move: held, hold_s: 6 });
  const calm = Math.max(...pullsWith().trace.tip_tension_N);

  test.each(['tap', 'mush', 'moving off'] as const)('that is a %s is felt as a pull', (kind) => {
    const { tip_tension_N } = pullsWith({ t_s: 2, kind }).trace;
    expect(Math.max(...tip_tension_N)).toBeGreaterThan(1.5 * calm);
    expect(Math.max(...tip_tension_N.slice(0, 200))).toBeLessThan(1.01 * calm);
  });

  test('that takes the weight away is felt as less', () => {
    const { tip_tension_N } = pullsWith({ t_s: 2, kind: 'weight gone' }).trace;
    expect(Math.min(...tip_tension_N.slice(200))).toBeLessThan(0.7 * calm);
  });

  test('is noted when it comes', () => {
    expect(pullsWith({ t_s: 2, kind: 'tap' }).events).toEqual([
      { t_s: expect.closeTo(2, 1) as number, kind: 'bite', bite: 'tap' }
    ]);
  });
});

import {
  GROUND_KINDS,
  seededRandom,
  type Move,
  type Random,
  type ScenarioInput
} from '../../src/lib/model';

type Between = (low: number, high: number) => number;

/** The `n`-th of a seeded row of valid scenarios, over all that a scenario can say. */
export function anyScenario(n: number): ScenarioInput {
  const random = seededRandom(20_000 + n);
  const between: Between = (low, high) => low + (high - low) * random();
  const chance = (share: number) => random() < share;
  const pick = <T>(from: readonly T[]) => from[Math.floor(random() * from.length)];
  const depth_m = between(0.8, 14);
  const bait_x_m = between(6, 35);
  const material = pick(['fluorocarbon', 'nylon', 'braid'] as const);
  const line = { material, diameter_m: between(0.0002, 0.0004) };
  const isFall = chance(0.15);
  return {
    water: { depth_m, temperature_C: between(2, 30) },
    bottom: bottomOf(pick(['flat', 'kind', 'slope', 'stones'] as const), depth_m, bait_x_m, {
      between,
      random
    }),
    ...(chance(0.25) && { wind_m_s: between(-9, 9) }),
    ...(chance(0.2) && { drift_m_s: between(-0.5, 0.5) }),
    ...(chance(0.15) && {
      bites: [{ t_s: between(0.5, 3), kind: pick(['tap', 'mush', 'weight gone', 'moving off']) }]
    }),
    line: {
      ...line,
      ...(chance(0.3) && {
        leader: {
          material: 'fluorocarbon' as const,
          diameter_m: between(0.0002, 0.0004),
          length_m: between(0.3, 5)
        }
      }),
      ...(chance(0.3) && { breaking_load_N: between(20, 90) })
    },
    bait: {
      mass_kg: between(0.004, 0.04),
      drag_area_m2: between(2e-4, 15e-4),
      ...(chance(0.3) && { lift_to_drag: between(0, 0.5) })
    },
    rod: {
      length_m: between(1.5, 2.4),
      pivot_height_m: between(0.5, 2),
      ...(chance(0.3) && { tip_stiffness_N_per_m: between(4, 60) })
    },
    start: isFall
      ? { bait_x_m, line: 'splash', spool: pick(['free', 'closed'] as const), slack_m: 0.1 }
      : { bait_x_m, slack_m: between(0, 0.6) },
    move: moveOf(pick(['lift', 'sweep', 'hops', 'reel', 'path'] as const), between),
    hold_s: isFall ? 10 : between(1, 5)
  } as ScenarioInput;
}

function bottomOf(
  kind: 'flat' | 'kind' | 'slope' | 'stones',
  depth_m: number,
  bait_x_m: number,
  { between, random }: { between: Between; random: Random }
): ScenarioInput['bottom'] {
  if (kind === 'flat') return { friction: between(0.1, 0.8) };
  if (kind === 'kind') {
    const ground = GROUND_KINDS[Math.floor(random() * GROUND_KINDS.length)];
    return {
      ground: { kind: ground, seed: Math.floor(between(0, 1000)) },
      snags: random() < 0.4
    };
  }
  if (kind === 'slope') {
    const fall = Math.tan((between(-9, 9) * Math.PI) / 180);
    const at = (x: number) => Math.min(-0.5, -depth_m + fall * (x - bait_x_m));
    return { profile: { x_m: [0, bait_x_m, 50], z_m: [at(0), at(bait_x_m), at(50)] } };
  }
  const stones = [0.5, 1.4, 2.7].map((by) => ({
    x_m: bait_x_m - by + between(-0.1, 0.1),
    width_m: between(0.1, 0.6),
    height_m: between(0.03, 0.4)
  }));
  return { stones, snags: random() < 0.4 };
}

function moveOf(kind: 'lift' | 'sweep' | 'hops' | 'reel' | 'path', between: Between): Move {
  const duration_s = between(0.2, 3);
  const from_deg = between(0, 30);
  const to_deg = from_deg + between(10, 60);
  const lift = { kind: 'lift' as const, from_deg, to_deg, duration_s };
  const pause = { kind: 'pause' as const, duration_s: between(0.3, 2) };
  switch (kind) {
    case 'lift':
      return lift;
    case 'sweep':
      return { kind: 'sweep', from_deg, to_deg, duration_s, elevation_deg: between(0, 20) };
    case 'hops': {
      const middle = (from_deg + to_deg) / 2;
      const up = { ...lift, to_deg: middle };
      return { kind: 'sequence', moves: [up, pause, { ...lift, from_deg: middle }] };
    }
    case 'reel': {
      const reel = { kind: 'reel' as const, line_m: between(0.3, 6), duration_s: between(1, 6) };
      return { kind: 'sequence', moves: [lift, reel, pause] };
    }
    case 'path': {
      const t_s = [0, duration_s / 3, duration_s];
      const places = t_s.map(() => ({ x: between(0.2, 1.8), z: between(0.8, 3) }));
      return {
        kind: 'tip_path',
        t_s,
        x_m: places.map(({ x }) => x),
        z_m: places.map(({ z }) => z)
      };
    }
  }
}

import { parseScenario, seededRandom, simulateScenario, type Scenario } from '../../src/lib/model';
import { simulateExplicitly } from './explicit-peer';

const LINES = [
  { material: 'fluorocarbon', diameter_m: 0.00033 },
  { material: 'nylon', diameter_m: 0.00037 },
  { material: 'braid', diameter_m: 0.00025 },
  { material: 'fluorocarbon', diameter_m: 0.00028 }
] as const;

/** The `n`-th of a seeded row of casts over level ground: what the explicit scheme knows of the world. */
export function peerCase(n: number): Scenario {
  const random = seededRandom(5000 + n);
  const between = (low: number, high: number) => low + (high - low) * random();
  const isLift = random() < 0.5;
  const duration_s = between(0.3, 2.5);
  const to_deg = between(20, 75);
  return parseScenario({
    water: { depth_m: between(2, 9), temperature_C: between(4, 28) },
    bottom: { friction: between(0.2, 0.6) },
    line: LINES[n % LINES.length],
    bait: { mass_kg: between(0.007, 0.028), drag_area_m2: between(3e-4, 12e-4) },
    start: { bait_x_m: between(12, 28), slack_m: between(0.03, 0.4) },
    move: isLift
      ? { kind: 'lift', from_deg: 0, to_deg, duration_s }
      : { kind: 'sweep', from_deg: 0, to_deg, duration_s, elevation_deg: 5 },
    hold_s: 2.5
  });
}

/** How far the model is from the explicit scheme: m, m, and shares of the scheme's own. */
export interface PeerDifference {
  travel_m: number;
  travel: number;
  height_m: number;
  pull: number;
}

export function peerDifferenceOf(scenario: Scenario): PeerDifference {
  const ours = simulateScenario(scenario);
  const peer = simulateExplicitly(scenario);
  const travel_m = Math.abs(ours.travel_m - peer.travel_m);
  return {
    travel_m,
    travel: travel_m / Math.max(Math.abs(peer.travel_m), 1e-9),
    height_m: Math.abs(ours.peak_height_m - peer.peak_height_m),
    pull: Math.abs(ours.peak_tip_tension_N / peer.peak_tip_tension_N - 1)
  };
}

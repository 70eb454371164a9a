import { describe, expect, test } from 'vitest';
import { parseScenario, simulateScenario, type ScenarioInput } from '../../src/lib/model';
import { simulateExplicitly } from './explicit-peer';

const BASE: ScenarioInput = {
  water: { depth_m: 4 },
  line: { material: 'fluorocarbon', diameter_m: 0.00033 },
  bait: { mass_kg: 0.021, submerged_weight_fraction: 0.912 },
  start: { bait_x_m: 24, slack_m: 0.15 },
  move: { kind: 'lift', from_deg: 0, to_deg: 30, duration_s: 0.35 },
  hold_s: 2.5,
  numerics: { segments: 24 }
};

const CASES: [string, Partial<ScenarioInput>][] = [
  ['an hour of lift', {}],
  [
    'a high lift of a light bait',
    {
      bait: { mass_kg: 0.01 },
      move: { kind: 'lift', from_deg: 0, to_deg: 60, duration_s: 0.45 }
    }
  ],
  [
    'a fast sweep on a short line',
    {
      start: { bait_x_m: 14, slack_m: 0.05 },
      move: { kind: 'sweep', from_deg: 0, to_deg: 70, duration_s: 0.5, elevation_deg: 5 }
    }
  ],
  [
    'a snap in deep water',
    {
      water: { depth_m: 9 },
      start: { bait_x_m: 15, slack_m: 0.1 },
      move: { kind: 'lift', from_deg: 15, to_deg: 75, duration_s: 0.4 }
    }
  ],
  [
    'a sweep with nylon and a constant drag coefficient',
    {
      line: { material: 'nylon', diameter_m: 0.0004, normal_drag: 1.2, tangential_drag: 0.02 },
      move: { kind: 'sweep', from_deg: 0, to_deg: 90, duration_s: 1.2 }
    }
  ]
];

/**
 * Targets of the design for a comparison with an independent solver: travel 2 %, hop height 5 % or
 * 3 mm, peak tip tension 3 %.
 */
describe('an independent explicit scheme comes to the same', () => {
  test.each(CASES)('%s', (_name, change) => {
    const scenario = parseScenario({ ...BASE, ...change });
    const ours = simulateScenario(scenario);
    const peer = simulateExplicitly(scenario);
    console.log(
      `${_name}: travel ${ours.travel_m.toFixed(4)} / ${peer.travel_m.toFixed(4)} m, height ` +
        `${ours.peak_height_m.toFixed(4)} / ${peer.peak_height_m.toFixed(4)} m, tension ` +
        `${ours.peak_tip_tension_N.toFixed(3)} / ${peer.peak_tip_tension_N.toFixed(3)} N`
    );
    expect(Math.abs(ours.travel_m - peer.travel_m)).toBeLessThan(0.02 * peer.travel_m);
    expect(Math.abs(ours.peak_height_m - peer.peak_height_m)).toBeLessThan(
      Math.max(0.003, 0.05 * peer.peak_height_m)
    );
    expect(Math.abs(ours.peak_tip_tension_N / peer.peak_tip_tension_N - 1)).toBeLessThan(0.03);
  });
});

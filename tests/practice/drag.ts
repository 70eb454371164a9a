import type { RodInput } from '../../src/lib/model';
import type { Challenge } from '../../src/lib/scoring';

/** A challenge of our own on a small water that is quick to compute. */
export const drag: Challenge = {
  id: 'reed-bay-drag',
  title: 'Reed Bay drag',
  ask: 'Drag it {length:0.3048}.',
  setup: {
    water: { depth_m: 3.1 },
    line: { diameter_m: 0.3e-3 },
    bait: { mass_kg: 0.016 },
    rod: { length_m: 1.7, pivot_height_m: 1.25 },
    start: { bait_x_m: 14.2, slack_m: 0.02 }
  },
  plane: 'sweep',
  start: { elevation_deg: 0, azimuth_deg: 60 },
  hold_s: 2,
  goals: [
    { kind: 'travel', target_m: 0.3048, band_m: 0.06, weight: 60 },
    { kind: 'speed', most_m_s: 0.4, weight: 40 }
  ],
  visibility: 'seen',
  reference: { kind: 'sweep', from_deg: 60, to_deg: 71, duration_s: 3, elevation_deg: 0 },
  beginner: { kind: 'sweep', from_deg: 60, to_deg: 90, duration_s: 0.7, elevation_deg: 0 }
};

/** A hand that sweeps from 60° by `turn_deg` in `duration_s`, with a tremble so that nothing is round. */
export function aSweep(turn_deg: number, duration_s = 3): RodInput {
  const samples = Math.round(duration_s * 100) + 1;
  const azimuth_deg = Array.from({ length: samples }, (_, i) => {
    const u = i / (samples - 1);
    return 60 + turn_deg * u * u * (3 - 2 * u) + 0.0137 * Math.sin(i / 9);
  });
  return { kind: 'rod_input', rate_Hz: 100, elevation_deg: 0, azimuth_deg };
}

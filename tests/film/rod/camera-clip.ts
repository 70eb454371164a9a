import type { RodRecording, RodView, SweepPose } from '$lib/film';
import { seededRandom } from '$lib/model';
import { normal } from '../pool-film';

const RAD = Math.PI / 180;
const MARKS_DEG = [0, 30, 60, 90, 60, 30, 0];

export interface Seen {
  readonly t_s: number[];
  readonly u_px: number[];
}

export interface Slips {
  /** Of the camera's place, the tip over a mark, a reading, and the hand's own trembling. */
  readonly bearing_deg?: number;
  readonly pose_deg?: number;
  readonly reading_px?: number;
  readonly tremor_deg?: number;
}

/** A camera 5 m off at about 45°, 640 px wide, and a hand that brings the tip to a mark to a degree. */
export function sweepClip(seed: number, slips: Slips = {}) {
  const { bearing_deg = 4, pose_deg = 1, reading_px = 0.3, tremor_deg = 0.1 } = slips;
  const random = seededRandom(seed);
  const bearing = 45 + bearing_deg * normal(random);
  const rho = (5 + 0.4 * normal(random)) / 2;
  const middle = 320 + 20 * normal(random);
  const place = (deg: number) => {
    const a = (deg - bearing) * RAD;
    return middle + (480 * Math.sin(a)) / (rho - Math.cos(a)) + reading_px * normal(random);
  };
  const rate_Hz = random() < 0.5 ? 30 : 60;
  return {
    /** Once over the marks, out and back. */
    pass: () =>
      MARKS_DEG.map((deg): SweepPose => {
        return { azimuth_deg: deg, u_px: place(deg + pose_deg * normal(random)) };
      }),
    /** What is seen of a sweep, from half a second before it to a second after. */
    film: (to_deg: number, seconds: number): Seen => {
      const count = Math.round((seconds + 1.5) * rate_Hz);
      const t_s = Array.from({ length: count }, (_, i) => i / rate_Hz);
      const u_px = t_s.map((t) => {
        const tremor = tremor_deg * Math.sin(2 * Math.PI * (8 * t + seed));
        return place(to_deg * minimumJerk((t - 0.5) / seconds) + tremor);
      });
      return { t_s, u_px };
    }
  };
}

export function minimumJerk(share: number): number {
  const u = Math.min(Math.max(share, 0), 1);
  return u * u * u * (10 + u * (6 * u - 15));
}

export function anglesOf(view: RodView, { t_s, u_px }: Seen): RodRecording {
  return { t_s, angle_deg: u_px.map((u) => view.angleAt(u) ?? NaN) };
}

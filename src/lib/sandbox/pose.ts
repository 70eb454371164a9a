/** Where rod, line and bait are at one moment: all that the pictures move by. Frame as in the model. */
export interface Pose {
  t_s: number;
  elevation_deg: number;
  azimuth_deg: number;
  /** Nodes of the line from tip to bait, m. */
  readonly x: Float64Array;
  readonly z: Float64Array;
  tipTension_N: number;
  /** Line that has run off a free spool, m; 0 in a film, which does not keep it. */
  given_m: number;
}

export function newPose(nodes: number): Pose {
  return {
    t_s: 0,
    elevation_deg: 0,
    azimuth_deg: 0,
    x: new Float64Array(nodes),
    z: new Float64Array(nodes),
    tipTension_N: 0,
    given_m: 0
  };
}

export function copyPose(from: Pose, to: Pose): void {
  to.t_s = from.t_s;
  to.elevation_deg = from.elevation_deg;
  to.azimuth_deg = from.azimuth_deg;
  to.x.set(from.x);
  to.z.set(from.z);
  to.tipTension_N = from.tipTension_N;
  to.given_m = from.given_m;
}

/**
 * The moment that lies `share` (0–1) of the way from `a` to `b`, written to `out`: pictures fall
 * between two ticks of the model, and interpolation keeps them from stuttering.
 */
export function blendPoses(a: Pose, b: Pose, share: number, out: Pose): void {
  const mix = (from: number, to: number) => from + share * (to - from);
  out.t_s = mix(a.t_s, b.t_s);
  out.elevation_deg = mix(a.elevation_deg, b.elevation_deg);
  out.azimuth_deg = mix(a.azimuth_deg, b.azimuth_deg);
  out.tipTension_N = mix(a.tipTension_N, b.tipTension_N);
  out.given_m = mix(a.given_m, b.given_m);
  for (let i = 0; i < out.x.length; i++) {
    out.x[i] = mix(a.x[i], b.x[i]);
    out.z[i] = mix(a.z[i], b.z[i]);
  }
}

import * as v from 'valibot';
import { list, number } from './schema-parts';

/** Longest single move, s: a dead-stick or a slow swim fits; a typing error does not. */
const MAX_MOVE_S = 600;
const angle = number(-360, 360);
const duration = number(0.01, MAX_MOVE_S);

/** Turns the rod in the plane of rod and bait: 0° level and pointing at the bait, 90° upright. */
const lift = v.strictObject({
  kind: v.literal('lift'),
  from_deg: angle,
  to_deg: angle,
  duration_s: duration
});

/** Turns a low rod sideways: angles are the tip's azimuth from the bait's direction. */
const sweep = v.strictObject({
  kind: v.literal('sweep'),
  from_deg: angle,
  to_deg: angle,
  duration_s: duration,
  elevation_deg: v.optional(number(-90, 90), 0)
});

/** The tip's own path in the plane, through the given points, without overshoot. */
const tipPath = v.pipe(
  v.strictObject({
    kind: v.literal('tip_path'),
    t_s: v.pipe(list(0, MAX_MOVE_S), v.minLength(2)),
    x_m: list(-100, 100),
    z_m: list(-100, 100)
  }),
  v.check(
    (m) => m.t_s.length === m.x_m.length && m.t_s.length === m.z_m.length,
    't_s, x_m and z_m must have the same length'
  ),
  v.check((m) => m.t_s[0] === 0, 't_s must start at 0'),
  v.check((m) => m.t_s.every((t, i) => i === 0 || t > m.t_s[i - 1]), 't_s must increase')
);

/**
 * A hand's move as it was recorded: the rod's elevation and azimuth, sampled `rate_Hz` times a second.
 * A single number stands for an angle that was held.
 */
const rodInput = v.pipe(
  v.strictObject({
    kind: v.literal('rod_input'),
    rate_Hz: v.literal(100),
    elevation_deg: v.union([angle, v.pipe(list(-360, 360), v.minLength(2))]),
    azimuth_deg: v.union([angle, v.pipe(list(-360, 360), v.minLength(2))]),
    /** Line taken in by the reel since the start, m; negative is line given. */
    line_in_m: v.optional(v.pipe(list(-60, 60), v.minLength(2)))
  }),
  v.check(
    (m) => Array.isArray(m.elevation_deg) || Array.isArray(m.azimuth_deg),
    'elevation_deg or azimuth_deg must be a list'
  ),
  v.check(
    (m) =>
      !Array.isArray(m.elevation_deg) ||
      !Array.isArray(m.azimuth_deg) ||
      m.elevation_deg.length === m.azimuth_deg.length,
    'elevation_deg and azimuth_deg must have the same length'
  ),
  v.check(
    (m) => m.line_in_m === undefined || m.line_in_m.length === samplesOf(m),
    'line_in_m must have one entry a sample'
  )
);

function samplesOf(m: {
  elevation_deg: number | number[];
  azimuth_deg: number | number[];
}): number {
  return Array.isArray(m.elevation_deg)
    ? m.elevation_deg.length
    : Array.isArray(m.azimuth_deg)
      ? m.azimuth_deg.length
      : 1;
}

/** The reel takes in `line_m` (negative: gives it) at an even pace; the rod is held. */
const reel = v.strictObject({
  kind: v.literal('reel'),
  line_m: number(-60, 60),
  duration_s: duration
});

const pause = v.strictObject({ kind: v.literal('pause'), duration_s: duration });

/** Moves and pauses one after the other; each begins where the one before it ended. */
const sequence = v.strictObject({
  kind: v.literal('sequence'),
  moves: v.pipe(
    v.array(v.variant('kind', [lift, sweep, tipPath, reel, pause])),
    v.minLength(1),
    v.maxLength(200)
  )
});

export const baseMove = v.variant('kind', [lift, sweep, tipPath, rodInput, sequence]);

export type Move = v.InferOutput<typeof baseMove>;
export type RodInput = v.InferOutput<typeof rodInput>;
export type SequenceStep = v.InferOutput<typeof sequence>['moves'][number];

/** Samples a second of a hand's recorded move: one a tick of the model (see TICK_S). */
export const ROD_RATE_HZ = 100;

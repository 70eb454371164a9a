import * as v from 'valibot';
import { list, numberIn, samples } from './schema-parts';

/** Longest single move, s: a dead-stick or a slow swim fits; a typing error does not. */
const MAX_MOVE_S = 600;
const angle = numberIn(-360, 360);
const duration = numberIn(0.01, MAX_MOVE_S);

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
  elevation_deg: v.optional(numberIn(-90, 90), 0)
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

/** Most samples of a hand's recorded move: two minutes, the longest try there is, and a little. */
export const MOST_SAMPLES = 12_100;
const angles = v.union([angle, samples(-360, 360, MOST_SAMPLES)]);

/**
 * A hand's move as it was recorded: the rod's elevation and azimuth, sampled `rate_Hz` times a second.
 * A single number stands for an angle that was held; one of the two must be a list.
 */
export const rodInputSchema = v.pipe(
  v.strictObject({
    kind: v.literal('rod_input'),
    rate_Hz: v.literal(100),
    elevation_deg: angles,
    azimuth_deg: angles,
    /** Line taken in by the reel since the start, m; negative is line given. */
    line_in_m: v.optional(samples(-60, 60, MOST_SAMPLES)),
    /** Made with a rod before a camera; without it, on a screen or with a phone. The physics is the same. */
    rod: v.optional(v.literal('real'))
  }),
  v.check((m) => samplesOf(m) > 0, 'elevation_deg or azimuth_deg must be a list'),
  v.check(
    ({ elevation_deg, azimuth_deg }) =>
      [elevation_deg, azimuth_deg].every(
        (one, _, [first]) =>
          !Array.isArray(one) || !Array.isArray(first) || one.length === first.length
      ),
    'elevation_deg and azimuth_deg must have the same length'
  ),
  v.check(
    (m) => m.line_in_m === undefined || m.line_in_m.length === samplesOf(m),
    'line_in_m must have one entry a sample'
  )
);

type HeldOrMoved = { elevation_deg: number | number[]; azimuth_deg: number | number[] };

/** Of the angle that is a list; 0 where both were held. */
function samplesOf({ elevation_deg, azimuth_deg }: HeldOrMoved): number {
  return [elevation_deg, azimuth_deg].find(Array.isArray)?.length ?? 0;
}

/** The reel takes in `line_m` (negative: gives it) at an even pace; the rod is held. */
const reel = v.strictObject({
  kind: v.literal('reel'),
  line_m: numberIn(-60, 60),
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

export const baseMove = v.variant('kind', [lift, sweep, tipPath, rodInputSchema, sequence]);

export type Move = v.InferOutput<typeof baseMove>;
export type RodInput = v.InferOutput<typeof rodInputSchema>;
export type SequenceStep = v.InferOutput<typeof sequence>['moves'][number];

/** Samples a second of a hand's recorded move: one a tick of the model (see TICK_S). */
export const ROD_RATE_HZ = 100;
/** Rod input is taken, the trace is written and the step length is chosen once a tick, s. */
export const TICK_S = 1 / ROD_RATE_HZ;

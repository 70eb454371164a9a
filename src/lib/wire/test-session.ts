import * as v from 'valibot';
import { baseMove, parseSetup, ScenarioError, type SetupInput } from '../model';
import { DataError } from '../scoring';
import { timedDrop } from './outfit';
import { between, day, id, line, readBy, shortName, time, words } from './fields';

/** Most tests of one session: an afternoon at the pool is a dozen. */
export const MOST_TESTS = 200;
/** Most points of one track: four minutes at 60 frames a second. */
const MOST_POINTS = 15_000;

const finite = v.pipe(v.number(), v.finite());
const deviation = v.pipe(finite, v.minValue(1e-4, 'must be more than 0'));
const record = v.record(v.string(), v.unknown());
/** One move with what was measured of it; what the fit reads. A test without a measurement is only predicted. */
export const measuredTestEntries = {
  move: baseMove,
  /** What lay otherwise than the gear says, in this test alone. */
  start: v.optional(record),
  /** Of the water, where it was another than the gear's. */
  depth_m: v.optional(between(0.1, 80)),
  /** Towards the angler, from the start of the move to rest, m. */
  travel_m: v.optional(between(-100, 100)),
  travel_sd_m: v.optional(deviation),
  /** Above the bottom below the bait, m. */
  peak_height_m: v.optional(between(-100, 100)),
  height_sd_m: v.optional(deviation)
};

/** Unknowns that were measured or looked at: they are not fitted. */
export const known = v.strictObject({
  reach_m: v.optional(between(0.1, 6)),
  elevation_deg: v.optional(between(-90, 90)),
  slack_m: v.optional(between(0, 10)),
  drag_area_m2: v.optional(between(1e-6, 0.1)),
  lift_to_drag: v.optional(between(0, 1))
});

const point_px = v.tuple([finite, finite]);
const points = v.pipe(v.array(finite), v.maxLength(MOST_POINTS));
const track = v.pipe(
  v.strictObject({ t_s: points, x_px: points, y_px: points }),
  v.check(
    ({ t_s, x_px, y_px }) => t_s.length === x_px.length && t_s.length === y_px.length,
    't_s, x_px and y_px must have the same length'
  )
);

/** What was clicked and followed on a clip; the clip itself stays where it is. */
export const filmed = v.strictObject({
  /** Two points with one length between them, or the corners of a rectangle with its two sides. */
  scale: v.strictObject({
    points_px: v.pipe(v.array(point_px), v.minLength(2), v.maxLength(4)),
    lengths_m: v.pipe(v.array(between(0.001, 100)), v.minLength(1), v.maxLength(2))
  }),
  bait: v.optional(track),
  bottom: v.optional(track),
  tip: v.optional(track),
  /** One deviation of each: of a click, of the tracking, of the lens and of lying off the plane. */
  errors: v.strictObject({
    click_px: between(0, 100),
    track_px: between(0, 100),
    lens_share: between(0, 1),
    plane_share: v.optional(between(0, 1), 0)
  })
});

/** A test as a session keeps it. */
const storedTest = v.strictObject({
  ...measuredTestEntries,
  note: v.optional(line(200, 0), ''),
  filmed: v.optional(filmed)
});

/** A set-up as it was typed or made, known to be one that the model takes. */
const setup = readBy((input): SetupInput => {
  try {
    parseSetup(input);
    return input as SetupInput;
  } catch (error) {
    if (!(error instanceof ScenarioError)) throw error;
    throw new DataError(error.path, error.value, error.reason);
  }
});

/** Most depths that a jig was timed in. */
const MOST_DROPS = 50;

/**
 * Drops of a jig: what they tell of the drag area the tests go on from. A session was once written with
 * one, `drop`, and is still read.
 */
export const dropEntries = {
  drop: v.optional(timedDrop),
  drops: v.optional(v.pipe(v.array(timedDrop), v.maxLength(MOST_DROPS)), [])
};
interface Dropped {
  drop?: v.InferOutput<typeof timedDrop> | undefined;
  drops: v.InferOutput<typeof timedDrop>[];
}

/** All of them in one list. */
export function inOneList<S extends Dropped>({ drop, drops, ...rest }: S) {
  return { ...rest, drops: drop ? [drop, ...drops] : drops };
}

const entries = {
  id,
  name: line(80),
  /** When it was last changed: of two the later stands. */
  at: time,
  on: day,
  by: v.optional(line(60, 0), ''),
  notes: v.optional(words(2000), ''),
  /** The record's outfit it was done with, if it is one of them. */
  outfit: v.optional(shortName),
  /** Gear, water and start: a scenario without its move, at the values that are thought true. */
  gear: setup,
  tests: v.pipe(v.array(storedTest), v.maxLength(MOST_TESTS)),
  known: v.optional(known, {}),
  ...dropEntries,
  /** Made of what the field log measured, after the tests of another session if there were any. */
  from_log: v.optional(v.strictObject({ after: v.optional(shortName) })),
  /** Made up to show how it goes. */
  invented: v.optional(v.boolean(), false)
};

/** What was tried with one outfit, in one water on one day or from the log. docs/session-format.md. */
export const testSession = v.pipe(
  v.strictObject(entries),
  v.transform((read) => inOneList(read))
);

/** Somebody's session in a club's table, with the jig it is of by the club's name for it. */
export const clubSession = v.strictObject({ session: testSession, jig: line(60) });

export type ClubSession = v.InferOutput<typeof clubSession>;
export type TestSession = v.InferOutput<typeof testSession>;
export type StoredTest = v.InferOutput<typeof storedTest>;
export type Filmed = v.InferOutput<typeof filmed>;

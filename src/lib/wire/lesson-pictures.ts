import * as v from 'valibot';

/** A path of SVG in whole and tenths of the drawing's units. */
const path = v.pipe(v.string(), v.regex(/^[MLVHZ\d. -]*$/));

/** What a lesson is about, as its first challenge's own move does it: paths for an SVG. */
const thumb = v.strictObject({
  ground: path,
  /** The bait's way: solid on the bottom, dotted above it. */
  dragged: path,
  flown: path,
  bait: v.strictObject({ x: v.number(), y: v.number(), isTouching: v.boolean() })
});
export type Thumb = v.InferOutput<typeof thumb>;

/** By the challenge's id. */
export const lessonPictures = v.record(v.string(), thumb);
export type LessonPictures = v.InferOutput<typeof lessonPictures>;

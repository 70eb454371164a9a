/** The drawing's size in its own units. */
export const THUMB = { width: 120, height: 72 } as const;
/** What a lesson is about, as its first challenge's own move does it: paths for an SVG. */
export interface Thumb {
  readonly ground: string;
  /** The bait's way: solid on the bottom, dotted above it. */
  readonly dragged: string;
  readonly flown: string;
  readonly bait: { readonly x: number; readonly y: number; readonly isTouching: boolean };
}

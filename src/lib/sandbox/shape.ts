import type { Setup } from '$lib/model';

/** How the ground lies between bait and boat. "given" is a profile that is none of ours. */
export const SHAPES = ['flat', 'ledge', 'slope'] as const;
export type Shape = (typeof SHAPES)[number] | 'given';

/** The ledge: how far before the bait its edge is, its height, and how steep it falls, m. */
const EDGE_M = 0.6;
const LEDGE_M = 0.5;
const FACE_M = 0.15;
/** The slope: how far it goes down towards the boat, and how much of that it falls, m. */
const SLOPE_M = 8;
const SLOPE_FALLS_M = 1.4;

/** Bait and depth that a profile is laid out for, m. */
interface Site {
  readonly depth_m: number;
  readonly cast_m: number;
}

/** The bottom's profile with its deepest at `depth_m`, falling towards the boat; flat has none. */
export function profileOf(shape: Exclude<Shape, 'given'>, site: Site): Setup['bottom']['profile'] {
  const { depth_m, cast_m } = site;
  switch (shape) {
    case 'flat':
      return undefined;
    case 'ledge':
      return {
        x_m: [cast_m - EDGE_M - FACE_M, cast_m - EDGE_M],
        z_m: [-depth_m, LEDGE_M - depth_m]
      };
    case 'slope':
      return { x_m: [cast_m - SLOPE_M, cast_m], z_m: [-depth_m, SLOPE_FALLS_M - depth_m] };
  }
}

/** Which of ours a setup's profile is. */
export function shapeOf({ bottom, water, start }: Setup): Shape {
  const given = bottom.profile;
  if (!given || given.x_m.length === 0) return 'flat';
  const site = { depth_m: water.depth_m, cast_m: start.bait_x_m };
  const same = (shape: (typeof SHAPES)[number]) =>
    JSON.stringify(profileOf(shape, site)) === JSON.stringify(given);
  return SHAPES.find(same) ?? 'given';
}

import type { Point } from './tip-path';

/** Height of the ground along the water: at x_m it is z_m, and even between. */
export interface Profile {
  readonly x_m: readonly number[];
  readonly z_m: readonly number[];
}

/** How far below its surface a piece of sloping ground extends, m; only has to exceed the reach. */
const GROUND_THICKNESS_M = 0.5;

/** Where level ground ends, m: beyond any cast. */
const FAR_M = 1000;

export function levelGround(level_m: number): Profile {
  return { x_m: [-FAR_M, FAR_M], z_m: [level_m, level_m] };
}

/** Ground goes on level beyond a profile's ends. */
export function extended({ x_m, z_m }: Profile): Profile {
  return {
    x_m: [-FAR_M, ...x_m, FAR_M],
    z_m: [z_m[0], ...z_m, z_m[z_m.length - 1]]
  };
}

/** Outline of the ground between two points of the profile, down to far below it. */
export function pieceOutline({ x_m, z_m }: Profile, i: number): Point[] {
  const foot = Math.min(z_m[i], z_m[i + 1]) - GROUND_THICKNESS_M;
  return [
    { x: x_m[i], z: foot },
    { x: x_m[i], z: z_m[i] },
    { x: x_m[i + 1], z: z_m[i + 1] },
    { x: x_m[i + 1], z: foot }
  ];
}

/** Ground level at `x_m`; level beyond the ends of the profile. */
export function heightOf({ x_m, z_m }: Profile, x: number): number {
  const last = x_m.length - 1;
  if (x <= x_m[0]) return z_m[0];
  if (x >= x_m[last]) return z_m[last];
  let i = 1;
  while (x_m[i] < x) i++;
  return z_m[i - 1] + ((z_m[i] - z_m[i - 1]) * (x - x_m[i - 1])) / (x_m[i] - x_m[i - 1]);
}

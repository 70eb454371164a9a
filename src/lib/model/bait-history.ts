import type { Touch } from './bait-contact';
import type { LineState } from './line-state';

/**
 * Puts a touching bait on the surface and rewrites its history: no motion across the surface, none
 * along it where friction holds, and after a landing none from before it. A two-step formula would
 * take the sudden stop for a fast smooth change and answer with a rebound and with half as much
 * friction again.
 */
export function settleBait(state: LineState, touch: Touch, step_s: number): void {
  const { contact } = touch;
  const isLanding = contact !== null && !state.isTouching;
  state.isTouching = contact !== null;
  state.rest_s = touch.isStuck ? state.rest_s + step_s : 0;
  if (!contact) return;
  const n = state.nodes - 1;
  const { nx, nz, gap_m } = contact;
  const { x, z, vx, vz, xBefore, zBefore, vxBefore, vzBefore } = state;
  if (touch.isStuck) {
    const across = (x[n] - xBefore[n]) * nx + (z[n] - zBefore[n]) * nz - gap_m;
    x[n] = xBefore[n] += across * nx;
    z[n] = zBefore[n] += across * nz;
    vx[n] = vz[n] = vxBefore[n] = vzBefore[n] = 0;
    return;
  }
  x[n] -= gap_m * nx;
  z[n] -= gap_m * nz;
  if (isLanding) {
    xBefore[n] = x[n] - step_s * vx[n];
    zBefore[n] = z[n] - step_s * vz[n];
    vxBefore[n] = vx[n];
    vzBefore[n] = vz[n];
    return;
  }
  const across = (x[n] - xBefore[n]) * nx + (z[n] - zBefore[n]) * nz;
  xBefore[n] += across * nx;
  zBefore[n] += across * nz;
  const before = vxBefore[n] * nx + vzBefore[n] * nz;
  vxBefore[n] -= before * nx;
  vzBefore[n] -= before * nz;
}

import type { Contact } from './bottom';

/** Symmetric 2×2 matrix [[xx, xz], [xz, zz]]. */
export interface Matrix2 {
  xx: number;
  xz: number;
  zz: number;
}

/** How the bottom holds a bait: Coulomb friction, and forces that do not follow the load. */
export interface BottomHold {
  readonly friction: number;
  /** Holds a bait that has rested, in every direction, N. */
  readonly hold_N: number;
  /** Resists one that slides, N. */
  readonly plough_N: number;
}

/** What the bottom does to the bait in one step. */
export interface Touch {
  vx: number;
  vz: number;
  /** Force of the bottom on the bait, N. */
  fx: number;
  fz: number;
  /** Held by friction, or wedged between two surfaces. */
  isStuck: boolean;
  /** Contact that carries the bait; null when it is clear of the bottom. */
  contact: Contact | null;
}

/** Nearer than this the bottom can hold a bait, m. */
const TOUCHING_M = 1e-4;
/** Speeds are compared to this, m/s: rounding, nothing that could be seen. */
const SPEED_ROUNDING_M_S = 1e-9;

/**
 * Solves S v = r + f for the bait's speed v at the end of the step and the bottom's force f:
 *   unilateral     no force unless the free motion would pass the surface; then n·v = 0, f·n ≥ 0
 *   Coulomb        |f·t| ≤ μ f·n; below the limit the bait does not slide, at it f opposes the slide;
 *                  soft ground adds a hold on a bait that has rested and a resistance to a moving one.
 * S is what remains of the line's implicit equations once every other node is eliminated, so line,
 * water and bottom are solved together, without iteration and without stiffness of contact.
 */
function touchOne(
  s: Matrix2,
  rx: number,
  rz: number,
  contact: Contact,
  step_s: number,
  grip: BottomHold,
  out: Touch
): void {
  const { nx, nz, gap_m } = contact;
  const tx = nz;
  const tz = -nx;
  const { friction, hold_N, plough_N } = grip;
  // Force that would hold the bait where it is.
  let normal = -(rx * nx + rz * nz);
  let along = -(rx * tx + rz * tz);
  const isHeld =
    hold_N > 0 &&
    gap_m < TOUCHING_M &&
    normal >= -hold_N &&
    Math.abs(along) <= friction * Math.max(normal, 0) + hold_N;
  if (!isHeld && isFreeOf(s, rx, rz, contact, step_s, out)) return;
  const isStuck = isHeld || (normal >= 0 && Math.abs(along) <= friction * normal + plough_N);
  let slide = 0;
  if (!isStuck) {
    // S in the frame of the contact.
    const snt = s.xx * nx * tx + s.xz * (nx * tz + nz * tx) + s.zz * nz * tz;
    const stt = s.xx * tx * tx + 2 * s.xz * tx * tz + s.zz * tz * tz;
    // Sliding: f·t = −σ (μ f·n + plough), σ the sense of the slide, against the force that would hold.
    const sense = along > 0 ? -1 : 1;
    const drag = -friction * sense;
    slide = (-along + drag * normal - sense * plough_N) / (stt - drag * snt);
    normal += snt * slide;
    along = drag * normal - sense * plough_N;
  }
  out.vx = slide * tx;
  out.vz = slide * tz;
  out.fx = normal * nx + along * tx;
  out.fz = normal * nz + along * tz;
  out.isStuck = isStuck;
  out.contact = contact;
}

/** Whether the bait stays clear of the contact without help; then that motion is the answer. */
function isFreeOf(
  s: Matrix2,
  rx: number,
  rz: number,
  { nx, nz, gap_m }: Contact,
  step_s: number,
  out: Touch
): boolean {
  moveFreely(s, rx, rz, out);
  return out.vx * nx + out.vz * nz >= -gap_m / step_s;
}

function moveFreely(s: Matrix2, rx: number, rz: number, out: Touch): void {
  const det = s.xx * s.zz - s.xz * s.xz;
  out.vx = (s.zz * rx - s.xz * rz) / det;
  out.vz = (s.xx * rz - s.xz * rx) / det;
  out.fx = out.fz = 0;
  out.isStuck = false;
  out.contact = null;
}

/**
 * The bait's speed and the bottom's force among all contacts within reach: the first contact whose
 * answer respects the others, or else the two that wedge the bait.
 */
export function touchBottom(
  s: Matrix2,
  rx: number,
  rz: number,
  contacts: readonly Contact[],
  step_s: number,
  grip: BottomHold,
  out: Touch
): void {
  for (const contact of contacts) {
    touchOne(s, rx, rz, contact, step_s, grip, out);
    if (contacts.every((other) => other === contact || isClear(other, step_s, out))) return;
  }
  if (contacts.length === 0) moveFreely(s, rx, rz, out);
  else wedge(rx, rz, contacts, out);
}

function isClear(contact: Contact, step_s: number, { vx, vz }: Touch): boolean {
  return contact.nx * vx + contact.nz * vz >= -contact.gap_m / step_s - SPEED_ROUNDING_M_S;
}

/** Held between surfaces: it stays where it is. */
function wedge(rx: number, rz: number, contacts: readonly Contact[], out: Touch): void {
  out.vx = out.vz = 0;
  out.fx = -rx;
  out.fz = -rz;
  out.isStuck = true;
  out.contact = contacts.reduce((a, b) => (a.gap_m <= b.gap_m ? a : b));
}

const NOWHERE: Contact = { nx: 0, nz: 1, gap_m: 0, stone: -1 };

/** The answer for a bait that cannot move. */
export function pin(rx: number, rz: number, out: Touch): void {
  out.vx = out.vz = 0;
  out.fx = -rx;
  out.fz = -rz;
  out.isStuck = true;
  out.contact = NOWHERE;
}

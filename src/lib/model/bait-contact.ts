import type { Contact } from './bottom';

/** Symmetric 2×2 matrix [[xx, xz], [xz, zz]]. */
export interface Matrix2 {
  xx: number;
  xz: number;
  zz: number;
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

/** Speeds are compared to this, m/s: rounding, nothing that could be seen. */
const SPEED_ROUNDING_M_S = 1e-9;

/**
 * Solves S v = r + f for the bait's speed v at the end of the step and the bottom's force f:
 *   unilateral     no force unless the free motion would pass the surface; then n·v = 0, f·n ≥ 0
 *   Coulomb        |f·t| ≤ μ f·n; below the limit the bait does not slide, at it f opposes the slide.
 * S is what remains of the line's implicit equations once every other node is eliminated, so line,
 * water and bottom are solved together, without iteration and without stiffness of contact.
 */
function touchOne(
  s: Matrix2,
  rx: number,
  rz: number,
  contact: Contact,
  step_s: number,
  friction: number,
  out: Touch
): void {
  const det = s.xx * s.zz - s.xz * s.xz;
  const freeX = (s.zz * rx - s.xz * rz) / det;
  const freeZ = (s.xx * rz - s.xz * rx) / det;
  const { nx, nz } = contact;
  if (freeX * nx + freeZ * nz >= -contact.gap_m / step_s) {
    out.vx = freeX;
    out.vz = freeZ;
    out.fx = out.fz = 0;
    out.isStuck = false;
    out.contact = null;
    return;
  }
  const tx = nz;
  const tz = -nx;
  // S and r in the frame of the contact.
  const snt = s.xx * nx * tx + s.xz * (nx * tz + nz * tx) + s.zz * nz * tz;
  const stt = s.xx * tx * tx + 2 * s.xz * tx * tz + s.zz * tz * tz;
  const rn = rx * nx + rz * nz;
  const rt = rx * tx + rz * tz;

  let slide = 0;
  let normal = -rn;
  let along = -rt;
  const isStuck = normal >= 0 && Math.abs(along) <= friction * normal;
  if (!isStuck) {
    // Sliding: f·t = −μ σ f·n with σ the sense of the slide, opposite to the force that would hold.
    const drag = -friction * (along > 0 ? -1 : 1);
    slide = (rt - drag * rn) / (stt - drag * snt);
    normal = snt * slide - rn;
    along = drag * normal;
  }
  out.vx = slide * tx;
  out.vz = slide * tz;
  out.fx = normal * nx + along * tx;
  out.fz = normal * nz + along * tz;
  out.isStuck = isStuck;
  out.contact = contact;
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
  friction: number,
  out: Touch
): void {
  for (const contact of contacts) {
    touchOne(s, rx, rz, contact, step_s, friction, out);
    if (contacts.every((other) => other === contact || isClear(other, step_s, out))) return;
  }
  if (contacts.length === 0) {
    const det = s.xx * s.zz - s.xz * s.xz;
    out.vx = (s.zz * rx - s.xz * rz) / det;
    out.vz = (s.xx * rz - s.xz * rx) / det;
    out.fx = out.fz = 0;
    out.isStuck = false;
    out.contact = null;
    return;
  }
  wedge(rx, rz, contacts, out);
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

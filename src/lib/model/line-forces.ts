import type { Bait } from './bait';
import type { Bottom } from './bottom';
import type { ExternalLoad } from './external-load';
import type { LineEquations } from './line-equations';
import { surfaceSpan, wetShare, type Line } from './line';
import type { Point } from './tip-path';

/**
 * Each function adds one force to the equations: its value to the right side, minus its derivative
 * (by speed, plus γ times by place) to the blocks.
 */

/**
 * Stiffness and damping with which a metre of line lies on the bottom: stiff enough to sink less
 * than 0.01 mm under its own weight. The bait's own contact is exact and does not use them.
 */
export const BED_STIFFNESS_N_M2 = 100;
const BED_DAMPING_N_S_M2 = 0.25;
/** Below this speed the friction of line on the bottom fades to nothing, m/s. */
const BED_FRICTION_SPEED_M_S = 0.005;

/** Pull and weight of every piece. */
export function addPieces(
  eq: LineEquations,
  line: Line,
  pieceLength_m: number,
  gamma: number
): void {
  const { px, pz, rx, rz, dxx, dxz, dzz, bxx, bxz, bzz, nx, nz, halfWet_m } = eq;
  const { axialStiffness_N, weightInAir_N_m, weightInWater_N_m } = line;
  const half = 0.5 * pieceLength_m;
  for (let i = 0; i < eq.nodes - 1; i++) {
    const j = i + 1;
    const dx = px[j] - px[i];
    const dz = pz[j] - pz[i];
    const length = Math.sqrt(dx * dx + dz * dz);
    const ux = dx / length;
    const uz = dz / length;
    nx[i] = ux;
    nz[i] = uz;
    const wet = wetShare(pz[i], pz[j]);
    const inWater = weightInWater_N_m[i];
    const buoyancy = weightInAir_N_m[i] - inWater;
    if (wet > 0 && wet < 1) {
      const floating = (gamma * half * buoyancy) / surfaceSpan(pz[i], pz[j]);
      dzz[i] += floating;
      dzz[j] += floating;
    }
    halfWet_m[i] = half * wet;
    const weight = half * (inWater + (1 - wet) * buoyancy);
    rz[i] -= weight;
    rz[j] -= weight;
    if (length <= pieceLength_m) {
      bxx[i] = bxz[i] = bzz[i] = 0;
      eq.isTaut[i] = 0;
      continue;
    }
    eq.isTaut[i] = 1;
    const stiffness = axialStiffness_N[i] / pieceLength_m;
    const pull = stiffness * (length - pieceLength_m);
    rx[i] += pull * ux;
    rz[i] += pull * uz;
    rx[j] -= pull * ux;
    rz[j] -= pull * uz;
    const across = (gamma * pull) / length;
    const along = gamma * stiffness - across;
    const xx = along * ux * ux + across;
    const xz = along * ux * uz;
    const zz = along * uz * uz + across;
    bxx[i] = xx;
    bxz[i] = xz;
    bzz[i] = zz;
    dxx[i] += xx;
    dxz[i] += xz;
    dzz[i] += zz;
    dxx[j] += xx;
    dxz[j] += xz;
    dzz[j] += zz;
  }
}

/** What a metre more of every piece's length would take from the pulls, N/m, to the second right side. */
export function addLengthening(eq: LineEquations, line: Line, pieceLength_m: number): void {
  const { px, pz, nx, nz, sx, sz, isTaut } = eq;
  sx.fill(0);
  sz.fill(0);
  for (let i = 0; i < eq.nodes - 1; i++) {
    if (isTaut[i] === 0) continue;
    const length = (px[i + 1] - px[i]) * nx[i] + (pz[i + 1] - pz[i]) * nz[i];
    const less = (line.axialStiffness_N[i] * length) / (pieceLength_m * pieceLength_m);
    sx[i] -= less * nx[i];
    sz[i] -= less * nz[i];
    sx[i + 1] += less * nx[i];
    sz[i + 1] += less * nz[i];
  }
}

/**
 * Water across and along the line. Line that comes in over the tip runs towards it along itself,
 * faster than its nodes do: by the reel's speed at the tip, not at all at the bait.
 */
export function addLineDrag(eq: LineEquations, line: Line, reel_m_s: number): void {
  const { pvx, pvz, rx, rz, dxx, dxz, dzz, nx, nz, halfWet_m } = eq;
  const { normalDrag, tangentialDrag } = line;
  const last = eq.nodes - 1;
  for (let i = 1; i <= last; i++) {
    const wet_m = halfWet_m[i - 1] + halfWet_m[i];
    if (wet_m === 0) continue;
    const { table, perRootSpeed } = normalDrag[i - 1];
    const lastCell = table.length - 2;
    let tx = nx[i - 1];
    let tz = nz[i - 1];
    if (i < last) {
      tx += nx[i];
      tz += nz[i];
      const norm = 1 / Math.sqrt(tx * tx + tz * tz + 1e-30);
      tx *= norm;
      tz *= norm;
    }
    const along = pvx[i] * tx + pvz[i] * tz - reel_m_s * (1 - i / last);
    const across = pvz[i] * tx - pvx[i] * tz;
    // Cells are equal steps of the square root of speed: C(v) and v·dC/dv = slope · root / 2.
    const root = Math.sqrt(Math.abs(across)) * perRootSpeed;
    const cell = root < lastCell ? root | 0 : lastCell;
    const slope = table[cell + 1] - table[cell];
    const perSpeed = table[cell] + slope * (root - cell);
    const normal = wet_m * perSpeed * across;
    const normalSlope = wet_m * (perSpeed + 0.5 * slope * root);
    const tangentialPerSpeed = wet_m * tangentialDrag[i - 1] * Math.abs(along);
    const tangential = tangentialPerSpeed * along;
    const tangentialSlope = 2 * tangentialPerSpeed;
    rx[i] += normal * tz - tangential * tx;
    rz[i] -= normal * tx + tangential * tz;
    dxx[i] += normalSlope * tz * tz + tangentialSlope * tx * tx;
    dxz[i] += (tangentialSlope - normalSlope) * tx * tz;
    dzz[i] += normalSlope * tx * tx + tangentialSlope * tz * tz;
  }
}

/** Density of air at 15 °C, kg/m³ (ISO 2533), and drag of a cylinder across it (Re 100–1000). */
const AIR_KG_M3 = 1.225;
const CYLINDER_IN_AIR = 1.15;

/** Force of air on half a piece by its speed across squared, N·s²/m², of which `dry_m` is dry. */
export function airFactor({ diameter_m }: Line, piece: number, dry_m: number): number {
  return 0.25 * AIR_KG_M3 * CYLINDER_IN_AIR * diameter_m[piece] * dry_m;
}

/**
 * Air across the dry part of the line, by the line's speed through the air; positive wind blows along x.
 * Each end of a piece bears half of it, at its own speed. Along a line air is nothing beside water.
 */
export function addAir(
  eq: LineEquations,
  line: Line,
  pieceLength_m: number,
  wind_m_s: number
): void {
  const { pvx, pvz, rx, rz, dxx, dxz, dzz, nx, nz, halfWet_m } = eq;
  for (let i = 0; i < eq.nodes - 1; i++) {
    const dry_m = pieceLength_m - 2 * halfWet_m[i];
    if (dry_m <= 0) continue;
    const ux = nx[i];
    const uz = nz[i];
    const factor = airFactor(line, i, dry_m);
    for (let j = i; j <= i + 1; j++) {
      const across = (pvx[j] - wind_m_s) * uz - pvz[j] * ux;
      const perSpeed = factor * Math.abs(across);
      rx[j] -= perSpeed * across * uz;
      rz[j] += perSpeed * across * ux;
      dxx[j] += 2 * perSpeed * uz * uz;
      dxz[j] -= 2 * perSpeed * uz * ux;
      dzz[j] += 2 * perSpeed * ux * ux;
    }
  }
}

/**
 * The bottom under the line (not under the bait). Its support has the energy ½ k depth², depth below the
 * evened bed b, so that its force is k depth (−b′, 1): held straight up instead, line on a slope would be
 * driven in circles and never rest. Friction is along the bed.
 */
export function addBed(
  eq: LineEquations,
  bottom: Bottom,
  pieceLength_m: number,
  gamma: number,
  stiffnessShare = 1
): void {
  const { px, pz, pvx, pvz, rx, rz, dxx, dxz, dzz, isBorne, bait } = eq;
  const stiffness = stiffnessShare * BED_STIFFNESS_N_M2 * pieceLength_m;
  const damping = BED_DAMPING_N_S_M2 * pieceLength_m;
  bait.x = px[eq.nodes - 1];
  bait.z = pz[eq.nodes - 1];
  for (let i = eq.nodes - 2; i > 0; i--) {
    isBorne[i] = 0;
    if (pz[i] >= bottom.highest_m) continue;
    const depth = bottom.evenedBedAt(px[i], bait) - pz[i];
    if (depth <= 0) continue;
    const slope = bottom.evenedSlopeAt(px[i], bait);
    const support = stiffness * depth - damping * (pvz[i] - slope * pvx[i]);
    if (support <= 0) continue;
    isBorne[i] = 1;
    const steep = Math.sqrt(1 + slope * slope);
    const tx = 1 / steep;
    const tz = slope / steep;
    const along = pvx[i] * tx + pvz[i] * tz;
    const normal = support * steep;
    const rub = (bottom.friction * normal) / Math.max(Math.abs(along), BED_FRICTION_SPEED_M_S);
    rx[i] -= support * slope + rub * along * tx;
    rz[i] += support - rub * along * tz;
    const across = damping + gamma * stiffness;
    dxx[i] += across * slope * slope + rub * tx * tx;
    dxz[i] += rub * tx * tz - across * slope;
    dzz[i] += across + rub * tz * tz;
  }
}

/** The rod's bend: pulls the line's first node towards where the stiff rod's tip would be. */
export function addRodTip(
  eq: LineEquations,
  rod: { stiffness_N_m: number; damping_N_s_m: number },
  tip: Point,
  tipSpeed: Point,
  gamma: number
): void {
  const { px, pz, pvx, pvz, rx, rz, dxx, dzz } = eq;
  rx[0] -= rod.stiffness_N_m * (px[0] - tip.x) + rod.damping_N_s_m * (pvx[0] - tipSpeed.x);
  rz[0] -= rod.stiffness_N_m * (pz[0] - tip.z) + rod.damping_N_s_m * (pvz[0] - tipSpeed.z);
  dxx[0] += gamma * rod.stiffness_N_m + rod.damping_N_s_m;
  dzz[0] += gamma * rod.stiffness_N_m + rod.damping_N_s_m;
}

/** Holds every node of the line back as if the air and the water were syrup; the bait is not held. */
export function addSettling(
  { pvx, pvz, rx, rz, dxx, dzz, nodes }: LineEquations,
  damping: number
): void {
  for (let i = 0; i < nodes - 1; i++) {
    rx[i] -= damping * pvx[i];
    rz[i] -= damping * pvz[i];
    dxx[i] += damping;
    dzz[i] += damping;
  }
}

/** Weight and water on the bait, and what else draws on it. */
export function addBait(eq: LineEquations, bait: Bait, load: ExternalLoad, gamma: number): void {
  const { pz, pvx, pvz, rx, rz, dxx, dxz, dzz } = eq;
  const n = eq.nodes - 1;
  rx[n] += load.x - gamma * load.stiffness_N_m * pvx[n];
  rz[n] += load.z;
  dxx[n] += gamma * load.stiffness_N_m;
  if (pz[n] >= 0) {
    rz[n] -= bait.weightInAir_N;
    return;
  }
  rz[n] -= bait.weightInWater_N;
  const vx = pvx[n];
  const vz = pvz[n];
  const speed = Math.sqrt(vx * vx + vz * vz);
  if (speed === 0) return;
  rx[n] -= bait.drag * speed * vx;
  rz[n] -= bait.drag * speed * vz;
  const steeper = bait.drag / speed;
  dxx[n] += bait.drag * speed + steeper * vx * vx;
  dxz[n] += steeper * vx * vz;
  dzz[n] += bait.drag * speed + steeper * vz * vz;
}

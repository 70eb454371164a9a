import { groundOf, stonesOf, type Stone } from './ground';
import { extended, heightOf, levelGround, pieceOutline, type Profile } from './ground-profile';
import type { Setup } from './scenario';
import { Solids } from './solids';
import type { Point } from './tip-path';

/** A place where the bait touches, or is about to: unit normal out of the bottom and the gap left. */
export interface Contact {
  nx: number;
  nz: number;
  gap_m: number;
  /** Index of the stone, or GROUND. */
  stone: number;
}

export const GROUND = -1;

/** What the bait and the line can lie on. */
export interface Bottom {
  readonly isFlat: boolean;
  readonly friction: number;
  /** Hold on a bait that has rested, and resistance to one that is drawn, N (see ground.ts). */
  readonly breakout_N: number;
  readonly plough_N: number;
  readonly stones: number;
  /** No part of the bottom is higher, m. */
  readonly highest_m: number;
  /** Height of the upper surface, stones included, at `x_m`. */
  heightAt(x_m: number): number;
  /**
   * What the line of a bait at (x, z) rests on at `x_m`: the same, but falling off from a stone's top at
   * 45° at most, and rising no steeper than BESIDE from the bait. A line spans the corner at a stone's foot,
   * and its few nodes need not find their way down a wall; and a stone that the bait lies against is not a
   * wall across the water: the line leads beside it, or any bait would be lifted over anything.
   */
  bedAt(x_m: number, bait: Point): number;
  /** The same evened out over EVENED_M to each side, and how steep that is (rise over run along x). */
  evenedBedAt(x_m: number, bait: Point): number;
  evenedSlopeAt(x_m: number, bait: Point): number;
  /** Fills `out` with the contacts within reach of a bait whose lowest point is at (x, z). */
  contactsNear(x_m: number, z_m: number, out: Contact[]): void;
}

/**
 * Contacts are looked for this far ahead of the bait, m: more than the 6 mm it can move in the
 * shortest step at 5 m/s; much more would round off the corners of stones.
 */
const REACH_M = 0.012;

/**
 * A piece of line does not feel an edge as a point: the bed under it is evened out over this far to each
 * side, m. Far less than a piece spans; without it a node on an edge finds no place to lie.
 */
const EVENED_M = 0.02;
/**
 * Stones lift the line beside a bait by this much for each metre from it (17°): about as line leads up from
 * a bait that is drawn (common practice, no source). At 1 and more a bait is drawn up any face by its line.
 */
const BESIDE = 0.3;

/** Outline of a stone as shares of half its width and of its height: steep flanks, a rounded top. */
const STONE_OUTLINE: readonly (readonly [number, number])[] = [
  [-1, 0],
  [-0.66, 0.7],
  [-0.28, 1],
  [0.28, 1],
  [0.66, 0.7],
  [1, 0]
];

/** The bottom of a scenario; `baitRadius_m` is the radius of the sphere that the bait fills. */
export function bottomOf(
  setup: Pick<Setup, 'water' | 'bottom' | 'start'>,
  baitRadius_m: number
): Bottom {
  const { friction, profile } = setup.bottom;
  const { breakout_N, plough_N } = groundOf(setup.bottom);
  const grip = { friction, breakout_N, plough_N };
  const stones = stonesOf(setup);
  const level = -setup.water.depth_m;
  const sloped = profile !== undefined && profile.x_m.length > 0;
  if (!sloped && stones.length === 0) return flatBottom(level, grip);
  const ground = sloped ? extended(profile) : levelGround(level);
  return new ShapedBottom(ground, stones, grip, baitRadius_m);
}

type Grip = Pick<Bottom, 'friction' | 'breakout_N' | 'plough_N'>;

function flatBottom(level_m: number, grip: Grip): Bottom {
  const contact: Contact = { nx: 0, nz: 1, gap_m: 0, stone: GROUND };
  return {
    isFlat: true,
    ...grip,
    stones: 0,
    highest_m: level_m,
    heightAt: () => level_m,
    bedAt: () => level_m,
    evenedBedAt: () => level_m,
    evenedSlopeAt: () => 0,
    contactsNear: (_x, z, out) => {
      contact.gap_m = z - level_m;
      out[0] = contact;
      out.length = 1;
    }
  };
}

type Outline = readonly Point[];
const NO_OUTLINES: readonly Outline[] = [];
/** Stones are looked up by strips of the bottom so wide, m: a strip has a few; all would be a hundred. */
const STRIP_M = 0.25;

class ShapedBottom implements Bottom {
  readonly isFlat = false;
  readonly friction: number;
  readonly breakout_N: number;
  readonly plough_N: number;
  readonly stones: number;
  readonly highest_m: number;
  /** Pieces of the ground, and after them the stones. */
  private readonly solids: Solids;
  private readonly pieces: number;
  private readonly outlines: Outline[];
  /** Stones that raise the bed in each strip of STRIP_M, by the strip's number. */
  private readonly strips = new Map<number, Outline[]>();

  constructor(
    private readonly ground: Profile,
    stones: readonly Stone[],
    { friction, breakout_N, plough_N }: Grip,
    private readonly radius_m: number
  ) {
    this.friction = friction;
    this.breakout_N = breakout_N;
    this.plough_N = plough_N;
    this.stones = stones.length;
    this.outlines = stones.map((stone) => outlineOf(stone, heightOf(ground, stone.x_m)));
    this.highest_m = Math.max(...ground.z_m, ...this.outlines.flat().map(({ z }) => z));
    this.sortIntoStrips(Math.min(...ground.z_m));
    const pieces = ground.x_m.slice(1).map((_, i) => pieceOutline(ground, i));
    this.pieces = pieces.length;
    this.solids = new Solids([...pieces, ...this.outlines], radius_m + REACH_M);
  }

  /** A stone's 45° flanks reach as far to each side as its top is above the lowest ground. */
  private sortIntoStrips(lowest_m: number): void {
    for (const outline of this.outlines) {
      const [, , left, right] = outline;
      const reach = Math.max(left.z - lowest_m, 0);
      const from = Math.min(left.x - reach, outline[0].x);
      const to = Math.max(right.x + reach, outline[outline.length - 1].x);
      for (let i = Math.floor(from / STRIP_M); i <= Math.floor(to / STRIP_M); i++) {
        const strip = this.strips.get(i);
        if (strip) strip.push(outline);
        else this.strips.set(i, [outline]);
      }
    }
  }

  private outlinesAt(x_m: number): readonly Outline[] {
    return this.strips.get(Math.floor(x_m / STRIP_M)) ?? NO_OUTLINES;
  }

  heightAt(x_m: number): number {
    let height = heightOf(this.ground, x_m);
    for (const outline of this.outlinesAt(x_m)) {
      if (x_m <= outline[0].x || x_m >= outline[outline.length - 1].x) continue;
      for (let i = 1; i < outline.length; i++) {
        const a = outline[i - 1];
        const b = outline[i];
        if (x_m > b.x) continue;
        height = Math.max(height, a.z + ((b.z - a.z) * (x_m - a.x)) / (b.x - a.x));
        break;
      }
    }
    return height;
  }

  bedAt(x_m: number, bait: Point): number {
    const ground = heightOf(this.ground, x_m);
    let height = ground;
    for (const outline of this.outlinesAt(x_m)) {
      const [, , left, right] = outline;
      const beside = Math.max(left.x - x_m, x_m - right.x, 0);
      height = Math.max(height, left.z - beside);
    }
    return Math.max(ground, Math.min(height, bait.z + BESIDE * Math.abs(x_m - bait.x)));
  }

  /** Simpson's rule for the mean, whose derivative is the slope below. */
  evenedBedAt(x_m: number, bait: Point): number {
    const ends = this.bedAt(x_m - EVENED_M, bait) + this.bedAt(x_m + EVENED_M, bait);
    return (ends + 4 * this.bedAt(x_m, bait)) / 6;
  }

  evenedSlopeAt(x_m: number, bait: Point): number {
    const rise = this.bedAt(x_m + EVENED_M, bait) - this.bedAt(x_m - EVENED_M, bait);
    return rise / (2 * EVENED_M);
  }

  contactsNear(x_m: number, z_m: number, out: Contact[]): void {
    out.length = 0;
    const centreZ = z_m + this.radius_m;
    for (const { solid, nx, nz, depth_m } of this.solids.overlapsAt(x_m, centreZ)) {
      if (solid >= this.pieces) {
        out.push({ nx, nz, gap_m: REACH_M - depth_m, stone: solid - this.pieces });
        continue;
      }
      const contact = this.groundContact(solid, x_m, centreZ);
      if (contact) out.push(contact);
    }
  }

  /** Place along a piece's upper edge, as a share of it, that is nearest to a point; beyond its ends too. */
  private shareAlong(piece: number, x: number, z: number): number {
    const { x_m, z_m } = this.ground;
    const dx = x_m[piece + 1] - x_m[piece];
    const dz = z_m[piece + 1] - z_m[piece];
    return ((x - x_m[piece]) * dx + (z - z_m[piece]) * dz) / (dx * dx + dz * dz);
  }

  /**
   * Contact with a piece's face, or where a ridge ends it with the ridge, told by the piece behind it. Null
   * where the next piece is nearer than the corner that they share: a bait at a joint of straight ground
   * touches one surface, and the corner would hold it as if the ground were level there.
   */
  private groundContact(piece: number, x: number, z: number): Contact | null {
    const { x_m, z_m } = this.ground;
    const dx = x_m[piece + 1] - x_m[piece];
    const dz = z_m[piece + 1] - z_m[piece];
    const awayX = x - x_m[piece];
    const awayZ = z - z_m[piece];
    const share = this.shareAlong(piece, x, z);
    if (share > 1) return null;
    if (share < 0) {
      const distance = Math.hypot(awayX, awayZ);
      const isRidge = piece > 0 && this.shareAlong(piece - 1, x, z) > 1 && distance > 1e-9;
      if (!isRidge) return null;
      const [nx, nz] = [awayX / distance, awayZ / distance];
      return { nx, nz, gap_m: distance - this.radius_m, stone: GROUND };
    }
    const length = Math.hypot(dx, dz);
    const [nx, nz] = [-dz / length, dx / length];
    return { nx, nz, gap_m: awayX * nx + awayZ * nz - this.radius_m, stone: GROUND };
  }
}

function outlineOf(stone: Stone, base_m: number): Point[] {
  return STONE_OUTLINE.map(([across, up]) => ({
    x: stone.x_m + (across * stone.width_m) / 2,
    z: base_m + up * stone.height_m
  }));
}

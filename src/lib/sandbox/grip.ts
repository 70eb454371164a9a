import type { Plane } from './rod-angles';

/**
 * A pointer drags the rod round its pivot: it may take hold anywhere, and the rod turns by the angle
 * that the pointer goes round. Farther from the pivot it is finer.
 */

/** Closer to the pivot than this an angle is all tremble, px. */
const LEAST_RADIUS_PX = 12;

export interface Spot {
  readonly x: number;
  readonly y: number;
}

/**
 * Angle under which the pointer is seen from the pivot, degrees. The bait is to the left: 0 points at
 * it, and up on the page is up for a lift, to the angler's right for a sweep.
 */
export function angleOf(pointer: Spot, pivot: Spot): number {
  return (Math.atan2(pivot.y - pointer.y, pivot.x - pointer.x) * 180) / Math.PI;
}

export class Grip {
  private before_deg: number;
  private turned_deg = 0;

  constructor(
    pointer: Spot,
    private readonly pivot: Spot,
    private readonly taken_deg: number
  ) {
    this.before_deg = angleOf(pointer, pivot);
  }

  /** Where the rod is wanted when the pointer has come here, degrees. */
  moveTo(pointer: Spot): number {
    const radius = Math.hypot(pointer.x - this.pivot.x, pointer.y - this.pivot.y);
    if (radius >= LEAST_RADIUS_PX) {
      const angle = angleOf(pointer, this.pivot);
      this.turned_deg += shortWay(angle - this.before_deg);
      this.before_deg = angle;
    }
    return this.taken_deg + this.turned_deg;
  }
}

/** The same turn by less than half a circle, degrees. */
function shortWay(turn_deg: number): number {
  return turn_deg - 360 * Math.round(turn_deg / 360);
}

/** From the deck the rod turns this far when the pointer crosses the picture's height, degrees. */
const DECK_TURN_DEG = 110;

/** The rod seen from the deck: it is pulled up, or aside, from wherever it was taken. */
export class DeckGrip {
  constructor(
    private readonly from: Spot,
    private readonly plane: Plane,
    private readonly height: number,
    private readonly taken_deg: number
  ) {}

  /** Where the rod is wanted when the pointer has come here, degrees. */
  moveTo(pointer: Spot): number {
    const way = this.plane === 'lift' ? this.from.y - pointer.y : pointer.x - this.from.x;
    return this.taken_deg + (way * DECK_TURN_DEG) / this.height;
  }
}

/** Which way an arrow key turns the rod, or 0. In a sweep, right is away from the bait. */
export function keyDirection(key: string, plane: Plane, angle_deg: number): -1 | 0 | 1 {
  if (key === 'ArrowUp') return 1;
  if (key === 'ArrowDown') return -1;
  const away = plane === 'lift' || angle_deg >= 0 ? 1 : -1;
  if (key === 'ArrowRight') return away;
  if (key === 'ArrowLeft') return away === 1 ? -1 : 1;
  return 0;
}

/** Speeds of the tip under held keys, m/s, from a crawl to a snap. */
export const KEY_SPEEDS_M_S = [0.08, 0.15, 0.3, 0.5, 0.8, 1.3, 2, 3.5] as const;
export const FIRST_KEY_SPEED = 2;

/** Which way a key turns the reel, or 0. */
export function reelDirection(key: string): -1 | 0 | 1 {
  if (key === ']') return 1;
  return key === '[' ? -1 : 0;
}

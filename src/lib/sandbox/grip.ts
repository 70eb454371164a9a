import { degToRad, tipOf, type RodAngles, type Setup } from '$lib/model';
import { movedAngle, type Plane } from './rod-angles';

/**
 * A pointer drags the rod's tip: it may take hold anywhere on the picture, and the tip goes as far as the
 * pointer goes, in every picture at one scale. So a finger learns one measure, whether it sees the bait
 * or not and wherever it lay down; drawn tips are seen at about half that scale.
 */

/**
 * The pointer's way for each metre of the tip's, CSS px: a foot is about a thumb's breadth and a half, 49 px,
 * and the widest sweep asked of a hand, two metres, still fits a phone held upright. Smaller and a
 * thumb cannot tell 10 inches from 12; larger and a long sweep runs off the glass.
 */
export const PX_PER_M = 160;

/** Nearer to the butt than this a dragged tip points nowhere, as a share of the rod's length. */
const LEAST_SHARE = 0.1;

export interface Spot {
  readonly x: number;
  readonly y: number;
}

/**
 * The rod seen from its side or from above. The bait is to the left: 0° points at it, and up on the page
 * is up for a lift, to the angler's right for a sweep.
 */
export class Grip {
  private readonly reach: number;
  private turned_deg: number;

  constructor(
    private readonly from: Spot,
    length_m: number,
    private readonly taken_deg: number
  ) {
    this.reach = length_m * PX_PER_M;
    this.turned_deg = taken_deg;
  }

  /** Where the rod is wanted when the pointer has come here, degrees. */
  moveTo(pointer: Spot): number {
    const taken = degToRad(this.taken_deg);
    const ahead = this.reach * Math.cos(taken) - (pointer.x - this.from.x);
    const up = this.reach * Math.sin(taken) - (pointer.y - this.from.y);
    if (Math.hypot(ahead, up) >= LEAST_SHARE * this.reach) {
      this.turned_deg += shortWay(radToDeg(Math.atan2(up, ahead)) - this.turned_deg);
    }
    return this.turned_deg;
  }
}

const radToDeg = (rad: number): number => (rad * 180) / Math.PI;

/** The same turn by less than half a circle, degrees. */
function shortWay(turn_deg: number): number {
  return turn_deg - 360 * Math.round(turn_deg / 360);
}

/** The rod seen from the deck, foreshortened: it is pulled up, or aside, and goes round as far. */
export class DeckGrip {
  constructor(
    private readonly from: Spot,
    private readonly plane: Plane,
    private readonly length_m: number,
    private readonly taken_deg: number
  ) {}

  /** Where the rod is wanted when the pointer has come here, degrees. */
  moveTo(pointer: Spot): number {
    const way = this.plane === 'lift' ? this.from.y - pointer.y : pointer.x - this.from.x;
    return this.taken_deg + radToDeg(way / (this.length_m * PX_PER_M));
  }
}

/** A rod that a pointer is about to take. */
export interface HeldRod {
  readonly setup: Setup;
  readonly plane: Plane;
  readonly start: RodAngles;
  readonly isFromDeck: boolean;
}

export function gripOn(
  { plane, setup, isFromDeck }: Pick<HeldRod, 'plane' | 'setup' | 'isFromDeck'>,
  from: Spot,
  taken_deg: number
): Grip | DeckGrip {
  const { length_m } = setup.rod;
  return isFromDeck
    ? new DeckGrip(from, plane, length_m, taken_deg)
    : new Grip(from, length_m, taken_deg);
}

/** The tip's way from its start, as it is said and counted: along its arc in a lift, in a sweep away from the bait, m. */
function wayAt({ setup, plane, start }: HeldRod, deg: number): number {
  if (plane === 'lift') return setup.rod.length_m * degToRad(deg - start.elevation_deg);
  const xAt = (azimuth_deg: number) => {
    const tip = { x: 0, z: 0 };
    tipOf(setup, start.elevation_deg, azimuth_deg, tip);
    return tip.x;
  };
  return Math.sign(setup.start.bait_x_m) * (xAt(start.azimuth_deg) - xAt(deg));
}

const FARTHEST_PX = 400;
const NEAR_ENOUGH_PX = 0.1;

/** Half way from pointing at the bait to pointing across: the tip then goes as much up the page as to the right. */
const STEEP_DEG = 45;

/** Whether a rod is pulled up the page, along which its tip begins to go, or to the right. */
export function isPulledUp({ plane, start, isFromDeck }: Omit<HeldRod, 'setup'>): boolean {
  return isFromDeck ? plane === 'lift' : start[movedAngle(plane)] < STEEP_DEG;
}

/**
 * How far a pointer goes, straight up or straight to the right, for so much of the tip's way, px: halved
 * down to what no screen shows. Null for more than a phone is wide.
 */
export function pullFor(rod: HeldRod, way_m: number): number | null {
  const hand = { x: 0, y: 0 };
  const start_deg = rod.start[movedAngle(rod.plane)];
  const isEnough = (px: number) => {
    const to = isPulledUp(rod) ? { x: 0, y: -px } : { x: px, y: 0 };
    return wayAt(rod, gripOn(rod, hand, start_deg).moveTo(to)) >= way_m;
  };
  let [low, high] = [0, FARTHEST_PX];
  if (!isEnough(high)) return null;
  while (high - low > NEAR_ENOUGH_PX) {
    const middle = (low + high) / 2;
    if (isEnough(middle)) high = middle;
    else low = middle;
  }
  return high;
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
/** A firm sweep that a button makes by itself, m/s: half a metre of line in a quarter of a second. */
export const SET_HOOK_M_S = 2;

/** Which way a key turns the reel, or 0. */
export function reelDirection(key: string): -1 | 0 | 1 {
  if (key === ']') return 1;
  return key === '[' ? -1 : 0;
}

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

export interface Spot {
  readonly x: number;
  readonly y: number;
}

/**
 * The rod seen from its side or from above. The bait is to the left: 0° points at it, and up on the page
 * is up for a lift, to the angler's right for a sweep. A pointer that follows the tip round turns the rod as
 * it goes; one that goes straight up in a lift, or across in a sweep, moves the tip for each foot as far, as
 * that is counted: along its arc, or away from the bait.
 */
export class Grip {
  private readonly reach: number;
  private readonly nearness: number;
  private at: Spot;
  private turned_deg: number;

  constructor(
    from: Spot,
    private readonly plane: Plane,
    length_m: number,
    taken_deg: number,
    /** How far off the bait is, m: from one that is near a tip comes away sooner, and then later. */
    bait_m = Infinity
  ) {
    this.nearness = length_m / bait_m;
    this.reach = length_m * PX_PER_M;
    this.at = from;
    this.turned_deg = taken_deg;
  }

  /** Where the rod is wanted when the pointer has come here, degrees. */
  moveTo(pointer: Spot): number {
    const right = pointer.x - this.at.x;
    const up = this.at.y - pointer.y;
    this.at = pointer;
    const steps = Math.max(1, Math.ceil(Math.hypot(right, up) / STEP_PX));
    for (let i = 0; i < steps; i++) this.turn(right / steps, up / steps);
    return this.turned_deg;
  }

  /** By the angle half way through the step. */
  private turn(right: number, up: number): void {
    const turnAt = (deg: number) => {
      const share = this.plane === 'lift' ? liftShare(deg) : sweepShare(deg, this.nearness);
      return radToDeg((right * share.right + up * share.up) / this.reach);
    };
    this.turned_deg += turnAt(this.turned_deg + turnAt(this.turned_deg) / 2);
  }
}

/** A pointer's way is followed in steps of so many px: in longer ones a turn would cut its corners. */
const STEP_PX = 2;

/** How much of a step to the right, and of one up, turns the rod: together, all of a step along the tip's arc. */
interface TurnShare {
  readonly right: number;
  readonly up: number;
}

/** A tip that points backward is not told to spin by what goes beside it, degrees. */
const FARTHEST_BACK_DEG = 120;

/** All of what goes up, and of what goes across as much as makes up the arc. */
function liftShare(deg: number): TurnShare {
  const within = Math.min(Math.max(deg, -FARTHEST_BACK_DEG), FARTHEST_BACK_DEG);
  return { right: Math.tan(degToRad(within) / 2), up: 1 };
}

/** Nearer to pointing at the bait than this a tip that goes across hardly comes away from it: sin 30°. */
const LEAST_ACROSS = 0.5;

/** What goes across as the tip does; pointing at the bait, or away from it, also what goes up. */
function sweepShare(deg: number, nearness: number): TurnShare {
  const [across, ahead] = [Math.sin(degToRad(deg)), Math.cos(degToRad(deg))];
  const right = Math.sign(across || 1) / Math.max(Math.abs(across), LEAST_ACROSS);
  // Of the tip's way to the right, what it comes away from the bait: tipOf, differentiated.
  const away = Math.hypot(1 - nearness * ahead, nearness * across);
  const up = Math.abs(across) >= LEAST_ACROSS ? 0 : (1 - right * across) / ahead;
  return { right: right * away, up };
}

const radToDeg = (rad: number): number => (rad * 180) / Math.PI;

/** A phone as a rod, which knows how far it was turned but not from where: pulled up, or aside, it goes round as far. */
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
  /** Whether its task begins by lowering it. */
  readonly isLowered?: boolean;
}

export function gripOn(
  { plane, setup, isFromDeck }: Pick<HeldRod, 'plane' | 'setup' | 'isFromDeck'>,
  from: Spot,
  taken_deg: number
): Pick<Grip, 'moveTo'> {
  const grip = new Grip(from, plane, setup.rod.length_m, taken_deg, Math.abs(setup.start.bait_x_m));
  if (!isFromDeck) return grip;
  // Foreshortened: what counts is how far it is pulled up, or aside.
  return {
    moveTo: ({ x, y }) => grip.moveTo(plane === 'lift' ? { x: from.x, y } : { x, y: from.y })
  };
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

/** Whether a rod is pulled up the page or to the right. */
export function isPulledUp({ plane }: Pick<HeldRod, 'plane'>): boolean {
  return plane === 'lift';
}

/** Which way on the page a rod is first pulled. */
export type DragWay = 'up' | 'right' | 'down';

export function dragWayOf(rod: Omit<HeldRod, 'setup'>): DragWay {
  if (rod.isLowered) return 'down';
  return isPulledUp(rod) ? 'up' : 'right';
}

/** Arrows on the buttons of a rod, as a finger drags it; paths in a square of 16. */
export const ARROW_PATHS: Record<'up' | 'right', Record<1 | -1 | 'fast', string>> = {
  up: { 1: 'M3 11 8 5l5 6', '-1': 'M3 5l5 6 5-6', fast: 'M3 8 8 2l5 6M3 14 8 8l5 6' },
  right: { 1: 'M5 3l6 5-6 5', '-1': 'M11 3 5 8l6 5', fast: 'M2 3l6 5-6 5M8 3l6 5-6 5' }
};

const PULLED: Record<DragWay, (px: number) => Spot> = {
  up: (px) => ({ x: 0, y: -px }),
  right: (px) => ({ x: px, y: 0 }),
  down: (px) => ({ x: 0, y: px })
};

/**
 * How far a pointer goes, straight the way it pulls, for so much of the tip's way, px: halved
 * down to what no screen shows. Null for more than a phone is wide.
 */
export function pullFor(rod: HeldRod, way_m: number): number | null {
  const hand = { x: 0, y: 0 };
  const start_deg = rod.start[movedAngle(rod.plane)];
  const to = PULLED[dragWayOf(rod)];
  const asked = rod.isLowered ? -1 : 1;
  const isEnough = (px: number) =>
    asked * wayAt(rod, gripOn(rod, hand, start_deg).moveTo(to(px))) >= way_m;
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

/** Which way a key turns the reel, or 0. */
export function reelDirection(key: string): -1 | 0 | 1 {
  if (key === ']') return 1;
  return key === '[' ? -1 : 0;
}

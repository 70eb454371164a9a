import { parseScenario, parseSetup, type RodAngles, type RodInput, type Setup } from '$lib/model';
import { FIRST_GEAR, setupOf, type Plane } from '$lib/sandbox';

/** A try as it is kept: what the hand did, and with what. What came of it the model knows. */
export interface KeptTry {
  readonly setup: Setup;
  readonly plane: Plane;
  readonly input: RodInput;
}

/** What free practice keeps: the water as it is, and the last tries, oldest first. */
export interface Water {
  readonly setup: Setup;
  readonly plane: Plane;
  readonly tries: readonly KeptTry[];
  readonly sees: Sees;
}

/** How much is seen in free practice. */
export type Sees = 'seen' | 'unseen';

/** Where it is kept: the part of the browser's Storage that is needed. */
export type Shelf = Pick<Storage, 'getItem' | 'setItem'>;

/** How long the rod is held after a try, s: a bait that is still sliding comes to rest. */
export const HOLD_S = 2;
/** Tries that are kept, and those of them that are drawn at once. */
export const MOST_TRIES = 20;
const MOST_GHOSTS = 5;

/** Where the rod points before a try: at the bait, or low and a little to the side. */
export const STARTS: Record<Plane, RodAngles> = {
  lift: { elevation_deg: 0, azimuth_deg: 0 },
  sweep: { elevation_deg: 10, azimuth_deg: 20 }
};

const KEY = 'feltfoot-water';

export function firstWater(): Water {
  return { setup: setupOf(FIRST_GEAR), plane: 'sweep', tries: [], sees: 'seen' };
}

export function withTry(water: Water, input: RodInput): Water {
  const { setup, plane, tries } = water;
  return { ...water, tries: [...tries, { setup, plane, input }].slice(-MOST_TRIES) };
}

/**
 * The last tries that may be drawn into this water: moved the same way over the same bottom from the
 * same place. Bait, line and slack may differ, which is what one compares.
 */
export function comparable({ setup, plane, tries }: Water): KeptTry[] {
  const place = ({ water, bottom, start }: Setup) =>
    JSON.stringify([water.depth_m, { ...bottom, friction: null }, start.bait_x_m]);
  return tries
    .filter((kept) => kept.plane === plane && place(kept.setup) === place(setup))
    .slice(-MOST_GHOSTS);
}

/** Returns whether it could be kept. */
export function saveWater(shelf: Shelf, water: Water): boolean {
  try {
    shelf.setItem(KEY, JSON.stringify(water));
    return true;
  } catch {
    return false;
  }
}

/** What was kept, as far as it can still be read; else the first water. */
export function loadWater(shelf: Shelf): Water {
  try {
    const text = shelf.getItem(KEY);
    return text === null ? firstWater() : readWater(JSON.parse(text));
  } catch {
    return firstWater();
  }
}

function readWater(kept: Partial<Record<keyof Water, unknown>>): Water {
  return {
    setup: parseSetup(kept.setup),
    plane: planeOf(kept.plane),
    sees: kept.sees === 'unseen' ? 'unseen' : 'seen',
    tries: Array.isArray(kept.tries) ? kept.tries.flatMap(readTry).slice(-MOST_TRIES) : []
  };
}

function readTry(kept: { setup?: unknown; plane?: unknown; input?: unknown }): KeptTry[] {
  try {
    const setup = parseSetup(kept.setup);
    const { move } = parseScenario({ ...setup, move: kept.input });
    return move.kind === 'rod_input' ? [{ setup, plane: planeOf(kept.plane), input: move }] : [];
  } catch {
    return [];
  }
}

function planeOf(kept: unknown): Plane {
  return kept === 'lift' ? 'lift' : 'sweep';
}

import { parseScenario, parseSetup, type RodAngles, type RodInput, type Setup } from '$lib/model';
import type { Shelf } from '$lib/shell';
import { FIRST_GEAR, setupOf, type Plane } from '$lib/sandbox';

/** A try as it is kept: what the hand did, and with what. What came of it the model knows. */
export interface WaterTry {
  readonly setup: Setup;
  readonly plane: Plane;
  readonly input: RodInput;
}

/** What free practice keeps: the water as it is, and the last tries, oldest first. */
export interface KeptWater {
  readonly setup: Setup;
  readonly plane: Plane;
  readonly tries: readonly WaterTry[];
  readonly sees: Sees;
}

/** How much is seen in free practice. */
export type Sees = 'seen' | 'unseen';

/** How long the rod is held after a try, s: a bait that is still sliding comes to rest. */
export const HOLD_S = 2;
/** Tries that are kept, and those of them that are drawn at once. */
export const MOST_TRIES = 20;
const MOST_GHOSTS = 5;

/** Where the rod points before a try: at the bait, or to the side as in a lesson, to be swept the same way. */
export const STARTS: Record<Plane, RodAngles> = {
  lift: { elevation_deg: 0, azimuth_deg: 0 },
  sweep: { elevation_deg: 0, azimuth_deg: 60 }
};

const KEY = 'feltfoot-water';

export function firstWater(): KeptWater {
  return { setup: setupOf(FIRST_GEAR), plane: 'sweep', tries: [], sees: 'seen' };
}

/** The same water with the gear that practice begins with. */
export function withStandardGear(setup: Setup): Setup {
  const { bait, line, rod } = setupOf(FIRST_GEAR);
  return { ...setup, bait, line, rod };
}

export function withTry(water: KeptWater, input: RodInput): KeptWater {
  const { setup, plane, tries } = water;
  return { ...water, tries: [...tries, { setup, plane, input }].slice(-MOST_TRIES) };
}

/**
 * The last tries that may be drawn into this water: moved the same way over the same bottom from the
 * same place. Bait, line and slack may differ, which is what one compares.
 */
export function comparable({ setup, plane, tries }: KeptWater): WaterTry[] {
  const place = ({ water, bottom, start }: Setup) =>
    JSON.stringify([water.depth_m, { ...bottom, friction: null }, start.bait_x_m]);
  return tries
    .filter((kept) => kept.plane === plane && place(kept.setup) === place(setup))
    .slice(-MOST_GHOSTS);
}

/** Returns whether it could be kept. */
export function saveWater(shelf: Shelf, water: KeptWater): boolean {
  try {
    shelf.setItem(KEY, JSON.stringify(water));
    return true;
  } catch {
    return false;
  }
}

/** What was kept, as far as it can still be read; else the first water. */
export function loadWater(shelf: Shelf): KeptWater {
  try {
    const text = shelf.getItem(KEY);
    return text === null ? firstWater() : readWater(JSON.parse(text));
  } catch {
    return firstWater();
  }
}

function readWater(kept: Partial<Record<keyof KeptWater, unknown>>): KeptWater {
  return {
    setup: parseSetup(kept.setup),
    plane: planeOf(kept.plane),
    sees: kept.sees === 'unseen' ? 'unseen' : 'seen',
    tries: Array.isArray(kept.tries) ? kept.tries.flatMap(readTry).slice(-MOST_TRIES) : []
  };
}

function readTry(kept: { setup?: unknown; plane?: unknown; input?: unknown }): WaterTry[] {
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

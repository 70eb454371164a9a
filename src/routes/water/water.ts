import { parseScenario, parseSetup, type RodAngles, type RodInput, type Setup } from '$lib/model';
import { FIRST_GEAR, setupOf, type Plane } from '$lib/sandbox';

/** What free practice keeps: the water, and the last tries in it as the hand made them. */
export interface Water {
  readonly setup: Setup;
  readonly plane: Plane;
  /** Oldest first. */
  readonly tries: readonly RodInput[];
}

/** Where it is kept: the part of the browser's Storage that is needed. */
export type Shelf = Pick<Storage, 'getItem' | 'setItem'>;

export const HOLD_S = 2;
export const MOST_TRIES = 6;

/** Where the rod points before a try: low and pointing at the bait, or a little to the side. */
export const STARTS: Record<Plane, RodAngles> = {
  lift: { elevation_deg: 0, azimuth_deg: 0 },
  sweep: { elevation_deg: 10, azimuth_deg: 20 }
};

const KEY = 'feltfoot-water';

export function firstWater(): Water {
  return { setup: setupOf(FIRST_GEAR), plane: 'sweep', tries: [] };
}

export function saveWater(shelf: Shelf, water: Water): void {
  shelf.setItem(KEY, JSON.stringify(water));
}

/** What was kept, as far as it can still be read; else the first water. */
export function loadWater(shelf: Shelf): Water {
  const text = shelf.getItem(KEY);
  if (text === null) return firstWater();
  try {
    return readWater(JSON.parse(text));
  } catch {
    return firstWater();
  }
}

function readWater(kept: Record<string, unknown>): Water {
  const setup = parseSetup(kept.setup);
  const tries = Array.isArray(kept.tries) ? kept.tries : [];
  return {
    setup,
    plane: kept.plane === 'lift' ? 'lift' : 'sweep',
    tries: tries.flatMap((input) => readable(setup, input)).slice(-MOST_TRIES)
  };
}

function readable(setup: Setup, input: unknown): RodInput[] {
  try {
    const { move } = parseScenario({ ...setup, move: input, hold_s: HOLD_S });
    return move.kind === 'rod_input' ? [move] : [];
  } catch {
    return [];
  }
}

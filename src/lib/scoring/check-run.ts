import {
  parseScenario,
  tipOf,
  tipPathOf,
  type Move,
  type RodAngles,
  type SetupInput
} from '../model';
import { DataError, inField } from './data-error';

/** How far from its start a move may take up the rod, m: what rounding an angle makes of it. */
const START_TOLERANCE_M = 1e-3;

export interface MoveFromStart {
  setup: SetupInput;
  start: RodAngles;
  move: Move;
  hold_s: number;
}

/**
 * Checks that a move can be made in its setup, and begins where `start` has the rod. Throws DataError
 * at `path`.
 */
export function checkMove({ setup, start, move, hold_s }: MoveFromStart, path: string): void {
  const scenario = inField(path, () => parseScenario({ ...setup, move, hold_s }));
  const first = { x: 0, z: 0 };
  const begin = { x: 0, z: 0 };
  inField(path, () => tipPathOf(scenario, scenario.move)).at(0, first);
  tipOf(scenario, start.elevation_deg, start.azimuth_deg, begin);
  const gap_m = Math.hypot(first.x - begin.x, first.z - begin.z);
  if (gap_m > START_TOLERANCE_M) {
    const reason = `must begin where start has the tip, which is ${gap_m.toFixed(3)} m away`;
    throw new DataError(path, move, reason);
  }
}

import type { Move, SetupInput } from '../../model';
import type { ShownRun } from '../lesson';
import { lowToTheSide, upright } from '../retrieves/moves';

/** A run with the rod low and to the side. */
export const lowRun = (setup: SetupInput, move: Move, hold_s = 3): ShownRun => ({
  setup,
  plane: 'sweep',
  start: lowToTheSide,
  move,
  hold_s
});

/** A run with the rod upright, from that angle on. */
export const uprightRun = (
  setup: SetupInput,
  from_deg: number,
  move: Move,
  hold_s = 3
): ShownRun => ({ setup, plane: 'lift', start: upright(from_deg), move, hold_s });

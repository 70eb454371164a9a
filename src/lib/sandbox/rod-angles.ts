import type { Move, RodAngles } from '$lib/model';
import { ROD_BUTTONS } from '$lib/scoring';
import type { HandStep } from './task-steps';

/** Which way a rod is turned: up the clock, or low and sideways. */
export type Plane = 'lift' | 'sweep';

/** The angle of the two that a hand moves in this plane. */
export function movedAngle(plane: Plane): keyof RodAngles {
  return plane === 'lift' ? 'elevation_deg' : 'azimuth_deg';
}

/** The plane that a move is made in: a hand's is told by the angle that was recorded. */
export function planeOf(move: Move): Plane {
  if (move.kind === 'rod_input') return Array.isArray(move.azimuth_deg) ? 'sweep' : 'lift';
  const steps: readonly { kind: string }[] = move.kind === 'sequence' ? move.moves : [move];
  return steps.some(({ kind }) => kind === 'sweep') ? 'sweep' : 'lift';
}

/** How far a hand can turn the rod. Below level a lift's tip nears the water, behind upright it ends. */
export const ROD_LIMITS = {
  lift: { least_deg: -15, most_deg: 105 },
  sweep: { least_deg: -100, most_deg: 100 }
} as const;

export { ROD_BUTTONS };
/** What the buttons are called that take line in, or give it. */
export const REEL_BUTTONS: Record<1 | -1, string> = { 1: 'Reel in', '-1': 'Let out' };

/** What the button is called that does a step. */
export function buttonOf(does: HandStep, plane: Plane): string {
  if (does === 'in' || does === 'out') return REEL_BUTTONS[does === 'in' ? 1 : -1];
  if (does === 'down') return ROD_BUTTONS[plane][-1];
  return ROD_BUTTONS[plane][does === 'snap' ? 'fast' : 1];
}

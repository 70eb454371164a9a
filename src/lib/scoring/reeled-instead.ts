import { FOOT_M, type Result } from '../model';
import { advisedTask, type Challenge } from './challenge';
import { formatLength, type Units } from './display';
import { DRAGGED_M } from './goals';
import type { GradedRun } from './grade';
import { tipTravel } from './run-measures';

/** A tip that went no farther has lifted nothing: the reel's pull alone bends a rod as much, m. */
const NO_LIFT_M = 0.1;

/** What to tell who reeled where the rod was to move the jig, or nothing was to move it yet. */
export interface ReeledInstead {
  /** What the reel did, where the rod did next to nothing; else null. */
  did: string | null;
  /** What to change. */
  change: string;
}

/** Null where the reel was left alone, or has its part in the task. */
export function reeledInstead(
  challenge: Challenge,
  { result, grade }: GradedRun,
  units: Units
): ReeledInstead | null {
  if (grade.goals.every(({ met }) => met === 1)) return null;
  const kinds = new Set(challenge.goals.map(({ kind }) => kind));
  const { line_m, drawn_m } = grade.reeledFirst;
  const way = formatLength(drawn_m, units);
  if (kinds.has('strike')) {
    if (drawn_m < FOOT_M) return null;
    const when = isBitten(result) ? 'before anything bit' : 'while you waited';
    return { did: `The reel brought the jig ${way} ${when}.`, change: UNTIL_BITE };
  }
  if (advisedTask(challenge).isReeled) return null;
  const isAlone = tipTravel(result) < NO_LIFT_M;
  if (kinds.has('bottom_first')) {
    if (line_m < FOOT_M) return null;
    const reeled = `You reeled in ${formatLength(line_m, units)}, and never lowered the rod.`;
    return { did: isAlone ? reeled : null, change: ON_THE_FALL };
  }
  if (!kinds.has('hops') || drawn_m <= DRAGGED_M) return null;
  return { did: isAlone ? `The reel moved the jig ${way}: no hop.` : null, change: ROD_MOVES };
}

const UNTIL_BITE = 'Leave the reel alone until it bites.';
const ON_THE_FALL = 'Leave the reel alone: it stops the fall.';
const ROD_MOVES = 'Leave the reel alone: the rod moves the jig.';

function isBitten({ events }: Pick<Result, 'events'>): boolean {
  return events.some(({ kind }) => kind === 'bite');
}

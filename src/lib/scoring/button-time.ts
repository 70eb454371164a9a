import { parseSetup } from '../model';
import type { Challenge } from './challenge';
import { BEAT_S, needsSeveralMoves, type Correction } from './correction';
import { COUNTED_FROM_S, type SpokenStep } from './spoken-move';

/** The correction in the time that the task’s own button takes for it, where slower than the shortest does it too. */
export function inButtonTime(challenge: Challenge, correction: Correction): Correction {
  const { move, tipTravel_m, isSlowToo } = correction;
  const pace_m_s = buttonPace(challenge);
  if (!isSlowToo || pace_m_s === null || (move.kind !== 'sweep' && move.kind !== 'lift'))
    return correction;
  const held_s = Math.round(tipTravel_m / pace_m_s / BEAT_S) * BEAT_S;
  const duration_s = Math.max(correction.duration_s, held_s);
  return { ...correction, duration_s, move: { ...move, duration_s } };
}

/** The one pull of a task, as its own move makes it, in the time that its button takes: not let go short of it. */
export function stepInButtonTime(challenge: Challenge, step: SpokenStep): SpokenStep {
  const pace_m_s = buttonPace(challenge);
  const isPull = step.kind === 'turn' && step.isAway && step.time_s >= COUNTED_FROM_S;
  if (!isPull || pace_m_s === null || needsSeveralMoves(challenge)) return step;
  return { ...step, time_s: Math.ceil(step.way_m / pace_m_s / BEAT_S) * BEAT_S };
}

/** How quickly the challenge’s button moves the tip in its first pull, m/s; null where nothing is pulled. */
function buttonPace(challenge: Pick<Challenge, 'setup' | 'reference'>): number | null {
  const { reference } = challenge;
  const parts = reference.kind === 'sequence' ? reference.moves : [reference];
  for (const part of parts) {
    if ((part.kind !== 'lift' && part.kind !== 'sweep') || part.to_deg <= part.from_deg) continue;
    const turn_rad = ((part.to_deg - part.from_deg) * Math.PI) / 180;
    return (turn_rad * parseSetup(challenge.setup).rod.length_m) / part.duration_s;
  }
  return null;
}

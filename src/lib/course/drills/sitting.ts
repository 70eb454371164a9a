import { DataError, parseChallenge, type Challenge, type Phase } from '../../scoring';
import { FRESH_TASKS, ORDER, PHASES, TASKS_IN_TURN, TRIES } from '../phases';
import { seededRandom } from '../../model';
import { shuffled } from '../items/draw';
import type { Condition, Drill } from './drill';

/** A sitting is one drill in one phase; the seed decides its tasks and their order. */
export interface Sitting {
  drill: string;
  phase: Phase;
  seed: number;
}

const LARGEST_SEED = 999_999;
const ID = /^([a-z]+)-(seen|half-seen|unseen|kept)-(\d{1,6})-(\d{1,2})$/;

/** The ids of a sitting's challenges in the order of its tries. Each says all that is needed to make it again. */
export function idsOf({ drill, phase, seed }: Sitting): string[] {
  if (!Number.isInteger(seed) || seed < 0 || seed > LARGEST_SEED) {
    throw new DataError('seed', seed, `must be a whole number from 0 to ${LARGEST_SEED}`);
  }
  const start = `${drill}-${phase.replace('_', '-')}-${seed}`;
  return Array.from({ length: TRIES[phase] }, (_, i) => `${start}-${i + 1}`);
}

/** The challenge of that id, or undefined where no drill has such a one. */
export function drillChallenge(id: string, drills: readonly Drill[]): Challenge | undefined {
  const [, name, phaseName, seed, place] = ID.exec(id) ?? [];
  const drill = drills.find((one) => one.id === name);
  const phase = PHASES.find((one) => one.replace('_', '-') === phaseName);
  if (!drill || !phase) return undefined;
  const condition = conditionsOf(drill, phase, Number(seed))[Number(place) - 1];
  if (!condition) return undefined;
  const visibility = phase === 'kept' ? 'unseen' : phase;
  return parseChallenge({ ...condition(), id, visibility, phase });
}

/** Every try's task. Random sittings go through all tasks before any comes again. */
function conditionsOf(drill: Drill, phase: Phase, seed: number): Condition[] {
  const random = seededRandom(seed);
  const tries = TRIES[phase];
  const order = ORDER[phase];
  if (order !== 'random') {
    return inTurn(shuffled(random, drill.practised).slice(0, TASKS_IN_TURN[order]), tries);
  }
  const fresh = phase === 'kept' ? drill.fresh.slice(0, FRESH_TASKS) : [];
  const rounds = Math.ceil(tries / drill.practised.length);
  const all = Array.from({ length: rounds }, () => shuffled(random, drill.practised)).flat();
  return shuffled(random, [...all.slice(0, tries - fresh.length), ...fresh]);
}

function inTurn(conditions: readonly Condition[], tries: number): Condition[] {
  return Array.from({ length: tries }, (_, i) => conditions[i % conditions.length]);
}

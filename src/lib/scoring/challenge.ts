import type { Bite, GroundKind, Move, RodAngles, SetupInput } from '../model';
import type { AdvisedTask, WeightedGoal } from './goals';
import type { OwnSpread } from './unknowns';

/** How much of the bait the learner sees while the hand moves. */
export type Visibility = 'seen' | 'half_seen' | 'unseen';

/** How far a learner is with a skill: the three above, then unseen again on a later day. */
export type Phase = Visibility | 'kept';

/** A task that can be graded: data, JSON-able, checked by parseChallenge. */
export interface Challenge {
  id: string;
  title: string;
  /** What to do, in one sentence. */
  ask: string;
  /** Water, bottom, gear and line: a scenario without its move. */
  setup: SetupInput;
  /** The way the rod is turned: upright or low to the side. */
  plane: 'lift' | 'sweep';
  /** Where the rod points before the try. */
  start: RodAngles;
  /** How long the rod is held still after the move before the try is graded, s. */
  hold_s: number;
  /** Weights are whole numbers that sum to 100. */
  goals: WeightedGoal[];
  visibility: Visibility;
  /** Left out, it is the one that `visibility` says. */
  phase?: Phase;
  /** A rest of hand and bait shorter than this belongs to the try and does not end it, s. */
  longest_pause_s?: number;
  /** Bites come at a time between these, or not at all, see course/nth-try.ts; s. */
  bite_between_s?: [number, number];
  /** What scores as the reference does where nothing bites; left out, it only waits. */
  if_blank?: Move;
  /** The reference of a try in which something bites, where in this one nothing does: what it takes looks the same. */
  if_bitten?: Move;
  /** What would bite where in this one nothing does; left out, it is the one of `setup`. */
  fish?: Bite['kind'];
  /** Each try has one of these bottoms, and is not told which: how far the bait is brought says it. */
  look_alikes?: LookAlike[];
  /** What is left open of gear whose own numbers are known; left out, what nobody knows of any gear. */
  spread?: OwnSpread;
  /** A move that must score at least REFERENCE_MARK. */
  reference: Move;
  /** The move of a hand that does not know yet: must score less than PASS_MARK. */
  beginner: Move;
}

/** A bottom, how far the bait is to be brought on it, m, and a move that does it. */
export interface LookAlike {
  ground: GroundKind;
  travel_m: number;
  reference: Move;
}

/** What may bite in a try of it, whether in this one something does or not; undefined where nothing is waited for. */
export function fishOf({
  fish,
  setup
}: Pick<Challenge, 'fish' | 'setup'>): Bite['kind'] | undefined {
  return fish ?? setup.bites?.[0]?.kind;
}

/** What advice has to know of it beside its goals. */
export function advisedTask(challenge: Challenge): AdvisedTask {
  const { plane, if_bitten, reference } = challenge;
  const move = if_bitten ?? reference;
  const isReeled = move.kind === 'sequence' && move.moves.some(({ kind }) => kind === 'reel');
  return { plane, fish: fishOf(challenge), isReeled };
}

export function phaseOf({ phase, visibility }: Pick<Challenge, 'phase' | 'visibility'>): Phase {
  return phase ?? visibility;
}

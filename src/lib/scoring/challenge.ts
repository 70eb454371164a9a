import type { Move, RodAngles, SetupInput } from '../model';

/** What a try is graded for. SI units; `weight` (see below) says how many of the 100 marks it carries. */
export type Goal = DragGoal | RetrieveGoal;

/** What a single move along the bottom, or a row of hops, is graded for. */
export type DragGoal =
  /** Bait travel towards the angler: full marks where |travel − target| ≤ band. */
  | { kind: 'travel'; target_m: number; band_m: number }
  /** Highest clearance above the bottom. */
  | { kind: 'peak_height'; most_m: number }
  /** Share of the bait's moving time that it touched the bottom, 0–1. */
  | { kind: 'contact'; least: number }
  /** Fastest tenth of a second of the bait along the bottom. */
  | { kind: 'speed'; most_m_s: number }
  /** So many hops, each as high as `height_m` says (lowest, highest). */
  | { kind: 'hops'; count: number; height_m: [number, number] }
  /** Stones to touch, by their index in the setup's bottom. */
  | { kind: 'stones'; touched: number[] };

/** What the other retrieves are graded for. Ranges are lowest, then highest. */
export type RetrieveGoal =
  /** Mean speed of the bait along the bottom while it moved. */
  | { kind: 'pace'; m_s: [number, number] }
  /** Share of the bait's level way, 0–1, made at this height above the bottom. */
  | { kind: 'swim'; height_m: [number, number]; least: number }
  /** The bait never gets further than this from where it lay. */
  | { kind: 'stayed'; most_m: number }
  /** So many times the tip draws and gives back line. */
  | { kind: 'twitches'; count: number }
  /** So many rests of the bait between its moves, each so long or longer. */
  | { kind: 'rests'; count: number; least_s: number }
  /** Longest over shortest time between hops: near one, or not. */
  | { kind: 'rhythm'; even: boolean }
  /** The rod waits until the bait is down, and then not longer than this. */
  | { kind: 'bottom_first'; within_s: number }
  /** Pull of the line at the tip at the end. */
  | { kind: 'tight'; least_N: number }
  /** How far a falling bait swings towards the angler, at most. */
  | { kind: 'swing'; most_m: number }
  /** The snag lets go, and the hook was not driven home. */
  | { kind: 'freed' }
  /** The rod sweeps firmly after the bite, no later than this. */
  | { kind: 'strike'; within_s: number };

export type GoalKind = Goal['kind'];
export type WeightedGoal = Goal & { weight: number };

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
  /** A move that must score at least REFERENCE_MARK. */
  reference: Move;
  /** The move of a hand that does not know yet: must score less than PASS_MARK. */
  beginner: Move;
}

export function phaseOf({ phase, visibility }: Pick<Challenge, 'phase' | 'visibility'>): Phase {
  return phase ?? visibility;
}

/** Marks of 100 from which a challenge counts as passed. */
export const PASS_MARK = 70;
/** Least marks of a challenge's own reference move. */
export const REFERENCE_MARK = 95;

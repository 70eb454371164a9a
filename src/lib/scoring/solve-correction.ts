import {
  parseSetup,
  simulateScenario,
  type Move,
  type Result,
  type Scenario,
  type Setup,
  type SetupInput
} from '../model';
import type { Challenge } from './challenge';
import { BEAT_S, needsSeveralMoves, QUICK_PACE, type Correction } from './correction';
import { travelGoalOf, type TravelGoal } from './goals';
import type { Grade } from './grade';
import { gradeRun } from './grader';
import { handRun } from './hand-run';
import { regulaFalsi } from './regula-falsi';
import { tipTravel } from './run-measures';
import { singleMove, widestTurn } from './single-move';
import { bandOf } from './unknowns';

/** The slowest drag of the trade, about a third of a foot a second: where the search begins, m/s. */
const SLOW_TRAVEL_M_S = 0.1;
/** Tries at that pace and then at half of it each time, before the move is given up as impossible. */
const SLOWER_ROUNDS = 3;
/** Hit the target this much closer than its band asks: less than an inch is rounded to. */
const AIM_PART_OF_BAND = 0.1;
/** And pass this much slower. */
const UNHURRIED_PACE = 1.5;
/** "Slowly" is said where the same turn in so many times its duration gets full marks. */
const SLOW_PACE = 3;
/** How much further the tip is moved to see what an inch of tip is worth at the bait. */
const PROBE_PART = 0.1;
/** A bait that gains less than this part of what the tip gains is held by the bottom. */
const HELD_PART = 0.25;

interface Turn {
  turn_deg: number;
  duration_s: number;
}

/**
 * Finds the single sweep or lift that gets full marks in the challenge's own water, or in `setup`:
 * first the turn that brings the bait to the target, slowly, then the shortest time that still meets
 * all goals, whatever slower would do. Null where there is no travel to aim at, or no smooth single move does it. About
 * twenty-five runs of the model. Throws ScenarioError for a setup that cannot be run.
 */
export function solveCorrection(
  challenge: Challenge,
  setup: SetupInput = challenge.setup
): Correction | null {
  const goal = travelGoalOf(challenge);
  const widest = widestTurn(challenge);
  if (!goal || widest <= 0 || needsSeveralMoves(challenge)) return null;
  const search = new Search(challenge, parseSetup(setup), goal, widest);
  const slow = search.slowTurn();
  return slow && search.correctionOf(search.shortestFrom(slow));
}

class Search {
  private readonly results = new Map<string, Result>();

  constructor(
    private readonly challenge: Challenge,
    readonly setup: Setup,
    private readonly goal: TravelGoal,
    private readonly widest_deg: number
  ) {}

  /** A turn that meets all goals at an unhurried pace. */
  slowTurn(): Turn | null {
    const beats = Math.ceil(this.goal.target_m / SLOW_TRAVEL_M_S / BEAT_S);
    for (let round = 0; round < SLOWER_ROUNDS; round++) {
      const turn = this.turnIn(beats * 2 ** round * BEAT_S, this.widest_deg);
      if (turn === null) return null;
      if (this.meets(turn)) return turn;
    }
    return null;
  }

  /** Halves the number of beats between what is too quick and what does it. */
  shortestFrom(slow: Turn): Turn {
    let best = slow;
    let tooQuick = 0;
    while (best.duration_s / BEAT_S - tooQuick > 1) {
      const beats = Math.floor((tooQuick + best.duration_s / BEAT_S) / 2);
      const turn = this.turnIn(beats * BEAT_S, best.turn_deg * (1 + PROBE_PART));
      if (turn !== null && this.meets(turn)) best = turn;
      else tooQuick = beats;
    }
    return best;
  }

  correctionOf(turn: Turn): Correction {
    const { duration_s, turn_deg } = turn;
    const result = this.run(turn);
    const move = this.moveOf(turn);
    const further = this.run({ duration_s, turn_deg: turn_deg * (1 + PROBE_PART) });
    const gained_m = further.travel_m - result.travel_m;
    // A bait that a pebble holds gains nothing from a little more tip, which says nothing of the way.
    const isHeld = gained_m < HELD_PART * PROBE_PART * result.travel_m;
    const tipPerBait = isHeld
      ? this.tipOf(result) / result.travel_m
      : (this.tipOf(further) - this.tipOf(result)) / gained_m;
    const scenario = { ...this.setup, move, hold_s: this.challenge.hold_s };
    const travel = (one: Scenario) => simulateScenario(one).travel_m;
    const spread_m = bandOf(scenario, travel, this.challenge.spread).half;
    return {
      tipTravel_m: this.tipOf(result),
      band_m: spread_m * tipPerBait,
      duration_s,
      isSlowToo: this.meetsAll({ turn_deg, duration_s: SLOW_PACE * duration_s }),
      move,
      result
    };
  }

  /** How far the hand moved the tip, m. */
  private tipOf(result: Result): number {
    return tipTravel(handRun(this, result));
  }

  /** The turn that brings the bait to the target in this time. */
  private turnIn(duration_s: number, likelyMost_deg: number): Turn | null {
    const miss = (turn_deg: number) =>
      this.run({ turn_deg, duration_s }).travel_m - this.goal.target_m;
    const tolerance = AIM_PART_OF_BAND * this.goal.band_m;
    const still = { x: 0, y: -this.goal.target_m };
    for (const most of [likelyMost_deg, this.widest_deg]) {
      const high = { x: Math.min(most, this.widest_deg), y: 0 };
      high.y = miss(high.x);
      if (high.y < 0) continue;
      const turn_deg = regulaFalsi(miss, still, high, tolerance);
      return turn_deg === null ? null : { turn_deg, duration_s };
    }
    return null;
  }

  private meets({ turn_deg, duration_s }: Turn): boolean {
    const at = (pace: number): Turn => ({ turn_deg, duration_s: duration_s * pace });
    const isMet = [1, QUICK_PACE].every((pace) => this.meetsAll(at(pace)));
    return isMet && this.gradeOf(at(UNHURRIED_PACE)).passed;
  }

  private meetsAll(turn: Turn): boolean {
    return this.gradeOf(turn).goals.every(({ share }) => share === 1);
  }

  private gradeOf(turn: Turn): Grade {
    return gradeRun(this.challenge, { move: this.moveOf(turn), result: this.run(turn) });
  }

  private moveOf({ turn_deg, duration_s }: Turn): Move {
    return singleMove(this.challenge, turn_deg, duration_s);
  }

  private run({ turn_deg, duration_s }: Turn): Result {
    const key = `${turn_deg}/${duration_s}`;
    const known = this.results.get(key);
    if (known) return known;
    const move = this.moveOf({ turn_deg, duration_s });
    const result = simulateScenario({ ...this.setup, move, hold_s: this.challenge.hold_s });
    this.results.set(key, result);
    return result;
  }
}

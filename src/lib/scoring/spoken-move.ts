import { FOOT_M, INCH_M, parseSetup, tipOf, type Move, type SequenceStep } from '../model';
import type { Challenge } from './challenge';

/**
 * A move in steps as a guide says them: a lift to an hour or a half on the clock, or a little above or below
 * it, a sweep by whole inches of tip, line by half turns of the reel's handle, whole seconds. What is said is
 * what is run, so that advice can be followed to the letter; how quick "quickly" is, the run alone knows.
 */
export type SpokenStep =
  | { kind: 'turn'; isAway: boolean; way_m: number; time_s: number }
  /** A lift by where it ends on the clock, 0° is nine, 90° is twelve; and how far the tip goes to there. */
  | { kind: 'clock'; isAway: boolean; to_deg: number; way_m: number; time_s: number }
  /** The same where it alone matters when it begins: how far and how quickly is not said. */
  | { kind: 'begin'; isAway: boolean; to_deg: number; time_s: number }
  /** `isSpare`: longer than it takes, so that a count a little quick will do. */
  | { kind: 'rest'; time_s: number; isSpare: boolean }
  /** A rest that a bite ends: no count is said of it. */
  | { kind: 'bite'; time_s: number }
  /** At the pace of the reel's button. `isToLight`: slack, of which the buttons tell when it is gone. */
  | { kind: 'reel'; line_m: number; time_s: number; isToLight: boolean };

/**
 * A turn a second of a fast reel takes in about this much, m/s (common practice, no source: 30 to 32 in a
 * turn); line is given as fast. Slower, and no hand can swim a jig.
 */
export const REEL_M_S = 0.8;

/**
 * How fast the reel's button takes line in where slack is what it is to take: as the task's own move does, for a
 * thumb that lets go late; elsewhere as fast as a hand reels, m/s.
 */
export function slackPace({ goals, reference }: Pick<Challenge, 'goals' | 'reference'>): number {
  if (goals.every(({ kind }) => kind !== 'reeled') || reference.kind !== 'sequence')
    return REEL_M_S;
  const first = reference.moves.find((step) => step.kind === 'reel');
  return first ? Math.min(REEL_M_S, Math.abs(first.line_m) / first.duration_s) : REEL_M_S;
}
/** Line that one turn of the handle takes in, m: the same reel's. */
export const CRANK_M = 0.8;

/** "A little above ten" is a third of the way to half past: ten minutes on the rod's clock, degrees. */
const A_LITTLE_DEG = 5;
/** Done quicker than this it is not counted, s. */
export const COUNTED_FROM_S = 0.95;
/** A shorter rest nobody makes on purpose, s. */
const LEAST_REST_S = 0.3;
const HALF_INCHES_BELOW_M = FOOT_M / 4;
const HALF_FEET_FROM_M = 4 * FOOT_M;
const FEET_FROM_M = 10 * FOOT_M;
/** Turns of one length to so much are said as one and the same, m: two inches. */
const ALIKE_M = 2 * INCH_M;

type Rod = Pick<Challenge, 'setup' | 'plane' | 'start'>;
type Task = Rod & Pick<Challenge, 'goals' | 'reference'>;
type TurnMove = Extract<Move, { kind: 'sweep' | 'lift' }>;

/** The steps of a move of turns, rests and the reel; null for one that is none. */
export function spokenSteps(task: Task, move: Move): SpokenStep[] | null {
  const tip = new Tip(task);
  const steps: SpokenStep[] = [];
  const all = move.kind === 'sequence' ? move.moves : [move];
  const toBite = task.goals.some(({ kind }) => kind === 'strike')
    ? all.map(({ kind }) => kind).lastIndexOf('pause')
    : -1;
  const isToLight = task.goals.some(({ kind }) => kind === 'reeled');
  const pace_m_s = slackPace(task);
  let said_deg: number | null = null;
  for (const [i, step] of all.entries()) {
    if (step.kind === 'tip_path' || step.kind === 'rod_input') return null;
    const time_s = spokenTime(step.duration_s);
    if (i === toBite) steps.push({ kind: 'bite', time_s: step.duration_s });
    else if (step.kind === 'pause') {
      if (step.duration_s >= LEAST_REST_S)
        steps.push({
          kind: 'rest',
          time_s: restTime(step.duration_s),
          isSpare: isTimedOnly(task)
        });
    } else if (step.kind === 'reel') {
      steps.push(reelOf(step.line_m, pace_m_s, isToLight));
    } else if (step.from_deg !== step.to_deg) {
      const turn = turnOf(tip, step, time_s, said_deg ?? step.from_deg);
      said_deg = turn.kind === 'clock' ? turn.to_deg : null;
      steps.push(turn.kind === 'clock' && isTimedOnly(task) ? beginOf(turn) : turn);
    }
  }
  return alike(steadily(steps));
}

function isTimedOnly({ goals }: Pick<Challenge, 'goals'>): boolean {
  return goals.every(({ kind }) => kind === 'bottom_first');
}

/** A single turn by the way of its tip, which is what is said of one that was solved. */
export function singleTurn(rod: Rod, move: TurnMove): SpokenStep {
  const way_m = new Tip(rod).wayOf(move);
  return {
    kind: 'turn',
    isAway: way_m > 0,
    way_m: inInches(Math.abs(way_m)),
    time_s: move.duration_s
  };
}

type OnClock = Extract<SpokenStep, { kind: 'clock' }>;

function beginOf({ isAway, to_deg, time_s }: OnClock): SpokenStep {
  return { kind: 'begin', isAway, to_deg, time_s };
}

/** @param said_deg where the rod is by what was said before */
function turnOf(tip: Tip, step: TurnMove, time_s: number, said_deg: number): SpokenStep {
  const way_m = tip.wayOf(step);
  const isAway = way_m > 0;
  // A twitch has no place of its own on the clock.
  if (step.kind === 'sweep' || Math.abs(step.to_deg - step.from_deg) < A_LITTLE_DEG) {
    return { kind: 'turn', isAway, way_m: spokenLength(Math.abs(way_m)), time_s };
  }
  const to_deg = A_LITTLE_DEG * Math.round(step.to_deg / A_LITTLE_DEG);
  const said_m = Math.abs(tip.at(to_deg) - tip.at(said_deg));
  return { kind: 'clock', isAway, to_deg, way_m: spokenLength(said_m), time_s };
}

/** Reeled on is reeled once. */
function steadily(steps: readonly SpokenStep[]): SpokenStep[] {
  return steps.reduce<SpokenStep[]>((all, step) => {
    const before = all.at(-1);
    if (step.kind !== 'reel' || before?.kind !== 'reel') return [...all, step];
    const pace_m_s = Math.abs(before.line_m) / before.time_s;
    return [...all.slice(0, -1), reelOf(before.line_m + step.line_m, pace_m_s, step.isToLight)];
  }, []);
}

function reelOf(exact_m: number, pace_m_s: number, isToLight: boolean): SpokenStep {
  const halves = Math.max(1, Math.round((2 * Math.abs(exact_m)) / CRANK_M));
  // What a light tells is said in seconds alone.
  const line_m = isToLight ? exact_m : (Math.sign(exact_m) * halves * CRANK_M) / 2;
  return { kind: 'reel', line_m, time_s: Math.abs(line_m) / pace_m_s, isToLight };
}

/** Turns that differ by less than a hand can tell become the first of them. */
function alike(steps: readonly SpokenStep[]): SpokenStep[] {
  return steps.map((step) => {
    if (step.kind !== 'turn') return step;
    const first = steps.find(
      (one) =>
        one.kind === 'turn' &&
        one.isAway === step.isAway &&
        one.time_s === step.time_s &&
        Math.abs(one.way_m - step.way_m) <= ALIKE_M
    );
    return first ?? step;
  });
}

/** The move that the steps say, from the challenge's start. */
export function moveOfSteps(rod: Rod, steps: readonly SpokenStep[]): Move {
  const tip = new Tip(rod);
  const start_deg = rod.plane === 'lift' ? rod.start.elevation_deg : rod.start.azimuth_deg;
  let now_deg = start_deg;
  const turn = (to_deg: number, duration_s: number): SequenceStep => {
    const from_deg = now_deg;
    now_deg = to_deg;
    if (rod.plane === 'lift') return { kind: 'lift', from_deg, to_deg, duration_s };
    const { elevation_deg } = rod.start;
    return { kind: 'sweep', from_deg, to_deg, duration_s, elevation_deg };
  };
  const moves = steps.map((step): SequenceStep => {
    if (step.kind === 'rest' || step.kind === 'bite')
      return { kind: 'pause', duration_s: step.time_s };
    if (step.kind === 'reel') return { kind: 'reel', line_m: step.line_m, duration_s: step.time_s };
    if (step.kind === 'clock' || step.kind === 'begin') return turn(step.to_deg, step.time_s);
    const to_m = tip.at(now_deg) + (step.isAway ? step.way_m : -step.way_m);
    return turn(tip.angleAt(to_m), step.time_s);
  });
  // A rest or the reel first needs a rod that is held.
  const holds = moves[0].kind === 'pause' || moves[0].kind === 'reel';
  if (!holds) return { kind: 'sequence', moves };
  now_deg = start_deg;
  return { kind: 'sequence', moves: [turn(start_deg, 0.1), ...moves] };
}

function spokenTime(s: number): number {
  return s < COUNTED_FROM_S ? Math.max(1, Math.round(10 * s)) / 10 : Math.round(s);
}

/** Rests are asked at least so long: never less. */
function restTime(s: number): number {
  return s < COUNTED_FROM_S ? s : Math.ceil(s);
}

function spokenLength(m: number): number {
  if (m < HALF_FEET_FROM_M) return inInches(m);
  const grain_m = m < FEET_FROM_M ? FOOT_M / 2 : FOOT_M;
  return Math.round(m / grain_m) * grain_m;
}

function inInches(m: number): number {
  const grain_m = m < HALF_INCHES_BELOW_M ? INCH_M / 2 : INCH_M;
  return Math.round(m / grain_m) * grain_m;
}

/** Where the tip is along its way: an arc for a lift, the distance to the bait for a sweep. */
class Tip {
  private readonly setup;
  private readonly point = { x: 0, z: 0 };

  constructor(private readonly rod: Rod) {
    this.setup = parseSetup(rod.setup);
  }

  /** Way of the tip at this angle, m; more is further from the bait. */
  at(deg: number): number {
    if (this.rod.plane === 'lift') return (this.setup.rod.length_m * deg * Math.PI) / 180;
    tipOf(this.setup, this.rod.start.elevation_deg, deg, this.point);
    return -Math.sign(this.setup.start.bait_x_m) * this.point.x;
  }

  wayOf({ from_deg, to_deg }: TurnMove): number {
    return this.at(to_deg) - this.at(from_deg);
  }

  /** The angle at which the tip is so far along its way: halved down to far less than is said. */
  angleAt(way_m: number): number {
    let [low, high] = [0, 180];
    while (high - low > 1e-4) {
      const middle = (low + high) / 2;
      if (this.at(middle) < way_m) low = middle;
      else high = middle;
    }
    return (low + high) / 2;
  }
}

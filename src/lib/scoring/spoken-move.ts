import { FOOT_M, INCH_M, parseSetup, tipOf, type Move, type SequenceStep } from '../model';
import type { Challenge } from './challenge';
import { formatLength, formatTime, type Units } from './display';

/**
 * A move in steps as a guide says them: whole inches of tip or line, tenths of a second up to two
 * seconds and halves above. What is said is what is run, so that advice can be followed to the letter.
 */
export type SpokenStep =
  | { kind: 'turn'; isAway: boolean; way_m: number; time_s: number }
  | { kind: 'rest'; time_s: number }
  /** A rest that a bite ends: no count is said of it. */
  | { kind: 'bite'; time_s: number }
  | { kind: 'reel'; line_m: number; time_s: number };

/** More steps than this nobody keeps in mind. */
const MOST_STEPS = 5;
const HALVES_FROM_S = 2;
const HALF_INCHES_BELOW_M = FOOT_M / 4;

type Rod = Pick<Challenge, 'setup' | 'plane' | 'start'>;
type Task = Rod & Pick<Challenge, 'goals'>;

/** The steps of a move of turns, rests and the reel; null for one that is none. */
export function spokenSteps(task: Task, move: Move): SpokenStep[] | null {
  const tip = new Tip(task);
  const steps: SpokenStep[] = [];
  const all = move.kind === 'sequence' ? move.moves : [move];
  const toBite = task.goals.some(({ kind }) => kind === 'strike')
    ? all.map(({ kind }) => kind).lastIndexOf('pause')
    : -1;
  for (const [i, step] of all.entries()) {
    if (step.kind === 'tip_path' || step.kind === 'rod_input') return null;
    const time_s = spokenTime(step.duration_s);
    if (i === toBite) steps.push({ kind: 'bite', time_s: step.duration_s });
    else if (step.kind === 'pause') steps.push({ kind: 'rest', time_s });
    else if (step.kind === 'reel') {
      steps.push({ kind: 'reel', line_m: spokenLength(step.line_m), time_s });
    } else if (step.from_deg !== step.to_deg) {
      const way_m = tip.at(step.to_deg) - tip.at(step.from_deg);
      steps.push({ kind: 'turn', isAway: way_m > 0, way_m: spokenLength(Math.abs(way_m)), time_s });
    }
  }
  return steps;
}

/** The move that the steps say, from the challenge's start. */
export function moveOfSteps(rod: Rod, steps: readonly SpokenStep[]): Move {
  const tip = new Tip(rod);
  let now_deg = rod.plane === 'lift' ? rod.start.elevation_deg : rod.start.azimuth_deg;
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
    const to_m = tip.at(now_deg) + (step.isAway ? step.way_m : -step.way_m);
    return turn(tip.angleAt(to_m), step.time_s);
  });
  // A rest or the reel first needs a rod that is held.
  const holds = moves[0].kind === 'pause' || moves[0].kind === 'reel';
  const start_deg = rod.plane === 'lift' ? rod.start.elevation_deg : rod.start.azimuth_deg;
  if (!holds) return { kind: 'sequence', moves };
  now_deg = start_deg;
  return { kind: 'sequence', moves: [turn(start_deg, 0.1), ...moves] };
}

/** "Lift the tip 1 ft 4 in in 0.3 s, lower it 1 ft in 0.6 s."; null where that is too much to keep in mind. */
export function stepWords(plane: Rod['plane'], all: readonly SpokenStep[], units: Units) {
  const { steps, times } = repeated(all);
  if (steps.length > MOST_STEPS) return null;
  const said = steps.map((step) => {
    const time = formatTime(step.time_s);
    if (step.kind === 'rest') return `wait ${time}`;
    if (step.kind === 'bite') return 'wait for the bite';
    if (step.kind === 'reel') return `reel in ${formatLength(step.line_m, units)} in ${time}`;
    const [away, back] = plane === 'lift' ? ['lift', 'lower'] : ['move', 'turn back'];
    return `${step.isAway ? away : back} the tip ${formatLength(step.way_m, units)} in ${time}`;
  });
  const text = said.join(', ');
  const often = times > 1 ? `; ${times} times` : '';
  return `${text[0].toUpperCase()}${text.slice(1)}${often}.`;
}

/** The shortest run of steps of which all of them are repeats; the last may lack its rest. */
function repeated(all: readonly SpokenStep[]): { steps: readonly SpokenStep[]; times: number } {
  for (let length = 1; length < all.length; length++) {
    const isRepeat = all.every((step, i) => isAlike(step, all[i % length]));
    const times = Math.ceil(all.length / length);
    const lacksRest = all.length % length === 0 || all.length % length === length - 1;
    if (isRepeat && lacksRest && times > 1) return { steps: all.slice(0, length), times };
  }
  return { steps: all, times: 1 };
}

function isAlike(a: SpokenStep, b: SpokenStep): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}

function spokenTime(s: number): number {
  return s < HALVES_FROM_S ? Math.max(1, Math.round(10 * s)) / 10 : Math.round(2 * s) / 2;
}

function spokenLength(m: number): number {
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

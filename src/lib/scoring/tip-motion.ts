import { TICK_S, type Result } from '../model';

/** Smaller movements of the tip are tremble, or the rod ringing, m. */
const NOTICED_M = 0.005;
/** The bait has begun to move when it is this far from where it lay, m. */
const BAIT_MOVED_M = 0.005;
/** Speed is taken over this many ticks, as for the bait. */
const SPEED_TICKS = 10;
/** A tip that stands for so many ticks makes another move after it: half a second. */
const REST_TICKS = 50;

/** Of a tip that gets hardly anywhere so long before and after, the moment is a stop: an eighth of a second. */
const STOP_TICKS = 12;

/** How the tip moved. Distances are those of the line taken up: from tip to where the bait lay. */
export interface TipMotion {
  /** When the tip began to move, s. */
  start_s: number;
  /** Until it stood still, s. */
  duration_s: number;
  /** Of that, how long it moved: without its stops, s. */
  moving_s: number;
  /** Whether that was one move: it neither rested between nor came back. */
  isOne: boolean;
  /** Fastest tenth of a second, m/s. */
  peakSpeed_m_s: number;
  /** When in the motion that was, 0 at its start to 1 at its end. */
  peakAt: number;
  /** Line taken up between start and end, m; negative if the tip went towards the bait. */
  taken_m: number;
  /** Most line taken up at any time, of what it was at the start, m. */
  pulled_m: number;
  /** Most that was taken up and then given back, m. */
  gaveBack_m: number;
  /** How far it went towards the bait before it came back, m; 0 where it pulled first, or never came back. */
  forwardFirst_m: number;
  /** Line taken up before the bait moved, m. */
  takenBeforeBait_m: number;
}

/** What the hand did, read from the tip's trace. */
export function tipMotionOf({ trace }: Pick<Result, 'trace'>): TipMotion {
  const { tip_x_m: x, tip_z_m: z, bait_x_m: baitX, bait_z_m: baitZ } = trace;
  const last = x.length - 1;
  const apart = (i: number, k: number) => Math.hypot(x[i] - x[k], z[i] - z[k]);
  const taken = x.map((tipX, i) => Math.hypot(tipX - baitX[0], z[i] - baitZ[0]));
  const noticed = x.findIndex((_, i) => apart(i, 0) >= NOTICED_M);
  const start = Math.max(0, noticed);
  let end = last;
  while (end > start && apart(end - 1, last) < NOTICED_M) end--;
  const fastest = fastestStep(apart, last);
  const moved = baitX.findIndex((at) => Math.abs(at - baitX[0]) >= BAIT_MOVED_M);
  return {
    start_s: start * TICK_S,
    duration_s: (end - start) * TICK_S,
    moving_s: (end - start - stoodFor(apart, start, end)) * TICK_S,
    isOne: !rests(apart, start, end) && largestFall(taken) < NOTICED_M,
    peakSpeed_m_s: fastest.way_m / (SPEED_TICKS * TICK_S),
    peakAt: end > start ? (fastest.at - start) / (end - start) : 0,
    taken_m: taken[last] - taken[0],
    pulled_m: Math.max(...taken) - taken[0],
    gaveBack_m: largestFall(taken),
    forwardFirst_m: forwardFirst(taken),
    takenBeforeBait_m: taken[moved === -1 ? last : moved] - taken[0]
  };
}

function fastestStep(apart: (i: number, k: number) => number, last: number) {
  let fastest = { way_m: 0, at: 0 };
  for (let i = SPEED_TICKS; i <= last; i++) {
    const way_m = apart(i, i - SPEED_TICKS);
    if (way_m > fastest.way_m) fastest = { way_m, at: i - SPEED_TICKS / 2 };
  }
  return fastest;
}

function rests(apart: (i: number, k: number) => number, start: number, end: number): boolean {
  for (let i = start + REST_TICKS; i < end; i++)
    if (apart(i, i - REST_TICKS) < NOTICED_M) return true;
  return false;
}

/** Ticks between start and end in which the tip hardly moved. */
function stoodFor(apart: (i: number, k: number) => number, start: number, end: number): number {
  let ticks = 0;
  for (let i = start + STOP_TICKS; i < end - STOP_TICKS; i++)
    if (apart(i + STOP_TICKS, i - STOP_TICKS) < NOTICED_M) ticks++;
  return ticks;
}

function largestFall(values: readonly number[]): number {
  let highest = values[0];
  let fall = 0;
  for (const value of values) {
    highest = Math.max(highest, value);
    fall = Math.max(fall, highest - value);
  }
  return fall;
}

function forwardFirst(taken: readonly number[]): number {
  const lowest = Math.min(...taken);
  const at = taken.indexOf(lowest);
  const pulled_m = Math.max(...taken.slice(0, at + 1)) - taken[0];
  const back_m = Math.max(...taken.slice(at)) - lowest;
  const way_m = taken[0] - lowest;
  return pulled_m < NOTICED_M && back_m >= way_m / 2 ? way_m : 0;
}

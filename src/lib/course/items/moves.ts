import {
  clockHourToDeg,
  OUNCE_KG,
  ROD_RATE_HZ,
  type Move,
  type SequenceStep,
  type SetupInput
} from '../../model';
import type { ShownRun } from '../lesson';

/** A slow sweep's pace, s for each foot of tip: half a foot a second, which keeps most jigs down. Common practice, no source. */
export const SLOW_S_FT = 2;

/** Long enough after a move for a hop to come down and slide out, s. */
const HOLD_S = 3;
const RAD = Math.PI / 180;
/** The low rod stands this far round from the bait before a drag, degrees. */
const SWEEP_FROM_DEG = 45;

export function shownLift(
  setup: SetupInput,
  from_hour: number,
  to_hour: number,
  duration_s: number
): ShownRun {
  const [from_deg, to_deg] = [clockHourToDeg(from_hour), clockHourToDeg(to_hour)];
  return lifted(setup, { kind: 'lift', from_deg, to_deg, duration_s }, from_deg);
}

/** An even crank of the handle, s for each metre of line. */
const REEL_S_M = 2;

/** Lifts and comes down again at half the pace, `count` times, with a pause between; then takes in `reel_m` of line. */
export function shownHops(
  setup: SetupInput,
  from_hour: number,
  to_hour: number,
  pace_s: number,
  count: number,
  pause_s: number,
  reel_m = 0
): ShownRun {
  const [low, high] = [clockHourToDeg(from_hour), clockHourToDeg(to_hour)];
  const once: SequenceStep[] = [
    { kind: 'lift', from_deg: low, to_deg: high, duration_s: pace_s },
    { kind: 'lift', from_deg: high, to_deg: low, duration_s: pace_s * 2 },
    { kind: 'pause', duration_s: pause_s }
  ];
  const reeled: SequenceStep[] =
    reel_m > 0 ? [{ kind: 'reel', line_m: reel_m, duration_s: REEL_S_M * reel_m }] : [];
  const again = Array.from({ length: count - 1 }, () => [...reeled, ...once]);
  const moves = [...once, ...again.flat()];
  return lifted(setup, { kind: 'sequence', moves }, low);
}

function lifted(setup: SetupInput, move: Move, elevation_deg: number): ShownRun {
  return { setup, plane: 'lift', start: { elevation_deg, azimuth_deg: 0 }, move, hold_s: HOLD_S };
}

/**
 * A low sweep that takes the tip `tip_m` further from the bait, as the model has it: by the distance
 * between them, to which the way aside adds. Throws RangeError beyond the rod's reach.
 */
export function shownDrag(setup: SetupInput, tip_m: number, duration_s: number): ShownRun {
  const to_deg = azimuthAfter(setup, tip_m);
  return {
    setup,
    plane: 'sweep',
    start: { elevation_deg: 0, azimuth_deg: SWEEP_FROM_DEG },
    move: { kind: 'sweep', from_deg: SWEEP_FROM_DEG, to_deg, duration_s, elevation_deg: 0 },
    hold_s: HOLD_S
  };
}

/** Where the low rod points once its tip has come so much farther from the bait, degrees. */
function azimuthAfter(setup: SetupInput, tip_m: number): number {
  const reach_m = setup.rod?.length_m ?? 1.9;
  const out_m = Math.abs(setup.start.bait_x_m);
  const squares = out_m ** 2 + reach_m ** 2;
  const twice = 2 * out_m * reach_m;
  const from_m = Math.sqrt(squares - twice * Math.cos(SWEEP_FROM_DEG * RAD));
  const cosine = (squares - (from_m + tip_m) ** 2) / twice;
  if (Math.abs(cosine) > 1) throw new RangeError(`no sweep of this rod takes the tip ${tip_m} m`);
  return Math.acos(cosine) / RAD;
}

/** Until an even hand is at its pace, and from when it slows down again, s. */
const EVENING_S = 0.5;

/** The same at one even pace all along, as a steady hand drags: what the pull then shows is the bottom’s. */
export function shownEvenDrag(
  setup: SetupInput,
  tip_m: number,
  duration_s: number,
  hold_s: number
): ShownRun {
  const samples = Array.from({ length: Math.round(duration_s * ROD_RATE_HZ) + 1 }, (_, i) => {
    const to_m = tip_m * evenly(i / ROD_RATE_HZ, duration_s);
    return Math.round(100 * azimuthAfter(setup, to_m)) / 100;
  });
  return {
    setup,
    plane: 'sweep',
    start: { elevation_deg: 0, azimuth_deg: SWEEP_FROM_DEG },
    move: { kind: 'rod_input', rate_Hz: ROD_RATE_HZ, elevation_deg: 0, azimuth_deg: samples },
    hold_s
  };
}

/** The share of the way at that time: the pace grows and falls evenly at either end. */
function evenly(t_s: number, duration_s: number): number {
  const pace = 1 / (duration_s - EVENING_S);
  const toEnd_s = Math.min(EVENING_S, duration_s - t_s);
  if (t_s < EVENING_S) return (pace * t_s ** 2) / (2 * EVENING_S);
  return 1 - (pace * toEnd_s ** 2) / (2 * EVENING_S) - pace * (duration_s - t_s - toEnd_s);
}

/** The bait falls from the surface on a free spool, the rod held. */
export function fall(setup: SetupInput, hold_s: number): ShownRun {
  return fromSplash(setup, 'free', hold_s);
}

/** As `fall`, for longer than any such jig falls through this depth on any of the lines: an ounce needs 2 s a metre. */
export function fallToBottom(setup: SetupInput): ShownRun {
  const ounces = setup.bait.mass_kg / OUNCE_KG;
  return fall(setup, 3 + (2.6 * setup.water.depth_m) / Math.sqrt(ounces));
}

/** The reel is engaged at the splash: the bait swings down on a tight line, the rod held. */
export function swingDown(setup: SetupInput, hold_s: number): ShownRun {
  return fromSplash(setup, 'closed', hold_s);
}

function fromSplash(setup: SetupInput, spool: 'free' | 'closed', hold_s: number): ShownRun {
  const start = { bait_x_m: setup.start.bait_x_m, line: 'splash', spool } as const;
  const move = { kind: 'lift', from_deg: 10, to_deg: 10, duration_s: 0.1 } as const;
  return {
    setup: { ...setup, start },
    plane: 'lift',
    start: { elevation_deg: 10, azimuth_deg: 0 },
    move,
    hold_s
  };
}

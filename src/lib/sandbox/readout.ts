import { isOffBottom, type RunEvent, type Trace } from '$lib/model';
import {
  CRANK_M,
  formatBeside,
  formatLength,
  formatSpeed,
  tipTravel,
  type DrawnGoal,
  type Units
} from '$lib/scoring';
import type { Series } from './series';
import type { Backdrop } from './stage';

/** The numbers beside the pictures, SI. Null where nothing has been seen yet. */
export interface Readout {
  readonly t_s: number;
  readonly tip_m: number;
  readonly bait_m: number;
  readonly height_m: number;
  /** The highest so far, in a run that is shown again; 0 while a hand makes it. */
  readonly peak_m: number;
  readonly isTouching: boolean;
  /** Taken in by the reel; negative is given. */
  readonly line_in_m: number;
}

export const NOTHING_YET: Readout = {
  t_s: 0,
  tip_m: 0,
  bait_m: 0,
  height_m: 0,
  peak_m: 0,
  isTouching: true,
  line_in_m: 0
};

/** How things stand at the end of a run that goes on. */
export function readoutOf(trace: Trace, stage: Backdrop, line_in_m: number): Readout {
  const last = trace.t_s.length - 1;
  const x_m = trace.bait_x_m[last];
  const isTouching = trace.contact[last] === 1;
  return {
    t_s: trace.t_s[last],
    tip_m: tipTravel({ trace }),
    bait_m: Math.sign(stage.bait.x_m) * (stage.bait.x_m - x_m),
    height_m: isTouching ? 0 : trace.bait_z_m[last] - stage.heightAt(x_m),
    peak_m: 0,
    isTouching,
    line_in_m
  };
}

/** How far the bait has come, beside what is asked as the marks are. */
export function wayWords(
  { bait_m }: Pick<Readout, 'bait_m'>,
  { target, units }: Pick<Backdrop, 'target' | 'units'>
): string {
  const length = (m: number) => formatLength(m, units);
  return target?.travel_m ? formatBeside(bait_m, target.travel_m, length) : length(bait_m);
}

/** The jig's speed that is asked, in words: on the ruler of ways it would be read as a way. */
export function speedAsked({ target, units }: Pick<Backdrop, 'target' | 'units'>): string | null {
  if (!target?.speed_m_s) return null;
  const [slow, fast] = target.speed_m_s;
  const most = formatSpeed(fast, units);
  return slow > 0 ? `Jig: ${formatSpeed(slow, units)} to ${most}` : `Jig: ${most} at most`;
}

/** Less than this is nothing yet, m. */
export const SHOWN_M = 0.005;

/** A bait this near the surface is on it, as far as an eye can tell, m. */
const AT_SURFACE_M = 0.05;

/** Where in the water the bait is, as it's read beside the pictures. */
export function heightWords(
  { isTouching, height_m, peak_m }: Pick<Readout, 'isTouching' | 'height_m' | 'peak_m'>,
  depth_m: number,
  units: Units
): string {
  if (isTouching) {
    return isOffBottom(peak_m)
      ? `on the bottom, was ${formatLength(peak_m, units)} up`
      : 'on the bottom';
  }
  return height_m > depth_m - AT_SURFACE_M
    ? 'at the surface'
    : `${formatLength(height_m, units)} up`;
}

/** Line in turns of the reel's handle, as a fix has it: "0.5 turns". */
export function turnsWords(line_m: number): string {
  return `${(Math.abs(line_m) / CRANK_M).toFixed(1)} turns`;
}

/** How far all has gone, as it stands beside the pictures, for who hears the rod; '' where that is nothing. */
export function goneWords(readout: Readout, units: Units, isFromDeck: boolean): string {
  const { tip_m, bait_m, line_in_m } = readout;
  const length = (m: number) => formatLength(Math.abs(m), units);
  const isTold = !isFromDeck && tip_m >= SHOWN_M;
  const tip = isTold ? `, tip ${length(tip_m)}, jig ${length(bait_m)}` : '';
  if (Math.abs(line_in_m) < SHOWN_M) return tip;
  return `${tip}, reel ${length(line_in_m)} ${line_in_m > 0 ? 'taken in' : 'given'}`;
}

/** The bite from which on the bait's way is the fish's; Infinity where the way after it is what is asked. */
export function readoutUntil_s(events: readonly RunEvent[], target: DrawnGoal | null): number {
  if (target?.travel_m) return Infinity;
  return events.find(({ kind }) => kind === 'bite')?.t_s ?? Infinity;
}

/**
 * How things stood at a tick of a run that is shown again. What a fish takes along from its bite on is
 * not what the hand moved, here as in what is said of the try.
 */
export function readoutAt(
  series: Pick<Series, 't_s' | 'tipTravel_m' | 'baitTravel_m' | 'height_m' | 'contact'>,
  tick: number,
  line_in_m: number,
  bite_s = Infinity
): Readout {
  const bite = series.t_s.findIndex((t) => t >= bite_s);
  return {
    t_s: series.t_s[tick],
    tip_m: series.tipTravel_m[tick],
    bait_m: series.baitTravel_m[bite === -1 ? tick : Math.min(tick, bite)],
    height_m: series.height_m[tick],
    peak_m: peakSinceDown(series, tick),
    isTouching: series.contact[tick] === 1,
    line_in_m
  };
}

/** A bait that was let down is not lifted by its fall. */
function peakSinceDown({ height_m, contact }: Pick<Series, 'height_m' | 'contact'>, tick: number) {
  const down = contact.indexOf(1);
  if (down === -1) return 0;
  return height_m.slice(down, tick + 1).reduce((most, m) => Math.max(most, m), 0);
}

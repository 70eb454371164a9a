import { OFF_BOTTOM_M, isOffBottom, riseOver, TICK_S, type RunEvent, type Trace } from '$lib/model';
import {
  CRANK_M,
  formatLength,
  formatPace,
  formatTimesEach,
  formatWay,
  withUnit,
  handRun,
  hasTurnedBack,
  type DrawnGoal,
  type Units
} from '$lib/scoring';
import { tipSeriesOf, type Series } from './series';
import { shownLifts } from './shown-lifts';
import type { Backdrop } from './stage';

/** The numbers beside the pictures, SI. Null where nothing has been seen yet. */
export interface Readout {
  readonly t_s: number;
  readonly tip_m: number;
  /** From where the tip began, and how long it has moved. */
  readonly tip_off_m: number;
  readonly tip_s: number;
  readonly bait_m: number;
  /** Whether a fish has had it since: what it took along is not counted. */
  readonly isBitten: boolean;
  readonly height_m: number;
  /** The highest so far, in a run that is shown again; 0 while a hand makes it. */
  readonly peak_m: number;
  /** Whether it skipped along since it was down, too low to be a hop. */
  readonly hasSkipped: boolean;
  readonly isTouching: boolean;
  /** Taken in by the reel; negative is given. */
  readonly line_in_m: number;
}

export const NOTHING_YET: Readout = {
  t_s: 0,
  tip_m: 0,
  tip_off_m: 0,
  tip_s: 0,
  bait_m: 0,
  isBitten: false,
  height_m: 0,
  peak_m: 0,
  hasSkipped: false,
  isTouching: true,
  line_in_m: 0
};

/** How things stand at the end of a run that goes on. */
export function readoutOf(trace: Trace, stage: Backdrop, line_in_m: number): Readout {
  const last = trace.t_s.length - 1;
  const hand = handRun(stage, { trace });
  const x_m = trace.bait_x_m[last];
  const isTouching = shownLifts(trace, stage.heightAt).contact[last] === 1;
  const down = trace.contact.lastIndexOf(1);
  const takeOffZ_m = down === -1 ? -Infinity : trace.bait_z_m[down];
  const z_m = trace.bait_z_m[last];
  return {
    t_s: trace.t_s[last],
    ...tipNow(tipSeriesOf(hand.trace), last, stage),
    bait_m: Math.sign(stage.bait.x_m) * (stage.bait.x_m - x_m),
    isBitten: false,
    height_m: isTouching ? 0 : riseOver(z_m - stage.heightAt(x_m), z_m, takeOffZ_m),
    peak_m: 0,
    hasSkipped: false,
    isTouching,
    line_in_m
  };
}

type TipSeries = ReturnType<typeof tipSeriesOf>;

const tipAt = ({ tipTravel_m, tipOff_m, tipTime_s }: TipSeries, tick: number) => ({
  tip_m: tipTravel_m[tick],
  tip_off_m: tipOff_m[tick],
  tip_s: tipTime_s[tick]
});

/** A boat that drifts away drags the bait on under a rod that rests: while a hand makes the try, its time goes on. */
function tipNow(tip: TipSeries, last: number, { setup }: Backdrop) {
  const now = tipAt(tip, last);
  if (setup.drift_m_s >= 0 || now.tip_s === 0) return now;
  const begun = tip.tipTime_s.findIndex((s) => s > 0);
  return { ...now, tip_s: tip.tipTime_s[begun] + (last - begun) * TICK_S };
}

type TipReadout = Pick<Readout, 'tip_m' | 'tip_off_m' | 'tip_s'>;

/** What is said after the way of a tip that has come back, as it is counted. */
export const bothWays = ({ tip_m, tip_off_m }: Omit<TipReadout, 'tip_s'>): string =>
  hasTurnedBack(tip_off_m, tip_m) ? ' both ways' : '';

/** What a pace is held against. */
export const secondsWords = (time_s: number): string => withUnit(time_s.toFixed(1), 's');

/** After the tip's way: that it moved so, and for how long. */
export function tipWords(tip: TipReadout): string {
  const time = tip.tip_s > 0 ? `, ${secondsWords(tip.tip_s)}` : '';
  return `${bothWays(tip).trim() || 'moved'}${time}`;
}

/** What the figure of the bait's way is of: its place in the picture is where a fish left it. */
export function movedWords({ isBitten, bait_m }: Pick<Readout, 'isBitten' | 'bait_m'>): string {
  if (isBitten) return 'before the bite';
  return isAway(bait_m) ? '' : 'moved';
}

/** A bait that went away from the angler has a word for it, and no sign. */
const isAway = (bait_m: number): boolean => bait_m <= -SHOWN_M;

/** How far the bait has come, beside what is asked as the marks are. */
export function wayWords(
  { bait_m }: Pick<Readout, 'bait_m'>,
  { target, units }: Pick<Backdrop, 'target' | 'units'>
): string {
  if (isAway(bait_m)) return `${formatLength(-bait_m, units)} away`;
  return target?.travel_m ? formatWay(bait_m, target.travel_m, units) : formatLength(bait_m, units);
}

/**
 * The jig's limits while it moves, as an order: of its speed, which on the ruler of ways would be read as a way,
 * and, from the deck where no picture says it, of staying down.
 */
export function limitsAsked({
  target,
  units,
  isFromDeck
}: Pick<Backdrop, 'target' | 'units' | 'isFromDeck'>): string | null {
  const place = isFromDeck && target?.isOnBottom ? 'Stay on bottom' : null;
  if (!target?.speed_m_s) return place;
  const [slow, fast] = target.speed_m_s;
  if (slow > 0) {
    const times = formatTimesEach([slow, fast], units);
    return place ? `${place}, and take ${times}` : `Take ${times}`;
  }
  return `${place ? `${place},` : 'Stay'} slower than ${formatPace(fast, units)}`;
}

/** A flight that ends within a tick is over at it, s. */
const HALF_TICK_S = 0.5 * TICK_S;

/** Less than this is nothing yet, m. */
export const SHOWN_M = 0.005;

/** A bait this near the surface is on it, as far as an eye can tell, m. */
const AT_SURFACE_M = 0.05;

/** Where in the water the bait is, as it's read beside the pictures. */
export function heightWords(
  {
    isTouching,
    height_m,
    peak_m,
    hasSkipped
  }: Pick<Readout, 'isTouching' | 'height_m' | 'peak_m' | 'hasSkipped'>,
  depth_m: number,
  units: Units
): string {
  if (isTouching) {
    if (isOffBottom(peak_m)) return `on the bottom, was ${formatLength(peak_m, units)} up`;
    return hasSkipped ? 'on the bottom, skipped' : 'on the bottom';
  }
  if (height_m < OFF_BOTTOM_M) return 'just off the bottom';
  return height_m > depth_m - AT_SURFACE_M
    ? 'at the surface'
    : `${formatLength(height_m, units)} up`;
}

/** Line in turns of the reel's handle, as a fix has it: "0.5 turns". */
export function turnsWords(line_m: number): string {
  return withUnit((Math.abs(line_m) / CRANK_M).toFixed(1), 'turns');
}

/** How far all has gone, as it stands beside the pictures, for who hears the rod; '' where that is nothing. */
export function goneWords(readout: Readout, units: Units, isFromDeck: boolean): string {
  const { tip_m, bait_m, line_in_m } = readout;
  const length = (m: number) => formatLength(Math.abs(m), units);
  const isTold = !isFromDeck && tip_m >= SHOWN_M;
  const tip = isTold
    ? `, tip ${length(tip_m)}${bothWays(readout)}, jig ${length(bait_m)}${readout.isBitten ? ` ${movedWords(readout)}` : ''}`
    : '';
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
  series: Pick<Series, 't_s' | 'baitTravel_m' | 'height_m' | 'contact' | 'hops'> & TipSeries,
  tick: number,
  line_in_m: number,
  bite_s = Infinity
): Readout {
  const bite = series.t_s.findIndex((t) => t >= bite_s);
  return {
    t_s: series.t_s[tick],
    ...tipAt(series, tick),
    bait_m: series.baitTravel_m[bite === -1 ? tick : Math.min(tick, bite)],
    isBitten: bite !== -1 && tick > bite,
    height_m: series.height_m[tick],
    ...sinceDown(series, tick, bite_s),
    isTouching: series.contact[tick] === 1,
    line_in_m
  };
}

/** What is over of its flights until a bite; a bait that was let down is not lifted by its fall. */
function sinceDown(
  { t_s, contact, hops }: Pick<Series, 't_s' | 'contact' | 'hops'>,
  tick: number,
  bite_s: number
) {
  const down = contact.indexOf(1);
  const over =
    down === -1 ? [] : hops.filter(({ t_s: left_s }) => left_s >= t_s[down] && left_s < bite_s);
  const peak_m = over
    .filter((hop) => hop.t_s + hop.duration_s <= t_s[tick] + HALF_TICK_S)
    .reduce((most, { height_m }) => Math.max(most, height_m), 0);
  return { peak_m, hasSkipped: down !== -1 && contact.slice(down, tick + 1).includes(0) };
}

import { isOffBottom } from '$lib/model';
import type { Mark, Ruler } from '$lib/practice';
import { formatLength, type Units } from '$lib/scoring';
import type { PlotEdges, PlotTick } from '$lib/shell';
import { scaleLinear } from 'd3-scale';

/** The picture of a ruler, in the units of its drawing: what was meant to the right, what came of it up. */
export interface RulerPicture extends PlotEdges {
  /** Where what was meant is what was done. */
  truth: string;
  /** What the hand does, and the band in which it lies. */
  hand: string;
  band: string;
  points: readonly { id: string; x: number; y: number; isLifted: boolean }[];
  across: readonly PlotTick[];
  up: readonly PlotTick[];
}

const EDGE = { left: 62, right: 16, top: 28, bottom: 46 };
const FOOT_M = 0.3048;
const MOST_TICKS = 6;
/** Steps of an axis that are round for a learner, m. */
const STEPS: Record<Units, readonly number[]> = {
  imperial: [0.5, 1, 2, 3, 5, 10, 20].map((ft) => ft * FOOT_M),
  metric: [0.1, 0.2, 0.5, 1, 2, 5, 10]
};

/** Draws a ruler into a box of this size. */
export function pictureOf({ marks, bait }: Ruler, units: Units, width: number): RulerPicture {
  const height = Math.min(420, Math.max(280, width * 0.7));
  const mostMeant = 1.15 * Math.max(...marks.map(({ meant_m }) => meant_m));
  const mostDone = 1.08 * Math.max(mostMeant, ...marks.map(({ bait_m }) => bait_m));
  const x = scaleLinear([0, mostMeant], [EDGE.left, width - EDGE.right]);
  const y = scaleLinear([0, mostDone], [height - EDGE.bottom, EDGE.top]);
  const at = (meant: number, ratio: number) =>
    `${round(x(meant))} ${round(y(clamp(meant * ratio, mostDone)))}`;
  /** Cut off where it would leave the picture. */
  const ray = (ratio: number) =>
    at(ratio > 0 ? Math.min(mostMeant, mostDone / ratio) : mostMeant, ratio);
  const [low, high] = [Math.max(0, bait.value - bait.band), bait.value + bait.band];
  const start = at(0, 1);
  const corner = mostMeant * high > mostDone ? ` ${at(mostMeant, mostDone / mostMeant)}` : '';
  return {
    width,
    height,
    truth: `M${start}L${ray(1)}`,
    hand: `M${start}L${ray(bait.value)}`,
    band: `M${start}L${ray(high)}${low * mostMeant < mostDone ? corner : ''} ${ray(low)}Z`,
    points: spreadOut(marks).map(({ mark, aside }) => ({
      id: mark.id,
      x: round(x(mark.meant_m) + aside),
      y: round(y(clamp(mark.bait_m, mostDone))),
      isLifted: isOffBottom(mark.lift_m)
    })),
    across: ticks(mostMeant, units).map((m) => ({ at: round(x(m)), text: shortLength(m, units) })),
    up: ticks(mostDone, units).map((m) => ({ at: round(y(m)), text: shortLength(m, units) })),
    left: EDGE.left,
    right: width - EDGE.right,
    top: EDGE.top,
    bottom: height - EDGE.bottom
  };
}

/** Tries of one distance stand a little apart, so that none hides another. */
function spreadOut(marks: readonly Mark[]): { mark: Mark; aside: number }[] {
  const before = new Map<number, number>();
  return marks.map((mark) => {
    const n = before.get(mark.meant_m) ?? 0;
    before.set(mark.meant_m, n + 1);
    return { mark, aside: ((n % 5) - 2) * 4 };
  });
}

function ticks(most: number, units: Units): number[] {
  const step = STEPS[units].find((one) => most / one <= MOST_TICKS) ?? most;
  return Array.from({ length: Math.floor(most / step) + 1 }, (_, i) => i * step);
}

function shortLength(m: number, units: Units): string {
  return m === 0 ? '0' : formatLength(m, units, 'short');
}

function clamp(m: number, most: number): number {
  return Math.min(most, Math.max(0, m));
}

function round(pixels: number): number {
  return Math.round(pixels * 10) / 10;
}

import { scaleLinear } from 'd3-scale';

/** One hand over many tries, in parts of what was meant. */
export interface HandRow {
  name: string;
  ratios: readonly number[];
  /** Where it stands now and half the width of the band in which that lies. */
  value: number;
  band: number;
}

export const STRIP = { left: 12, right: 40, top: 30, row: 62 } as const;
/** Steps of the axis in parts of what was meant: the first that gives few enough ticks. */
const STEPS = [0.25, 0.5, 1, 2, 5];
/** One has so much room at the least, px. */
const TICK_PX = 78;
/** Shown at the least, so that a true hand is no dot at the edge. */
const LEAST_MOST = 1.5;

/** The rows under each other on one axis; px of a drawing `width` px wide. */
export function handsStrip(rows: readonly HandRow[], width: number) {
  const most = Math.max(LEAST_MOST, ...rows.flatMap(({ ratios }) => ratios)) * 1.04;
  const x = scaleLinear([0, most], [STRIP.left, width - STRIP.right]);
  const step = STEPS.find((one) => (most / one) * TICK_PX <= width) ?? most;
  const ticks = Array.from({ length: Math.floor(most / step) + 1 }, (_, i) => i * step);
  const ground = STRIP.top + rows.length * STRIP.row;
  return {
    height: ground + 44,
    ground,
    meant: x(1),
    ticks: ticks.map((part) => ({ x: x(part), label: tickText(part) })),
    rows: rows.map(({ name, ratios, value, band }, i) => ({
      name,
      y: STRIP.top + (i + 0.62) * STRIP.row,
      dots: ratios.map((ratio) => x(ratio)),
      value: x(value),
      from: x(Math.max(0, value - band)),
      to: x(Math.min(most, value + band))
    }))
  };
}

/** "as meant", "half", "2 times" */
function tickText(part: number): string {
  if (part === 0) return '0';
  return part === 1 ? 'as meant' : `× ${part}`;
}

import { formatLength, formatTime, type Units } from '$lib/scoring';
import { formatPull } from '$lib/scoring/display';
import type { Series } from './series';

/** The plots in numbers: what a screen reader reads, and what one copies out. */

/** Rows of the table: few enough to read through. */
const ROWS = 8;

export interface FigureRow {
  readonly time: string;
  readonly tip: string;
  readonly bait: string;
  readonly height: string;
  readonly bottom: string;
  readonly pull: string;
}

/** The figures at `tick`, in the learner's units. */
function figuresAt(series: Series, tick: number, units: Units): FigureRow {
  return {
    time: formatTime(series.t_s[tick]),
    tip: formatLength(series.tipTravel_m[tick], units),
    bait: formatLength(series.baitTravel_m[tick], units),
    height: formatLength(series.height_m[tick], units),
    bottom: series.contact[tick] === 1 ? 'on' : 'lifted',
    pull: formatPull(series.tension_N[tick], units)
  };
}

/** A table of moments at equal distances from the start to `ends_s`. */
export function figureTable(series: Series, ends_s: number, units: Units): FigureRow[] {
  const last = series.t_s.findLastIndex((t_s) => t_s <= ends_s + 1e-9);
  const ticks = Array.from({ length: ROWS }, (_, i) => Math.round((last * i) / (ROWS - 1)));
  return [...new Set(ticks)].map((tick) => figuresAt(series, tick, units));
}

import type { MotionRow } from './motion';

/** What a filmed move came to, from the bait at rest to the bait at rest. */
export interface FilmedOutcome {
  /** Towards the angler, m. */
  readonly travel_m: number;
  readonly travel_sd_m: number;
  /** The most it was above where it lay, m; null where frames were lost that may hold it. */
  readonly peak_height_m: number | null;
  readonly height_sd_m: number | null;
  readonly duration_s: number;
  /** Frames of the stretch in which the bait was lost, was not sure, or before which some are missing. */
  readonly lost: number;
  readonly unsure: number;
  readonly gaps: number;
}

/** A height below this is the noise of a bait that stayed down, in standard deviations. */
const RISEN_SD = 2;

/** Null where the bait is lost in the last frame: there is no travel then. */
export function outcomeOf(rows: readonly MotionRow[]): FilmedOutcome | null {
  const last = rows[rows.length - 1];
  if (last?.travel_m === null || last?.travel_sd_m === null || last === undefined) return null;
  const count = (flag: MotionRow['flag']) => rows.filter((row) => row.flag === flag).length;
  return {
    travel_m: last.travel_m,
    travel_sd_m: last.travel_sd_m,
    ...peakOf(rows),
    duration_s: last.t_s,
    lost: count('lost'),
    unsure: count('unsure'),
    gaps: count('gap')
  };
}

function peakOf(rows: readonly MotionRow[]): Pick<FilmedOutcome, 'peak_height_m' | 'height_sd_m'> {
  if (rows.some(({ flag }) => flag === 'lost' || flag === 'gap')) {
    return { peak_height_m: null, height_sd_m: null };
  }
  const top = rows.reduce((most, row) => ((row.height_m ?? 0) > (most.height_m ?? 0) ? row : most));
  const height_m = top.height_m ?? 0;
  const height_sd_m = Math.max(top.height_sd_m ?? 0, rows[rows.length - 1].height_sd_m ?? 0);
  const hasRisen = height_m > RISEN_SD * height_sd_m;
  return { peak_height_m: hasRisen ? height_m : 0, height_sd_m };
}

import { csvTable, type Filmed, type StoredTest } from '$lib/wire';
import {
  HAND_SD_PX,
  lensShare,
  type FilmedOutcome,
  type MotionRow,
  type Pixel,
  type Sighting
} from '$lib/film';
import type { Measuring } from './measuring.svelte';
import { stretchOf, type SpotTrack } from './spot-track';

type Measured = Pick<Measuring, 'clip' | 'marks' | 'tracks' | 'offPlane'>;

/** One test of a session, as docs/fit.md and docs/session-format.md have it. */
export function filmedTest(
  from: Measured,
  outcome: FilmedOutcome,
  move: StoredTest['move'],
  note: string
): StoredTest {
  const { travel_m, travel_sd_m, peak_height_m, height_sd_m } = outcome;
  const height =
    peak_height_m === null || height_sd_m === null
      ? {}
      : { peak_height_m: exact(peak_height_m), height_sd_m: exact(height_sd_m) };
  return {
    move,
    travel_m: exact(travel_m),
    travel_sd_m: exact(travel_sd_m),
    ...height,
    note,
    filmed: filmedOf(from)
  };
}

/** A tenth of a millimetre, and no deviation of 0: the fit takes none. */
function exact(m: number): number {
  return Math.round(m * 1e4) / 1e4;
}

function filmedOf({ clip, marks, tracks, offPlane }: Measured): Filmed {
  const lengths_m = marks.kind === 'two' ? [marks.length_m] : [marks.width_m, marks.height_m];
  const stretch = stretchOf(tracks.bait);
  const ends = [stretch?.from, stretch?.to].flatMap((index) => {
    const at = index === undefined ? null : tracks.bait.get(index)?.at;
    return at ? [at] : [];
  });
  const placed = [...tracks.bait.values()].map(({ sd_px }) => sd_px);
  return {
    scale: { points_px: marks.pixels.map(pairOf), lengths_m },
    bait: trackOf(tracks.bait),
    ...(tracks.bottom.size > 0 ? { bottom: trackOf(tracks.bottom) } : {}),
    ...(tracks.tip.size > 0 ? { tip: trackOf(tracks.tip) } : {}),
    errors: {
      click_px: HAND_SD_PX,
      track_px: Math.max(0, ...placed),
      lens_share: lensShare(clip.size, ...ends),
      plane_share: offPlane
    }
  };
}

const pairOf = ({ x_px, y_px }: Pixel): [number, number] => [hundredth(x_px), hundredth(y_px)];
const hundredth = (px: number) => Math.round(px * 100) / 100;

/** Frames in which the spot was seen, in their order. */
function trackOf(track: SpotTrack): NonNullable<Filmed['bait']> {
  const seen = [...track].sort(([a], [b]) => a - b).map(([, sighting]) => sighting);
  const placed = seen.filter((one): one is Sighting & { at: Pixel } => one.at !== null);
  return {
    t_s: placed.map(({ t_s }) => Math.round(t_s * 1e6) / 1e6),
    x_px: placed.map(({ at }) => hundredth(at.x_px)),
    y_px: placed.map(({ at }) => hundredth(at.y_px))
  };
}

const COLUMNS = [
  't_s',
  'travel_m',
  'travel_sd_m',
  'height_m',
  'height_sd_m',
  'speed_m_s',
  'speed_sd_m_s',
  'flag'
] as const satisfies (keyof MotionRow)[];

/** Every frame of the move as a table. */
export function motionCsv(rows: readonly MotionRow[]): string {
  return csvTable(COLUMNS, rows);
}

import type { Pixel } from './frame';
import type { FrameTimes } from './frame-times';
import { localSlope, type Slope } from './local-slope';
import { scaleOf, type Scale } from './scale';
import type { Sighting, SightingState } from './tracker';
import { wayErrors, type FilmedHow, type PlacedPixel, type WayErrors } from './way-error';

/** Where the angler is, as seen in the picture: travel towards it is plus. */
export type AnglerSide = 'left' | 'right';

/** What was seen in a stretch of a clip, frame by frame. */
export interface FilmedMove extends FilmedHow {
  readonly times: FrameTimes;
  /** One a frame, from the first that counts. */
  readonly bait: readonly Sighting[];
  /** A spot of the bottom that never moves, one a frame: takes out a camera that did. */
  readonly bottom?: readonly Sighting[];
  readonly angler: AnglerSide;
}

/** `gap`: frames seem to be missing before this one. */
export type RowFlag = SightingState | 'gap';

/** One frame of a moving bait, from where it lay in the first. Null where it was lost. */
export interface MotionRow {
  /** After the first frame, s. */
  readonly t_s: number;
  readonly flag: RowFlag;
  /** Towards the angler, m. */
  readonly travel_m: number | null;
  readonly travel_sd_m: number | null;
  /** Above where it lay, m. */
  readonly height_m: number | null;
  readonly height_sd_m: number | null;
  /** Along its way, m/s. */
  readonly speed_m_s: number | null;
  readonly speed_sd_m_s: number | null;
}

interface Place {
  readonly row: number;
  readonly t_s: number;
  readonly pixel: PlacedPixel;
}

/** Travel, height and speed against time. Throws RangeError where the first frame shows no bait. */
export function motionOf(filmed: FilmedMove): MotionRow[] {
  const { bait, times } = filmed;
  const steadied = bait.map((seen, i) => steady(seen, filmed.bottom, i));
  const first = steadied[0];
  if (!first) throw new RangeError('the bait must be seen in the first frame');
  const begun_s = bait[0].t_s;
  const places = steadied.flatMap((pixel, row): Place[] =>
    pixel ? [{ row, t_s: bait[row].t_s - begun_s, pixel }] : []
  );
  const gaps = new Set(times.gaps.map((frame) => times.t_s[frame]));
  const rows = bait.map((seen, i) => ({
    ...NOTHING_SEEN,
    t_s: seen.t_s - begun_s,
    flag: flagOf(seen, steadied[i] !== null, gaps)
  }));
  const sign = filmed.angler === 'right' ? 1 : -1;
  measured(filmed, first, places).forEach(({ row, ...values }) => {
    rows[row] = { ...rows[row], ...values, travel_m: sign * values.travel_m };
  });
  return rows;
}

const NOTHING_SEEN: Omit<MotionRow, 't_s' | 'flag'> = {
  travel_m: null,
  travel_sd_m: null,
  height_m: null,
  height_sd_m: null,
  speed_m_s: null,
  speed_sd_m_s: null
};

function flagOf(seen: Sighting, isPlaced: boolean, gaps: ReadonlySet<number>): RowFlag {
  if (!isPlaced) return 'lost';
  return gaps.has(seen.t_s) ? 'gap' : seen.state;
}

/** What the spot of the bottom has moved is the camera’s motion. Where that is lost, so is the bait. */
function steady(
  seen: Sighting,
  bottom: readonly Sighting[] | undefined,
  i: number
): PlacedPixel | null {
  if (!seen.at) return null;
  if (!bottom) return { at: seen.at, sd_px: seen.sd_px };
  const [from, now] = [bottom[0]?.at, bottom[i]?.at];
  if (!from || !now) return null;
  const at: Pixel = {
    x_px: seen.at.x_px - now.x_px + from.x_px,
    y_px: seen.at.y_px - now.y_px + from.y_px
  };
  return { at, sd_px: Math.hypot(seen.sd_px, bottom[i].sd_px) };
}

function measured(filmed: FilmedMove, first: PlacedPixel, places: readonly Place[]) {
  const scale = scaleOf(filmed.marks);
  const errors = wayErrors(filmed);
  const from = scale(first.at);
  const t_s = places.map((place) => place.t_s);
  const at = places.map(({ pixel }) => scale(pixel.at));
  const x_m = at.map((point) => point.x_m - from.x_m);
  const z_m = at.map((point) => point.z_m - from.z_m);
  return places.map(({ row, pixel }, i) => {
    const sd = errors(first, pixel);
    const step = stepAt(scale, errors, pixel);
    const along = localSlope(t_s, x_m, step.sd_m, i);
    const up = localSlope(t_s, z_m, step.sd_m, i);
    return {
      row,
      travel_m: x_m[i],
      travel_sd_m: sd.along_m,
      height_m: z_m[i],
      height_sd_m: sd.up_m,
      ...speedOf(along, up, step.share)
    };
  });
}

/** A step this long shows how wrong the scale is in which a speed is read. */
const STEP_PX = 50;

/** What a place's own error is in metres, and the scale's as a share. */
function stepAt(scale: Scale, errors: WayErrors, { at, sd_px }: PlacedPixel) {
  const beside: Pixel = { x_px: at.x_px + STEP_PX, y_px: at.y_px };
  const [a, b] = [scale(at), scale(beside)];
  const step_m = Math.hypot(b.x_m - a.x_m, b.z_m - a.z_m);
  const exact = errors({ at, sd_px: 0 }, { at: beside, sd_px: 0 });
  return { sd_m: (sd_px * step_m) / STEP_PX, share: exact.along_m / step_m };
}

function speedOf(
  along: Slope | null,
  up: Slope | null,
  share: number
): Pick<MotionRow, 'speed_m_s' | 'speed_sd_m_s'> {
  if (!along || !up) return { speed_m_s: null, speed_sd_m_s: null };
  const speed_m_s = Math.hypot(along.per_s, up.per_s);
  return { speed_m_s, speed_sd_m_s: Math.hypot(along.sd_per_s, share * speed_m_s) };
}

import { HAND_SD_PX, type Pixel, type Sighting } from '$lib/film';

/** What is marked and followed on a clip. */
export const SPOTS = ['bait', 'bottom', 'tip'] as const;
export type FilmedSpot = (typeof SPOTS)[number];

/** Where one spot was seen, by frame; what was followed after a second mark is off by two slips of the hand. */
export type SpotTrack = ReadonlyMap<number, Sighting>;

export const NO_TRACK: SpotTrack = new Map();

/**
 * With a mark by hand in this frame. The first mark is the spot, whatever of the jig it met: it has no
 * error of its own. A later one is off from it by both slips.
 */
export function withMark(track: SpotTrack, index: number, t_s: number, at: Pixel): SpotTrack {
  const isFirst = [...track].every(([frame, { at: seen }]) => frame >= index || seen === null);
  const sd_px = isFirst ? 0 : Math.SQRT2 * HAND_SD_PX;
  return new Map(track).set(index, { t_s, at, state: 'by_hand', sd_px });
}

/** What a tracker saw after a mark that is itself off by `slip_px`. */
export function afterMark(seen: Sighting, slip_px: number): Sighting {
  return { ...seen, sd_px: Math.hypot(seen.sd_px, slip_px) };
}

/** Only frames from the one to the other, both with. */
export function trimmed(track: SpotTrack, from: number, to: number): Map<number, Sighting> {
  return new Map([...track].filter(([index]) => index >= from && index <= to));
}

/** The frames that this track reaches over; null without one. */
export function stretchOf(track: SpotTrack): { from: number; to: number } | null {
  const frames = [...track.keys()];
  return frames.length === 0 ? null : { from: Math.min(...frames), to: Math.max(...frames) };
}

/** One sighting a frame of the stretch; a frame that was skipped is lost. */
export function sightings(
  track: SpotTrack,
  { from, to }: { from: number; to: number },
  stamps_s: readonly number[]
): Sighting[] {
  return Array.from({ length: to - from + 1 }, (_, i): Sighting => {
    const t_s = stamps_s[from + i];
    return track.get(from + i) ?? { t_s, at: null, state: 'lost', sd_px: 0 };
  });
}

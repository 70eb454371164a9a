import { SpotTracker, type Sighting } from '$lib/film';
import type { Clip, PassingFrame } from './clip';
import type { FilmedSpot } from './spot-track';

/** Why following stopped: at the clip's end, told to, a spot lost, or nothing that could be followed. */
export type FollowEnd =
  | { readonly kind: 'end' | 'stopped' | 'undecodable'; readonly index: number }
  | { readonly kind: 'lost' | 'plain'; readonly index: number; readonly spot: FilmedSpot };

export type MarkedSpots = readonly (readonly [FilmedSpot, Sighting])[];

/** Follows all spots from the frame they are marked in, in one pass, until one of them is lost. */
export async function followSpots(
  clip: Clip,
  from: number,
  marks: MarkedSpots,
  signal: AbortSignal,
  onseen: (index: number, spot: FilmedSpot, seen: Sighting) => void,
  onframe: (frame: PassingFrame) => Promise<void> | undefined = () => undefined
): Promise<FollowEnd> {
  const trackers = new Map<FilmedSpot, SpotTracker>();
  let last = from - 1;
  for await (const passing of clip.frames(from, signal)) {
    const { index, frame } = passing;
    await onframe(passing);
    last = index;
    const t_s = clip.stamps_s[index];
    if (index === from) {
      for (const [spot, { at }] of marks) {
        const tracker = at && SpotTracker.begin(frame, t_s, at);
        if (!tracker) return { kind: 'plain', index, spot };
        trackers.set(spot, tracker);
      }
      continue;
    }
    const seen = [...trackers].map(
      ([spot, tracker]) => [spot, tracker.follow(frame, t_s)] as const
    );
    for (const [spot, sighting] of seen) onseen(index, spot, sighting);
    const lost = seen.find(([, { state }]) => state === 'lost');
    if (lost) return { kind: 'lost', index, spot: lost[0] };
  }
  if (signal.aborted) return { kind: 'stopped', index: Math.max(last, from) };
  const isEnd = last >= clip.stamps_s.length - 1;
  return { kind: isEnd ? 'end' : 'undecodable', index: Math.max(last, from) };
}

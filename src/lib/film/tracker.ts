import type { LumaFrame, Pixel } from './frame';
import { Patch } from './patch';
import { searchSpot, type Found } from './spot-search';

/**
 * `unsure`: like the frame before, but no longer like what was marked. `lost`: not found, and no
 * place is given. `by_hand`: marked.
 */
export type SightingState = 'sure' | 'unsure' | 'lost' | 'by_hand';

/** Where a spot was seen in one frame. */
export interface Sighting {
  /** s, as the clip counts. */
  readonly t_s: number;
  readonly at: Pixel | null;
  readonly state: SightingState;
  /** Standard deviation of the place, each way, pixels. */
  readonly sd_px: number;
}

const SPOT_RADIUS_PX = 15;
/** How far from where it is expected a spot is looked for. Farther costs time by its square. */
const REACH_PX = 32;
/** While the first patch is this like, the place is its place: nothing can drift. */
const ANCHORED_SCORE = 0.75;
/** Less like than this it is lost: chance likeness in murk and noise stays below. */
const LOST_SCORE = 0.5;
/** What stands behind a jig that has gone may be like it by so much of its own likeness before. */
const LOST_SHARE = 0.7;
/** Share of each frame in the likeness that is usual. */
const USUAL_SHARE = 0.3;
/** Share of each new picture in the patch that follows: more drifts unseen, none loses what turns. */
const BLEND = 0.1;
/** How far the first patch may pull a place back. */
const REALIGN_PX = 3;
/** A finger or mouse marks the middle of a jig to about this, pixels of the clip. */
export const HAND_SD_PX = 2;

/** Follows one spot through a clip, frame after frame, from where a hand has marked it. */
export class SpotTracker {
  private speed = { x_px_s: 0, y_px_s: 0 };
  private last: { readonly t_s: number; readonly at: Pixel };
  private readonly first: Patch;
  private latest: Patch;
  private usualScore = LOST_SCORE / LOST_SHARE;

  private constructor(first: Patch, t_s: number, at: Pixel) {
    this.first = first;
    this.latest = first;
    this.last = { t_s, at };
  }

  /** Null where nothing stands out to be followed, or the spot is at the picture's edge. */
  static begin(frame: LumaFrame, t_s: number, at: Pixel): SpotTracker | null {
    const patch = Patch.from(frame, at, SPOT_RADIUS_PX);
    return patch && new SpotTracker(patch, t_s, at);
  }

  /** Looks for the spot in the next frame. A spot that is lost is looked for where it was going. */
  follow(frame: LumaFrame, t_s: number): Sighting {
    const found = searchSpot(frame, this.latest, this.expectedAt(t_s), REACH_PX);
    const least = Math.max(LOST_SCORE, LOST_SHARE * this.usualScore);
    if (!found || found.score < least) return { t_s, at: null, state: 'lost', sd_px: 0 };
    const anchored = searchSpot(frame, this.first, found, REALIGN_PX);
    const isAnchored = anchored !== null && anchored.score > ANCHORED_SCORE;
    const place = isAnchored ? anchored : found;
    this.usualScore += USUAL_SHARE * (found.score - this.usualScore);
    this.moveTo(frame, t_s, place);
    return {
      t_s,
      at: { x_px: place.x_px, y_px: place.y_px },
      state: isAnchored ? 'sure' : 'unsure',
      sd_px: isAnchored ? sdOf(place) : DRIFT_SD_PX
    };
  }

  private expectedAt(t_s: number): Pixel {
    const ahead_s = Math.min(t_s - this.last.t_s, AHEAD_S);
    return {
      x_px: this.last.at.x_px + this.speed.x_px_s * ahead_s,
      y_px: this.last.at.y_px + this.speed.y_px_s * ahead_s
    };
  }

  private moveTo(frame: LumaFrame, t_s: number, at: Pixel): void {
    const step_s = t_s - this.last.t_s;
    if (step_s > 0) {
      this.speed = {
        x_px_s: (at.x_px - this.last.at.x_px) / step_s,
        y_px_s: (at.y_px - this.last.at.y_px) / step_s
      };
    }
    this.last = { t_s, at };
    const now = Patch.from(frame, at, SPOT_RADIUS_PX);
    if (now) this.latest = this.latest.blended(now, BLEND);
  }
}

/** A spot that is lost for longer is no longer where its speed would have brought it, s. */
const AHEAD_S = 0.1;
/** A place by the following patch alone wanders, pixels: tried with blur, noise and murk. */
const DRIFT_SD_PX = 2;

/** Tried on made-up clips: 0.1 px in clear water, 0.8 px with blur, noise and murk. */
function sdOf({ score }: Found): number {
  return Math.min(Math.max(0.1 + 2.8 * (1 - score), 0.1), 0.8);
}

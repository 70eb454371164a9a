import type { Units } from '$lib/scoring';
import type { LiveTry } from './live-try';
import { heightWords, NOTHING_YET, readoutOf, type Readout } from './readout';
import type { Backdrop } from './stage';

/** Numbers change this often at most, ms: faster cannot be read. */
const READOUT_MS = 90;
/** A height is told after so long off the bottom, and as often, ms: sooner it is not said to its end. */
const HEIGHT_MS = 2500;

/** What is read of a try while it moves, in figures and in words. */
export class LiveReading {
  readout = $state.raw<Readout>(NOTHING_YET);
  /** Where the rod is, degrees. */
  angle_deg = $state(0);
  /** Whole seconds until the try ends by itself, once that is near. */
  lastSeconds = $state<number | null>(null);
  /** Whether the pointer at the rod alone keeps a try from its end. */
  isKeptByHand = $state(false);
  private read_ms = -Infinity;
  private wasTouching = true;
  private height_ms = 0;

  begin(angle_deg: number): void {
    this.angle_deg = angle_deg;
    this.readout = NOTHING_YET;
    this.lastSeconds = null;
    this.isKeptByHand = false;
    this.wasTouching = true;
  }

  /** @returns what is to be told of contact and height, if anything */
  read(live: LiveTry, stage: Backdrop, units: Units, now_ms: number): string | null {
    if (now_ms - this.read_ms < READOUT_MS) return null;
    this.read_ms = now_ms;
    this.angle_deg = live.hand.angle_deg;
    this.lastSeconds = live.lastSeconds;
    this.isKeptByHand = live.isKeptByHand;
    this.readout = readoutOf(live.trace, stage, live.reel.taken_m);
    return this.heightNews(live.setup.water.depth_m, units, now_ms);
  }

  private heightNews(depth_m: number, units: Units, now_ms: number): string | null {
    const { isTouching } = this.readout;
    const isChanged = isTouching !== this.wasTouching;
    this.wasTouching = isTouching;
    if (!isChanged && (isTouching || now_ms - this.height_ms < HEIGHT_MS)) return null;
    this.height_ms = now_ms;
    if (!isChanged) return heightWords(this.readout, depth_m, units);
    return isTouching ? 'On the bottom.' : 'Off the bottom.';
  }
}

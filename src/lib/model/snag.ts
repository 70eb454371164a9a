import type { Contact } from './bottom';

/**
 * A hook in a crack. Rules of thumb from common practice, no source; the forces that decide are the
 * model's: how hard the line pulled when the hook met the rock, and how it has pulled since.
 */
/** A flank takes a hook when its outward normal lies at least this much along the pull (cosine). */
const FLANK = 0.6;
/** Pull at which the gentlest and the coarsest stone take a hook, N. */
const TAKES_FROM_N = 1.6;
const TAKES_TO_N = 3.6;
/** A pull this hard drives the hook home: then shaking no longer helps, N. */
const SETS_DEEPER_N = 8;
/** Pulls are evened out over this long, s: shorter ones are blows of a few grams of line, and no hook's. */
const EVENED_S = 0.05;
/** Slack: less pull than this, N, for this long, s. */
const SLACK_N = 0.03;
const SLACK_S = 0.4;
/** Shakes: pulls that rise from slack to more than this, N, and how many of them free it. */
const SHAKE_N = 0.12;
const SHAKES = 3;
/** Pulling from this much higher or from the other side frees it at once, degrees. */
const ANGLE_DEG = 6;

export type SnagEvent =
  | { kind: 'snag'; stone: number }
  | { kind: 'set deeper' }
  | { kind: 'freed'; by: 'angle' | 'shake' };

/** Pull on the bait as one step leaves it. */
export interface Pull {
  tension_N: number;
  /** Above level, degrees. */
  angle_deg: number;
}

export class Snag {
  isHeld = false;
  private stone = -1;
  private isDeep = false;
  private angle_deg = 0;
  private slack_s = 0;
  private shakes = 0;
  private isShaking = false;
  private tension_N = 0;
  /** A freed hook has turned over this stone and does not take it again before it met the bed elsewhere. */
  private passed: number | null = null;

  /** `side`: sign of the bait's x. */
  constructor(private readonly side: number) {}

  /** Notes one step; returns what came of it, if anything. */
  follow(step_s: number, contact: Contact | null, now: Pull): SnagEvent | null {
    this.tension_N += (now.tension_N - this.tension_N) * -Math.expm1(-step_s / EVENED_S);
    const pull = { ...now, tension_N: this.tension_N };
    if (this.isHeld) return this.hold(step_s, pull);
    if (contact && contact.stone !== this.passed) this.passed = null;
    return this.mayTake(contact, pull);
  }

  private mayTake(contact: Contact | null, pull: Pull): SnagEvent | null {
    if (!contact || contact.stone < 0 || this.side * contact.nx < FLANK) return null;
    if (contact.stone === this.passed) return null;
    const coarse = (contact.stone * 0.618034) % 1;
    if (pull.tension_N < TAKES_FROM_N + coarse * (TAKES_TO_N - TAKES_FROM_N)) return null;
    this.isHeld = true;
    this.stone = contact.stone;
    this.isDeep = false;
    this.angle_deg = pull.angle_deg;
    this.slack_s = this.shakes = 0;
    this.isShaking = false;
    return { kind: 'snag', stone: contact.stone };
  }

  private hold(step_s: number, { tension_N, angle_deg }: Pull): SnagEvent | null {
    if (tension_N > SHAKE_N && angle_deg > this.angle_deg + ANGLE_DEG) return this.free('angle');
    if (tension_N > SETS_DEEPER_N && !this.isDeep) {
      this.isDeep = true;
      return { kind: 'set deeper' };
    }
    if (tension_N < SLACK_N) {
      this.slack_s += step_s;
      this.isShaking = false;
    } else if (tension_N > SHAKE_N && !this.isShaking && this.slack_s >= SLACK_S) {
      this.isShaking = true;
      this.shakes++;
    }
    if (this.shakes >= SHAKES && !this.isDeep) return this.free('shake');
    return null;
  }

  private free(by: 'angle' | 'shake'): SnagEvent {
    this.isHeld = false;
    this.passed = this.stone;
    return { kind: 'freed', by };
  }
}

import type { Plane } from './rod-angles';

/**
 * A phone as the rod: its long side points where the rod points. In the angles of the Device
 * Orientation specification (turns about z, x', y'') that side's elevation is beta and its heading,
 * clockwise, is minus alpha; gamma, the roll, turns about that side and does not count.
 */
export interface Orientation {
  readonly alpha: number | null;
  readonly beta: number | null;
}

/** A hand that holds still trembles by less than this, degrees: the rod waits until it is more. */
const STILL_DEG = 1.5;
/** Steeper than this a phone points nowhere in particular, degrees: its heading is left as it was. */
const STEEP_DEG = 75;

/** Turns a phone's readings into rod angles, from where it pointed when the try was made ready. */
export class Tilt {
  private from_deg: number | null = null;
  private last_deg = 0;
  private turned_deg = 0;
  private isMoving = false;

  constructor(private readonly plane: Plane) {}

  /** The way the phone points next stands for the rod's start. It also takes out a compass's drift. */
  level(): void {
    this.from_deg = null;
    this.isMoving = false;
  }

  /** Degrees that the rod is turned from its start; null where the reading says nothing. */
  read({ alpha, beta }: Orientation): number | null {
    if (alpha === null || beta === null) return null;
    if (this.plane === 'sweep' && Math.abs(beta) > STEEP_DEG) return null;
    const now_deg = this.plane === 'lift' ? beta : -alpha;
    if (this.from_deg === null) {
      this.from_deg = this.last_deg = now_deg;
      this.turned_deg = 0;
      return null;
    }
    const step = now_deg - this.last_deg;
    this.turned_deg += step - 360 * Math.round(step / 360);
    this.last_deg = now_deg;
    this.isMoving ||= Math.abs(this.turned_deg) > STILL_DEG;
    return this.isMoving ? this.turned_deg : null;
  }
}

type Permission = { requestPermission?: () => Promise<'granted' | 'denied'> };

/** Why a phone cannot be the rod here, or null. Some devices ask; call this from a tap. */
export async function askForTilt(page: {
  readonly isSecureContext: boolean;
  readonly DeviceOrientationEvent?: unknown;
}): Promise<string | null> {
  if (!page.isSecureContext) {
    return 'This page came over plain http, and browsers keep the sensors from it. Over https it works.';
  }
  const sensor = page.DeviceOrientationEvent as Permission | undefined;
  if (!sensor) return 'This device does not tell a page how it is held.';
  const answer = await sensor.requestPermission?.().catch(() => 'denied' as const);
  return answer === 'denied' ? 'The sensors were not allowed. Nothing else is lost.' : null;
}

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

/** The rod is taken up when the phone points this near to where the rod starts, degrees. */
const NEAR_DEG = 6;

/**
 * Turns a phone's readings into rod angles. Levelled, the way it points is level and towards the
 * bait. The rod is taken up once the phone has been brought to where the rod starts, and follows it
 * from there; a compass that has drifted less than that is put right by it each time.
 */
export class Tilt {
  /** How far the phone must still be turned before the rod is taken up, degrees; null once it is. */
  away_deg: number | null = null;
  private last_deg: number | null = null;
  /** From level and towards the bait. */
  private pointing_deg = 0;
  private from_deg: number | null = null;
  private isMoving = false;

  /** `start_deg`: the rod at the start of a try, in the angle that this plane moves. */
  constructor(
    private readonly plane: Plane,
    private readonly start_deg: number
  ) {}

  /** The way the phone points next is level and towards the bait. It also takes out a compass's drift. */
  level(): void {
    this.last_deg = null;
    this.putDown();
  }

  /** The rod is back at its start, and the phone has to come there too. */
  putDown(): void {
    this.from_deg = null;
    this.isMoving = false;
  }

  /** Degrees that the rod is turned from its start; null where the reading says nothing. */
  read({ alpha, beta }: Orientation): number | null {
    if (alpha === null || beta === null) return null;
    if (this.plane === 'sweep' && Math.abs(beta) > STEEP_DEG) return null;
    this.follow(this.plane === 'lift' ? beta : -alpha);
    if (this.from_deg === null && !this.takeUp()) return null;
    const turned_deg = this.pointing_deg - (this.from_deg ?? 0);
    this.isMoving ||= Math.abs(turned_deg) > STILL_DEG;
    return this.isMoving ? turned_deg : null;
  }

  private follow(now_deg: number): void {
    if (this.last_deg === null) this.pointing_deg = 0;
    const step = now_deg - (this.last_deg ?? now_deg);
    this.pointing_deg += step - 360 * Math.round(step / 360);
    this.last_deg = now_deg;
  }

  private takeUp(): boolean {
    const away_deg = this.start_deg - this.pointing_deg;
    const isNear = Math.abs(away_deg) <= NEAR_DEG;
    this.away_deg = isNear ? null : away_deg;
    if (isNear) this.from_deg = this.pointing_deg;
    return isNear;
  }
}

/** What the hand is to do before the rod is taken up. */
export function bringText(plane: Plane, away_deg: number): string {
  const so = `${Math.round(Math.abs(away_deg))}°`;
  if (plane === 'lift')
    return `Tilt it ${so} ${away_deg > 0 ? 'up' : 'down'}, to where the rod is.`;
  return `Turn it ${so} to the ${away_deg > 0 ? 'right' : 'left'}, to where the rod is.`;
}

type Permission = { requestPermission?: () => Promise<'granted' | 'denied'> };

/** Why a phone cannot be the rod here, or null. Some devices ask; call this from a tap. */
export async function askForTilt(page: {
  readonly isSecureContext: boolean;
  readonly DeviceOrientationEvent?: unknown;
}): Promise<string | null> {
  if (!page.isSecureContext) {
    return 'This page came over plain http, so the browser blocks the sensors. It works over https.';
  }
  const sensor = page.DeviceOrientationEvent as Permission | undefined;
  if (!sensor) return 'This device doesn’t tell pages how you hold it.';
  const answer = await sensor.requestPermission?.().catch(() => 'denied' as const);
  return answer === 'denied' ? 'The sensors are blocked. Everything else still works.' : null;
}

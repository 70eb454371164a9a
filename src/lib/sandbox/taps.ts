/** A press shorter than this was no hold, ms: a tap of a finger takes a tenth of a second. */
export const TAP_MS = 200;

/** Tells a tap from a press that is held. */
export class Taps {
  /** Whether the last press was one; and whether it was at the reel, which is told at any time. */
  isTap = false;
  isAtReel = false;
  private pressed_ms = -Infinity;

  /** A button or key goes down (1 or −1), or is let go of (0); one that is pressed to go and pressed to stop is never tapped. */
  look(what: 'hand' | 'reel', t_ms: number, direction: number, isPressed: boolean): void {
    if (direction !== 0) this.pressed_ms = t_ms;
    this.isTap = direction === 0 && !isPressed && t_ms - this.pressed_ms < TAP_MS;
    this.isAtReel = this.isTap && what === 'reel';
  }

  forget(): void {
    this.isTap = this.isAtReel = false;
  }
}

import type { TouchedBy } from './live-try';
import { REEL_BUTTONS, ROD_BUTTONS } from './rod-angles';
import { Taps } from './taps';

/** How the rod is handled: by a pointer that pulls it, or by buttons and keys that are held, or only tapped. */
export class Handling {
  /** By what the rod was moved too little for a try, or that it was moved before a start; null where it was not. */
  touched = $state<TouchedBy | 'early' | null>(null);
  /** The button that was pressed last, by name; a key moves as it does. */
  pressed = $state('');
  /** Whether a pointer has hold of the rod: letting go of it may be all that ends the try. */
  isDragged = $state(false);
  /** Whether a pointer had hold of the rod in this try and let go of it. */
  isLetGo = $state(false);
  /** Whether one press moves the rod and the next stops it: who does that needs time between. */
  isPressed = false;
  private movedBy: TouchedBy = 'pull';
  private readonly taps = new Taps();

  /** The rod is at its start again. */
  begin(): void {
    this.isLetGo = false;
    this.touched = null;
  }

  pull(): void {
    this.movedBy = 'pull';
    this.taps.forget();
  }

  /**
   * A button or key goes down (1 or −1) or up (0).
   * @param isBegun whether the try has begun: before, who taps where a press is to be held is told at once
   */
  press(
    what: 'hand' | 'reel',
    plane: keyof typeof ROD_BUTTONS,
    t_ms: number,
    direction: number,
    isBegun: boolean
  ): void {
    this.movedBy = 'press';
    const names = what === 'hand' ? ROD_BUTTONS[plane] : REEL_BUTTONS;
    if (direction !== 0) this.pressed = names[direction > 0 ? 1 : -1];
    this.isLetGo = false;
    this.taps.look(what, t_ms, direction, this.isPressed);
    if (!isBegun) this.touched = this.taps.isTap ? 'press' : null;
  }

  /** @param isTouch whether all that was moved until now is too little for a try; `isAlone` whether the hand has left the rod */
  look(isTouch: boolean, isAlone: boolean): void {
    const isTouched = this.taps.isAtReel || (isTouch && (this.taps.isTap || isAlone));
    this.touched = isTouched ? this.movedBy : null;
  }

  /** What Start lets go of, the rod does not. */
  tellEarly(): void {
    this.touched = 'early';
  }

  /** What ended was no try, but a touch. */
  tellTouch(): void {
    this.touched = this.movedBy;
  }
}

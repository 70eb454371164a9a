import { TAP_MS } from './taps';

/** Where the rod's button lay, so long any press is one more pull, ms: nobody has read what came of the first. */
const UNREAD_MS = 1200;
/** And so long one that is held: a tap is meant for what lies there now. */
const PULLS_ON_MS = 2500;

/** One more pull at the rod's button that comes when the result lies there already: it goes nowhere. */
export class LatePull {
  /** Where the button lay that was pressed last, on the window; null for one that moves nothing. */
  private held: DOMRect | null = null;
  /** Whether it is pressed still. */
  private isDown = false;

  /** Notes which of a bar's buttons is pressed. */
  readonly watch = (bar: HTMLElement): (() => void) => {
    const note = ({ target }: Event) => {
      const button = target instanceof Element ? target.closest('button') : null;
      this.held = button?.matches('.turn') ? button.getBoundingClientRect() : null;
      this.isDown = button !== null;
    };
    const letGo = () => (this.isDown = false);
    bar.addEventListener('pointerdown', note);
    addEventListener('pointerup', letGo);
    addEventListener('pointercancel', letGo);
    return () => {
      bar.removeEventListener('pointerdown', note);
      removeEventListener('pointerup', letGo);
      removeEventListener('pointercancel', letGo);
    };
  };

  /** Keeps such a press, or the end of one that began before, from what has just come to lie there. */
  readonly keepFrom = (row: HTMLElement): (() => void) => {
    const shown_ms = performance.now();
    let isHeldOn = this.isDown;
    let pressed_ms = -Infinity;
    const beginAnew = ({ timeStamp }: Event) => {
      isHeldOn = false;
      pressed_ms = timeStamp;
    };
    const hear = (press: MouseEvent) => {
      const since_ms = press.timeStamp - shown_ms;
      const isTap = press.timeStamp - pressed_ms < TAP_MS;
      const isPull = since_ms < (isTap ? UNREAD_MS : PULLS_ON_MS) && this.isThere(press);
      if (press.detail === 0 || !(isHeldOn || isPull)) return;
      isHeldOn = false;
      press.preventDefault();
      press.stopPropagation();
    };
    row.addEventListener('pointerdown', beginAnew, { capture: true });
    row.addEventListener('click', hear, { capture: true });
    return () => {
      row.removeEventListener('pointerdown', beginAnew, { capture: true });
      row.removeEventListener('click', hear, { capture: true });
    };
  };

  private isThere({ clientX: x, clientY: y }: MouseEvent): boolean {
    const { held } = this;
    return !!held && x >= held.left && x <= held.right && y >= held.top && y <= held.bottom;
  }
}

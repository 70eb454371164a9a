/** So long a press where the rod's button lay is one more pull, ms. */
const PULLS_ON_MS = 2500;

/** One more pull at the rod's button that comes when the result lies there already: it goes nowhere. */
export class LatePull {
  /** Where the button lay that was pressed last, on the window. */
  private held: DOMRect | null = null;

  /** Notes which of a bar's buttons is pressed. */
  readonly watch = (bar: HTMLElement): (() => void) => {
    const note = ({ target }: Event) => {
      const button = target instanceof Element && target.closest('button');
      this.held = button ? button.getBoundingClientRect() : null;
    };
    bar.addEventListener('pointerdown', note);
    return () => bar.removeEventListener('pointerdown', note);
  };

  /** Keeps such a press from what has just come to lie there. */
  readonly keepFrom = (row: HTMLElement): (() => void) => {
    const shown_ms = performance.now();
    const hear = (press: MouseEvent) => {
      const isLate = press.detail > 0 && press.timeStamp - shown_ms < PULLS_ON_MS;
      if (!isLate || !this.isThere(press)) return;
      press.preventDefault();
      press.stopPropagation();
    };
    row.addEventListener('click', hear, { capture: true });
    return () => row.removeEventListener('click', hear, { capture: true });
  };

  private isThere({ clientX: x, clientY: y }: MouseEvent): boolean {
    const { held } = this;
    return !!held && x >= held.left && x <= held.right && y >= held.top && y <= held.bottom;
  }
}

/** Where the keys go when the rod is what comes next. */
export class RodFocus {
  private rod: HTMLElement | null = null;
  private isDue = false;

  /** Brings the keys to the rod, or to the one that is still to come. */
  take(): void {
    this.isDue = this.rod === null;
    this.rod?.focus({ preventScroll: true });
  }

  /** The rod is there. */
  goesTo(rod: HTMLElement): void {
    this.rod = rod;
    if (this.isDue) this.take();
  }
}

/**
 * Begins a step at its top: a page that stayed where the last step was read hides the next one's
 * question. The heading takes the focus, so that it is read out as well.
 */
export function beginAtTop(within: HTMLElement): void {
  const heading = within.querySelector('h1');
  if (heading) {
    heading.tabIndex = -1;
    heading.focus({ preventScroll: true });
  }
  scrollTo({ top: 0, behavior: 'instant' });
}

/** Tells one step from the next; the first that is seen is no change. */
export class Steps {
  #last: string | null = null;

  isNext(step: string | null): boolean {
    const isNext = step !== null && this.#last !== null && step !== this.#last;
    this.#last = step ?? this.#last;
    return isNext;
  }
}

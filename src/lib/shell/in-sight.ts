const behavior = (): ScrollBehavior =>
  matchMedia('(prefers-reduced-motion: reduce)').matches ? 'auto' : 'smooth';

/** Moves the page no further than it must, and at once for who wants no motion. */
export function bringIntoSight(place: Element): void {
  place.scrollIntoView({ block: 'nearest', behavior: behavior() });
}

/** To the top of the window: what is taller than the room below. */
export function bringToTop(place: Element): void {
  place.scrollIntoView({ block: 'start', behavior: behavior() });
}

/** Moves the page no further than it must, and at once for who wants no motion. */
export function bringIntoSight(place: Element): void {
  const isStill = matchMedia('(prefers-reduced-motion: reduce)').matches;
  place.scrollIntoView({ block: 'nearest', behavior: isStill ? 'auto' : 'smooth' });
}

/** Something is made ready while it is this far off the window: one window's height above and below. */
const NEAR = '100% 0px';
/** A try in the hand, or told and not shown yet: it would be lost with its water. */
const UNDER_WAY = '[data-phase="moving"], [data-phase="guessing"]';

/**
 * Tells whether a place on the page is near the window, at each change. What holds the keys or a try
 * under way is never told to be far. @returns how to stop.
 */
export function watchNear(place: Element, tell: (isNear: boolean) => void): () => void {
  const observer = new IntersectionObserver(
    (entries) => {
      const isNear = entries[entries.length - 1].isIntersecting;
      if (isNear || !isInUse(place)) tell(isNear);
    },
    { rootMargin: NEAR }
  );
  observer.observe(place);
  return () => observer.disconnect();
}

function isInUse(place: Element): boolean {
  return place.contains(document.activeElement) || place.querySelector(UNDER_WAY) !== null;
}

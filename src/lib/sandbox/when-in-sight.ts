/** So much of it must be on the screen: a film that starts below its edge is over before it is seen. */
const SEEN_PART = 0.5;

/** Calls once when the place comes on to the screen. @returns how to stop waiting. */
export function whenInSight(place: Element, seen: () => void): () => void {
  const observer = new IntersectionObserver(
    (entries) => {
      // A busy page hears of out and in at once.
      if (entries.every(({ isIntersecting }) => !isIntersecting)) return;
      observer.disconnect();
      seen();
    },
    { threshold: SEEN_PART }
  );
  observer.observe(place);
  return () => observer.disconnect();
}

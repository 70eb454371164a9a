/** Where on the window a station counts as the one that is being read: a third of the way down. */
const READING_LINE = '-33% 0px -66% 0px';

/** Tells the id of the station that is being read, at each change. @returns how to stop. */
export function watchPlace(stations: Iterable<Element>, tell: (id: string) => void): () => void {
  const observer = new IntersectionObserver(
    (entries) => {
      const here = entries.find(({ isIntersecting }) => isIntersecting);
      if (here) tell(here.target.id);
    },
    { rootMargin: READING_LINE }
  );
  for (const station of stations) observer.observe(station);
  return () => observer.disconnect();
}

/** Waters above are put up as they come near, and push the station down: so long it is held, from far away too, ms. */
const SETTLES_MS = 5000;
const HANDS = ['wheel', 'touchstart', 'pointerdown', 'keydown'] as const;

/** Brings a station to the top of the window, and the keys to its heading. */
export function goTo(id: string): void {
  const station = document.getElementById(id);
  if (!station) return;
  station.scrollIntoView();
  station.querySelector<HTMLElement>('h2')?.focus({ preventScroll: true });
  holdUntilSettled(station);
}

/** Until the page above has its height, or a hand moves the page. */
function holdUntilSettled(station: HTMLElement): void {
  const observer = new ResizeObserver(() => station.scrollIntoView());
  if (station.parentElement) observer.observe(station.parentElement);
  const stop = () => {
    observer.disconnect();
    clearTimeout(timer);
    for (const hand of HANDS) removeEventListener(hand, stop);
  };
  const timer = setTimeout(stop, SETTLES_MS);
  for (const hand of HANDS) addEventListener(hand, stop, { passive: true });
}

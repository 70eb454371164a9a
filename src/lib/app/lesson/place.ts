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

/** Waters above are put up as they come near, and push the station down: so long it is held, by a slow phone too, ms. */
const SETTLES_MS = 15_000;
const HANDS = ['wheel', 'touchstart', 'pointerdown', 'keydown'] as const;

/** Brings a station to the top of the window, and the keys to its heading. */
export function goTo(id: string): void {
  const station = document.getElementById(id);
  if (!station) return;
  station.querySelector<HTMLElement>('h2')?.focus({ preventScroll: true });
  holdUntilSettled(station, () => station.scrollIntoView());
}

/** Who follows a link to a step stays at its heading, whatever is put up above it on the way. @returns how to stop. */
export function holdLinked(lesson: HTMLElement): () => void {
  const follow = ({ target, ctrlKey, metaKey, shiftKey }: MouseEvent) => {
    const link = target instanceof Element && target.closest<HTMLAnchorElement>('a[href^="#"]');
    if (!link || ctrlKey || metaKey || shiftKey) return;
    // After the browser went there by itself.
    setTimeout(() => goTo(link.hash.slice(1)));
  };
  lesson.addEventListener('click', follow);
  return () => lesson.removeEventListener('click', follow);
}

/** Where in a lesson its page stood as it was left: a station, and how far down the window its top, px. */
interface Place {
  station: string;
  top_px: number;
}
const left = new Map<string, Place>();

/** Called as a lesson is left. */
export function keepReadingPlace(lesson: string, stations: Iterable<Element>): void {
  const tops = [...stations].map((one) => ({
    station: one.id,
    top_px: one.getBoundingClientRect().top
  }));
  const read = tops.findLast(({ top_px }) => top_px <= innerHeight / 3);
  if (read) left.set(lesson, read);
}

/** The very place at which this lesson was left. @returns whether it is known */
export function goBackTo(lesson: string): boolean {
  const place = left.get(lesson);
  const station = place && document.getElementById(place.station);
  if (!station) return false;
  holdUntilSettled(station, () => scrollBy(0, station.getBoundingClientRect().top - place.top_px));
  return true;
}

/** Until the page above has its height, or a hand moves the page. */
function holdUntilSettled(station: HTMLElement, put: () => void): void {
  put();
  const observer = new ResizeObserver(put);
  if (station.parentElement) observer.observe(station.parentElement);
  const stop = () => {
    observer.disconnect();
    clearTimeout(timer);
    for (const hand of HANDS) removeEventListener(hand, stop);
  };
  const timer = setTimeout(stop, SETTLES_MS);
  for (const hand of HANDS) addEventListener(hand, stop, { passive: true });
}

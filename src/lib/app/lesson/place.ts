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

/** Brings a station to the top of the window, and the keys to its heading. */
export function goTo(id: string): void {
  const station = document.getElementById(id);
  station?.scrollIntoView();
  station?.querySelector<HTMLElement>('h2')?.focus({ preventScroll: true });
}

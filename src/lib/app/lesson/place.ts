import { bringIntoSight, type Shelf } from '$lib/shell';
import { tick } from 'svelte';
import * as v from 'valibot';

/** Where on the window a station counts as the one that is being read: a third of the way down. */
const READING_LINE = '-33% 0px -66% 0px';

/** Tells the id of the station that is being read, at each change. @returns how to stop. */
export function watchPlace(stations: Iterable<Element>, tell: (id: string) => void): () => void {
  /** Two at once, where one ends and the next begins: that the one is gone tells nothing of the other. */
  const there = new Set<string>();
  const observer = new IntersectionObserver(
    (entries) => {
      // A busy page hears of several moves of the window at once, in their order.
      for (const { isIntersecting, target } of entries) {
        if (isIntersecting) there.add(target.id);
        else there.delete(target.id);
      }
      const here = [...stations].findLast(({ id }) => there.has(id));
      if (here) tell(here.id);
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

/** Whether this station is the one that is being read, now: a busy page is told of it late. */
export function isRead(id: string): boolean {
  const { top, bottom } = document.getElementById(id)?.getBoundingClientRect() ?? new DOMRect();
  return top <= innerHeight / 3 && bottom > innerHeight / 3;
}

/** Keeps the way on from a step in sight, while an answer or a film over it is still put up. */
export async function showWayOn(id: string): Promise<void> {
  await tick();
  const station = document.getElementById(id);
  const onward = station?.querySelector('.on');
  if (station && onward) holdUntilSettled(station, () => bringIntoSight(onward));
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
const place = v.object({ station: v.string(), top_px: v.number() });
const places = v.record(v.string(), place);
const KEY = 'feltfoot-reading-places';

/** As long as this tab is: a reload finds them, too. */
function leftPlaces(shelf: Pick<Shelf, 'getItem'>): v.InferOutput<typeof places> {
  try {
    return v.parse(places, JSON.parse(shelf.getItem(KEY) ?? ''));
  } catch {
    return {};
  }
}

/** Called as a lesson is left, or its page is about to be loaded again. */
export function keepReadingPlace(shelf: Shelf, lesson: string, stations: Iterable<Element>): void {
  const tops = [...stations].map((one) => ({
    station: one.id,
    top_px: one.getBoundingClientRect().top
  }));
  const read = tops.findLast(({ top_px }) => top_px <= innerHeight / 3);
  if (!read) return;
  try {
    shelf.setItem(KEY, JSON.stringify({ ...leftPlaces(shelf), [lesson]: read }));
  } catch {
    // A shelf that is full or forbidden keeps nothing: the step's heading is where one comes back to.
  }
}

/** The very place at which this lesson was left. @returns whether it is known */
export function goBackTo(shelf: Pick<Shelf, 'getItem'>, lesson: string): boolean {
  const left = leftPlaces(shelf)[lesson];
  const station = left && document.getElementById(left.station);
  if (!station) return false;
  holdUntilSettled(station, () => scrollBy(0, station.getBoundingClientRect().top - left.top_px));
  return true;
}

/** Whether this page is there because it was loaded again. */
export function isReloaded(): boolean {
  const [load] = performance.getEntriesByType('navigation');
  return load instanceof PerformanceNavigationTiming && load.type === 'reload';
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

import type { Page } from '@playwright/test';

/** With less motion asked for, nothing moves or fades for longer than this, ms: three frames. */
const MOST_MS = 50;

/** What the page animates for longer, by CSS or by script; a page that asks for less has none. */
export function longMotions(page: Page): Promise<string[]> {
  return page.evaluate(
    (most) =>
      document
        .getAnimations()
        .map((motion) => ({
          ms: Number(motion.effect?.getComputedTiming().endTime ?? 0),
          of: motion.effect instanceof KeyframeEffect ? motion.effect.target?.outerHTML : ''
        }))
        .filter(({ ms }) => ms > most)
        .map(({ ms, of }) => `${ms} ms: ${of?.slice(0, 80)}`),
    MOST_MS
  );
}

/** What would move for longer once it is begun: a transition or an animation that any element is given. */
export function longStyles(page: Page): Promise<string[]> {
  return page.evaluate((most) => {
    const seconds = (list: string) => Math.max(...list.split(',').map(parseFloat));
    return [...document.querySelectorAll('*')].flatMap((element) => {
      const { transitionDuration, animationDuration, animationName, scrollBehavior } =
        getComputedStyle(element);
      const isLong =
        seconds(transitionDuration) * 1000 > most ||
        (animationName !== 'none' && seconds(animationDuration) * 1000 > most) ||
        scrollBehavior === 'smooth';
      return isLong ? [`${element.tagName}.${element.className.toString()}`] : [];
    });
  }, MOST_MS);
}

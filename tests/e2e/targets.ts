import type { Page } from '@playwright/test';

/** WCAG 2.2, 2.5.8 Target size (minimum), level AA, CSS px. */
const LEAST_PX = 24;

/**
 * Controls too small for a finger: less than 24 px high or wide, and without the room that makes up for it. A
 * circle of 24 px about the middle of a small one may meet no other target, and no other small one’s circle.
 * Links in a sentence are excepted there, as are boxes whose label takes the finger.
 */
export function smallTargets(page: Page): Promise<string[]> {
  return page.evaluate((least) => {
    const CONTROLS =
      'a[href], button, input:not([type="hidden"]), select, textarea, summary, [role="slider"], [role="button"]';
    const scope = document.querySelector('dialog[open]') ?? document.body;
    const isInSentence = (element: Element) =>
      getComputedStyle(element).display === 'inline' &&
      [...(element.parentElement?.childNodes ?? [])].some(
        (node) => node.nodeType === Node.TEXT_NODE && node.textContent?.trim()
      );
    const boxOf = (element: Element) => {
      const label = element instanceof HTMLInputElement ? element.labels?.[0] : undefined;
      const own = element.getBoundingClientRect();
      const around = label?.getBoundingClientRect();
      return around && around.width * around.height > own.width * own.height ? around : own;
    };
    const targets = [...scope.querySelectorAll(CONTROLS)]
      .filter((element) => element.checkVisibility({ visibilityProperty: true }))
      .filter((element) => !element.closest('.out-of-sight') && !isInSentence(element))
      .map((element) => ({ element, box: boxOf(element) }))
      .filter(({ box }) => box.width > 1 && box.height > 1);
    const isSmall = ({ box }: (typeof targets)[number]) =>
      Math.min(box.width, box.height) < least - 0.5;
    const middle = ({ left, top, width, height }: DOMRect) => [left + width / 2, top + height / 2];
    const isCrowded = (one: (typeof targets)[number]) => {
      const [x, y] = middle(one.box);
      return targets.some((other) => {
        if (other.element === one.element || other.element.contains(one.element)) return false;
        if (one.element.contains(other.element)) return false;
        const { left, right, top, bottom } = other.box;
        const away = Math.hypot(Math.max(left - x, 0, x - right), Math.max(top - y, 0, y - bottom));
        const [otherX, otherY] = middle(other.box);
        return (
          away < least / 2 - 0.5 ||
          (isSmall(other) && Math.hypot(otherX - x, otherY - y) < least - 0.5)
        );
      });
    };
    return targets
      .filter((one) => isSmall(one) && isCrowded(one))
      .map(({ element, box }) => {
        const name = element.getAttribute('aria-label') ?? element.textContent;
        return `${element.tagName} ${name.trim().slice(0, 30)}: ${box.width.toFixed(0)} × ${box.height.toFixed(0)}`;
      });
  }, LEAST_PX);
}

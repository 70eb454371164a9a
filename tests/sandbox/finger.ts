import { page } from 'vitest/browser';

/** A finger on a button, for so long by its own clock: a busy machine hears of both ends late. */
export function press(name: string, ms: number): void {
  hold(name)(ms);
}

/** A finger on a button. Returns what lets go of it, `ms` later by its own clock. */
export function hold(name: string): (ms: number) => void {
  const button = page.getByRole('button', { name, exact: true }).element() as HTMLElement;
  button.setPointerCapture = () => {};
  const event = (type: string) => new PointerEvent(type, { pointerId: 1, bubbles: true });
  const down = event('pointerdown');
  button.dispatchEvent(down);
  return (ms) => {
    const up = event('pointerup');
    Object.defineProperty(up, 'timeStamp', { value: down.timeStamp + ms });
    button.dispatchEvent(up);
  };
}

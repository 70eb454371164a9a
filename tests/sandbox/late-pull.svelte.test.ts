import { afterEach, expect, test, vi } from 'vitest';
import { LatePull } from '../../src/lib/sandbox/late-pull';

afterEach(() => {
  vi.restoreAllMocks();
  document.body.replaceChildren();
});

/** A bar with the rod's button and, once the try is over, a row with the next step's. */
function screen() {
  const late = new LatePull();
  const [bar, row] = [document.createElement('div'), document.createElement('div')];
  const [sweep, next] = [document.createElement('button'), document.createElement('button')];
  const done = document.createElement('button');
  sweep.className = 'turn';
  bar.append(sweep, done);
  row.append(next);
  document.body.append(bar);
  const gone = vi.fn();
  next.addEventListener('click', gone);
  late.watch(bar);
  const show = () => {
    document.body.append(row);
    late.keepFrom(row);
  };
  return { sweep, done, next, gone, show };
}

const pointer = (at: HTMLElement, type: string) =>
  at.dispatchEvent(new PointerEvent(type, { bubbles: true }));
const AWAY = { clientX: -5, clientY: -5 };
const click = (at: HTMLElement, ms = 0, where = AWAY) => {
  const press = new MouseEvent('click', { bubbles: true, detail: 1, ...where });
  if (ms) Object.defineProperty(press, 'timeStamp', { value: performance.now() + ms });
  at.dispatchEvent(press);
};

test('a hold that outlasts the try presses nothing when it ends, however late', () => {
  const { sweep, next, gone, show } = screen();
  pointer(sweep, 'pointerdown');
  show();
  pointer(next, 'pointerup');
  click(next, 4000);
  expect(gone).not.toHaveBeenCalled();
  pointer(next, 'pointerdown');
  pointer(next, 'pointerup');
  click(next, 4500);
  expect(gone).toHaveBeenCalledTimes(1);
});

test('a hold that ended with the try leaves the next press alone', () => {
  const { sweep, next, gone, show } = screen();
  pointer(sweep, 'pointerdown');
  pointer(sweep, 'pointerup');
  show();
  click(next);
  expect(gone).toHaveBeenCalledTimes(1);
});

test('one more pull where the rod’s button lay goes nowhere; a press where Done lay goes on', () => {
  const { sweep, done, next, gone, show } = screen();
  const on = (one: HTMLElement) => {
    const { left, top } = one.getBoundingClientRect();
    return { clientX: left + 1, clientY: top + 1 };
  };
  const press = (one: HTMLElement) => {
    pointer(one, 'pointerdown');
    pointer(one, 'pointerup');
    return on(one);
  };
  const pulled = press(sweep);
  show();
  click(next, 1000, pulled);
  // Held for longer than a tap.
  click(next, 1500, pulled);
  expect(gone).not.toHaveBeenCalled();
  click(next, 1500, press(done));
  expect(gone).toHaveBeenCalledTimes(1);
});

test('a tap where the rod’s button lay goes on, once there was time to read', () => {
  const { sweep, next, gone, show } = screen();
  const { left, top } = sweep.getBoundingClientRect();
  pointer(sweep, 'pointerdown');
  pointer(sweep, 'pointerup');
  show();
  const tapAt = (ms: number) => {
    const down = new PointerEvent('pointerdown', { bubbles: true });
    Object.defineProperty(down, 'timeStamp', { value: performance.now() + ms - 80 });
    next.dispatchEvent(down);
    click(next, ms, { clientX: left + 1, clientY: top + 1 });
  };
  tapAt(900);
  expect(gone).not.toHaveBeenCalled();
  tapAt(1400);
  expect(gone).toHaveBeenCalledTimes(1);
});

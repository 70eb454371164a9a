import { expect, test } from 'vitest';
import { Taps } from '../../src/lib/sandbox/taps';

test('a press that is let go of at once was a tap, and one that is held was none', () => {
  const taps = new Taps();
  const press = (what: 'hand' | 'reel', held_ms: number, isPressed = false) => {
    taps.look(what, 1000, 1, isPressed);
    expect(taps.isTap).toBe(false);
    taps.look(what, 1000 + held_ms, 0, isPressed);
    return [taps.isTap, taps.isAtReel];
  };
  expect(press('hand', 90)).toEqual([true, false]);
  expect(press('reel', 90)).toEqual([true, true]);
  expect(press('reel', 600)).toEqual([false, false]);
  // One press goes and the next stops: nobody has to hold it.
  expect(press('reel', 90, true)).toEqual([false, false]);
  press('reel', 90);
  taps.forget();
  expect([taps.isTap, taps.isAtReel]).toEqual([false, false]);
});

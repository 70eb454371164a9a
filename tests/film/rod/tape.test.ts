import {
  findTapes,
  learnTape,
  liftAngles,
  StillTaker,
  type ColorFrame,
  type Tape
} from '$lib/film';
import { describe, expect, test } from 'vitest';

const SIZE = { width_px: 320, height_px: 180 };
type Color = readonly [number, number, number];
const ORANGE: Color = [240, 110, 20];

/** Grey, with discs of 5 px in a colour. */
function picture(
  discs: readonly (readonly [number, number])[],
  color = ORANGE,
  light = 1
): ColorFrame {
  const rgba = new Uint8ClampedArray(4 * SIZE.width_px * SIZE.height_px);
  for (let i = 0; i < SIZE.width_px * SIZE.height_px; i++) {
    const [x, y] = [i % SIZE.width_px, Math.floor(i / SIZE.width_px)];
    const grey = 90 + ((i * 37) % 40);
    const share = Math.max(
      0,
      ...discs.map(([u, v]) => Math.min(5.5 - Math.hypot(x - u, y - v), 1))
    );
    color.forEach((value, k) => (rgba[4 * i + k] = light * (grey + share * (value - grey))));
  }
  return { ...SIZE, rgba };
}

const taught = (frame: ColorFrame, x_px: number, y_px: number): Tape => {
  const tape = learnTape(frame, { x_px, y_px });
  if (typeof tape === 'string') throw new Error(tape);
  return tape;
};

describe('a strip of tape', () => {
  test('is found to a fifth of a pixel, between pixels and in half the light', () => {
    const tape = taught(picture([[60, 60]]), 60, 60);
    for (const [x, y] of [
      [100.3, 90.6],
      [201.7, 33.2]
    ] as const) {
      const [found] = findTapes(picture([[x, y]], ORANGE, 0.7), tape, 1);
      expect(Math.hypot(found.x_px - x, found.y_px - y)).toBeLessThan(0.2);
    }
  });

  test('two pieces are two, and one is not', () => {
    const frame = picture([
      [60, 60],
      [150, 100]
    ]);
    const tape = taught(frame, 60, 60);
    expect(findTapes(frame, tape, 2)).toHaveLength(2);
    expect(findTapes(picture([[60, 60]]), tape, 2)).toHaveLength(1);
    expect(findTapes(picture([]), tape, 1)).toEqual([]);
  });

  test('in the dark, or of no color, is refused', () => {
    expect(learnTape(picture([[60, 60]], ORANGE, 0.2), { x_px: 60, y_px: 60 })).toBe('dark');
    expect(learnTape(picture([]), { x_px: 60, y_px: 60 })).toBe('dull');
  });
});

describe('a lift seen from the side', () => {
  /** Two tapes 60 px apart on a rod at this angle; the camera turned by yaw. */
  const pair = (deg: number, yaw_deg = 0) => {
    const a = (deg * Math.PI) / 180;
    const right = 60 * Math.cos(a) * Math.cos((yaw_deg * Math.PI) / 180);
    return {
      inner: { x_px: 100, y_px: 150 },
      outer: { x_px: 100 + right, y_px: 150 - 60 * Math.sin(a) }
    };
  };

  test('gives level and upright, and a foot of tip to an inch', () => {
    const view = liftAngles(pair(1), pair(91));
    if (typeof view === 'string') throw new Error(view);
    expect(view.angleAt(1)).toBeCloseTo(0, 6);
    expect(view.angleAt(91)).toBeCloseTo(90, 6);
    expect(view.wayOff_m(20, 35, 1.8)).toBeLessThan(0.0254);
  });

  test('is refused where the camera looks aslant, or the poses were not those', () => {
    expect(liftAngles(pair(0, 25), pair(90, 25))).toBe('yaw');
    expect(liftAngles(pair(0), pair(75))).toBe('poses');
  });
});

describe('a pose is taken by itself', () => {
  const still = { hold_s: 0.5, within: 4, apart: 10 };

  test('once, when it is held, and not while the rod is on its way', () => {
    const taker = new StillTaker(still);
    const taken = Array.from({ length: 90 }, (_, i) => {
      const t_s = i / 30;
      const value = t_s < 1 ? 100 : Math.min(100 + 200 * (t_s - 1), 200);
      return taker.next(t_s, value);
    }).filter((one) => one !== null);
    expect(taken).toHaveLength(2);
    expect(taken[0]).toBeCloseTo(100, 6);
    expect(taken[1]).toBeCloseTo(200, -0.5);
  });

  test('not from readings on both sides of a gap', () => {
    const taker = new StillTaker(still);
    for (let i = 0; i < 10; i++) expect(taker.next(i / 30, 50)).toBeNull();
    taker.interrupt();
    expect(taker.next(0.6, 50)).toBeNull();
  });
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { closeUp, WORDS_PX } from '../../src/lib/sandbox/close-up';
import { fitView, heightFor, metresX, metresZ, pixelX, pixelY } from '../../src/lib/sandbox/view';

const EXTENT = { nearest_m: -3, farthest_m: 21, lowest_m: -5.5, highest_m: 3.1 };

describe('a view', () => {
  test.each([
    [1100, 380],
    [320, 300],
    [500, 90]
  ])('in %i × %i px holds all of its extent', (width, height) => {
    const view = fitView(EXTENT, width, height);
    expect(pixelX(view, EXTENT.farthest_m)).toBeGreaterThanOrEqual(-1e-9);
    expect(pixelX(view, EXTENT.nearest_m)).toBeCloseTo(width, 9);
    expect(pixelY(view, EXTENT.highest_m)).toBeGreaterThanOrEqual(-1e-9);
    expect(pixelY(view, EXTENT.lowest_m)).toBeCloseTo(height, 9);
  });

  test('has the boat on the right and the sky above', () => {
    const view = fitView(EXTENT, 640, 300);
    expect(pixelX(view, 20)).toBeLessThan(pixelX(view, 0));
    expect(pixelY(view, 1)).toBeLessThan(pixelY(view, -1));
  });

  test('finds the metres of its own pixels', () => {
    const view = fitView(EXTENT, 640, 300);
    expect(metresX(view, pixelX(view, 7.3))).toBeCloseTo(7.3, 9);
    expect(metresZ(view, pixelY(view, -2.2))).toBeCloseTo(-2.2, 9);
  });

  test('is as high as its extent asks for, within what is allowed', () => {
    expect(heightFor(EXTENT, 480, 400)).toBe(Math.round((480 * 8.6) / 24));
    expect(heightFor({ ...EXTENT, lowest_m: -40 }, 480, 288)).toBe(288);
  });
});

describe('the close-up', () => {
  const start = { x_m: 19.5, z_m: -4.2 };
  const reaches = fc.record({
    least_travel_m: fc.double({ min: -0.3, max: 0, noNaN: true }),
    most_travel_m: fc.double({ min: 0, max: 15, noNaN: true }),
    most_height_m: fc.double({ min: 0, max: 3, noNaN: true }),
    most_fall_m: fc.double({ min: 0, max: 1, noNaN: true })
  });

  test('shows everywhere the bait has been', () => {
    fc.assert(
      fc.property(reaches, (reach) => {
        const view = closeUp(reach, start, 700, 320);
        expect(pixelX(view, start.x_m - reach.most_travel_m)).toBeLessThan(700);
        expect(pixelX(view, start.x_m - reach.least_travel_m)).toBeGreaterThan(0);
        expect(pixelY(view, start.z_m + reach.most_height_m)).toBeGreaterThan(0);
        expect(pixelY(view, start.z_m - reach.most_fall_m)).toBeLessThan(320);
      })
    );
  });

  test('keeps the start in its place when it goes over to a smaller scale', () => {
    const near = closeUp(
      { least_travel_m: 0, most_travel_m: 0.4, most_height_m: 0.1, most_fall_m: 0 },
      start,
      700,
      320
    );
    const far = closeUp(
      { least_travel_m: 0, most_travel_m: 2.9, most_height_m: 0.1, most_fall_m: 0 },
      start,
      700,
      320
    );
    expect(far.scale).toBeLessThan(near.scale);
    expect(pixelX(far, start.x_m)).toBeCloseTo(pixelX(near, start.x_m), 9);
    expect(pixelY(far, start.z_m)).toBeCloseTo(pixelY(near, start.z_m), 9);
  });
});

// The close-up's size at 360×640 on the front page and in a try, at 390×780, 768×1024 and 1280×800.
test.each([
  [360, 114],
  [360, 152],
  [390, 205],
  [490, 470],
  [819, 380]
])(
  'what is asked up to 1 m high stands below the words in a picture of %d by %d',
  (width, height) => {
    const reach = { least_travel_m: 0, most_travel_m: 0.5, most_height_m: 1, most_fall_m: 0 };
    const view = closeUp(reach, { x_m: 12, z_m: -3 }, width, height);
    expect(pixelY(view, -3 + 1)).toBeGreaterThanOrEqual(WORDS_PX);
  }
);

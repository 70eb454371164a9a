import { expect, test } from 'vitest';
import { castSketch, SKETCH, type Cast } from '../../../src/lib/app/try/cast-sketch';
import { allLessons } from '../../../src/lib/course';

const cast = (bait_x_m: number, depth_m: number): Cast => ({
  setup: { water: { depth_m }, start: { bait_x_m }, rod: { length_m: 2, pivot_height_m: 1.1 } },
  start: { elevation_deg: 0, azimuth_deg: 60 }
});

test('a cast is drawn to one scale: how far out, how deep, and how high the hand', () => {
  const { hand, bait, bed, surface } = castSketch(cast(12, 3));
  const scale = (hand.x - bait.x) / 12;
  expect((bed - surface) / scale).toBeCloseTo(3, 9);
  expect((surface - hand.y) / scale).toBeCloseTo(1.1, 9);
  expect(bait.y).toBe(bed);
});

test('a bait that is still to fall lies on the surface', () => {
  const falls = cast(12, 3);
  const start = { bait_x_m: 12, line: 'splash' } as const;
  const { bait, surface } = castSketch({ ...falls, setup: { ...falls.setup, start } });
  expect(bait.y).toBe(surface);
});

test('a slack line hangs in its drawing, and a tight one does not', () => {
  const hangs = (slack_m: number) => {
    const of = cast(12, 3);
    const { bow, tip, bait, bed } = castSketch({
      ...of,
      setup: { ...of.setup, start: { bait_x_m: 12, slack_m } }
    });
    expect(bow.y).toBeLessThanOrEqual(bed);
    return bow.y - (tip.y + bait.y) / 2;
  };
  expect(hangs(0)).toBeCloseTo(0, 9);
  expect(hangs(0.4)).toBeGreaterThan(20);
  expect(hangs(0.02)).toBeLessThan(hangs(0.2));
});

test('every try of every lesson stays within its drawing, right under the boat too', () => {
  for (const challenge of allLessons().flatMap(({ challenges }) => challenges)) {
    const { hand, tip, bait } = castSketch(challenge);
    for (const { x, y } of [hand, tip, bait]) {
      expect(x, challenge.id).toBeGreaterThan(0);
      expect(x, challenge.id).toBeLessThan(SKETCH.width);
      expect(y, challenge.id).toBeGreaterThan(0);
      expect(y, challenge.id).toBeLessThan(SKETCH.height);
    }
  }
});

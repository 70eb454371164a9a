import { expect, test } from 'vitest';
import { findChallenge, loadLessons } from '../../../src/lib/course';
import { FOOT_M } from '../../../src/lib/model';
import type { Challenge, Units } from '../../../src/lib/scoring';
import { roomPlot } from '../../../src/lib/app/clinic/room-plot';
import { tied } from '../../tied';

const oneFoot = findChallenge('exactly-one-foot', loadLessons()) as Challenge;
const plotOf = (units: Units, ...travels_m: number[]) =>
  roomPlot(
    oneFoot,
    travels_m.map((travel_m, i) => ({ id: String(i), travel_m, marks: 0 })),
    units
  ).spread;

test.each([0.5, 1, 2, 5, 9])('a try of two feet lies on “2 ft”, beside one of %f ft', (other) => {
  const { marks, ticks } = plotOf('imperial', 2 * FOOT_M, other * FOOT_M);
  const two = ticks.find(({ label }) => label === tied('2~ft'));
  if (two) expect(marks.find(({ id }) => id === '0')?.x).toBeCloseTo(two.x, 6);
  else expect(other).toBe(9);
});

test.each(['imperial', 'metric'] as const)('what is asked lies on its tick (%s)', (units) => {
  for (const most of [0.2, 0.61, 1.4, 3]) {
    const { target, ticks } = plotOf(units, most);
    const at = ticks.filter(({ x }) => Math.abs(x - target) < 60);
    expect(at).toEqual([{ x: target, label: units === 'imperial' ? tied('1~ft') : tied('30~cm') }]);
  }
});

test('ticks are feet, half feet and inches, or whole tens of centimetres', () => {
  const labels = (units: Units) => plotOf(units, 0.9).ticks.map(({ label }) => label);
  expect(labels('imperial')).toEqual(['0', '6~in', '1~ft', '18~in', '2~ft', '2½~ft'].map(tied));
  expect(labels('metric')).toEqual(['0', '20~cm', '30~cm', '60~cm', '80~cm'].map(tied));
});

test('the room’s middle lies on a try, or between two heaps with none between them', () => {
  const places = (...travels: number[]) => {
    const { marks, middle } = plotOf('imperial', ...travels);
    return { xs: marks.map(({ x }) => x), middle };
  };
  const odd = places(0.1, 0.12, 0.5);
  expect(odd.middle).toMatchObject({ from: odd.xs[1], to: odd.xs[1], isSplit: false });
  const split = places(0.1, 0.12, 0.5, 0.55);
  expect(split.middle).toMatchObject({ from: split.xs[1], to: split.xs[2], isSplit: true });
  const close = places(0.1, 0.28, 0.32, 0.55).middle;
  expect(close).toMatchObject({ from: close?.to, isSplit: false });
  expect(places(0.1, 0.5).middle).toBeNull();
});

test('the name of the room’s middle stands on the drawing, away from what is asked', () => {
  const anchors = [0.02, 0.25, 0.32, 3].map(
    (travel) => plotOf('imperial', travel, travel, travel).middle?.name.anchor
  );
  expect(anchors).toEqual(['start', 'end', 'start', 'end']);
});

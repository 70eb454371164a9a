import { describe, expect, test } from 'vitest';
import { angleOf, Grip, keyDirection } from '../../src/lib/sandbox/grip';

const PIVOT = { x: 300, y: 220 };
const around = (deg: number, radius = 150) => ({
  x: PIVOT.x - radius * Math.cos((deg * Math.PI) / 180),
  y: PIVOT.y - radius * Math.sin((deg * Math.PI) / 180)
});

describe('a pointer on the rod', () => {
  test.each([0, 30, 90, 135, -45])('is seen from the pivot under its angle, %i°', (deg) => {
    expect(angleOf(around(deg), PIVOT)).toBeCloseTo(deg, 9);
  });

  test('turns the rod by the angle it goes round, wherever it took hold', () => {
    const grip = new Grip(around(70, 40), PIVOT, 12);
    expect(grip.moveTo(around(75, 90))).toBeCloseTo(17, 9);
    expect(grip.moveTo(around(61, 200))).toBeCloseTo(3, 9);
  });

  test('turns it on past the far side without a jump', () => {
    const grip = new Grip(around(170), PIVOT, 80);
    expect(grip.moveTo(around(190))).toBeCloseTo(100, 9);
    expect(grip.moveTo(around(165))).toBeCloseTo(75, 9);
  });

  test('does not spin the rod on crossing the pivot', () => {
    const grip = new Grip(around(20), PIVOT, 20);
    expect(grip.moveTo({ x: PIVOT.x + 3, y: PIVOT.y - 4 })).toBe(20);
  });
});

describe('an arrow key', () => {
  test.each([
    ['ArrowUp', 'lift', 20, 1],
    ['ArrowDown', 'lift', 20, -1],
    ['ArrowRight', 'lift', -5, 1],
    ['ArrowLeft', 'lift', 20, -1],
    ['ArrowUp', 'sweep', -20, 1],
    ['ArrowRight', 'sweep', 20, 1],
    ['ArrowRight', 'sweep', -20, -1],
    ['ArrowLeft', 'sweep', -20, 1],
    ['Enter', 'lift', 20, 0]
  ] as const)('%s in a %s at %i° turns the rod by %i', (key, plane, angle, direction) => {
    expect(keyDirection(key, plane, angle)).toBe(direction);
  });
});

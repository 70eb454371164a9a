import { describe, expect, test } from 'vitest';
import { emulatorOf } from '../../src/lib/fit/emulator';
import { seededRandom } from '../../src/lib/model';

const random = seededRandom(3);
const POINTS = Array.from({ length: 60 }, () => [3 * random() - 1.5, 3 * random() - 1.5]);
const bent = ([a, b]: readonly number[]) => 1.2 + 0.5 * a - 0.2 * b + 0.1 * a * b;
/** As a height is: nought until the bait leaves the bottom. */
const kinked = ([a, b]: readonly number[]) => Math.max(0, 0.3 * a + 0.1 * b);
const emulator = emulatorOf(
  POINTS,
  [bent, kinked].map((f) => POINTS.map(f))
);

function at(u: readonly number[]) {
  const [mean, sd] = [new Float64Array(2), new Float64Array(2)];
  emulator.at(u, mean, sd);
  return { mean, sd };
}

describe('between its runs an emulator', () => {
  test('follows what bends to a few millimetres, and what has a kink to within its own doubt', () => {
    for (const u of [
      [0.3, -0.4],
      [-0.9, 0.6],
      [0.05, 0.1],
      [1.1, 1]
    ]) {
      const { mean, sd } = at(u);
      // A hundredth of what it varies by, 1 m.
      expect(Math.abs(mean[0] - bent(u))).toBeLessThan(0.01);
      // Four deviations: eight figures, and a kink is the worst there is.
      expect(Math.abs(mean[1] - kinked(u))).toBeLessThan(4 * sd[1]);
    }
  });

  test('doubts itself more the further it is from any run', () => {
    const [near, far, further] = [at(POINTS[7]), at([3, 3]), at([6, -6])].map(({ sd }) => sd[1]);
    expect(near).toBeLessThan(far / 3);
    expect(far).toBeLessThan(further);
  });
});

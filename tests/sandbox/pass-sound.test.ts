import { expect, test } from 'vitest';
import { peakOf, WAVE_RATE_HZ } from '../../src/lib/sandbox/felt-wave';
import { PASS_BUZZ_MS, passWave } from '../../src/lib/sandbox/pass-sound';

test('a pass is heard for a quarter of a second, quieter than the bottom, and buzzes twice', () => {
  const wave = passWave();
  expect(wave.length / WAVE_RATE_HZ).toBeCloseTo(0.22, 2);
  // Heard well, and a third of what a knock on rock may reach.
  expect(peakOf(wave)).toBeGreaterThan(0.25);
  expect(peakOf(wave)).toBeLessThan(0.35);
  // It begins and ends in silence, and so without a click.
  expect([wave[0], wave[wave.length - 1]].every((value) => Math.abs(value) < 0.01)).toBe(true);
  expect(PASS_BUZZ_MS.filter((_, i) => i % 2 === 0)).toHaveLength(2);
});

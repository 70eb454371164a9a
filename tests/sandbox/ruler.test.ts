import { describe, expect, test } from 'vitest';
import { FOOT_M, INCH_M } from '../../src/lib/model';
import { rulerTicks, soundingMarks } from '../../src/lib/sandbox/ruler';
import { tied } from '../tied';

const labels = (ticks: readonly { label: string }[]) =>
  ticks.map(({ label }) => label).filter((label) => label !== '');

describe('the ruler', () => {
  test('in feet has its numbers at the half foot when there is room', () => {
    const ticks = rulerTicks(-0.5 * FOOT_M, 2 * FOOT_M, 100 / FOOT_M, 'imperial');
    expect(labels(ticks)).toEqual(['−6~in', '0', '6~in', '1~ft', '18~in', '2~ft'].map(tied));
    expect(ticks).toHaveLength(31);
    expect(ticks[7].at_m).toBeCloseTo(INCH_M, 12);
  });

  test('beyond two feet counts in halves', () => {
    const ticks = rulerTicks(2 * FOOT_M, 4 * FOOT_M, 100 / FOOT_M, 'imperial');
    expect(labels(ticks)).toEqual(['2~ft', '2½~ft', '3~ft', '3½~ft', '4~ft'].map(tied));
  });

  test('in metric has centimetres, then metres', () => {
    expect(labels(rulerTicks(0, 0.3, 600, 'metric'))).toEqual(
      ['0', '10~cm', '20~cm', '30~cm'].map(tied)
    );
    expect(labels(rulerTicks(0, 2, 80, 'metric'))).toEqual(['0', '1~m', '2~m'].map(tied));
  });

  test.each([
    ['imperial', 900],
    ['imperial', 300],
    ['imperial', 42],
    ['imperial', 13],
    ['imperial', 5],
    ['metric', 900],
    ['metric', 300],
    ['metric', 42],
    ['metric', 5]
  ] as const)('in %s at %i px/m keeps its numbers apart', (units, scale) => {
    const at = rulerTicks(0, 2000 / scale, scale, units)
      .filter(({ rank }) => rank === 2)
      .map(({ at_m }) => at_m * scale);
    expect(at.length).toBeGreaterThan(1);
    expect(Math.min(...at.slice(1).map((x, i) => x - at[i]))).toBeGreaterThanOrEqual(44);
  });

  test('goes from solid to open at each tick of rank, also across zero', () => {
    const parts = rulerTicks(-1, 1, 300, 'imperial').filter(({ rank }) => rank > 0);
    parts.slice(1).forEach((part, i) => expect(part.isSolid).toBe(!parts[i].isSolid));
  });
});

describe('the marks of the sounding line', () => {
  test('stand every five feet, and stay clear of the bottom', () => {
    expect(labels(soundingMarks(18 * FOOT_M, 40, 'imperial'))).toEqual(
      ['5~ft', '10~ft', '15~ft'].map(tied)
    );
    expect(labels(soundingMarks(15.5 * FOOT_M, 40, 'imperial'))).toEqual(
      ['5~ft', '10~ft'].map(tied)
    );
  });

  test('are fewer where there is less room', () => {
    expect(labels(soundingMarks(12, 9, 'metric'))).toEqual(['5~m', '10~m'].map(tied));
    expect(labels(soundingMarks(4.4, 40, 'metric'))).toEqual(
      ['1~m', '2~m', '3~m', '4~m'].map(tied)
    );
  });
});

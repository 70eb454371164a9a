import { describe, expect, test } from 'vitest';
import { waterWith } from '../../src/lib/course/lessons/fathomley';
import { BOX_OZ } from '../../src/lib/course/box';
import { countWords, weightChart, weightVerdict } from '../../src/lib/course/weight-chart';

describe('the chart of weights', () => {
  const rows = weightChart(waterWith({ depth_m: 6.1 }));

  test('has a row for each weight of the box, and each heavier one falls faster and pulls harder', () => {
    expect(rows.map(({ ounces }) => ounces)).toEqual([...BOX_OZ]);
    for (const [i, row] of rows.slice(1).entries()) {
      expect(row.fall_s).toBeLessThan(rows[i].fall_s);
      expect(row.pull_N).toBeGreaterThan(rows[i].pull_N);
    }
  });

  test('lets a heavier jig be dragged as quickly as a lighter one, or quicker', () => {
    const drags = rows.map(({ drag_s }) => drag_s ?? Infinity);
    expect(drags).toEqual([...drags].sort((a, b) => b - a));
  });

  test('says of a weight whether it is down in time, stays down, and how it is felt', () => {
    const wanted = { within_s: 12, drag_s: 4 };
    const row = { ounces: 0.5, fall_s: 9, fall_band_s: 3, drag_s: 4, pull_N: 0.3 };
    expect(weightVerdict(row, wanted, 'imperial')).toMatch(/: in time.*stays down.*at the tip\.$/);
    expect(weightVerdict({ ...row, fall_s: 12.3 }, wanted, 'metric')).toMatch(/probably in time/);
    const near = { ...row, fall_s: 13, fall_band_s: 5 };
    expect(weightVerdict(near, wanted, 'imperial')).toMatch(/probably too late/);
    const late = { ...row, fall_s: 20, drag_s: null };
    expect(weightVerdict(late, wanted, 'imperial')).toMatch(/too late.*may leave.*More weight/);
    // Nobody counts tenths of a second.
    expect(countWords({ fall_s: 8.7, fall_band_s: 3.3 })).toBe('9\u00a0s, 5 to 12');
    expect(countWords({ fall_s: 4.1, fall_band_s: 0.2 })).toBe('4\u00a0s');
    expect(weightVerdict({ ...row, fall_s: Infinity }, wanted, 'metric')).toMatch(/isn’t down/);
  });
});

import { describe, expect, test } from 'vitest';
import { waterWith } from '../../src/lib/course/lessons/fathomley';
import { BOX_OZ } from '../../src/lib/course/box';
import {
  countWords,
  weightChart,
  weightVerdict,
  type WeightRow
} from '../../src/lib/course/weight-chart';
import { FOOT_M } from '../../src/lib/model';
import { tied } from '../tied';

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

  const wanted = { within_s: 12, drag_s: 4, depth_m: 20 * FOOT_M, wind: 'calm' };
  const row: WeightRow = { ounces: 0.5, fall_s: 9, fall_band_s: 3, drag_s: 4, pull_N: 0.6 };
  const light: WeightRow = { ...row, ounces: 0.25, fall_s: 20, drag_s: null, pull_N: 0.3 };
  const box = [light, row, { ...row, ounces: 1, fall_s: 6 }];
  const said = (one: WeightRow, rows = box) => weightVerdict(one, rows, wanted, 'imperial');

  test('says of a weight whether it does: down in time, down at the pace, and felt beside the lightest', () => {
    expect(said(row)).toBe(
      tied(
        'That works. Down in about 9~s, 6 to 12: in time. It stays down at that pace. You’d feel it pull about twice as hard as 1/4~oz. Most guides tie on 1/2~oz here, too.'
      )
    );
    expect(said({ ...row, fall_s: 12.3 })).toMatch(/^That works\..*probably in time/);
  });

  test('says of one that does not which would do', () => {
    expect(said(light)).toMatch(
      /^Too light\..*: too late\..*may leave.*least of the box\. Most guides tie on 1\/2\soz here: that or heavier would do\.$/
    );
    expect(said({ ...light, fall_s: 13, fall_band_s: 5 })).toMatch(
      /^Too light\..*probably too late/
    );
    const onlyHeavy = [light, { ...light, ounces: 0.5 }, { ...row, ounces: 1 }];
    expect(said(light, onlyHeavy)).toMatch(/ 1\soz would do\./);
    expect(said(light, [light])).toMatch(
      /Nothing in the box does: smaller trailer, or slower\. Most guides tie on 1\/2\soz here\./
    );
    expect(said({ ...row, fall_s: Infinity })).toMatch(/isn’t down after a minute/);
  });

  test('says of what guides tie on that the gear holds it up, and of a pull that is nearly the same that it feels like it', () => {
    expect(said({ ...row, fall_s: 20 })).toMatch(/^Not on this gear\..*too late/);
    expect(said({ ...row, drag_s: 5 })).toMatch(/^Not on this gear\..*may leave/);
    expect(said({ ...row, pull_N: 0.305 })).toContain('feel it pull like');
    // A third more is felt.
    expect(said({ ...row, pull_N: 0.4 })).toContain('a little harder than');
  });

  test('counts as a voice does: nobody counts tenths of a second', () => {
    expect(countWords({ fall_s: 8.7, fall_band_s: 3.3 })).toBe('9\u00a0s, 5 to 12');
    expect(countWords({ fall_s: 4.1, fall_band_s: 0.2 })).toBe('4\u00a0s');
  });
});

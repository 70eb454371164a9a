import { describe, expect, test } from 'vitest';
import { waterWith } from '../../src/lib/course/lessons/fathomley';
import { BOX_OZ } from '../../src/lib/course/box';
import {
  countWords,
  feltWords,
  guidesLiftWords,
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

  test('says of a weight that does one verdict, why, and whether most guides tie it on', () => {
    expect(said(row)).toBe(
      'that works. It’s down in time and stays down. Most guides tie it on here.'
    );
    expect(said({ ...row, ounces: 0.75 })).toBe(
      tied('that works. It’s down in time and stays down. Most guides use 1/2~oz here.')
    );
    expect(said({ ...row, fall_s: 12.3 })).toMatch(/^that works\..* probably down in time/);
  });

  test('calls heavy what is two sizes over, where something lighter does it as well', () => {
    expect(said({ ...row, ounces: 1 })).toBe(
      tied(
        'heavy for this. It’s down and stays down, but it drops like a rock: fish see less of the fall, and in rock it wedges. Most guides use 1/2~oz here.'
      )
    );
    expect(said({ ...row, ounces: 1 }, [light, { ...row, ounces: 1 }])).toMatch(/^that works\./);
  });

  test('says of one that does not why, by what decides it, and what to tie on', () => {
    expect(said(light)).toBe(
      tied('too light. It gets down too late. Tie on 1/2~oz, like most guides, or more.')
    );
    expect(said({ ...light, fall_s: 13, fall_band_s: 5 })).toMatch(/ probably gets down too late/);
    expect(said({ ...light, fall_s: 9 })).toMatch(/^too light\. It may lift at that pace\. Tie on/);
    expect(said({ ...row, fall_s: Infinity })).toMatch(/isn’t down after a minute/);
    // One that guides see lift, whatever the model says of it.
    expect(said({ ...light, fall_s: 9, drag_s: 4 })).toMatch(
      /^guides go heavier\. They see it lift here; by the model it stays down\./
    );
    const less = { ...row, ounces: 0.375 };
    expect(said(light, [light, less, row])).toBe(
      tied('too light. It gets down too late. Tie on 3/8~oz or more; most guides use 1/2~oz here.')
    );
    const onlyHeavy = [light, { ...light, ounces: 0.5 }, { ...row, ounces: 1 }];
    expect(said(light, onlyHeavy)).toMatch(
      / Tie on 1\soz on this gear; most guides use 1\/2\soz here\.$/
    );
    expect(said(light, [light])).toMatch(
      /Nothing in the box does it: use a smaller trailer\. Most/
    );
    expect(said(light, [{ ...light, fall_s: 9 }])).toMatch(/does it: drag slower\. Most/);
  });

  test('says of what guides tie on that the gear holds it up', () => {
    expect(said({ ...row, fall_s: 20 })).toMatch(/^not on this gear\. It gets down too late/);
    expect(said({ ...row, drag_s: 5 })).toMatch(/^not on this gear\. It may lift/);
  });

  test('says in the table how hard one pulls beside the lightest: what differs by little is about the same', () => {
    const felt = (pull_N: number) => feltWords({ ...row, pull_N }, light);
    expect(feltWords(light, light)).toBe('');
    expect(felt(0.305)).toBe('about the same');
    // A third more is felt.
    expect(felt(0.4)).toBe('a bit harder');
    expect(felt(0.45)).toBe('half again as hard');
    // What differs by a fifth is not called the same.
    expect(felt(0.54)).toBe('nearly twice');
    expect(felt(0.66)).toBe('over twice');
    expect(felt(0.9)).toBe('3 times');
  });

  test('says in the table which of the box guides see lift here, where they do', () => {
    expect(guidesLiftWords(box, wanted, 'imperial')).toBe(tied('Guides see 1/4~oz lift here.'));
    expect(guidesLiftWords(box, { ...wanted, depth_m: 10 * FOOT_M }, 'imperial')).toBe('');
    // In the row that says otherwise it is not left to the reader to find that out.
    expect(guidesLiftWords([{ ...light, drag_s: 4 }, row], wanted, 'imperial')).toBe(
      tied('Guides see 1/4~oz lift here; the model keeps it down.')
    );
  });

  test('counts as a voice does: nobody counts tenths of a second', () => {
    expect(countWords({ fall_s: 8.7, fall_band_s: 3.3 })).toBe('9\u00a0s, 5 to 12');
    expect(countWords({ fall_s: 4.1, fall_band_s: 0.2 })).toBe('4\u00a0s');
  });
});

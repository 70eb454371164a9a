import { describe, expect, test } from 'vitest';
import { shareOf, valueOf } from '../../src/lib/scoring/goals';
import { PASS_MARK, type Goal } from '../../src/lib/scoring';
import { overLevel, resultOf, type MadeUp } from './results';

const travel: Goal = { kind: 'travel', target_m: 0.3, band_m: 0.04 };
const peak: Goal = { kind: 'peak_height', most_m: 0.1 };
const contact: Goal = { kind: 'contact', least: 0.8 };
const hops: Goal = { kind: 'hops', count: 2, height_m: [0.1, 0.2] };
const stones: Goal = { kind: 'stones', touched: [0, 2] };

/** `on` ticks on the bottom of `all` in which the bait moved; the first sample is no tick. */
function ticks(on: number, all: number): (0 | 1)[] {
  return Array.from({ length: all + 1 }, (_, i) => (i <= on ? 1 : 0));
}

describe('a goal’s share', () => {
  const cases: [string, Goal, MadeUp, number][] = [
    ['travel on the target is full', travel, { travel_m: 0.3 }, 1],
    ['travel just inside the band is full', travel, { travel_m: 0.2601 }, 1],
    [
      'travel half a band too far earns by its part of the way',
      travel,
      { travel_m: 0.36 },
      (0.75 * 0.34) / 0.36
    ],
    [
      'travel half a band short earns by its part of the way',
      travel,
      { travel_m: 0.24 },
      (0.75 * 0.24) / 0.26
    ],
    ['travel twice as far is as half of it', travel, { travel_m: 0.68 }, 0.75 / 2],
    ['travel the wrong way is nothing', travel, { travel_m: -0.3 }, 0],
    ['a low peak is full', peak, { peak_height_m: 0.1 }, 1],
    [
      'a peak 7.5 cm too high is half of what is not for having met it',
      peak,
      { peak_height_m: 0.175 },
      0.75 / 2
    ],
    ['a peak 15 cm too high is nothing', peak, { peak_height_m: 0.25 }, 0],
    ['contact kept is full', contact, { contact: ticks(8, 10) }, 1],
    [
      'contact an eighth too little is half of that, too',
      contact,
      { contact: ticks(27, 40) },
      0.75 / 2
    ],
    ['contact a quarter too little is nothing', contact, { contact: ticks(11, 20) }, 0],
    ['two right hops are full', hops, { hopHeights_m: [0.12, 0.18] }, 1],
    ['one right hop of two does not pass', hops, { hopHeights_m: [0.15] }, 0.75 / 2],
    [
      'one hop of two half a band too high does not, either',
      hops,
      { hopHeights_m: [0.15, 0.25] },
      0.75 * 0.75
    ],
    ['a third hop costs one', hops, { hopHeights_m: [0.15, 0.15, 0.15] }, 0.5],
    ['skips are no hops', hops, { hopHeights_m: [0.15, 0.02, 0.15, 0.03] }, 1],
    ['no hop is nothing', hops, {}, 0],
    ['both stones are full', stones, { touched: [true, false, true] }, 1],
    ['a stone that was not asked for earns nothing', stones, { touched: [false, true, false] }, 0],
    ['one stone of two does not pass', stones, { touched: [true, true, false] }, 0.75 / 2]
  ];
  test.each(cases)('%s', (_, goal, made, share) => {
    expect(shareOf(goal, overLevel(resultOf(made)))).toBeCloseTo(share, 9);
  });

  test('falls within a tenth of the band from all of it to less than passes', () => {
    const at = (travel_m: number) => shareOf(travel, overLevel(resultOf({ travel_m })));
    expect(at(0.34001)).toBeLessThan(1);
    expect(at(0.34001)).toBeGreaterThan(0.99);
    expect(at(0.342)).toBeGreaterThan(PASS_MARK / 100);
    expect(at(0.344)).toBeLessThan(PASS_MARK / 100);
  });

  test('of speed is nothing at twice what is allowed', () => {
    // The made-up bait runs a centimetre a tick: 1 m/s.
    const run = overLevel(resultOf({ contact: ticks(30, 30) }));
    const speed = (most_m_s: number): Goal => ({ kind: 'speed', most_m_s });
    expect(valueOf(speed(1), run)).toBeCloseTo(1, 9);
    expect(shareOf(speed(1.01), run)).toBe(1);
    expect(shareOf(speed(2 / 3), run)).toBeCloseTo(0.75 / 2, 9);
    expect(shareOf(speed(0.5), run)).toBeCloseTo(0, 9);
  });
});

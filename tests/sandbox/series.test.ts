import { describe, expect, test } from 'vitest';
import { simulate } from '../../src/lib/model';
import { eventsOf, trySummaryOf } from '../../src/lib/sandbox/events';
import { figureTable } from '../../src/lib/sandbox/figures';
import { plotsOf } from '../../src/lib/sandbox/plot';
import { feltBandOf, flightsOf, restsAt, seriesOf } from '../../src/lib/sandbox/series';
import { tipSeconds, tipTravel } from '../../src/lib/scoring/run-measures';
import { tipMotionOf } from '../../src/lib/scoring/tip-motion';
import { tied } from '../tied';
import { smallWater } from './waters';

const water = smallWater();
const snap = simulate({
  ...water,
  move: { kind: 'lift', from_deg: 10, to_deg: 55, duration_s: 0.3 },
  hold_s: 3
});
const series = seriesOf(snap, () => -3.1);
const felt = feltBandOf(smallWater(), snap.trace);
const last = series.t_s.length - 1;

describe('the series of a run', () => {
  test('end where the model and the scoring room say', () => {
    expect(series.baitTravel_m[last]).toBeCloseTo(snap.travel_m, 9);
    expect(series.tipTravel_m[last]).toBeCloseTo(tipTravel(snap), 9);
    expect(series.tipTime_s[last]).toBe(tipSeconds(snap));
    // Stepped off with dividers, it ends as much as their opening sooner.
    expect(series.tipTime_s[last]).toBeCloseTo(tipMotionOf(snap).duration_s, 1);
    // The record takes its peak between the ticks too.
    expect(Math.max(...series.height_m)).toBeLessThanOrEqual(snap.peak_height_m);
    expect(Math.max(...series.height_m)).toBeGreaterThan(0.9 * snap.peak_height_m);
  });

  test('have a flight for each hop, and none on the bottom', () => {
    const flights = flightsOf(series);
    expect(snap.hops.length).toBeGreaterThan(0);
    expect(flights.length).toBeGreaterThanOrEqual(snap.hops.length);
    const total = flights.reduce((sum, [from, to]) => sum + to - from, 0);
    // A flight's ends fall within a tick of 0.01 s.
    expect(Math.abs(total - snap.airborne_s)).toBeLessThan(0.02 * flights.length);
  });

  test('come to rest after the last movement and before the end of a long hold', () => {
    const rests_s = restsAt(snap.trace);
    expect(rests_s).toBeGreaterThan(snap.hops[0].t_s + snap.hops[0].duration_s);
    expect(rests_s).toBeLessThanOrEqual(series.t_s[last]);
  });
});

describe('the plots', () => {
  const plots = plotsOf(series, felt, 2, 700, 'imperial');
  test('share one axis of time and leave no row unnamed', () => {
    expect(plots.rows.map(({ name }) => name)).toEqual([
      'Tip',
      'Jig',
      'Height',
      'Bottom',
      'Pull',
      'Felt'
    ]);
    expect(plots.x(0)).toBeLessThan(plots.x(2));
    expect(plots.x(2)).toBeLessThanOrEqual(700);
  });

  test('draw tip and bait to one scale', () => {
    const lastY = (path: string) => Number(path.split(',').at(-1));
    const [tip, bait] = plots.rows;
    const way = (row: typeof tip, value: number) => (row.zero - lastY(row.path)) / value;
    const tick = series.t_s.findLastIndex((t_s) => t_s <= 2 + 1e-9);
    // Paths are written to a thousandth of a pixel.
    expect(way(bait, series.baitTravel_m[tick])).toBeCloseTo(way(tip, series.tipTravel_m[tick]), 1);
  });

  test('say their values in the learner’s units', () => {
    expect(plots.rows[1].valueAt(0)).toBe(tied('0~in'));
    expect(plotsOf(series, felt, 2, 700, 'metric').rows[4].valueAt(last)).toMatch(/^\d\.\d\d\sN$/);
  });
});

describe('in words', () => {
  test('a hop is told with its height and length, and the end with tip and bait', () => {
    const events = eventsOf({ setup: water, result: snap }, 'metric');
    expect(events[0].text).toBe('The jig left the bottom.');
    expect(events[1].text).toMatch(/^Down again: \d+\scm high, [\d.]+\sm along\.$/);
    expect(trySummaryOf({ setup: water, result: snap }, 'metric')).toMatch(
      /^The tip went .*\sm, the jig \d.*\. It was off/
    );
  });

  test('a bait that stayed down is said to have done so', () => {
    const calm = simulate({
      ...water,
      move: { kind: 'lift', from_deg: 10, to_deg: 20, duration_s: 4 },
      hold_s: 1
    });
    expect(eventsOf({ setup: water, result: calm }, 'imperial')).toHaveLength(1);
    expect(trySummaryOf({ setup: water, result: calm }, 'imperial')).toMatch(
      /It stayed on the bottom\.$/
    );
  });

  test('the table goes from the start to the end', () => {
    const rows = figureTable(series, 2, 'imperial');
    expect(rows[0]).toMatchObject({
      time: tied('0~s'),
      tip: tied('0~in'),
      bait: tied('0~in'),
      bottom: 'on'
    });
    expect(rows.at(-1)?.time).toBe(tied('2~s'));
    expect(rows.some(({ bottom }) => bottom === 'lifted')).toBe(true);
  });
});

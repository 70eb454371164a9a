import { expect, test } from 'vitest';
import { LiveRun, MODEL_VERSION } from '../../src/lib/model';
import { clipLayout, WORDS_HEIGHT } from '../../src/lib/sandbox/export/clip-layout';
import { runCsv } from '../../src/lib/sandbox/export/run-csv';
import { gearLine, momentLine, SIGNED } from '../../src/lib/sandbox/export/run-words';
import { filmOf } from '../../src/lib/sandbox/film';
import { FIRST_GEAR, setupOf } from '../../src/lib/sandbox/gear';
import { seriesOf } from '../../src/lib/sandbox/series';
import { stageOf } from '../../src/lib/sandbox/stage';
import { tied } from '../tied';
import { smallWater } from './waters';

/** A hand that sweeps, and reels a little, over a stone. */
function aFilm() {
  const setup = smallWater({
    bottom: { stones: [{ x_m: 14, width_m: 0.2, height_m: 0.04 }] }
  });
  const start = { elevation_deg: 5, azimuth_deg: 30 };
  const live = new LiveRun(setup, start);
  for (let i = 1; i <= 120; i++) {
    live.push({ ...start, azimuth_deg: 30 + 0.3 * i }, 0.002 * i);
  }
  const film = filmOf({ setup, move: live.input(), ...live.finish(1.5) });
  const { heightAt } = stageOf({
    setup,
    plane: 'sweep',
    start,
    units: 'metric',
    target: null,
    ghosts: []
  });
  return { film, series: seriesOf(film.result, heightAt) };
}

const { film, series } = aFilm();
const [head, ...lines] = runCsv(film, series).trimEnd().split('\r\n');
const names = head.split(',');
const rows = lines.map((line) => Object.fromEntries(line.split(',').map((v, i) => [names[i], v])));
/** Half of the last decimal that is written, m, N or s. */
const ROUNDING = 0.5e-6 + 1e-12;

test('a run as CSV has a row a tick, and a unit in the name of each quantity', () => {
  expect(rows).toHaveLength(film.result.trace.t_s.length);
  expect(names.filter((name) => !/_(s|m|N|0_or_1)$/.test(name))).toEqual(['event']);
});

test.each([
  ['time_s', film.result.trace.t_s],
  ['tip_x_m', film.result.trace.tip_x_m],
  ['tip_z_m', film.result.trace.tip_z_m],
  ['bait_x_m', film.result.trace.bait_x_m],
  ['bait_z_m', film.result.trace.bait_z_m],
  ['tip_travel_m', series.tipTravel_m],
  ['height_over_bottom_m', series.clearance_m],
  ['contact_0_or_1', film.result.trace.contact],
  ['tip_tension_N', film.result.trace.tip_tension_N],
  ['bait_tension_N', film.result.trace.bait_tension_N]
])('its %s is the model’s', (name, values) => {
  const off = rows.map((row, tick) => Math.abs(Number(row[name]) - values[tick]));
  expect(Math.max(...off)).toBeLessThanOrEqual(ROUNDING);
});

test('it ends with the travel of the result and the line that the reel took', () => {
  const end = rows[rows.length - 1];
  expect(Math.abs(Number(end.bait_travel_m) - film.result.travel_m)).toBeLessThan(1e-6);
  expect(end.line_taken_in_m).toBe('0.24');
});

test('what befell the bait stands in the row in which it did', () => {
  const [hit] = film.result.events;
  const row = rows.find(({ event }) => event !== '');
  expect(hit.kind).toBe('stone');
  expect(row?.event).toBe('stone 1');
  expect(Number(row?.time_s) - hit.t_s).toBeGreaterThanOrEqual(-1e-9);
  expect(Number(row?.time_s) - hit.t_s).toBeLessThan(0.01);
});

test('gear and moment are said in the learner’s units', () => {
  const setup = setupOf(FIRST_GEAR);
  expect(gearLine(setup, 'imperial')).toBe(
    tied('5/8~oz, 12~lb fluorocarbon, 7~ft rod; 18~ft deep, jig 70~ft out')
  );
  expect(gearLine(smallWater(), 'metric')).toContain(tied('16~g, 0.30~mm fluorocarbon'));
  const now = {
    t_s: 1.25,
    tip_m: 0.4,
    tip_off_m: 0.4,
    tip_s: 1,
    bait_m: 0.31,
    height_m: 0.12,
    isBitten: false,
    peak_m: 0.12,
    hasSkipped: false,
    line_in_m: 0
  };
  expect(momentLine({ ...now, isTouching: false }, 5, 'metric')).toBe(
    tied('1.3~s: tip 40~cm, bait 31~cm, 12~cm up')
  );
  const splashed = { ...now, height_m: 4.97, isTouching: false };
  expect(momentLine(splashed, 5, 'metric')).toContain('at the surface');
  expect(momentLine({ ...splashed, height_m: 4.9 }, 5, 'metric')).toContain('up');
  expect(SIGNED).toContain(MODEL_VERSION);
});

test('a clip keeps its pictures’ places, in even sizes', () => {
  const wide = clipLayout(
    { width: 1121, height: 421 },
    { width: 760, height: 280 },
    { width: 360, height: 280 }
  );
  expect([wide.width, wide.height].map((px) => px % 2)).toEqual([0, 0]);
  expect(wide.rod.top).toBe(wide.bottom.top);
  expect(wide.rod.left + wide.rod.width).toBeCloseTo(wide.width, 9);
  const narrow = clipLayout(
    { width: 328, height: 190 },
    { width: 328, height: 192 },
    { width: 328, height: 272 }
  );
  expect(narrow.rod.top).toBeGreaterThan(narrow.bottom.top + narrow.bottom.height);
  expect(narrow.height - narrow.words).toBeGreaterThanOrEqual(WORDS_HEIGHT);
});

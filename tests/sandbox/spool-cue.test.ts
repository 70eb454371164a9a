import { describe, expect, test } from 'vitest';
import { findChallenge, loadLessons } from '../../src/lib/course';
import { BIG_TRAILER_M2, ft } from '../../src/lib/course/items/draw';
import { castOut, deeperWith, JIGS } from '../../src/lib/course/lessons/fathomley';
import { LiveRun, parseSetup } from '../../src/lib/model';
import { marksOn } from '../../src/lib/sandbox/draw/line-marks';
import { peakOf, WAVE_RATE_HZ } from '../../src/lib/sandbox/felt-wave';
import { addTicks, SpoolCue } from '../../src/lib/sandbox/spool-cue';

function taskOf(id: string) {
  const task = findChallenge(id, loadLessons());
  if (!task) throw new Error(`there is no challenge ${id}`);
  return task;
}
const asked = taskOf('count-it-down');

/** All of them have been down for three seconds by then, s. */
const LONGEST_FALL_S = 18;

/** A rod that is held while the bait falls, tick by tick. */
function fall(task: typeof asked) {
  const live = new LiveRun(parseSetup(task.setup), task.start);
  const cue = new SpoolCue(true);
  const rows: { t_s: number; given_m: number; told_m: number; word: string | null }[] = [];
  while (live.run.time_s < LONGEST_FALL_S) {
    live.push(task.start, 0);
    const { time_s: t_s, given_m } = live.run;
    const { trace } = live.run.record;
    cue.follow(trace, trace.t_s.length - 1, given_m);
    rows.push({ t_s, given_m, told_m: cue.told_m, word: cue.word(t_s) });
  }
  const down_s = live.run.record.events.find(({ kind }) => kind === 'bottom')?.t_s ?? NaN;
  return { rows, down_s };
}

describe('a bait that is counted down on a free spool', () => {
  const { rows, down_s } = fall(asked);
  const wordAt = (t_s: number) => rows.find((row) => row.t_s >= t_s)?.word;

  test('is told by the line that runs out, and by its stop within half a second of the touch', () => {
    expect([down_s - 2, down_s - 1, down_s - 0.1].map(wordAt)).toEqual(
      Array<string>(3).fill('line runs out')
    );
    expect([down_s + 0.5, down_s + 2].map(wordAt)).toEqual(Array<string>(2).fill('the line stops'));
    expect(wordAt(down_s + 3)).toBeNull();
  });

  test('ticks while the line runs and is silent once it has stopped', () => {
    const heard = (from_s: number, to_s: number) => {
      const [from, to] = [from_s, to_s].map((at) => rows.find(({ t_s }) => t_s >= at));
      const wave = new Float32Array(WAVE_RATE_HZ * (to_s - from_s));
      addTicks(wave, from?.told_m ?? NaN, to?.told_m ?? NaN);
      return peakOf(wave);
    };
    // A quarter of full scale is well heard from a phone; a tick is a third.
    expect(heard(down_s - 1, down_s)).toBeGreaterThan(0.25);
    expect(heard(down_s + 0.1, down_s + 1.1)).toBe(0);
  });

  test('shows from the deck by marks that run out with the line and stand when it stops', () => {
    const line = [
      { out_m: 1, right_m: 0, up_m: 2 },
      { out_m: 3, right_m: 0, up_m: 0 }
    ];
    const first = (t_s: number) =>
      marksOn(line, rows.find((row) => row.t_s >= t_s)?.given_m ?? NaN)[0];
    expect(first(down_s - 1)).not.toEqual(first(down_s - 0.9));
    expect(first(down_s + 0.5)).toEqual(first(down_s + 1));
    expect(marksOn(line, 0)).toHaveLength(10);
  });
});

/**
 * A light one, a deep one, one that falls slowest of all, whose line hardly runs as it comes under the rod, and
 * one whose spool stands in mid-fall.
 */
const deep = taskOf('thirty-feet-down');
const slowest = { mass_kg: JIGS.half, drag_area_m2: BIG_TRAILER_M2 };
test.each([
  ...['count-a-lighter-one', 'thirty-feet-down', 'offshore-count'].map(
    (id) => [id, taskOf(id)] as const
  ),
  ['a big trailer', { ...deep, setup: deeperWith({ ...slowest, start: castOut(ft(45)) }) }] as const
])('%s: the line is not told to stop before the jig is down', (_, task) => {
  const { rows, down_s } = fall(task);
  const said = rows.find(({ word }) => word === 'the line stops');
  expect(said?.t_s).toBeGreaterThan(down_s);
  expect(said?.t_s).toBeLessThan(down_s + 0.5);
});

test('a hand that follows the bait down draws no line, and is told of none', () => {
  const cue = new SpoolCue(true);
  const all = (value: number) => Array<number>(200).fill(value);
  const sinking = all(0).map((_, i) => -0.005 * i);
  const trace = {
    ...{ t_s: sinking.map((_, i) => i / 100), contact: all(0) as 0[] },
    ...{ tip_x_m: all(2), tip_z_m: sinking, bait_x_m: all(9), bait_z_m: sinking },
    ...{ tip_tension_N: all(0), bait_tension_N: all(0) }
  };
  for (let row = 1; row < 200; row++) cue.follow(trace, row, 0);
  expect(cue.told_m).toBe(0);
});

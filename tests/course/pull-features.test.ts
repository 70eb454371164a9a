import { describe, expect, test } from 'vitest';
import { itemOf } from '../../src/lib/course/items';
import { PULL_FEATURES, type PullFeature } from '../../src/lib/course/items/pull-features';
import { simulate } from '../../src/lib/model';
import { sampled } from '../samples';

const SEEDS = Array.from({ length: 24 }, (_, i) => i + 1);

/** What a reply claims of a chart, by the answer. */
const CLAIMED: Readonly<Record<string, Readonly<Record<string, PullFeature>>>> = {
  'pull-over-rock': {
    gravel: 'many ticks',
    'chunk-rock': 'uneven knocks',
    boulders: 'long load, then a drop'
  },
  'pull-over-stems': {
    brush: 'slow loads that slip',
    grass: 'catches of any length',
    'shell-bed': 'short hard catches'
  },
  'pull-over-smooth': {
    mud: 'sticks, then goes even',
    sand: 'even from the start',
    gravel: 'many ticks'
  },
  'bite-while-still': {
    bite: 'news while the rod is still',
    rock: 'knocks, then quiet',
    nothing: 'even, then quiet'
  }
};

describe.each(Object.entries(CLAIMED))('a chart of %s', (item, claimed) => {
  test('shows what is claimed of the right answer, and nothing that is claimed of the others', () => {
    for (const seed of sampled(SEEDS, 8)) {
      const { answer, cases } = itemOf(item, seed);
      const { setup, move, hold_s } = cases[0].run;
      const { trace } = simulate({ ...setup, move, hold_s });
      const shown = Object.keys(claimed).filter((id) => PULL_FEATURES[claimed[id]](trace));
      expect(shown, `seed ${seed}`).toEqual([answer.key]);
    }
  });
});

/** A pull through these points, time in s and pull of any unit, sampled as a run is. */
function drawn(...points: readonly (readonly [t_s: number, pull: number])[]) {
  const t_s = Array.from({ length: 100 * points[points.length - 1][0] + 1 }, (_, i) => i / 100);
  const tip_tension_N = t_s.map((t) => {
    const next = Math.max(
      1,
      points.findIndex(([at]) => at >= t)
    );
    const [[from_s, from], [to_s, to]] = [points[next - 1], points[next]];
    return from + ((to - from) * (t - from_s)) / (to_s - from_s);
  });
  return { t_s, tip_tension_N };
}

const featuresOf = (item: string, signal: ReturnType<typeof drawn>) =>
  Object.values(CLAIMED[item]).filter((feature) => PULL_FEATURES[feature](signal));

test('one long ramp and one drop are a boulder, and no chunk rock', () => {
  const boulder = drawn([0, 0], [3, 1], [4.5, 8], [5, 8], [5.2, 1], [8.5, 1]);
  expect(featuresOf('pull-over-rock', boulder)).toEqual(['long load, then a drop']);
  const hung = drawn([0, 0], [3, 1], [4.5, 8], [8.5, 8]);
  expect(featuresOf('pull-over-rock', hung)).toEqual([]);
});

test('two knocks are too few for chunk rock', () => {
  const two = drawn([0, 0], [3, 1], [3.2, 8], [3.4, 1], [4, 1], [4.2, 8], [4.4, 1], [8.5, 1]);
  expect(featuresOf('pull-over-rock', two)).toEqual([]);
});

test('a swell of the hand’s own pace is not even', () => {
  const swell = drawn([0, 0], [2, 4], [4, 8], [6, 4], [8.5, 0]);
  expect(featuresOf('pull-over-smooth', swell)).toEqual([]);
  const even = drawn([0, 0], [0.5, 5], [8, 5], [8.5, 1]);
  expect(featuresOf('pull-over-smooth', even)).toEqual(['even from the start']);
});

test('a peak at the start that anybody sees is no line that is flat from the start', () => {
  const flat = drawn([0, 0], [0.5, 5.2], [1, 5], [8, 5], [8.5, 1]);
  expect(featuresOf('pull-over-smooth', flat)).toEqual(['even from the start']);
  const peak = drawn([0, 0], [0.5, 6.2], [1, 5], [8, 5], [8.5, 1]);
  expect(featuresOf('pull-over-smooth', peak)).toEqual([]);
});

test.each(['pull-over-smooth', 'felt-smooth'])(
  'no drag of %s over sand draws the peak that its replies give to mud',
  (item) => {
    for (const seed of sampled(SEEDS, 12)) {
      const { answer, cases } = itemOf(item, seed);
      if (answer.key !== 'sand') continue;
      const { setup, move, hold_s } = cases[0].run;
      const { t_s, tip_tension_N: pull } = simulate({ ...setup, move, hold_s }).trace;
      const highest = (from_s: number, to_s: number) =>
        Math.max(...pull.filter((_, i) => t_s[i] >= from_s && t_s[i] <= to_s));
      expect(highest(0, 1.5) / highest(1.5, 7), `seed ${seed}`).toBeLessThan(1.1);
    }
  }
);

test('a line that stays loaded while the rod is still is no rock', () => {
  const knocks = [
    [0, 0],
    [2, 2],
    [2.3, 8],
    [2.6, 2],
    [3.5, 2],
    [3.8, 8]
  ] as const;
  expect(featuresOf('bite-while-still', drawn(...knocks, [4.2, 2], [11, 2]))).toEqual([
    'knocks, then quiet'
  ]);
  expect(featuresOf('bite-while-still', drawn(...knocks, [4.2, 2], [4.8, 7], [11, 7]))).toEqual([]);
});

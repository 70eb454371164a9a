import { describe, expect, test } from 'vitest';
import { loadLessons } from '../../src/lib/course';
import { inTurn, pause, reel, sweep } from '../../src/lib/course/retrieves/moves';
import type { SequenceStep } from '../../src/lib/model';
import { gradeTry, type Challenge } from '../../src/lib/scoring';

const set = loadLessons()
  .flatMap(({ challenges }) => challenges)
  .find(({ id }) => id === 'reel-down-and-sweep') as Challenge;
/** After the tap at 3 s. */
const after = (...steps: SequenceStep[]) =>
  gradeTry(set, inTurn(sweep(60, 60, 0.1), pause(3.4), ...steps)).grade;
const firm = sweep(60, 84, 0.6);

describe('a hook set', () => {
  test('passes with the slack reeled out and a firm sweep in time, however far the jig comes', () => {
    const made = [
      after(reel(0.4, 0.5), firm),
      after(reel(0.8, 1), firm),
      after(reel(0.4, 0.5), sweep(60, 110, 0.9)),
      // Who looks for a moment before the sweep.
      after(reel(0.4, 0.5), pause(0.8), firm)
    ];
    expect(made.map(({ passed }) => passed)).toEqual([true, true, true, true]);
  });

  test('fails into slack, into half of it, with a drag for a sweep, and with the reel alone', () => {
    const made = [
      after(firm),
      after(pause(1), firm),
      after(reel(0.1, 0.13), firm),
      after(reel(0.2, 0.25), firm),
      after(reel(0.4, 0.5), sweep(60, 84, 2)),
      after(reel(0.8, 1))
    ];
    expect(made.map(({ passed }) => passed)).toEqual(made.map(() => false));
  });
});

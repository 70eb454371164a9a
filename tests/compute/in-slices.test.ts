import { describe, expect, test } from 'vitest';
import { doneInSlices } from '../../src/lib/compute/in-slices';
import { correct } from '../../src/lib/compute/jobs/correct';
import { record } from '../../src/lib/compute/jobs/grade';
import { findLesson, loadLessons } from '../../src/lib/course';
import {
  parseScenario,
  recordScenario,
  RunsAhead,
  RunWanted,
  simulate,
  withRunsAhead
} from '../../src/lib/model';
import { smallWater } from '../sandbox/waters';

const [challenge] = findLesson('one-foot', loadLessons())?.challenges ?? [];
const LIFT = { kind: 'lift', from_deg: 5, to_deg: 40, duration_s: 0.6 } as const;
const scenario = parseScenario({ ...smallWater(), move: LIFT, hold_s: 2 });

/** A pace that lets go after every look at the clock, and counts how often. */
function restless() {
  const pace = { slice_ms: 0, breathed: 0, breathe: async () => void pace.breathed++ };
  return pace;
}

describe('work in slices', () => {
  test('comes to the same bit for bit as work done at once', async () => {
    const input = {
      kind: 'rod_input',
      rate_Hz: 100,
      elevation_deg: 0,
      azimuth_deg: Array.from({ length: 200 }, (_, i) => 60 + i / 10)
    } as const;
    const given = { challenge, input: { ...input, azimuth_deg: [...input.azimuth_deg] } };
    expect(await doneInSlices(() => record(given), restless())).toEqual(record(given));
    expect(await doneInSlices(() => correct(challenge), restless())).toEqual(correct(challenge));
  });

  test('lets go within each run, every eight ticks if need be', async () => {
    const pace = restless();
    await doneInSlices(() => simulate(scenario), pace);
    // 0.6 s and 2 s of hold are 260 ticks.
    expect(pace.breathed).toBeGreaterThanOrEqual(260 / 8);
  });

  test('is not held up where there is time', async () => {
    const pace = { ...restless(), slice_ms: Infinity };
    await doneInSlices(() => simulate(scenario), pace);
    expect(pace.breathed).toBe(0);
  });

  test('makes each run once, however often the work is begun again', async () => {
    const told: number[] = [];
    let begun = 0;
    const result = await doneInSlices(
      () => {
        begun++;
        return [1, 2, 1].map((hold_s) => simulate({ ...scenario, hold_s }).trace.t_s.length);
      },
      restless(),
      { onrun: (runs) => told.push(runs) }
    );
    expect(result).toEqual([161, 261, 161]);
    expect(told).toEqual([1, 2]);
    expect(begun).toBe(3);
  });

  test('throws what the work throws, and the model runs by itself again after that', async () => {
    const fails = () => {
      simulate(scenario);
      throw new RangeError('no such thing');
    };
    await expect(doneInSlices(fails, restless())).rejects.toThrow('no such thing');
    expect(simulate(scenario).trace.t_s).toHaveLength(261);
  });

  test('asks for a run with its line apart from the one without', () => {
    const runs = new RunsAhead();
    runs.keepResult(scenario, simulate(scenario));
    expect(withRunsAhead(runs, () => simulate(scenario)).travel_m).toBeGreaterThan(0);
    expect(() => withRunsAhead(runs, () => recordScenario(scenario))).toThrow(RunWanted);
  });
});

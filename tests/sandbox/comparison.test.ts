import { expect, test } from 'vitest';
import { LiveRun, simulate, tipPathOf, type Move, type RodInput } from '../../src/lib/model';
import { comparedRows, comparedText, type Side } from '../../src/lib/sandbox/comparison';
import { stretched } from '../../src/lib/sandbox/pace';
import { tied } from '../tied';
import { smallWater } from './waters';

const setup = smallWater();

const ROD_M = setup.rod.length_m;
/** Where a lift to 40° leaves the tip. */
const raised = {
  x: ROD_M * Math.cos((40 * Math.PI) / 180),
  z: setup.rod.pivot_height_m + ROD_M * Math.sin((40 * Math.PI) / 180)
};

test('a move in twice its time goes the same way, half as fast', () => {
  const move: Move = {
    kind: 'sequence',
    moves: [
      { kind: 'lift', from_deg: 10, to_deg: 40, duration_s: 0.6 },
      { kind: 'pause', duration_s: 1.5 },
      { kind: 'reel', line_m: 0.4, duration_s: 1 },
      { kind: 'tip_path', t_s: [0, 0.7], x_m: [raised.x, 1.1], z_m: [raised.z, 2.6] }
    ]
  };
  const before = tipPathOf(setup, move);
  const after = tipPathOf(setup, stretched(move, 2));
  const at = (path: typeof before, t_s: number) => {
    const tip = { x: 0, z: 0 };
    path.at(t_s, tip);
    return [tip.x, tip.z, path.lineIn_m(t_s)];
  };
  expect(after.duration_s).toBeCloseTo(2 * before.duration_s, 9);
  for (const t_s of [0.2, 0.45, 1.9, 2.6, 3.5]) {
    at(after, 2 * t_s).forEach((value, i) => expect(value).toBeCloseTo(at(before, t_s)[i], 9));
  }
});

test.each([0.5, 2, 4])('a recorded hand in %d times its time passes the same angles', (factor) => {
  const live = new LiveRun(setup, { elevation_deg: 5, azimuth_deg: 20 });
  for (let i = 1; i <= 80; i++) {
    live.push({ elevation_deg: 5, azimuth_deg: 20 + 0.4 * i }, 0.001 * i);
  }
  const hand = live.input();
  const slow = stretched(hand, factor) as RodInput;
  const azimuth = slow.azimuth_deg as number[];
  expect(azimuth).toHaveLength(80 * factor + 1);
  expect(azimuth[0]).toBe(20);
  expect(azimuth[20 * factor]).toBeCloseTo(28, 9);
  expect(azimuth.at(-1)).toBeCloseTo(52, 9);
  expect(slow.line_in_m?.at(-1)).toBeCloseTo(0.08, 9);
  expect(slow.line_in_m).toHaveLength(azimuth.length);
});

test('in its own time a recorded hand is what it was', () => {
  const live = new LiveRun(setup, { elevation_deg: 0, azimuth_deg: 0 });
  for (let i = 1; i <= 30; i++) live.push({ elevation_deg: 0.7 * i, azimuth_deg: 0 });
  expect(stretched(live.input(), 1)).toEqual(live.input());
});

const move: Move = { kind: 'sweep', from_deg: 20, to_deg: 50, duration_s: 0.5, elevation_deg: 5 };
const side = (when: string, factor: number): Side => ({
  name: when,
  when,
  setup,
  move: stretched(move, factor),
  hold_s: 2
});
const sides = [side('half as fast', 8), side('as it is', 1)] as const;
const [slow, quick] = sides.map((one) => simulate({ ...setup, move: one.move, hold_s: 2 }));

test('what two runs differ in is the second less the first', () => {
  expect(quick.hops.length).toBeGreaterThan(0);
  expect(slow.hops).toHaveLength(0);
  const rows = comparedRows(slow, quick, 'metric');
  const highest = rows.find(({ name }) => name === 'Highest off the bottom');
  const cm = Math.round(quick.peak_height_m * 100);
  expect(highest).toMatchObject({
    first: tied('0~cm'),
    second: tied(`${cm}~cm`),
    difference: tied(`+${cm}~cm`)
  });
  const back = comparedRows(quick, slow, 'metric');
  expect(back.find(({ name }) => name === 'Highest off the bottom')?.difference).toBe(
    tied(`−${cm}~cm`)
  );
  expect(comparedRows(slow, slow, 'metric').map(({ difference }) => difference)).toEqual(
    rows.map(() => 'the same')
  );
});

test('and is said in a sentence', () => {
  const text = comparedText(sides, [slow, quick], 'metric');
  expect(text).toMatch(
    /^Half as fast it stayed on the bottom and came \d+\scm; as it is it rose \d+\scm/
  );
});

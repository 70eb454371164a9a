import { expect, test } from 'vitest';
import { findChallenge, loadLessons } from '../../../src/lib/course';
import { FOOT_M } from '../../../src/lib/model';
import { figureScale, type Challenge, type Units } from '../../../src/lib/scoring';
import { BIAS_LAYOUTS, biasRows, handKey } from '../../../src/lib/app/clinic/bias-plot';
import { roomPlot } from '../../../src/lib/app/clinic/room-plot';
import { tied } from '../../tied';

const lessons = loadLessons();
const task = (id: string) => findChallenge(id, lessons) as Challenge;
const oneFoot = task('exactly-one-foot');
const plotOf = (units: Units, ...travels_m: number[]) =>
  roomPlot(
    oneFoot,
    travels_m.map((figure, i) => ({ id: String(i), figure, passed: i === 0 })),
    units
  ).spread;

test.each([0.5, 1, 2, 5, 9])('a try of two feet lies on “2 ft”, beside one of %f ft', (other) => {
  const { marks, ticks } = plotOf('imperial', 2 * FOOT_M, other * FOOT_M);
  const two = ticks.find(({ label }) => label === tied('2~ft'));
  expect(two).toBeDefined();
  expect(marks.find(({ id }) => id === '0')?.x).toBeCloseTo(two?.x ?? 0, 6);
});

test('ticks are even, and begin at nothing', () => {
  for (const units of ['imperial', 'metric'] as const) {
    for (const most of [0.2, 0.61, 1.4, 3]) {
      const { ticks } = plotOf(units, most);
      const gaps = ticks.slice(1).map(({ x }, i) => x - ticks[i].x);
      expect(Math.max(...gaps) - Math.min(...gaps)).toBeLessThan(1e-6);
      expect(ticks[0].label).toBe('0');
      expect(ticks.length).toBeLessThanOrEqual(8);
    }
  }
});

test.each([
  ['exactly-one-foot', 0.3, 'How far the jig went', '10~in to 1~ft~2~in', '1~ft'],
  ['three-hops-even', 0.15, 'How high it hopped', '3~in to 10~in', '6~in'],
  ['count-it-down', 3, 'Wait after it touched bottom', '0~s to 2.5~s', '1~s'],
  ['swim-at-a-height', 0.4, 'How fast it swam', '', '0.4~ft/s'],
  ['shake-in-place', 5, 'Twitches', '5 or more', '2'],
  ['dead-stick', 14, 'How long it rested', '12~s or more', '5~s'],
  ['free-a-snag', 81, 'Marks of 100', '75 to 100~marks', '25']
])('%s is plotted by its own figure: %s', (id, figure, name, asked, tick) => {
  const plot = roomPlot(task(id), [{ id: 'a', figure, passed: true }], 'imperial');
  expect(plot.name).toBe(name);
  expect(plot.asked).toBe(asked && `asked: ${tied(asked)}`);
  expect(plot.spread.ticks.map(({ label }) => label)).toContain(tied(tick));
  const { band, marks } = plot.spread;
  const isIn = band && marks[0].x >= band.x && marks[0].x <= band.x + band.width;
  // The wait of three seconds is the one that is not as asked.
  expect(isIn).toBe(asked === '' ? null : id !== 'count-it-down');
});

test('a rod that never moved is not on the axis, and that is said', () => {
  const plot = roomPlot(
    task('count-it-down'),
    [
      { id: 'a', figure: null, passed: false },
      { id: 'b', figure: 1, passed: true }
    ],
    'metric'
  );
  expect(plot.spread.marks).toHaveLength(1);
  expect(plot.note).toBe('1 try is not on it.');
});

test('the room’s middle lies on a try, or between two heaps with none between them', () => {
  const places = (...travels: number[]) => {
    const { marks, middle } = plotOf('imperial', ...travels);
    return { xs: marks.map(({ x }) => x), middle };
  };
  const odd = places(0.1, 0.12, 0.5);
  expect(odd.middle).toMatchObject({ from: odd.xs[1], to: odd.xs[1], isSplit: false });
  const split = places(0.1, 0.12, 0.5, 0.55);
  expect(split.middle).toMatchObject({ from: split.xs[1], to: split.xs[2], isSplit: true });
  const close = places(0.1, 0.28, 0.32, 0.55).middle;
  expect(close).toMatchObject({ from: close?.to, isSplit: false });
  expect(places(0.1, 0.5).middle).toBeNull();
});

test('the name of the room’s middle stands on the drawing, away from what is asked', () => {
  const anchors = [0.02, 0.25, 0.32, 3].map(
    (travel) => plotOf('imperial', travel, travel, travel).middle?.name.anchor
  );
  expect(anchors).toEqual(['start', 'end', 'start', 'end']);
});

test('the room’s hand has each of a few tries instead of an average, and says so', () => {
  const round = { title: 'One foot', ballot: 1, again: false, scale: figureScale(oneFoot) };
  const two = { ...round, mean: 0.3, spread: 0.15, tries: 2, few: [0.15, 0.45], right: 0 };
  const [row] = biasRows([two], 'metric');
  expect(row).toMatchObject({ said: tied('15~cm, 45~cm'), spread: null });
  expect(row.marks).toHaveLength(2);
  expect(row.marks.every((x) => x > 0 && x < BIAS_LAYOUTS.wide.width)).toBe(true);
  expect(handKey([two])).toBe('A ring is one try.');
  expect(handKey([{ ...two, few: [] }, two])).toMatch(/^The mark is the average.*ring is one try/);
});

test('no spread goes past what there is: no marks above 100, no swim below nothing', () => {
  const ends = (id: string, mean: number, spread: number) => {
    const round = { title: id, ballot: 1, again: false, scale: figureScale(task(id)) };
    const many = { ...round, mean, spread, tries: 6, few: [], right: 5 };
    const [{ spread: drawn, ticks }] = biasRows([many], 'metric', BIAS_LAYOUTS.narrow);
    return { ...drawn, first: ticks[0].x, last: ticks.at(-1)?.x };
  };
  const snag = ends('free-a-snag', 83, 37);
  expect(snag.to).toBeCloseTo(snag.last ?? 0, 6);
  const swim = ends('swim-at-a-height', 0.3, 0.5);
  expect(swim.from).toBeCloseTo(swim.first, 6);
});

import { expect, test } from 'vitest';
import { AXES, rangeOf, tickText, ticksOf, valuesOn } from '../../../src/lib/app/explore/axes';
import { exploredScenario, firstLift } from '../../../src/lib/app/explore/base';
import { chartCsv } from '../../../src/lib/app/explore/chart-file';
import { withPoints } from '../../../src/lib/app/explore/chart-run.svelte';
import { comparedWeights } from '../../../src/lib/app/explore/compared-weights';
import type { ChartPoint, ChartWanted, Curve } from '../../../src/lib/app/explore/chart';
import { curvesOf, runAt, stagesOf } from '../../../src/lib/app/explore/curves';
import {
  FIGURES,
  LIMIT_TIP_M,
  numbersFor,
  type FigureName
} from '../../../src/lib/app/explore/figures';
import { nearestAt, plotOf } from '../../../src/lib/app/explore/plot';
import { besideWords, saidAt } from '../../../src/lib/app/explore/said';
import { readRunFragment, runFragment } from '../../../src/lib/app/water/run-link';
import { figuresOfRuns } from '../../../src/lib/compute/jobs/figures';
import { FOOT_M, isOffBottom, OUNCE_KG, parseScenario, simulate } from '../../../src/lib/model';
import { bandOf, contactWhileMoving, formatWeight } from '../../../src/lib/scoring';
import { ask, base, firstBanded, made, wanted } from './asked-chart';

const both = ['imperial', 'metric'] as const;
const axes = both.flatMap((units) =>
  Object.entries(AXES).map(([name, axis]) => ({ name, axis, units }))
);

test.each(axes)('along $name a value that is set is the one that is there, $units', (one) => {
  const { axis, units } = one;
  const { least, step } = rangeOf(axis, units);
  const value = least + 2 * step;
  const lift = { ...base, kind: 'lift' } as const;
  expect(axis.of(axis.set(lift, value))).toBeCloseTo(value, 9);
});

test.each(axes)('at both ends of $name the run can be made, $units', ({ name, axis, units }) => {
  const { least, most } = rangeOf(axis, units);
  const kind = name === 'hour' ? 'lift' : 'sweep';
  for (const value of [least, most]) {
    expect(Number.isFinite(simulate(made(axis.set({ ...base, kind }, value))).travel_m)).toBe(true);
  }
});

test.each(axes)('numbers along $name stand clear of each other on a phone, $units', (one) => {
  const { axis, units } = one;
  const ticks = ticksOf(axis, units);
  // 328 px are left of 360; a figure of this narrow face is 7 px wide at most.
  const plot = plotOf({ curves: [], figure: 'travel_m', axis, units, width: 328 });
  const wide = plot.across.map(({ text }) => 7 * text.length);
  const gaps = plot.across.slice(1).map(({ at }, i) => at - plot.across[i].at);
  gaps.forEach((gap, i) => expect(gap).toBeGreaterThan((wide[i] + wide[i + 1]) / 2));
  // Even: steps of one size. Round: what is written is the value and not near it.
  expect(Math.max(...gaps) - Math.min(...gaps)).toBeLessThan(0.3);
  if (!axis.isChoice && axis !== AXES.weight && axis !== AXES.wind) {
    const { size } = axis.scale[units];
    ticks.forEach((at) => expect(Number(tickText(axis, at, units))).toBeCloseTo(at / size, 9));
  }
});

test.each(both)('numbers up the side are even and round whatever is drawn, %s', (units) => {
  for (const name of Object.keys(FIGURES) as FigureName[]) {
    for (const drawn of [0.001, 0.13, 0.7, 1.9, 6.2]) {
      const { values } = numbersFor(name, drawn, units);
      const numbers = values.map(({ text }) => Number(text));
      const steps = numbers.slice(1).map((number, i) => number - numbers[i]);
      steps.forEach((step) => expect(step).toBeCloseTo(steps[0], 9));
      expect(values[values.length - 1].value).toBeGreaterThanOrEqual(
        Math.min(drawn, FIGURES[name].most ?? Infinity)
      );
    }
  }
});

test('few values come first and the finer ones lie between, none twice', () => {
  const { first, finer } = valuesOn(AXES.depth, 'imperial');
  expect(first.map((m) => Math.round(m / FOOT_M))).toEqual([5, 10, 15, 20, 25, 30, 35]);
  expect(new Set([...first, ...finer]).size).toBe(first.length + finer.length);
  expect(Math.min(...valuesOn(AXES.tip, 'imperial').first)).toBeCloseTo(0.25 * FOOT_M, 9);
});

test('a chart’s figures are those of single runs, and its bands those of any figure', async () => {
  const curves = curvesOf(wanted);
  const [rough, ...finer] = stagesOf(wanted, curves);
  const points = await rough.make(ask);
  const point = points[2];
  const scenario = made(AXES.depth.set(base, point.at));
  const result = simulate(scenario);
  expect(point.readings.travel_m).toEqual({ value: result.travel_m });
  expect(point.readings.peak_height_m?.value).toBe(result.peak_height_m);
  expect(point.readings.contact?.value).toBe(contactWhileMoving(result));

  const withBand = await firstBanded(finer);
  const there = made(AXES.depth.set(base, withBand.at));
  const travel = bandOf(there, (one) => simulate(one).travel_m, 'drag');
  expect(withBand.readings.travel_m?.ends).toEqual(travel.ends);
  const [short, long] = [0.75, 1.25].map((part) => {
    const hand = { ...AXES.depth.set(base, withBand.at), tip_m: part * base.tip_m };
    return simulate(made(hand)).travel_m;
  });
  expect(withBand.readings.travel_m?.hand).toEqual([short, long]);
  const merged = withPoints(points, [withBand]);
  expect(merged).toHaveLength(points.length);
});

test('a jig stays down at the limit and not a step above it, and its point plays that drag', async () => {
  const limits: ChartWanted = { ...wanted, kind: 'limits', axis: AXES.weight };
  const curves = curvesOf(limits);
  expect(curves.map(({ name }) => name.replace(/\s/, ' '))).toEqual(['10 ft', '20 ft', '30 ft']);
  const stages = stagesOf(limits, curves);
  const fine = stages.filter(({ curve }) => curve === 1)[1];
  const points = await fine.make(ask);
  // Taken for what is safe: of this run nothing is left open.
  const [light] = points.map((one) => {
    const { value = NaN } = one.readings.limit_m_s ?? {};
    return { ...one, readings: { limit_m_s: { value, ends: [value, value] as const } } };
  });
  const run = runAt('limits', curves[1], AXES.weight, light);
  if (!run || run.move.kind !== 'sweep') throw new Error('no drag');
  const lifts = (duration_s: number) =>
    isOffBottom(
      simulate(parseScenario({ ...run, move: { ...run.move, duration_s } })).peak_height_m
    );
  const { duration_s } = run.move;
  expect(LIMIT_TIP_M.imperial / duration_s).toBeCloseTo(light.readings.limit_m_s?.value ?? NaN, 9);
  expect(lifts(duration_s)).toBe(false);
  // Thirty steps from 0.4 s to 10 s.
  expect(lifts(duration_s / 25 ** (1 / 30))).toBe(true);
  const paces = points.map(({ readings }) => readings.limit_m_s?.value ?? 0);
  expect(paces[paces.length - 1]).toBeGreaterThan(paces[0]);
}, 60_000);

test('what cannot be is left out, and the others are there', () => {
  const scenario = made(base);
  const none = { ...scenario, water: { depth_m: -1 } };
  expect(figuresOfRuns({ scenarios: [none, scenario] }).map((one) => one !== null)).toEqual([
    false,
    true
  ]);
  const short = { ...base, setup: { ...base.setup, rod: { ...base.setup.rod, length_m: 0.3 } } };
  expect(exploredScenario(short)).toBeNull();
});

test('a hand that is known to hold the rod low makes its moves so', () => {
  const low = {
    ...base,
    kind: 'lift',
    spread: { middle: { elevation_deg: -8 }, ends: [] }
  } as const;
  expect(exploredScenario(AXES.hour.set(low, 10.5))?.move).toMatchObject({
    from_deg: -8,
    to_deg: expect.closeTo(37, 6)
  });
});

const points: ChartPoint[] = [
  { at: 5 * FOOT_M, readings: { travel_m: { value: 0.2, ends: [0.1, 0.25], hand: [0.15, 0.3] } } },
  { at: 10 * FOOT_M, readings: { travel_m: { value: 0.4, ends: [0.3, 0.6], hand: [0.35, 0.5] } } }
];
const curve = { name: '', base, isKept: false, points };

test('all that is drawn lies inside the frame, and goes into a table', () => {
  const plot = plotOf({
    curves: [curve],
    figure: 'travel_m',
    axis: AXES.depth,
    units: 'imperial',
    width: 328
  });
  const numbers = [plot.band, ...plot.hand, plot.drawn[0].path].join(' ').match(/[\d.]+/g) ?? [];
  const places = numbers.map(Number);
  expect(places.length).toBeGreaterThan(12);
  places.forEach((place) => {
    expect(place).toBeGreaterThanOrEqual(0);
    expect(place).toBeLessThanOrEqual(328);
  });
  expect(plot.y(0.4)).toBeLessThan(plot.y(0.2));
  expect(
    nearestAt(
      plot,
      points.map(({ at }) => at),
      plot.x(9 * FOOT_M)
    )
  ).toBe(10 * FOOT_M);
  expect(chartCsv([curve], 'depth', 'travel_m').split('\r\n').slice(0, 2)).toEqual([
    'curve,depth,travel_m,low,high,hand_low,hand_high',
    'as set,1.524,0.2,0.1,0.25,0.15,0.3'
  ]);
});

const limitOf = (value: number, ends?: [number, number]): Curve => {
  const points = [3, 6, 9].map((at) => ({
    at,
    readings: { limit_m_s: { value, ...(ends && { ends }) } }
  }));
  return { name: '7 g', base, isKept: false, points };
};

test('a limit is told and drawn by what is safe alone, as a count for the tip, and not before it is known', () => {
  const said = (units: 'imperial' | 'metric', value: number, ends?: [number, number]) =>
    saidAt([limitOf(value, ends)], AXES.depth, 'limit_m_s', 6, units).map(({ text }) =>
      text.replaceAll('\u00a0', ' ')
    );
  expect(said('imperial', 1.5, [0.366, 1.5])).toEqual(['7 g: 2 ft in 2 seconds may stay down']);
  expect(said('metric', 1.5, [0.3, 1.5])).toEqual(['7 g: 60 cm in 2 seconds may stay down']);
  // Never told quicker than it is.
  expect(said('metric', 1.5, [0.29, 1.5])).toEqual(['7 g: 60 cm in 2½ seconds may stay down']);
  expect(said('metric', 0.4, [0, 0.6])).toEqual(['7 g: no pace stays down']);
  expect(said('metric', 0.4)).toEqual([]);
  const drawn = (ends?: [number, number]) => {
    const curves = [limitOf(1.5, ends)];
    const given = { figure: 'limit_m_s', axis: AXES.depth, units: 'metric', width: 328 } as const;
    return plotOf({ curves, ...given });
  };
  expect(drawn().drawn[0].marks).toEqual([]);
  const plot = drawn([0.3, 1.5]);
  // Its side is numbered as it is said: 60 cm in 2 seconds.
  expect([plot.unit, plot.up.find(({ at }) => at === plot.y(0.3))?.text]).toEqual([
    'seconds for 60 cm',
    '2'
  ]);
  expect(plot.drawn[0].path).toContain(`${plot.y(0.3)}`);
  expect(plot.drawn[0].marks.every(({ y, bar }) => y === plot.y(0.3) && bar === null)).toBe(true);
});

test('a lift is charted first where it leaves the bottom at a quick pace and not at a slow one', () => {
  for (const depth_m of [12 * FOOT_M, 18 * FOOT_M]) {
    const lift = firstLift(AXES.depth.set(base, depth_m));
    const high = (s: number) => simulate(made(AXES.pace.set(lift, s))).peak_height_m;
    expect(isOffBottom(high(0.5))).toBe(true);
    expect(high(0.5)).toBeGreaterThan(high(6));
  }
});

test('a rod’s clock has hours and halves', () => {
  const { first, finer } = valuesOn(AXES.hour, 'imperial');
  expect([...first, ...finer].map((hour) => (2 * hour) % 1)).toEqual(
    [...first, ...finer].map(() => 0)
  );
});

test.each([
  [1 / 2, ['3/8', '1/2', '3/4']],
  [1 / 4, ['1/4', '3/8']],
  [1, ['3/4', '1']]
])('limits are drawn for a jig of %s oz beside those that one would change to', (ounces, names) => {
  const shown = comparedWeights(ounces * OUNCE_KG).map((kg) => formatWeight(kg, 'imperial'));
  expect(shown.map((text) => text.replace('\u00a0oz', ''))).toEqual(names);
});

test('a point is told with what is likely and with the own hand', () => {
  const kept = { ...curve, isKept: true };
  const said = saidAt([curve, kept], AXES.depth, 'travel_m', 10 * FOOT_M, 'metric');
  expect(said.map(({ text }) => text.replaceAll('\u00a0', ' '))).toEqual([
    '10 ft: 40 cm; likely 30 cm to 60 cm; your hand 35 cm to 50 cm'.replace('10 ft', '3 m'),
    'Before: 40 cm; likely 30 cm to 60 cm; your hand 35 cm to 50 cm'
  ]);
});

test('a run goes to practice water by its link, and how finely it is made does not', async () => {
  const scenario = made(base);
  expect(await readRunFragment(`#${await runFragment(scenario)}`)).toEqual(scenario);
  const wild = await runFragment({ ...scenario, hold_s: 500 });
  await expect(readRunFragment(wild)).rejects.toMatchObject({ path: 'hold_s' });
  await expect(readRunFragment('c1.abc')).rejects.toThrow('is no run');
});

test('a chart of a lift says what guides see, how far out the jig is and what line does; one of a limit why the card counts slower', () => {
  const lift = firstLift(base);
  const beside = (one: typeof base, figure: FigureName, axis: 'tip' | 'line' | 'weight' = 'tip') =>
    besideWords(one, figure, axis, [curve], 'imperial').join(' ').replaceAll('\u00a0', ' ');
  expect(beside(lift, 'travel_m')).toContain('guides see half');
  expect(beside(lift, 'travel_m')).toContain('is now 30 ft out, and the move takes 1 s');
  const farther = AXES.cast.set(lift, 60 * FOOT_M);
  expect(beside(farther, 'travel_m')).toContain('From farther out, a lift drags it.');
  expect(beside(farther, 'travel_m')).not.toContain('now');
  expect(beside(lift, 'peak_height_m', 'weight')).toContain('Slow it down and it does.');
  expect(beside(lift, 'travel_m', 'line')).toContain('Braid lifts the jig higher');
  expect(beside(lift, 'limit_m_s')).toContain('boat card');
  expect(beside(base, 'travel_m')).not.toContain('guides');
  // What lies at every place within what is likely at each has not changed.
  expect(beside(base, 'travel_m', 'weight')).not.toContain('hardly');
  const flat = {
    ...curve,
    points: points.map((one) => ({ ...one, ...{ readings: points[1].readings } }))
  };
  expect(besideWords(base, 'travel_m', 'weight', [flat], 'imperial')[0]).toBe(
    '“Jig weighs” hardly changes this.'
  );
});

test('what is likely at one set-up is the same along every axis, and no farther than its slack allows', async () => {
  const still = { ...base, hand: null };
  const [{ ends }] = figuresOfRuns({ scenarios: [made(still)], unknowns: 'drag' }).flatMap(
    (one) => one ?? []
  );
  for (const name of ['slack', 'wind'] as const) {
    const axis = AXES[name];
    const only = { ...wanted, base: still, axis };
    for (const { make } of stagesOf(only, curvesOf(only))) {
      const [point] = await make(ask);
      if (!point?.readings.travel_m?.ends || Math.abs(point.at - axis.of(still)) > 1e-6) continue;
      expect(point.readings.travel_m.ends, name).toEqual(ends?.travel_m);
    }
  }
  const [, most] = ends?.travel_m ?? [];
  const tight = simulate(made(AXES.slack.set(still, 0))).travel_m;
  expect(tight).toBeLessThan(2 * FOOT_M);
  expect(most).toBeLessThan(tight - 0.05);
}, 60_000);

test('wind blows in the face as well as at the back, and says which', () => {
  const { text, scale, groupText } = AXES.wind;
  const said = [-1, 0, 1].map((m_s) => text(m_s * 4.4704, 'imperial').replaceAll('\u00a0', ' '));
  expect(said).toEqual(['10 mph in your face', 'none', '10 mph at your back']);
  expect(scale.imperial.least).toBe(-scale.imperial.most);
  expect(groupText?.(-1)).toBe('in your face');
});

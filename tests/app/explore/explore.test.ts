import { expect, test } from 'vitest';
import { AXES, rangeOf, tickText, ticksOf, valuesOn } from '../../../src/lib/app/explore/axes';
import { exploredScenario, type ExploreBase } from '../../../src/lib/app/explore/base';
import { chartCsv } from '../../../src/lib/app/explore/chart-file';
import { withPoints } from '../../../src/lib/app/explore/chart-run.svelte';
import {
  curvesOf,
  runAt,
  stagesOf,
  type AskJob,
  type ChartPoint,
  type ChartWanted,
  type Stage
} from '../../../src/lib/app/explore/curves';
import {
  FIGURES,
  LIMIT_TIP_M,
  numbersFor,
  type FigureName
} from '../../../src/lib/app/explore/figures';
import { nearestAt, plotOf } from '../../../src/lib/app/explore/plot';
import { saidAt } from '../../../src/lib/app/explore/said';
import { readRunFragment, runFragment } from '../../../src/lib/app/water/run-link';
import { fallTimes } from '../../../src/lib/compute/jobs/falls';
import { figuresOfRuns } from '../../../src/lib/compute/jobs/figures';
import { contactLimits } from '../../../src/lib/compute/jobs/limits';
import {
  FOOT_M,
  isOffBottom,
  parseScenario,
  seededRandom,
  simulate,
  type Scenario
} from '../../../src/lib/model';
import { FIRST_GEAR, setupOf } from '../../../src/lib/sandbox/gear';
import { bandOf, contactWhileMoving, cornersOf } from '../../../src/lib/scoring';

const base: ExploreBase = {
  setup: setupOf(FIRST_GEAR),
  kind: 'sweep',
  tip_m: 2 * FOOT_M,
  duration_s: 1.5,
  hand: 0.25
};
const wanted: ChartWanted = { kind: 'runs', axis: AXES.depth, base, kept: null, units: 'imperial' };

const JOBS = { figures: figuresOfRuns, limits: contactLimits, falls: fallTimes };
/** Compute without its threads. */
const ask = (async (job: keyof typeof JOBS, given: never) => JOBS[job](given)) as unknown as AskJob;

/** A run that can be made; where there is none the test has failed. */
function made(one: ExploreBase): Scenario {
  const scenario = exploredScenario(one);
  if (!scenario) throw new Error('this rod cannot make the move');
  return parseScenario(scenario);
}

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
  const gaps = plot.across.slice(1).map(({ x }, i) => x - plot.across[i].x);
  gaps.forEach((gap, i) => expect(gap).toBeGreaterThan((wide[i] + wide[i + 1]) / 2));
  // Even: steps of one size. Round: what is written is the value and not near it.
  expect(Math.max(...gaps) - Math.min(...gaps)).toBeLessThan(0.3);
  if (!axis.isChoice && axis !== AXES.weight) {
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
  const travel = bandOf(there, (one) => simulate(one).travel_m);
  expect(withBand.readings.travel_m?.ends).toEqual(travel.ends);
  const [short, long] = [0.75, 1.25].map((part) => {
    const hand = { ...AXES.depth.set(base, withBand.at), tip_m: part * base.tip_m };
    return simulate(made(hand)).travel_m;
  });
  expect(withBand.readings.travel_m?.hand).toEqual([short, long]);
  const merged = withPoints(points, [withBand]);
  expect(merged).toHaveLength(points.length);
});

async function firstBanded(stages: readonly Stage[]): Promise<ChartPoint> {
  for (const { make } of stages) {
    const [point] = await make(ask);
    if (point.readings.travel_m?.ends) return point;
  }
  throw new Error('no stage has a band');
}

/** A bell-shaped number (Box and Muller 1958). */
const bell = (random: () => number) =>
  Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());

test('nine random hands in ten, and nine random jigs in ten, lie inside their bands', async () => {
  const { at, readings } = await firstBanded(stagesOf(wanted, curvesOf(wanted)));
  const here = AXES.depth.set(base, at);
  const { hand, ends } = readings.travel_m ?? {};
  if (!hand || !ends) throw new Error('no bands');
  const random = seededRandom(1604);
  const count = 120;
  const share = (draw: () => Scenario, [low, high]: readonly [number, number]) => {
    const inside = Array.from({ length: count }, () => simulate(draw()).travel_m).filter(
      (m) => m >= low && m <= high
    );
    return inside.length / count;
  };
  // 0.25 is nine in ten of a bell-shaped hand with this deviation.
  const sd = 0.25 / 1.6449;
  const hands = share(() => made({ ...here, tip_m: here.tip_m * (1 + sd * bell(random)) }), hand);
  // Three deviations of a share of 0.9 among 120: 0.082.
  expect(Math.abs(hands - 0.9)).toBeLessThan(0.082);

  const scenario = made(here);
  const jigs = share(() => {
    const { bait, start } = scenario;
    return {
      ...scenario,
      bait: {
        ...bait,
        drag_area_m2: bait.drag_area_m2 * 2 ** (2 * random() - 1),
        lift_to_drag: 0.4 * random()
      },
      start: { ...start, slack_m: 2 * random() * (start.slack_m ?? 0) }
    };
  }, ends);
  expect(jigs).toBeGreaterThanOrEqual(0.9);
}, 60_000);

test('nine in ten of what an outfit’s own tests leave open lie inside its band', async () => {
  // Invented: slack 10 cm, give or take 5, and a drag area known to a third, each at nine in ten.
  const middle = { slack_m: 0.1, drag_area_m2: 6e-4 };
  const ends = [0.05, 0.15].map((slack_m) => ({ ...middle, slack_m }));
  const areas = [0.75, 4 / 3].map((times) => ({ ...middle, drag_area_m2: times * 6e-4 }));
  const spread = { middle, ends: [...ends, ...areas] };
  const own = { ...wanted, base: AXES.slack.set({ ...base, spread, hand: null }, 0.1) };
  const { at, readings } = await firstBanded(stagesOf(own, curvesOf(own)));
  const [low, high] = readings.travel_m?.ends ?? [0, 0];
  const scenario = made(AXES.depth.set(own.base, at));
  const random = seededRandom(1606);
  const draws = Array.from({ length: 120 }, () => {
    const [slack, area] = [bell(random) / 1.6449, bell(random) / 1.6449];
    const drawn = { slack_m: 0.1 + 0.05 * slack, drag_area_m2: 6e-4 * (4 / 3) ** area };
    return simulate(cornersOf(scenario, { middle, ends: [drawn] })[0]).travel_m;
  });
  const share = draws.filter((m) => m >= low && m <= high).length / draws.length;
  // Three deviations of a share of 0.9 among 120: 0.082.
  expect(Math.abs(share - 0.9)).toBeLessThan(0.082);
}, 60_000);

test('a jig stays down at the limit and not a step above it, and its point plays that drag', async () => {
  const limits: ChartWanted = { ...wanted, kind: 'limits', axis: AXES.weight };
  const curves = curvesOf(limits);
  expect(curves.map(({ name }) => name.replace(/\s/, ' '))).toEqual(['10 ft', '20 ft', '30 ft']);
  const stages = stagesOf(limits, curves);
  const fine = stages.filter(({ curve }) => curve === 1)[1];
  const points = await fine.make(ask);
  const [light] = points;
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

test('nine random hands in ten have their limit inside that of the own hand', async () => {
  const limits: ChartWanted = { ...wanted, kind: 'limits', axis: AXES.weight };
  const [, , deep] = curvesOf(limits);
  const [, , light] = stagesOf(limits, [deep]);
  const [{ at, readings }] = await light.make(ask);
  const { value = NaN, hand, ends } = readings.limit_m_s ?? {};
  if (!hand || !ends) throw new Error('no bands');
  expect(hand[0]).toBeLessThan(value);
  expect(hand[1]).toBeGreaterThan(value);
  const random = seededRandom(1605);
  const sd = 0.25 / 1.6449;
  const here = AXES.weight.set(deep.base, at);
  const drags = Array.from({ length: 60 }, () =>
    made({ ...here, kind: 'sweep', tip_m: here.tip_m * (1 + sd * bell(random)) })
  );
  const own = contactLimits({ drags, tip_m: here.tip_m, grain: 'fine' });
  const inside = own.filter((one) => one && one.pace_m_s >= hand[0] && one.pace_m_s <= hand[1]);
  // Three deviations of a share of 0.9 among 60: 0.116. A limit is told in steps, which widen no more.
  expect(inside.length / drags.length).toBeGreaterThanOrEqual(0.9 - 0.116);
  expect(inside.length).toBeLessThan(drags.length);
}, 60_000);

test('what the chart sets is not unknown in its bands', () => {
  const scenario = made(base);
  const [open] = figuresOfRuns({ scenarios: [scenario], unknowns: 'slack and drag' });
  const [set] = figuresOfRuns({
    scenarios: [scenario],
    unknowns: 'slack and drag',
    asked: 'slack_m'
  });
  const wide = (one: typeof open) => (one?.ends?.travel_m[1] ?? 0) - (one?.ends?.travel_m[0] ?? 0);
  expect(wide(set)).toBeLessThan(wide(open));
});

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
    'now,1.524,0.2,0.1,0.25,0.15,0.3'
  ]);
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

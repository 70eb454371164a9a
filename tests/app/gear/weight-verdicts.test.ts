import { describe, expect, test } from 'vitest';
import {
  CHART_BEDS,
  CHART_DEPTHS,
  CHART_WINDS,
  chartSetup,
  wantedAt
} from '../../../src/lib/app/gear/weight-water';
import { BOX_OZ } from '../../../src/lib/course/box';
import { LONGEST_COUNT_S } from '../../../src/lib/course/plan';
import { guidesSeeItLift, usualOn_kg } from '../../../src/lib/course/usual-weight';
import { weightChart, weightVerdict, type WeightRow } from '../../../src/lib/course/weight-chart';
import { FOOT_M, OUNCE_KG } from '../../../src/lib/model';

const plain = (text: string) => text.replaceAll('\u00a0', ' ');
const windOf = (m_s: number) => (m_s > 0 ? 'strong' : 'calm');
const waters = CHART_DEPTHS.flatMap(({ feet }) =>
  CHART_WINDS.map(({ m_s }) => ({ feet, wind_m_s: m_s }))
);
/** Whatever the model may say of a weight: down in time or late, at no pace down or at once. */
const FALLS_S = [2, 60, Infinity];
const DRAGS_S = [1, 8, null];
/** A box of which each does what is asked. */
const allDo = BOX_OZ.map((ounces): WeightRow => {
  return { ounces, fall_s: 2, fall_band_s: 0, drag_s: 1, pull_N: ounces };
});

describe.each(waters)('in $feet ft of water, wind $wind_m_s m/s,', (water) => {
  const wanted = wantedAt(water);
  const day = { depth_m: water.feet * FOOT_M, wind: windOf(water.wind_m_s) };
  const usual_oz = usualOn_kg(day) / OUNCE_KG;

  const isLostInWind = (ounces: number) => day.wind === 'strong' && ounces < usual_oz - 1e-6;

  /** Every verdict on this weight, whatever the model says of it and of the rest of the box. */
  function verdicts(ounces: number): string[] {
    const all = FALLS_S.flatMap((fall_s) => DRAGS_S.map((drag_s) => ({ fall_s, drag_s })));
    return all.flatMap((figures) =>
      all.map((rest) => {
        const rows: WeightRow[] = BOX_OZ.map((oz) => ({
          ounces: oz,
          fall_band_s: 1,
          pull_N: oz,
          ...(oz === ounces ? figures : rest)
        }));
        const row = rows[BOX_OZ.findIndex((oz) => oz === ounces)];
        return plain(weightVerdict(row, rows, wanted, 'imperial'));
      })
    );
  }

  test.each(BOX_OZ)('%s oz is never too light where guides tie it on, or lighter', (ounces) => {
    const said = verdicts(ounces);
    if (ounces >= usual_oz - 1e-6) expect(said.join('\n')).not.toMatch(/too light|light for/i);
    else expect(said.join('\n')).toMatch(/^too light\./m);
  });

  test.each(BOX_OZ)('%s oz works only where guides go no heavier for the wind', (ounces) => {
    const said = verdicts(ounces).filter((one) => one.startsWith('that works.'));
    const isLifted = guidesSeeItLift(ounces * OUNCE_KG, day.depth_m);
    expect(said.length > 0).toBe(!isLostInWind(ounces) && !isLifted);
  });

  test.each(BOX_OZ)('%s oz is told no weight that guides say loses feel or lifts', (ounces) => {
    for (const said of verdicts(ounces)) {
      const [, named] = /Tie on (\S+ oz)/.exec(said) ?? [];
      const oz = BOX_OZ.find((one) => named === NAMES[one]);
      if (named) expect(oz).toBeDefined();
      if (day.wind === 'strong' && oz) expect(oz).toBeGreaterThanOrEqual(usual_oz - 1e-6);
      expect(guidesSeeItLift((oz ?? 1) * OUNCE_KG, day.depth_m)).toBe(false);
      // What guides tie on is named, once: of this one, of the one to tie on, or by itself.
      const itself = /^that works\..* Most guides tie it on here\.$/.test(said)
        ? NAMES[ounces]
        : '';
      const [, usual = itself] =
        /Tie on (\S+ oz), like most guides/.exec(said) ??
        /ost guides use (\S+ oz) here/.exec(said) ??
        [];
      expect(usual).toBe(NAMES[usual_oz]);
    }
  });

  test('two sizes over what guides tie on is heavy where the whole box does it, and no lighter one', () => {
    const heavy = allDo
      .filter((row) => /^heavy for this\./.test(weightVerdict(row, allDo, wanted, 'imperial')))
      .map(({ ounces }) => ounces);
    const usual = BOX_OZ.findIndex((oz) => Math.abs(oz - usual_oz) < 1e-6);
    expect(heavy).toEqual(BOX_OZ.slice(usual + 2));
  });

  test.each(BOX_OZ)('%s oz hears one verdict, one reason and what to tie on', (ounces) => {
    for (const said of verdicts(ounces)) expect(said).toMatch(VERDICT);
  });

  test.each(BOX_OZ)('%s oz is said to stay down as the plan says it', (ounces) => {
    const said = verdicts(ounces).join('\n');
    const isLifted = guidesSeeItLift(ounces * OUNCE_KG, day.depth_m);
    expect(/They see it lift here; by the model it stays down/.test(said)).toBe(
      isLifted && !isLostInWind(ounces)
    );
    expect(/in time and stays down/.test(said)).toBe(!isLifted && !isLostInWind(ounces));
  });
});

/** Verdict, why, what instead; beside what guides do, at most. */
const VERDICT =
  /^(too light|not on this gear|light for this wind|heavy for this|guides go heavier|that works)\. [^.]+\. [^.]+\.( Most guides use [^.]+\.)?$/;

const NAMES: Record<number, string> = {
  0.25: '1/4 oz',
  0.375: '3/8 oz',
  0.5: '1/2 oz',
  0.75: '3/4 oz',
  1: '1 oz'
};

test('in wind a jig that stays down is light all the same: the belly takes its feel', () => {
  const water = { feet: 10, wind_m_s: 6, bed: 'clay' } as const;
  const rows = weightChart(chartSetup(water));
  const said = rows.map((row) => plain(weightVerdict(row, rows, wantedAt(water), 'imperial')));
  expect(said[0]).toBe(
    'light for this wind. The belly in the line takes your feel. Tie on 1/2 oz, like most guides, or more: a size up for the wind.'
  );
  expect(said[2]).toMatch(/^that works\..* Most guides tie it on here\.$/);
});

test('the heaviest is no sure answer: in some waters it is heavy', () => {
  const calls = waters.map(
    (water) =>
      weightVerdict(allDo[allDo.length - 1], allDo, wantedAt(water), 'imperial').split('.')[0]
  );
  expect(new Set(calls)).toEqual(new Set(['heavy for this', 'that works']));
});

test('asks for no count that a plan calls a slow fall', () => {
  for (const water of waters)
    expect(wantedAt(water).within_s, `${water.feet} ft`).toBeLessThanOrEqual(LONGEST_COUNT_S);
});

test('asks of no bottom where what lets a jig go is not its weight', () => {
  expect(CHART_BEDS).not.toContain('mud');
});

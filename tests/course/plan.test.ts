import { describe, expect, test } from 'vitest';
import {
  castsIn,
  firstWeight,
  lightestThatHolds,
  PLAIN_MOVES,
  PLAN_RULES,
  rulesFor,
  weightUse,
  type PlannedDay,
  type RulePart,
  type WeightFigures
} from '../../src/lib/course/plan';
import { RETRIEVES, retrievesFor } from '../../src/lib/course';
import { guidesSeeItLift } from '../../src/lib/course/usual-weight';
import { FOOT_M, GROUND_KINDS, OUNCE_KG } from '../../src/lib/model';
import { voiceFaults } from '../../src/lib/course/voice';

const mild: PlannedDay = {
  depth_m: 6,
  ground: 'sand',
  temperature_C: 18,
  wind: 'calm',
  fish: 'unknown',
  light: 'clouds',
  clients: 0
};

describe('the rules of a day', () => {
  /** All of common practice, from memory (the project's notes on the trade), no published source. */
  const cases: [string, Partial<PlannedDay>, RulePart, RegExp, boolean][] = [
    ['grass', { ground: 'grass' }, 'bottom', /^Grass: pop it loose/, true],
    ['brush', { ground: 'brush' }, 'bottom', /^Brush: .*let it fall/, true],
    ['rock', { ground: 'chunk rock' }, 'bottom', /^When it hangs up, ease off/, true],
    ['sand', {}, 'bottom', /./, false],
    // Guides don't agree on clouds: nothing decides, so nothing is said.
    ['clouds', { light: 'clouds' }, 'light', /./, false],
    ['wind', { wind: 'breeze' }, 'boat', /^Bow into the wind/, true],
    ['no wind', {}, 'boat', /^Bow into the wind/, false],
    ['no wind', {}, 'boat', /^Stay a full cast off/, true],
    ['wind', { wind: 'strong' }, 'boat', /^Hold the boat/, true],
    ['strong wind', { wind: 'strong' }, 'boat', /^A size heavier/, true],
    ['light wind', { wind: 'breeze' }, 'boat', /^A size heavier/, false],
    ['brush', { ground: 'brush' }, 'boat', /^Some put the boat shallow/, true],
    ['brush in strong wind', { ground: 'brush', wind: 'strong' }, 'boat', /^Some put/, false],
    ['alone', { clients: 0 }, 'caution', /^Alone: somebody on shore/, true],
    ['with clients', { clients: 2 }, 'caution', /^Alone/, false],
    ['sand', {}, 'boat', /^Some put the boat shallow/, false],
    ['clients', { clients: 2 }, 'boat', /^Agree who casts on which side/, true],
    ['clients, wind', { clients: 2, wind: 'breeze' }, 'boat', /^Agree who casts/, false],
    ['clients, wind', { clients: 2, wind: 'strong' }, 'boat', /^Everyone casts off the same/, true],
    ['alone', {}, 'boat', /^Agree who casts on which side/, false],
    ['alone, wind', { wind: 'breeze' }, 'boat', /^Everyone casts/, false],
    ['bright sun', { light: 'bright' }, 'light', /^Bright sun/, true],
    ['dawn', { light: 'low' }, 'light', /^Low light.* deeper as the sun climbs/, true],
    ['dusk', { light: 'low' }, 'light', /At dusk, the other way around/, true],
    ['slow fish', { fish: 'slow' }, 'no bites', /^Then the pause: twice/, true],
    ['cold water', { temperature_C: 9 }, 'no bites', /^Then the pause: twice/, true],
    ['active fish', { fish: 'active' }, 'no bites', /^Then the pace/, true],
    ['warm water', { temperature_C: 26 }, 'no bites', /^Then the pace/, true],
    [
      'warm water, slow fish',
      { temperature_C: 26, fish: 'slow' },
      'no bites',
      /^Then the pace/,
      false
    ],
    ['mild water', {}, 'no bites', /^Then the pa[uc]/, false],
    ['warm and deep', { temperature_C: 26.7, depth_m: 9 }, 'light', /thermocline/, true],
    ['warm and deep', { temperature_C: 26.7, depth_m: 9 }, 'no bites', /deeper/, false],
    ['warm and shallow', { temperature_C: 26.7, depth_m: 3 }, 'light', /thermocline/, false],
    ['mild and deep', { depth_m: 9 }, 'no bites', /deeper, same retrieve/, true],
    ['any day', {}, 'caution', /^Jackets on, kill switch clipped/, true],
    ['cold water', { temperature_C: 14.9 }, 'caution', /^Cold water/, true],
    ['mild water', {}, 'caution', /^Cold water/, false],
    ['strong wind', { wind: 'strong' }, 'caution', /^Strong wind/, true],
    ['any day', {}, 'caution', /^First thunder/, true]
  ];
  test.each(cases)('%s (%o): %s says %s: %s', (_, change, part, says, isSaid) => {
    const said = rulesFor(part, { ...mild, ...change });
    expect(said.some((rule) => says.test(rule.says))).toBe(isSaid);
  });

  test('move first, whatever the day, and change one thing last of all', () => {
    for (const { when } of PLAN_RULES) expect(when).not.toBe('');
    for (const change of [
      {},
      { fish: 'slow' },
      { temperature_C: 28 },
      { wind: 'strong' }
    ] as const) {
      const said = rulesFor('no bites', { ...mild, ...change }).map(({ says }) => says);
      expect(said[0]).toMatch(/^Move first: no fish on the graph/);
      expect(said.at(-1)).toMatch(/^One change in ten casts/);
    }
  });

  test('every day is told one change of depth, and none to fish in less water than half its own', () => {
    for (const temperature_C of [8, 18, 27])
      for (let depth_m = 1; depth_m <= 15; depth_m += 0.5) {
        const said = rulesFor('no bites', { ...mild, temperature_C, depth_m });
        const told = said.filter(({ says }) => says.startsWith('Then depth:'));
        expect(told.length, `${depth_m} m, ${temperature_C} °C`).toBe(1);
        if (/shallower/.test(told[0].says))
          expect(depth_m - 1.5).toBeGreaterThanOrEqual(depth_m / 2);
      }
  });

  test('no day is told to rest longer and to rest less', () => {
    for (let temperature_C = 1; temperature_C <= 33; temperature_C++)
      for (const fish of ['slow', 'active', 'unknown'] as const)
        for (const depth_m of [2, 6, 12]) {
          const said = rulesFor('no bites', { ...mild, temperature_C, fish, depth_m });
          const told = said.filter(({ says }) => /twice as long|shorter pauses/.test(says));
          expect(told.length, `${temperature_C} °C, ${fish}`).toBeLessThanOrEqual(1);
          if (fish === 'active') expect(told.map(({ says }) => says).join()).toMatch(/shorter/);
          if (fish === 'slow') expect(told.map(({ says }) => says).join()).toMatch(/twice/);
        }
  });

  test.each(GROUND_KINDS)('over %s no retrieve is listed that is said to hang', (ground) => {
    for (const temperature_C of [7, 16, 27])
      for (const fish of ['slow', 'active', 'unknown'] as const) {
        const listed = retrievesFor({ temperature_C, fish, ground }).map(({ name }) => name);
        const said = rulesFor('bottom', { ...mild, ground, temperature_C, fish })
          .map(({ says }) => says)
          .join();
        if (/A drag (hangs|balls up)/.test(said)) expect(listed).not.toContain('drag');
        if (/[Ll]ift it over/.test(said)) expect(listed[0]).toBe('lift and follow down');
        if (/^Drag/.test(said)) expect(listed).toContain('drag');
        expect(listed.length).toBeGreaterThan(0);
      }
  });

  test('each has its source, and is said as a guide says it', () => {
    for (const { source } of PLAN_RULES) expect(source).not.toBe('');
    const words = [...PLAN_RULES, ...PLAIN_MOVES].map(({ says }) => says);
    expect(words.flatMap(voiceFaults)).toEqual([]);
  });
});

test('a plain move belongs to a retrieve of the course', () => {
  const names = RETRIEVES.map(({ name }) => name);
  expect(PLAIN_MOVES.filter(({ retrieve }) => !names.includes(retrieve))).toEqual([]);
});

const CALM_SAND = { wind: 'calm', ground: 'sand' } as const;

describe('weights', () => {
  const jig = (mass_kg: number, fall_s: number, ...count_s: (number | null)[]): WeightFigures => ({
    mass_kg,
    fall: [fall_s, 1],
    limit: { tip_m: 0.6, count_s }
  });

  test.each([
    [jig(0.014, 9, 4, 6), 'holds'],
    [jig(0.014, 9, 4, 8), 'slow only'],
    [jig(0.014, 9, 5, 6), 'slow only'],
    [jig(0.014, 9, 8, 12), 'lifts'],
    [jig(0.014, 9, null, null), 'lifts'],
    [jig(0.014, 16, 2, 3), 'long count']
  ] as const)('%j: %s', (figures, use) => {
    expect(weightUse(figures)).toBe(use);
  });

  const box = [1 / 4, 3 / 8, 1 / 2, 3 / 4, 1].map((oz) => jig(oz * OUNCE_KG, 9, 2, 3));
  /** As guides tie on: common practice, no source. */
  test.each([
    [7, 1 / 4],
    [12, 3 / 8],
    [20, 1 / 2],
    [28, 3 / 4],
    [45, 1]
  ])('where all hold in %s ft, %s oz is tied on first, whatever the order of the box', (ft, oz) => {
    expect(box[firstWeight(box, { depth_m: ft * FOOT_M, ...CALM_SAND })].mass_kg).toBeCloseTo(
      oz * OUNCE_KG,
      6
    );
    const turned = [...box].reverse();
    expect(turned[firstWeight(turned, { depth_m: ft * FOOT_M, ...CALM_SAND })].mass_kg).toBeCloseTo(
      oz * OUNCE_KG,
      6
    );
  });

  test('in a strong wind a size heavier goes first, where the box has it', () => {
    const day = { depth_m: 20 * FOOT_M, wind: 'strong', ground: 'sand' } as const;
    expect(box[firstWeight(box, day)].mass_kg).toBeCloseTo(0.75 * OUNCE_KG, 6);
    expect(firstWeight(box.slice(0, 3), day)).toBe(2);
  });

  test('13 ft and deeper nothing under 3/8 oz goes first while something heavier holds', () => {
    for (let ft = 13; ft <= 60; ft++) {
      const [light, heavy] = [box[0], box[1]];
      expect(firstWeight([light, heavy], { depth_m: ft * FOOT_M, ...CALM_SAND }), `${ft} ft`).toBe(
        1
      );
      expect(firstWeight([light, box[4]], { depth_m: ft * FOOT_M, ...CALM_SAND }), `${ft} ft`).toBe(
        1
      );
    }
  });

  test('a weight that lifts is not tied on for being usual, and the lightest that holds has its name', () => {
    const usual = jig(OUNCE_KG / 2, 9, 8, 12);
    const heavy = jig((OUNCE_KG * 3) / 4, 8, 3, 5);
    expect(firstWeight([usual, heavy], { depth_m: 20 * FOOT_M, ...CALM_SAND })).toBe(1);
    expect(lightestThatHolds([usual, box[4], heavy])).toBe(2);
    expect(lightestThatHolds([usual])).toBe(-1);
  });

  test('mud that asks for a slow drag asks for no heavier jig than guides tie on', () => {
    const usual = jig((OUNCE_KG * 3) / 8, 6, 3, null);
    const heavy = jig((OUNCE_KG * 3) / 4, 4, 2, 3);
    const lifted = jig(OUNCE_KG / 4, 7, 12, null);
    const first = (ground: 'mud' | 'sand') =>
      firstWeight([lifted, usual, heavy], { depth_m: 10 * FOOT_M, wind: 'calm', ground });
    expect([first('mud'), first('sand')]).toEqual([1, 2]);
  });

  test('where none stays down the heaviest is, and an empty box is refused', () => {
    const none = [jig(0.007, 9, null), jig(0.028, 4, 12), jig(0.014, 7, null)];
    expect(firstWeight(none, { depth_m: 6, ...CALM_SAND })).toBe(1);
    expect(() => firstWeight([], { depth_m: 6, ...CALM_SAND })).toThrow('box must not be empty');
  });

  test('guides see a quarter ounce lift at 13 ft and more, as the trust page has it', () => {
    const seen = (oz: number, ft: number) => guidesSeeItLift(oz * OUNCE_KG, ft * FOOT_M);
    expect([seen(1 / 4, 20), seen(1 / 4, 13)]).toEqual([true, true]);
    expect([seen(1 / 4, 8), seen(3 / 8, 20)]).toEqual([false, false]);
  });
});

test('casts of a day are what count, drags and pauses leave time for', () => {
  const pace = { out_m: 18, fall_s: 10, tip_m: 0.6, takes_s: 4, pause_s: 5 };
  // 18 drags in the first 10.8 m of 18: 10 + 18 · 9 + 25 = 197 s a cast.
  expect(castsIn(60, 0, pace)).toBe(18);
  expect(castsIn(60, 2, pace)).toBe(6);
  expect(castsIn(60, 0, { ...pace, pause_s: 10 })).toBe(12);
});

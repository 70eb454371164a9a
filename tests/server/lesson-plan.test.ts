import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  findChallenge,
  isDragged,
  loadLessons,
  RETRIEVES,
  retrievesFor
} from '../../src/lib/course';
import { GROUND_KINDS } from '../../src/lib/model';
import { ownGearId } from '../../src/lib/practice';
import { figureOf, inUnits, type Challenge } from '../../src/lib/scoring';
import { planLesson } from '../../src/lib/server/lesson-plan';
import { jigFor, MOST_COUNT_S } from '../../src/lib/compute/jobs/jig-for';
import { handLesson, type ClientHand } from '../../src/lib/server/plan-hand';
import type { Conditions } from '../../src/lib/wire';
import { sampleChallenge } from './samples';

const lessons = loadLessons();
const mild: Conditions = {
  temperature_C: 16,
  depth_m: 3.35,
  ground: 'gravel',
  wind: 'calm',
  fish: 'unknown'
};
const figure = figureOf(sampleChallenge);
const hop = figureOf(findChallenge('one-hop', lessons) as Challenge);
const level = {
  ...{ value: 0.48, band: 0.02, sd: 0.04, off: 0.18, miss: 3.6 },
  ...{ tries: 9, less: 0, more: 9 }
};
const done: string[] = [];
const hands: Record<string, ClientHand> = {
  long: { worst: { figure, level: { ...level, advice: 'lower' } }, contact: 0.97, done },
  uneven: {
    worst: { figure, level: { ...level, sd: 0.3, advice: 'steady' } },
    contact: 0.97,
    done
  },
  flying: { worst: { figure, level: { ...level, advice: 'lower' } }, contact: 0.5, done },
  good: { worst: { figure, level: { ...level, off: 0.01, advice: 'harder' } }, contact: 1, done },
  low: {
    worst: { figure: hop, level: { ...level, off: -0.1, advice: 'raise' } },
    contact: 0.2,
    done
  }
};
const jig = jigFor(mild);
const plan = (minutes: number, conditions = mild, hand: ClientHand | null = null) =>
  planLesson({ conditions, jig, minutes, hands: [hand] }, lessons);
const titles = (minutes: number, conditions = mild) =>
  plan(minutes, conditions).blocks.map(({ title }) => title);

describe('a lesson plan', () => {
  test('takes the minutes given, all of them, with the safety talk first and the log last', () => {
    const conditions = fc.record({
      temperature_C: fc.integer({ min: 2, max: 30 }),
      depth_m: fc.constantFrom(2, 6),
      ground: fc.constantFrom(...GROUND_KINDS),
      wind: fc.constantFrom('calm' as const, 'strong' as const),
      fish: fc.constantFrom('slow' as const, 'active' as const, 'unknown' as const)
    });
    const one = fc.constantFrom(null, ...Object.values(hands));
    const boat = fc.array(one, { minLength: 1, maxLength: 4 });
    fc.assert(
      fc.property(conditions, fc.integer({ min: 30, max: 480 }), boat, (day, minutes, who) => {
        const { blocks } = planLesson({ conditions: day, jig, minutes, hands: who }, lessons);
        expect(blocks.reduce((sum, block) => sum + block.minutes, 0)).toBe(minutes);
        expect(Math.min(...blocks.map((block) => block.minutes))).toBeGreaterThanOrEqual(5);
        // The last has what is left of minutes that are no fives.
        expect(blocks.slice(0, -1).filter((block) => block.minutes % 5 !== 0)).toEqual([]);
        expect(blocks[0].title).toBe('Safety talk');
        expect(blocks.at(-1)?.title).toBe('Write the log');
        expect(blocks[0].steps.length).toBeGreaterThan(9);
        expect(blocks.map(({ steps }) => steps).join()).not.toMatch(/your friend/i);
        // On the boat there is no screen: nothing to look at that only a screen shows.
        expect(blocks.map(({ steps }) => steps).join()).not.toMatch(/\bmarks? |solid|on screen/i);
        const said = blocks.flatMap(({ why, steps }) => [why, ...steps]);
        expect(said.map((text) => inUnits(text, 'imperial')).join()).not.toMatch(/[{}]/);
      }),
      { numRuns: 200 }
    );
  });

  test('leaves out whole parts when time is short, and never the count or the hand', () => {
    expect(titles(30)).toEqual([
      'Safety talk',
      'Dry land: the hand',
      'Cast and count down',
      'First retrieve: drag',
      'Write the log'
    ]);
    expect(titles(180)).toContain('Second retrieve: lift and follow down');
  });

  test('puts the snag drill before the bottoms where a jig will hang', () => {
    expect(titles(40)).not.toContain('When one hangs');
    expect(titles(40, { ...mild, ground: 'brush' })).toContain('A snag, on purpose');
  });

  test.each([
    ['long', 'your-hands-ruler'],
    ['uneven', 'speed'],
    ['flying', 'speed'],
    ['good', 'slack'],
    ['low', 'hops']
  ])('gives a %s hand the drill of %s', (who, lesson) => {
    expect(handLesson(hands[who])).toBe(lesson);
    const { blocks } = plan(90, mild, hands[who]);
    expect(blocks[1].lesson).toBe(lesson);
  });

  test('for a party has a turn for each, each one’s figures and drill, and casts one at a time', () => {
    const boat = [hands.long, null, hands.low];
    const party = planLesson({ conditions: mild, jig, minutes: 240, hands: boat }, lessons);
    expect(party.hands.map(({ lesson, figures }) => [lesson, figures?.average ?? null])).toEqual([
      ['your-hands-ruler', level.value],
      ['one-foot', null],
      ['hops', level.value]
    ]);
    const dryLand = party.blocks[1];
    expect(dryLand.title).toBe('Dry land: each hand');
    expect(dryLand.steps.map((step) => step.split(':')[0])).toEqual([
      'Your hand’s ruler',
      'One foot',
      'Hops'
    ]);
    const alone = plan(240).blocks[1];
    expect(dryLand.minutes).toBeGreaterThan(alone.minutes);
    expect(party.blocks[0].steps[0]).toMatch(/^One casts at a time/);
    expect(plan(240).blocks[0].steps[0]).not.toMatch(/^One casts at a time/);
    expect(party.blocks.flatMap(({ title, steps }) => [title, ...steps]).join()).not.toMatch(
      /the client/i
    );
  });

  test('asks for no homework that has just been done', () => {
    const before = (done: string[]) =>
      plan(60, mild, { worst: null, contact: 1, done }).before.map(({ id }) => id);
    expect(before([])).toEqual(['count-it-down', 'exactly-one-foot']);
    expect(before(['exactly-one-foot'])).toEqual(['count-it-down', 'exactly-two-feet']);
    expect(before(['count-it-down', 'exactly-one-foot'])).toEqual(['exactly-two-feet']);
    const inOwnGear = ownGearId('exactly-one-foot', '0a1b2c3d');
    expect(before([inOwnGear])).toEqual(['count-it-down', 'exactly-two-feet']);
  });

  test('warns of cold water, and refuses a time that holds no lesson', () => {
    const cautions = (temperature_C: number) =>
      plan(60, { ...mild, temperature_C }).blocks[0].steps.join();
    expect(cautions(9)).toMatch(/cold water: Float a minute/);
    expect(cautions(22)).not.toMatch(/cold water/);
    for (const danger of [/hook near an eye/, /Thunder/, /Wires overhead/, /[Ll]ocal rules/]) {
      expect(cautions(18)).toMatch(danger);
    }
    expect(() => plan(29)).toThrow(/minutes.*29/);
  });
});

test('what is packed is said once, as a guide packs, with a plug knocker and a net', () => {
  const { takes } = plan(480, { ...mild, ground: 'boulders' });
  expect(new Set(takes).size).toBe(takes.length);
  expect(takes.join()).not.toMatch(/On the|someone|friend/i);
  for (const thing of [/jackets/, /Glasses/, /Tape/, /Plug knocker/, /Pliers/, /Net/])
    expect(takes.filter((one) => thing.test(one))).toHaveLength(1);
});

test('a snag ends with the guide breaking it off, everyone behind, and no line on a hand', () => {
  const snag = plan(480, { ...mild, ground: 'boulders' }).blocks.find(
    ({ lesson }) => lesson === 'snags'
  );
  expect(snag?.steps.join()).toMatch(/plug knocker/);
  expect(snag?.steps.at(-1)).toMatch(/everyone behind you, break it on a padded tool, never/);
  expect(plan(480).takes).toContain('Padded tool');
  // Who knows how does it, and nobody stands where the jig comes.
  expect(snag?.steps.join()).toMatch(/you, the line pointing at nobody, face away: pinch it/);
});

test('nobody is asked to hang a jig where none hangs', () => {
  const { blocks } = plan(480, { ...mild, ground: 'gravel' });
  const snag = blocks.find(({ lesson }) => lesson === 'snags');
  expect(snag?.title).toBe('When one hangs');
  expect(snag?.why).toMatch(/the moment the first one hangs/);
  expect(snag?.steps.join()).not.toMatch(/Hang one/);
});

test('two hours have ten minutes each for the talk and for the hand on land', () => {
  for (const [minutes, run_min] of [
    [120, 0],
    [120, 15],
    [180, 15],
    [240, 15]
  ]) {
    const day = { conditions: mild, jig, minutes, run_min, hands: [null] };
    const [talk, land] = planLesson(day, lessons).blocks;
    expect(talk.minutes).toBe(10);
    expect(land.minutes).toBeGreaterThanOrEqual(10);
  }
});

describe('the run out and back', () => {
  const withRun = (minutes: number, run_min: number) =>
    planLesson({ conditions: mild, jig, minutes, run_min, hands: [null] }, lessons).blocks;

  test('is on the clock: after what is done on land, and last of all', () => {
    const blocks = withRun(120, 20);
    const at = (title: string) => blocks.findIndex((one) => one.title === title);
    expect(at('Launch and run')).toBe(at('Dry land: the hand') + 2);
    expect(blocks.at(-1)?.title).toBe('Run in and load');
    expect(blocks.at(-2)?.title).toBe('Write the log');
    for (const title of ['Launch and run', 'Run in and load'])
      expect(blocks[at(title)].minutes).toBe(20);
    expect(blocks.reduce((sum, { minutes }) => sum + minutes, 0)).toBe(120);
  });

  test('is left out from a dock, and never eats the lesson', () => {
    expect(withRun(120, 0).map(({ title }) => title)).not.toContain('Launch and run');
    expect(withRun(60, 15).map(({ title }) => title)).toContain('Cast and count down');
    expect(() => withRun(60, 20)).toThrow(/run: must leave 30 minutes to fish, got 20/);
  });
});

test('the safety talk says who falls in, the jacket, the seat and the call, and the guide too', () => {
  const talk = plan(120).blocks[0].steps.join();
  for (const said of [
    /Jackets buckled/,
    /I go in\? Same as anyone/,
    /Someone else is in the water/,
    /Getting back/
  ])
    expect(talk).toMatch(said);
  for (const said of [/Boat under way/, /You need help/]) expect(talk).toMatch(said);
});

test('what to do with a fish on comes before the first cast, however short the day', () => {
  for (const minutes of [30, 60, 120, 240]) {
    const { blocks } = plan(minutes);
    const cast = blocks.findIndex(({ title }) => title === 'Cast and count down');
    const before = blocks.slice(0, cast).flatMap(({ steps }) => steps);
    expect(before.filter((step) => step.startsWith('Fish on:'))).toHaveLength(1);
  }
});

test('eyes are shut only sitting down with nobody casting, and never on the water beside the lawn', () => {
  const { blocks } = plan(480);
  const [dryLand, bottom] = ['one-foot', 'reading-bottoms'].map((id) =>
    blocks.find(({ lesson }) => lesson === id)
  );
  expect(dryLand?.steps.join()).not.toMatch(/On the water/);
  const shut = bottom?.steps.filter((step) => /eyes shut/i.test(step)) ?? [];
  expect(shut.every((step) => step.startsWith('Sit down, nobody casting.'))).toBe(true);
  expect(shut.length).toBeGreaterThan(0);
  // The sheet lies open: it doesn't say what they are to name.
  expect(bottom?.why).not.toMatch(/gravel/);
  expect(bottom?.steps.join()).toMatch(/Three spots\. Check hard or soft on the graph/);
});

test('the count is in whole seconds, and the log is not said twice', () => {
  const { blocks, log } = plan(120);
  const count = blocks.find(({ title }) => title === 'Cast and count down');
  expect(count?.why).toMatch(/\{time:\d+\}/);
  expect(blocks.at(-1)?.why).not.toMatch(/fault|fish it again/);
  expect(log.join()).toMatch(/one to fix.*fish it again/);
});

describe('what is tied on', () => {
  test('is what guides tie on: heavier as it gets deeper', () => {
    const at = [2, 5, 7, 12].map((depth_m) => jigFor({ ...mild, depth_m }));
    const weights = at.map(({ mass_kg }) => mass_kg);
    expect(weights).toEqual([...weights].sort((a, b) => a - b));
    expect(new Set(weights).size).toBe(4);
    // A quarter ounce teaches no feel at 11 ft.
    expect(jigFor({ ...mild, depth_m: 3.35 }).mass_kg).toBeGreaterThanOrEqual(0.0106);
    expect(at.slice(0, 3).every(({ count_s }) => count_s <= MOST_COUNT_S)).toBe(true);
    expect(at[3]).toMatchObject({ isLong: true });
  });

  test('is the guide’s where that is fixed, whatever the wind, and says when it is long in falling', () => {
    const deep = { ...mild, depth_m: 7, wind: 'strong' as const };
    const [light, heavy] = [0.00709, 0.02835].map((jig_kg) => jigFor({ ...deep, jig_kg }));
    expect(light).toMatchObject({ mass_kg: 0.00709, isLong: true, isHeavierForWind: false });
    expect(heavy).toMatchObject({ mass_kg: 0.02835, isLong: false, isHeavierForWind: false });
    expect(light.count_s).toBeGreaterThan(MOST_COUNT_S);
    expect(jigFor({ ...deep, jig_kg: null })).toEqual(jigFor(deep));
  });

  test('is one size more in a strong wind', () => {
    const [calm, strong] = (['calm', 'strong'] as const).map((wind) => jigFor({ ...mild, wind }));
    expect(strong.mass_kg).toBeGreaterThan(calm.mass_kg);
    expect(strong.count_s).toBeLessThan(calm.count_s);
  });
});

describe('retrieves', () => {
  const names = (temperature_C: number, fish: Conditions['fish']) =>
    retrievesFor({ ...mild, temperature_C, fish }).map(({ name }) => name);

  test('follow the water and the fish', () => {
    expect(names(6, 'slow').slice(0, 2)).toEqual(['drag', 'dead-stick']);
    expect(names(26, 'active').slice(0, 2)).toEqual(['stroke', 'three hops']);
    expect(names(16, 'unknown')[0]).toBe('drag');
    expect(names(6, 'active')).not.toContain('stroke');
  });

  test('under 60 °F begin with a drag whatever the fish, and hop before they swim', () => {
    const fished = ['slow', 'active', 'unknown'] as const;
    for (let degF = 33; degF < 60; degF++)
      for (const fish of fished)
        for (const ground of GROUND_KINDS.filter(isDragged)) {
          const day = { ...mild, temperature_C: (degF - 32) / 1.8, fish, ground };
          const listed = retrievesFor(day).map(({ name }) => name);
          expect(listed[0], `${degF} °F, ${fish}`).toBe('drag');
          if (fish === 'active')
            expect(listed.slice(0, 3)).toEqual(['drag', 'hop', 'swim at a height']);
        }
    expect(titles(240, { ...mild, temperature_C: 11, fish: 'active' })).toEqual(
      expect.arrayContaining(['First retrieve: drag', 'Second retrieve: hop'])
    );
  });

  test('have the bounds of temperature that their words say', () => {
    for (const { use, suits } of RETRIEVES) {
      const ranges = [...use.matchAll(/\|([\d to]+) °C\}/g)].map(([, range]) => range);
      const said = ranges.flatMap((range) => range.split(' to ').map(Number));
      const bounds = suits ? [suits, ...(suits.also ?? [])].flatMap(({ water_C }) => water_C) : [];
      // Said in whole degrees: 75 °F is 23.9 °C.
      const meant = [...new Set(bounds.filter((degC) => degC > 0 && degC < 40).map(Math.round))];
      expect(meant).toEqual(said);
    }
  });
});

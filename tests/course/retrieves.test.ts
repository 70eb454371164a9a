import { describe, expect, test } from 'vitest';
import {
  gradeTry,
  PASS_MARK,
  REFERENCE_MARK,
  wordingFault,
  type Challenge
} from '../../src/lib/scoring';
import { marksLost } from '../../src/lib/scoring/grade';
import { findChallenge, loadLessons, RETRIEVES, retrievesFor } from '../../src/lib/course';
import { useOn } from '../../src/lib/course/retrieves/use-on';
import { SEASON_MAP } from '../../src/lib/course/season-map';
import { generate, GENERATORS } from '../../src/lib/course/items';

const lessons = loadLessons();
const shown = RETRIEVES.flatMap(({ name, challenges }) =>
  challenges.map((id): [string, Challenge] => [
    `${name} (${id})`,
    findChallenge(id, lessons) as Challenge
  ])
);

/** Goal that costs each retrieve's beginner most: the reason for which it is there to fail. */
const COSTS_MOST: Record<string, string> = {
  'exactly-one-foot': 'travel',
  'exactly-two-feet': 'travel',
  'exactly-three-feet': 'travel',
  'lift-and-follow': 'hops',
  'one-hop': 'hops',
  'three-hops-even': 'hops',
  'three-hops-uneven': 'hops',
  'three-hops-sideways': 'hops',
  stroke: 'hops',
  'fall-on-a-following-rod': 'swing',
  'swim-at-a-height': 'swim',
  'shake-in-place': 'stayed',
  'cold-water': 'rests',
  'dead-stick': 'rests',
  'count-it-down': 'bottom_first',
  'thirty-feet-down': 'bottom_first',
  'reel-takes-slack': 'reeled',
  'free-a-snag': 'freed',
  'free-from-above': 'freed'
};

describe.each(shown)('%s', (_, challenge) => {
  const gradeOf = (move: Challenge['reference']) => gradeTry(challenge, move).grade;

  test('reaches its goal by its reference run', () => {
    expect(gradeOf(challenge.reference).marks).toBeGreaterThanOrEqual(REFERENCE_MARK);
  });

  test('is failed by a beginner, for the reason it teaches', () => {
    const { marks, goals } = gradeOf(challenge.beginner);
    expect(marks).toBeLessThan(PASS_MARK);
    const [worst] = [...goals].sort((a, b) => marksLost(b) - marksLost(a));
    expect(worst.goal.kind).toBe(COSTS_MOST[challenge.id]);
  });
});

test('each retrieve says what to look at, what to feel and when it is used', () => {
  const silent = RETRIEVES.filter((one) =>
    [one.look, one.feel, one.use].some((text) => !text.endsWith('.'))
  );
  expect(silent).toEqual([]);
  const said = RETRIEVES.flatMap(({ look, feel, use }) => [look, feel, use]);
  expect(said.map(wordingFault)).toEqual(said.map(() => null));
});

test('three hops are asked in the water they suit, where the task says how warm it is', () => {
  const { suits } = RETRIEVES.find(
    ({ name }) => name === 'three hops'
  ) as (typeof RETRIEVES)[number];
  const told = lessons
    .flatMap(({ challenges }) => challenges)
    .filter(({ ask }) => / hops/.test(ask) && ask.includes('°C'));
  expect(told.map(({ id }) => id)).toContain('they-wake');
  for (const { id, setup } of told)
    expect(setup.water.temperature_C, id).toBeGreaterThanOrEqual(suits?.water_C[0] ?? NaN);
});

test('the rests of three hops are those of the season map, and no question calls them wrong', () => {
  const hops = RETRIEVES.find(({ name }) => name === 'three hops');
  const [, from, to] = /wait (\d+) to (\d+) seconds/.exec(hops?.use ?? '') ?? [];
  for (const { id, pause } of SEASON_MAP.filter(({ water_F }) => water_F[0] >= 60)) {
    const [least, most] = (pause.match(/\d+/g) ?? []).map(Number);
    expect(Number(from), id).toBeLessThanOrEqual(least);
    expect(Number(to), id).toBeGreaterThanOrEqual(most);
  }
  const asked = GENERATORS.find(({ id }) => id === 'season-pause');
  const replies = Array.from(
    { length: 12 },
    (_, seed) => asked && generate(asked, seed + 1)
  ).flatMap((item) =>
    item?.answer.form === 'choose' && item.answer.key === 'warm'
      ? item.answer.options.filter(({ id }) => id === 'cool').map(({ reply }) => reply)
      : []
  );
  expect(new Set(replies).size).toBe(1);
  expect(replies[0]).toMatch(/^Some guides do, after a set of hops\./);
});

test('a drag is made as the season map has it, on its page and on every day', () => {
  const [drag] = RETRIEVES;
  const asked = GENERATORS.find(({ id }) => id === 'season-retrieve');
  const [, cool] = SEASON_MAP;
  expect(cool.retrieve).toBe('drags with a short hop');
  expect(drag.use).toMatch(/^Under \{50 °F.*Up to \{60 °F\|16 °C\}, with a short hop\./);
  const on = (temperature_C: number, fish: 'active' | 'unknown' | 'slow' = 'unknown') =>
    useOn(drag, { temperature_C, fish });
  expect(on(7)).toMatch(/^Shorter and slower is better:/);
  for (const fish of ['active', 'unknown'] as const)
    expect(on(13, fish)).toMatch(/^Add a short hop\./);
  expect(on(15.6)).toMatch(/^Mix it with hops\./);
  for (const temperature_C of [7, 13, 20, 27]) expect(on(temperature_C, 'slow')).toBe(on(7));
  const keys = Array.from({ length: 12 }, (_, seed) => asked && generate(asked, seed + 1)).flatMap(
    (item) =>
      item?.answer.form === 'choose' && item.answer.key === 'cool'
        ? item.answer.options.filter(({ id }) => id === 'cool').map(({ says }) => says)
        : []
  );
  expect(new Set(keys)).toEqual(new Set([cool.retrieve]));
});

test('no slow fish is waited for a second or two, and no warm one dragged as in winter', () => {
  for (const fish of ['slow', 'active', 'unknown'] as const)
    for (let temperature_C = 1; temperature_C <= 33; temperature_C++)
      for (const retrieve of retrievesFor({ temperature_C, fish })) {
        const said = useOn(retrieve, { temperature_C, fish });
        const at = `${retrieve.name}, ${temperature_C} °C, ${fish}: ${said}`;
        if (fish === 'slow' || /[Ss]low fish/.test(said))
          expect(said, at).not.toMatch(/wait 1 to 3/);
        if (fish === 'slow' && retrieve.name === 'drag')
          expect(said, at).toMatch(/wait 10 seconds or more/);
        if (fish !== 'slow' && temperature_C >= 24) expect(said, at).not.toMatch(/[Ss]low/);
      }
});

test('in cold water what is for active fish comes last, unless they are known to be', () => {
  const at = (fish: 'unknown' | 'active', temperature_C: number) =>
    retrievesFor({ temperature_C, fish, ground: 'gravel' }).map(({ name }) => name);
  expect(at('unknown', 5.5).at(-1)).toBe('swim at a height');
  expect(at('active', 5.5).indexOf('swim at a height')).toBeLessThan(3);
  expect(at('unknown', 18).indexOf('swim at a height')).toBeGreaterThan(-1);
});

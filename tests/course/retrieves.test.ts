import { describe, expect, test } from 'vitest';
import {
  gradeTry,
  PASS_MARK,
  REFERENCE_MARK,
  wordingFault,
  type Challenge
} from '../../src/lib/scoring';
import { marksLost } from '../../src/lib/scoring/grade';
import { findChallenge, loadLessons, RETRIEVES } from '../../src/lib/course';

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

import { describe, expect, test } from 'vitest';
import { challengesOf, allLessons } from '../../src/lib/course';
import { LAZY_BELOW } from '../../src/lib/course/check';
import { LAZY, lazyRun } from '../../src/lib/course/lazy';
import { gradeTry, PASS_MARK, type Challenge } from '../../src/lib/scoring';

/** A slice of what `npm run check:content` does with every challenge: one of each sort. */
const SLICE = [
  'exactly-one-foot',
  'one-foot-unseen',
  'reel-takes-slack',
  'count-it-down',
  'a-steady-pace',
  'lift-and-follow',
  'one-hop',
  'three-hops-uneven',
  'fall-on-a-following-rod',
  'strike-a-tap',
  'free-a-snag',
  'shake-in-place'
];

const lessons = allLessons().flatMap(({ challenges }) => challenges);
const drilled = (['drag', 'hop', 'count'] as const).map(
  (drill) => challengesOf({ drill, phase: 'seen', seed: 4 })[0]
);
const slice = [...lessons.filter(({ id }) => SLICE.includes(id)), ...drilled].map(
  (challenge): [string, Challenge] => [challenge.id, challenge]
);

describe.each(slice)('%s', (_, challenge) => {
  test('is passed by nobody who goes without the skill', () => {
    for (const name of LAZY) {
      const { marks } = gradeTry(challenge, lazyRun(name, challenge)).grade;
      expect(marks, name).toBeLessThanOrEqual(PASS_MARK - LAZY_BELOW);
    }
  });
});

test('every challenge gives more for each of its goals than passing leaves', () => {
  const light = [...lessons, ...drilled].flatMap(({ id, goals }) =>
    goals
      .filter(({ kind, weight }) => kind === 'contact' && weight <= 100 - PASS_MARK)
      .map(({ kind }) => `${id}: ${kind}`)
  );
  expect(light).toEqual(['cold-water: contact', 'dead-stick: contact']);
});

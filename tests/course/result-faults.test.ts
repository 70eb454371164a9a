import { expect, test } from 'vitest';
import { challengesOf, drills, loadLessons } from '../../src/lib/course';
import { byHand } from '../../src/lib/course/hand';
import { missFaults, resultFaults } from '../../src/lib/course/result-faults';
import { gradeTry } from '../../src/lib/scoring';
import { TAKES_ALL } from '../samples';

/** From far too short to more than twice as far, and from a jerk to a crawl: a stripe of it for each challenge. */
const HANDS = [-0.7, -0.4, -0.2, -0.1, 0.1, 0.2, 0.5, 1.2].map((reach, i) => ({
  reach,
  pace: [0, 1.5, -0.4][i % 3],
  isEven: i % 2 === 1
}));

const challenges = [
  ...loadLessons().flatMap((lesson) => lesson.challenges),
  ...drills.flatMap(({ id }) => challengesOf({ drill: id, phase: 'seen', seed: 4 }).slice(0, 1))
];

// Every challenge, with two of the hands each; `npm run check:content` does so with more hands, the beginner and the misses.
test('no result contradicts its marks or its limits', () => {
  const faults = challenges.flatMap((challenge, n) => {
    const hands = TAKES_ALL ? HANDS : [HANDS[n % HANDS.length], HANDS[(n + 3) % HANDS.length]];
    const made = hands.map((hand) =>
      gradeTry(challenge, byHand(challenge.reference, challenge.start, hand))
    );
    return [
      ...made.flatMap((one) => resultFaults(challenge, one)),
      ...missFaults(challenge, made)
    ].map((fault) => `${challenge.id}: ${fault}`);
  });
  expect([...new Set(faults)]).toEqual([]);
});

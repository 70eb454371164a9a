import { describe, expect, test } from 'vitest';
import { seededRandom } from '../../../src/lib/model';
import { expectedShare, rated, ratingsOf, ratingStepOf, UNRATED } from '../../../src/lib/practice';

const chanceOf = () => 1 / 3;

/** A learner of this ability answers `rounds` times each of the items, whose ratings they start with. */
function played(ability: number, difficulties: readonly number[], rounds: number, seed: number) {
  const random = seededRandom(seed);
  let learner = UNRATED;
  const items = difficulties.map(() => UNRATED);
  for (let round = 0; round < rounds; round++) {
    difficulties.forEach((difficulty, i) => {
      const share = expectedShare(
        { value: ability, answers: 0 },
        { value: difficulty, answers: 0 },
        1 / 3
      );
      const next = rated(learner, items[i], random() < share, 1 / 3);
      learner = next.learner;
      items[i] = next.item;
    });
  }
  return { learner, items };
}

describe('the ratings', () => {
  test('take steps of 4/(1 + 0.05 n)', () => {
    expect([0, 20, 180].map((answers) => ratingStepOf({ value: 0, answers }))).toEqual([4, 2, 0.4]);
  });

  test('move learner and item apart by as much as the answer surprised', () => {
    const { learner, item } = rated(UNRATED, UNRATED, true, 0);
    expect([learner.value, item.value]).toEqual([2, -2]);
    expect(rated(UNRATED, { value: -20, answers: 0 }, true, 0).learner.value).toBeCloseTo(0, 6);
  });

  test('settle for simulated learners: the share right they foretell is the true one', () => {
    const difficulties = [-2, -1, 0, 1, 2];
    for (const [i, ability] of [-1, 0.5, 1.5].entries()) {
      const { learner, items } = played(ability, difficulties, 400, i + 1);
      difficulties.forEach((difficulty, k) => {
        const truth = expectedShare(
          { value: ability, answers: 0 },
          { value: difficulty, answers: 0 },
          1 / 3
        );
        // Steps of 0.19 after 400 answers leave a spread of some 0.3, that is 6 points a side; two of them.
        expect(Math.abs(expectedShare(learner, items[k], 1 / 3) - truth)).toBeLessThan(0.12);
      });
    }
  });

  test('come from the answers in the order of their times', () => {
    const first = { item: 'a', right: true, at: '2030-01-01' };
    const then = { item: 'b', right: false, at: '2030-01-02' };
    expect(ratingsOf([then, first], chanceOf)).toEqual(ratingsOf([first, then], chanceOf));
    expect(ratingsOf([first, then], chanceOf).items.get('b')?.answers).toBe(1);
  });
});

/**
 * Ratings of learner and items on one scale of log-odds: a learner rated as high as an item answers
 * it right half of the time, beyond what guessing gives. Step K = 4/(1 + 0.05 n) after n answers
 * (Pelánek 2016, "Applications of the Elo rating system in adaptive educational systems"); it shrinks,
 * so that a rating settles.
 */
export interface Rating {
  value: number;
  answers: number;
}

export const UNRATED: Rating = { value: 0, answers: 0 };

/** Share right that questions are chosen for: enough effort to learn from, few defeats. */
export const AIM = { least: 0.75, best: 0.775, most: 0.8 } as const;

export function ratingStepOf({ answers }: Rating): number {
  return 4 / (1 + 0.05 * answers);
}

/** Chance of a right answer, where guessing alone gives `chance`. */
export function expectedShare(learner: Rating, item: Rating, chance: number): number {
  return chance + (1 - chance) / (1 + Math.exp(item.value - learner.value));
}

/** Both ratings after an answer. */
export function rated(
  learner: Rating,
  item: Rating,
  right: boolean,
  chance: number
): { learner: Rating; item: Rating } {
  const surprise = (right ? 1 : 0) - expectedShare(learner, item, chance);
  return {
    learner: {
      value: learner.value + ratingStepOf(learner) * surprise,
      answers: learner.answers + 1
    },
    item: { value: item.value - ratingStepOf(item) * surprise, answers: item.answers + 1 }
  };
}

export interface Ratings {
  learner: Rating;
  items: Map<string, Rating>;
}

interface Answered {
  item: string;
  right: boolean;
  at: string;
}

/** Ratings from all answers, in the order of their times. `chanceOf` is what guessing at an item gives. */
export function ratingsOf(
  answers: readonly Answered[],
  chanceOf: (item: string) => number
): Ratings {
  let learner = UNRATED;
  const items = new Map<string, Rating>();
  for (const { item, right } of [...answers].sort((a, b) => (a.at < b.at ? -1 : 1))) {
    const next = rated(learner, items.get(item) ?? UNRATED, right, chanceOf(item));
    learner = next.learner;
    items.set(item, next.item);
  }
  return { learner, items };
}

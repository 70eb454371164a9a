import { itemOf, type Item } from '../../course/items';
import { judgedAgain, type GivenAnswer } from '../../practice/judged';

/** The question of this name and seed, its key computed. Throws RangeError for none. */
export function question({ item, seed }: { item: string; seed: number }): Item {
  return itemOf(item, seed);
}

/** An answer to judge, and what the homework asks about. */
export interface GivenJudgement {
  given: GivenAnswer;
  objectives: readonly string[];
}

/** Throws DataError for what is no answer to a question about these objectives. */
export function judgeQuestion({ given, objectives }: GivenJudgement): {
  objective: string;
  right: boolean;
} {
  const { item, verdict } = judgedAgain(given, objectives);
  return { objective: item.objective, right: verdict.right };
}

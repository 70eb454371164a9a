import { itemOf, type Answer, type Given, type Item } from '../../course/items';
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
  says: { ask: string; given: string; key: string };
} {
  const { item, verdict } = judgedAgain(given, objectives);
  const { objective, answer, ask } = item;
  const says = {
    ask,
    given: answerWords(answer, given.given),
    key: answerWords(answer, answer.key)
  };
  return { objective, right: verdict.right, says };
}

/** An answer in the question's own words, with quantities in braces. */
function answerWords(answer: Answer, given: Given): string {
  if (typeof given === 'number') {
    return answer.form === 'mark' ? `{${answer.quantity}:${given.toFixed(4)}}` : String(given);
  }
  const things = answer.form === 'choose' ? answer.options : [];
  const all = answer.form === 'order' ? answer.things : things;
  const says = (id: string) => all.find((one) => one.id === id)?.says ?? id;
  return [given].flat().map(says).join(', then ');
}

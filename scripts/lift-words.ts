/** Whether what is said of moves that lift agrees with what the model is trusted for. */
import type { Item } from '../src/lib/course/items';

type Asked = Pick<Item, 'ask' | 'answer' | 'explain' | 'cases' | 'evidence'>;

/** What is wrong with an item that ranks lifts. */
export function liftFaults(item: Asked): string[] {
  return [...inches(item), ...lowerOnes(item)];
}

/** No inches of a lift are told: guides see half of the model's (docs/decisions). */
function inches({ explain, cases, evidence }: Asked): string[] {
  const isLift = evidence.is === 'rank' && cases.some(({ run }) => run.plane === 'lift');
  return isLift && /In the model/.test(explain) ? ['figures of a lift are told'] : [];
}

/** Where the move is asked for that stays lowest, every other one went higher. */
function lowerOnes({ ask, answer }: Asked): string[] {
  if (answer.form !== 'choose' || !ask.includes('least off bottom')) return [];
  return answer.options
    .filter(({ id, reply }) => id !== answer.key && /\bless\b/.test(reply))
    .map(({ reply }) => `it went higher, and is told: ${reply}`);
}

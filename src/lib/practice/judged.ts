import { itemOf, judgeAnswer, SOURCES, type Item, type Judgement } from '../course/items';
import { DataError } from '../scoring';
import { type StoredAnswer, MOST } from '../wire';

/** An answer to a question of homework: no more than it takes to judge it again. */
export type GivenAnswer = Pick<StoredAnswer, 'item' | 'seed' | 'given'>;

/** Items by name and seed; MOST.seed bounds how many there can be. */
const made = new Map<string, Item>();

/**
 * The question again and what is to be said to the answer. Throws DataError, by field and value, for a
 * question that is not about one of `objectives` and for what can be no answer to it.
 */
export function judgedAgain(
  { item: name, seed, given }: GivenAnswer,
  objectives: readonly string[]
): { item: Item; verdict: Judgement } {
  const source = SOURCES.find((one) => one.item === name);
  if (!source || !objectives.includes(source.objective)) {
    throw new DataError('item', name, 'is no question of this homework');
  }
  const [least, most] = source.isGenerated ? [1, MOST.seed] : [0, 0];
  if (seed < least || seed > most) {
    throw new DataError('seed', seed, `must be from ${least} to ${most}`);
  }
  const item = itemFor(name, seed);
  return { item, verdict: verdictOn(item, given) };
}

function itemFor(name: string, seed: number): Item {
  const key = `${name} ${seed}`;
  const item = made.get(key) ?? itemOf(name, seed);
  made.set(key, item);
  return item;
}

function verdictOn({ answer }: Item, given: GivenAnswer['given']): Judgement {
  const isOutside =
    answer.form === 'mark' &&
    typeof given === 'number' &&
    (given < answer.least || given > answer.most);
  try {
    if (!isOutside) return judgeAnswer(answer, given);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
  }
  throw new DataError('given', given, 'can be no answer to this question');
}

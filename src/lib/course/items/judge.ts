import type { Answer, Given, MarkAnswer } from './item';

/** What is said to an answer. */
export interface Judgement {
  right: boolean;
  /** Meant for what was answered: which error leads there, or why it is right. */
  reply: string;
}

/** Throws RangeError for an answer that this question cannot have. */
export function judgeAnswer(answer: Answer, given: Given): Judgement {
  if (answer.form === 'choose') {
    const chosen = answer.options.find(({ id }) => id === given);
    if (!chosen) throw new RangeError(`given: no option ${JSON.stringify(given)}`);
    return { right: chosen.id === answer.key, reply: chosen.reply };
  }
  if (answer.form === 'order') {
    if (!isOrderOf(answer.key, given))
      throw new RangeError(`given: no order, ${JSON.stringify(given)}`);
    const isKey = given.every((id, i) => id === answer.key[i]);
    const isReversed = given.every((id, i) => id === answer.key[answer.key.length - 1 - i]);
    if (isKey) return { right: true, reply: answer.right };
    return { right: false, reply: isReversed ? answer.reversed : answer.other };
  }
  if (typeof given !== 'number') throw new RangeError(`given: no place, ${JSON.stringify(given)}`);
  return judgeMark(answer, given);
}

function isOrderOf(things: readonly string[], given: Given): given is readonly string[] {
  return (
    typeof given === 'object' &&
    given.length === things.length &&
    things.every((id) => given.includes(id))
  );
}

/** Less than a hand can set, m or s: a place at the very end of a band is right, however its sum was rounded. */
const HAIR = 1e-6;

/** Whether a place on a ruler is right. */
export function isWithin({ key, band }: Pick<MarkAnswer, 'key' | 'band'>, place: number): boolean {
  return Math.abs(place - key) <= band + HAIR;
}

/**
 * Right within the model's own band; else the beginner's error that lies nearest, where the mark lies no
 * farther from it than half its way to the right one: its reply says something of that place alone.
 */
function judgeMark(answer: MarkAnswer, given: number): Judgement {
  const { key, band, errors, right, other } = answer;
  if (isWithin(answer, given)) return { right: true, reply: right };
  const off = ({ value }: { value: number }) => Math.abs(value - given);
  const near = errors
    .filter((error) => off(error) <= Math.max(band, Math.abs(error.value - key) / 2))
    .sort((a, b) => off(a) - off(b))[0];
  return { right: false, reply: near?.reply ?? other };
}

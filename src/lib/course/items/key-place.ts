import type { Answer } from './item';

/** With the key in each place in turn; the others keep their order. */
export function withKeyAt(answer: Answer, turn: number): Answer {
  if (answer.form !== 'choose') return answer;
  const { options, key } = answer;
  const others = options.filter(({ id }) => id !== key);
  const right = options.filter(({ id }) => id === key);
  others.splice(turn % options.length, 0, ...right);
  return { ...answer, options: others };
}

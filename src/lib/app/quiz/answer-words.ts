import type { Item } from '$lib/course/items';

/** The right answer in a few words, before units are put in. */
export function answerWords({ answer }: Pick<Item, 'answer'>): string {
  if (answer.form === 'choose') {
    return answer.options.find(({ id }) => id === answer.key)?.says ?? answer.key;
  }
  if (answer.form === 'order') {
    const says = (id: string) => answer.things.find((one) => one.id === id)?.says ?? id;
    return answer.key.map(says).join(', then ');
  }
  const unit = answer.quantity === 'time' ? 'time' : 'length';
  return `{${unit}:${answer.key.toFixed(3)}}, give or take {${unit}:${answer.band.toFixed(3)}}`;
}

import type { Item } from '$lib/course/items';
import type { Units } from '$lib/scoring';
import { rightPlaces, said } from './ruler-marks';

/** The right answer in a few words, before units are put in. */
export function answerWords({ answer }: Pick<Item, 'answer'>): string {
  if (answer.form === 'choose') {
    return answer.options.find(({ id }) => id === answer.key)?.says ?? answer.key;
  }
  if (answer.form === 'order') {
    const says = (id: string) => answer.things.find((one) => one.id === id)?.says ?? id;
    return answer.key.map(says).join(', then ');
  }
  const inEither = (text: (units: Units) => string) => `{${text('imperial')}|${text('metric')}}`;
  const key = inEither((units) => said(answer.key, answer.quantity, units));
  return `${key}, or anything from ${inEither((units) => rightPlaces(answer, units))}`;
}

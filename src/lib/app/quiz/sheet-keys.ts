import { withKeyAt, type Item } from '$lib/course/items';
import { seededRandom } from '$lib/model';

const PLACES = [0, 1, 2];

/**
 * Puts the keys of a sheet's questions in their places as they come: the same for the same sheet, each place once
 * in any three that are dealt together, so that all are as frequent and none stands three times in a row.
 */
export function keysOf(sheet: number): (item: Item) => Item {
  const random = seededRandom(sheet);
  let open: number[] = [];
  return (item) => {
    if (item.answer.form !== 'choose') return item;
    if (open.length === 0) open = [...PLACES];
    const [place] = open.splice(Math.floor(random() * open.length), 1);
    return { ...item, answer: withKeyAt(item.answer, place) };
  };
}

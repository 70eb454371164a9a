import type { Item } from '../item';
import { afloat } from './afloat';
import { bites } from './bites';
import { bottoms } from './bottoms';
import { choices } from './choices';
import { retrieves } from './retrieves';
import { safety } from './safety';
import { snags } from './snags';

const written: readonly Item[] = [
  ...safety,
  ...retrieves,
  ...choices,
  ...bottoms,
  ...bites,
  ...snags,
  ...afloat
];

/** Each place has the key equally often. */
export const FIXED: readonly Item[] = written.map(dealt);

function dealt(item: Item, i: number): Item {
  const { answer } = item;
  if (answer.form !== 'choose') return item;
  const [right, ...options] = answer.options;
  options.splice(i % answer.options.length, 0, right);
  return { ...item, answer: { ...answer, options } };
}

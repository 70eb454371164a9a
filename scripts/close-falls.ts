/** Whether falls that are ranked lie farther apart than a voice counts. */
import type { Item } from '../src/lib/course/items';
import { nominalOf } from '../src/lib/course/items/measure';

/** Who counts falls under the breath is off by a tenth of them: a shorter one is less than this part of a longer. */
const MOST_ALIKE = 0.9;

/** What is wrong with an item that ranks falls of which two that must be told apart are nearly as long. */
export function closeFallFaults({ cases, evidence }: Pick<Item, 'cases' | 'evidence'>): string[] {
  if (evidence.is !== 'rank' || evidence.measure !== 'fall_s') return [];
  const falls_s = cases.map(({ run }) => nominalOf(run, 'fall_s')).sort((a, b) => b - a);
  const rows = falls_s.slice(1).map((shorter, i) => [falls_s[i], shorter]);
  const { pick } = evidence;
  // Of those that are not asked for nobody has to tell one from the other.
  const told = pick === 'most' ? rows.slice(0, 1) : pick === 'least' ? rows.slice(-1) : rows;
  return told
    .filter(([longer, shorter]) => shorter / longer >= MOST_ALIKE)
    .map(([longer, shorter]) => `falls of ${longer.toFixed(2)} and ${shorter.toFixed(2)} s`);
}

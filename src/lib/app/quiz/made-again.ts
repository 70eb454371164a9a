import type { Item } from '$lib/course/items';
import type { AnsweredToday } from '$lib/practice';
import type { MakeItem } from './quiz-run.svelte';

/** The questions of these names and seeds, in their order, without those that are asked no more. */
export async function madeAgain(
  named: AnsweredToday['missed'],
  make: MakeItem,
  signal: AbortSignal
): Promise<Item[]> {
  const made = await Promise.allSettled(named.map((one) => make(one, signal)));
  return made.flatMap((one) => (one.status === 'fulfilled' ? [one.value] : []));
}

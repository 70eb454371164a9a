import { FIXED, optionsOf, SOURCES } from '$lib/course/items';
import { itemStatistics, type DayOf, type ItemStatistics, type Response } from '$lib/practice';
import type { StoredAnswer } from '$lib/wire';

/**
 * Statistics from one learner's record. A day stands for a taker: with one learner the correlation
 * tells good days from bad ones, and only pooled records tell learners apart.
 */
export function rowsOf(answers: readonly StoredAnswer[], dayOf: DayOf): ItemStatistics[] {
  const fixed = new Map(FIXED.map(({ source, answer }) => [source, optionsOf(answer)]));
  const options = new Map(
    SOURCES.map(({ item }) => [item, fixed.get(item) ?? chosen(item, answers)])
  );
  return itemStatistics(
    answers.map((one) => responseOf(one, dayOf(one.at))),
    options
  ).filter((row) => row.answers > 0);
}

/** Options of a generated question are those that were chosen: their names stay from seed to seed. */
function chosen(item: string, answers: readonly StoredAnswer[]): string[] {
  const given = answers.flatMap((one) =>
    one.item === item && typeof one.given === 'string' ? one.given : []
  );
  return [...new Set(given)].sort();
}

function responseOf({ item, right, given }: StoredAnswer, day: number): Response {
  return { taker: `day ${day}`, item, right, option: typeof given === 'string' ? given : null };
}

/** As many as the server takes of one option. */
const MOST_HANDS = 1000;

/** Hands as they were typed: how many, or what is wrong with it. */
export function handsTyped(text: string): { count: number } | { fault: string } {
  const typed = text.trim();
  if (typed === '') return { count: 0 };
  const count = Number(typed);
  if (Number.isInteger(count) && count >= 0 && count <= MOST_HANDS) return { count };
  return {
    fault: `Hands: type a whole number from 0 to ${MOST_HANDS}. “${typed}” isn’t counted.`
  };
}

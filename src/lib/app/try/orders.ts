/** "20 ft of water." and what hangs on it: where it is done, before what is to be done. */
const WATER = /^\d+(\.\d+)?\s\w+ of water\b[^.?!]*\. /;

/** What a hand is told to do, where a clause begins: "In 10 ft, snap the jig up." */
const ORDER =
  /(?:^|[,:] |Then )(?:bring|count|do|drag|follow|hop|lift|lower|make|move|pull|raise|reel(?! engaged)|snap|stop|sweep|swing|twitch|wait)\b/i;
/** Or how often: "Three even hops, 3 to 10 in high." */
const COUNT = /\b(?:two|three|four|five)(?: \w+)? (?:drags|hops|strokes)\b/i;

/**
 * A task's first order, what stands before it and after: three sentences that stand out together are none,
 * and where it is done is no order. Where none is known as one, the first sentence is.
 */
export function ordersOf(task: string): readonly [before: string, order: string, rest: string] {
  const water = WATER.exec(task)?.[0] ?? '';
  const said = task.slice(water.length).split(/(?<=[.?!])\s+/);
  const found = said.findIndex((one) => ORDER.test(one) || COUNT.test(one));
  const at = Math.max(0, found);
  const rest = [...said.slice(at + 1), water.trim()].join(' ');
  return [said.slice(0, at).join(' '), said[at], rest.trim()];
}

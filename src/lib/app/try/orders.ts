/** "20 ft of water." and what hangs on it: where it is done, before what is to be done. */
const WATER = /^\d+(\.\d+)?\s\w+ of water\b[^.?!]*\. /;

/** A task's first order, and the rest of it: three orders that stand out together are none. */
export function ordersOf(task: string): readonly [order: string, rest: string] {
  const water = WATER.exec(task)?.[0] ?? '';
  const [order, rest] = splitAtOrder(task.slice(water.length));
  return [order, `${rest} ${water}`.trim()];
}

function splitAtOrder(task: string): readonly [order: string, rest: string] {
  const end = /[.?!](?=\s)/.exec(task)?.index ?? task.length - 1;
  return [task.slice(0, end + 1), task.slice(end + 1).trim()];
}

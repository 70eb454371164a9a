/** A task's first order, and the rest of it: three orders that stand out together are none. */
export function ordersOf(task: string): readonly [order: string, rest: string] {
  const end = /[.?!](?=\s)/.exec(task)?.index ?? task.length - 1;
  return [task.slice(0, end + 1), task.slice(end + 1).trim()];
}

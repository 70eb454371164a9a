/** Until the browser has had its turn: what came to be pressed is answered before more is begun. */
export const nextTurn = (): Promise<void> => new Promise((done) => setTimeout(done));

/**
 * Work in pieces, each in a task of its own.
 * @returns what comes of it; null once it is not wanted any more
 */
export async function inTurns<T>(
  work: Generator<void, T>,
  isWanted: () => boolean
): Promise<T | null> {
  for (; isWanted(); await nextTurn()) {
    const { done, value } = work.next();
    if (done) return value;
  }
  return null;
}
